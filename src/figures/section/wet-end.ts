import {casing} from './casing.ts'
import {type Levels, ringSeat} from './levels.ts'
import type {SectionGeometry, SectionVariant} from './section-geometry.ts'
import {boltAlong, both, box, curve, disc, type Outline, type Point, turned} from './shape.ts'

/** Suction cover, wear rings, impeller and casing, with their screws and O-rings. */
export function wetEnd(g: SectionGeometry, variant: SectionVariant, at: Levels): readonly Outline[] {
  return [...casing(g, at), ...suctionCover(g, at), ...impeller(g, at), ...wearRings(g, variant, at)]
}

function suctionCover(g: SectionGeometry, at: Levels): readonly Outline[] {
  const {wall} = at
  const ring = ringSeat(g.lowerRing, at)
  const section = g.rings['suction-cover-ring'].section
  const outer = at.coverRegister
  const bolt = g.bolts['suction-cover-bolts']
  const face = at.coverJoint - bolt.length * 0.6
  const mouth = g.eyeDiameter / 2
  // The cover follows the front shroud.
  const follow = frontOutside(g, at).filter(([r]) => r > ring.flange + 4)
  const points: readonly Point[] = [
    [mouth * 1.16, at.cover],
    ...curve([mouth * 1.16, at.cover], [mouth, at.cover], [mouth, at.eye - 2], 4),
    [ring.outside, at.eye - 2],
    [ring.outside, at.lowerRingTop + 2],
    [ring.flange + 2, at.lowerRingTop + 2],
    ...follow.map(([r, z]): Point => [r, z - wall * 0.4]),
    [outer, at.rim - wall * 0.3],
    [outer, at.coverJoint],
    [at.coverFlange, at.coverJoint],
    [at.coverFlange, face],
    [outer - wall, face],
    ...follow.map(([r, z]): Point => [r + wall * 0.5, z - wall * 1.5]).toReversed(),
    [ring.outside + wall, at.eye],
    [mouth * 1.16 + wall * 0.8, at.cover],
  ]
  const r = (at.coverRegister + at.coverFlange) / 2
  return [
    ...both({part: 'suction-cover', piece: 'cover', drawn: 'cut', points, hatch: {way: 'up', spacing: 9}}),
    ...both({
      part: 'suction-cover-bolts',
      piece: 'bolt',
      drawn: 'whole',
      points: boltAlong(r, face, bolt, 'up'),
    }),
    ...both({
      part: 'suction-cover-ring',
      piece: 'ring',
      drawn: 'thin',
      points: disc(
        g.rings['suction-cover-ring'].groove / 2 + section / 2,
        (at.coverJoint + at.rim) / 2 - wall * 0.1,
        section * 0.62,
      ),
    }),
  ]
}

/** Screw of a ring where the design states none. */
const ringScrew = {thread: 6, length: 16} as const

function wearRings(g: SectionGeometry, variant: SectionVariant, at: Levels): readonly Outline[] {
  const screwed = variant.ringFit === 'screwed'
  const size = g.bolts['ring-screws'] ?? ringScrew
  const thick = at.wall * 0.5
  const lower = ringSeat(g.lowerRing, at)
  const upper = ringSeat(g.upperRing, at)
  const lowTop = at.lowerRingTop + 2
  const lowerPoints: readonly Point[] = screwed
    ? [
        [lower.inside, at.eye],
        [lower.outside, at.eye],
        [lower.outside, lowTop - thick],
        [lower.flange, lowTop - thick],
        [lower.flange, lowTop],
        [lower.inside, lowTop],
      ]
    : box(lower.inside, at.eye, lower.outside, lowTop)
  const upperPoints: readonly Point[] = screwed
    ? [
        [upper.inside, at.casingWall],
        [upper.flange, at.casingWall],
        [upper.flange, at.casingWall + thick],
        [upper.outside, at.casingWall + thick],
        [upper.outside, at.collarTop],
        [upper.inside, at.collarTop],
      ]
    : box(upper.inside, at.casingWall, upper.outside, at.collarTop)
  const hatch = {way: 'down', spacing: 6} as const
  return [
    ...both({part: 'lower-ring', piece: 'ring', drawn: 'cut', points: lowerPoints, hatch}),
    ...both({part: 'upper-ring', piece: 'ring', drawn: 'cut', points: upperPoints, hatch}),
    ...(screwed
      ? [
          ...both({
            part: 'lower-ring-screws',
            piece: 'screw',
            drawn: 'whole',
            points: screw((lower.outside + lower.flange) / 2, lowTop, size, -1),
          }),
          ...both({
            part: 'upper-ring-screws',
            piece: 'screw',
            drawn: 'whole',
            points: screw((upper.outside + upper.flange) / 2, at.casingWall, size, 1),
          }),
        ]
      : []),
  ]
}

