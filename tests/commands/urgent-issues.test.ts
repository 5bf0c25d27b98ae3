import {beforeAll, describe, expect, test} from 'vitest'
import type {Outcome} from '../../src/commands/outcome.ts'
import type {Ledger} from '../../src/issues/ledger.ts'
import {linesNotShown, validatorFaults} from '../offline/page-faults.ts'
import {visibleText} from '../offline/visible-text.ts'
import {barsOf} from '../render/bars-of-page.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {builtManifest, issue, ledgerOf, sign, siteOf} from './issues-for-tests.ts'
import {otherStep, otherTorque, urgentText} from './urgent-for-tests.ts'

const file = 'urgent/t-07.yaml'
const page = 'vessel-s/1p/ring-check'
const sheet = 'p/1p/ring-check.html'
const ended = 'ended:\n  - {urgent: T-07, reason: new bolts are aboard, reviewed-by: safety-reviewer}\n'

type Site = Readonly<Record<string, string>>

interface Told {
  readonly outcomes: readonly Outcome[]
  readonly ledgers: readonly Ledger[]
  readonly sites: readonly Site[]
  readonly rebuilt: readonly string[]
}

let told: Told

/** Four issues: none, T-07 comes, it stands, it goes. */
beforeAll(async () => {
  told = await withChangedContent(async (content) => {
    const outcomes: Outcome[] = []
    const sites: Site[] = []
    const rebuilt: string[] = []
    const next = async (number: string, date: string): Promise<void> => {
      await sign(content, date)
      outcomes.push(await issue(content, number, date))
      sites.push(siteOf(content))
      rebuilt.push(await builtManifest(content.folder))
    }
    await next('2031-01', '2031-01-10')
    content.write(file, urgentText({...otherTorque, ...otherStep}))
    await next('2031-02', '2031-02-10')
    await next('2031-03', '2031-03-10')
    content.remove(file)
    content.write('changes.yaml', ended)
    await next('2031-04', '2031-04-10')
    const ledgers = ['2031-01', '2031-02', '2031-03', '2031-04'].map((one) => ledgerOf(content, one))
    return {outcomes, ledgers, sites, rebuilt}
  }, smallContent)
}, 60_000)

const at = (index: number, path: string): string => told.sites[index]?.[path] ?? ''
const moved = (index: number): readonly string[] =>
  Object.entries(told.ledgers[index]?.pages ?? {}).flatMap(([id, {hash}]) =>
    told.ledgers[index - 1]?.pages[id]?.hash === hash ? [] : [id],
  )
const concerned = [
  'vessel-s/1p',
  'vessel-s/1p/job-ring-service',
  page,
  'vessel-s/design-s/passes',
  'vessel-s/design-s/torques',
  'vessel-s/start',
  'vessel-s/values',
]

