import {describe, expect, test} from 'vitest'
import type {Position} from '../../src/handbook-model/vessel-content.ts'
import {valueIn} from '../../src/quantities/print-quantity.ts'
import {demonstration, stepsOf} from './demonstration.ts'

const {content, files} = await demonstration()
const vessels = [...content.vessels.values()]
const procedures = [...content.procedures.values()]

describe('the demonstration content', () => {
  test('gives no error and no warning', () => {
    const loud = [...files.values()].flatMap((file) =>
      file.messages.filter((message) => message.fatal !== undefined),
    )
    expect(loud.map(String)).toEqual([])
  })

  test('says on every page that it is demonstration data, by its flag', () => {
    expect(content.office.demonstration).toBe(true)
  })

  test.each(vessels)('$id carries a hull number that belongs to no ship', (vessel) => {
    expect(vessel.hullNumber).toMatch(/^0\d{6}$/u)
  })

  test.each(vessels)('every serial of $id is fitted once', (vessel) => {
    const serials = vessel.positions.flatMap((position) => [
      position.serial,
      ...position.components.map((one) => one.serial),
    ])
    expect(new Set(serials).size).toBe(serials.length)
  })

  test('vessel one has twenty tanks, stacks from 9.2 m to 16.4 m and two things that nobody knows', () => {
    const vessel = content.vessels.get('vessel-a')
    const lengths = (vessel?.positions ?? []).flatMap(({stackLength}) =>
      stackLength?.kind === 'known' ? [valueIn(stackLength.quantity, 'm')] : [],
    )
    expect(vessel?.tanks).toHaveLength(20)
    expect(Math.min(...lengths)).toBeCloseTo(9.2, 9)
    expect(Math.max(...lengths)).toBeCloseTo(16.4, 9)
    expect(unknownsOf(vessel?.positions ?? [])).toEqual(['5p backstop', '7s stack length'])
  })

  test('holds one caution for each hazard class, and those of hanging, feeding and running the portable pump', () => {
    const classes = [...content.cautions.values()].map((caution) => caution.hazardClass)
    const all = Array.from({length: 30}, (_, index) => `H${String(index + 1).padStart(2, '0')}`)
    expect([...classes].sort()).toEqual([...all.filter((one) => one !== 'H22'), 'H03', 'H07', 'H20'].sort())
  })

  test('numbers the balloons from the wet end up without a gap, those of the portable pump behind a P', () => {
    const balloons = [...new Set([...content.parts.values()].flatMap(({balloon}) => balloon ?? []))]
    for (const letter of ['', 'P']) {
      const numbers = balloons
        .filter((one) => one.startsWith('P') === (letter === 'P'))
        .map((one) => Number(one.slice(letter.length)))
      expect(numbers.length, letter).toBeGreaterThan(10)
      expect(numbers.sort((a, b) => a - b)).toEqual(numbers.map((_, index) => index + 1))
    }
  })
})

function unknownsOf(positions: readonly Position[]): readonly string[] {
  return positions.flatMap((position) => [
    ...(position.stackLength?.kind === 'not-known' ? [`${position.id} stack length`] : []),
    ...position.facts.filter((one) => one.value === undefined).map((one) => `${position.id} ${one.fact.id}`),
  ])
}

describe.each(procedures.map((procedure) => ({id: procedure.id, procedure})))(
  'procedure $id',
  ({procedure}) => {
    const listed = new Set(procedure.tools.map((one) => one.tool.id))

    test('is long enough to be followed by somebody new and short enough for one job', () => {
      const variants = stepsOf(procedure).filter(
        (step) => step.when && /pressed|none|coated/u.test(step.when.text),
      ).length
      const shown = stepsOf(procedure).length - variants
      expect(shown).toBeGreaterThanOrEqual(procedure.activity === 'card' ? 8 : 14)
      expect(shown).toBeLessThanOrEqual(30)
    })

    test('ends with a hold point, and a card with its last step', () => {
      expect(procedure.sections.at(-1)?.items.at(-1)?.kind).toBe(
        procedure.activity === 'card' ? 'step' : 'hold-point',
      )
    })

    test('lists every instrument it reads', () => {
      const read = stepsOf(procedure).flatMap((step) =>
        step.parts.flatMap((part) => (part.kind === 'reading' ? [part.instrument.id] : [])),
      )
      expect(read.filter((id) => !listed.has(id))).toEqual([])
    })

    test('lists the new O-rings, gaskets, plates and tab washers that its joints use up', () => {
      const parts = new Set(procedure.parts.map((one) => one.part.id))
      const tightened = new Set(
        stepsOf(procedure).flatMap((step) =>
          step.parts.flatMap((part) =>
            part.kind === 'value' && part.value.id.endsWith('.torque') ? [part.value.id.split('.')[0]] : [],
          ),
        ),
      )
      const usedUp = new Map([
        ['suction-cover-bolts', ['suction-cover-ring', 'suction-cover-washers']],
        ['head-flange-bolts', ['head-flange-ring', 'head-flange-washers', 'spigot-ring']],
        ['hub-bolts', ['hub-plates']],
        ['hand-hole-bolts', ['hand-hole-ring']],
        ['relief-flange-bolts', ['relief-gasket']],
        ['vent-flange-bolts', ['vent-gasket']],
      ])
      const wanted = [...usedUp].flatMap(([joint, needs]) => (tightened.has(joint) ? needs : []))
      expect(wanted.filter((part) => !parts.has(part))).toEqual([])
    })
  },
)

describe('the wear ring service', () => {
  const ids = content.jobs.get('wear-ring-service')?.procedures.map((one) => one.id) ?? []

  test('purges and isolates before it opens, tests the cofferdam that it opened, restores and runs after that', () => {
    const order = [
      'purging',
      'isolation',
      'pump-unit-removal',
      'dismantling',
      'wear-rings',
      'reassembly',
      'tightness-test',
      'restoration',
      'test-run',
    ]
    expect(ids.filter((id) => order.includes(id))).toEqual(order)
  })

  test('counts every cap and cover off that it put on', () => {
    const counted = (id: string): readonly string[] => {
      const procedure = content.procedures.get(id)
      return (procedure ? stepsOf(procedure) : []).flatMap((step) =>
        step.parts.flatMap((part) =>
          part.kind === 'tally' && /^(?:caps|unit-caps|covers)$/u.test(part.id) ? part.what : [],
        ),
      )
    }
    const putOn = new Set(['pump-unit-removal', 'dismantling'].flatMap(counted))
    expect(putOn.size).toBeGreaterThanOrEqual(8)
    expect(new Set(counted('reassembly'))).toEqual(putOn)
  })
})
