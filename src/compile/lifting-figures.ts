import type {Figure} from '../figures/figure.ts'
import type {LoweringLengths} from '../figures/lifting/drawn-lowering.ts'
import {liftFigure} from '../figures/lifting/lift-figure.ts'
import {
  casingShape,
  coverShape,
  type DrawnLength,
  impellerShape,
  type LoadShape,
  portableShape,
  pumpUnitShape,
} from '../figures/lifting/load-shapes.ts'
import {loweringFigure} from '../figures/lifting/lowering-figure.ts'
import {motorShape, stackShape} from '../figures/lifting/motor-shapes.ts'
import {type ComputedValue, liftValueNames} from '../handbook-model/computed.ts'
import type {Design} from '../handbook-model/design-content.ts'
import {valueIn} from '../quantities/print-quantity.ts'
import {found, type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {liftWordsEn, loweringWordsEn} from './lifting-words-en.ts'
import {writtenDatum} from './written-datum.ts'

/** Reads a length of the design that a shape is drawn by. */
type Lengths = (id: string) => DrawnLength

/** Outline of each mass that the geometry of a design can draw, by the id of the mass; any other one is a box. */
const shapes: Readonly<Record<string, (of: Lengths, legs: number) => LoadShape>> = {
  'pump-unit': (of) =>
    pumpUnitShape({
      casing: of('casing-diameter'),
      height: of('unit-height'),
      flange: of('motor-flange-diameter'),
      eye: of('eye-diameter'),
      spigotBore: of('spigot-bore'),
      spigotOffset: of('spigot-offset'),
    }),
  'suction-cover': (of) => coverShape({register: of('suction-cover-ring'), eye: of('eye-diameter')}),
  impeller: (of) =>
    impellerShape({
      diameter: of('impeller-diameter'),
      outlet: of('impeller-outlet'),
      eye: of('eye-diameter'),
      hub: of('hub-diameter'),
      sleeve: of('sleeve-diameter'),
    }),
  casing: (of) =>
    casingShape({
      casing: of('casing-diameter'),
      spigotBore: of('spigot-bore'),
      spigotOffset: of('spigot-offset'),
    }),
  motor: (of, legs) => motorShape(motorLengths(of), legs),
  'motor-on-lift': (of, legs) => motorShape(motorLengths(of), legs),
  'last-section': (of) => stackShape({...motorLengths(of), pipe: of('stack-diameter')}, false),
  'stack-complete': (of) => stackShape({...motorLengths(of), pipe: of('stack-diameter')}, true),
  pump: (of) => portableShape(pumpLengths(of), undefined),
  'pump-with-piece': (of) => portableShape(pumpLengths(of), undefined),
  'hanging-empty': (of) => portableShape(pumpLengths(of), of('hose-bore')),
  'hanging-full': (of) => portableShape(pumpLengths(of), of('hose-bore')),
}

function motorLengths(of: Lengths) {
  return {
    diameter: of('motor-diameter'),
    height: of('motor-height'),
    flange: of('motor-flange-diameter'),
    hub: of('hub-diameter'),
    reach: of('shaft-reach'),
  }
}

function pumpLengths(of: Lengths) {
  return {diameter: of('pump-diameter'), length: of('pump-length')}
}

/** A figure with the ids of the values that print below it: what stands in the drawing and on no plate. */
interface FigureOfValues {
  readonly figure: Figure
  readonly values: readonly string[]
}

/** Values behind the figure of a lift. */
export function valuesBehindLift(liftId: string, desk: PumpDesk): readonly string[] {
  const {shape} = liftParts(liftId, desk)
  return [...liftValueNames.map((name) => `${liftId}.${name}`), ...valuesOf(shape?.lengths ?? [])]
}

/** Values behind the figure of the lowering bolts. */
export function valuesBehindLowering(work: 'lowering' | 'raising', desk: PumpDesk): readonly string[] {
  const {mass} = found(desk.design.lowering, `lowering bolts of ${desk.design.id}`)
  return [
    ...['bolt-load', 'travel', 'turns', `${work}-torque`].map((name) => `lowering.${name}`),
    `mass.${mass.id}`,
    ...valuesOf(Object.values(unitLengthsOf(desk) ?? {})),
  ]
}

function valuesOf(lengths: readonly DrawnLength[]): readonly string[] {
  return lengths.flatMap(({value}) => (value === undefined ? [] : [value]))
}

/** A lift of this pump's design, with the figures that its pages print. */
export function liftOfPump(liftId: string, desk: PumpDesk): FigureOfValues {
  const {lift, mass, shape} = liftParts(liftId, desk)
  const value = (name: string): ComputedValue => pumpValue(desk, `${liftId}.${name}`)
  const rated = value('rated-load')
  const angle = value('angle')
  const degrees = numberOf(angle, '°')
  const known = knownText(value('mass'))
  return {
    figure: liftFigure(
      {
        title: lift.title.en,
        load: mass.title.en,
        mass: known,
        legs: Number(printedValue(value('legs'))),
        angle: degrees === undefined ? undefined : {degrees, text: printedValue(angle)},
        legLoad: knownText(value('leg-load')),
        legCondition: value('leg-load').condition ?? '',
        ratedLoad: knownText(rated),
        gear: rated.condition ?? liftWordsEn.gear,
        shape,
      },
      liftWordsEn,
    ),
    values: [
      ...(lift.legs > 1 ? [angle.id] : []),
      ...(known === undefined ? [] : valuesOf(shape?.lengths ?? [])),
    ],
  }
}

/** A lift, its mass, and its outline where all lengths of it are known. */
function liftParts(liftId: string, desk: PumpDesk) {
  const {lifts, masses} = desk.design
  const lift = found(
    lifts.find((one) => one.id === liftId),
    `lift ${liftId}`,
  )
  const mass = found(
    masses.find((one) => one.id === lift.mass.id),
    `mass ${lift.mass.id}`,
  )
  const shape = shapes[mass.id]?.((id) => lengthOf(id, desk), lift.legs)
  return {lift, mass, shape: shape?.lengths.every(isKnown) ? shape : undefined}
}

/** The pump unit on its lowering bolts, on its way down or up. */
export function loweringOfPump(work: 'lowering' | 'raising', desk: PumpDesk): FigureOfValues {
  const {design, content} = desk
  const lowering = found(design.lowering, `lowering bolts of ${design.id}`)
  const joint = found(
    design.joints.find((one) => one.id === flangeBolts),
    `joint ${flangeBolts}`,
  )
  const thread = found(
    content.tables.threads.rows.find(({size}) => size === lowering.thread.id),
    `thread ${lowering.thread.id}`,
  )
  const value = (name: string): ComputedValue => pumpValue(desk, `lowering.${name}`)
  const travel = numberOf(value('travel'), 'mm')
  const torque = value(`${work}-torque`)
  const washer = lowering.washerOutside
  const lengths = unitLengthsOf(desk)
  return {
    figure: loweringFigure(
      {
        way: work === 'lowering' ? 'down' : 'up',
        mass: knownText(pumpValue(desk, `mass.${lowering.mass.id}`)),
        thread: {mm: valueIn(thread.diameter, 'mm'), text: thread.size},
        washer: {
          title: loweringWordsEn(work).washer,
          mm: washer.kind === 'known' ? valueIn(washer.quantity, 'mm') : Number.NaN,
          text: writtenDatum(washer),
        },
        places: joint.count,
        boltLoad: knownText(value('bolt-load')),
        travel: travel === undefined ? undefined : {mm: travel, text: printedValue(value('travel'))},
        turns: knownText(value('turns')),
        torque: knownText(torque),
        torqueCondition: torque.condition ?? '',
        lengths,
      },
      loweringWordsEn(work),
    ),
    values: valuesOf(Object.values(lengths ?? {})),
  }
}

/** The lengths of a pump unit below its motor, where all of them are known. */
function unitLengthsOf(desk: PumpDesk): LoweringLengths | undefined {
  const of = (name: keyof LoweringLengths): DrawnLength => lengthOf(unitLengths[name], desk)
  const lengths = {
    casing: of('casing'),
    height: of('height'),
    flange: of('flange'),
    eye: of('eye'),
    spigotBore: of('spigotBore'),
    spigotOffset: of('spigotOffset'),
    motor: of('motor'),
    hub: of('hub'),
    clearance: of('clearance'),
  }
  return Object.values(lengths).every(isKnown) ? lengths : undefined
}

function isKnown({mm}: DrawnLength): boolean {
  return Number.isFinite(mm)
}

/** Geometry of a pump unit below its motor. */
const unitLengths = {
  casing: 'casing-diameter',
  height: 'unit-height',
  flange: 'motor-flange-diameter',
  eye: 'eye-diameter',
  spigotBore: 'spigot-bore',
  spigotOffset: 'spigot-offset',
  motor: 'motor-diameter',
  hub: 'hub-diameter',
  clearance: 'suction-clearance',
} as const

/** The joint between motor and pump unit: two of its bolts give way to the lowering bolts. */
const flangeBolts = 'head-flange-bolts'

/** A figure as its page prints it, nothing where nobody knows it. */
function knownText(value: ComputedValue): string | undefined {
  return value.result.kind === 'known' ? printedValue(value) : undefined
}

function numberOf({result}: ComputedValue, unit: string): number | undefined {
  return result.kind === 'known' && result.quantity ? valueIn(result.quantity, unit) : undefined
}

/** A length of the geometry, or the groove of an O-ring; no number where nobody knows it. */
function lengthOf(id: string, desk: PumpDesk): DrawnLength {
  const value = desk.values.get(`geometry.${id}`)
  if (value)
    return {
      title: value.title,
      mm: numberOf(value, 'mm') ?? Number.NaN,
      text: printedValue(value),
      value: value.id,
    }
  return grooveOf(id, desk.design)
}

function grooveOf(id: string, {oRings}: Design): DrawnLength {
  const ring = oRings.find((one) => one.id === id)
  const title = ring ? liftWordsEn.groove(ring.title.en) : id
  const datum = ring?.grooveDiameter
  if (datum?.kind !== 'known') return {title, mm: Number.NaN, text: liftWordsEn.notKnown}
  return {title, mm: valueIn(datum.quantity, 'mm'), text: writtenDatum(datum)}
}
