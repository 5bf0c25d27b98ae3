import {describe, expect, test} from 'vitest'
import {newestLedger, readLedger} from '../../src/issues/ledger.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {printMessages} from '../../src/messages/print-messages.ts'
import {ledgerWith} from './ledger-for-tests.ts'

const path = 'issues/vessel-a/2031-03.json'
const hash = 'ab'.repeat(32)
const entry = {revision: 2, date: '2031-03-14', code: '7K2M-9QTR-4', hash}

function reading(text: string): {readonly read: ReturnType<typeof readLedger>; readonly said: string} {
  const files: ContentFiles = new Map()
  const read = readLedger(path, text, files)
  return {read, said: printMessages(files, 'content')}
}

describe('a ledger', () => {
  test('is read whole, with its pages', () => {
    const ledger = ledgerWith({
      'vessel-a/4s/wear': {...entry, suffix: 'a', previousHash: 'cd'.repeat(32)},
      'vessel-a/4p/wear': {...entry, withdrawn: true},
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
    ['a missing vessel', 'vessel', {...ledgerWith({}), vessel: undefined}],
  ])('with %s is a message that names the field', (_what, field, ledger) => {
    const {read, said} = reading(JSON.stringify(ledger))
    expect(read).toBeUndefined()
    expect(said.split('\n')[0]).toBe(
      `content/${path}:1:1 error Unexpected field \`${field}\` in the ledger, expected a ledger of version \`1\` no-damaged-ledger`,
    )
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
    expect(newestLedger('vessel-a', new Map(), files)).toBeUndefined()
    expect(newestLedger('vessel-a', others, files)).toBeUndefined()
    expect(files.size).toBe(0)
  })

  test('is the one with the latest date, whatever the order of the files', () => {
    const issues = [
      ['issues/vessel-a/1.json', text('2031-03', '2031-03-14')],
      ['issues/vessel-a/2.json', text('2032-01', '2032-01-05')],
      ['issues/vessel-a/3.json', text('2030-11', '2030-11-30')],
    ] as const
    for (const order of [issues, [...issues].reverse()])
      expect(newestLedger('vessel-a', new Map(order), new Map())?.issue).toBe('2032-01')
  })

  test('of one day is the one with the later name', () => {
    const issues = [
      ['issues/vessel-a/1.json', text('2031-03b', '2031-03-14')],
      ['issues/vessel-a/2.json', text('2031-03a', '2031-03-14')],
    ] as const
    expect(newestLedger('vessel-a', new Map(issues), new Map())?.issue).toBe('2031-03b')
  })

  test('is never guessed past a damaged one: the damage is a message that stops the build', () => {
    const files: ContentFiles = new Map()
    const issues = new Map([
      ['issues/vessel-a/1.json', text('2031-03', '2031-03-14')],
      ['issues/vessel-a/2.json', '{'],
    ])
    newestLedger('vessel-a', issues, files)
    expect(files.get('issues/vessel-a/2.json')?.messages.map(({ruleId, fatal}) => ({ruleId, fatal}))).toEqual(
      [{ruleId: 'no-damaged-ledger', fatal: true}],
    )
  })
})
