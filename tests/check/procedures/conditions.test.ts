import {describe, expect, test} from 'vitest'
import {linesOf, placeIn} from '../messages-for-tests.ts'
import {parsed, workText} from '../procedure-for-tests.ts'

describe('conditions in a procedure', () => {
  test.each<readonly [what: string, text: string, at: string, message: string]>([
    [
      'a fault in it is told at its own column',
      workText('1. :step{#look when="backstop == fitted"} Look.'),
      '= fitted',
      'Unexpected `=` in the condition, expected a value of the fact no-bad-condition',
    ],
    [
      'a blank one is refused: the step would silently stand on every pump',
      workText('1. :step{#look when=""} Look.'),
      ':step{#look',
      'Unexpected end in the condition, expected the name of a fact no-bad-condition',
    ],
    [
      'a name without a condition is refused',
      workText('1. :step{#look when} Look.'),
      ':step{#look',
      'Unexpected end in the condition, expected the name of a fact no-bad-condition',
    ],
    [
      'a fault at a reading is told once',
      workText(
        '1. :step{#look} Look.\n\n   ::reading{#gap title=gap quantity=length unit=mm stations=a instrument=gauge phase=during when="a b"}',
      ),
      'b"}',
      'Unexpected `b` in the condition, expected `=`, `≠` or `in` after the fact no-bad-condition',
    ],
  ])('%s', (_what, text, at, message) => {
    expect(linesOf(parsed(text).files)).toEqual([`${placeIn(text, at)} ${message}`])
  })

  test('a fault is told in its own attribute, not where the same words stand before', () => {
    const text = workText(
      '1. :step{#look} Look.\n\n   ::figure{name=tank-plan caption="a = b =" when="a = b ="}',
    )
    expect(linesOf(parsed(text).files)).toEqual([
      `${placeIn(text, '="}')} Unexpected \`=\` in the condition, expected \`and\`, \`or\` or the end no-bad-condition`,
    ])
  })

  test('a fault in a wrapped condition is told at its own line', () => {
    const text = workText('1. :step{#look when="backstop = fitted\n   and sel"} Look.')
    expect(linesOf(parsed(text).files)).toEqual([
      `${placeIn(text, '"} Look.')} Unexpected end in the condition, expected \`=\`, \`≠\` or \`in\` after the fact no-bad-condition`,
    ])
  })

  test('one that nobody could read is refused by its length', () => {
    const text = workText(`1. :step{#look when="${'('.repeat(5_000)}"} Look.`)
    const [told, ...more] = linesOf(parsed(text).files)
    expect(more).toEqual([])
    expect(told?.replace(/^\S+ /u, '')).toBe(
      'Unexpected condition of 5000 letters, expected at most 500 no-bad-condition',
    )
  })
})
