import {describe, expect, test} from 'vitest'
import {noUnlimitedReading, readingsOf} from '../../../src/check/rules/no-unlimited-reading.ts'
import {tools} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {procedureText, soundProcedure, workText} from '../procedure-for-tests.ts'

function told(text: string): readonly string[] {
  return toldBy((files) => noUnlimitedReading(soundProcedure(text), tools(), files))
}

function reading(id: string, more: Readonly<Record<string, string>> = {}): string {
  const attributes = {
    title: id,
    quantity: 'length',
    unit: 'mm',
    stations: 'a',
    instrument: 'micrometer',
    phase: 'during',
    ...more,
  }
  const written = Object.entries(attributes).map(([key, value]) => `${key}="${value}"`)
  return `::reading{#${id} ${written.join(' ')}}`
}

function derived(id: string, from: string, more: Readonly<Record<string, string>> = {}): string {
  const attributes = {
    title: id,
    unit: 'mm diametral',
    calculation: 'clearance',
    phase: 'during',
    limits: 'ring-renewal',
    ...more,
  }
  const written = Object.entries(attributes).map(([key, value]) => `${key}="${value}"`)
  return `::derived{#${id} from="${from}" ${written.join(' ')}}`
}

function steps(...parts: readonly string[]): string {
  return workText(
    parts.map((part, index) => `${index + 1}. :step{#step-${index + 1}} Read it.\n\n   ${part}`).join('\n\n'),
  )
}

describe('a reading is judged', () => {
  test.each([
    ['by a limit of its own', steps(reading('gap', {limits: 'run-out-most'}))],
    [
      'by the limit of a reading computed from it',
      steps(reading('bore'), reading('hub'), derived('gap', 'bore hub')),
    ],
  ])('%s', (_what, text) => {
    expect(told(text)).toEqual([])
  })

  test('a procedure without readings says nothing', () => {
    expect(told(procedureText(''))).toEqual([])
    expect(told(workText('1. :step{#look} Look.'))).toEqual([])
  })

  test('or it is refused', () => {
    const text = steps(reading('gap'))
    expect(told(text)).toEqual([
      `${placeIn(text, '::reading')} Unexpected reading \`gap\` without a limit, expected \`limits=…\` or a \`::derived\` that is computed from it no-unlimited-reading`,
    ])
  })

  test('a reading beside a derived one that is computed from others is refused', () => {
    const text = steps(reading('bore'), reading('hub'), reading('other'), derived('gap', 'bore hub'))
    expect(told(text)).toEqual([
      `${placeIn(text, '::reading{#other')} Unexpected reading \`other\` without a limit, expected \`limits=…\` or a \`::derived\` that is computed from it no-unlimited-reading`,
    ])
  })

  test('stations are named', () => {
    const text = steps(reading('gap', {limits: 'run-out-most', stations: ','}))
    expect(told(text)).toEqual([
      `${placeIn(text, '::reading')} Unexpected reading \`gap\` without stations, expected \`stations="…"\` no-unlimited-reading`,
    ])
  })

  test.each([
    ['milimetre', 'expected a unit'],
    ['barg', 'expected a unit such as `bar`'],
  ])('the unit `%s` is refused', (unit, expected) => {
    const text = steps(reading('gap', {limits: 'run-out-most', unit}))
    expect(told(text)).toEqual([
      `${placeIn(text, '::reading')} Unexpected unit \`${unit}\` of reading \`gap\`, ${expected} no-unlimited-reading`,
    ])
  })
})

test('an instrument that does not say what it shows is refused with its place', () => {
  const text = steps(reading('gap', {limits: 'run-out-most', instrument: 'spanner'}))
  expect(told(text)).toEqual([
    `${placeIn(text, '::reading')} Unexpected instrument \`spanner\` of reading \`gap\` without an instrument class, expected \`instrument: {graduation: …, uncertainty: …}\` in tools.yaml no-unread-instrument see tools.yaml:5:5`,
  ])
})

