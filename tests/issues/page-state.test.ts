import {describe, expect, test} from 'vitest'
import type {Ledger} from '../../src/issues/ledger.ts'
import {pageState} from '../../src/issues/page-state.ts'
import {checkCode, technicalHash} from '../../src/technical-text/technical-hash.ts'
import {ledgerWith} from './ledger-for-tests.ts'

const id = 'vessel-a/4s/wear'
const text = 'identity\tposition\t4S\nhub-bolts.torque\tvalue\t62 N·m\n'
const hash = technicalHash(text)
const entry: Ledger['pages'][string] = {
  revision: 3,
  date: '2031-03-14',
  code: checkCode(id, 3, hash),
  hash,
  path: 'p/4s/wear.html',
}

describe('a page against the ledger', () => {
  test('is a draft without a ledger', () => {
    expect(pageState(id, text, undefined)).toEqual({kind: 'draft'})
  })

  test('is a draft when the ledger has no page yet', () => {
    expect(pageState(id, text, ledgerWith({}))).toEqual({kind: 'draft'})
  })

  test('is a draft when the ledger lists only other pages with the same text', () => {
    expect(pageState(id, text, ledgerWith({'vessel-a/4p/wear': entry}))).toEqual({kind: 'draft'})
  })

  test('is a draft when one digit of a value differs', () => {
    expect(pageState(id, text.replace('62', '63'), ledgerWith({[id]: entry}))).toEqual({kind: 'draft'})
  })

  test('is a draft when the ledger withdraws it', () => {
    expect(
      pageState(id, text, ledgerWith({[id]: {...entry, withdrawn: {date: '2031-03-14', reason: 'gone'}}})),
    ).toEqual({kind: 'draft'})
  })

  test('is issued with revision, date and code when its text is the issued one', () => {
    expect(pageState(id, text, ledgerWith({[id]: entry}))).toEqual({
      kind: 'issued',
      revision: 3,
      suffix: '',
      date: '2031-03-14',
      checkCode: checkCode(id, 3, hash),
    })
  })

  test('keeps its code under an editorial letter', () => {
    expect(pageState(id, text, ledgerWith({[id]: {...entry, suffix: 'a'}}))).toMatchObject({
      kind: 'issued',
      revision: 3,
      suffix: 'a',
      checkCode: entry.code,
    })
  })
})