/** Screw whose head lies flush with the face of its ring. */
function screw(
  r: number,
  face: number,
  size: {readonly thread: number; readonly length: number},
  sign: 1 | -1,
): readonly Point[] {
  const half = size.thread / 2
  const head = size.thread * 0.75
  const neck = face + sign * size.thread * 0.6
  return [
    [r - head, face],
    [r + head, face],
    [r + head, neck],
    [r + half, neck],
    [r + half, face + sign * size.length],
    [r - half, face + sign * size.length],
    [r - half, neck],
    [r - head, neck],
  ]
}

/** Outside of the front shroud, from its neck to the rim. */
function frontOutside(g: SectionGeometry, at: Levels): readonly Point[] {
  const neck = g.lowerRing / 2
  return curve(
    [neck, at.lowerRingTop + 1],
    [neck + at.shroud, at.lowerRingTop + at.shroud],
    [at.impeller * 0.99, at.rim],
    8,
  )
}

function impeller(g: SectionGeometry, at: Levels): readonly Outline[] {
  const {impeller: rim, hub} = at
  const eye = g.eyeDiameter / 2
  const lower = g.lowerRing / 2
  const upper = g.upperRing / 2
  const nose = at.eye + (at.backLow - at.eye) * 0.62
  const innerFront = curve([eye, at.eye], [eye, at.outlet - 1], [rim, at.outlet], 10)
  const front: readonly Point[] = [
    ...innerFront,
    [rim, at.rim],
    ...frontOutside(g, at).toReversed(),
    [lower, at.eye],
  ]
  const middle: Point = [hub * 0.95, (nose + at.backLow) / 2]
  const noseCurve = curve([0, nose], [hub * 0.7, nose], middle, 5)
  const innerBack = [...noseCurve, ...curve(middle, [hub * 1.2, at.backLow], [rim, at.backLow], 7).slice(1)]
  const flangeLow = at.hubSeat - g.bolts['hub-bolts'].length * 0.5
  const neck = hub * 0.5
  const shoulder = at.back + 1
  const collar = upper - at.wall * 0.8
  const half: readonly Point[] = [
    ...innerBack,
    [rim, at.back],
    [upper, at.back],
    [upper, at.collarTop],
    [collar, at.collarTop],
    [collar, shoulder],
    [hub, shoulder],
    [hub, at.sleeveEnd],
    [neck, at.sleeveEnd + hub * 0.12],
    [neck, flangeLow],
    [hub, flangeLow],
    [hub, at.hubSeat],
  ]
  const hatch = {way: 'down', spacing: 10} as const
  const bladeFrom = 3
  const vane: readonly Point[] = [
    ...innerFront.slice(bladeFrom),
    ...innerBack.slice(noseCurve.length).reverse(),
  ]
  return [
    ...both({part: 'impeller', piece: 'vane', drawn: 'hidden', points: vane}),
    ...both({part: 'impeller', piece: 'front shroud', drawn: 'cut', points: front, hatch}),
    {part: 'impeller', piece: 'back shroud and hub', drawn: 'cut', points: turned(half), hatch},
  ]
}
