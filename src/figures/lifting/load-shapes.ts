import {box, curve, type Point, turned} from '../section/shape.ts'

/** A length of the design as it is drawn and as it is printed. */
export interface DrawnLength {
  readonly title: string
  readonly mm: number
  readonly text: string
  /** Id of the value that prints it, where it is one. */
  readonly value?: string
}

/** A stated length that stands as a dimension beside the load. */
export interface LoadDimension {
  readonly from: number
  readonly to: number
  readonly text: string
}

/** What hangs, in millimetres: across from the line of the hook, upright from its lowest place. */
export interface LoadShape {
  /** Closed lines, each painted over the one before. */
  readonly areas: readonly (readonly Point[])[]
  /** Lines that are no area. */
  readonly lines: readonly (readonly Point[])[]
  /** Where a leg holds it: distance from the line of the hook, and height. */
  readonly eye: {readonly reach: number; readonly height: number}
  readonly across?: LoadDimension
  readonly upright?: LoadDimension
  /** Height at which a leader ends in it, where that is not a little below its middle. */
  readonly mark?: number
  /** What it is drawn by. */
  readonly lengths: readonly DrawnLength[]
  /** A hose that hangs beside the leg, both broken off above. */
  readonly hose?: {readonly at: number; readonly width: number}
}

/** A load whose lengths the design does not state: one plain box for all. */
export function plainBox(): LoadShape {
  return {areas: [box(-220, 0, 220, 260)], lines: [], eye: {reach: 180, height: 260}, lengths: []}
}

/** Pump unit as in the pump: unit flange above, suction below, discharge branch on the right. */
export function pumpUnitShape(of: {
  readonly casing: DrawnLength
  readonly height: DrawnLength
  readonly flange: DrawnLength
  readonly eye: DrawnLength
  readonly spigotBore: DrawnLength
  readonly spigotOffset: DrawnLength
}): LoadShape {
  const body = pumpUnitAreas({
    casing: of.casing.mm,
    height: of.height.mm,
    flange: of.flange.mm,
    eye: of.eye.mm,
    spigotBore: of.spigotBore.mm,
    spigotOffset: of.spigotOffset.mm,
  })
  return {
    areas: body,
    lines: [],
    eye: {reach: of.flange.mm * 0.43, height: of.height.mm},
    across: {from: -of.casing.mm / 2, to: of.casing.mm / 2, text: of.casing.text},
    upright: {from: 0, to: of.height.mm, text: of.height.text},
    lengths: Object.values(of),
  }
}

/** Areas of a pump unit that stands on its suction cover. */
export function pumpUnitAreas(of: {
  readonly casing: number
  readonly height: number
  readonly flange: number
  readonly eye: number
  readonly spigotBore: number
  readonly spigotOffset: number
}): readonly (readonly Point[])[] {
  const {casing, height, flange, eye, spigotBore, spigotOffset} = of
  const half = casing / 2
  const neck = flange * 0.3
  const cover = half * 0.78
  const wall = casing * 0.022
  const branch = spigotBore / 2 + wall
  return [
    box(spigotOffset - branch, height * 0.3, spigotOffset + branch, height * 0.74),
    box(spigotOffset - branch - wall, height * 0.7, spigotOffset + branch + wall, height * 0.84),
    turned([
      [0, 0],
      [eye * 0.58, 0],
      [cover - wall, height * 0.1],
      [cover - wall, height * 0.13],
      [0, height * 0.13],
    ]),
    turned([
      ...curve([cover, height * 0.21], [half, height * 0.2], [half, height * 0.36], 5),
      ...curve([half, height * 0.36], [half, height * 0.54], [neck + wall * 2, height * 0.55], 6),
    ]),
    box(-cover, height * 0.13, cover, height * 0.21),
    turned([
      [0, height * 0.55],
      [neck, height * 0.55],
      [neck, height * 0.92],
      [0, height * 0.92],
    ]),
    box(-flange / 2, height * 0.92, flange / 2, height),
  ]
}

/** Suction cover with its suction above: a flat disc, the step with its O-ring below. */
export function coverShape(of: {readonly register: DrawnLength; readonly eye: DrawnLength}): LoadShape {
  const width = of.register.mm
  const rim = width * 0.57
  const mouth = of.eye.mm * 0.58
  return {
    areas: [
      box(-width / 2, 0, width / 2, width * 0.06),
      turned([
        [0, width * 0.13],
        [rim * 0.82, width * 0.13],
        [mouth, width * 0.23],
        [0, width * 0.23],
      ]),
      box(-rim, width * 0.06, rim, width * 0.13),
    ],
    lines: [],
    eye: {reach: rim * 0.91, height: width * 0.13},
    mark: width * 0.095,
    across: {from: -width / 2, to: width / 2, text: of.register.text},
    lengths: Object.values(of),
  }
}

