import {describe, expect, test} from 'vitest'
import {standing} from '../../src/compile/variant.ts'
import type {Condition, WrittenCondition} from '../../src/handbook-model/condition.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {place} from './data-for-tests.ts'
import {equals, written} from './procedures-for-tests.ts'

const desk = deskOf(contentOf({}), '4s')
const one: Condition = {kind: 'equals', fact: 'backstop', value: 'fitted', place}
const seal: Condition = {kind: 'equals', fact: 'cargo-seal', value: 'single-lip', place}
const other: Condition = {kind: 'in', fact: 'backstop', values: ['fitted', 'none'], place}

describe('a block with a condition', () => {
  test('stands without a heading when it has none or its condition is true', () => {
    expect(standing(undefined, desk)).toEqual({stands: true})
    expect(standing(equals('cargo-seal', 'single-lip'), desk)).toEqual({stands: true})
  })

  test('is gone when its condition is false', () => {
    expect(standing(equals('cargo-seal', 'double-lip'), desk)).toEqual({stands: false})
  })

  test('stands under its condition in words when nobody knows the fact', () => {
    expect(standing(equals('backstop', 'fitted'), desk)).toEqual({
      stands: true,
      variant: 'only if backstop of the shaft is fitted',
    })
  })

  test('is decided by what is known where that settles it', () => {
    expect(standing(written({kind: 'or', operands: [one, seal], place}, ''), desk)).toEqual({stands: true})
    expect(
      standing(written({kind: 'and', operands: [one, {kind: 'not', operand: seal, place}], place}, ''), desk),
    ).toEqual({stands: false})
  })

  test.each<{words: string; condition: Condition}>([
    {
      words: 'only if backstop of the shaft is not none',
      condition: {kind: 'differs', fact: 'backstop', value: 'none', place},
    },
    {words: 'only if backstop of the shaft is fitted or none', condition: other},
    {words: 'only if backstop of the shaft is not fitted', condition: {kind: 'not', operand: one, place}},
    {
      words: 'only if backstop of the shaft is fitted',
      condition: {kind: 'and', operands: [seal, one], place},
    },
  ])('prints no word of the condition language: $words', ({words, condition}) => {
    const when: WrittenCondition = written(condition, 'backstop = fitted and x ≠ y')
    expect(standing(when, desk)).toEqual({stands: true, variant: words})
  })
})
