import {bottleCount} from '../calculations/gas/bottle-count.ts'
import {liquidLeakRate, liquidLeakRateNote} from '../calculations/gas/liquid-leak-rate.ts'
import {purgeCycles, purgeCyclesNote} from '../calculations/gas/purge-cycles.ts'
import {purgeGas, purgeGasNote} from '../calculations/gas/purge-gas.ts'
import {purgeLowerBound, purgeLowerBoundNote} from '../calculations/gas/purge-lower-bound.ts'
import {purgeSweep, purgeSweepNote} from '../calculations/gas/purge-sweep.ts'
import {purgeTime, purgeTimeNote} from '../calculations/gas/purge-time.ts'
import {
  type LowestPressure,
  purgeUpperBound,
  purgeUpperBoundNote,
} from '../calculations/gas/purge-upper-bound.ts'
import {purgeWindow, purgeWindowNote} from '../calculations/gas/purge-window.ts'
import {riserPurgePressure, riserPurgePressureNote} from '../calculations/gas/riser-purge-pressure.ts'
import {sealPressure, sealPressureNote} from '../calculations/gas/seal-pressure.ts'
import {bar, barGauge, count, minutes} from '../quantities/named-units.ts'
import type {Quantity} from '../quantities/quantity.ts'
import {absoluteWord, barometerOf, referenceOf} from './absolute-pressure-words.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import {contentLine, contentWord, supplyOf} from './gas-content-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

const upperBoundKeys = ['rating', 'lip', 'tank', 'regulator']

/** Purging of cofferdams and risers, and what a purge brings out. */
export const purgeCalculations: readonly ListedCalculation[] = [
  {
    note: liquidLeakRateNote,
    keys: ['volume', 'running', 'elapsed'],
    optionalKeys: [],
    run: runLiquidLeakRate,
  },
  {
    note: purgeCyclesNote,
    keys: ['from', 'to', 'low', 'high'],
    optionalKeys: ['supply', 'reference', 'barometer'],
    run: runPurgeCycles,
  },
  {
    note: purgeGasNote,
    keys: ['volume', 'pressure'],
    optionalKeys: ['changes', 'purges', 'bottle', 'reference', 'barometer'],
    run: runPurgeGas,
  },
  {note: purgeLowerBoundNote, keys: ['density', 'lift'], optionalKeys: ['margin'], run: runPurgeLowerBound},
  {note: purgeSweepNote, keys: ['from', 'to'], optionalKeys: ['supply'], run: runPurgeSweep},
  {
    note: purgeTimeNote,
    keys: ['volume', 'pressure', 'flow'],
    optionalKeys: ['changes', 'least', 'reference', 'barometer'],
    run: runPurgeTime,
  },
  {note: purgeUpperBoundNote, keys: upperBoundKeys, optionalKeys: [], run: runPurgeUpperBound},
  {
    note: purgeWindowNote,
    keys: ['density', 'lift', ...upperBoundKeys],
    optionalKeys: ['margin'],
    run: runPurgeWindow,
  },
  {
    note: riserPurgePressureNote,
    keys: ['density', 'height'],
    optionalKeys: ['back-pressure'],
    run: runRiserPurgePressure,
  },
  {
    note: sealPressureNote,
    keys: ['density', 'level', 'tank', 'cofferdam'],
    optionalKeys: [],
    run: runSealPressure,
  },
]

function runLiquidLeakRate(words: CalculationWords): CalculationRun {
  const leak = liquidLeakRate({
    volume: words.quantity('volume', 'volume'),
    running: words.quantity('running', 'time'),
    elapsed: words.quantity('elapsed', 'time'),
  })
  return {
    results: [
      leak.perRunningHour
        ? quantityLine('per-running-hour', leak.perRunningHour, 'ml/h', 2)
        : wordLine('per-running-hour', 'none: no running hours since the last purge, judge per day only'),
      quantityLine('per-day', leak.perDay, 'ml/d', 1),
    ],
    taken: [],
    note: liquidLeakRateNote,
  }
}

function runPurgeCycles(words: CalculationWords): CalculationRun {
  const [barometer, reference, supply] = [barometerOf(words), referenceOf(words), supplyOf(words)]
  const from = contentWord(words, 'from')
  const purge = purgeCycles({
    from,
    to: contentWord(words, 'to'),
    supply,
    low: absoluteWord(words, 'low', barometer),
    high: absoluteWord(words, 'high', barometer),
    reference,
  })
  return {
    results: [
      quantityLine('cycles', purge.cycles, '', 0),
      quantityLine('by-formula', purge.exact, '', 3),
      quantityLine('volumes', purge.volumes, '', 3),
      ...purge.contents.map((one, index) => contentLine(`after-${index + 1}`, one, from)),
    ],
    taken: notGiven(words, [contentLine('supply', supply, from), ...pressuresTaken(reference, barometer)]),
    note: purgeCyclesNote,
  }
}

function runPurgeGas(words: CalculationWords): CalculationRun {
  const {freeGas, taken} = freeGasOf(words)
  if (words.has('purges') && !words.has('bottle')) words.text('bottle')
  const bottle = words.optional('bottle', 'volume')
  const purges = words.optional('purges', 'count') ?? count(1)
  const needed = bottle && bottleCount({freeGas, purges, bottleContent: bottle})
  return {
    results: [
      quantityLine('free-gas', freeGas, 'm³', 4),
      ...(needed
        ? [
            quantityLine('purges-per-bottle', needed.purgesPerBottle, '', 0),
            quantityLine('bottles', needed.bottles, '', 0),
          ]
        : []),
    ],
    taken: [...taken, ...(needed ? notGiven(words, [quantityLine('purges', purges, '', 0)]) : [])],
    note: purgeGasNote,
  }
}

