import {lineOf} from '../section/paint.ts'
import {box, curve, type Point} from '../section/shape.ts'
import {rounded} from '../svg-text.ts'
import {areas, dimensionAcross, dimensionUpright, hair, heads, word} from './drawing-parts.ts'
import type {DrawnLowering} from './drawn-lowering.ts'
import {pumpUnitAreas} from './load-shapes.ts'

const middle = 470
const top = 12
/** Room for the side view: on both sides of its axis, and upright. */
const room = {left: 270, right: 320, upright: 470} as const
/** Lengths of a unit that is drawn as a box, and of the gap where nobody knows the travel. */
const standIn = {casing: 600, height: 400, flange: 420, motor: 250, hub: 90}
const unknownTravel = 30
/** How much of the motor is drawn above its flange, with the numbers of the bolts beside it. */
const bodyAbove = 84
const balloon = 24
/** How far the line of a break swings out. */
const wave = 12

interface View {
  readonly svg: string
  readonly bottom: number
}

/** Half the distance of both bolts: midway between motor and edge of the flange. */
function boltReach(flange: number, motor: number): number {
  return (flange + motor) / 4
}

function sizesOf({lengths}: DrawnLowering) {
  if (!lengths) return standIn
  const {casing, height, flange, motor, hub} = lengths
  return {casing: casing.mm, height: height.mm, flange: flange.mm, motor: motor.mm, hub: hub.mm}
}

/** Motor flange above, the unit below it by the travel, both bolts through their flanges. */
export function sideView(lowering: DrawnLowering): View & {readonly scale: number; readonly face: number} {
  const {lengths, travel, thread} = lowering
  const washer = Number.isFinite(lowering.washer.mm) ? lowering.washer.mm : thread.mm * 1.8
  const {casing, height, flange, motor, hub} = sizesOf(lowering)
  const gap = travel?.mm ?? unknownTravel
  const thick = flange * 0.085
  const right = lengths ? lengths.spigotOffset.mm + lengths.spigotBore.mm * 0.8 : casing / 2
  const ground = lengths ? Math.max(0, lengths.clearance.mm - gap) : 0
  const scale = Math.min(
    room.left / (casing / 2),
    room.right / right,
    (room.upright - bodyAbove) / (height + gap + thick + ground),
  )
  const face = top + bodyAbove + thick * scale
  const base = face + (gap + height) * scale
  const place = ([r, z]: Point): Point => [middle + r * scale, base - z * scale]
  const reach = boltReach(flange, motor)
  const bolts = [-reach, reach]
  const unit = lengths
    ? pumpUnitAreas({
        casing,
        height,
        flange,
        eye: lengths.eye.mm,
        spigotBore: lengths.spigotBore.mm,
        spigotOffset: lengths.spigotOffset.mm,
      })
    : [box(-casing / 2, 0, casing / 2, height * 0.92), box(-flange / 2, height * 0.92, flange / 2, height)]
  const motorFace = height + gap
  const motorTop = motorFace + thick + (bodyAbove - wave) / scale
  const shank = thread.mm / 2
  const nutTop = height * 0.92 - thread.mm * 0.3
  const pieces = [
    box(-hub / 2, height * 0.9, hub / 2, motorFace),
    ...bolts.map((x) => box(x - shank, nutTop - thread.mm * 1.8, x + shank, motorFace)),
    ...unit,
    ...bolts.flatMap((x) => [
      box(x - washer / 2, nutTop, x + washer / 2, height * 0.92),
      box(x - thread.mm * 0.85, nutTop - thread.mm * 0.8, x + thread.mm * 0.85, nutTop),
      box(x - shank, nutTop - thread.mm * 1.8, x + shank, nutTop - thread.mm * 0.8),
    ]),
    [
      [-motor / 2, motorFace],
      [motor / 2, motorFace],
      ...curve([motor / 2, motorTop], [motor / 4, motorTop + wave / scale], [0, motorTop], 4),
      ...curve([0, motorTop], [-motor / 4, motorTop - wave / scale], [-motor / 2, motorTop], 4),
    ] as const,
    box(-flange / 2, motorFace, flange / 2, motorFace + thick),
  ]
  const flangeTop = face - thick * scale
  const balloonLevel = flangeTop - balloon - 22
  const hidden = bolts
    .flatMap((x) => [x - shank, x + shank])
    .flatMap((x) => [
      lineOf([place([x, motorFace]), place([x, motorFace + thick])]),
      lineOf([place([x, height * 0.92]), place([x, height])]),
    ])
  const axes = bolts.map((x) => {
    const [at, foot] = place([x, nutTop - thread.mm * 2.6])
    return `M${rounded(at)} ${rounded(balloonLevel + balloon)}V${rounded(foot)}`
  })
  const left = middle - (casing / 2) * scale
  const line = left - 60
  return {
    svg: [
      areas(pieces.map((one) => one.map(place))),
      `<path class="hair dashed" d="${hidden.join('')}"/>`,
      `<path class="thin" d="M${middle} ${top}V${rounded(base + 16)}${axes.join('')}"/>`,
      ...bolts.map((x, index) => numbered(index + 1, middle + x * scale, balloonLevel)),
      lengths ? dimensionUpright(base - height * scale, base, left - 6, line, lengths.height.text) : '',
      travel
        ? travelMark(face, face + gap * scale, middle - (flange / 2) * scale, line, travel.text)
        : hair(bolts.map((x) => brokenOff(middle + x * scale, face + (gap * scale) / 2)).join('')),
      wayArrow(middle + right * scale + 50, (face + base) / 2, lowering.way),
      lengths && ground > 0 ? bottomOfWell(left - 20, middle + right * scale + 20, base, ground * scale) : '',
    ].join(''),
    bottom: base + ground * scale + 40,
    scale,
    face,
  }
}