describe('an urgent revision', () => {
  test('is issued when it comes, stands and goes', () => {
    expect(told.outcomes.map(({err}) => err)).toEqual(['', '', '', ''])
    expect(told.outcomes.map(({exitStatus}) => exitStatus)).toEqual([0, 0, 0, 0])
    expect(told.rebuilt).toEqual(told.ledgers.map(({manifestHash}) => manifestHash))
  })

  test('moves the pages that it concerns when it comes and when it goes, and no other', () => {
    expect(moved(1)).toEqual(concerned)
    expect(moved(2)).toEqual([])
    expect(moved(3)).toEqual(concerned)
    for (const id of concerned) {
      const entries = told.ledgers.map((ledger) => ledger.pages[id])
      expect(
        entries.map((one) => one?.revision),
        id,
      ).toEqual([1, 2, 2, 3])
      expect(new Set(entries.map((one) => one?.code)).size, id).toBe(3)
      expect(entries[3]?.hash, id).toBe(entries[0]?.hash)
    }
  })

  test('gives its reason, and the reason of its end, without another line of the office', () => {
    expect(told.ledgers[1]?.pages[page]?.reasons).toEqual([
      'urgent revision T-07: Two hub bolts of one batch broke on a sister ship.',
    ])
    expect(told.ledgers[3]?.pages[page]?.reasons).toEqual([
      'urgent revision T-07 ended: new bolts are aboard',
    ])
  })

  test('stands above its pages, behind the title and before all else, with number and days', () => {
    for (const path of [sheet, 'p/1p/index.html', 'p/1p/job-ring-service.html', 'values.html']) {
      const text = visibleText(at(1, path).replace(/^[\s\S]*<main/u, '<main'))
      expect(text, path).toMatch(
        /^(?:\S+ .* sheet ____ of ____ )?\S.{3,40} URGENT REVISION T-07 Hub bolts of a bad batch valid from 2031-02-01, valid to 2031-05-31/u,
      )
      expect(visibleText(at(0, path)), path).not.toContain('T-07')
      expect(
        visibleText(at(3, path)).replace(/Deleted: urgent revision “T-07”|urgent revision T-07 ended/gu, ''),
        path,
      ).not.toContain('T-07')
    }
    for (const path of ['words.html', 'cautions.html', 'p/1p/values.html', 'designs/design-s/fasteners.html'])
      expect(at(1, path), path).not.toContain('T-07')
  })

  test('has its number and last day in the running head of each sheet', () => {
    expect(/<thead class="running">.*?<\/thead>/su.exec(at(1, sheet))?.[0]).toMatch(
      /revision 2, 2031-02-10, \S+; urgent T-07, valid to 2031-05-31<\/span>/u,
    )
  })

  test('prints its figure in place of the old one on every page, and its words in place of the step', () => {
    const text = visibleText(at(1, sheet))
    expect(text).toContain('48 N·m')
    expect(text).not.toMatch(/\b61 N·m|\b31 · 61\b/u)
    expect(text).toContain(
      'In place of this step, by urgent revision T-07, valid to 2031-05-31 Tighten the hub bolts by the short wrench.',
    )
    expect(text).not.toContain('hub bolts in the order of the figure')
    expect(visibleText(at(1, 'values.html'))).toContain('48 N·m')
    for (const path of ['values.html', 'designs/design-s/torques.html'])
      expect(visibleText(at(1, path)), path).not.toContain('61 N·m')
    expect(visibleText(at(3, sheet))).toContain('61 N·m')
  })

  test('brings bars at itself, at its figures and at its step, and a deleted line when it goes', () => {
    expect(barsOf(at(1, sheet)).length).toBeGreaterThan(2)
    expect(at(1, sheet)).toMatch(/<section class="urgent"[^>]* data-bar>/u)
    expect(visibleText(at(3, sheet))).toContain('Deleted: urgent revision “T-07”')
    expect(visibleText(at(3, 'changed.html'))).toContain('removed: urgent urgent-t-07 T-07 deleted')
  })

  test('is listed with its pages while it counts, on the list of effective pages and on what changed', () => {
    for (const path of ['effective.html', 'changed.html']) {
      for (const index of [1, 2]) {
        const text = visibleText(at(index, path))
        expect(text, path).toMatch(
          /Urgent revisions in force Each stands .* T-07 Hub bolts of a bad batch valid from 2031-02-01, valid to 2031-05-31/u,
        )
        expect(text, path).toContain(`Wear ring check, revision 2 ${page}`)
      }
      for (const index of [0, 3])
        expect(visibleText(at(index, path)), path).toContain('Urgent revisions in force None in this folder.')
    }
  })

  test('is counted on the start page, with the way to the list', () => {
    expect(visibleText(at(1, 'index.html'))).toContain('Urgent revisions in force: 1 T-07')
    expect(at(1, 'index.html')).toContain('href="effective.html#urgent"')
    expect(at(0, 'index.html')).not.toContain('urgent')
  })

  test('leaves pages that pass the HTML validator', async () => {
    for (const path of [sheet, 'index.html', 'effective.html', 'changed.html', 'values.html'])
      expect(await validatorFaults(at(1, path)), path).toEqual([])
  })

  test('is shown line by line and in order where the technical text says it', async () => {
    await withChangedContent(async (content) => {
      content.write(file, urgentText({...otherTorque, ...otherStep, supersedes: '[T-05]'}))
      await sign(content, '2031-02-10')
      await issue(content, '2031-02', '2031-02-10')
      const site = siteOf(content)
      for (const id of concerned) {
        const {hash = '', path = ''} = ledgerOf(content, '2031-02').pages[id] ?? {}
        const text = content.read(`issues/vessel-s/texts/${hash}.txt`)
        expect(text, id).toContain('urgent-t-07\tvalid-to\tvalid to 2031-05-31\n')
        expect(linesNotShown(text, site[path] ?? ''), id).toEqual([])
      }
    }, smallContent)
  })
})

