import type {SectionGeometry, SectionVariant} from './section-geometry.ts'

/** Heights and radii that several parts share, in millimetres. */
export type Levels = ReturnType<typeof levelsOf>

/** Heights from the bottom of the well up, and radii from the centre line out. */
export function levelsOf(g: SectionGeometry) {
  const wall = g.casingDiameter * 0.022
  const shroud = wall * 0.55
  const cover = g.suctionClearance
  const unitFlange = cover + g.unitHeight
  const eye = cover + wall * 1.2
  const lowerRingTop = eye + g.lowerRing * 0.11
  const rim = lowerRingTop + wall * 0.5 + g.impellerDiameter * 0.05
  const outlet = rim + shroud
  const backLow = outlet + g.outletWidth
  const back = backLow + shroud
  const collarTop = back + g.upperRing * 0.11
  const casingWall = back + wall * 0.35
  const housing = collarTop - wall * 0.3
  const housingFace = housing + wall * 1.3
  const hubSeat = unitFlange - g.shaftReach
  const sleeveEnd = hubSeat - g.sleevePlace
  const sleeveRadius = g.sleeveDiameter / 2
  const cargoSeatRadius = sleeveRadius + g.sleeveDiameter * 0.13
  const housingFlange = housingFace + wall * 1.15
  const coverRing = g.rings['suction-cover-ring']
  const coverRegister = coverRing.groove / 2 + coverRing.section * 0.82
  const coverFlange = coverRegister + wall * 2.6
  const housingRing = g.rings['housing-ring']
  const housingSpigot = housingRing.groove / 2 + housingRing.section * 0.82
  const chamber = Math.max(g.motorFlangeDiameter * 0.27, housingSpigot + wall * 1.4)
  const motor = unitFlange
  const foot = motor + g.motorHeight
  return {
    wall,
    shroud,
    cover,
    unitFlange,
    eye,
    lowerRingTop,
    rim,
    outlet,
    backLow,
    back,
    collarTop,
    casingWall,
    housing,
    housingFace,
    housingFlange,
    hubSeat,
    sleeveEnd,
    sleeveRadius,
    cargoSeatRadius,
    coverJoint: rim - wall * 1.4,
    coverRegister,
    coverFlange,
    housingSpigot,
    chamber,
    pipeTop: housingFlange + wall * 2 + g.spigotBore * 0.42 + wall * 2,
    motor,
    foot,
    top: foot + g.stack.outside * 0.95,
    impeller: g.impellerDiameter / 2,
    casing: g.casingDiameter / 2,
    hub: g.hubDiameter / 2,
    unitFlangeLow: unitFlange - g.bolts['head-flange-bolts'].length * 0.46,
    handHole: (housingFlange + unitFlange - g.bolts['head-flange-bolts'].length * 0.46) / 2,
  }
}

/** Diameter and height of the seat of the cargo seal: all its lips, one above the other. */
export function cargoLipHeight(g: SectionGeometry, variant: SectionVariant): number {
  return g.cargoSeat / Math.max(1, variant.cargoLips.length)
}

/** How far the line of a break swings out, by the width of what it breaks. */
export function waveOf(wide: number): number {
  return wide * 0.07
}

/** Radii of a wear ring around its running diameter. */
export function ringSeat(
  running: number,
  at: Levels,
): {readonly inside: number; readonly outside: number; readonly flange: number} {
  const inside = running / 2
  const outside = inside + at.wall * 0.75
  return {inside, outside, flange: outside + at.wall * 1.15}
}
