import {describe, expect, test} from 'vitest'
import {planeHeights} from '../../../src/figures/stations/draw-cut.ts'
import {expectRoomForTexts} from '../room-for-texts.ts'
import {changed} from '../section/section-for-tests.ts'
import {textsOf} from '../svg-for-tests.ts'
import {
  distanceFromOutline,
  dotsOf,
  drawn,
  panel,
  radiiOf,
  ringStations,
  written,
} from './panels-for-tests.ts'

const ring = drawn(panel('lower-ring', ringStations))
const eye = drawn(panel('eye', ringStations))

function names(figure: typeof ring): readonly string[] {
  return textsOf(figure.svg).flatMap(({text}) => (/°$/u.test(text) ? [text] : []))
}

/** The first reading's stations from the middle of their outline, up and to the right. */
function offsets({placed: [first = []]}: typeof ring): readonly (readonly [number, number])[] {
  return first.map(({at: [x, y], outline}) => {
    const [cx, cy] = 'middle' in outline ? outline.middle : [0, 0]
    return [Math.round(x - cx) + 0, Math.round(cy - y) + 0] as const
  })
}

describe('the stations of a bore', () => {
  test('stand once each, in the order of their boxes, with their numbers', () => {
    expect(names(ring)).toEqual(['a 0°', 'b 0°', 'a 60°', 'b 60°', 'a 120°', 'b 120°'])
    const numbers = textsOf(ring.svg).flatMap(({text}) => (/^\d$/u.test(text) ? [text] : []))
    expect(numbers.toSorted()).toEqual(['1', '2', '3', '4', '5', '6'])
    expect(ring.placed[0]?.map(({name, number}) => `${number} ${name}`)).toEqual([
      '1 a 0°',
      '2 a 60°',
      '3 a 120°',
      '4 b 0°',
      '5 b 60°',
      '6 b 120°',
    ])
  })

  test('lie on the bore, with a dot at each direction', () => {
    const stations = ring.placed[0] ?? []
    for (const one of stations) expect(distanceFromOutline(one), one.name).toBeLessThan(0.5)
    expect(new Set(dotsOf(ring))).toEqual(new Set(stations.map(({at}) => written(at))))
    expect(dotsOf(ring)).toHaveLength(3)
    const radius = stations.map(({outline}) => ('radius' in outline ? outline.radius : 0))[0] ?? 0
    expect(radiiOf(ring, 'bold')).toEqual([Math.round(radius * 10) / 10])
  })

  test('count against the clock on the cover, which is seen from the motor side, with it on the impeller', () => {
    expect(
      offsets(ring)
        .slice(0, 3)
        .map(([x, y]) => [Math.sign(x), Math.sign(y)]),
    ).toEqual([
      [0, 1],
      [-1, 1],
      [-1, -1],
    ])
    expect(
      offsets(eye)
        .slice(0, 3)
        .map(([x, y]) => [Math.sign(x), Math.sign(y)]),
    ).toEqual([
      [0, 1],
      [1, 1],
      [1, -1],
    ])
    const arc = /class="line" d="M[\d. ]+A[\d.]+ [\d.]+ 0 0 ([01]) /u
    expect([ring, eye].map(({svg}) => arc.exec(svg)?.[1])).toEqual(['0', '1'])
  })

  test('have a line and a name for each plane, the suction side first', () => {
    const strong = (figure: typeof ring): readonly string[] =>
      textsOf(figure.svg).flatMap(({text}) => (/^[a-d]$/u.test(text) ? [text] : []))
    const heightOf = (figure: typeof ring, name: string): number =>
      textsOf(figure.svg).find(({text}) => text === name)?.top ?? Number.NaN
    expect(strong(ring)).toHaveLength(2)
    // The cover lies ring side up, the impeller stands eye up: its suction side is above.
    expect(heightOf(ring, 'a')).toBeGreaterThan(heightOf(ring, 'b'))
    expect(heightOf(eye, 'a')).toBeLessThan(heightOf(eye, 'b'))
    expect(strong(drawn(panel('lower-ring', ['a 0°', 'b 0°', 'c 0°'])))).toHaveLength(3)
    expect(strong(drawn(panel('lower-ring', ['0°', '60°'])))).toEqual([])
  })

  test.each([
    [4, ['a 0°', 'a 90°', 'b 0°', 'b 90°'], 2],
    [8, ['a 0°', 'a 45°', 'a 90°', 'a 135°', 'b 0°', 'b 45°', 'b 90°', 'b 135°'], 4],
    [6, ['a 0°', 'a 70°', 'a 120°', 'b 0°', 'b 70°', 'b 120°'], 3],
    [6, ['a 0°', 'a 60°', 'a 120°', 'c 0°', 'c 60°', 'c 120°'], 3],
  ])('%i others move drawing, alternative and places', (count, stations, directions) => {
    const other = drawn(panel('lower-ring', stations))
    expect(other.placed[0]).toHaveLength(count)
    expect(names(other).toSorted()).toEqual(stations.toSorted())
    expect(dotsOf(other)).toHaveLength(directions)
    for (const one of other.placed[0] ?? []) expect(distanceFromOutline(one)).toBeLessThan(0.5)
    expect(other.svg).not.toBe(ring.svg)
    expect(other.alternative).not.toBe(ring.alternative)
    expectRoomForTexts(other)
  })
})

