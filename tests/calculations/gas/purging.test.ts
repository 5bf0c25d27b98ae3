import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {purgeCycles} from '../../../src/calculations/gas/purge-cycles.ts'
import {purgeSweep} from '../../../src/calculations/gas/purge-sweep.ts'
import {standardAtmosphere} from '../../../src/calculations/gas/standard-air.ts'
import {contentAfterChanges, nothingInSupply} from '../../../src/calculations/gas/well-mixed.ts'
import {barAbsolute, count, percent} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

const partsPerMillion = (value: number) => quantityOf('concentration', value * 1e-6)
const pascal = (value: number) => quantityOf('absolute-pressure', value)

describe('sweep', () => {
  test('letting in small portions and mixing each comes to the same count', () => {
    fc.assert(
      fc.property(
        fc.double({min: 15, max: 21, noNaN: true}),
        fc.double({min: 1, max: 14, noNaN: true}),
        fc.double({min: 0, max: 0.9, noNaN: true}),
        (from, to, supply) => {
          const portion = 1e-4
          let [content, volumes] = [from, 0]
          while (content > to) {
            content = (content + portion * supply) / (1 + portion)
            volumes += portion
          }
          const found = purgeSweep({from: percent(from), to: percent(to), supply: percent(supply)}).si
          expect(Math.abs(found - volumes)).toBeLessThanOrEqual(1e-3)
        },
      ),
      {numRuns: 30},
    )
  })

  test('two sweeps one after the other are one sweep', () => {
    const of = (from: number, to: number) =>
      purgeSweep({from: percent(from), to: percent(to), supply: nothingInSupply}).si
    expect(of(21, 5) + of(5, 1)).toBeCloseTo(of(21, 1), 12)
    expect(of(21, 21)).toBe(0)
  })

  test('an aim beyond the purge gas or away from it is refused, and so is a content below nothing', () => {
    expect(() => purgeSweep({from: percent(21), to: percent(1), supply: percent(3)})).toThrow(
      'Unexpected aim of 1.00 %, expected one between 21.0 % at the start and 3.00 % of the supply',
    )
    expect(() => purgeSweep({from: percent(21), to: percent(3), supply: percent(3)})).toThrow('aim of 3.00 %')
    expect(() => purgeSweep({from: percent(5), to: percent(8), supply: nothingInSupply})).toThrow(
      'aim of 8.00 %',
    )
    expect(() => purgeSweep({from: percent(0), to: percent(0), supply: nothingInSupply})).toThrow(
      'aim of 0 %',
    )
    expect(() =>
      purgeSweep({from: percent(21), to: partsPerMillion(5), supply: partsPerMillion(10)}),
    ).toThrow(
      'Unexpected aim of 5.00 ppm, expected one between 21.0 % at the start and 10.0 ppm of the supply',
    )
    expect(() => purgeSweep({from: percent(21), to: percent(-1), supply: nothingInSupply})).toThrow(
      'Unexpected content of −1.00 %, expected none or more',
    )
    expect(() =>
      contentAfterChanges({from: percent(21), supply: nothingInSupply, changes: count(-1)}),
    ).toThrow('Unexpected count of -1 changes, expected none or more')
    expect(() =>
      contentAfterChanges({from: percent(-1), supply: nothingInSupply, changes: count(1)}),
    ).toThrow('Unexpected content of −1.00 %')
  })
})

describe('pressure and vacuum cycles', () => {
  const toThree = {
    from: percent(20.9),
    to: percent(0.1),
    supply: nothingInSupply,
    low: standardAtmosphere,
    high: pascal(3e5 + standardAtmosphere.si),
    reference: standardAtmosphere,
  }

  test('gauge pressures taken for absolute ones would promise an empty space after one cycle', () => {
    expect(() => purgeCycles({...toThree, low: pascal(0), high: pascal(3e5)})).toThrow(
      'Unexpected low pressure not below the high one, expected both above a vacuum, rising',
    )
  })

  test('filling and letting off by moles, cycle by cycle, needs as many cycles and as much gas', () => {
    fc.assert(
      fc.property(
        fc.double({min: 0.2, max: 1.2, noNaN: true}),
        fc.double({min: 2, max: 8, noNaN: true}),
        fc.double({min: 0.01, max: 10, noNaN: true}),
        fc.double({min: 0, max: 0.005, noNaN: true}),
        (low, high, to, supply) => {
          let [foreign, free, cycles] = [0.209 * low, 0, 0]
          while (foreign / low > (to / 100) * (1 + 1e-7)) {
            foreign += (high - low) * (supply / 100)
            foreign *= low / high
            free += high - low
            cycles += 1
          }
          const purge = purgeCycles({
            ...toThree,
            to: percent(to),
            supply: percent(supply),
            low: barAbsolute(low),
            high: barAbsolute(high),
            reference: barAbsolute(1),
          })
          fc.pre(Math.abs(purge.exact.si - Math.round(purge.exact.si)) > 1e-5)
          expect(purge.cycles.si).toBe(cycles)
          expect(purge.volumes.si).toBeCloseTo(free, 6)
          expect(purge.contents.at(-1)?.si).toBeCloseTo(foreign / low, 9)
        },
      ),
      {numRuns: 50},
    )
  })

  test('a ratio of two takes four cycles from 16 to 1 %, not five by noise', () => {
    const purge = purgeCycles({
      ...toThree,
      from: percent(16),
      to: percent(1),
      low: barAbsolute(1),
      high: barAbsolute(2),
    })
    expect(purge.cycles.si).toBe(4)
    expect(purge.volumesPerCycle.si).toBeCloseTo(1e5 / standardAtmosphere.si, 12)
  })

  test('pressures that do not rise and endless cycles are refused', () => {
    const refusal = 'Unexpected low pressure not below the high one'
    expect(() => purgeCycles({...toThree, high: toThree.low})).toThrow(refusal)
    expect(() => purgeCycles({...toThree, reference: pascal(0)})).toThrow(refusal)
    expect(() => purgeCycles({...toThree, low: barAbsolute(1), high: barAbsolute(1.01)})).toThrow(
      'cycles, expected at most 100: put low and high pressure further apart',
    )
    expect(() => purgeCycles({...toThree, to: percent(30)})).toThrow('aim of 30.0 %')
  })
})