/** The gap between both flanges with its arrows outside, the text above. */
function travelMark(face: number, unit: number, edge: number, x: number, text: string): string {
  return [
    hair(
      `M${rounded(edge - 6)} ${rounded(face)}H${rounded(x - 8)}M${rounded(edge - 6)} ${rounded(unit)}H${rounded(x - 8)}M${rounded(x)} ${rounded(face - 74)}V${rounded(unit)}`,
    ),
    heads([
      {tip: [x, face], towards: [x, face - 1]},
      {tip: [x, unit], towards: [x, unit + 1]},
    ]),
    word(text, x - 14, face - 38, 'end'),
  ].join('')
}

/** The mark of a bolt whose length between both flanges nobody knows. */
function brokenOff(x: number, y: number): string {
  return `M${rounded(x - 24)} ${rounded(y + 3)}l48 -16m-48 26l48 -16`
}

/** A number in a circle. */
function numbered(number: number, x: number, y: number): string {
  return `<circle class="part" cx="${rounded(x)}" cy="${rounded(y)}" r="${balloon}"/>${word(String(number), x, y, 'central strong')}`
}

/** Which way the unit goes. */
function wayArrow(x: number, y: number, way: DrawnLowering['way']): string {
  const sign = way === 'down' ? 1 : -1
  return `<path class="solid" d="M${rounded(x - 9)} ${rounded(y - sign * 70)}v${sign * 90}h-19l28 ${sign * 50}l28 ${sign * -50}h-19v${sign * -90}z"/>`
}

/** The strips that the unit comes down on, and the bottom of the well below them. */
function bottomOfWell(left: number, right: number, base: number, strips: number): string {
  const level = base + strips
  const hatch = Array.from(
    {length: Math.floor((right - left) / 24)},
    (_, index) => `M${rounded(left + 24 * (index + 1))} ${rounded(level)}l-16 16`,
  )
  const half = 60
  return [
    `<path class="solid" d="M${middle - half * 2} ${rounded(base)}h${half}v${rounded(strips)}h-${half}zM${middle + half} ${rounded(base)}h${half}v${rounded(strips)}h-${half}z"/>`,
    `<path class="line" d="M${rounded(left)} ${rounded(level)}H${rounded(right)}"/>`,
    hair(hatch.join('')),
  ].join('')
}

/** The motor flange from below: every place of a bolt, and two of them with the lowering bolts. */
export function viewFromBelow(lowering: DrawnLowering, scale: number, axis: number): View {
  const {places, lengths, thread} = lowering
  const {flange, motor, hub} = sizesOf(lowering)
  const radius = (flange / 2) * scale
  const [x, y]: Point = [axis, top + radius]
  const reach = boltReach(flange, motor) * scale
  const hole = Math.max(8, thread.mm * 0.55 * scale)
  const at = (index: number): Point => {
    const turn = Math.PI - (index * 2 * Math.PI) / places
    return [x + reach * Math.cos(turn), y - reach * Math.sin(turn)]
  }
  const second = Math.floor(places / 2)
  const circles = [
    {r: radius, at: [x, y]},
    {r: (hub / 2) * scale, at: [x, y]},
    ...Array.from({length: places}, (_, index) => ({r: hole, at: at(index)})).filter(
      (_, index) => index !== 0 && index !== second,
    ),
  ]
  const nuts = [0, second].map((index) => lineOf(hexagon(at(index), Math.max(17, thread.mm * scale))))
  const [sx, sy] = at(second)
  const out = (radius + balloon + 16) / reach
  return {
    svg: [
      `<g class="part">${circles.map(({r, at: [cx = 0, cy = 0]}) => `<circle cx="${rounded(cx)}" cy="${rounded(cy)}" r="${rounded(r)}"/>`).join('')}</g>`,
      `<path class="thin" d="M${rounded(x - reach)} ${rounded(y)}a${rounded(reach)} ${rounded(reach)} 0 1 1 ${rounded(2 * reach)} 0a${rounded(reach)} ${rounded(reach)} 0 1 1 ${rounded(-2 * reach)} 0M${rounded(x)} ${rounded(y - radius)}V${rounded(y + radius)}M${rounded(x - radius)} ${rounded(y)}H${rounded(x + radius)}"/>`,
      `<path class="solid" d="${nuts.map((one) => `${one}z`).join('')}"/>`,
      numbered(1, x - reach * out, y),
      numbered(2, x + (sx - x) * out, y + (sy - y) * out),
      lengths ? dimensionAcross(x - radius, x + radius, y + 34, y + radius + 56, lengths.flange.text) : '',
    ].join(''),
    bottom: y + radius + (lengths ? 66 : 16),
  }
}

function hexagon([x, y]: Point, radius: number): readonly Point[] {
  return Array.from({length: 6}, (_, index): Point => {
    const turn = (index * Math.PI) / 3
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)]
  })
}
