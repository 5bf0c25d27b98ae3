import {expect, test} from 'vitest'
import {proceduresOf} from '../../src/compile/used-in.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {job} from './data-for-tests.ts'
import {procedure} from './procedures-for-tests.ts'

const ids = ['close', 'isolate', 'look', 'open', 'prepare', 'spare', 'turn']

function orderWith(jobs: Readonly<Record<string, readonly string[]>>): readonly string[] {
  const content = contentOf({
    list: ids.map((id) => procedure(id, [])),
    jobs: new Map(Object.entries(jobs).map(([id, procedures]) => [id, job(id, procedures)])),
  })
  return proceduresOf([deskOf(content, '4s')]).map((one) => one.id)
}

test('procedures stand in the order of the longest job, what others add behind what it follows there', () => {
  expect(
    orderWith({
      round: ['isolate', 'turn', 'close'],
      service: ['prepare', 'isolate', 'open', 'close'],
    }),
  ).toEqual(['prepare', 'isolate', 'turn', 'open', 'close', 'look', 'spare'])
})

test('procedures of no job stand by their ids', () => {
  expect(orderWith({})).toEqual(ids)
})
