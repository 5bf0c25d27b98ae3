import {describe, expect, test} from 'vitest'
import type {DeclaredChange, Withdrawal} from '../../src/handbook-model/approval-content.ts'
import type {PageEntry} from '../../src/issues/ledger.ts'
import {type IssuedPage, nextPages} from '../../src/issues/next-ledger.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {printMessages} from '../../src/messages/print-messages.ts'
import {checkCode, technicalHash} from '../../src/technical-text/technical-hash.ts'
import {ledgerWith} from './ledger-for-tests.ts'

const id = 'vessel-a/4s/wear'
const path = 'p/4s/wear.html'
const file = 'procedures/wear.md'
const old = 'loosen-bolts\tstep\tLoosen each of the 8 bolts.\nhub.torque\tvalue\t61 N·m\n'
const worded = old.replace('Loosen each of', 'Loosen all')
const before: PageEntry = {
  revision: 4,
  date: '2031-03-14',
  code: checkCode(id, 4, technicalHash(old)),
  hash: technicalHash(old),
  path,
  previousHash: technicalHash('older'),
  reasons: ['first sea trial'],
}
const [oldSource, newSource] = ['a', 'b'].map((letter) => letter.repeat(64))

function declared(more: Partial<DeclaredChange>): DeclaredChange {
  return {
    file,
    hash: newSource ?? '',
    class: 'technical',
    reason: 'new paste',
    place: {path: 'changes.yaml', line: 3, column: 5},
    ...more,
  }
}

/** The next issue of one page whose source changed, and what is said about it. */
function issued(
  page: Partial<IssuedPage> | undefined,
  more: {
    readonly earlier?: PageEntry
    readonly changes?: readonly DeclaredChange[]
    readonly withdrawals?: readonly Withdrawal[]
    readonly texts?: ReadonlyMap<string, string>
    readonly others?: readonly IssuedPage[]
    readonly source?: string
  } = {},
): {readonly entry: PageEntry | undefined; readonly said: string} {
  const files: ContentFiles = new Map()
  const earlier = ledgerWith({[id]: more.earlier ?? before}, {sources: {[file]: oldSource ?? ''}})
  const {version: _version, pages: _pages, manifestHash: _manifest, ...facts} = earlier
  const pages = nextPages(
    {
      facts: {
        ...facts,
        issue: '2031-04',
        date: '2031-04-02',
        sources: {[file]: more.source ?? newSource ?? ''},
      },
      pages: [...(page ? [{id, path, text: old, madeFrom: [file], ...page}] : []), ...(more.others ?? [])],
      earlier,
      earlierTexts: more.texts ?? new Map([[technicalHash(old), old]]),
      changes: more.changes ?? [],
      withdrawals: more.withdrawals ?? [],
      ended: [],
      urgent: [],
    },
    files,
  )
  return {entry: pages[id], said: printMessages(files, 'content')}
}

