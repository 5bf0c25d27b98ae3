import {describe, expect, test} from 'vitest'
import type {PumpDesk} from '../../../src/compile/desk.ts'
import {procedurePage} from '../../../src/compile/procedure-page.ts'
import {valuesShown} from '../../../src/compile/values-shown.ts'
import {liftingValues} from '../../../src/compute/lifting-values.ts'
import {designStatedValues} from '../../../src/compute/stated-values.ts'
import type {Datum} from '../../../src/handbook-model/datum.ts'
import type {Design, Lift, Lowering} from '../../../src/handbook-model/design-content.ts'
import {type QuantityKind, quantityOf} from '../../../src/quantities/quantity.ts'
import {technicalText} from '../../../src/technical-text/technical-text.ts'
import {expectRoomForTexts} from '../room-for-texts.ts'
import {content, deskOf, figureOf, files, onePage, printedOf} from './lifts-for-tests.ts'
import {drawingOf} from './room-of-drawing.ts'

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
