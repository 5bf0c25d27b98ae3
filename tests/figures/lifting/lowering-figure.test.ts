import {describe, expect, test} from 'vitest'
import {loweringWordsEn} from '../../../src/compile/lifting-words-en.ts'
import type {Figure} from '../../../src/figures/figure.ts'
import type {DrawnLowering} from '../../../src/figures/lifting/drawn-lowering.ts'
import {loweringFigure} from '../../../src/figures/lifting/lowering-figure.ts'
import {expectRoomForTexts} from '../room-for-texts.ts'
import {drawingOf, expectInside, pathsOf} from './room-of-drawing.ts'

const length = (title: string, mm: number) => ({title, mm, text: `${mm} mm`})

const lengths = {
  casing: length('casing', 640),
  height: length('height of the unit', 410),
  flange: length('motor flange', 420),
  eye: length('eye', 196),
  spigotBore: length('spigot', 150),
  spigotOffset: length('axis of the spigot', 300),
  motor: length('motor', 250),
  hub: length('hub', 92),
  clearance: length('suction clearance', 45),
}

const lowering: DrawnLowering = {
  way: 'down',
  mass: '186 kg',
  thread: {mm: 16, text: 'M16'},
  washer: length('washer', 30),
  places: 12,
  boltLoad: '1.82 kN',
  travel: {mm: 35, text: '35 mm'},
  turns: '18',
  torque: '3 N·m',
  torqueCondition: 'assembly paste; one nut with the whole mass',
  lengths,
}

function drawn(change: Partial<DrawnLowering> = {}): Figure {
  return loweringFigure({...lowering, ...change}, loweringWordsEn('lowering'))
}

/** Open places of bolts: small circles of one size in the view from below, on the right. */
function openPlaces({svg}: Figure): readonly (readonly [number, number])[] {
  const small = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/gu)].filter(
    ([, x, , r]) => Number(x) > 850 && Number(r) < 20,
  )
  return small.map(([, x, y]) => [Number(x), Number(y)])
}

/** Middles of the two numbered bolts in the view from below. */
function numbered({svg}: Figure): readonly (readonly [number, number])[] {
  return [...svg.matchAll(/<circle class="part" cx="([\d.]+)" cy="([\d.]+)" r="24"/gu)]
    .map(([, x, y]) => [Number(x), Number(y)] as const)
    .filter(([x]) => x > 850)
}

