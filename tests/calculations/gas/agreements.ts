import {bottleContent} from '../../../src/calculations/gas/bottle-content.ts'
import {bottleCount} from '../../../src/calculations/gas/bottle-count.ts'
import {fillGas} from '../../../src/calculations/gas/fill-gas.ts'
import {gasLeakRate} from '../../../src/calculations/gas/gas-leak-rate.ts'
import {gasMass} from '../../../src/calculations/gas/gas-mass.ts'
import {nitrogenMolarMass} from '../../../src/calculations/gas/molar-gas.ts'
import {molarLeakRate} from '../../../src/calculations/gas/molar-leak-rate.ts'
import {pressureHold} from '../../../src/calculations/gas/pressure-hold.ts'
import {purgeCycles} from '../../../src/calculations/gas/purge-cycles.ts'
import {purgeSweep} from '../../../src/calculations/gas/purge-sweep.ts'
import {sealPressure} from '../../../src/calculations/gas/seal-pressure.ts'
import {standardAtmosphere} from '../../../src/calculations/gas/standard-air.ts'
import {nothingInSupply} from '../../../src/calculations/gas/well-mixed.ts'
import {
  bar,
  barGauge,
  count,
  cubicMetres,
  degreesCelsius,
  gramsPerMole,
  kilogramsPerCubicMetre,
  litres,
  metres,
  percent,
  ratio,
  seconds,
} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {type HeldRows, heldTo, near} from '../../published-values/agreement.ts'
import {published as leaks} from '../../published-values/gas-leak-rows.ts'
import {published as nitrogen} from '../../published-values/nitrogen-rows.ts'
import {published as holds} from '../../published-values/pressure-hold-rows.ts'
import {pressureCycleContents, published as purges} from '../../published-values/purge-rows.ts'

const pascal = (value: number) => quantityOf('absolute-pressure', value)
const kelvin = (value: number) => quantityOf('temperature', value)

/** 250 l from 0 to 3 bar(g). */
const fill = {volume: litres(250), from: standardAtmosphere, to: pascal(3e5 + standardAtmosphere.si)}

/** Grams of 1 m³ that rises by so many pascal, of a gas of 102 g/mol. */
function gramsAt(celsius: number, rise: number): number {
  const mass = gasMass({
    volume: cubicMetres(1),
    rise: quantityOf('pressure-difference', rise),
    molarMass: gramsPerMole(102),
    temperature: degreesCelsius(celsius),
  })
  return mass.si * 1000
}

/** Contents in % after each cycle between 0 and 3 bar(g). */
function contentsAfterCycles(): readonly number[] {
  const {contents} = purgeCycles({
    from: percent(20.9),
    to: percent(0.1),
    supply: nothingInSupply,
    low: standardAtmosphere,
    high: fill.to,
    reference: standardAtmosphere,
  })
  return contents.map((one) => one.si * 100)
}

