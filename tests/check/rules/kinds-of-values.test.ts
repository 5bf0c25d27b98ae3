import {expect, test} from 'vitest'
import {knownValueIds} from '../../../src/check/rules/known-value-ids.ts'
import {noUnitMix} from '../../../src/check/rules/no-unit-mix.ts'
import type {Design} from '../../../src/handbook-model/design-content.ts'
import {units} from '../../../src/quantities/units.ts'
import {demonstration} from '../../content/demonstration.ts'
import {toldBy} from '../messages-for-tests.ts'
import {soundProcedure, workText} from '../procedure-for-tests.ts'

const {content, values} = await demonstration()
const [design] = content.designs.values()
const [pump] = [...values.vessels.values()].flatMap((positions) => [...positions.values()])
if (!design || !pump) throw new Error('Unexpected content without a pump, expected one')

const known = knownValueIds(design)

/** Every value of a pump that is a number and that a limit may name, with its kind of quantity. */
const numbers = [...pump].flatMap(([id, {result}]) =>
  known.has(id) && result.kind === 'known' && result.quantity ? [{id, kind: result.quantity.kind}] : [],
)

/** What is said of a reading in a unit of a kind that is held against a limit at a value. */
function told(value: string, kind: string, of: Design): readonly string[] {
  const place = {path: 'designs/design-a.yaml', line: 1, column: 1}
  const limit = {
    id: 'most',
    title: {en: 'most'},
    side: 'not-above',
    value: {id: value, place},
    outside: 'STOP',
    action: {en: 'Stop.'},
    place,
  } as const
  const unit = units.find((one) => one.kind === kind && !/psi|^in$|lb/u.test(one.symbol))?.symbol ?? ''
  const text = workText(
    `1. :step{#look} Look.\n\n   ::reading{#r title=gap quantity=${kind} unit="${unit}" stations=a instrument=gauge phase=during limits=most}`,
  )
  return toldBy((files) => noUnitMix(soundProcedure(text), {...of, limits: [limit]}, files))
}

test.each(numbers)('a limit at `$id` is held against readings of $kind alone', ({id, kind}) => {
  const other = kind === 'concentration' ? 'power' : 'concentration'
  if (kind !== 'count') expect(told(id, kind, design)).toEqual([])
  expect(told(id, other, design)).toHaveLength(1)
})

test('the values of a pump are of many kinds', () => {
  expect(numbers.length).toBeGreaterThan(150)
  expect(new Set(numbers.map((one) => one.kind)).size).toBeGreaterThan(15)
})