describe('the proportions', () => {
  const moved = (place: 'eye' | 'back' | 'lower-ring' | 'upper-ring', length: string, by: number): number => {
    const radius = (of?: ReturnType<typeof changed>): number => {
      const [first] = drawn(panel(place, ringStations, of ? {geometry: of} : {})).placed[0] ?? []
      return first && 'radius' in first.outline ? first.outline.radius : Number.NaN
    }
    return radius(changed([length], (one) => one + by)) - radius()
  }

  test('a larger impeller moves the stations on it inwards, for the view keeps its size', () => {
    expect(moved('eye', 'impellerDiameter', 40)).toBeLessThan(-5)
    expect(moved('back', 'impellerDiameter', 40)).toBeLessThan(-5)
    expect(moved('lower-ring', 'impellerDiameter', 40)).toBe(0)
  })

  test('a larger running diameter moves the stations on eye, back and rings outwards', () => {
    expect(moved('eye', 'lowerRing', 20)).toBeGreaterThan(5)
    expect(moved('back', 'upperRing', 20)).toBeGreaterThan(5)
    expect(moved('lower-ring', 'lowerRing', 20)).toBeGreaterThan(1)
    expect(moved('upper-ring', 'upperRing', 20)).toBeGreaterThan(1)
  })

  test('two rings in one drawing have one scale', () => {
    const pair = drawn(panel('lower-ring', ringStations), panel('upper-ring', ringStations))
    const [lower = 0, upper = 0] = radiiOf(pair, 'bold')
    expect(lower / upper).toBeCloseTo(210 / 190, 2)
    expect(pair.size).toBe('wide')
  })

  test('eye and back share the section of the impeller, rings have one each', () => {
    const words = (figure: typeof ring, text: string): number =>
      textsOf(figure.svg).filter((one) => one.text === text).length
    const impeller = drawn(panel('eye', ringStations), panel('back', ringStations))
    expect(words(impeller, 'impeller, eye up')).toBe(1)
    expect(words(impeller, 'suction side')).toBe(1)
    const rings = drawn(panel('lower-ring', ringStations), panel('upper-ring', ringStations))
    expect(words(rings, 'suction side')).toBe(2)
    expect(radiiOf(impeller, 'bold wire')).toHaveLength(1)
  })

  test('planes lie near the edges of what is measured', () => {
    expect(planeHeights({r: 1, from: 0, to: 10}, 2)).toEqual([1.5, 8.5])
    expect(planeHeights({r: 1, from: 0, to: 10}, 1)).toEqual([5])
    expect(planeHeights({r: 1, from: 0, to: 10}, 3)).toEqual([1.5, 5, 8.5])
  })
})

describe('other places', () => {
  const quarters = ['0°', '90°', '180°', '270°']

  test('a gap has its stations around the outline', () => {
    const flange = drawn(panel('head-flange', quarters))
    const [r = 0] = radiiOf(flange, 'bold')
    expect(offsets(flange)).toEqual([
      [0, Math.round(r)],
      [Math.round(r), 0],
      [0, -Math.round(r)],
      [-Math.round(r), 0],
    ])
    expect(names(flange)).toEqual(quarters)
    expectRoomForTexts(flange)
  })

  test('names that are long stand once with their direction above them', () => {
    const lips = quarters.map((one) => `wet lip ${one}`).concat(quarters.map((one) => `second lip ${one}`))
    const sleeve = drawn(panel('sleeve', lips))
    expect(names(sleeve)).toEqual(quarters)
    expect(textsOf(sleeve.svg).filter(({text}) => text === 'second lip')).toHaveLength(5)
    expect(sleeve.placed[0]).toHaveLength(8)
    expectRoomForTexts(sleeve)
  })

  test('a dial shows highest and lowest on its scale and comes back at zero degrees', () => {
    const dial = drawn(panel('eye-run-out', ['highest', 'lowest', 'back at 0°']))
    const [highest, lowest, back] = dial.placed[0] ?? []
    if (!highest || !lowest || !back) throw new Error('Unexpected dial without its three stations')
    expect(highest.outline).toEqual(lowest.outline)
    expect(highest.at[0]).toBeGreaterThan(lowest.at[0])
    expect(back.outline).not.toEqual(highest.outline)
    for (const one of [highest, lowest, back]) expect(distanceFromOutline(one)).toBeLessThan(0.5)
    expect(new Set(dotsOf(dial))).toEqual(new Set([highest, lowest, back].map(({at}) => written(at))))
    expectRoomForTexts(dial)
  })

  test('a part whose length nobody knows has no section and says so; its view has no scale', () => {
    const unknown = drawn(panel('lower-ring', ringStations, {unknown: true}))
    const texts = textsOf(unknown.svg).map(({text}) => text)
    expect(texts.join(' ')).toContain('Section NOT KNOWN: a length of this part is not stated.')
    expect(unknown.svg).not.toMatch(/NaN|undefined|class="hair" d="M[^V]*L/u)
    expect(radiiOf(unknown, 'bold wire')).toHaveLength(1)
    expect(unknown.placed[0]).toHaveLength(6)
    expectRoomForTexts(unknown)
  })
})