/** Gas against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(leaks.leaks, (row) => {
    const found = gasLeakRate({
      volume: litres(row.litres),
      drop: quantityOf('pressure-difference', row.dropPascal),
      duration: seconds(row.seconds),
    })
    return [near('leak in Pa·m³/s', found.rate.si, row.rate, row.tolerance)]
  }),
  heldTo(leaks.vacuumDecay, (row) => {
    const found = molarLeakRate({
      volume: litres(row.litres),
      start: pascal(row.startPascal),
      end: pascal(row.endPascal),
      startTemperature: kelvin(row.kelvin),
      endTemperature: kelvin(row.kelvin),
      duration: seconds(row.seconds),
    })
    return [
      near('recalled, mol/s', found.si, row.recalled, row.recalledTolerance),
      near('computed apart, mol/s', found.si, row.computed, row.computedTolerance),
    ]
  }),
  heldTo(leaks.tenGrams, ({printed}) => [near('grams at 0 °C', gramsAt(0, printed), 10, 0.1)]),
  heldTo(leaks.tenGramsAtTemperatures, ({celsius, pascalCubicMetres}) => [
    near('grams', gramsAt(celsius, pascalCubicMetres), 10, 0.5 / pascalCubicMetres),
  ]),
  heldTo(nitrogen.bottles, (row) => {
    const found = bottleContent({
      volume: litres(row.litres),
      full: pascal(row.full),
      least: pascal(row.least),
      compressibility: ratio(row.compressibility),
      reference: pascal(row.reference),
    })
    return [near('content in m³', found.si, row.cubicMetres, row.tolerance)]
  }),
  heldTo(nitrogen.fills, (row) => [
    near('m³', fillGas({...fill, reference: pascal(row.reference)}).si, row.cubicMetres, row.tolerance),
  ]),
  heldTo(nitrogen.fillMass, (kilograms) => {
    const found = gasMass({
      volume: litres(250),
      rise: bar(3),
      molarMass: nitrogenMolarMass,
      temperature: degreesCelsius(20),
    })
    return [near('kg', found.si, kilograms, 0.0005)]
  }),
  heldTo(nitrogen.bottleCounts, ({bottleCubicMetres, exact, bottles}) => {
    const freeGas = fillGas({...fill, reference: standardAtmosphere})
    const taken = bottleCount({freeGas, purges: count(20), bottleContent: cubicMetres(bottleCubicMetres)})
    return [
      near('not rounded', (20 * freeGas.si) / bottleCubicMetres, exact, 0.005),
      near('bottles', taken.bottles.si, bottles, 1e-9),
    ]
  }),
  heldTo(holds.sealed, (row) => {
    const {expectedEnd} = pressureHold({
      start: barGauge(row.start),
      end: barGauge(row.start),
      startTemperature: degreesCelsius(row.from),
      endTemperature: degreesCelsius(row.to),
      startBarometer: standardAtmosphere,
      endBarometer: standardAtmosphere,
    })
    return [
      near('expected in bar(g)', expectedEnd.si / 1e5, row.expected, 1e-5),
      near('change in bar', expectedEnd.si / 1e5 - row.start, row.change, 1e-5),
    ]
  }),
  heldTo(holds.month, (row) => {
    const {leakRate} = pressureHold({
      start: barGauge(row.lossInBar),
      end: barGauge(0),
      startTemperature: degreesCelsius(20),
      endTemperature: degreesCelsius(20),
      startBarometer: standardAtmosphere,
      endBarometer: standardAtmosphere,
      volume: litres(row.litres),
      duration: seconds(row.days * 86_400),
    })
    return [near('leak in Pa·m³/s', leakRate?.si ?? Number.NaN, row.printed, 0.03 * row.printed)]
  }),
  heldTo(purges.sweep, (row) => {
    const {si} = purgeSweep({from: percent(21), to: percent(1), supply: nothingInSupply})
    return [
      near('read off the chart', si, row.printed, row.printedTolerance),
      near('computed apart', si, row.computed, 0.0005),
    ]
  }),
  heldTo(purges.vacuum, (row) =>
    (
      [
        [row.lowOfAtmosphere, row.exact],
        [row.roundedLowOfAtmosphere, row.roundedExact],
      ] as const
    ).flatMap(([low, exact]) => {
      const found = purgeCycles({
        from: percent(21),
        to: quantityOf('concentration', 5e-6),
        supply: nothingInSupply,
        low: pascal(low * standardAtmosphere.si),
        high: standardAtmosphere,
        reference: standardAtmosphere,
      })
      return [
        near('cycles as printed', found.exact.si, row.printedExact, 0.005),
        near('cycles computed apart', found.exact.si, exact, 0.0005),
        near('whole cycles', found.cycles.si, row.cycles, 1e-9),
        near('volumes', found.volumes.si, row.volumes, 0.0005),
      ]
    }),
  ),
  heldTo(purges.cycles, (content) => {
    const index = pressureCycleContents.indexOf(content)
    const found = contentsAfterCycles()[index] ?? Number.NaN
    return [near(`% after ${index + 1}`, found, content, index < 2 ? 0.0005 : 0.00005)]
  }),
  heldTo(purges.columns, ({density, height, added, bar: expected, tolerance}) => {
    const found = sealPressure({
      density: kilogramsPerCubicMetre(density),
      level: metres(height),
      tankPressure: barGauge(added),
      cofferdamPressure: barGauge(0),
    })
    return [near('bar', found.si / 1e5, expected, tolerance)]
  }),
]
