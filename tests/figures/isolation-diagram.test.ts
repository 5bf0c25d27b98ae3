import {describe, expect, test} from 'vitest'
import {isolationWordsEn} from '../../src/compile/figure-words-en.ts'
import type {Figure} from '../../src/figures/figure.ts'
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

/** All texts of a figure as they are read, from above and the left, joined; what lies over it too. */
function told({svg, own = ''}: Figure): string {
  return [...textsOf(svg), ...textsOf(own)]
    .sort((a, b) => a.top - b.top || a.left - b.left)
    .map(({text}) => text)
    .join(' | ')
}

const usual = drawn(withPoint({}))

test('tells number, tag, kind and state, what stays, and why there is none', () => {
  expect(usual.alternative).toBe(
    'Isolation lines of pump 4S, isolated. hydraulic pressure: 1 HP 4S (valve, closed, locked); cofferdam vent line: 2 VB 4S (blind, stays: no blind); heating: none on this pump, No coils & no heater.',
  )
  expect(usual.data).toBe('isolated: 1 HP 4S valve closed; 2 VB 4S no blind (stays: no blind); heating none.')
  expect(told(usual)).toBe(
    'pump 4S · isolated | hydraulic pressure | cofferdam vent line | cofferdam | oil side | 1 | HP 4S | closed, locked | 2 | VB 4S | stays: no blind | heating | tank | none on this pump | valve closed | no blind | lock',
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
    expect(other.svg + other.own).not.toBe(usual.svg + usual.own)
    expectRoomForTexts(other)
  })
})

/** The path of a layer. */
function layerOf(svg: string, layer: string): string {
  return new RegExp(`<path class="${layer}" d="([^"]*)"`, 'u').exec(svg)?.[1] ?? ''
}

/** What stands on the pipes: each drawing with its heights, in the order of the list. */
function rowsOf(svg: string): readonly {readonly drawn: string; readonly downs: readonly number[]}[] {
  return [...svg.matchAll(/<defs><g id="(r\d+)">(.*?)<\/g><\/defs>/gu)].map(([, id = '', drawn = '']) => ({
    drawn,
    downs: [...svg.matchAll(new RegExp(`<use href="#${id}" y="(\\d+)"`, 'gu'))].map(([, down]) =>
      Number(down),
    ),
  }))
}

/** Layers that hold half a bow tie about the middle of the first point. */
function symbolsOf(svg: string): readonly string[] {
  const [{drawn = ''} = {}] = rowsOf(svg)
  return ['solid', 'part'].flatMap((layer) =>
    ['M64 0l36', 'M64 0l-36'].flatMap((half) => (layerOf(drawn, layer).includes(half) ? [layer] : [])),
  )
}

test('a shut valve is solid, an open one is not, and one that its words leave open is half solid', () => {
  const states = (['shut', 'passes', 'either'] as const).map((state) =>
    symbolsOf(drawn([{...pressure, points: [{...valve, state}]}]).svg),
  )
  expect(states).toEqual([
    ['solid', 'solid'],
    ['part', 'part'],
    ['solid', 'part'],
  ])
})

test.each<[PointKind, PointState, string, string, string]>([
  ['blind', 'shut', 'blind in', 'solid', 'M57 -40h14v80h-14z'],
  ['blind', 'passes', 'no blind', 'line', 'M50 -32v64M78 -32v64'],
  ['fuse', 'passes', 'fuse in', 'part', 'M30 -17h68v34h-68z'],
  ['fuse', 'shut', 'fuse drawn', 'part dashed', 'M30 -17h68v34h-68z'],
  ['relief-valve', 'passes', 'relief valve fitted', 'part', 'M64 0l36 -27v54z'],
  ['relief-valve', 'shut', 'relief valve off', 'part dashed', 'M64 0l36 -27v54z'],
  ['plug', 'shut', 'plug in', 'solid', 'M42 -22h44v44h-44z'],
  ['plug', 'passes', 'no plug', 'part', 'M42 -22h44v44h-44z'],
])('a %s that is %s has its own symbol and line in the legend: %s', (kind, state, meaning, layer, symbol) => {
  const figure = drawn([{...pressure, points: [{...valve, kind, state}]}])
  const [row] = rowsOf(figure.svg)
  expect(told(figure)).toContain(`| ${meaning} |`)
  expect(layerOf(row?.drawn ?? '', layer)).toContain(symbol)
  expect(row?.drawn.includes('M57 -40h14')).toBe(meaning === 'blind in')
  expect(row?.downs).toEqual([164])
})

test('a line on the right is drawn in a mirror, its relief valve too', () => {
  const relief = {...valve, kind: 'relief-valve' as const, state: 'passes' as const}
  const {svg} = drawn([{...vent, points: [relief]}])
  expect(rowsOf(svg).map(({downs}) => downs)).toEqual([[164]])
  expect(svg).toContain('M880 0H1436')
  expect(svg).toContain('M1436 0l-36 -27v54z')
})

test('valves of one pipe stand one behind the other; other points and a fuse have lines of their own', () => {
  const second = {...valve, number: 2, tag: 'HB 4'}
  const behind = rowsOf(drawn([{...pressure, points: [valve, second]}]).svg)
  const beside = rowsOf(drawn([{...pressure, onePipe: false, points: [valve, second]}]).svg)
  const fuse = rowsOf(drawn([{...pressure, points: [valve, {...second, kind: 'fuse'}]}]).svg)
  expect(behind.map(({downs}) => downs)).toEqual([[164], [260]])
  expect(behind[1]?.drawn).toContain('M12 -96V0H112')
  expect(behind.map(({drawn: one}) => one.includes('M620 0H'))).toEqual([true, false])
  expect(beside.map(({downs}) => downs)).toEqual([[164, 260]])
  expect(beside[0]?.drawn).toContain('M620 0H10')
  expect(layerOf(fuse[1]?.drawn ?? '', 'line wire')).toBe('M620 0H10')
  expect(fuse[0]?.drawn).toContain('M620 0H10')
})

test('a lock hangs above its symbol, on the left and in the mirror', () => {
  const locked = {...vent, points: [{...valve, number: 2}]}
  const {svg} = drawn([pressure, locked])
  const locks = rowsOf(svg).map(({drawn: one}) => {
    const [, x, y] = /M([\d.-]+) ([\d.-]+)v-7a9/u.exec(one) ?? []
    return [Number(x) + 9, Number(y) + 2]
  })
  expect(locks).toEqual([
    [64, -48],
    [1500 - 64, -48],
  ])
})

test('a lock, a seal and a tag are told apart from a point that nothing holds', () => {
  const signs = (['locked', 'sealed', 'tagged', undefined] as const).map((secured) => {
    const {secured: _, ...free} = valve
    const figure = drawn([{...pressure, points: [secured ? {...free, secured} : free]}])
    const row = rowsOf(figure.svg)[0]?.drawn ?? ''
    return [row.includes('v-7a9 9 0 0 1 18 0v7'), row.includes('l13 11v23h-26v-23z'), told(figure)]
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