describe('the pump unit on its lowering bolts', () => {
  test('tells bolts, places, thread, load, travel, turns and torque', () => {
    const told =
      '1 and 2: lowering bolts M16; in 2 of 12 bolt places, diagonally opposite; load of each bolt 1.82 kN: each one alone carries the whole mass of 186 kg; travel 35 mm: 18 turns of each nut; torque lowering the unit: 3 N·m (assembly paste; one nut with the whole mass). Drawn let down; the arrow points down. Drawn by: casing 640 mm; height of the unit 410 mm; motor flange 420 mm; eye 196 mm; spigot 150 mm; axis of the spigot 300 mm; motor 250 mm; hub 92 mm; suction clearance 45 mm; washer 30 mm. What has no dimension here is not to scale.'
    expect(drawn().data).toBe(told)
    expect(drawn().alternative).toContain(told)
    for (const text of [
      '35 mm',
      '410 mm',
      '420 mm',
      '1 and 2: lowering bolts M16',
      'load of each bolt 1.82 kN',
    ])
      expect(drawn().svg).toContain(`>${text}<`)
  })

  test.each([8, 12, 14, 15])('shows %d places of bolts, two of them with the lowering bolts', (places) => {
    const figure = drawn({places})
    expect(openPlaces(figure)).toHaveLength(places - 2)
    expect(pathsOf(figure.svg, 'solid').some((path) => (path.match(/M/gu) ?? []).length === 2)).toBe(true)
    expect(figure.data).toContain(`in 2 of ${places} bolt places`)
    const [[x1 = 0, y1 = 0] = [], [x2 = 0, y2 = 0] = []] = numbered(figure)
    const middle = 900 + (1500 - 904) / 2
    expect(x1).toBeLessThan(middle)
    if (places % 2 === 0) {
      expect(x1 + x2).toBeCloseTo(2 * middle, 0)
      expect(y1).toBeCloseTo(y2, 0)
      expect(figure.data).toContain('diagonally opposite')
    } else expect(figure.data).toContain('as far apart as the places allow')
  })

  test('parts the flanges by the travel, at the scale of the unit', () => {
    for (const travel of [20, 35, 60]) {
      const {svg} = drawn({travel: {mm: travel, text: `${travel} mm`}})
      const marks = [
        ...svg.matchAll(/M[\d.]+ ([\d.]+)H([\d.]+)M[\d.]+ ([\d.]+)H\2M[\d.]+ ([\d.]+)V\3/gu),
      ].map(([, from, , to, start]) => ({from, to, isWhole: from === start}))
      const [face, unit] = marks.flatMap(({from, to, isWhole}) => (isWhole ? [] : [from, to]))
      const [top, low] = marks.flatMap(({from, to, isWhole}) => (isWhole ? [from, to] : []))
      expect(unit).toBe(top)
      const gap = Number(top) - Number(face)
      const height = Number(low) - Number(top)
      expect(gap / height).toBeCloseTo(travel / 410, 2)
    }
  })

  test.each([
    [16, 'M16'],
    [24, 'M24'],
  ])('draws bolts of %d mm as thick as they are', (mm, text) => {
    const {svg} = drawn({thread: {mm, text}})
    const sides = [...(pathsOf(svg, 'hair dashed')[0] ?? '').matchAll(/M([\d.]+) /gu)].map(([, x]) =>
      Number(x),
    )
    const [left = 0, , right = 0] = sides
    const [, from, across] = /M([\d.]+) [\d.]+h([\d.]+)v[\d.-]+h-\2z"\/><\/g>/u.exec(svg) ?? []
    expect(Number(from)).toBeLessThan(left)
    expect((right - left) / Number(across)).toBeCloseTo(mm / 420, 2)
  })

  test('stands after its travel on the strips above the bottom of the well', () => {
    const bottom = (svg: string): boolean => pathsOf(svg, 'line').length > 0
    expect(bottom(drawn().svg)).toBe(true)
    expect(bottom(drawn({travel: {mm: 45, text: '45 mm'}}).svg)).toBe(false)
  })

  const changes: readonly (readonly [string, Partial<DrawnLowering>])[] = [
    ['thread', {thread: {mm: 12, text: 'M12'}}],
    ['travel', {travel: {mm: 28, text: '28 mm'}}],
    ['count of places', {places: 8}],
    ['way', {way: 'up'}],
    ['washer', {washer: length('washer', 24)}],
    ...Object.keys(lengths).map(
      (name) => [name, {lengths: {...lengths, [name]: length('changed', 77)}}] as const,
    ),
  ]

  test.each(changes)('another %s moves the drawing', (name, change) => {
    expect(drawingOf(drawn(change).svg)).not.toBe(drawingOf(drawn().svg))
    if (name !== 'way') expect(drawn(change).data).not.toBe(drawn().data)
  })

  test.each([
    ['mass', {mass: '190 kg'}],
    ['load', {boltLoad: '1.90 kN'}],
    ['turns', {turns: '20'}],
    ['torque', {torque: '4 N·m'}],
  ])('another %s is another text in drawing, alternative and data', (_, change) => {
    expect(drawn(change).data).not.toBe(drawn().data)
    expect(drawn(change).alternative).not.toBe(drawn().alternative)
    expect(drawn(change).svg).not.toBe(drawn().svg)
  })

  test('points up and says so where the unit is raised', () => {
    const raised = loweringFigure({...lowering, way: 'up'}, loweringWordsEn('raising'))
    expect(raised.data).toContain('torque raising the unit: 3 N·m')
    expect(raised.data).toContain('the arrow points up')
  })

  test('of an unknown travel and mass says so and prints no dimension of it', () => {
    const figure = drawn({
      travel: undefined,
      turns: undefined,
      mass: undefined,
      boltLoad: undefined,
      torque: undefined,
      torqueCondition: '',
    })
    expect(figure.svg).toContain('>NOT KNOWN<')
    expect(pathsOf(figure.svg, 'hair').some((path) => path.split('l48 -16').length === 5)).toBe(true)
    expect(drawn().svg).not.toContain('l48 -16')
    expect(figure.svg).toContain('>load of each bolt NOT KNOWN<')
    expect(figure.data).toContain(
      'load of each bolt NOT KNOWN: each one alone carries the whole mass of NOT KNOWN; travel NOT KNOWN: NOT KNOWN turns of each nut; torque lowering the unit: NOT KNOWN.',
    )
    expect(figure.svg).not.toMatch(/35 mm|NaN|undefined/u)
    expectRoomForTexts(figure)
  })

  test('is boxes where the lengths are not stated', () => {
    const figure = drawn({lengths: undefined, washer: {title: 'washer', mm: Number.NaN, text: 'NOT KNOWN'}})
    expect(figure.data).toContain('the arrow points down. Outline not to scale.')
    expect(figure.svg).toContain('Outline not to scale')
    expect(figure.svg).not.toMatch(/420 mm|410 mm|NaN/u)
    expectRoomForTexts(figure)
    expectInside(figure.svg)
  })

  test.each([
    ['as it is', {}],
    [
      'of a small pump',
      {
        lengths: {
          ...lengths,
          casing: length('casing', 400),
          flange: length('flange', 280),
          motor: length('motor', 180),
          spigotOffset: length('axis', 190),
        },
      },
    ],
    ['of a long travel', {travel: {mm: 135, text: '135 mm'}}],
    ['of a tall unit', {lengths: {...lengths, height: length('height', 900)}}],
    ['of many bolts', {places: 24}],
  ])('%s has room for its texts and stays small', (_, change) => {
    const figure = drawn(change)
    const {svg} = figure
    expectRoomForTexts(figure)
    expectInside(svg)
    expect(figure.height).toBeLessThan(760)
    expect(svg).not.toMatch(/NaN|undefined|Infinity/u)
    expect(svg.length).toBeLessThan(8000)
  })
})
