import {describe, expect, test} from 'vitest'
import {noUnheldWork} from '../../src/check/rules/no-unheld-work.ts'
import {holdKinds} from '../../src/handbook-model/hold-kinds.ts'
import type {HoldPoint, Procedure} from '../../src/handbook-model/procedure.ts'
import {toldBy} from '../check/messages-for-tests.ts'
import {demonstration} from './demonstration.ts'

const {content} = await demonstration()

function holdsOf(procedure: Procedure): readonly HoldPoint[] {
  return procedure.sections.flatMap((section) =>
    section.items.flatMap((item) => (item.kind === 'hold-point' ? [item] : [])),
  )
}

const holds = [...content.procedures.values()].flatMap(holdsOf)

describe('hold points of the demonstration', () => {
  test('each of the ten kinds occurs', () => {
    const found = new Set(holds.flatMap(({holds: kind}) => kind ?? []))
    expect([...found].sort()).toEqual([...holdKinds].sort())
  })

  test('each hold of a kind carries two signatures of two roles, and stands on every pump of its procedure', () => {
    const ofKind = holds.filter(({holds: kind}) => kind !== undefined)
    expect(ofKind.length).toBeGreaterThan(20)
    for (const {signedBy, secondBy, when} of ofKind) {
      expect(signedBy).not.toBe('')
      expect(secondBy).not.toBe('')
      expect(signedBy).not.toBe(secondBy)
      expect(when).toBeUndefined()
    }
  })

  test.each(holdKinds)('without its holds of the kind %s the jobs are refused', (kind) => {
    const without = new Map(
      [...content.procedures].map(([id, procedure]): [string, Procedure] => [
        id,
        {
          ...procedure,
          sections: procedure.sections.map((section) => ({
            ...section,
            items: section.items.filter((item) => item.kind !== 'hold-point' || item.holds !== kind),
          })),
        },
      ]),
    )
    const told = toldBy((files) =>
      noUnheldWork([...content.jobs.values()], without, [], [...content.designs.values()], files),
    )
    for (const line of told) expect(line).toMatch(/expected a hold point with `kind=.* no-unheld-work/u)
    expect(told.some((line) => line.includes(`kind=${kind}\``))).toBe(true)
  })
})
