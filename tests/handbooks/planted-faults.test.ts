import {expect, test} from 'vitest'
import {expectTwins} from '../check/each-rule/expect-twins.ts'
import {plantedFaults} from './planted-faults.ts'

test.each(plantedFaults.map(({name, twins}) => [name, twins] as const))('%s', async (_name, twins) => {
  await expectTwins(twins)
})

test('each fault has a name of its own', () => {
  expect(new Set(plantedFaults.map((one) => one.name)).size).toBe(plantedFaults.length)
})

/** Twelve faults that papers of a fleet bring with them, each with the planted fault that stands for it. */
const twelve: Readonly<Record<string, readonly string[]>> = {
  'missing friction value': ['a friction value that is missing in its table'],
  'double serial': ['one motor in two pumps', 'one sleeve in the pumps of two vessels'],
  'negative step of hours': ['running hours that step back'],
  'expired O-rings': ['O-rings whose first storage period is over'],
  'bar and psi': ['a pressure in psi where bar is meant'],
  'stack sum off by 40 mm': ['sections that make 40 mm less than the stack'],
  'section missing': ['a section of the stack that is missing in the list'],
  'unknown material or cargo': [
    'a seal material that no table knows',
    'a cargo of which nobody has stated anything',
  ],
  'tool out of range': ['a torque out of the range of the wrench'],
  'superseded source': ['a mass from a superseded book'],
  'orphan sheet': ['a data sheet of no pump', 'a paper on which nothing stands'],
  'contradicting tables of wear rings': [
    'a drawing and a table of running clearances that contradict each other',
    'two rows of a table for one diameter',
  ],
}

test('the twelve faults of the papers of a fleet stand among them', () => {
  const names = plantedFaults.map(({name}) => name)
  expect(Object.keys(twelve)).toHaveLength(12)
  for (const found of Object.values(twelve)) expect(names).toEqual(expect.arrayContaining([...found]))
})
