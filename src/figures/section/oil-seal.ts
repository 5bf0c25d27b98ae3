import type {Levels} from './levels.ts'
import {lip} from './lip.ts'
import {looksOf, type SectionGeometry, type SectionVariant} from './section-geometry.ts'
import {boltAlong, both, box, disc, type Outline, type Point} from './shape.ts'

/** Lip holder with the single lip, and the mechanical oil seal above it. */
export function oilSeal(g: SectionGeometry, variant: SectionVariant, at: Levels): readonly Outline[] {
  const ring = g.rings['lip-holder-ring']
  const bolt = g.bolts['lip-holder-bolts']
  const shaft = g.shaftDiameter / 2
  const spigot = ring.groove / 2 + ring.section * 0.82
  const seatRadius = at.sleeveRadius + g.sleeveDiameter * 0.13
  const low = at.unitFlange - (at.unitFlange - at.hubSeat) * 0.5
  const shoulder = low + g.singleSeat
  const flangeLow = at.unitFlange - bolt.length * 0.45
  const hole = at.sleeveRadius + at.wall * 0.3
  const flange = spigot + bolt.thread * 2.7
  const high = at.unitFlange + ring.section * 3
  const holder: readonly Point[] = [
    [seatRadius, low],
    [seatRadius + at.wall * 0.8, low],
    [seatRadius + at.wall * 0.8, flangeLow],
    [flange, flangeLow],
    [flange, at.unitFlange],
    [spigot, at.unitFlange],
    [spigot, high],
    [hole + at.wall * 0.5, high],
    [hole, shoulder + at.wall * 0.6],
    [hole, shoulder],
    [seatRadius, shoulder],
  ]
  const face = high + g.shaftDiameter * 0.36
  const wide = shaft * 1.32
  const hatch = {way: 'down', spacing: 7} as const
  return [
    ...both({part: 'oil-seal', piece: 'lip holder', drawn: 'cut', points: holder, hatch}),
    ...both({
      part: 'oil-seal',
      piece: 'single lip',
      drawn: 'thin',
      points: lip(at.sleeveRadius, seatRadius, low, g.singleSeat, looksOf(variant.singleLip, 'single lip')),
    }),
    ...both({
      part: 'oil-seal',
      piece: 'bolt of the lip holder',
      drawn: 'whole',
      points: boltAlong((spigot + flange) / 2, flangeLow, bolt, 'up'),
    }),
    ...both({
      part: 'oil-seal',
      piece: 'O-ring of the lip holder',
      drawn: 'thin',
      points: disc(ring.groove / 2 + ring.section / 2, (at.unitFlange + high) / 2, ring.section * 0.6),
    }),
    ...both({
      part: 'oil-seal',
      piece: 'rotating part',
      drawn: 'cut',
      points: box(shaft, face - g.shaftDiameter * 0.34, wide, face),
      hatch,
    }),
    ...both({
      part: 'oil-seal',
      piece: 'stationary part',
      drawn: 'cut',
      points: box(shaft + 2, face, wide + 3, face + g.shaftDiameter * 0.2),
      hatch: {way: 'up', spacing: 7},
    }),
  ]
}

/** Height of the running faces of the oil seal above the unit flange, for the motor that carries the seat. */
export function oilSealFace(g: SectionGeometry): number {
  return g.rings['lip-holder-ring'].section * 3 + g.shaftDiameter * 0.36
}

/** Radius and height of the bore in the foot of the motor that takes the lip holder. */
export function holderBore(g: SectionGeometry): {readonly radius: number; readonly height: number} {
  const ring = g.rings['lip-holder-ring']
  return {radius: ring.groove / 2 + ring.section * 0.82, height: ring.section * 3}
}
