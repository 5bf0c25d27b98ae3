import {describe, expect, test} from 'vitest'
import {noMixedReadings, noUnitMix} from '../../../src/check/rules/no-unit-mix.ts'
import {designShape} from '../../../src/check/shapes/design-shape.ts'
import {designText, shaped} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {procedureText, soundProcedure, workText} from '../procedure-for-tests.ts'

const path = 'designs/design-a.yaml'

/** The design with a limit `sought` on the given value. */
function textWithLimit(value: string): string {
  return designText.replace(
    'limits:\n',
    `limits:\n  - {id: sought, title: sought, side: not-above, value: ${value}, outside: STOP, action: Stop.}\n`,
  )
}

function againstLimit(
  unit: string,
  value: string,
): {readonly text: string; readonly lines: readonly string[]} {
  const text = workText(
    `1. :step{#look} Read it.\n\n   ::reading{#found title=found quantity=length unit="${unit}" stations=a instrument=gauge phase=during limits=sought}`,
  )
  const design = shaped(path, textWithLimit(value), designShape)
  return {text, lines: toldBy((files) => noUnitMix(soundProcedure(text), design, files))}
}

describe('a reading and its limit', () => {
  test.each([
    ['mm diametral', 'lower-ring.renewal'],
    ['mm diametral', 'lower-ring.minimum-new'],
    ['µm', 'lower-ring.running-diameter'],
    ['mm', 'setting.run-out'],
    ['mbar(g)', 'rating.highest-pressure'],
    ['l', 'oil.most'],
    ['m', 'curve.act-head'],
    ['%', 'house.test-run-act'],
    ['rpm', 'curve.speed'],
    ['mbar', 'cofferdam.allowed-drop'],
    ['bar(g)', 'cofferdam.upper-bound'],
    ['kg', 'mass.head'],
    ['m', 'geometry.head-height'],
    ['min', 'house.isolation-proof'],
    ['l', 'tank.volume'],
  ])('in `%s` against %s is accepted', (unit, value) => {
    expect(againstLimit(unit, value).lines).toEqual([])
  })

  test.each([
    ['psi(g)', 'rating.highest-pressure', '`bar(g)`'],
    ['in', 'setting.run-out', '`mm`'],
    ['psi', 'cofferdam.allowed-drop', 'a metric unit'],
    ['lb', 'mass.head', '`kg`'],
  ])('in `%s` against %s is refused: the limit is in %s', (unit, value, wanted) => {
    const {text, lines} = againstLimit(unit, value)
    expect(lines).toEqual([
      `${placeIn(text, '::reading')} Unexpected unit \`${unit}\` of reading \`found\`, expected ${wanted} as in limit \`sought\` no-unit-mix see ${placeIn(textWithLimit(value), '{id: sought', path)}`,
    ])
  })

  test.each([
    ['m', 'oil.most', 'volume'],
    ['mm radial', 'lower-ring.renewal', 'diametral-clearance'],
    ['mm', 'lower-ring.new', 'diametral-clearance'],
    ['mm diametral', 'lower-ring.running-diameter', 'length'],
    ['mm diametral', 'setting.run-out', 'length'],
    ['bar(a)', 'rating.highest-pressure', 'gauge-pressure'],
    ['bar', 'cofferdam.test-pressure', 'gauge-pressure'],
    ['bar(g)', 'cofferdam.allowed-drop', 'pressure-difference'],
    ['mm', 'mass.head', 'mass'],
    ['kg', 'geometry.head-height', 'length'],
    ['bar', 'house.isolation-proof', 'time'],
    ['bar', 'hydraulics.return-pressure', 'gauge-pressure'],
  ])('in `%s` against %s is refused: it is of kind %s', (unit, value, kind) => {
    const {text, lines} = againstLimit(unit, value)
    expect(lines).toEqual([
      `${placeIn(text, '::reading')} Unexpected unit \`${unit}\` of reading \`found\`, expected a unit of ${kind} as in limit \`sought\` no-unit-mix see ${placeIn(textWithLimit(value), '{id: sought', path)}`,
    ])
  })

  test('nothing is said where there is no reading, no such limit or a limit that nobody knows', () => {
    const design = shaped(path, designText, designShape)
    expect(toldBy((files) => noUnitMix(soundProcedure(procedureText('')), design, files))).toEqual([])
    expect(againstLimit('bar', 'lower-ring.nothing').lines).toEqual([])
    expect(againstLimit('bar', 'setting.nothing').lines).toEqual([])
  })
})

function readings(...lines: readonly string[]): {readonly text: string; readonly lines: readonly string[]} {
  const text = workText(`1. :step{#look} Read it.\n\n${lines.map((line) => `   ${line}`).join('\n\n')}`)
  return {text, lines: toldBy((files) => noMixedReadings(soundProcedure(text), files))}
}

