import {expect, test} from 'vitest'
import {expectTwins} from '../check/each-rule/expect-twins.ts'
import {plantedFaults} from './planted-faults.ts'

test.each(plantedFaults.map(({name, twins}) => [name, twins] as const))('%s', async (_name, twins) => {
  await expectTwins(twins)
})

test('each fault has a name of its own', () => {
  expect(new Set(plantedFaults.map((one) => one.name)).size).toBe(plantedFaults.length)
})
