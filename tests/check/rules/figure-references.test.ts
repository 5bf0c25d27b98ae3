import {describe, expect, test} from 'vitest'
import {designReferences} from '../../../src/check/rules/design-references.ts'
import {noUndefinedReference} from '../../../src/check/rules/no-undefined-reference.ts'
import {designShape} from '../../../src/check/shapes/design-shape.ts'
import {designText, shaped} from '../library-for-tests.ts'
import {toldBy} from '../messages-for-tests.ts'
import {soundProcedure, workText} from '../procedure-for-tests.ts'

const known = {
  cautions: new Set<string>(),
  procedures: new Set(['sample']),
  tools: new Set(['gauge']),
  parts: new Set<string>(),
  terms: new Set<string>(),
  facts: new Set<string>(),
  designs: [shaped('designs/design-a.yaml', withPlaces(designText), designShape)],
}

/** The design with what the places of these tests are drawn from. */
function withPlaces(text: string): string {
  const ring = /^ {2}- \{id: lower-ring.*\n/mu.exec(text)?.[0] ?? ''
  const lengths = ['impeller', 'sleeve', 'motor-flange', 'stack'].map(
    (one) => `  - {id: ${one}-diameter, title: ${one}, value: 300 mm}\n`,
  )
  return `${text.replace(ring, `${ring}${ring.replaceAll('lower', 'upper')}`)}${lengths.join('')}`
}

/** A step with a reading `bore` of these stations, and a figure of it. */
function text(figure: string, stations: string): string {
  const reading = `::reading{#bore title=bore quantity=length unit=mm stations="${stations}" instrument=gauge phase=during}`
  return workText(`1. :step{#look} Look.\n\n   ${reading}\n\n   ::figure{name="${figure}" caption=Stations}`)
}

/** What is told, without the place and how to mend it. */
function told(figure: string, stations = 'a 0°, a 60°, b 0°, b 60°'): readonly string[] {
  return toldBy((files) => noUndefinedReference(soundProcedure(text(figure, stations)), known, files)).map(
    (one) => /Unexpected .*?(?= no-undefined-reference|\n|$)/u.exec(one)?.[0] ?? one,
  )
}

describe('a figure of stations is accepted', () => {
  test.each([
    ['a bore', 'stations:bore:lower-ring', 'a 0°, a 60°, b 0°, b 60°'],
    ['two readings in one drawing', 'stations:bore+bore:eye+back', '0°, 60°, 120°'],
    ['eight places around', 'stations:bore:head-flange', '0°, 45°, 90°, 135°, 180°, 225°, 270°, 315°'],
    ['a dial', 'stations:bore:eye-run-out', 'highest, lowest, back at 0°'],
    ['a dial at four places', 'stations:bore:eye-run-out', '0°, 90°, 180°, 270°'],
    ['lines of lips', 'stations:bore:sleeve', 'wet lip 0°, wet lip 270°'],
  ])('%s', (_what, figure, stations) => {
    expect(told(figure, stations)).toEqual([])
  })
})

describe('a figure of stations is refused', () => {
  test.each([
    [
      'a reading of another procedure',
      'stations:bores:lower-ring',
      '0°',
      'Unexpected `bores`, expected the id of a reading of this procedure such as `bore`',
    ],
    [
      'a place with a typing error',
      'stations:bore:lower-rin',
      '0°',
      'Unexpected `lower-rin`, expected the id of a place of stations such as `lower-ring`',
    ],
    [
      'no place',
      'stations:bore',
      '0°',
      'Unexpected figure `stations:bore`, expected `stations:<reading>:<place>`, or two of each with `+` between them',
    ],
    [
      'fewer places than readings',
      'stations:bore+bore:eye',
      '0°',
      'Unexpected figure `stations:bore+bore:eye`, expected `stations:<reading>:<place>`, or two of each with `+` between them',
    ],
    [
      'words that say no direction',
      'stations:bore:lower-ring',
      'first trial, second trial',
      'Unexpected station `first trial` of reading `bore` at `lower-ring`, expected a diameter such as `a 60°`, below 180°, each once',
    ],
    [
      'the other end of a diameter',
      'stations:bore:lower-ring',
      '0°, 180°',
      'Unexpected station `180°` of reading `bore` at `lower-ring`, expected a diameter such as `a 60°`, below 180°, each once',
    ],
    [
      'a full turn',
      'stations:bore:head-flange',
      '0°, 360°',
      'Unexpected station `360°` of reading `bore` at `head-flange`, expected a direction such as `90°`, below 360°, each once',
    ],
    [
      'planes of a gap',
      'stations:bore:head-flange',
      'a 0°, a 90°',
      'Unexpected station `a 0°` of reading `bore` at `head-flange`, expected a direction such as `90°`, below 360°, each once',
    ],
    [
      'a fifth plane',
      'stations:bore:lower-ring',
      'a 0°, b 0°, c 0°, d 0°, e 0°',
      'Unexpected station `e 0°` of reading `bore` at `lower-ring`, expected a diameter such as `a 60°`, below 180°, each once',
    ],
    [
      'a station twice',
      'stations:bore:lower-ring',
      'a 0°, a 60°, a 0°',
      'Unexpected station `a 0°` of reading `bore` at `lower-ring`, expected a diameter such as `a 60°`, below 180°, each once',
    ],
    [
      'two gauges',
      'stations:bore:test-gauge',
      'first, second',
      'Unexpected station `second` of reading `bore` at `test-gauge`, expected one station, the gauge, each once',
    ],
    [
      'a side that no pipe has',
      'stations:bore:stack-pipe',
      'port side, top',
      'Unexpected station `top` of reading `bore` at `stack-pipe`, expected `port side` or `starboard side`, each once',
    ],
  ])('%s', (_what, figure, stations, message) => {
    expect(told(figure, stations)).toContain(message)
  })

  test('places of two drawings', () => {
    expect(told('stations:bore+bore:test-gauge+lower-ring', '0°')).toContain(
      'Unexpected places `test-gauge+lower-ring` in one figure, expected places of one drawing',
    )
  })

  test('a value that no design has', () => {
    expect(told('stations:bore:hub', '0°, 90°')).toEqual([
      expect.stringContaining('Unexpected `geometry.hub-diameter`, expected the id of a value'),
    ])
  })
})

test('asks the design for what it shows', () => {
  const ids = designReferences(soundProcedure(text('stations:bore+bore:eye+back', '0°'))).map(
    ({kind, reference}) => `${kind} ${reference.id}`,
  )
  expect(ids).toEqual([
    'value lower-ring.running-diameter',
    'value geometry.impeller-diameter',
    'value upper-ring.running-diameter',
  ])
})
