import {box, curve, type Point} from '../section/shape.ts'
import type {DrawnLength, LoadShape} from './load-shapes.ts'

/** Lengths of a motor with its flange below. */
export interface MotorLengths {
  readonly diameter: DrawnLength
  readonly height: DrawnLength
  readonly flange: DrawnLength
  readonly hub: DrawnLength
  readonly reach: DrawnLength
}

/** Motor with its flange and the shaft flange below, held at both lugs, or at one of them by a single leg. */
export function motorShape(of: MotorLengths, legs: number): LoadShape {
  const half = of.diameter.mm / 2
  const low = of.reach.mm
  const top = low + of.height.mm
  const lug = of.height.mm * 0.06
  const reach = half + lug * 0.8
  const aside = legs === 1 ? -reach : 0
  const shifted = (area: readonly Point[]): readonly Point[] => area.map(([r, z]): Point => [r + aside, z])
  const lugs = [-1, 1].map((side) => {
    const [inner, outer] = [side * (half - 4), side * (half + lug * 1.4)]
    return box(Math.min(inner, outer), top - lug * 2.2, Math.max(inner, outer), top - lug)
  })
  const steps = [
    box(-half * 0.42, top, half * 0.42, top + lug * 2),
    box(-half * 0.62, top, half * 0.62, top + lug),
  ]
  return {
    areas: [...steps, ...lugs, ...motorAreas(of, low)].map(shifted),
    lines: [],
    eye: {reach: legs === 1 ? 0 : reach, height: top - lug},
    across: {from: aside - of.flange.mm / 2, to: aside + of.flange.mm / 2, text: of.flange.text},
    upright: {from: low, to: top, text: of.height.text},
    lengths: Object.values(of),
  }
}

function motorAreas(of: MotorLengths, low: number): readonly (readonly Point[])[] {
  const half = of.diameter.mm / 2
  const top = low + of.height.mm
  return [
    box(-of.hub.mm / 2, 0, of.hub.mm / 2, low),
    box(-half, low, half, top),
    box(-half * 1.05, low + of.height.mm * 0.62, half * 1.05, low + of.height.mm * 0.68),
    box(-of.flange.mm / 2, low, of.flange.mm / 2, low + of.height.mm * 0.09),
  ]
}

/** A piece of the pipe stack with the motor at its foot, or the whole stack below its top plate; the pipe is broken off. */
export function stackShape(of: MotorLengths & {readonly pipe: DrawnLength}, whole: boolean): LoadShape {
  const {pipe, ...motor} = of
  const half = pipe.mm / 2
  const foot = of.reach.mm + of.height.mm
  const top = foot + pipe.mm * 1.9
  const plate = half * (whole ? 3.6 : 2.6)
  const thick = pipe.mm * (whole ? 0.22 : 0.3)
  const rim = half * 1.55
  const gap = foot + pipe.mm
  return {
    areas: [
      ...motorAreas(motor, of.reach.mm),
      [[-half, foot], [half, foot], ...broken(half, gap - pipe.mm * 0.12)],
      [...broken(half, gap + pipe.mm * 0.12).toReversed(), [half, top], [-half, top]],
      box(-rim, foot, rim, foot + pipe.mm * 0.14),
      box(-rim, top - pipe.mm * 0.14, rim, top),
      box(-plate, top, plate, top + thick),
    ],
    lines: [],
    eye: {reach: plate * 0.8, height: top + thick},
    mark: of.reach.mm + of.height.mm * 0.4,
    across: {from: -of.flange.mm / 2, to: of.flange.mm / 2, text: of.flange.text},
    lengths: Object.values(of),
  }
}

/** Line of a break across a pipe, from right to left. */
function broken(half: number, height: number): readonly Point[] {
  const swing = half * 0.35
  return [
    ...curve([half, height], [half * 0.5, height + swing], [0, height], 4),
    ...curve([0, height], [-half * 0.5, height - swing], [-half, height], 4).slice(1),
  ]
}
