import {describe, expect, test} from 'vitest'
import {boundFigure} from '../../../src/compile/bound-figure.ts'
import {desksOfVessel, type PumpDesk} from '../../../src/compile/desk.ts'
import {procedurePage} from '../../../src/compile/procedure-page.ts'
import {valuesShown} from '../../../src/compile/values-shown.ts'
import {liftingValues} from '../../../src/compute/lifting-values.ts'
import {designStatedValues} from '../../../src/compute/stated-values.ts'
import {serves} from '../../../src/conditions/serves.ts'
import type {Datum} from '../../../src/handbook-model/datum.ts'
import type {Design, Lift, Lowering} from '../../../src/handbook-model/design-content.ts'
import type {BoundFigure, ProcedurePage} from '../../../src/handbook-model/pages.ts'
import type {Procedure} from '../../../src/handbook-model/procedure.ts'
import {type QuantityKind, quantityOf} from '../../../src/quantities/quantity.ts'
import {technicalText} from '../../../src/technical-text/technical-text.ts'
import {place} from '../../compile/data-for-tests.ts'
import {procedure, section, step} from '../../compile/procedures-for-tests.ts'
import {demonstration} from '../../content/demonstration.ts'
import {expectRoomForTexts} from '../room-for-texts.ts'
import {drawingOf, expectInside} from './room-of-drawing.ts'

const {content, values, files} = await demonstration()
const desks = [...content.vessels.keys()].flatMap((vessel) => desksOfVessel(content, values, vessel))
/** One pump of each design of each vessel, and of each design: lifts are the same on all pumps of a design. */
const ofVessels = onceBy(desks, ({vessel, design}) => `${vessel.id} ${design.id}`)
const firsts = onceBy(desks, ({design}) => design.id)

function onceBy(all: readonly PumpDesk[], by: (desk: PumpDesk) => string): readonly PumpDesk[] {
  return [...new Map(all.toReversed().map((one) => [by(one), one])).values()]
}

function found<T>(thing: T | undefined, what: string): T {
  if (thing === undefined) throw new Error(`Unexpected gap for ${what}, expected one of the demonstration`)
  return thing
}

function deskOf(design: string): PumpDesk {
  return found(
    firsts.find((one) => one.design.id === design),
    design,
  )
}

function pageOf(id: string, desk: PumpDesk): ProcedurePage {
  return procedurePage(found(content.procedures.get(id), id), desk)
}

interface ShownFigure {
  readonly step: string
  readonly figure: BoundFigure
}

/** The figures of lifts and of lowering bolts on a page. */
function figuresOf(page: ProcedurePage): readonly ShownFigure[] {
  return page.sections.flatMap(({items}) =>
    items.flatMap((item) =>
      item.kind === 'step'
        ? item.parts.flatMap((part) =>
            part.kind === 'figure' && /--(?:lift-|lowering$|raising$)/u.test(part.figure.id)
              ? [{step: item.id, figure: part.figure}]
              : [],
          )
        : [],
    ),
  )
}

/** Figures with their units that stand as plates on a page, with the words of their conditions. */
function platesOf(page: ProcedurePage): ReadonlySet<string> {
  return new Set(
    page.sections.flatMap(({items}) =>
      items.flatMap((item) =>
        item.kind === 'step'
          ? item.parts.flatMap((part) =>
              part.kind === 'value' ? [`${part.line.figure} ${part.line.unit}`.trim()] : [],
            )
          : [],
      ),
    ),
  )
}

