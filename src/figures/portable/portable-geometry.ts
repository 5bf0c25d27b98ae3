/** Lengths that the arrangement of a portable pump is drawn from, in millimetres. */
export interface PortableGeometry {
  readonly pumpDiameter: number
  readonly pumpLength: number
  readonly strainerDiameter: number
  readonly strainerHeight: number
  readonly impellerDiameter: number
  readonly impellerOutlet: number
  readonly eyeDiameter: number
  readonly casingHeight: number
  readonly chamberHeight: number
  readonly motorDiameter: number
  readonly motorHeight: number
  readonly shaftDiameter: number
  /** From the middle of the outside to the axis of the shaft, away from the discharge pipe. */
  readonly shaftOffset: number
  readonly pipeOutside: number
  readonly flangeDiameter: number
  readonly hoseBore: number
  readonly hoseOutside: number
  readonly pressureBore: number
  readonly returnBore: number
  readonly bendRadius: number
  readonly hatchLeast: number
  readonly hatchMost: number
  readonly headHeight: number
  readonly footCircle: number
  readonly legDiameter: number
  readonly footDistance: number
}

/** Parts of the parts list that the arrangement numbers, from the pump up to the deck. */
export const portableParts = [
  'strainer',
  'impeller',
  'seals',
  'leak-plug',
  'motor',
  'couplings',
  'oil-hoses',
  'frame',
  'cargo-hose',
  'discharge-piece',
  'leg-bolts',
  'chain',
] as const

export type PortablePart = (typeof portableParts)[number]

/** Heights along the pump above the lower end of its strainer, and places across it, in millimetres from the middle of its outside. */
export interface PumpPlaces {
  readonly casingLow: number
  readonly casingHigh: number
  readonly motorLow: number
  readonly headLow: number
  readonly headHigh: number
  readonly flangeLow: number
  readonly flangeHigh: number
  readonly top: number
  readonly axis: number
  readonly right: number
  readonly pipe: number
  readonly flange: number
  readonly eye: number
  readonly returnCoupling: number
  readonly pressureCoupling: number
}

/** Where the parts of a pump stand. */
export function placesOf(g: PortableGeometry): PumpPlaces {
  const right = g.pumpDiameter / 2
  const casingHigh = g.strainerHeight + g.casingHeight
  const headLow = casingHigh + g.chamberHeight + g.motorHeight
  const room = g.pumpLength - headLow
  const flangeHigh = headLow + room * 0.62
  const axis = -g.shaftOffset
  const returnCoupling = -right + g.returnBore
  return {
    casingLow: g.strainerHeight,
    casingHigh,
    motorLow: casingHigh + g.chamberHeight,
    headLow,
    headHigh: headLow + room * 0.2,
    flangeLow: flangeHigh - 22,
    flangeHigh,
    top: g.pumpLength,
    axis,
    right,
    pipe: right - g.pipeOutside / 2,
    flange: right - g.flangeDiameter / 2,
    eye: axis - 18,
    returnCoupling,
    pressureCoupling: returnCoupling + g.returnBore + g.pressureBore * 0.5,
  }
}

/** What of the lengths of a pump cannot stand together, or nothing. */
export type Misfit = 'heights' | 'casing' | 'pipe'

/** The first group of lengths of a pump that cannot stand together. */
export function misfitOf(g: PortableGeometry): Misfit | undefined {
  const at = placesOf(g)
  if (g.pumpLength - at.headLow < 120) return 'heights'
  if (at.axis + g.impellerDiameter / 2 > at.right - 10 || at.axis - g.impellerDiameter / 2 < 10 - at.right)
    return 'casing'
  if (at.axis + g.motorDiameter / 2 > at.pipe - g.pipeOutside / 2 || g.hoseBore >= g.pipeOutside)
    return 'pipe'
  return undefined
}
