import type {Levels} from './levels.ts'
import {holderBore, oilSealFace} from './oil-seal.ts'
import type {Bearing, SectionGeometry} from './section-geometry.ts'
import {boltAlong, both, box, disc, type Outline, type Point, turned} from './shape.ts'
import {stackFoot, stepsOf} from './stack-foot.ts'

/** Motor with shaft and bearings, its flange to the pump unit, and the foot of the pipe stack. */
export function motorEnd(g: SectionGeometry, at: Levels): readonly Outline[] {
  return [...motor(g, at), ...motorFlange(g, at), ...stackFoot(g, at)]
}

/** Heights of the seats of both bearings, and of the joint above them. */
export function bearingLevels(
  g: SectionGeometry,
  at: Levels,
): Readonly<Record<'footLow' | 'footHigh' | 'topLow' | 'topHigh' | 'joint', number>> {
  const footLow = at.motor + oilSealFace(g) + g.shaftDiameter * 0.34
  const footHigh = footLow + 2 * g.footBearing.width
  const topLow = footHigh + g.footBearing.width * 0.9
  const topHigh = topLow + g.topBearing.width
  return {footLow, footHigh, topLow, topHigh, joint: topHigh + at.wall * 1.2}
}

function motor(g: SectionGeometry, at: Levels): readonly Outline[] {
  const {wall} = at
  const outside = g.motorDiameter / 2
  const flange = g.motorFlangeDiameter / 2
  const thick = g.bolts['head-flange-bolts'].length * 0.62
  const bore = holderBore(g)
  const face = at.motor + oilSealFace(g)
  const shaft = g.shaftDiameter / 2
  const foot = g.footBearing
  const top = g.topBearing
  const {footLow, footHigh, topLow, topHigh, joint} = bearingLevels(g, at)
  const channelIn = outside - wall * 2.1
  const channelOut = outside - wall * 1.2
  const sealSeat = shaft * 1.32 + 3
  const housingIn: readonly Point[] = [
    [channelIn, at.motor],
    [bore.radius, at.motor],
    [bore.radius, at.motor + bore.height],
    [sealSeat, at.motor + bore.height + wall * 0.5],
    [sealSeat, face + g.shaftDiameter * 0.2],
    [foot.bore / 2 + 4, face + g.shaftDiameter * 0.2],
    [foot.bore / 2 + 4, footLow],
    [foot.outside / 2, footLow],
    [foot.outside / 2, joint],
    [channelIn, joint],
  ]
  const housingOut: readonly Point[] = [
    [channelOut, at.motor],
    [flange, at.motor],
    [flange, at.motor + thick],
    [outside + wall * 0.5, at.motor + thick],
    [outside, at.motor + thick + wall * 0.5],
    [outside, joint - wall],
    [outside + wall * 0.4, joint - wall],
    [outside + wall * 0.4, joint],
    [channelOut, joint],
  ]
  const bearingCover: readonly Point[] = [
    [top.outside / 2, topLow - wall * 0.3],
    [foot.outside / 2, topLow - wall * 0.3],
    [foot.outside / 2, joint],
    [top.bore / 2 + 6, joint],
    [top.bore / 2 + 6, topHigh],
    [top.outside / 2, topHigh],
  ]
  return [
    ...both({
      part: 'motor',
      piece: 'bearing housing',
      drawn: 'cut',
      points: housingIn,
      hatch: {way: 'up', spacing: 11},
    }),
    ...both({
      part: 'motor',
      piece: 'bearing housing outside of the cofferdam',
      drawn: 'cut',
      points: housingOut,
      hatch: {way: 'up', spacing: 11},
    }),
    ...both({
      part: 'motor',
      piece: 'bearing cover',
      drawn: 'cut',
      points: bearingCover,
      hatch: {way: 'down', spacing: 6},
    }),
    ...body(g, at, joint, channelIn, channelOut),
    ...bearing(g.footBearing, footLow, 'foot bearing', 'ball'),
    ...bearing(g.footBearing, footLow + foot.width, 'second foot bearing', 'ball'),
    ...bearing(g.topBearing, topLow, 'top bearing', 'roller'),
    {
      part: 'motor',
      piece: 'shaft',
      drawn: 'whole',
      points: turned(shaftHalf(g, at, footLow, footHigh, topLow, topHigh, joint)),
    },
  ]
}

function shaftHalf(
  g: SectionGeometry,
  at: Levels,
  footLow: number,
  footHigh: number,
  topLow: number,
  topHigh: number,
  joint: number,
): readonly Point[] {
  const bolt = g.bolts['shaft-flange-bolts']
  const end = at.hubSeat + bolt.thread * 1.3 + bolt.length * 0.45
  const shaft = g.shaftDiameter / 2
  const foot = g.footBearing.bore / 2
  const top = g.topBearing.bore / 2
  return [
    [0, end],
    [shaft, end],
    [shaft, footLow - 4],
    [foot + 6, footLow - 4],
    [foot + 6, footLow],
    [foot, footLow],
    [foot, footHigh],
    [foot + 8, footHigh],
    [foot + 8, footHigh + g.footBearing.width * 0.5],
    [top, footHigh + g.footBearing.width * 0.5],
    [top, topLow],
    [top, topHigh + 4],
    [top * 0.8, topHigh + 4],
    [top * 0.8, joint + g.shaftDiameter * 0.5],
    [0, joint + g.shaftDiameter * 0.5],
  ]
}

