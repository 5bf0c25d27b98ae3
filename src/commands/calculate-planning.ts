import {orderByDate, orderByDateNote} from '../calculations/planning/order-by-date.ts'
import {serviceInterval, serviceIntervalNote} from '../calculations/planning/service-interval.ts'
import {
  expectedUse,
  sparesForService,
  sparesForServiceNote,
} from '../calculations/planning/spares-for-service.ts'
import {strippingCeiling, strippingCeilingNote} from '../calculations/planning/stripping-ceiling.ts'
import {percent} from '../quantities/named-units.ts'
import type {Quantity} from '../quantities/quantity.ts'
import {type CalculationRun, quantityLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

/** Spares, service intervals, order dates and stripping limits. */
export const planningCalculations: readonly ListedCalculation[] = [
  {note: orderByDateNote, keys: ['needed-on', 'lead-time'], optionalKeys: [], run: runOrderByDate},
  {
    note: serviceIntervalNote,
    keys: ['shares', 'intervals'],
    optionalKeys: ['run', 'run-intervals'],
    run: runServiceInterval,
  },
  {
    note: sparesForServiceNote,
    keys: [],
    optionalKeys: ['expected-use', 'hours-ahead', 'mean-lives', 'service-level'],
    run: runSparesForService,
  },
  {note: strippingCeilingNote, keys: ['built', 'category'], optionalKeys: [], run: runStrippingCeiling},
]

function runOrderByDate(words: CalculationWords): CalculationRun {
  const date = orderByDate({
    neededOn: words.text('needed-on'),
    leadTime: words.quantity('lead-time', 'time'),
  })
  return {results: [wordLine('order-by', date)], taken: [], note: orderByDateNote}
}

function runServiceInterval(words: CalculationWords): CalculationRun {
  const mix = pairsOf('shares', words.list('shares', 'ratio'), 'intervals', words.list('intervals', 'time'))
  const runs = words.has('run')
    ? pairsOf('run', words.list('run', 'time'), 'run-intervals', words.list('run-intervals', 'time'))
    : []
  const result = serviceInterval({
    mix: mix.map(([share, interval]) => ({share, interval})),
    runs: runs.map(([run, interval]) => ({run, interval})),
  })
  return {
    results: [
      quantityLine('interval', result.interval, 'h', 0),
      quantityLine('used', result.used, '%', 1),
      quantityLine('left', result.left, 'h', 0),
    ],
    taken: notGiven(words, [wordLine('run', 'nothing since the last service')]),
    note: serviceIntervalNote,
  }
}

function runSparesForService(words: CalculationWords): CalculationRun {
  const serviceLevel = words.optional('service-level', 'ratio') ?? percent(95)
  const use = useOf(words)
  const result = sparesForService({expectedUse: use, serviceLevel})
  return {
    results: [
      quantityLine('stock', result.stock, '', 0),
      quantityLine('served', result.served, '%', 2),
      ...(result.servedWithOneLess
        ? [quantityLine('served-with-one-less', result.servedWithOneLess, '%', 2)]
        : []),
      ...(words.has('expected-use') ? [] : [quantityLine('expected-use', use, '', 3)]),
    ],
    taken: notGiven(words, [quantityLine('service-level', serviceLevel, '%', 0)]),
    note: sparesForServiceNote,
  }
}

function useOf(words: CalculationWords): Quantity<'count'> {
  const stated = words.optional('expected-use', 'count')
  if (stated && !words.has('hours-ahead') && !words.has('mean-lives')) return stated
  if (stated)
    throw new RangeError(
      'Unexpected `expected-use=` with `hours-ahead=` or `mean-lives=`, expected one way to state the use',
    )
  const parts = pairsOf(
    'hours-ahead',
    words.list('hours-ahead', 'time'),
    'mean-lives',
    words.list('mean-lives', 'time'),
  )
  return expectedUse(parts.map(([hoursAhead, meanLife]) => ({hoursAhead, meanLife})))
}

function runStrippingCeiling(words: CalculationWords): CalculationRun {
  const given = words.text('category')
  const category = (['X', 'Y', 'Z'] as const).find((one) => one === given)
  if (!category) throw new RangeError(`Unexpected category \`${given}\`, expected \`X\`, \`Y\` or \`Z\``)
  const result = strippingCeiling({built: words.text('built'), category})
  return {
    results: [
      quantityLine('ceiling', result.ceiling, 'l', 0),
      quantityLine('test-tolerance', result.testTolerance, 'l', 0),
      wordLine('regulation', result.paragraph),
    ],
    taken: [],
    note: strippingCeilingNote,
  }
}

function pairsOf<One, Other>(
  oneName: string,
  ones: readonly One[],
  otherName: string,
  others: readonly Other[],
): readonly (readonly [One, Other])[] {
  if (ones.length !== others.length)
    throw new RangeError(
      `Unexpected ${ones.length} and ${others.length} values of \`${oneName}\` and \`${otherName}\`, expected as many of each`,
    )
  return ones.flatMap((one, index) => {
    const other = others[index]
    return other === undefined ? [] : [[one, other] as const]
  })
}