/** What the demonstration lifts, by page. */
const shown = [
  ['cargo-seal', 'design-a', ['screw-casing-eyes lift-casing-lift']],
  ['dismantling', 'design-a', ['fit-cover-eyes lift-cover-lift', 'hook-impeller lift-impeller-lift']],
  ['motor-exchange', 'design-a', ['hang-hoists lift-motor-hoist-lift', 'lift-old-motor lift-motor-lift']],
  ['motor-opening', 'design-a', ['lower-in lift-motor-lift']],
  ['portable-drill', 'design-p', ['lift-pump lift-pump-lift']],
  ['portable-recovery', 'design-p', ['take-load lift-chain-lift']],
  ['portable-rigging', 'design-p', ['lower-pump lift-winch-lift', 'hook-chain lift-chain-lift']],
  ['pump-unit-removal', 'design-a', ['fit-lowering-bolts lowering', 'try-lift lift-unit-lift']],
  ['pump-unit-removal', 'design-b', ['fit-lowering-bolts lowering', 'try-lift lift-unit-lift']],
  [
    'reassembly',
    'design-a',
    [
      'lower-impeller lift-impeller-lift',
      'lower-suction-cover lift-cover-lift',
      'lift-out lift-unit-lift',
      'hang-unit raising',
    ],
  ],
  ['spare-unit-care', 'design-a', ['lift-unit lift-unit-lift']],
  ['stack', 'design-a', ['set-gantry lift-stack-lift', 'fit-lifting-cap lift-section-lift']],
  ['stack-closing', 'design-a', ['hang-motor lift-section-lift', 'lower-through lift-stack-lift']],
] as const

describe('lifts of the demonstration', () => {
  test.each(shown)(
    'of %s on a pump of %s stand at the steps that begin them, each once',
    (id, design, at) => {
      expect(
        figuresOf(pageOf(id, deskOf(design))).map(({step: one, figure}) =>
          `${one} ${figure.id}`.replaceAll(`${id}--`, ''),
        ),
      ).toEqual(at)
    },
  )

  test('have each lift of each design on some page', () => {
    for (const desk of firsts) {
      const drawn = new Set(
        [...content.procedures.values()]
          .filter((one) => serves(one, desk.facts))
          .flatMap((one) => figuresOf(procedurePage(one, desk)).map(({figure}) => figure.id.split('--')[1])),
      )
      for (const lift of desk.design.lifts) expect(drawn, desk.design.id).toContain(`lift-${lift.id}`)
      if (desk.design.lowering)
        for (const work of ['lowering', 'raising']) expect(drawn, desk.design.id).toContain(work)
    }
  })

  test('print the figures of the plates of their pages, on each vessel', () => {
    const told: string[] = []
    for (const desk of ofVessels)
      for (const [id, design] of shown) {
        if (design !== desk.design.id) continue
        const page = pageOf(id, desk)
        const plates = platesOf(page)
        for (const {figure} of figuresOf(page)) {
          const loads = figure.data.split('. Drawn')[0]?.match(/\d[\d.]* (?:kg|kN|N·m|mm)/gu) ?? []
          expect(loads.length, figure.data).toBeGreaterThanOrEqual(3)
          for (const load of loads) expect([...plates], `${id}: ${figure.data}`).toContain(load)
          for (const load of loads) expect(figure.picture.svg.match(/>[^<]*</gu)?.join('')).toContain(load)
          told.push(figure.id)
        }
      }
    expect(new Set(told).size).toBeGreaterThanOrEqual(18)
    expect(told.length).toBeGreaterThan(new Set(told).size)
  })

  test('have room for every text, are small, and draw each load by its lengths', () => {
    for (const desk of firsts) {
      const names = [
        ...desk.design.lifts.map(({id}) => `lift:${id}`),
        ...(desk.design.lowering ? ['lowering', 'raising'] : []),
      ]
      for (const name of names) {
        const {picture, data} = figureOf(name, desk)
        const {svg} = picture
        expectRoomForTexts(picture)
        expectInside(svg)
        expect(svg).not.toMatch(/NaN|undefined/u)
        expect(svg.length).toBeLessThan(7000)
        expect(data, `${desk.design.id} ${name}`).toContain('has no dimension here is not to scale')
      }
    }
  })
})