describe('an issue with an urgent revision is refused', () => {
  const refused = (
    date: string,
    spoil: (content: ChangedContent) => void = () => undefined,
    signed = true,
  ): Promise<Outcome> =>
    withChangedContent(async (content) => {
      await sign(content, '2031-01-02')
      await issue(content, '2031-01', '2031-01-10')
      content.write(file, urgentText(otherTorque))
      await sign(content, '2031-02-02')
      await issue(content, '2031-02', '2031-02-10')
      spoil(content)
      if (signed) await sign(content, '2031-03-02')
      return issue(content, '2031-03', date)
    }, smallContent)

  test('when its last day is over', async () => {
    const {exitStatus, out, err} = await refused('2031-06-01')
    expect(exitStatus).toBe(1)
    expect(out).toContain('Nothing issued')
    expect(err).toMatch(
      /urgent\/t-07\.yaml:5:11 error Unexpected urgent revision `T-07` that was valid to 2031-05-31 in issue 2031-03 of 2031-06-01, expected one that counts on that day no-untimely-urgent\n {4}mend: Take it into the page, take its file out and add `- \{urgent: T-07, reason: …, reviewed-by: …\}`/u,
    )
    expect((await refused('2031-05-31')).exitStatus).toBe(0)
  })

  test('when its first day is still to come', async () => {
    const {err} = await refused('2031-03-10', (content) => {
      content.remove(file)
      content.write(
        'urgent/t-08.yaml',
        urgentText({number: 'T-08', 'valid-from': '2031-03-11', supersedes: '[T-07]'}),
      )
    })
    expect(err).toContain(
      'Unexpected urgent revision `T-08` that is valid from 2031-03-11 in issue 2031-03 of 2031-03-10, expected one that counts on that day no-untimely-urgent',
    )
  })

  test('when nobody has signed it', async () => {
    const {err} = await refused(
      '2031-03-10',
      (content) => content.write('urgent/t-08.yaml', urgentText({number: 'T-08'})),
      false,
    )
    expect(err).toContain(
      'Unexpected source `urgent/t-08.yaml` without a signature of its author, reviewer, approver',
    )
  })

  test('when it is gone and nobody says why', async () => {
    const {err} = await refused('2031-03-10', (content) => content.remove(file))
    expect(err).toContain(
      'changes.yaml:1:1 error Unexpected end of urgent revision `T-07`, expected it under `ended:` with its reason and who has seen it no-unexplained-change\n    mend: Add `- {urgent: T-07, reason: …, reviewed-by: …}` to `ended:` of changes.yaml',
    )
  })

  test('when it says something else under the number that was issued', async () => {
    const {err} = await withChangedContent(async (content) => {
      await sign(content, '2031-01-02')
      content.write(file, urgentText())
      await sign(content, '2031-02-02')
      await issue(content, '2031-02', '2031-02-10')
      content.replace(file, 'bad batch', 'bad lot')
      return issue(content, '2031-03', '2031-03-10')
    }, smallContent)
    expect(err).toContain(
      'urgent/t-07.yaml:1:1 error Unexpected urgent revision `T-07` with another text than in issue 2031-02 of `vessel-s`, expected a number that was never given no-reused-number',
    )
  })

  test('when it comes back after its end', async () => {
    const {err} = await withChangedContent(async (content) => {
      content.write(file, urgentText())
      await sign(content, '2031-02-02')
      await issue(content, '2031-02', '2031-02-10')
      content.remove(file)
      content.write('changes.yaml', ended)
      expect((await issue(content, '2031-03', '2031-03-10')).err).toBe('')
      content.write('changes.yaml', 'changes: []\n')
      content.write(file, urgentText())
      return issue(content, '2031-04', '2031-04-10')
    }, smallContent)
    expect(err).toContain(
      'Unexpected urgent revision `T-07` with the words that ended with issue 2031-03 of `vessel-s`, expected a number that was never given no-reused-number',
    )
  })
})

test('one that supersedes another is the reason of the end of the other', async () => {
  await withChangedContent(async (content) => {
    content.write(file, urgentText(otherTorque))
    await sign(content, '2031-02-02')
    await issue(content, '2031-02', '2031-02-10')
    content.remove(file)
    content.write('urgent/t-08.yaml', urgentText({number: 'T-08', supersedes: '[T-07]'}))
    await sign(content, '2031-03-02')
    expect((await issue(content, '2031-03', '2031-03-10')).err).toBe('')
    const {pages} = ledgerOf(content, '2031-03')
    expect(pages[page]?.reasons).toEqual([
      'urgent revision T-08: Two hub bolts of one batch broke on a sister ship.',
      'urgent revision T-07 superseded by T-08',
    ])
    expect(pages['vessel-s/design-s/torques']?.reasons).toEqual(['urgent revision T-07 superseded by T-08'])
  }, smallContent)
})