function bearing(size: Bearing, low: number, piece: string, kind: 'ball' | 'roller'): readonly Outline[] {
  const inside = size.bore / 2
  const outside = size.outside / 2
  const race = (outside - inside) * 0.24
  const middle = (inside + outside) / 2
  const high = low + size.width
  const element =
    kind === 'ball'
      ? disc(middle, low + size.width / 2, (outside - inside) * 0.3, 16)
      : box(
          middle - (outside - inside) * 0.26,
          low + size.width * 0.2,
          middle + (outside - inside) * 0.26,
          high - size.width * 0.2,
        )
  const hatch = {way: 'down', spacing: 6} as const
  return [
    ...both({
      part: 'motor',
      piece: `${piece} inner ring`,
      drawn: 'cut',
      points: box(inside, low, inside + race, high),
      hatch,
    }),
    ...both({
      part: 'motor',
      piece: `${piece} outer ring`,
      drawn: 'cut',
      points: box(outside - race, low, outside, high),
      hatch,
    }),
    ...both({part: 'motor', piece: `${piece} ${kind}`, drawn: 'whole', points: element}),
  ]
}

/** Motor body with the way of the cofferdam from the bearing housing to the annulus of the stack. */
function body(
  g: SectionGeometry,
  at: Levels,
  low: number,
  channelIn: number,
  channelOut: number,
): readonly Outline[] {
  const {wall, foot} = at
  const outside = g.motorDiameter / 2
  const steps = stepsOf(g, at)
  const [innerLength, middleLength, outerLength] = steps.lengths
  const inside = channelIn - wall * 1.3
  const room = foot - wall * 4.4
  const bend = foot - wall * 2.8
  const middleIn = steps.middle - wall * 0.7
  const innerIn = g.stack.pressureBore / 2
  const outerIn = g.stack.bore / 2
  const cofferdamIn: readonly Point[] = [
    [channelIn, low],
    [inside, low],
    [inside, room],
    [steps.inner + wall, room],
    [steps.inner + wall, foot - wall * 0.2],
    [middleIn, foot - wall * 0.2],
    [middleIn, foot + middleLength],
    [steps.middle, foot + middleLength],
    [steps.middle, bend],
    [channelIn, bend - wall * 0.6],
  ]
  const cofferdamOut: readonly Point[] = [
    [channelOut, low],
    [outside + wall * 0.4, low],
    [outside + wall * 0.4, low + wall],
    [outside, low + wall],
    [outside, foot],
    [steps.outer, foot],
    [steps.outer, foot + outerLength],
    [outerIn, foot + outerLength],
    [outerIn, bend + wall * 0.9],
    [channelOut, bend],
  ]
  const inner: readonly Point[] = [
    [innerIn, room],
    [steps.inner, room],
    [steps.inner, foot + innerLength],
    [innerIn, foot + innerLength],
  ]
  const hatch = {way: 'down', spacing: 11} as const
  const drum = inside * 0.72
  const drumLow = low + g.shaftDiameter * 0.5
  return [
    ...both({part: 'motor', piece: 'motor body', drawn: 'cut', points: cofferdamIn, hatch}),
    ...both({
      part: 'motor',
      piece: 'motor body outside of the cofferdam',
      drawn: 'cut',
      points: cofferdamOut,
      hatch,
    }),
    ...both({part: 'motor', piece: 'inlet', drawn: 'cut', points: inner, hatch}),
    {
      part: 'motor',
      piece: 'hydraulic parts',
      drawn: 'whole',
      points: box(-drum, drumLow, drum, room - wall * 0.4),
    },
    ...both({
      part: 'motor',
      piece: 'piston',
      drawn: 'hidden',
      points: box(drum * 0.42, drumLow, drum * 0.78, room - wall * 1.5),
    }),
  ]
}

function motorFlange(g: SectionGeometry, at: Levels): readonly Outline[] {
  const bolt = g.bolts['head-flange-bolts']
  const ring = g.rings['head-flange-ring']
  const radius = g.motorFlangeDiameter / 2 - bolt.thread * 1.3
  return [
    ...both({
      part: 'head-flange-bolts',
      piece: 'bolt',
      drawn: 'whole',
      points: boltAlong(radius, at.unitFlangeLow, bolt, 'up'),
    }),
    ...both({
      part: 'head-flange-ring',
      piece: 'ring',
      drawn: 'thin',
      points: disc(
        ring.groove / 2 + ring.section / 2,
        at.unitFlange - ring.section * 0.4,
        ring.section * 0.6,
      ),
    }),
  ]
}