/** All that stands below a drawing. */
function printedOf({data, values: below}: BoundFigure): string {
  return [data, ...below.map(({title, figure, unit}) => `${title} ${figure} ${unit}`)].join('; ')
}

function figureOf(name: string, desk: PumpDesk): BoundFigure {
  return boundFigure('a', name, 'Figure', desk, onePage(name))
}

/** A procedure that shows one figure and nothing else. */
function onePage(name: string): Procedure {
  const figure = {kind: 'figure' as const, figure: name, caption: 'Load', place}
  return procedure('lift', [section('one', [step('a', {parts: [figure]})])])
}

/** A pump whose design is another one, with the values that follow from it. */
function redesigned(desk: PumpDesk, change: (design: Design) => Design): PumpDesk {
  const design = change(desk.design)
  const moved = [...designStatedValues(design), ...liftingValues(design, content, files)]
  return {...desk, design, values: new Map([...desk.values, ...moved.map((one) => [one.id, one] as const)])}
}

/** A value that says another figure. */
function changed<K extends QuantityKind>(datum: Datum<K>, figure: string, si: number): Datum<K> {
  return datum.kind === 'known' ? {...datum, figure, quantity: quantityOf(datum.quantity.kind, si)} : datum
}

const desk = deskOf('design-a')

function withLift(change: (lift: Lift) => Lift): PumpDesk {
  return redesigned(desk, (design) => ({
    ...design,
    lifts: design.lifts.map((lift) => (lift.id === 'unit-lift' ? change(lift) : lift)),
  }))
}

function withLowering(change: (lowering: Lowering) => Lowering): PumpDesk {
  return redesigned(desk, (design) => ({
    ...design,
    ...(design.lowering ? {lowering: change(design.lowering)} : {}),
  }))
}

function withLength(id: string): PumpDesk {
  return redesigned(desk, (design) => ({
    ...design,
    geometry: design.geometry.map((one) =>
      one.id === id ? {...one, value: changed(one.value, '300', 0.3)} : one,
    ),
  }))
}

function withMass(value: (datum: Datum<'mass'>) => Datum<'mass'>): PumpDesk {
  return redesigned(desk, (design) => ({
    ...design,
    masses: design.masses.map((one) => (one.id === 'pump-unit' ? {...one, value: value(one.value)} : one)),
  }))
}

const heavier = withMass((mass) => changed(mass, '200', 200))
const unknownMass = withMass(({place: at}) => ({kind: 'not-known', reason: 'no note', place: at}))
const onFour = withLift((lift) => ({...lift, legs: 4}))
const at45 = withLift((lift) => ({...lift, angle: changed(lift.angle, '45', Math.PI / 4)}))
const onEight = redesigned(desk, (design) => ({
  ...design,
  joints: design.joints.map((joint) => (joint.id === 'head-flange-bolts' ? {...joint, count: 8} : joint)),
}))
const onM12 = withLowering((one) => ({...one, thread: {...one.thread, id: 'M12'}}))
const shorter = withLowering((one) => ({...one, travel: changed(one.travel, '28', 0.028)}))