/** Impeller with its eye above, hub and sleeve below. */
export function impellerShape(of: {
  readonly diameter: DrawnLength
  readonly outlet: DrawnLength
  readonly eye: DrawnLength
  readonly hub: DrawnLength
  readonly sleeve: DrawnLength
}): LoadShape {
  const half = of.diameter.mm / 2
  const shroud = half * 0.05
  const back = half * 0.95
  const rim = back + of.outlet.mm + 2 * shroud
  const top = rim + half * 0.42
  const neck = of.eye.mm * 0.54
  return {
    areas: [
      box(-of.hub.mm / 2, 0, of.hub.mm / 2, half * 0.3),
      box(-of.sleeve.mm / 2, half * 0.3, of.sleeve.mm / 2, half * 0.8),
      turned([
        [0, half * 0.8],
        [neck * 0.95, half * 0.8],
        [neck * 0.95, back],
        [half, back],
        [half, rim],
        ...curve([half, rim], [neck * 1.1, rim + shroud], [neck, top], 6),
        [0, top],
      ]),
      box(-half, back + shroud, half, rim - shroud),
    ],
    lines: [],
    eye: {reach: 0, height: top},
    across: {from: -half, to: half, text: of.diameter.text},
    lengths: Object.values(of),
  }
}

/** Casing with the side of the suction cover above, discharge branch down on the right. */
export function casingShape(of: {
  readonly casing: DrawnLength
  readonly spigotBore: DrawnLength
  readonly spigotOffset: DrawnLength
}): LoadShape {
  const half = of.casing.mm / 2
  const height = half * 0.5
  const rim = half * 0.74
  const branch = of.spigotBore.mm / 2 + half * 0.044
  const [left, right] = [of.spigotOffset.mm - branch, of.spigotOffset.mm + branch]
  return {
    areas: [
      box(left, 0, right, height),
      box(left - half * 0.04, 0, right + half * 0.04, half * 0.16),
      turned([
        [0, half * 0.36],
        [rim * 0.7, half * 0.36],
        ...curve([rim * 0.7, half * 0.36], [half, half * 0.38], [half, half * 0.66], 5),
        ...curve([half, half * 0.66], [half, half * 0.9], [rim, half * 0.92], 5),
        [0, half * 0.92],
      ]),
      box(-rim, half * 0.92, rim, half * 1.02),
    ],
    lines: [],
    eye: {reach: rim * 0.9, height: half * 1.02},
    across: {from: -half, to: half, text: of.casing.text},
    lengths: Object.values(of),
  }
}

/** Portable pump: strainer below, casing, motor, and the head with its eye. */
export function portableShape(
  of: {readonly diameter: DrawnLength; readonly length: DrawnLength},
  hose: DrawnLength | undefined,
): LoadShape {
  const half = of.diameter.mm / 2
  const long = of.length.mm
  const slots = [-0.6, -0.3, 0, 0.3, 0.6].map((share): readonly Point[] => [
    [half * share, long * 0.03],
    [half * share, long * 0.11],
  ])
  return {
    areas: [
      box(-half * 0.85, 0, half * 0.85, long * 0.14),
      turned([
        [0, long * 0.14],
        ...curve([half * 0.85, long * 0.14], [half, long * 0.16], [half, long * 0.26], 5),
        ...curve([half, long * 0.26], [half, long * 0.38], [half * 0.7, long * 0.4], 5),
        [0, long * 0.4],
      ]),
      box(-half * 0.62, long * 0.4, half * 0.62, long * 0.9),
      box(-half * 0.8, long * 0.9, half * 0.8, long),
    ],
    lines: slots,
    eye: {reach: 0, height: long},
    across: {from: -half, to: half, text: of.diameter.text},
    upright: {from: 0, to: long, text: of.length.text},
    lengths: [...Object.values(of), ...(hose ? [hose] : [])],
    ...(hose ? {hose: {at: half * 0.45, width: hose.mm}} : {}),
  }
}

/** Lengths with their titles, as a figure tells them. */
export function toldLengths(lengths: readonly DrawnLength[]): string {
  return lengths.map(({title, text}) => `${title} ${text}`).join('; ')
}