describe('a derived reading', () => {
  test('of a calculation outside the list is refused', () => {
    const text = steps(
      reading('bore'),
      reading('hub'),
      derived('gap', 'bore hub', {calculation: 'clearence'}),
    )
    expect(told(text)).toEqual([
      `${placeIn(text, '::derived')} Unexpected calculation \`clearence\`, expected a calculation such as \`clearance\` no-undefined-reference`,
    ])
  })

  test.each([
    ['clearance', 'bore', 1, 2],
    ['smallest-gap', 'bore hub bore', 3, 2],
    ['corrected-drop', 'bore hub', 2, 6],
  ])('`%s` from `%s` is refused: %i readings instead of %i', (calculation, from, found, wanted) => {
    const text = steps(
      reading('bore', {limits: 'a'}),
      reading('hub', {limits: 'a'}),
      derived('gap', from, {calculation}),
    )
    expect(told(text)).toEqual([
      `${placeIn(text, '::derived')} Unexpected ${found} readings in \`from\` of \`gap\`, expected ${wanted} for \`${calculation}\` no-wrong-shape`,
    ])
  })

  test('of another phase than its source is refused with the place of the source', () => {
    const text = steps(reading('bore', {phase: 'as-found'}), reading('hub'), derived('gap', 'bore hub'))
    expect(told(text)).toEqual([
      `${placeIn(text, '::derived')} Unexpected \`gap\` of phase \`during\` from \`bore\` of phase \`as-found\`, expected readings of one phase no-unit-mix see ${placeIn(text, '::reading{#bore')}`,
    ])
  })

  test('before its source is refused with the place of the source', () => {
    const text = steps(reading('bore'), derived('gap', 'bore hub'), reading('hub'))
    expect(told(text)).toEqual([
      `${placeIn(text, '::derived')} Unexpected \`hub\` in \`from\` of \`gap\` that does not stand before it, expected an earlier reading no-undefined-reference see ${placeIn(text, '::reading{#hub')}`,
    ])
  })

  test('from itself is refused', () => {
    const text = steps(reading('bore'), derived('gap', 'bore gap'))
    expect(told(text)).toEqual([
      `${placeIn(text, '::derived')} Unexpected \`gap\` in \`from\` of \`gap\` that does not stand before it, expected an earlier reading no-undefined-reference see ${placeIn(text, '::derived')}`,
    ])
  })
})

describe('an as-left reading', () => {
  const found = reading('gap-found', {phase: 'as-found', limits: 'run-out-most'})
  const left = reading('gap-left', {phase: 'as-left', limits: 'run-out-most'})
  const alone = (text: string, id: string, twin: string): string =>
    `${placeIn(text, `::reading{#${id}`)} Unexpected as-left reading \`${id}\` without an as-found twin before it, expected a reading \`${twin}\` with \`phase=as-found\` no-as-left-alone`

  test('after its as-found twin is accepted', () => {
    expect(told(steps(found, left))).toEqual([])
  })

  test.each([
    ['alone', steps(left)],
    ['before its twin', steps(left, found)],
    ['whose twin is of another phase', steps(found.replace('as-found', 'during'), left)],
    ['whose twin has another stem', steps(found.replace('gap-found', 'bore-found'), left)],
  ])('%s is refused', (_what, text) => {
    expect(told(text)).toEqual([alone(text, 'gap-left', 'gap-found')])
  })

  test('is no twin of itself when its id has no ending', () => {
    const text = steps(reading('gap', {phase: 'as-left', limits: 'run-out-most'}))
    expect(told(text)).toEqual([alone(text, 'gap', 'gap')])
  })
})

test('readings are found in the order of the steps, across sections', () => {
  const text = procedureText(
    `## One\n\n::section{#one}\n\n1. :step{#a} Read.\n\n   ${reading('first')}\n\n## Two\n\n::section{#two}\n\n1. :step{#b} Read.\n\n   ${reading('second')}\n\n   ${derived('third', 'first second')}`,
  )
  expect(readingsOf(soundProcedure(text)).map((one) => one.id)).toEqual(['first', 'second', 'third'])
})
