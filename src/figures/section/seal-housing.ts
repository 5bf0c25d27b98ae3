import type {Levels} from './levels.ts'
import type {SectionGeometry} from './section-geometry.ts'
import {boltAlong, both, box, disc, type Outline, type Point} from './shape.ts'

/** Radii of the seal housing above its lower flange. */
function wallOf(
  g: SectionGeometry,
  at: Levels,
): {readonly inside: number; readonly outside: number; readonly flange: number} {
  const outside = at.chamber + at.wall * 1.1
  const head = g.bolts['seal-housing-bolts'].thread
  return {inside: at.chamber, outside, flange: outside + head * 2.4}
}

/** Seal housing between casing and motor flange. */
export function housing(g: SectionGeometry, at: Levels): readonly Outline[] {
  const {wall} = at
  const radius = wallOf(g, at)
  const flange = g.motorFlangeDiameter / 2
  const shaftHole = at.sleeveRadius + wall * 0.35
  const shoulder = at.housing + g.cargoSeat
  const base: readonly Point[] = [
    [at.cargoSeatRadius, at.housing],
    [at.housingSpigot, at.housing],
    [at.housingSpigot, at.housingFace],
    [radius.flange, at.housingFace],
    [radius.flange, at.housingFlange],
    [radius.outside, at.housingFlange],
  ]
  const top: readonly Point[] = [
    [radius.outside, at.unitFlangeLow],
    [flange, at.unitFlangeLow],
    [flange, at.unitFlange],
    [radius.inside, at.unitFlange],
  ]
  const floor: readonly Point[] = [
    [radius.inside, at.housingFlange],
    [at.cargoSeatRadius + wall * 0.5, Math.max(at.housingFlange, shoulder + wall * 0.5)],
    [shaftHole, shoulder + wall * 0.5],
    [shaftHole, shoulder],
    [at.cargoSeatRadius, shoulder],
  ]
  const hatch = {way: 'down', spacing: 9} as const
  const hole = holeOf(g, at)
  const bolt = g.bolts['seal-housing-bolts']
  const boltRadius = (radius.outside + radius.flange) / 2
  const ring = g.rings['housing-ring']
  const left = (points: readonly Point[]): readonly Point[] => points.map(([r, z]): Point => [-r, z])
  return [
    {part: 'cargo-seal', piece: 'seal housing', drawn: 'cut', points: [...base, ...top, ...floor], hatch},
    {
      part: 'cargo-seal',
      piece: 'seal housing below the hand hole',
      drawn: 'cut',
      points: left([
        ...base,
        [radius.outside, hole.bossLow],
        [hole.face, hole.bossLow],
        [hole.face, hole.low],
        [radius.inside, hole.low],
        ...floor,
      ]),
      hatch,
    },
    {
      part: 'cargo-seal',
      piece: 'seal housing above the hand hole',
      drawn: 'cut',
      points: left([
        [radius.inside, hole.high],
        [hole.face, hole.high],
        [hole.face, hole.bossHigh],
        [radius.outside, hole.bossHigh],
        ...top,
      ]),
      hatch,
    },
    ...both({
      part: 'cargo-seal',
      piece: 'bolt of the seal housing',
      drawn: 'whole',
      points: boltAlong(boltRadius, at.housingFlange, bolt, 'down'),
    }),
    ...both({
      part: 'cargo-seal',
      piece: 'O-ring of the seal housing',
      drawn: 'thin',
      points: disc(
        ring.groove / 2 + ring.section / 2,
        (at.housing + at.housingFace) / 2 + wall * 0.15,
        ring.section * 0.6,
      ),
    }),
  ]
}

/** The hand hole in the left wall of the seal housing. */
function holeOf(
  g: SectionGeometry,
  at: Levels,
): {
  readonly low: number
  readonly high: number
  readonly bossLow: number
  readonly bossHigh: number
  readonly face: number
} {
  const radius = g.rings['hand-hole-ring'].groove / 2 - at.wall * 0.4
  const boss =
    g.rings['hand-hole-ring'].groove / 2 +
    g.rings['hand-hole-ring'].section +
    g.bolts['hand-hole-bolts'].thread * 2.3
  return {
    low: at.handHole - radius,
    high: at.handHole + radius,
    bossLow: at.handHole - boss,
    bossHigh: at.handHole + boss,
    face: at.chamber + at.wall * 2.2,
  }
}

/** Cover of the hand hole with its O-ring and bolts. */
export function handHole(g: SectionGeometry, at: Levels): readonly Outline[] {
  const hole = holeOf(g, at)
  const bolt = g.bolts['hand-hole-bolts']
  const ring = g.rings['hand-hole-ring']
  const cover = hole.face + bolt.length * 0.5
  const across = ring.groove / 2 + ring.section + bolt.thread * 1.15
  const along = (z: number): readonly Point[] =>
    boltAlong(z, cover, bolt, 'down').map(([r, face]): Point => [-face, r])
  return [
    {
      part: 'hand-hole-ring',
      piece: 'cover',
      drawn: 'cut',
      points: box(-cover, hole.bossLow, -hole.face, hole.bossHigh),
      hatch: {way: 'up', spacing: 6},
    },
    ...[1, -1].flatMap((side): readonly Outline[] => [
      {
        part: 'hand-hole-ring',
        piece: `ring ${side}`,
        drawn: 'thin',
        points: disc(
          -hole.face - ring.section * 0.4,
          at.handHole + side * (ring.groove / 2 + ring.section / 2),
          ring.section * 0.6,
        ),
      },
      {
        part: 'hand-hole-bolts',
        piece: `bolt ${side}`,
        drawn: 'whole',
        points: along(at.handHole + side * across),
      },
    ]),
  ]
}
