import {describe, expect, test} from 'vitest'
import {desksOfVessel, type PumpDesk} from '../../src/compile/desk.ts'
import {type PumpSection, sectionGeometry, sectionOfPump} from '../../src/compile/section-of-pump.ts'
import {isFitted} from '../../src/conditions/has-part.ts'
import {crossings, labelsOf, overlaps} from '../figures/section/labels-for-tests.ts'
import {looseBolts} from '../figures/section/section-for-tests.ts'
import {demonstration} from './demonstration.ts'

const {content, values} = await demonstration()
const desks = [...content.vessels.keys()].flatMap((vessel) => desksOfVessel(content, values, vessel))
const hung = desks.filter(({position}) => position.role !== 'portable')

/** Pumps that differ in what their section shows, one of each. */
const kinds = new Map<string, {readonly desk: PumpDesk; readonly section: PumpSection}>()
for (const desk of hung) {
  const section = sectionOfPump(desk)
  if (section) kinds.set(section.name, {desk, section})
}

/** What a pump may be where nobody knows how its rings are held: either kind. */
function possible({facts}: PumpDesk): readonly PumpDesk['facts'][] {
  if (facts.get('wear-ring-fit') !== undefined) return [facts]
  return ['screwed', 'pressed'].map((fit) => new Map([...facts, ['wear-ring-fit', fit]]))
}

/** Balloons from the wet end up to the pipe stack of which the pump has a part, whatever is not known of it. */
function balloonsOfPump(desk: PumpDesk): readonly string[] {
  const units = content.units ?? []
  const last = units.findIndex(({id}) => id === 'stack')
  return units
    .slice(0, last + 1)
    .flatMap(({balloons}) => balloons)
    .filter((balloon) =>
      possible(desk).every((facts) =>
        [...content.parts.values()].some(
          (part) =>
            part.balloon === balloon && isFitted(part, {design: desk.design, facts}, content) === 'true',
        ),
      ),
    )
}

test('each pump that hangs in a tank has a section, and no portable one', () => {
  expect(hung.length).toBeGreaterThan(50)
  for (const desk of hung) expect(sectionOfPump(desk), desk.position.id).toBeDefined()
  const others = desks.filter((desk) => !hung.includes(desk))
  expect(others.length).toBeGreaterThan(0)
  for (const desk of others) expect(sectionOfPump(desk)).toBeUndefined()
})

test('both designs and both kinds of cargo seal are there', () => {
  expect([...kinds.keys()]).toEqual(
    expect.arrayContaining([
      'design-a-screwed-double-lip',
      'design-a-screwed-single-lip',
      'design-b-pressed-double-lip',
    ]),
  )
})

describe.each([...kinds])('%s', (_, {desk, section}) => {
  test('shows the balloons of its pump, each of them and no other', () => {
    const expected = balloonsOfPump(desk)
    expect(expected.length).toBeGreaterThan(17)
    const shown = section.balloons.map(({number}) => number).sort((a, b) => Number(a) - Number(b))
    expect(shown).toEqual(expected)
    expect(section.legend.map(({balloon}) => balloon)).toEqual(expected)
  })

  test('draws its lips the way that its design states', () => {
    const seal = desk.design.seals.find(
      ({id, lips}) =>
        id.startsWith('cargo-seal') &&
        lips.length === (desk.facts.get('cargo-seal') === 'double-lip' ? 2 : 1),
    )
    expect(seal?.lips.length).toBeGreaterThan(0)
    for (const {faces} of seal?.lips ?? []) expect(section.variant.join(' ')).toContain(`, to the ${faces}.`)
    expect(section.outlines.filter(({piece}) => /^lip \d$/u.test(piece))).toHaveLength(
      seal?.lips.length ?? -1,
    )
  })

  test('lets each bolt end in metal', () => {
    expect(looseBolts(section.outlines)).toEqual([])
  })

  test('keeps labels apart, leaders uncrossed and below 40 kB', () => {
    expect(overlaps(labelsOf(section))).toEqual([])
    expect(crossings(section.balloons, section.frame.text * 0.8)).toEqual([])
    expect(new TextEncoder().encode(section.svg).length).toBeLessThan(40_000)
  })
})

test('the reach of the shaft in the drawing is the one that the motor is measured by', () => {
  const design = content.designs.get('design-a')
  const limit = (id: string): number => {
    const value = design?.settings.find((one) => one.id === id)?.value
    return value?.kind === 'known' ? value.quantity.si * 1000 : Number.NaN
  }
  const drawn = design && sectionGeometry(design, 'double-lip')
  expect(drawn?.shaftReach).toBeCloseTo((limit('shaft-reach-least') + limit('shaft-reach-most')) / 2, 6)
})

test('a design that leaves out a length has no section', () => {
  const design = content.designs.get('design-a')
  expect(design && sectionGeometry(design, 'double-lip')).toBeDefined()
  for (const left of ['impeller-diameter', 'motor-diameter', 'unit-height'])
    expect(
      design &&
        sectionGeometry({...design, geometry: design.geometry.filter(({id}) => id !== left)}, 'double-lip'),
    ).toBeUndefined()
})
