import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {type BoltGroupInput, boltGroup} from '../../../src/calculations/bolted-joints/bolt-group.ts'
import {
  degrees,
  kilonewtons,
  millimetres,
  newtonMetres,
  newtons,
} from '../../../src/quantities/named-units.ts'

const gravity = 9.80665

function groupOf(changed: Partial<BoltGroupInput>) {
  return boltGroup({
    bolts: 8,
    boltCircle: millimetres(400),
    pull: kilonewtons(20),
    moment: newtonMetres(1000),
    firstBoltAt: degrees(0),
    leastPreload: kilonewtons(23.3),
    ...changed,
  })
}

/** Shares found without the closed sum: the plane a + b·x + c·y through the bolts that balances force and both moments. */
function sharesByBalance(input: BoltGroupInput): readonly number[] {
  const places = Array.from({length: input.bolts}, (_, index) => {
    const angle = input.firstBoltAt.si + (2 * Math.PI * index) / input.bolts
    return [(input.boltCircle.si / 2) * Math.cos(angle), (input.boltCircle.si / 2) * Math.sin(angle)] as const
  })
  const sum = (of: (x: number, y: number) => number) => places.reduce((all, [x, y]) => all + of(x, y), 0)
  const rows = [
    [input.bolts, sum((x) => x), sum((_, y) => y), input.pull.si],
    [sum((x) => x), sum((x) => x * x), sum((x, y) => x * y), input.moment.si],
    [sum((_, y) => y), sum((x, y) => x * y), sum((_, y) => y * y), 0],
  ]
  for (let pivot = 0; pivot < 3; pivot += 1)
    for (let row = 0; row < 3; row += 1) {
      if (row === pivot) continue
      const factor = (rows[row]?.[pivot] ?? 0) / (rows[pivot]?.[pivot] ?? 1)
      for (let column = 0; column < 4; column += 1) {
        const line = rows[row]
        if (line) line[column] = (line[column] ?? 0) - factor * (rows[pivot]?.[column] ?? 0)
      }
    }
  const [a = 0, b = 0, c = 0] = rows.map((row, index) => (row[3] ?? 0) / (row[index] ?? 1))
  return places.map(([x, y]) => a + b * x + c * y)
}

const inputs = fc.record({
  bolts: fc.integer({min: 3, max: 48}),
  boltCircle: fc.double({min: 50, max: 1500, noNaN: true}).map(millimetres),
  pull: fc.double({min: 0, max: 500, noNaN: true}).map(kilonewtons),
  moment: fc.double({min: 0, max: 50_000, noNaN: true}).map(newtonMetres),
  firstBoltAt: fc.double({min: 0, max: 90, noNaN: true}).map(degrees),
  leastPreload: fc.constant(kilonewtons(20)),
})

describe('a group of bolts', () => {
  test('three bolts at 0.25 m under 600 kg, 0.05 m off centre, carry 2745.9 and twice 1569.1 N (computed apart from this project)', () => {
    const {shares, greatestShare} = groupOf({
      bolts: 3,
      boltCircle: millimetres(500),
      pull: newtons(600 * gravity),
      moment: newtonMetres(600 * gravity * 0.05),
    })
    expect(shares.map((one) => one.si.toFixed(1))).toEqual(['2745.9', '1569.1', '1569.1'])
    expect(greatestShare.si).toBeCloseTo(2745.9, 1)
  })

  test('without a moment each bolt carries the same', () => {
    expect(groupOf({moment: newtonMetres(0)}).shares.map((one) => one.si)).toEqual(Array(8).fill(2500))
  })

  test('the shares are those of a plane that balances force and moments', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const expected = sharesByBalance(input)
        const size = Math.max(1, ...expected.map(Math.abs))
        boltGroup(input).shares.forEach((share, index) => {
          expect(Math.abs(share.si - (expected[index] ?? 0)) / size).toBeLessThan(1e-6)
        })
      }),
    )
  })

  test('a bolt where the moment pulls most is the worst place', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const worst = boltGroup({...input, firstBoltAt: degrees(0)}).greatestShare.si
        expect(boltGroup(input).greatestShare.si).toBeLessThanOrEqual(worst + 1e-6 * Math.max(1, worst))
      }),
    )
  })

  test('the joint opens where the greatest share reaches the least preload', () => {
    const alone = {moment: newtonMetres(0), leastPreload: kilonewtons(10)}
    expect(groupOf({...alone, pull: kilonewtons(79.9)})).toMatchObject({opens: false})
    expect(groupOf({...alone, pull: kilonewtons(80)})).toMatchObject({opens: true})
    expect(groupOf({...alone, pull: kilonewtons(60)}).leastClamp.si).toBeCloseTo(2500, 9)
  })

  test('six bolts stand half a bolt circle apart', () => {
    expect(groupOf({bolts: 6}).spacing.si).toBeCloseTo(0.2, 12)
  })

  test.each([
    [{bolts: 2}, 'Unexpected count of 2 bolts, expected a whole number from 3 to 48'],
    [{bolts: 49}, 'Unexpected count of 49 bolts'],
    [{bolts: 6.5}, 'Unexpected count of 6.5 bolts'],
    [{boltCircle: millimetres(0)}, 'Unexpected bolt circle of 0 m'],
    [{leastPreload: newtons(0)}, 'Unexpected preload of 0 N'],
  ])('%j is refused', (changed, reason) => {
    expect(() => groupOf(changed)).toThrow(reason)
  })
})
