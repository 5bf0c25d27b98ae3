import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {decideCondition, type Facts} from '../../src/conditions/decide-condition.ts'
import type {Condition, Truth} from '../../src/handbook-model/condition.ts'
import type {Place} from '../../src/messages/place.ts'

const place: Place = {path: 'procedures/sample.md', line: 1, column: 1}

/** `open` and `other` are known, `seal` is not, `stranger` is not even named. */
const facts: Facts = new Map([
  ['open', 'yes'],
  ['other', 'no'],
  ['seal', undefined],
])

/** A condition of each truth over these facts. */
const of = {
  true: {kind: 'equals', fact: 'open', value: 'yes', place},
  false: {kind: 'equals', fact: 'open', value: 'no', place},
  unknown: {kind: 'equals', fact: 'seal', value: 'yes', place},
} as const satisfies Record<Truth, Condition>

const decide = (condition: Condition): Truth => decideCondition(condition, facts)
const and = (...operands: readonly Condition[]): Condition => ({kind: 'and', operands, place})
const or = (...operands: readonly Condition[]): Condition => ({kind: 'or', operands, place})
const not = (operand: Condition): Condition => ({kind: 'not', operand, place})

describe('a comparison', () => {
  test.each<[string, Condition, Truth]>([
    ['equals, with the value', {kind: 'equals', fact: 'open', value: 'yes', place}, 'true'],
    ['equals, with another value', {kind: 'equals', fact: 'open', value: 'no', place}, 'false'],
    ['equals, over an unknown fact', {kind: 'equals', fact: 'seal', value: 'yes', place}, 'unknown'],
    ['differs, with the value', {kind: 'differs', fact: 'open', value: 'yes', place}, 'false'],
    ['differs, with another value', {kind: 'differs', fact: 'open', value: 'no', place}, 'true'],
    ['differs, over an unknown fact', {kind: 'differs', fact: 'seal', value: 'yes', place}, 'unknown'],
    ['in, with the value', {kind: 'in', fact: 'open', values: ['no', 'yes'], place}, 'true'],
    ['in, without the value', {kind: 'in', fact: 'open', values: ['no', 'half'], place}, 'false'],
    ['in, over an unknown fact', {kind: 'in', fact: 'seal', values: ['no', 'yes'], place}, 'unknown'],
    ['known, over a known fact', {kind: 'known', fact: 'other', place}, 'true'],
    ['known, over an unknown fact', {kind: 'known', fact: 'seal', place}, 'false'],
    [
      'equals, over a fact that nobody names',
      {kind: 'equals', fact: 'stranger', value: 'yes', place},
      'unknown',
    ],
    ['known, over a fact that nobody names', {kind: 'known', fact: 'stranger', place}, 'false'],
  ])('%s', (_what, condition, truth) => {
    expect(decide(condition)).toBe(truth)
  })
})

describe('truths are joined in three values', () => {
  test.each<[Truth, Truth, Truth, Truth]>([
    ['true', 'true', 'true', 'true'],
    ['true', 'false', 'false', 'true'],
    ['true', 'unknown', 'unknown', 'true'],
    ['false', 'true', 'false', 'true'],
    ['false', 'false', 'false', 'false'],
    ['false', 'unknown', 'false', 'unknown'],
    ['unknown', 'true', 'unknown', 'true'],
    ['unknown', 'false', 'false', 'unknown'],
    ['unknown', 'unknown', 'unknown', 'unknown'],
  ])('%s with %s: and gives %s, or gives %s', (one, other, both, either) => {
    expect(decide(and(of[one], of[other]))).toBe(both)
    expect(decide(or(of[one], of[other]))).toBe(either)
  })

  test.each<[Truth, Truth]>([
    ['true', 'false'],
    ['false', 'true'],
    ['unknown', 'unknown'],
  ])('not %s is %s', (truth, negated) => {
    expect(decide(not(of[truth]))).toBe(negated)
  })

  test('one false operand among many decides `and`, one true operand decides `or`', () => {
    expect(decide(and(of.true, of.unknown, of.true, of.false))).toBe('false')
    expect(decide(or(of.false, of.unknown, of.false, of.true))).toBe('true')
  })
})

describe('unknown is never decided wrongly', () => {
  const values = ['yes', 'no', 'half']
  const word = fc.constantFrom(...values)
  const fact = fc.constantFrom('open', 'other', 'seal')
  const condition: fc.Arbitrary<Condition> = fc.letrec<{any: Condition}>((tie) => ({
    any: fc.oneof(
      {maxDepth: 4, withCrossShrink: true},
      fc.record({kind: fc.constant('equals' as const), fact, value: word, place: fc.constant(place)}),
      fc.record({kind: fc.constant('differs' as const), fact, value: word, place: fc.constant(place)}),
      fc.record({
        kind: fc.constant('in' as const),
        fact,
        values: fc.array(word, {minLength: 1}),
        place: fc.constant(place),
      }),
      fc.record({kind: fc.constant('not' as const), operand: tie('any'), place: fc.constant(place)}),
      fc.record({
        kind: fc.constantFrom('and' as const, 'or' as const),
        operands: fc.array(tie('any'), {minLength: 2, maxLength: 3}),
        place: fc.constant(place),
      }),
    ),
  })).any

  test('a condition decided without a fact is decided the same whatever the fact turns out to be', () => {
    fc.assert(
      fc.property(condition, (one) => {
        const truth = decide(one)
        if (truth === 'unknown') return
        for (const value of values)
          expect(decideCondition(one, new Map([...facts, ['seal', value]]))).toBe(truth)
      }),
    )
  })

  test('a condition over known facts is never unknown', () => {
    fc.assert(
      fc.property(condition, word, (one, value) => {
        expect(decideCondition(one, new Map([...facts, ['seal', value]]))).not.toBe('unknown')
      }),
    )
  })
})