function runPurgeLowerBound(words: CalculationWords): CalculationRun {
  const {lower, taken} = lowerBoundOf(words)
  return {
    results: [quantityLine('lower-bound', lower, 'bar(g)', 3)],
    taken,
    note: purgeLowerBoundNote,
  }
}

function runPurgeSweep(words: CalculationWords): CalculationRun {
  const [from, supply] = [contentWord(words, 'from'), supplyOf(words)]
  const volumes = purgeSweep({from, to: contentWord(words, 'to'), supply})
  return {
    results: [quantityLine('volumes', volumes, '', 3)],
    taken: notGiven(words, [contentLine('supply', supply, from)]),
    note: purgeSweepNote,
  }
}

function runPurgeTime(words: CalculationWords): CalculationRun {
  const {freeGas, taken} = freeGasOf(words)
  const least = words.optional('least', 'time') ?? minutes(5)
  const {time, governs} = purgeTime({freeGas, freeFlow: words.quantity('flow', 'volume-flow'), least})
  return {
    results: [
      quantityLine('time', time, 'min', 1),
      wordLine('governed-by', governs === 'least' ? 'least time' : 'formula'),
      quantityLine('free-gas', freeGas, 'm³', 4),
    ],
    taken: [...taken, ...notGiven(words, [quantityLine('least', least, 'min', 0)])],
    note: purgeTimeNote,
  }
}

function runPurgeUpperBound(words: CalculationWords): CalculationRun {
  const {bound, governs} = upperBoundOf(words)
  return {
    results: [quantityLine('upper-bound', bound, 'bar(g)', 3), wordLine('governed-by', governs)],
    taken: [],
    note: purgeUpperBoundNote,
  }
}

function runPurgeWindow(words: CalculationWords): CalculationRun {
  const {lower, taken} = lowerBoundOf(words)
  const window = purgeWindow(lower, upperBoundOf(words))
  return {
    results: [
      quantityLine('lower', window.lower, 'bar(g)', 3),
      quantityLine('upper', window.upper, 'bar(g)', 3),
      wordLine('governed-by', window.governs),
      wordLine('window', window.safe ? 'safe' : 'NO SAFE WINDOW: do not lift by pressure, ask office'),
    ],
    taken,
    note: purgeWindowNote,
  }
}

function runRiserPurgePressure(words: CalculationWords): CalculationRun {
  const backPressure = words.optional('back-pressure', 'gauge-pressure') ?? barGauge(1)
  const pressure = riserPurgePressure({
    density: words.quantity('density', 'density'),
    height: words.quantity('height', 'length'),
    backPressure,
  })
  return {
    results: [quantityLine('pressure', pressure, 'bar(g)', 3)],
    taken: notGiven(words, [quantityLine('back-pressure', backPressure, 'bar(g)', 1)]),
    note: riserPurgePressureNote,
  }
}

function runSealPressure(words: CalculationWords): CalculationRun {
  const pressure = sealPressure({
    density: words.quantity('density', 'density'),
    level: words.quantity('level', 'length'),
    tankPressure: words.quantity('tank', 'gauge-pressure'),
    cofferdamPressure: words.quantity('cofferdam', 'gauge-pressure'),
  })
  return {results: [quantityLine('pressure', pressure, 'bar', 3)], taken: [], note: sealPressureNote}
}

function freeGasOf(words: CalculationWords): {
  readonly freeGas: Quantity<'volume'>
  readonly taken: readonly ResultLine[]
} {
  const [barometer, reference] = [barometerOf(words), referenceOf(words)]
  const changes = words.optional('changes', 'count') ?? count(5)
  const freeGas = purgeGas({
    volume: words.quantity('volume', 'volume'),
    pressure: absoluteWord(words, 'pressure', barometer),
    changes,
    reference,
  })
  const taken = notGiven(words, [
    quantityLine('changes', changes, '', 0),
    ...pressuresTaken(reference, barometer),
  ])
  return {freeGas, taken}
}

function lowerBoundOf(words: CalculationWords): {
  readonly lower: Quantity<'gauge-pressure'>
  readonly taken: readonly ResultLine[]
} {
  const margin = words.optional('margin', 'pressure-difference') ?? bar(0.5)
  const lower = purgeLowerBound({
    density: words.quantity('density', 'density'),
    lift: words.quantity('lift', 'length'),
    margin,
  })
  return {lower, taken: notGiven(words, [quantityLine('margin', margin, 'bar', 1)])}
}

function upperBoundOf(words: CalculationWords): LowestPressure {
  return purgeUpperBound({
    cofferdamRating: words.quantity('rating', 'gauge-pressure'),
    lipReverseLimit: words.quantity('lip', 'pressure-difference'),
    lowestTankPressure: words.quantity('tank', 'gauge-pressure'),
    regulatorMaximum: words.quantity('regulator', 'gauge-pressure'),
  })
}

function pressuresTaken(
  reference: Quantity<'absolute-pressure'>,
  barometer: Quantity<'absolute-pressure'>,
): readonly ResultLine[] {
  return [
    quantityLine('reference', reference, 'bar(a)', 5),
    quantityLine('barometer', barometer, 'bar(a)', 5),
  ]
}
