import {describe, expect, test} from 'vitest'
import {desksOfVessel, type PumpDesk} from '../../src/compile/desk.ts'
import {positionPage} from '../../src/compile/position-page.ts'
import {sectionGeometry} from '../../src/compile/section-of-pump.ts'
import {computeValues} from '../../src/compute/compute-values.ts'
import type {Datum} from '../../src/handbook-model/datum.ts'
import type {Design} from '../../src/handbook-model/design-content.ts'
import type {QuantityKind} from '../../src/quantities/quantity.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {demonstration} from '../content/demonstration.ts'

const {content} = await demonstration()

/** A pump of a design, alone on its ship, with its values worked out anew. */
function pumpOf(vesselId: string, position: string, change: (design: Design) => Design): PumpDesk {
  const vessel = content.vessels.get(vesselId)
  const own = vessel?.positions.find(({id}) => id === position)
  const design = own && content.designs.get(own.design.id)
  if (!vessel || !own || !design) throw new Error(`Unexpected pump ${position}, expected one of ${vesselId}`)
  const altered = {
    ...content,
    designs: new Map([...content.designs, [design.id, change(design)]]),
    vessels: new Map([[vesselId, {...vessel, positions: [own]}]]),
  }
  const [desk] = desksOfVessel(altered, computeValues(altered, new Map()), vesselId)
  if (!desk) throw new Error('Unexpected ship without a pump, expected one')
  return desk
}

/** A length by one millimetre longer; another quantity, and a length that nobody knows, as it is. */
function longer<Kind extends QuantityKind>(datum: Datum<Kind>): Datum<Kind> {
  if (datum.kind !== 'known' || datum.quantity.kind !== 'length' || datum.unit !== 'mm') return datum
  const quantity = {...datum.quantity, si: datum.quantity.si + 0.001}
  return {...datum, quantity, figure: String(Math.round((Number(datum.figure) + 1) * 100) / 100)}
}

type Change = (design: Design) => Design

/** A list of a design in which one thing is another one. */
function inList<Part extends {readonly id: string}>(
  list: readonly Part[],
  id: string,
  change: (part: Part) => Part,
): readonly Part[] {
  return list.map((one) => (one.id === id ? change(one) : one))
}

/** Every length of a design by itself, by its name. */
function changesOf(design: Design): ReadonlyMap<string, Change> {
  const changes = new Map<string, Change>()
  for (const {id} of design.geometry)
    changes.set(`geometry ${id}`, (of) => ({
      ...of,
      geometry: inList(of.geometry, id, (one) => ({...one, value: longer(one.value)})),
    }))
  for (const {id} of design.settings)
    changes.set(`setting ${id}`, (of) => ({
      ...of,
      settings: inList(of.settings, id, (one) => ({...one, value: longer(one.value)})),
    }))
  for (const {id} of design.rings)
    changes.set(`ring ${id}`, (of) => ({
      ...of,
      rings: inList(of.rings, id, (one) => ({...one, runningDiameter: longer(one.runningDiameter)})),
    }))
  for (const {id} of design.seals)
    changes.set(`seal ${id}`, (of) => ({
      ...of,
      seals: inList(of.seals, id, (one) => ({...one, seatDepth: longer(one.seatDepth)})),
    }))
  for (const {id} of design.oRings)
    for (const field of ['grooveDiameter', 'section'] as const)
      changes.set(`${field} of ${id}`, (of) => ({
        ...of,
        oRings: inList(of.oRings, id, (one) => ({...one, [field]: longer(one[field])})),
      }))
  for (const {id} of design.joints) {
    changes.set(`length of ${id}`, (of) => ({
      ...of,
      joints: inList(of.joints, id, (one) => ({...one, length: longer(one.length)})),
    }))
    changes.set(`thread of ${id}`, (of) => ({
      ...of,
      joints: inList(of.joints, id, (one) => ({
        ...one,
        thread: {...one.thread, id: one.thread.id === 'M10' ? 'M12' : 'M10'},
      })),
    }))
  }
  for (const field of ['outerPipeBore', 'innerPipeOutside'] as const)
    changes.set(field, (of) => ({
      ...of,
      ...(of.cofferdam ? {cofferdam: {...of.cofferdam, [field]: longer(of.cofferdam[field])}} : {}),
    }))
  for (const field of ['pressurePipeBore', 'pressurePipeOutside', 'returnPipeBore'] as const)
    changes.set(field, (of) => ({
      ...of,
      ...(of.oil ? {oil: {...of.oil, [field]: longer(of.oil[field])}} : {}),
    }))
  return changes
}

describe.each([
  ['a large pump', 'vessel-a', '4s'],
  ['a small pump', 'vessel-b', '1p'],
])('the sizes of the section of %s', (_, vessel, position) => {
  const before = pumpOf(vessel, position, (design) => design)
  const textOf = (desk: PumpDesk): string => technicalText(positionPage(desk), 'Vessel')
  const drawnFrom = (design: Design): string =>
    JSON.stringify(sectionGeometry(design, before.facts.get('cargo-seal')))
  const drawn = drawnFrom(before.design)
  const text = textOf(before)

  test('are technical text: whatever length moves an outline moves the text of the page', {
    timeout: 120_000,
  }, () => {
    const moving: string[] = []
    const silent: string[] = []
    for (const [name, change] of changesOf(before.design)) {
      if (drawnFrom(change(before.design)) === drawn) continue
      moving.push(name)
      if (textOf(pumpOf(vessel, position, change)) === text) silent.push(name)
    }
    expect(moving.length).toBeGreaterThan(50)
    expect(silent).toEqual([])
  })

  test('stand each with its figure and the way to its explanation', () => {
    const {section} = positionPage(before)
    const sizes = section?.sizes ?? []
    expect(sizes.length).toBeGreaterThan(30)
    expect(sizes.filter(({known, link}) => !known || link.fragment === undefined)).toEqual([])
    expect(new Set(sizes.map(({id}) => id)).size).toBe(sizes.length)
    expect(section?.smallParts.map(({text: words}) => words.split('; ').length)).toEqual(
      before.design.id === 'design-a' ? [9, 7] : [8, 7],
    )
  })
})
