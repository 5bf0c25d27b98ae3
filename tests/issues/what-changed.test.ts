import {expect, test} from 'vitest'
import type {ChangedPage} from '../../src/handbook-model/publication.ts'
import type {Ledger, PageEntry} from '../../src/issues/ledger.ts'
import {alike} from '../../src/issues/publication-head.ts'
import {whatChanged} from '../../src/issues/what-changed.ts'
import {checkCode, technicalHash} from '../../src/technical-text/technical-hash.ts'
import {ledgerWith} from './ledger-for-tests.ts'

const id = 'vessel-a/4s/wear'
const vessel = {
  id: 'vessel-a',
  name: 'Vessel A',
  hullNumber: '0937241',
  issuer: 'office',
  contact: [],
  owner: 'owner',
  approvedBy: 'superintendent',
  demonstration: true,
  tanks: [],
  language: 'en',
}

/** What an issue says of one page whose text changed. */
function changesOf(before: string, after: string): ChangedPage['changes'][number] | undefined {
  const entry = (revision: number, text: string): PageEntry => {
    const hash = technicalHash(text)
    return {revision, date: '2031-03-14', code: checkCode(id, revision, hash), hash, path: 'p/4s/wear.html'}
  }
  const ledgerOf = (revision: number, text: string): Ledger =>
    ledgerWith({[id]: {...entry(revision, text), reasons: ['seen at sea']}})
  const [page] = whatChanged({
    pages: {vessel, pages: [], figures: [], records: []},
    states: new Map(),
    ledger: ledgerOf(2, after),
    earlier: ledgerOf(1, before),
    texts: new Map([before, after].map((text) => [technicalHash(text), text])),
  })
  return page?.changes[0]
}

const line = (block: string, kind: string, text: string): string => `${block}\t${kind}\t${text}\n`

test.each([
  ['steps', 'wear--look', 'choice'],
  ['steps', 'wear--wait', 'missed'],
  ['steps', 'wear--hub', 'hold'],
  ['cautions', 'caution-noise', 'hazard'],
  ['cautions', 'urgent-t-07', 'do'],
  ['values', 'hub-bolts.torque', 'value'],
  ['values', 'ring-renewal', 'limit'],
  ['values', '4s-pressure', 'isolation'],
] as const)('what changed shows %s where `%s` has another `%s`', (part, block, kind) => {
  const changes = changesOf(line(block, kind, 'before'), line(block, kind, 'after'))
  const shown = {steps: changes?.steps, cautions: changes?.cautions, values: changes?.values}
  const own = [{done: 'changed', block: block.replace(/^.*--/u, ''), kind, before: 'before', after: 'after'}]
  expect(shown).toEqual({steps: [], cautions: [], values: [], [part]: own})
})

test('what changed is silent on a step that has another number alone', () => {
  expect(changesOf(line('wear--look', 'number', '4'), line('wear--look', 'number', '5'))).toMatchObject({
    steps: [],
    cautions: [],
    values: [],
  })
})

test('pages of one title, revision and reason stand together in their order', () => {
  const page = {path: 'a.html', title: 'Purging', revision: '2'}
  expect(
    alike([
      {...page, id: 'vessel-a/4s/purging', reason: 'split'},
      {...page, id: 'vessel-a/4s/rings', title: 'Rings'},
      {...page, id: 'vessel-a/4p/purging', reason: 'split'},
      {...page, id: 'vessel-a/3p/purging', reason: 'joined'},
      {...page, id: 'vessel-a/3s/purging', reason: 'split', revision: '3'},
    ]).map(({title, revision, reason, pages}) => [title, revision, reason, pages.map(({id}) => id)]),
  ).toEqual([
    ['Purging', '2', 'split', ['vessel-a/4s/purging', 'vessel-a/4p/purging']],
    ['Rings', '2', '', ['vessel-a/4s/rings']],
    ['Purging', '2', 'joined', ['vessel-a/3p/purging']],
    ['Purging', '3', 'split', ['vessel-a/3s/purging']],
  ])
})
