import {describe, expect, test} from 'vitest'
import {type Ledger, ledgersOf, readLedger} from '../../src/issues/ledger.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {printMessages} from '../../src/messages/print-messages.ts'
import {checkCode} from '../../src/technical-text/technical-hash.ts'
import {ledgerWith} from './ledger-for-tests.ts'

const path = 'issues/vessel-a/2031-03.json'
const hash = 'ab'.repeat(32)
const page = 'vessel-a/4s/wear'
const entry = {
  revision: 2,
  date: '2031-03-14',
  code: checkCode(page, 2, hash),
  hash,
  path: 'p/4s/wear.html',
}

function reading(text: string): {readonly read: ReturnType<typeof readLedger>; readonly said: string} {
  const files: ContentFiles = new Map()
  const read = readLedger(path, text, files)
  return {read, said: printMessages(files, 'content')}
}

describe('a ledger', () => {
  test('is read whole, with its pages', () => {
    const ledger = ledgerWith({
      [page]: {...entry, suffix: 'a', previousHash: 'cd'.repeat(32)},
      'vessel-a/4p/wear': {
        ...entry,
        code: checkCode('vessel-a/4p/wear', 2, hash),
        withdrawn: {date: '2031-03-14', reason: 'gone'},
      },
    })
    expect(reading(JSON.stringify(ledger))).toEqual({read: ledger, said: ''})
  })

  test('is read without a page', () => {
    expect(reading(JSON.stringify(ledgerWith({})))).toEqual({read: ledgerWith({}), said: ''})
  })

  test('that is not JSON is a message at its first line', () => {
    expect(reading('{"version": 1,')).toEqual({
      read: undefined,
      said: `content/${path}:1:1 error Unexpected text that is not JSON, expected a ledger no-damaged-ledger\n    mend: Take the file again from the commit of that issue: a ledger is never edited\n`,
    })
  })

  test.each<[string, string, unknown]>([
    ['a key that is not known', 'pagez', {...ledgerWith({}), pagez: {}}],
    ['a later version', 'version', {...ledgerWith({}), version: 2}],
    ['a day that does not exist', 'date', {...ledgerWith({}), date: '2031-02-30'}],
    ['a revision of nothing', 'pages.a.revision', {...ledgerWith({}), pages: {a: {...entry, revision: 0}}}],
    ['half a hash', 'pages.a.hash', {...ledgerWith({}), pages: {a: {...entry, hash: hash.slice(32)}}}],
    ['a suffix of two letters', 'pages.a.suffix', {...ledgerWith({}), pages: {a: {...entry, suffix: 'ab'}}}],
    ['a code that is a number', 'pages.a.code', {...ledgerWith({}), pages: {a: {...entry, code: 7}}}],
    [
      'a page without its address',
      'pages.a.path',
      {...ledgerWith({}), pages: {a: {...entry, path: undefined}}},
    ],
    ['a missing vessel', 'vessel', {...ledgerWith({}), vessel: undefined}],
  ])('with %s is a message that names the field', (_what, field, ledger) => {
    const {read, said} = reading(JSON.stringify(ledger))
    expect(read).toBeUndefined()
    expect(said.split('\n')[0]).toBe(
      `content/${path}:1:1 error Unexpected field \`${field}\` in the ledger, expected a ledger of version \`1\` no-damaged-ledger`,
    )
  })

  test.each<[string, Ledger, string]>([
    [
      'another vessel than its folder',
      ledgerWith({}, {vessel: 'vessel-b'}),
      'Unexpected vessel `vessel-b` of the ledger, expected `vessel-a` as its folder',
    ],
    [
      'another issue than its name',
      ledgerWith({}, {issue: '2031-04'}),
      'Unexpected issue `2031-04` of the ledger, expected `2031-03` as its name',
    ],
    [
      'a page of another vessel',
      ledgerWith({'vessel-b/4s/wear': {...entry, code: checkCode('vessel-b/4s/wear', 2, hash)}}),
      'Unexpected page `vessel-b/4s/wear` in the ledger, expected pages of `vessel-a`',
    ],
    [
      'a revision that was edited',
      ledgerWith({[page]: {...entry, revision: 3}}),
      `Unexpected check code \`${entry.code}\` of page \`${page}\` in the ledger, expected \`${checkCode(page, 3, hash)}\` for its revision and text`,
    ],
    [
      'the code of another page',
      ledgerWith({'vessel-a/4p/wear': entry}),
      `Unexpected check code \`${entry.code}\` of page \`vessel-a/4p/wear\` in the ledger, expected \`${checkCode('vessel-a/4p/wear', 2, hash)}\` for its revision and text`,
    ],
  ])('with %s is refused', (_what, ledger, reason) => {
    const {read, said} = reading(JSON.stringify(ledger))
    expect(read).toBeUndefined()
    expect(said).toBe(
      `content/${path}:1:1 error ${reason} no-damaged-ledger\n    mend: Take the file again from the commit of that issue: a ledger is never edited\n`,
    )
  })

  test('keeps its code under an editorial letter', () => {
    expect(reading(JSON.stringify(ledgerWith({[page]: {...entry, suffix: 'b'}}))).said).toBe('')
  })

  test('with a field that nobody knows is refused', () => {
    const {read, said} = reading(JSON.stringify({...ledgerWith({}), approved: true}))
    expect(read).toBeUndefined()
    expect(said).toContain('no-damaged-ledger')
  })
})

describe('the newest ledger', () => {
  const text = (issue: string, date: string): string => JSON.stringify(ledgerWith({}, {issue, date}))

  test('is none when the vessel has no issue yet, even when another vessel has', () => {
    const files: ContentFiles = new Map()
    const others = new Map([
      ['issues/vessel-b/2031-03.json', text('2031-03', '2031-03-14')],
      ['issues/vessel-a-two/2031-03.json', text('2031-03', '2031-03-14')],
      ['issues/vessel-a/texts/abc.txt', 'identity'],
    ])
    expect(ledgersOf('vessel-a', new Map(), files)).toEqual([])
    expect(ledgersOf('vessel-a', others, files)).toEqual([])
    expect(files.size).toBe(0)
  })

  test('is the one with the latest date, whatever the order of the files', () => {
    const issues = [
      ['issues/vessel-a/2031-03.json', text('2031-03', '2031-03-14')],
      ['issues/vessel-a/2032-01.json', text('2032-01', '2032-01-05')],
      ['issues/vessel-a/2030-11.json', text('2030-11', '2030-11-30')],
    ] as const
    for (const order of [issues, [...issues].reverse()])
      expect(ledgersOf('vessel-a', new Map(order), new Map()).at(-1)?.issue).toBe('2032-01')
  })

  test('of one day is the one with the later name', () => {
    const issues = [
      ['issues/vessel-a/2031-03b.json', text('2031-03b', '2031-03-14')],
      ['issues/vessel-a/2031-03a.json', text('2031-03a', '2031-03-14')],
    ] as const
    expect(ledgersOf('vessel-a', new Map(issues), new Map()).at(-1)?.issue).toBe('2031-03b')
  })

  test('is never guessed past a damaged one: the damage is a message that stops the build', () => {
    const files: ContentFiles = new Map()
    const issues = new Map([
      ['issues/vessel-a/2031-03.json', text('2031-03', '2031-03-14')],
      ['issues/vessel-a/2031-04.json', '{'],
    ])
    ledgersOf('vessel-a', issues, files)
    expect(
      files.get('issues/vessel-a/2031-04.json')?.messages.map(({ruleId, fatal}) => ({ruleId, fatal})),
    ).toEqual([{ruleId: 'no-damaged-ledger', fatal: true}])
  })
})
