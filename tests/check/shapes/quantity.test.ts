import {describe, expect, test} from 'vitest'
import {fields, list, quantity, text} from '../../../src/check/shapes/placed-shape.ts'
import {shaped} from './shape-for-tests.ts'

const shape = fields({
  rating: quantity('gauge-pressure'),
})
const origin = 'origin: {status: as-built, source: drawing, where: sheet 1}\n'

describe('a value', () => {
  test('keeps figure, unit, place and the origin above it', () => {
    expect(shaped(`${origin}rating: 4.0 bar(g)\n`, shape).product?.rating).toEqual({
      kind: 'known',
      quantity: {kind: 'gauge-pressure', si: 4e5},
      figure: '4.0',
      unit: 'bar(g)',
      origin: {status: 'as-built', source: 'drawing', where: 'sheet 1'},
      place: {path: 'a.yaml', line: 2, column: 9, endLine: 2, endColumn: 19},
    })
  })

  test('takes the nearest origin above it', () => {
    const deep = fields({
      outer: fields({rating: quantity('gauge-pressure')}),
      rating: quantity('gauge-pressure'),
    })
    const yaml = `${origin}rating: 4 bar(g)\nouter:\n  rating: 5 bar(g)\n  origin: {status: measured, source: record}\n`
    expect(shaped(yaml, deep).product).toMatchObject({
      rating: {origin: {source: 'drawing'}},
      outer: {rating: {origin: {status: 'measured', source: 'record'}}},
    })
  })

  test('may say its own origin, which then stands alone', () => {
    const yaml = `${origin}rating: {value: 4 bar(g), status: measured, source: record, date: 2011-03-02}\n`
    expect(shaped(yaml, shape).product?.rating).toMatchObject({
      origin: {status: 'measured', source: 'record', date: '2011-03-02'},
    })
    expect(shaped(yaml, shape).product?.rating).not.toHaveProperty(['origin', 'where'])
  })

  test('may add only the place in the source to the origin above it', () => {
    expect(
      shaped(`${origin}rating: {value: 4 bar(g), where: sheet 9}\n`, shape).product?.rating,
    ).toMatchObject({
      origin: {status: 'as-built', source: 'drawing', where: 'sheet 9'},
    })
  })

  test('may be not known, with a reason', () => {
    expect(shaped('rating: {value: not known, reason: plate is worn}\n', shape)).toMatchObject({
      messages: [],
      product: {rating: {kind: 'not-known', reason: 'plate is worn', place: {line: 1, column: 17}}},
    })
  })

  const bar = '`Pa(g)`, `bar(g)`, `mbar(g)`, `psi(g)`'
  const mend =
    'no-bad-quantity | Write a number, a blank and the unit; write `not known` with a reason where nobody knows'
  test.each([
    ['3 bars', 'unit `bars`'],
    ['3 bar', 'unit `bar`'],
    ['3 bar(a)', 'unit `bar(a)`'],
    ['3', '`3` without a unit'],
    ['NaN', '`NaN`'],
    ['NaN bar(g)', '`NaN bar(g)`'],
    ['1e999', 'unit `e999`'],
    ['1e999 bar(g)', 'unit `e999 bar(g)`'],
    ['Infinity', '`Infinity`'],
    ['3,5 bar(g)', 'unit `,5 bar(g)`'],
    ['', '``'],
  ])('is refused as `%s`', (written, what) => {
    expect(shaped(`${origin}rating: "${written}"\n`, shape).messages).toEqual([
      `a.yaml:2:9 Unexpected ${what}, expected a number such as \`3.5\` with one of the units ${bar} ${mend}`,
    ])
  })

  test('below zero is refused where that cannot be, and taken where it can', () => {
    const clearance = fields({gap: quantity('radial-clearance', 'diametral-clearance')})
    expect(shaped(`${origin}gap: -0.3 mm radial\n`, clearance).messages).toEqual([
      `a.yaml:2:6 Unexpected negative value \`-0.3 mm radial\`, expected zero or more ${mend}`,
    ])
    expect(shaped(`${origin}rating: -0.035 bar(g)\n`, shape).messages).toEqual([])
  })

  test('of a clearance says whether it is radial or diametral', () => {
    const clearance = fields({gap: quantity('radial-clearance', 'diametral-clearance')})
    expect(shaped(`${origin}gap: 0.3 mm\n`, clearance).messages).toEqual([
      `a.yaml:2:6 Unexpected unit \`mm\`, expected a number such as \`3.5\` with one of the units \`mm radial\`, \`mm diametral\` ${mend}`,
    ])
    expect(shaped(`${origin}gap: 0.3 mm diametral\n`, clearance).product?.gap).toMatchObject({
      quantity: {kind: 'diametral-clearance'},
    })
  })

  test.each([
    [
      'rating: not known',
      'a.yaml:1:9 Unexpected `not known` without a reason, expected `{value: not known, reason: …}` no-missing-key | Say why nobody knows it and how it will be found out',
    ],
    [
      'rating: {value: not known, reason: " "}',
      'a.yaml:1:17 Unexpected `not known` without a reason, expected `{value: not known, reason: …}` no-missing-key | Say why nobody knows it and how it will be found out',
    ],
    [
      'rating: 4 bar(g)',
      'a.yaml:1:9 Unexpected value `4 bar(g)` of unknown origin, expected `origin: {status: …, source: …}` above it or `status` and `source` beside it no-missing-key | Name one of as-built, measured, calculated, published, assumed, common-practice and the id of a source',
    ],
    [
      'rating: {vlaue: 4 bar(g)}',
      'a.yaml:1:9 Unexpected map without `value`, expected `value:` with a number and its unit no-missing-key | Add `value:`',
    ],
    [
      'rating: {value: 4 bar(g), status: measured, source: record, were: x}',
      'a.yaml:1:61 Unexpected key `were`, expected a key such as `where` no-unknown-key | The keys here are value, reason, status, source, where, date',
    ],
    [
      'rating: {value: 4 bar(g), status: mesured, source: record}',
      'a.yaml:1:35 Unexpected `mesured`, expected a word such as `measured` no-wrong-shape | Write one of as-built, measured, calculated, published, assumed, common-practice',
    ],
    [
      'rating: {value: 4 bar(g), status: measured}',
      'a.yaml:1:9 Unexpected map without `source`, expected `source:` with text no-missing-key | Add `source:`',
    ],
    [
      'rating: {value: 4 bar(g), status: measured, source: record, reason: plate is worn}',
      'a.yaml:1:61 Unexpected `reason` beside a value that is known, expected it beside `not known` alone no-unknown-key | Take the reason out, or put it into `where`',
    ],
    [
      'rating: [4 bar(g)]',
      'a.yaml:1:9 Unexpected list, expected a value with its unit no-wrong-shape | Write a value with its unit here',
    ],
    [
      'other: x',
      'a.yaml:1:1 Unexpected map without `rating`, expected `rating:` with a value with its unit no-missing-key | Add `rating:`',
    ],
  ])('is refused as `%s`', (yaml, line) => {
    expect(shaped(yaml, shape).messages.filter((one) => !one.includes('`other`'))).toEqual([line])
  })
})

describe('an origin', () => {
  const many = fields({ratings: list(fields({id: text, value: quantity('gauge-pressure')}))})
  const ratings = 'ratings:\n  - {id: a, value: 1 bar(g)}\n  - {id: b, value: 2 bar(g)}\n'

  test.each([
    [
      'origin: {status: as-bilt, source: drawing}',
      '18 Unexpected `as-bilt`, expected a word such as `as-built` no-wrong-shape | Write one of as-built, measured, calculated, published, assumed, common-practice',
    ],
    [
      'origin: {status: as-built, source: drawing, were: sheet 1}',
      '45 Unexpected key `were`, expected a key such as `where` no-unknown-key | The keys here are status, source, where, date',
    ],
    [
      'origin: {status: as-built}',
      '9 Unexpected map without `source`, expected `source:` with text no-missing-key | Add `source:`',
    ],
    ['origin: drawing', '9 Unexpected text `drawing`, expected a map no-wrong-shape | Write a map here'],
  ])('that does not fit (`%s`) is told once, where it stands', (yaml, line) => {
    expect(shaped(`${yaml}\n${ratings}`, many).messages).toEqual([`a.yaml:1:${line}`])
  })
})
