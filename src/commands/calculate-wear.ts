import {
  annularGapLeakage,
  annularGapLeakageNote,
  type GapFriction,
} from '../calculations/clearances/annular-gap-leakage.ts'
import {
  leastRunningClearance,
  leastRunningClearanceNote,
  leastRunningClearanceNoteOf,
} from '../calculations/clearances/least-running-clearance.ts'
import {splitAtRenewals, type WearReading} from '../calculations/wear/split-at-renewals.ts'
import {type WearForecast, wearForecast, wearForecastNote} from '../calculations/wear/wear-forecast.ts'
import {diametralMillimetres, ratio} from '../quantities/named-units.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import {choiceWord} from './choice-word.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

/** Clearance of new rings, leakage through a gap, and the wear of rings. */
export const wearCalculations: readonly ListedCalculation[] = [
  {
    note: annularGapLeakageNote,
    keys: ['diameter', 'gap', 'length', 'head'],
    optionalKeys: ['friction', 'viscosity', 'end-loss'],
    run: runAnnularGapLeakage,
  },
  {
    note: leastRunningClearanceNote,
    keys: ['diameter'],
    optionalKeys: ['table', 'pair'],
    run: runLeastRunningClearance,
  },
  {
    note: wearForecastNote,
    keys: ['hours', 'clearances', 'limit'],
    optionalKeys: ['at', 'uncertainty', 'renewed-at'],
    run: runWearForecast,
  },
]

function runAnnularGapLeakage(words: CalculationWords): CalculationRun {
  const endLoss = words.optional('end-loss', 'ratio') ?? ratio(1.5)
  const result = annularGapLeakage(
    {
      diameter: words.quantity('diameter', 'length'),
      gap: words.quantity('gap', 'radial-clearance'),
      length: words.quantity('length', 'length'),
      head: words.quantity('head', 'length'),
      endLoss,
    },
    gapFrictionOf(words),
  )
  return {
    results: [
      quantityLine('leakage', result.leakage, 'm³/h', 3),
      quantityLine('velocity', result.velocity, 'm/s', 3),
      quantityLine('friction', result.friction, '1', 5),
      ...(result.reynoldsNumber ? [quantityLine('reynolds-number', result.reynoldsNumber, '1', 0)] : []),
    ],
    taken: notGiven(words, [quantityLine('end-loss', endLoss, '1', 2)]),
    note: annularGapLeakageNote,
  }
}

function gapFrictionOf(words: CalculationWords): GapFriction {
  const friction = words.optional('friction', 'ratio')
  const viscosity = words.optional('viscosity', 'kinematic-viscosity')
  if (friction && !viscosity) return {kind: 'stated', friction}
  if (viscosity && !friction) return {kind: 'smooth', viscosity}
  throw new RangeError(
    `Unexpected call with ${friction ? 'both' : 'neither'} of \`friction=\` and \`viscosity=\`, expected one of them`,
  )
}

function runLeastRunningClearance(words: CalculationWords): CalculationRun {
  const table = choiceWord(words, 'table', ['inch converted', 'own metric'])
  const pair = choiceWord(words, 'pair', ['usual', 'galling'])
  const {clearance, row} = leastRunningClearance({
    runningDiameter: words.quantity('diameter', 'length'),
    table,
    galling: pair === 'galling',
  })
  return {
    results: [
      quantityLine('clearance', clearance, 'mm diametral', 3),
      quantityLine('step-from', row.from, 'mm', 0),
      quantityLine('step-below', row.below, 'mm', 0),
    ],
    taken: notGiven(words, [wordLine('table', table), wordLine('pair', pair)]),
    note: leastRunningClearanceNoteOf(table),
  }
}

function runWearForecast(words: CalculationWords): CalculationRun {
  const uncertainty = words.optional('uncertainty', 'diametral-clearance') ?? diametralMillimetres(0)
  const at = words.optional('at', 'time')
  const readings = readingsOf(words)
  const forecast = wearForecast({
    readings,
    limit: words.quantity('limit', 'diametral-clearance'),
    instrumentUncertainty: uncertainty,
    ...(at ? {at} : {}),
  })
  return {
    results: [
      ...limitLines(forecast),
      quantityLine('wear', forecast.wear, 'mm diametral/1000 h', 4),
      quantityLine('line-at-zero-hours', forecast.start, 'mm diametral', 4),
      quantityLine('scatter', forecast.residualDeviation, 'mm diametral', 4),
      {name: 'readings', value: readings.length, figure: String(readings.length), unit: ''},
      ...expectedLines(forecast),
    ],
    taken: notGiven(words, [quantityLine('uncertainty', uncertainty, 'mm diametral', 2)]),
    note: wearForecastNote,
  }
}

/** Readings of the ring that is fitted now; on the command line a reading at the hours of a renewal is one as left. */
function readingsOf(words: CalculationWords): readonly WearReading[] {
  const hours = words.list('hours', 'time')
  const clearances = words.list('clearances', 'diametral-clearance')
  if (hours.length !== clearances.length)
    throw new RangeError(
      `Unexpected ${hours.length} hours with ${clearances.length} clearances, expected as many of each`,
    )
  const readings = hours.flatMap((one, index) => {
    const clearance = clearances[index]
    return clearance ? [{hours: one, clearance, phase: 'as-left' as const}] : []
  })
  if (!words.has('renewed-at')) return readings
  return splitAtRenewals(readings, words.list('renewed-at', 'time')).at(-1) ?? []
}

function limitLines({limitReached}: WearForecast): readonly ResultLine[] {
  if (!limitReached) return [wordLine('limit', 'not reached: the line does not rise')]
  const {due, governs, byLine, byCondition, byBand, beyondSpan} = limitReached
  return [
    quantityLine('due', due, 'h', 0),
    wordLine('governed-by', governs),
    wordLine(
      'trust',
      beyondSpan
        ? 'beyond one and a half times the observed span'
        : 'within one and a half times the observed span',
    ),
    quantityLine('line-meets-limit', byLine, 'h', 0),
    quantityLine('line-less-uncertainty', byCondition, 'h', 0),
    ...(byBand
      ? [quantityLine('band-meets-limit', byBand, 'h', 0)]
      : [wordLine('band-meets-limit', 'not used: fewer than five readings')]),
  ]
}

function expectedLines({expected}: WearForecast): readonly ResultLine[] {
  if (!expected) return []
  return [
    quantityLine('expected', expected.clearance, 'mm diametral', 4),
    quantityLine('band-lower', expected.lower, 'mm diametral', 4),
    quantityLine('band-upper', expected.upper, 'mm diametral', 4),
    wordLine(
      'expected-trust',
      expected.beyondSpan
        ? 'beyond one and a half times the observed span'
        : 'within one and a half times the observed span',
    ),
  ]
}
