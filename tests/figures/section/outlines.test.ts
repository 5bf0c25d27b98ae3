import {describe, expect, test} from 'vitest'
import {distance} from '../../../src/figures/section/balloons.ts'
import {sectionOutlines} from '../../../src/figures/section/outlines.ts'
import {boundsOf, hatchLines, isInside, type Outline} from '../../../src/figures/section/shape.ts'
import {
  changed,
  doubleLip,
  geometry,
  lengthsOf,
  looseBolts,
  movedBetween,
  nameOf,
  variants,
} from './section-for-tests.ts'

const drawn = sectionOutlines(geometry, doubleLip)

function movedBy(path: readonly string[], by: (length: number) => number): readonly string[] {
  return movedBetween(drawn, sectionOutlines(changed(path, by), doubleLip))
}

describe('the outlines of a section', () => {
  test('a larger impeller moves at least six outlines, those of its neighbours too', () => {
    const moved = movedBy(['impellerDiameter'], (length) => length + 20)
    expect(moved.length).toBeGreaterThanOrEqual(6)
    expect(moved).toEqual(
      expect.arrayContaining([
        'impeller: front shroud',
        'impeller: front shroud left',
        'impeller: back shroud and hub',
        'impeller: vane',
        'suction-cover: cover',
        'casing: volute',
        'casing: branch',
      ]),
    )
  })

  test.each([
    ['lowerRing', 'lower-ring: ring'],
    ['upperRing', 'upper-ring: ring'],
    ['sleeveDiameter', 'sleeve: sleeve'],
    ['sleevePlace', 'sleeve: sleeve'],
    ['unitHeight', 'cargo-seal: seal housing'],
    ['motorHeight', 'motor: motor body'],
    ['motorHeight', 'stack: outer pipe'],
    ['casingDiameter', 'casing: volute'],
    ['eyeDiameter', 'impeller: front shroud'],
    ['cargoSeat', 'cargo-seal: lip 1'],
    ['singleSeat', 'oil-seal: single lip'],
    ['shaftReach', 'shaft-flange: flange'],
  ])('%s moves %s', (field, name) => {
    expect(movedBy([field], (length) => length * 1.05)).toContain(name)
  })

  test.each([
    ['impeller: front shroud', 'right', geometry.impellerDiameter / 2],
    ['impeller: back shroud and hub', 'right', geometry.impellerDiameter / 2],
    ['lower-ring: ring', 'left', geometry.lowerRing / 2],
    ['upper-ring: ring', 'left', geometry.upperRing / 2],
    ['sleeve: sleeve', 'left', geometry.hubDiameter / 2],
    ['casing: volute', 'left', -geometry.casingDiameter / 2],
    ['cargo-seal: seal housing', 'right', geometry.motorFlangeDiameter / 2],
    ['cargo-seal: seal housing', 'high', geometry.suctionClearance + geometry.unitHeight],
    ['suction-cover: cover', 'low', geometry.suctionClearance],
    ['shaft-flange: flange', 'low', geometry.suctionClearance + geometry.unitHeight - geometry.shaftReach],
    ['stack: outer pipe', 'low', geometry.suctionClearance + geometry.unitHeight + geometry.motorHeight],
    ['cargo-seal: lip 1', 'left', geometry.sleeveDiameter / 2],
    ['motor: foot bearing outer ring', 'right', geometry.footBearing.outside / 2],
    ['motor: top bearing inner ring', 'left', geometry.topBearing.bore / 2],
  ] as const)('%s is true to scale: its %s edge lies at %f mm', (name, edge, length) => {
    const outline = drawn.find((one) => nameOf(one) === name)
    expect(boundsOf(outline?.points ?? [])[edge]).toBeCloseTo(length, 6)
  })

  test('the motor alone and what hangs above it move with the height of the motor', () => {
    const moved = movedBy(['motorHeight'], (length) => length + 30)
    expect(moved.filter((name) => !/^(?:motor|stack|surroundings): /u.test(name))).toEqual([])
    expect(moved.length).toBeGreaterThan(6)
  })

  test.each(lengthsOf(geometry).map((path) => [path.join(' ')]))('%s moves something', (path) => {
    expect(movedBy(path.split(' '), (length) => length * 1.04).length).toBeGreaterThan(0)
  })

  test.each(variants)('names each piece once: %s', (_, variant) => {
    const names = sectionOutlines(geometry, variant).map(nameOf)
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([])
  })

  test('rings held by screws show the screws, others do not', () => {
    const screws = (variant: typeof doubleLip): number =>
      sectionOutlines(geometry, variant).filter(({part}) => part.endsWith('ring-screws')).length
    expect(screws(doubleLip)).toBe(4)
    expect(screws({...doubleLip, ringFit: 'pressed'})).toBe(0)
    expect(screws({...doubleLip, ringFit: 'not-known'})).toBe(0)
  })

  test('the open edge of a lip lies at the end that it looks to', () => {
    const tipOf = (faces: 'cargo' | 'cofferdam'): number => {
      const [one] = sectionOutlines(geometry, {...doubleLip, cargoLips: [{id: 'one', faces}]}).filter(
        ({piece}) => piece === 'lip 1',
      )
      const heights = one?.points.map(([, z]) => z) ?? []
      const [, tip] = one?.points.reduce((inner, point) => (point[0] < inner[0] ? point : inner)) ?? [0, 0]
      return (tip - Math.min(...heights)) / (Math.max(...heights) - Math.min(...heights))
    }
    expect(tipOf('cargo')).toBeLessThan(0.3)
    expect(tipOf('cofferdam')).toBeGreaterThan(0.7)
  })

  test.each(variants)(
    'cut parts that touch are hatched in opposite ways or at different spacings: %s',
    (_, variant) => {
      const cut = sectionOutlines(geometry, variant).filter((one) => one.drawn === 'cut')
      const alike = cut.flatMap((one, index) =>
        cut
          .slice(index + 1)
          .filter((other) => other.part !== one.part && sameHatch(one, other) && doTouch(one, other))
          .map((other) => `${nameOf(one)} and ${nameOf(other)}`),
      )
      expect(alike).toEqual([])
    },
  )

  test.each(variants)('each bolt and screw ends in metal: %s', (_, variant) => {
    expect(looseBolts(sectionOutlines(geometry, variant))).toEqual([])
  })

  test('a hatch stays inside of its area', () => {
    for (const one of drawn.filter(({hatch}) => hatch)) {
      const lines = one.hatch ? hatchLines(one.points, one.hatch) : []
      for (const [[r1, z1], [r2, z2]] of lines)
        if (Math.hypot(r2 - r1, z2 - z1) > 0.01)
          expect(isInside([(r1 + r2) / 2, (z1 + z2) / 2], one.points)).toBe(true)
    }
  })
})

function sameHatch({hatch: one}: Outline, {hatch: other}: Outline): boolean {
  return one?.way === other?.way && one?.spacing === other?.spacing
}

/** Whether a corner of one lies on the edge of the other, along which they could be taken for one. */
function doTouch(one: Outline, other: Outline): boolean {
  const onEdge = (from: Outline, of: Outline): number =>
    from.points.filter((point) =>
      of.points.some(
        (corner, index) => distance(point, corner, of.points[(index + 1) % of.points.length] ?? corner) < 0.2,
      ),
    ).length
  return onEdge(one, other) + onEdge(other, one) > 1
}
