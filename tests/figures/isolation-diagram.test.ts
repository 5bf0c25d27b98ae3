import {describe, expect, test} from 'vitest'
import {isolationWordsEn} from '../../src/compile/figure-words-en.ts'
import {type DiagramPoint, type DiagramRole, isolationDiagram} from '../../src/figures/isolation-diagram.ts'
import type {PointKind, PointState} from '../../src/figures/isolation-symbols.ts'
import {expectRoomForTexts} from './room-for-texts.ts'
import {textsOf} from './svg-for-tests.ts'

const valve: DiagramPoint = {
  number: 1,
  tag: 'HP 4S',
  kind: 'valve',
  kindWords: 'valve',
  state: 'shut',
  words: 'closed',
  stays: false,
  secured: 'locked',
}
const pressure: DiagramRole = {
  title: 'hydraulic pressure',
  space: 'oil side',
  onePipe: true,
  points: [valve],
  noneBecause: '',
}
const vent: DiagramRole = {
  title: 'cofferdam vent line',
  space: 'cofferdam',
  onePipe: true,
  points: [
    {
      number: 2,
      tag: 'VB 4S',
      kind: 'blind',
      kindWords: 'blind',
      state: 'passes',
      words: 'no blind',
      stays: true,
    },
  ],
  noneBecause: '',
}
const heating: DiagramRole = {
  title: 'heating',
  space: 'tank',
  onePipe: false,
  points: [],
  noneBecause: 'No coils & no heater.',
}

function drawn(roles: readonly DiagramRole[]): ReturnType<typeof isolationDiagram> {
  return isolationDiagram({pump: '4S', phase: 'isolated', roles, words: isolationWordsEn})
}

function withPoint(more: Partial<DiagramPoint>): readonly DiagramRole[] {
  return [{...pressure, points: [{...valve, ...more}]}, vent, heating]
}

/** All texts of a figure, joined. */
function told(svg: string): string {
  return textsOf(svg)
    .map(({text}) => text)
    .join(' | ')
}

const usual = drawn(withPoint({}))

test('tells number, tag, kind and state, what stays, and why there is none', () => {
  expect(usual.alternative).toBe(
    'Isolation lines of pump 4S, isolated. hydraulic pressure: 1 HP 4S (valve, closed, locked); cofferdam vent line: 2 VB 4S (blind, stays: no blind); heating: none on this pump, No coils & no heater.',
  )
  expect(usual.data).toBe('isolated: 1 HP 4S valve closed; 2 VB 4S no blind (stays: no blind); heating none.')
  expect(told(usual.svg)).toBe(
    'pump 4S · isolated | hydraulic pressure | 1 | HP 4S | closed, locked | heating | none on this pump | cofferdam vent line | 2 | VB 4S | stays: no blind | oil side | tank | cofferdam | valve closed | no blind | lock',
  )
})

describe('another figure, another text and other data come from', () => {
  test.each<[string, readonly DiagramRole[], string]>([
    ['another tag', withPoint({tag: 'HQ 4S'}), '1 HQ 4S (valve, closed, locked)'],
    ['another kind', withPoint({kind: 'plug', kindWords: 'plug'}), '1 HP 4S (plug, closed, locked)'],
    ['another state', withPoint({state: 'passes', words: 'open'}), '1 HP 4S (valve, open, locked)'],
    ['another number', withPoint({number: 3}), '3 HP 4S (valve, closed, locked)'],
    [
      'a second valve',
      [{...pressure, points: [valve, {...valve, number: 2, tag: 'HB 4'}]}, vent, heating],
      '1 HP 4S (valve, closed, locked), 2 HB 4 (valve, closed, locked);',
    ],
    [
      'a point that is dropped',
      [pressure, {...vent, points: [], noneBecause: 'Welded shut.'}, heating],
      'cofferdam vent line: none on this pump, Welded shut; heating',
    ],
  ])('%s', (_, roles, words) => {
    const other = drawn(roles)
    expect(other.alternative).toContain(words)
    expect(other.data).not.toBe(usual.data)
    expect(other.svg).not.toBe(usual.svg)
    expectRoomForTexts(other)
  })
})

/** The path of a layer. */
function layerOf(svg: string, layer: string): string {
  return new RegExp(`<path class="${layer}" d="([^"]*)"`, 'u').exec(svg)?.[1] ?? ''
}