describe('a change of the data moves drawing, data and technical text:', () => {
  const cases: readonly (readonly [string, string, PumpDesk, string])[] = [
    ['legs', 'lift:unit-lift', onFour, '4 legs, 30 ° from the vertical; load of one leg 107 kg (2 of 4 legs'],
    ['angle', 'lift:unit-lift', at45, '2 legs, 45 ° from the vertical; load of one leg 132 kg'],
    [
      'mass',
      'lift:unit-lift',
      heavier,
      'mass 200 kg; 2 legs, 30 ° from the vertical; load of one leg 115 kg',
    ],
    ['rated load', 'lift:unit-lift', heavier, 'each lifting eye at least 250 kg'],
    [
      'motor flange',
      'lift:unit-lift',
      withLength('motor-flange-diameter'),
      'outside of the motor flange 300 mm',
    ],
    ['casing', 'lift:casing-lift', withLength('casing-diameter'), 'largest outside of the casing 300 mm'],
    ['impeller', 'lift:impeller-lift', withLength('impeller-diameter'), 'diameter of the impeller 300 mm'],
    ['motor', 'lift:motor-lift', withLength('motor-height'), 'foot of the stack 300 mm'],
    ['pipe', 'lift:section-lift', withLength('stack-diameter'), 'outside of the pipe stack 300 mm'],
    ['bolts', 'lowering', onEight, 'in 2 of 8 bolt places, diagonally opposite'],
    ['thread', 'lowering', onM12, '1 and 2: lowering bolts M12'],
    ['turns', 'lowering', onM12, 'travel 35 mm: 20 turns of each nut'],
    ['travel', 'raising', shorter, 'travel 28 mm: 14 turns of each nut'],
    [
      'mass on the bolts',
      'raising',
      heavier,
      'load of each bolt 1.96 kN: each one alone carries the whole mass of 200 kg',
    ],
    ['flange', 'lowering', withLength('motor-flange-diameter'), 'outside of the motor flange 300 mm'],
  ]

  test.each(cases)('%s', (_, name, other, words) => {
    const [before, after] = [figureOf(name, desk), figureOf(name, other)]
    expect(printedOf(after)).toContain(words)
    expect(printedOf(before)).not.toContain(words)
    expect(after.picture.alternative).toContain(words)
    expect(after.picture.svg).not.toBe(before.picture.svg)
    const [from, to] = [desk, other].map((one) => technicalText(procedurePage(onePage(name), one), 'Vessel'))
    expect(to).not.toBe(from)
    expectRoomForTexts(after.picture)
  })

  test.each(cases.filter(([what]) => !/mass|rated|turns/u.test(what)))(
    '%s moves its lines',
    (_, name, other) => {
      expect(drawingOf(figureOf(name, other).picture.svg)).not.toBe(
        drawingOf(figureOf(name, desk).picture.svg),
      )
    },
  )

  test('a mass that nobody knows hangs nowhere', () => {
    const {picture, data, values: below} = figureOf('lift:unit-lift', unknownMass)
    const {svg} = picture
    expect(svg).not.toContain('<path d=')
    expect(svg).toContain('>mass NOT KNOWN<')
    expect(below.map(({title}) => title)).toEqual(['angle of a leg from the vertical, lift of the pump unit'])
    expect(data).toContain('mass NOT KNOWN; 2 legs, 30 ° from the vertical; load of one leg NOT KNOWN')
    expect(figureOf('lowering', unknownMass).data).toContain('load of each bolt NOT KNOWN')
  })

  test('a length that nobody knows makes a box', () => {
    const without = {
      ...desk,
      values: new Map([...desk.values].filter(([id]) => id !== 'geometry.unit-height')),
    }
    for (const name of ['lift:unit-lift', 'lowering'])
      expect(figureOf(name, without).data).toMatch(/ Outline not to scale\.$/u)
  })
})

describe('values behind a figure count as shown', () => {
  const ids = (name: string): readonly string[] => valuesShown(onePage(name), desk).map(({value}) => value)

  test('of a lift: its own and the lengths that its load is drawn by', () => {
    expect(ids('lift:impeller-lift')).toEqual([
      'impeller-lift.mass',
      'impeller-lift.legs',
      'impeller-lift.angle',
      'impeller-lift.leg-load',
      'impeller-lift.rated-load',
      'geometry.impeller-diameter',
      'geometry.impeller-outlet',
      'geometry.eye-diameter',
      'geometry.hub-diameter',
      'geometry.sleeve-diameter',
    ])
  })

  test.each(['lowering', 'raising'])('of the %s', (work) => {
    const found = ids(work)
    expect(found).toEqual(
      expect.arrayContaining([`lowering.${work}-torque`, 'mass.pump-unit', 'geometry.unit-height']),
    )
    for (const id of found) expect(desk.values.has(id), id).toBe(true)
  })
})
