import {expect, test} from 'vitest'
import {planTanks} from '../../src/compile/plan-tanks.ts'
import {vesselA} from './vessel-for-tests.ts'

test('the plan has the tanks in hundredths, bow to the left and port below, each with the page of its pump', () => {
  expect(planTanks(vesselA)).toEqual([
    {id: '4p', tag: '4P', left: 50, right: 100, top: 50, bottom: 100, address: 'p/4p/index.html'},
    {id: '4s', tag: '4S', left: 0, right: 50, top: 0, bottom: 50, address: 'p/4s/index.html'},
  ])
})

test('prints shares of the breadth without digits of the binary conversion', () => {
  const sides = [-0.966, -0.62, 0.034, 0.62, 0.966]
  const tanks = vesselA.tanks.flatMap((tank) =>
    sides.map((side, index) => ({
      ...tank,
      id: `${tank.id}-${index}`,
      plan: {...tank.plan, fromSide: side, toSide: 1},
    })),
  )
  expect(
    planTanks({...vesselA, tanks})
      .flatMap((one) => [one.left, one.right, one.top, one.bottom])
      .filter((one) => String(one).length > 5),
  ).toEqual([])
})
