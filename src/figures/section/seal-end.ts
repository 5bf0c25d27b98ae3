import {cargoLipHeight, type Levels} from './levels.ts'
import {lip} from './lip.ts'
import {oilSeal} from './oil-seal.ts'
import {handHole, housing} from './seal-housing.ts'
import {looksOf, type SectionGeometry, type SectionVariant} from './section-geometry.ts'
import {boltAlong, both, disc, type Outline, type Point, turned} from './shape.ts'

/** Seal housing with cargo seal and hand hole, sleeve, hub bolts, shaft flange, lip holder and mechanical oil seal. */
export function sealEnd(g: SectionGeometry, variant: SectionVariant, at: Levels): readonly Outline[] {
  return [
    ...housing(g, at),
    ...handHole(g, at),
    ...shaftFlange(g, at),
    ...sleeve(g, at),
    ...cargoSeal(g, variant, at),
    ...oilSeal(g, variant, at),
  ]
}

function sleeve(g: SectionGeometry, at: Levels): readonly Outline[] {
  const low = at.back + 1
  const screw = g.bolts['sleeve-screws']
  const collar = at.sleeveRadius + screw.thread * 2
  const thick = screw.length * 0.5
  const ring = g.rings['sleeve-ring']
  const points: readonly Point[] = [
    [at.hub, low],
    [collar, low],
    [collar, low + thick],
    [at.sleeveRadius, low + thick],
    [at.sleeveRadius, at.sleeveEnd],
    [at.hub, at.sleeveEnd],
  ]
  return [
    ...both({part: 'sleeve', piece: 'sleeve', drawn: 'thin', points, hatch: {way: 'up', spacing: 7}}),
    ...both({
      part: 'sleeve',
      piece: 'screw',
      drawn: 'whole',
      points: boltAlong(
        at.sleeveRadius + screw.thread * 1.05,
        low + thick,
        {...screw, thread: screw.thread * 0.9},
        'down',
      ),
    }),
    ...both({
      part: 'sleeve',
      piece: 'O-ring',
      drawn: 'thin',
      points: disc(
        ring.groove / 2 + ring.section / 2,
        at.sleeveEnd - g.sleeveDiameter * 0.14,
        ring.section * 0.6,
      ),
    }),
  ]
}

function cargoSeal(g: SectionGeometry, variant: SectionVariant, at: Levels): readonly Outline[] {
  const height = cargoLipHeight(g, variant)
  return variant.cargoLips.flatMap((one, index) =>
    both({
      part: 'cargo-seal',
      piece: `lip ${index + 1}`,
      drawn: 'thin',
      points: lip(
        at.sleeveRadius,
        at.cargoSeatRadius,
        at.housing + index * height,
        height,
        looksOf(one, 'cargo seal'),
      ),
    }),
  )
}

function shaftFlange(g: SectionGeometry, at: Levels): readonly Outline[] {
  const {hubSeat, hub, sleeveRadius} = at
  const shaft = g.shaftDiameter / 2
  const bolt = g.bolts['shaft-flange-bolts']
  const hubBolt = g.bolts['hub-bolts']
  const recess = shaft * 0.76
  const seat = hubSeat + bolt.thread * 1.3
  const shaftEnd = seat + bolt.length * 0.45
  const wide = hubSeat + (at.unitFlange - hubSeat) * 0.36
  const top = hubSeat + (at.unitFlange - hubSeat) * 0.92
  const half: readonly Point[] = [
    [0, seat],
    [recess, seat],
    [recess, hubSeat],
    [hub, hubSeat],
    [hub, wide],
    [sleeveRadius, wide],
    [sleeveRadius, top],
    [shaft, top],
    [shaft, shaftEnd],
    [0, shaftEnd],
  ]
  const pitch = hub - hubBolt.thread * 0.95
  return [
    {
      part: 'shaft-flange',
      piece: 'flange',
      drawn: 'cut',
      points: turned(half),
      hatch: {way: 'up', spacing: 7},
    },
    ...both({
      part: 'shaft-flange',
      piece: 'bolt',
      drawn: 'whole',
      points: boltAlong(shaft * 0.45, seat, bolt, 'up'),
    }),
    ...both({
      part: 'hub-bolts',
      piece: 'bolt',
      drawn: 'whole',
      points: boltAlong(pitch, hubSeat - hubBolt.length * 0.5, hubBolt, 'up'),
    }),
  ]
}
