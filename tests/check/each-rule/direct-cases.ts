import {noMasslessLift} from '../../../src/check/rules/no-massless-lift.ts'
import {noUndisposedDrain} from '../../../src/check/rules/no-undisposed-drain.ts'
import {refuseOverstressedBolt} from '../../../src/compute/refuse-overstressed-bolt.ts'
import {type DeclaredChange, signatureRoles} from '../../../src/handbook-model/approval-content.ts'
import {refuseUnapproved} from '../../../src/issues/approval-state.ts'
import {nextPages} from '../../../src/issues/next-ledger.ts'
import type {ContentFiles} from '../../../src/messages/add-message.ts'
import type {RuleId} from '../../../src/messages/severities.ts'
import {checkFiles} from '../../../src/publish/check-files.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {checkCode, technicalHash} from '../../../src/technical-text/technical-hash.ts'
import {ledgerWith} from '../../issues/ledger-for-tests.ts'
import {design, designText} from '../library-for-tests.ts'
import {placeIn} from '../messages-for-tests.ts'
import {soundProcedure, workText} from '../procedure-for-tests.ts'

/** A rule that no short text of the content reaches: its function is asked with the two twins. */
export interface DirectCase {
  readonly rule: RuleId
  readonly what: string
  /** Why no text of the small content brings it up. */
  readonly because: string
  accepted(files: ContentFiles): void
  rejected(files: ContentFiles): void
  /** Place, weight, reason, rule and remedy as printed. */
  readonly said: string
}

const vesselFile = 'content/vessels/vessel-s/vessel.yaml:1:1'

function published(path: string, size: number): (files: ContentFiles) => void {
  return (files) => checkFiles('vessel-s', [{path, bytes: new Uint8Array(size)}], files)
}

/** Bolts of a joint that allows seventy per cent of the yield stress, under a combined stress. */
function stressed(share: number): (files: ContentFiles) => void {
  return (files) => {
    const whole = design()
    const [joint] = whole.joints
    if (joint?.utilisation.kind !== 'known')
      throw new Error('Unexpected design without a joint, expected one')
    refuseOverstressedBolt(joint, whole, joint.utilisation, quantityOf('ratio', share), files)
  }
}

const longPath = `${'a'.repeat(40)}/${'b'.repeat(40)}/${'c'.repeat(14)}.html`

const liftText = (below: string): string =>
  workText(`1. :step{#lift-cover action=lift} Lift the cover.\n\n   ${below}`)
const drainText = (below: string): string =>
  workText(
    `1. :step{#drain-oil action=drain} Drain the oil.\n\n2. :step{#empty-tray${below}} Empty the tray.`,
  )

const [firstHash, secondHash] = ['a'.repeat(64), 'b'.repeat(64)] as const
const changesPlace = {path: 'changes.yaml', line: 2, column: 5}
const wordsBefore = 'pump\tmeaning\tA pump.\n'

/** A source signed by three people as it reads now, or as it read before. */
function approved(text: string): (files: ContentFiles) => void {
  return (files) => {
    const place = {path: 'approvals.yaml', line: 2, column: 5}
    const signatures = signatureRoles.map((role) => ({
      role,
      by: {id: role, place},
      date: '2031-01-02',
      statement: 'read',
      place,
    }))
    const hashes = new Map([['terms.yaml', technicalHash('now')]])
    refuseUnapproved(
      new Set(['terms.yaml']),
      hashes,
      [{file: 'terms.yaml', hash: technicalHash(text), signatures, place}],
      files,
    )
  }
}

/** An issue in which the page of words reads otherwise. */
function moved(changes: readonly DeclaredChange[], kept: boolean): (files: ContentFiles) => void {
  return (files) => {
    const hash = technicalHash(wordsBefore)
    const path = 'words.html'
    const entry = {revision: 1, date: '2031-03-14', code: checkCode('vessel-a/words', 1, hash), hash, path}
    const earlier = ledgerWith({'vessel-a/words': entry}, {sources: {'terms.yaml': firstHash}})
    const {version: _version, pages: _pages, manifestHash: _manifest, ...facts} = earlier
    nextPages(
      {
        facts: {...facts, sources: {'terms.yaml': secondHash}},
        pages: [
          {
            id: 'vessel-a/words',
            path,
            text: wordsBefore.replace('A pump', 'One pump'),
            madeFrom: ['terms.yaml'],
          },
        ],
        earlier,
        earlierTexts: new Map(kept ? [[hash, wordsBefore]] : []),
        changes,
        withdrawals: [],
        ended: [],
        urgent: [],
      },
      files,
    )
  }
}

