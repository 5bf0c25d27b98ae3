import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {bottleContent} from '../../../src/calculations/gas/bottle-content.ts'
import {bottleCount} from '../../../src/calculations/gas/bottle-count.ts'
import {fillGas} from '../../../src/calculations/gas/fill-gas.ts'
import {purgeGas} from '../../../src/calculations/gas/purge-gas.ts'
import {purgeTime} from '../../../src/calculations/gas/purge-time.ts'
import {standardAtmosphere} from '../../../src/calculations/gas/standard-air.ts'
import {wholeDown, wholeUp} from '../../../src/calculations/gas/whole-count.ts'
import {
  barAbsolute,
  count,
  litres,
  litresPerMinute,
  minutes,
  ratio,
} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {type BottleRow, bottleRows, nominalBottle} from '../../published-values/nitrogen-rows.ts'

const pascal = (value: number) => quantityOf('absolute-pressure', value)

/** 0 to 3 bar(g). */
const fill = {
  volume: litres(250),
  from: standardAtmosphere,
  to: pascal(3e5 + standardAtmosphere.si),
  reference: standardAtmosphere,
}

function contentOf(row: BottleRow): number {
  return bottleContent({
    volume: litres(row.litres),
    full: pascal(row.full),
    least: pascal(row.least),
    compressibility: ratio(row.compressibility),
    reference: pascal(row.reference),
  }).si
}

describe('content of a bottle', () => {
  test('the printed 4013 l take 2000 psi as absolute: a gauge showing it means 0.7 % more', () => {
    const [absolute, gauge] = bottleRows.map(contentOf)
    expect((gauge ?? 0) / (absolute ?? 0) - 1).toBeGreaterThan(0.007)
  })

  test('the nominal 10 m³ of the trade (from memory) lie between ideal gas and compressibility 1.05', () => {
    const [ideal, real] = bottleRows.slice(4).map(contentOf)
    expect(ideal).toBeGreaterThan(nominalBottle)
    expect(real).toBeLessThan(nominalBottle)
  })

  test('what a bottle gives in two draws is what it gives in one', () => {
    fc.assert(
      fc.property(
        fc.double({min: 100, max: 200, noNaN: true}),
        fc.double({min: 20, max: 99, noNaN: true}),
        (full, between) => {
          const draw = (from: number, to: number) =>
            contentOf({
              what: '',
              known: 'computed',
              tolerance: 0,
              cubicMetres: 0,
              litres: 50,
              full: from * 1e5,
              least: to * 1e5,
              compressibility: 1,
              reference: 1e5,
            })
          expect(draw(full, between) + draw(between, 8)).toBeCloseTo(draw(full, 8), 9)
        },
      ),
    )
  })

  test('no volume, no compressibility and an empty bottle are refused', () => {
    const bottle = {
      volume: litres(50),
      full: barAbsolute(201),
      least: barAbsolute(9),
      compressibility: ratio(1),
      reference: standardAtmosphere,
    }
    const refusal =
      'Unexpected volume, compressibility or reference pressure of nothing, expected values above zero'
    expect(() => bottleContent({...bottle, volume: litres(0)})).toThrow(refusal)
    expect(() => bottleContent({...bottle, compressibility: ratio(0)})).toThrow(refusal)
    expect(() => bottleContent({...bottle, reference: pascal(0)})).toThrow(refusal)
    expect(() => bottleContent({...bottle, full: barAbsolute(9)})).toThrow(
      'Unexpected bottle with nothing to draw, expected it above the least pressure',
    )
    expect(() => bottleContent({...bottle, least: pascal(-1)})).toThrow('nothing to draw')
  })
})

describe('filling with nitrogen', () => {
  test('no volume, no reference pressure and no rise are refused', () => {
    const refusal = 'Unexpected volume or reference pressure of nothing, expected values above zero'
    expect(() => fillGas({...fill, volume: litres(0)})).toThrow(refusal)
    expect(() => fillGas({...fill, reference: pascal(0)})).toThrow(refusal)
    expect(() => fillGas({...fill, to: fill.from})).toThrow(
      'Unexpected filling to no higher pressure, expected one above the pressure before',
    )
  })
})

