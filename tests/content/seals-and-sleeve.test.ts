import {describe, expect, test} from 'vitest'
import type {Datum} from '../../src/handbook-model/datum.ts'
import type {Step} from '../../src/handbook-model/procedure.ts'
import {valueIn} from '../../src/quantities/print-quantity.ts'
import {demonstration, stepsOf, wordsOf} from './demonstration.ts'

const {content} = await demonstration()
const design = content.designs.get('design-a')
const seal = content.procedures.get('cargo-seal')
const sleeve = content.procedures.get('sleeve')

function inUnit(datum: Datum<'length' | 'mass'> | undefined, unit: 'mm' | 'kg'): number {
  return datum?.kind === 'known' ? valueIn(datum.quantity, unit) : Number.NaN
}

function massOf(id: string): number {
  return inUnit(design?.masses.find((one) => one.id === id)?.value, 'kg')
}

/** Steps of the cargo seal that press a lip in, on a pump with this seal. */
function pressingOn(fact: 'double-lip' | 'single-lip'): readonly Step[] {
  return (seal ? stepsOf(seal) : []).filter(
    (step) =>
      /^Press /u.test(wordsOf(step.instruction)) &&
      (step.when === undefined || step.when.text === `cargo-seal = ${fact}`),
  )
}

describe('the cargo seal', () => {
  test.each([{fact: 'double-lip', lips: 3} as const, {fact: 'single-lip', lips: 2} as const])(
    'presses $lips lips on a pump with $fact, each seen by a second person and named up or down',
    ({fact, lips}) => {
      const pressing = pressingOn(fact)
      expect(pressing).toHaveLength(lips)
      for (const step of pressing) {
        expect(wordsOf(step.instruction)).toMatch(/its open edge (?:up|down)\.$/u)
        expect(step.parts.some((part) => part.kind === 'second-person')).toBe(true)
      }
    },
  )

  test('is closed only after two roles have signed for the orientation of the lips', () => {
    const items = seal?.sections.flatMap((section) => section.items) ?? []
    const hold = items.findIndex((item) => item.kind === 'hold-point' && item.id === 'lip-orientation')
    const last = items.findIndex((item) => item.kind === 'step' && item.id === 'press-holder-lip')
    const closing = items.findIndex((item) => item.kind === 'step' && item.id === 'lower-casing')
    const point = items[hold]
    expect(last).toBeGreaterThanOrEqual(0)
    expect(hold).toBeGreaterThan(last)
    expect(hold).toBeLessThan(closing)
    expect(point?.kind === 'hold-point' && point.signedBy !== point.secondBy).toBe(true)
  })

  test('lists what its joints use up, and so does the sleeve', () => {
    const listed = [seal, sleeve].map((one) => (one?.parts ?? []).map(({part}) => part.id))
    expect(listed[0]).toEqual(
      expect.arrayContaining([
        'seal-set',
        'seal-housing-ring',
        'seal-housing-washers',
        'lip-holder-ring',
        'lip-holder-washers',
      ]),
    )
    expect(listed[1]).toEqual(expect.arrayContaining(['sleeve-ring', 'sleeve-plates']))
  })

  test('counts one tab washer for each bolt of housing and lip holder, and one plate for two sleeve screws', () => {
    const quantityOf = (part: string): number | undefined =>
      [...(seal?.parts ?? []), ...(sleeve?.parts ?? [])].find((one) => one.part.id === part)?.quantity
    const countOf = (joint: string): number | undefined =>
      design?.joints.find((one) => one.id === joint)?.count
    expect(quantityOf('seal-housing-washers')).toBe(countOf('seal-housing-bolts'))
    expect(quantityOf('lip-holder-washers')).toBe(countOf('lip-holder-bolts'))
    expect(quantityOf('sleeve-plates')).toBe(Number(countOf('sleeve-screws')) / 2)
  })
})

describe('the parts of the pump unit', () => {
  test('weigh together what the unit weighs', () => {
    const parts = ['suction-cover', 'impeller', 'casing', 'seal-housing'].map(massOf)
    expect(parts.reduce((sum, one) => sum + one, 0)).toBeCloseTo(massOf('pump-unit'), 9)
  })

  test('leave the O-ring below the sleeve a groove as deep as it is stated', () => {
    const ring = design?.oRings.find((one) => one.id === 'sleeve-ring')
    const hub = inUnit(design?.geometry.find((one) => one.id === 'hub-diameter')?.value, 'mm')
    expect((hub - inUnit(ring?.grooveDiameter, 'mm')) / 2).toBeCloseTo(inUnit(ring?.grooveDepth, 'mm'), 9)
  })

  test('let the sleeve and the lip pass over hub and shaft flange', () => {
    const hub = inUnit(design?.geometry.find((one) => one.id === 'hub-diameter')?.value, 'mm')
    const tight = (design?.seals ?? []).filter((one) => !(inUnit(one.runningDiameter, 'mm') > hub))
    expect(tight.map(({id}) => id)).toEqual([])
    expect(design?.seals.length).toBeGreaterThan(1)
  })
})
