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

const design = 'designs/design-a.yaml'

/** Bolts of a stack joint beside those of the hub. */
function withJoint(text: string, length: string): string {
  const hub = text.slice(text.indexOf('  - id: hub-bolts'), text.indexOf('rings:'))
  const joint = hub
    .replace('hub-bolts', 'stack-joint-bolts')
    .replace('hub bolts', 'stack joint')
    .replace('length: 45 mm', `length: ${length}`)
  return text.replace('rings:', `${joint}rings:`)
}

/** What is said of pump 1P with sections of two metres and a list of supports; bolts of a joint are 50 mm long. */
function toldOf(supports: string, length = '9.2 m', bolts = '50 mm'): readonly string[] {
  return checkAfter((texts) => {
    texts.write(design, withJoint(texts.read(design), bolts))
    texts.replace(
      vessel,
      'stack-length: 9.2 m',
      `stack-length: ${length}\n    stack-sections: [2.000 m, 2.000 m, 2.000 m, 3.200 m]\n    stack-supports: ${supports}`,
    )
  }).lines.map((line) => line.replace(`${vessel}:`, ''))
}

const unknown = '{value: not known, reason: moved at a repair}'

describe('the supports of a stack', () => {
  test.each([
    ['in their order', '[3.10 m, 5.40 m, 8.60 m]'],
    ['in another unit', '[3100 mm, 5400 mm]'],
    ['a length with a source of its own', '[{value: 3.10 m, status: measured, source: rules}]'],
    ['none at all', '[]'],
    ['one that nobody knows between two', `[3.10 m, ${unknown}, 8.60 m]`],
    ['a millimetre clear of the bolts of a joint', '[2.051 m, 3.949 m]'],
    ['a millimetre clear of the joint to the motor', '[9.149 m]'],
  ])('stand: %s', (_what, supports) => {
    expect(toldOf(supports)).toEqual([])
  })

  test.each([
    [
      'below the foot of the stack',
      '[3.10 m, 9.30 m]',
      '34:30 Unexpected support `2` of `1P` at `9.30 m`, expected one above the foot of the stack at `9.2 m` no-broken-stack',
    ],
    [
      'in a wrong order',
      '[5.40 m, 3.10 m]',
      '34:30 Unexpected support `2` of `1P` at `3.10 m`, expected it below support `1` at `5.40 m` no-broken-stack',
    ],
    [
      'twice at one place',
      '[5.40 m, 5400 mm]',
      '34:30 Unexpected support `2` of `1P` at `5400 mm`, expected it below support `1` at `5.40 m` no-broken-stack',
    ],
    [
      'in a wrong order around one that nobody knows',
      `[5.40 m, ${unknown}, 3.10 m]`,
      '34:77 Unexpected support `3` of `1P` at `3.10 m`, expected it below support `1` at `5.40 m` no-broken-stack',
    ],
    [
      'at a joint',
      '[4.05 m]',
      '34:22 Unexpected support `1` of `1P` at `4.05 m`, expected it clear of the flanges of joint `3` at `4.000 m` no-broken-stack',
    ],
    [
      'at the top plate',
      '[0.05 m]',
      '34:22 Unexpected support `1` of `1P` at `0.05 m`, expected it clear of the flanges of joint `1` at `0.000 m` no-broken-stack',
    ],
    [
      'at the joint to the motor',
      '[9.15 m]',
      '34:22 Unexpected support `1` of `1P` at `9.15 m`, expected it clear of the flanges of the joint to the motor at `9.200 m` no-broken-stack',
    ],
  ])('do not stand: %s', (_what, supports, line) => {
    expect(toldOf(supports)).toEqual([line])
  })

  test('stand anywhere below what is known of a stack of unknown length', () => {
    expect(toldOf('[3.10 m, 12.00 m]', '{value: not known, reason: repaired}')).toEqual([])
  })

  test('stand beside a joint whose bolts are shorter, and at no joint where nobody knows the bolts', () => {
    expect(toldOf('[4.05 m]', '9.2 m', '45 mm')).toEqual([])
    expect(toldOf('[4.000 m]', '9.2 m', '{value: not known, reason: no drawing}')).toHaveLength(1)
  })

  test('belong to a pump that hangs in a tank', () => {
    const {lines} = checkAfter((texts) =>
      texts.replace(
        vessel,
        'role: main\n    critical: no\n    installed: 2011-02-09\n    stack-length: 9.2 m',
        'role: portable\n    kept-at: store\n    critical: no\n    installed: 2011-02-09\n    stack-supports: [3.10 m]',
      ),
    )
    expect(lines.join('\n')).toContain(
      'Unexpected `stack-supports:` of position `1p` of role `portable`, expected none',
    )
  })
})