/** The rules that are asked at their function. */
export const directCases: readonly DirectCase[] = [
  {
    rule: 'no-overstressed-bolt',
    what: 'bolts that bear more than the design allows',
    because: 'the torque is computed from the utilisation, so that both agree for every joint of content',
    accepted: stressed(0.7),
    rejected: stressed(0.71),
    said: `content/${placeIn(designText, '70 %', 'designs/design-a.yaml')} error Unexpected combined stress of \`71.00 %\` of the yield stress in joint \`hub-bolts\` of \`design-a\`, expected at most \`70 %\` no-overstressed-bolt\n    mend: Lower the utilisation or change the fastener\n`,
  },
  {
    rule: 'no-massless-lift',
    what: 'a lift whose mass stands nowhere',
    because: 'the small content has no caution of a suspended load',
    accepted: (files) => noMasslessLift(soundProcedure(liftText('::value{ref=mass.cover}')), files),
    rejected: (files) => noMasslessLift(soundProcedure(liftText('The cover is round.')), files),
    said: `content/${placeIn(liftText('The cover is round.'), ':step{#lift-cover', 'procedures/sample.md')} error Unexpected lift in step \`lift-cover\` without a mass, expected \`::value{ref=mass.…}\` or \`::value{ref=….mass}\` at it or before it in its section no-massless-lift\n    mend: Show the mass of what hangs\n`,
  },
  {
    rule: 'no-undisposed-drain',
    what: 'oil that is drained and goes nowhere',
    because: 'the small content has no caution of hot oil',
    accepted: (files) => noUndisposedDrain(soundProcedure(drainText(' action=dispose')), files),
    rejected: (files) => noUndisposedDrain(soundProcedure(drainText('')), files),
    said: `content/${placeIn(drainText(''), ':step{#drain-oil', 'procedures/sample.md')} error Unexpected drain in step \`drain-oil\` without a disposal, expected a step with \`action=dispose\` at it or behind it no-undisposed-drain\n    mend: Say where the liquid goes: a closed and labelled drum to shore\n`,
  },
  {
    rule: 'no-long-path',
    what: 'a path that breaks when the folder is copied deep',
    because: 'ids of forty letters come to paths of ninety',
    accepted: published(longPath.replace('cc', 'c'), 1),
    rejected: published(longPath, 1),
    said: `${vesselFile} error Unexpected path \`${longPath}\` of 101 characters, expected at most 100 no-long-path\n    mend: Shorten the id it is made from\n`,
  },
  {
    rule: 'no-heavy-page',
    what: 'a page that an old PC shows slowly',
    because: 'a page of one byte too many cannot be written by an author',
    accepted: published('p/1p/ring-check.html', 150_000),
    rejected: published('p/1p/ring-check.html', 150_001),
    said: `${vesselFile} error Unexpected size of 150001 bytes of \`p/1p/ring-check.html\`, expected at most 150000 no-heavy-page\n    mend: Split the procedure or the table\n`,
  },
  {
    rule: 'no-unapproved-source',
    what: 'a source that changed after its approval',
    because: 'approvals are asked for by an issue, not by a check',
    accepted: approved('now'),
    rejected: approved('before'),
    said: 'content/terms.yaml:1:1 error Unexpected change of `terms.yaml` after its approval, expected the text that was signed no-unapproved-source\n    mend: Read it and sign it: `sheetanchor approve terms.yaml --as author --by … --date … --statement …`\n    see: content/approvals.yaml:2:5\n',
  },
  {
    rule: 'no-unexplained-change',
    what: 'a page that moved for a source about which nobody says why',
    because: 'reasons are asked for by an issue, not by a check',
    accepted: moved(
      [{file: 'terms.yaml', hash: secondHash, class: 'technical', reason: 'new word', place: changesPlace}],
      true,
    ),
    rejected: moved([], true),
    said: `content/terms.yaml:1:1 error Unexpected change of \`terms.yaml\` that moves page \`vessel-a/words\`, expected its reason in changes.yaml no-unexplained-change\n    mend: Add to changes.yaml: \`- {file: terms.yaml, hash: ${secondHash}, class: technical, reason: …}\`\n`,
  },
  {
    rule: 'no-lost-text',
    what: 'a ledger without the text of a page that moved',
    because: 'earlier texts are asked for by an issue, not by a check',
    accepted: moved(
      [{file: 'terms.yaml', hash: secondHash, class: 'technical', reason: 'new word', place: changesPlace}],
      true,
    ),
    rejected: moved(
      [{file: 'terms.yaml', hash: secondHash, class: 'technical', reason: 'new word', place: changesPlace}],
      false,
    ),
    said: `content/issues/vessel-a/texts/${technicalHash(wordsBefore)}.txt:1:1 error Unexpected ledger without the text of page \`vessel-a/words\` in revision 1, expected the file as the tool wrote it no-lost-text\n    mend: Take the texts again from the commit of the issue\n`,
  },
]
