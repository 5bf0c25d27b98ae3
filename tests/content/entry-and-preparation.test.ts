import {describe, expect, test} from 'vitest'
import {decideCondition} from '../../src/conditions/decide-condition.ts'
import {factsOfPosition} from '../../src/conditions/facts-of-position.ts'
import type {WrittenCondition} from '../../src/handbook-model/condition.ts'
import type {Procedure, StepPart} from '../../src/handbook-model/procedure.ts'
import {demonstration, stepsOf, wordsOf} from './demonstration.ts'

const {content} = await demonstration()

function procedureWith(id: string): Procedure {
  const found = content.procedures.get(id)
  if (!found) throw new Error(`Unexpected gap, expected procedure ${id}`)
  return found
}

function partsOf(procedure: Procedure): readonly StepPart[] {
  return stepsOf(procedure).flatMap((step) => step.parts)
}

describe('entry into the tank', () => {
  const entry = procedureWith('tank-entry')
  const order = stepsOf(entry).map((step) => step.id)

  test('stops the ventilator before the air is read, and starts it before anybody goes down', () => {
    const asked = ['run-ventilator', 'stop-ventilator', 'read-levels', 'start-ventilator-again']
    expect(order.filter((id) => asked.includes(id) || id === 'first-two-down')).toEqual([
      ...asked,
      'first-two-down',
    ])
  })

  test('writes the air at three levels and judges none of it', () => {
    const levels = partsOf(entry).flatMap((part) =>
      part.kind === 'write-in' && part.id === 'air-at-levels' ? [part.what.length] : [],
    )
    expect(levels).toEqual([3])
    const judged = partsOf(entry).flatMap((part) =>
      part.kind === 'reading' || part.kind === 'derived' ? [part.id] : [],
    )
    expect(judged).toEqual(['tank-pressure', 'air-bottles'])
    const words = partsOf(entry).flatMap((part) =>
      part.kind === 'alternatives' ? part.items.map((item) => wordsOf(item.text)) : [],
    )
    expect(words.filter((text) => /\b(?:safe|gas.free|within limits?|accepted)\b/iu.test(text))).toEqual([])
  })

  test('holds the limits of the office beside the lines that are written', () => {
    const step = stepsOf(entry).find((one) => one.id === 'read-levels')
    expect(step?.parts.map((part) => part.kind)).toEqual(['note', 'entry-limits', 'write-in'])
  })
})

describe('job preparation', () => {
  const preparation = procedureWith('job-preparation')

  test('answers each line with yes or no, and no answer is a third thing', () => {
    const lines = partsOf(preparation).flatMap((part) => (part.kind === 'alternatives' ? [part] : []))
    expect(lines.length).toBeGreaterThanOrEqual(18)
    for (const line of lines) {
      const answers = line.items.map((item) => /^(Yes|No|GO|NO-GO): /u.exec(wordsOf(item.text))?.[1])
      expect(answers, line.id).not.toContain(undefined)
      expect(
        answers.some((one) => one === 'Yes' || one === 'GO'),
        line.id,
      ).toBe(true)
      expect(
        answers.some((one) => one === 'No' || one === 'NO-GO'),
        line.id,
      ).toBe(true)
    }
  })

  test('is released by chief engineer and chief officer behind its last line', () => {
    expect(preparation.sections.at(-1)?.items.at(-1)).toMatchObject({
      kind: 'hold-point',
      id: 'job-released',
      signedBy: 'chief engineer',
      secondBy: 'chief officer',
    })
  })
})

describe('the card of an injury by a jet of oil', () => {
  test('holds for the whole ship and gives the doctor oil, pressure, time and place', () => {
    const card = procedureWith('oil-jet-injury')
    expect([card.scope, card.activity]).toEqual(['vessel', 'card'])
    const last = card.sections.at(-1)?.items.flatMap((item) => (item.kind === 'step' ? item.parts : [])) ?? []
    const lines = last.flatMap((part) => (part.kind === 'write-in' ? part.what : []))
    for (const asked of [/time/u, /place/u, /pressure/u, /oil/u])
      expect(lines.some((line) => asked.test(line))).toBe(true)
    const values = last.flatMap((part) =>
      part.kind === 'note'
        ? part.text.flatMap((inline) => (inline.kind === 'value' ? [inline.value.id] : []))
        : [],
    )
    expect(values).toEqual(['hydraulics.oil', 'hydraulics.system-pressure'])
  })
})

describe('what is aboard of vessel one', () => {
  const vessel = content.vessels.get('vessel-a')
  const tools = new Set(vessel?.toolsAboard.map((one) => one.tool.id))
  const spares = new Map(vessel?.sparesAboard.map((one) => [one.part.id, one.quantity] as const))
  /** Whether a line of tools or parts counts on some pump of this vessel. */
  const needed = ({when}: {readonly when?: WrittenCondition}): boolean =>
    !when ||
    (vessel?.positions ?? []).some((position) => {
      const fitted = content.designs.get(position.design.id)
      if (!vessel || !fitted) return true
      const facts = factsOfPosition(vessel, fitted, position, content.office.facts)
      return decideCondition(when.condition, facts) !== 'false'
    })
  /** Fetched for a job that needs them, as its page says: rings of this design are screwed, and the bolts are for damage alone. */
  const ashore = ['ring-screws-puller', 'lip-holder-bolts']

  const served = [...content.procedures.values()].filter(({when}) => needed(when ? {when} : {}))

  test('needs nothing of a portable pump', () => {
    expect(served).toHaveLength(content.procedures.size - 5)
  })

  test.each(served.map((procedure) => ({id: procedure.id, procedure})))(
    'holds the tools and parts of $id, in its quantities',
    ({procedure}) => {
      const listed = procedure.tools.filter(needed)
      const parts = procedure.parts.filter(needed)
      const missing = [
        ...listed.map((one) => one.tool.id).filter((id) => !tools.has(id) && !ashore.includes(id)),
        ...parts.map((one) => one.part.id).filter((id) => !spares.has(id) && !ashore.includes(id)),
      ]
      expect(missing).toEqual([])
      const short = parts.filter(
        (one) =>
          /^(?:pieces?|set)$/u.test(one.unit) &&
          one.quantity > (spares.get(one.part.id) ?? Number.POSITIVE_INFINITY),
      )
      expect(short.map((one) => one.part.id)).toEqual([])
    },
  )
})