describe('gas of a purge', () => {
  const purge = {
    volume: litres(28),
    pressure: pascal(3e5 + standardAtmosphere.si),
    changes: count(5),
    reference: standardAtmosphere,
  }

  test('it is the moles of the changes, let out to the pressure of the air', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 300, noNaN: true}),
        fc.double({min: 0.1, max: 8, noNaN: true}),
        fc.integer({min: 1, max: 20}),
        (volume, gauge, changes) => {
          const pressure = gauge * 1e5 + standardAtmosphere.si
          const [gasConstant, temperature] = [8.314462618, 293.15]
          let moles = 0
          for (let change = 0; change < changes; change += 1)
            moles += (pressure * (volume / 1000)) / (gasConstant * temperature)
          const free = (moles * gasConstant * temperature) / standardAtmosphere.si
          const found = purgeGas({
            ...purge,
            volume: litres(volume),
            pressure: pascal(pressure),
            changes: count(changes),
          })
          expect(found.si / free).toBeCloseTo(1, 9)
        },
      ),
    )
  })

  test('a figure of nothing is refused', () => {
    const refusal = 'Unexpected volume, pressure or count of changes of nothing, expected values above zero'
    expect(() => purgeGas({...purge, volume: litres(0)})).toThrow(refusal)
    expect(() => purgeGas({...purge, pressure: pascal(0)})).toThrow(refusal)
    expect(() => purgeGas({...purge, changes: count(0)})).toThrow(refusal)
    expect(() => purgeGas({...purge, reference: pascal(0)})).toThrow(refusal)
  })

  test('the time is the gas by the flow, unless the least time is longer', () => {
    const of = (flow: number) =>
      purgeTime({freeGas: litres(600), freeFlow: litresPerMinute(flow), least: minutes(5)})
    expect(of(60)).toEqual({time: minutes(10), governs: 'formula'})
    expect(of(240)).toEqual({time: minutes(5), governs: 'least'})
    expect(of(120)).toEqual({time: minutes(5), governs: 'least'})
    expect(() => of(0)).toThrow('Unexpected free gas or flow of nothing, expected values above zero')
    expect(() => purgeTime({freeGas: litres(0), freeFlow: litresPerMinute(1), least: minutes(5)})).toThrow(
      'free gas or flow of nothing',
    )
  })
})

describe('bottles for purges', () => {
  const of = (freeGas: number, purges: number, bottle: number) => {
    const {purgesPerBottle, bottles} = bottleCount({
      freeGas: litres(freeGas),
      purges: count(purges),
      bottleContent: litres(bottle),
    })
    return [purgesPerBottle.si, bottles.si]
  }

  test('drawing purge after purge from the bottles empties as many', () => {
    fc.assert(
      fc.property(
        fc.integer({min: 1, max: 900}),
        fc.integer({min: 1, max: 60}),
        fc.integer({min: 1, max: 9000}),
        (freeGas, purges, bottle) => {
          let [opened, left] = [1, bottle]
          for (let drawn = 0; drawn < freeGas * purges; drawn += 1) {
            if (left === 0) [opened, left] = [opened + 1, bottle]
            left -= 1
          }
          expect(of(freeGas, purges, bottle)).toEqual([Math.floor(bottle / freeGas), opened])
        },
      ),
      {numRuns: 50},
    )
  })

  test('a bottle that gives less than one purge says none, and one drop more takes a further bottle', () => {
    expect(of(600, 1, 500)).toEqual([0, 2])
    expect(of(100, 10, 1000)).toEqual([10, 1])
    expect(of(100.1, 10, 1000)).toEqual([9, 2])
  })

  test('noise of arithmetic takes no further bottle and no purge away', () => {
    expect(wholeUp(3 * 0.1 * 10).si).toBe(3)
    expect(wholeDown(0.7 * 10 * 10 - 1e-12).si).toBe(7 * 10)
  })

  test('nothing and broken counts are refused', () => {
    const refusal = 'Unexpected free gas or content of a bottle of nothing, expected values above zero'
    expect(() => of(0, 1, 1)).toThrow(refusal)
    expect(() => of(1, 1, 0)).toThrow(refusal)
    expect(() => of(1, 1.5, 1)).toThrow('Unexpected count of 1.5 purges, expected a whole number from 1 up')
    expect(() => of(1, 0, 1)).toThrow('Unexpected count of 0 purges')
  })
})