describe('a page of the next issue', () => {
  test('that reads as before keeps its entry whole, whatever became of its source', () => {
    expect(issued({})).toEqual({entry: before, said: ''})
  })

  test('that is new begins with revision 1', () => {
    const hash = technicalHash(worded)
    const others = [{id: 'vessel-a/4s/seal', path: 'p/4s/seal.html', text: worded, madeFrom: [file]}]
    const files: ContentFiles = new Map()
    const {version: _version, pages: _pages, manifestHash: _manifest, ...facts} = ledgerWith({})
    const input = {
      facts,
      pages: others,
      earlier: undefined,
      earlierTexts: new Map(),
      changes: [],
      withdrawals: [],
      ended: [],
      urgent: [],
    }
    expect(nextPages(input, files)).toEqual({
      'vessel-a/4s/seal': {
        revision: 1,
        date: '2031-03-14',
        code: checkCode('vessel-a/4s/seal', 1, hash),
        hash,
        path: 'p/4s/seal.html',
      },
    })
    expect(files.size).toBe(0)
  })

  test('whose value moved is a new revision with its reason and a code of its own', () => {
    const text = old.replace('61', '70')
    expect(issued({text}, {changes: [declared({})]})).toEqual({
      entry: {
        revision: 5,
        date: '2031-04-02',
        code: checkCode(id, 5, technicalHash(text)),
        hash: technicalHash(text),
        path,
        previousHash: before.hash,
        reasons: ['new paste'],
      },
      said: '',
    })
  })

  test('whose wording changed, seen by a reviewer, gets a letter and keeps code, reasons and bars', () => {
    const {entry, said} = issued({text: worded}, {changes: [declared({class: 'editorial'})]})
    expect(said).toBe('')
    expect(entry).toEqual({
      ...before,
      suffix: 'a',
      date: '2031-04-02',
      hash: technicalHash(worded),
      revisionHash: before.hash,
    })
  })

  test('gets the next letter behind a letter, and a technical change ends the letters', () => {
    const lettered: PageEntry = {...before, suffix: 'b', revisionHash: technicalHash('first of revision 4')}
    const again = issued({text: worded}, {earlier: lettered, changes: [declared({class: 'editorial'})]})
    expect(again.entry).toMatchObject({suffix: 'c', revisionHash: lettered.revisionHash, code: before.code})
    const moved = issued({text: old.replace('61', '70')}, {earlier: lettered, changes: [declared({})]})
    expect(moved.entry).toMatchObject({revision: 5, previousHash: before.hash})
    expect(moved.entry).not.toHaveProperty('suffix')
    expect(moved.entry).not.toHaveProperty('revisionHash')
  })

  test('whose wording changed counts as technical when nobody called it editorial', () => {
    expect(issued({text: worded}, {changes: [declared({})]}).entry).toMatchObject({revision: 5})
  })

  test.each<[string, string, string]>([
    ['a value', old.replace('61', '70'), '`value` of `hub.torque`'],
    ['a figure inside a sentence', old.replace('8 bolts', '6 bolts'), '`step` of `loosen-bolts`'],
    ['a step that came', `wait\tstep\tWait.\n${old}`, '`step` of `wait`'],
    ['the order', `hub.torque\tvalue\t61 N·m\n${old.split('\n')[0]}\n`, '`step` of `loosen-bolts`'],
    ['a limit', `${old}hub\tlimit\tnot above 2 mm\n`, '`limit` of `hub`'],
  ])('is never editorial when it moved %s', (_what, text, what) => {
    const {entry, said} = issued({text}, {changes: [declared({class: 'editorial'})]})
    expect(entry).toMatchObject({revision: 5})
    expect(said).toContain(
      `content/changes.yaml:3:5 error Unexpected editorial change of \`${file}\` that moves ${what} on page \`${id}\`, expected wording alone no-disguised-change\n`,
    )
  })

  test('that moved without a reason is told at its source, once for all pages', () => {
    const others = [{id: 'vessel-a/4p/wear', path: 'p/4p/wear.html', text: worded, madeFrom: [file]}]
    const {said} = issued({text: worded}, {others})
    expect(said).toBe(
      `content/${file}:1:1 error Unexpected change of \`${file}\` that moves page \`${id}\`, expected its reason in changes.yaml no-unexplained-change\n    mend: Add to changes.yaml: \`- {file: ${file}, hash: ${newSource}, class: technical, reason: …}\`\n`,
    )
  })

  test('finds no reason in words about an older text of the source', () => {
    expect(issued({text: worded}, {changes: [declared({hash: oldSource ?? ''})]}).said).toContain(
      'no-unexplained-change',
    )
  })

  test('that moved by the program alone names the program', () => {
    expect(issued({text: worded}, {source: oldSource ?? ''})).toMatchObject({
      entry: {revision: 5, reasons: ['handbook program 0.1.0']},
      said: '',
    })
  })

  test.each<[string, ReadonlyMap<string, string>]>([
    ['is missing', new Map()],
    ['was edited', new Map([[technicalHash(old), worded]])],
  ])('whose earlier text %s is told', (_what, texts) => {
    expect(issued({text: worded}, {changes: [declared({})], texts}).said).toContain(
      `content/issues/vessel-a/texts/${before.hash}.txt:1:1 error Unexpected ledger without the text of page \`${id}\` in revision 4, expected the file as the tool wrote it no-lost-text\n`,
    )
  })
})

describe('a page that is gone', () => {
  const place = {path: 'changes.yaml', line: 6, column: 5}
  const beside = {id: 'vessel-a/4s/rings', path: 'p/4s/rings.html', text: worded, madeFrom: []}

  test('is withdrawn with day, reason and the page in its place', () => {
    const withdrawals = [{page: 'wear', reason: 'split', replacedBy: {id: 'rings', place}, place}]
    expect(issued(undefined, {withdrawals, others: [beside]})).toEqual({
      entry: {
        ...before,
        withdrawn: {date: '2031-04-02', reason: 'split', replacedBy: 'vessel-a/4s/rings'},
      },
      said: '',
    })
  })

  test('goes with its whole pump', () => {
    const withdrawals = [{page: '4s', reason: 'pump landed', place}]
    expect(issued(undefined, {withdrawals}).entry?.withdrawn).toEqual({
      date: '2031-04-02',
      reason: 'pump landed',
    })
  })

  test('without a reason is told', () => {
    expect(issued(undefined).said).toBe(
      `content/changes.yaml:1:1 error Unexpected page \`${id}\` that is gone, expected it under \`withdrawn:\` with its reason no-unexplained-change\n    mend: Add \`- {page: …, reason: …}\` with the last word of its id to \`withdrawn:\` of changes.yaml\n`,
    )
  })

  test('stays withdrawn without being asked again', () => {
    const earlier = {...before, withdrawn: {date: '2031-03-14', reason: 'split'}}
    expect(issued(undefined, {earlier})).toEqual({entry: earlier, said: ''})
  })

  test('and comes back is a new revision, even with the old words', () => {
    const earlier = {...before, withdrawn: {date: '2031-03-14', reason: 'split'}}
    const {entry} = issued({}, {earlier, changes: [declared({reason: 'joined again'})]})
    expect(entry).toEqual({
      revision: 5,
      date: '2031-04-02',
      code: checkCode(id, 5, before.hash),
      hash: before.hash,
      path,
      reasons: ['joined again'],
    })
  })
})
