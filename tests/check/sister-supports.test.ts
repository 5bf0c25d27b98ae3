import {describe, expect, test} from 'vitest'
import {pumpOf} from '../../src/check/pump.ts'
import {sisterDifferences} from '../../src/check/sisters/sister-differences.ts'
import type {Position} from '../../src/handbook-model/vessel-content.ts'
import {demonstration} from '../content/demonstration.ts'

const {content} = await demonstration()

/** What is told of the supports, after one pump of a ship lost its lowest one. */
function told(vesselId: string, changed: string): readonly string[] {
  const pumps = [...content.vessels.values()].flatMap((vessel) =>
    vessel.positions.flatMap((position) => {
      const design = content.designs.get(position.design.id)
      const own = vessel.id === vesselId && position.id === changed ? withoutLast(position) : position
      return design ? [pumpOf(vessel, own, design, content.office.facts)] : []
    }),
  )
  return sisterDifferences(pumps, [...content.jobs.values()]).flatMap(({differences}) =>
    differences
      .filter(({item}) => item === 'stack-supports')
      .flatMap(({sides}) =>
        sides.map(
          ({text, holders}) =>
            `${text}: ${holders.map(({pump}) => `${pump.vessel.id}/${pump.position.id}`).join(' ')}`,
        ),
      ),
  )
}

function withoutLast(position: Position): Position {
  const {stackSupports = []} = position
  return {...position, stackSupports: stackSupports.slice(0, -1)}
}

describe('supports of sister stacks', () => {
  test('are as many on all stacks of one length in each ship of the demonstration', () => {
    expect(told('none', 'none')).toEqual([])
  })

  test('differ where one of two stacks of one length in one ship has fewer', () => {
    expect(told('vessel-a', '1s')).toEqual(['3 supports: vessel-a/1p', '2 supports: vessel-a/1s'])
  })

  test('are a matter of the ship: vessel c has stacks of the length of one of vessel b with fewer', () => {
    const supports = (vessel: string, id: string): number | undefined =>
      content.vessels.get(vessel)?.positions.find((one) => one.id === id)?.stackSupports?.length
    expect([supports('vessel-b', '3p'), supports('vessel-c', '1p')]).toEqual([4, 3])
  })
})
