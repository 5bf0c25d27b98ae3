import {describe, expect, test} from 'vitest'
import {checkAfter} from '../texts-for-tests.ts'

const vessel = 'vessels/vessel-a/vessel.yaml'

/** What is said of pump 1P with a stack length and a list of sections. */
function told(length: string, sections: string): readonly string[] {
  return checkAfter((texts) =>
    texts.replace(vessel, 'stack-length: 9.2 m', `stack-length: ${length}\n    stack-sections: ${sections}`),
  ).lines.map((line) => line.replace(`${vessel}:`, ''))
}

describe('the sections of a stack', () => {
  test.each([
    ['lengths in their order', '9.2 m', '[2.000 m, 2.000 m, 2.000 m, 3.200 m]'],
    ['numbered lengths', '9.2 m', '[{number: 1, length: 2 m}, {number: 2, length: 7.2 m}]'],
    ['both, where the numbers fit', '9.2 m', '[2 m, {number: 2, length: 6.2 m}, 1 m]'],
    ['in another unit', '9.2 m', '[2000 mm, 7200 mm]'],
    ['a length with a source of its own', '9.2 m', '[2 m, {value: 7.2 m, status: measured, source: rules}]'],
    ['a millimetre for each section short', '9.2 m', '[2.000 m, 7.198 m]'],
    ['a millimetre for each section long', '9.2 m', '[2.000 m, 7.202 m]'],
    ['none listed', '9.2 m', '[]'],
    ['beside a length that nobody knows', '{value: not known, reason: repaired}', '[2.000 m, 2.000 m]'],
    ['with a section that nobody knows', '9.2 m', '[2.000 m, {value: not known, reason: no record}]'],
  ])('make it: %s', (_what, length, sections) => {
    expect(told(length, sections)).toEqual([])
  })

  test.each([
    [
      'three millimetres short',
      '[2.000 m, 7.197 m]',
      '32:19 Unexpected stack length of `9.2 m` of `1P`, expected the `9.197 m` that its 2 sections make to 1 mm each: 3 mm are missing no-broken-stack',
    ],
    [
      'three millimetres long',
      '[2.000 m, 7.203 m]',
      '32:19 Unexpected stack length of `9.2 m` of `1P`, expected the `9.203 m` that its 2 sections make to 1 mm each: 3 mm are too many no-broken-stack',
    ],
    [
      'a hole in the numbers',
      '[{number: 1, length: 2 m}, {number: 3, length: 7.2 m}]',
      '33:48 Unexpected stack section `3` of `1P`, expected section `2` no-broken-stack',
    ],
    [
      'a number twice',
      '[2 m, {number: 1, length: 7.2 m}]',
      '33:27 Unexpected stack section `1` of `1P`, expected section `2` no-broken-stack',
    ],
    [
      'a length without a unit',
      '[2.000 m, 7.2]',
      '33:31 Unexpected `7.2` without a unit, expected a number such as `3.5` with one of the units `m`, `mm`, `µm`, `cm`, `in` no-bad-quantity',
    ],
    [
      'a numbered section without its length',
      '[2.000 m, {number: 2}]',
      '33:31 Unexpected map without `length`, expected `length:` with a value with its unit no-missing-key',
    ],
  ])('do not: %s', (_what, sections, line) => {
    expect(told('9.2 m', sections)).toEqual([line])
  })

  test('are told of a hole even where nobody knows the length', () => {
    expect(
      told('{value: not known, reason: repaired}', '[{number: 1, length: 2 m}, {number: 3, length: 2 m}]'),
    ).toEqual(['33:48 Unexpected stack section `3` of `1P`, expected section `2` no-broken-stack'])
  })
})