const reading = (id: string, quantity: string, unit: string): string =>
  `::reading{#${id} title=read quantity=${quantity} unit="${unit}" stations=a instrument=gauge phase=during}`
const derived = (calculation: string, unit: string, from: string): string =>
  `::derived{#out title=out unit="${unit}" calculation=${calculation} from="${from}" phase=during limits=most}`

const drop = [
  reading('p1', 'gauge-pressure', 'bar(g)'),
  reading('p2', 'gauge-pressure', 'bar(g)'),
  reading('t1', 'temperature', '°C'),
  reading('t2', 'temperature', '°C'),
  reading('b1', 'absolute-pressure', 'mbar(a)'),
  reading('b2', 'absolute-pressure', 'mbar(a)'),
]

describe('a reading has a unit of the quantity it says', () => {
  test.each([
    ['length', 'mm'],
    ['temperature', '°C'],
    ['temperature-difference', 'K'],
  ])('%s in `%s` is accepted', (quantity, unit) => {
    expect(readings(reading('one', quantity, unit)).lines).toEqual([])
  })

  test('a unit of another quantity is refused', () => {
    const {text, lines} = readings(reading('one', 'gauge-pressure', 'bar'))
    expect(lines).toEqual([
      `${placeIn(text, '::reading')} Unexpected unit \`bar\` of reading \`one\`, expected a unit of its quantity gauge-pressure no-unit-mix`,
    ])
  })

  test('a quantity outside the list is refused with the nearest one', () => {
    const {text, lines} = readings(reading('one', 'lenght', 'mm'))
    expect(lines).toEqual([
      `${placeIn(text, '::reading')} Unexpected quantity \`lenght\` of reading \`one\`, expected a kind of quantity such as \`length\` no-unit-mix`,
    ])
  })
})

describe('a derived reading is computed from the kinds that its calculation takes', () => {
  const bore = reading('bore', 'length', 'mm')
  const hub = reading('hub', 'length', 'µm')
  const oil = reading('oil', 'volume', 'ml')
  const hours = reading('hours', 'time', 'h')

  test.each([
    ['clearance', [bore, hub, derived('clearance', 'mm diametral', 'bore hub')]],
    ['smallest gap', [bore, hub, derived('smallest-gap', 'mm diametral', 'bore hub')]],
    ['corrected drop', [...drop, derived('corrected-drop', 'mbar', 'p1 p2 t1 t2 b1 b2')]],
    ['daily rate', [oil, hours, derived('daily-rate', 'ml/d', 'oil hours')]],
  ])('%s is accepted', (_what, lines) => {
    expect(readings(...lines).lines).toEqual([])
  })

  test.each<[string, readonly string[], string, string]>([
    [
      'a clearance on the radius from two diameters',
      [bore, hub, derived('clearance', 'mm radial', 'bore hub')],
      'Unexpected unit `mm radial` of `out` in calculation `clearance`, expected a unit of diametral-clearance',
      '::derived',
    ],
    [
      'a gap from a pressure',
      [bore, reading('hub', 'gauge-pressure', 'bar(g)'), derived('smallest-gap', 'mm diametral', 'bore hub')],
      'Unexpected unit `bar(g)` of `hub` in calculation `smallest-gap`, expected a unit of length',
      '::reading{#hub',
    ],
    [
      'a leak of a day from a pressure',
      [oil, reading('hours', 'gauge-pressure', 'bar(g)'), derived('daily-rate', 'ml/d', 'oil hours')],
      'Unexpected unit `bar(g)` of `hours` in calculation `daily-rate`, expected a unit of time',
      '::reading{#hours',
    ],
    [
      'a drop as gauge pressure',
      [...drop, derived('corrected-drop', 'bar(g)', 'p1 p2 t1 t2 b1 b2')],
      'Unexpected unit `bar(g)` of `out` in calculation `corrected-drop`, expected a unit of pressure-difference',
      '::derived',
    ],
  ])('%s is refused', (_what, lines, message, cause) => {
    const {text, lines: said} = readings(...lines)
    expect(said).toEqual([`${placeIn(text, '::derived')} ${message} no-unit-mix see ${placeIn(text, cause)}`])
  })

  test('readings in another order than the calculation takes them are refused one by one', () => {
    const {lines} = readings(...drop, derived('corrected-drop', 'bar', 'p1 t1 p2 t2 b1 b2'))
    expect(lines.map((line) => /`([a-z0-9]+)` in calculation/u.exec(line)?.[1])).toEqual(['p2', 't1'])
  })
})