/** Layers that hold half a bow tie about a place, by its first move. */
function symbolsOf(svg: string): readonly string[] {
  return ['solid', 'part'].flatMap((layer) =>
    [
      ...layerOf(svg, layer).matchAll(/M64 (\d+)l36/gu),
      ...layerOf(svg, layer).matchAll(/M64 (\d+)l-36/gu),
    ].map(([, y]) => `${layer} at ${y}`),
  )
}

test('a shut valve is solid, an open one is not, and one that its words leave open is half solid', () => {
  const states = (['shut', 'passes', 'either'] as const).map((state) =>
    symbolsOf(drawn([{...pressure, points: [{...valve, state}]}]).svg),
  )
  expect(states).toEqual([
    ['solid at 164', 'solid at 164'],
    ['part at 164', 'part at 164'],
    ['solid at 164', 'part at 164'],
  ])
})

test.each<[PointKind, PointState, string, string, string]>([
  ['blind', 'shut', 'blind in', 'solid', 'M57 124h14v80h-14z'],
  ['blind', 'passes', 'no blind', 'line', 'M50 132v64M78 132v64'],
  ['fuse', 'passes', 'fuse in', 'part', 'M30 147h68v34h-68z'],
  ['fuse', 'shut', 'fuse drawn', 'part dashed', 'M30 147h68v34h-68z'],
  ['relief-valve', 'passes', 'relief valve fitted', 'part', 'M64 164l36 -27v54z'],
  ['relief-valve', 'shut', 'relief valve off', 'part dashed', 'M64 164l36 -27v54z'],
  ['plug', 'shut', 'plug in', 'solid', 'M42 142h44v44h-44z'],
  ['plug', 'passes', 'no plug', 'part', 'M42 142h44v44h-44z'],
])('a %s that is %s has its own symbol and line in the legend: %s', (kind, state, meaning, layer, symbol) => {
  const {svg} = drawn([{...pressure, points: [{...valve, kind, state}]}])
  expect(told(svg)).toContain(`| ${meaning} |`)
  expect(layerOf(svg, layer)).toContain(symbol)
  expect(svg.includes('M57 124h14')).toBe(meaning === 'blind in')
})

test('a line on the right is drawn in a mirror, its relief valve too', () => {
  const relief = {...valve, kind: 'relief-valve' as const, state: 'passes' as const}
  const {svg} = drawn([{...vent, points: [relief]}])
  expect(svg).toContain('M880 164H1436')
  expect(svg).toContain('M1436 164l-36 -27v54z')
})

test('valves of one pipe stand one behind the other; other points and a fuse have lines of their own', () => {
  const second = {...valve, number: 2, tag: 'HB 4'}
  const behind = drawn([{...pressure, points: [valve, second]}]).svg
  const beside = drawn([{...pressure, onePipe: false, points: [valve, second]}]).svg
  const fuse = drawn([{...pressure, points: [valve, {...second, kind: 'fuse'}]}]).svg
  expect(behind).toContain('M12 164V260H112')
  expect(behind.match(/M620 \d+H/gu)).toHaveLength(1)
  expect(beside.match(/M620 \d+H/gu)).toHaveLength(2)
  expect(layerOf(fuse, 'line wire')).toBe('M620 260H10')
  expect(fuse).toContain('M620 164H10')
})

test('a lock hangs above its symbol, on the left and in the mirror', () => {
  const locked = {...vent, points: [{...valve, number: 2}]}
  const {svg} = drawn([pressure, locked])
  const locks = [...svg.matchAll(/M([\d.]+) ([\d.]+)v-7a9/gu)].map(([, x, y]) => [
    Number(x) + 9,
    Number(y) + 2,
  ])
  expect(locks.slice(0, 2)).toEqual([
    [64, 164 - 48],
    [1500 - 64, 164 - 48],
  ])
})

test('a lock, a seal and a tag are told apart from a point that nothing holds', () => {
  const signs = (['locked', 'sealed', 'tagged', undefined] as const).map((secured) => {
    const {secured: _, ...free} = valve
    const {svg} = drawn([{...pressure, points: [secured ? {...free, secured} : free]}])
    return [svg.includes('v-7a9 9 0 0 1 18 0v7'), svg.includes('l13 11v23h-26v-23z'), told(svg)]
  })
  expect(signs.map(([lock, tag]) => [lock, tag])).toEqual([
    [true, false],
    [false, true],
    [false, true],
    [false, false],
  ])
  expect(signs.map(([, , words]) => /closed[^|]*/u.exec(String(words))?.[0].trim())).toEqual([
    'closed, locked',
    'closed, sealed',
    'closed, tagged',
    'closed',
  ])
})
