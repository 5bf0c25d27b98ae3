import {describe, expect, test} from 'vitest'
import {parseCondition} from '../../../src/check/conditions/parse-condition.ts'
import type {Condition, WrittenCondition} from '../../../src/handbook-model/condition.ts'
import type {ContentFiles} from '../../../src/messages/add-message.ts'
import type {Place} from '../../../src/messages/place.ts'
import {linesOf} from '../messages-for-tests.ts'

const start: Place = {path: 'procedures/sample.md', line: 7, column: 11}

function parse(text: string): {
  readonly written: WrittenCondition | undefined
  readonly lines: readonly string[]
} {
  const files: ContentFiles = new Map()
  return {written: parseCondition(text, start, files), lines: linesOf(files)}
}

/** The tree as a bracketed line, so that binding can be read. */
function shown(condition: Condition): string {
  switch (condition.kind) {
    case 'equals':
      return `${condition.fact}=${condition.value}`
    case 'differs':
      return `${condition.fact}≠${condition.value}`
    case 'in':
      return `${condition.fact} in ${condition.values.join('|')}`
    case 'known':
      return `known ${condition.fact}`
    case 'not':
      return `[not ${shown(condition.operand)}]`
    case 'and':
    case 'or':
      return `[${condition.operands.map(shown).join(` ${condition.kind} `)}]`
    default:
      return neverReached(condition)
  }
}

function neverReached(value: never): never {
  throw new Error(`Unexpected condition ${JSON.stringify(value)}`)
}

describe('a condition', () => {
  test.each([
    ['backstop = fitted', 'backstop=fitted'],
    ['backstop=fitted', 'backstop=fitted'],
    ['backstop ≠ fitted', 'backstop≠fitted'],
    ['backstop != fitted', 'backstop≠fitted'],
    ['cargo-seal in (single-lip, double-lip)', 'cargo-seal in single-lip|double-lip'],
    ['cargo-seal in (none)', 'cargo-seal in none'],
    ['known backstop', 'known backstop'],
    ['not known backstop', '[not known backstop]'],
    ['not not a = b', '[not [not a=b]]'],
    ['(a = b)', 'a=b'],
    ['((a = b))', 'a=b'],
    ['a = b and c = d and e = f', '[a=b and c=d and e=f]'],
    ['a = 1 or a = 2', '[a=1 or a=2]'],
  ])('`%s` is read as %s', (text, tree) => {
    const {written, lines} = parse(text)
    expect(lines).toEqual([])
    expect(written && shown(written.condition)).toBe(tree)
    expect(written?.text).toBe(text)
  })

  test.each([
    ['not a = b and c = d', '[[not a=b] and c=d]'],
    ['a = b or c = d and e = f', '[a=b or [c=d and e=f]]'],
    ['a = b and c = d or e = f', '[[a=b and c=d] or e=f]'],
    ['(a = b or c = d) and e = f', '[[a=b or c=d] and e=f]'],
    ['not (a = b or c = d)', '[not [a=b or c=d]]'],
  ])('binds `not` before `and` before `or`: `%s` is %s', (text, tree) => {
    const {written} = parse(text)
    expect(written && shown(written.condition)).toBe(tree)
  })

  test('knows the place of each of its parts in the file', () => {
    const {written} = parse('a = b or not c in (d)')
    expect(written?.condition).toEqual({
      kind: 'or',
      place: start,
      operands: [
        {kind: 'equals', fact: 'a', value: 'b', place: start},
        {
          kind: 'not',
          place: {...start, column: 20},
          operand: {kind: 'in', fact: 'c', values: ['d'], place: {...start, column: 24}},
        },
      ],
    })
  })
})

describe('a condition outside the grammar is one message at the column of the fault', () => {
  test.each([
    ['', 11, 'end in the condition, expected the name of a fact'],
    ['backstop', 19, 'end in the condition, expected `=`, `≠` or `in` after the fact'],
    ['backstop == fitted', 21, '`=` in the condition, expected a value of the fact'],
    ['backstop =', 21, 'end in the condition, expected a value of the fact'],
    ['backstop is fitted', 20, '`is` in the condition, expected `=`, `≠` or `in` after the fact'],
    ['backstop = fitted seal = none', 29, '`seal` in the condition, expected `and`, `or` or the end'],
    ['backstop = fitted AND seal = none', 29, '`AND` in the condition, expected `and`, `or` or the end'],
    ['backstop = fitted and', 32, 'end in the condition, expected the name of a fact'],
    ['or backstop = fitted', 11, '`or` in the condition, expected the name of a fact'],
    ['backstop = not', 22, '`not` in the condition, expected a value of the fact'],
    ['(backstop = fitted', 29, 'end in the condition, expected `)`'],
    ['backstop = fitted)', 28, '`)` in the condition, expected `and`, `or` or the end'],
    ['seal in none', 19, '`none` in the condition, expected `(`'],
    ['seal in ()', 20, '`)` in the condition, expected a value of the fact'],
    ['seal in (a, )', 23, '`)` in the condition, expected a value of the fact'],
    ['seal in (a b)', 22, '`b` in the condition, expected `)`'],
    ['known', 16, 'end in the condition, expected the name of a fact'],
    ['speed > 3', 17, '`>` in the condition, expected `=`, `≠` or `in` after the fact'],
  ])('`%s`', (text, column, reason) => {
    const {written, lines} = parse(text)
    expect(written).toBeUndefined()
    expect(lines).toEqual([`procedures/sample.md:7:${column} Unexpected ${reason} no-bad-condition`])
  })
})
