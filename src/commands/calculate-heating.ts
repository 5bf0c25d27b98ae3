import {
  bearingGrowth,
  bearingGrowthNote,
  bearingHeating,
  bearingHeatingNote,
  bearingSteelExpansion,
  highestBearingTemperatures,
} from '../calculations/heating/bearing-heating.ts'
import {degreesCelsius} from '../quantities/named-units.ts'
import type {Quantity} from '../quantities/quantity.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import {choiceWord} from './choice-word.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

/** Heating of bearings for fitting. */
export const heatingCalculations: readonly ListedCalculation[] = [
  {
    note: bearingGrowthNote,
    keys: ['bore', 'temperature'],
    optionalKeys: ['ambient', 'expansion'],
    run: runBearingGrowth,
  },
  {
    note: bearingHeatingNote,
    keys: ['bore', 'growth'],
    optionalKeys: ['ambient', 'expansion', 'bearing', 'highest'],
    run: runBearingHeating,
  },
]

interface Surroundings {
  readonly ambient: Quantity<'temperature'>
  readonly expansion: Quantity<'linear-expansion'>
}

function surroundingsOf(words: CalculationWords): Surroundings {
  return {
    ambient: words.optional('ambient', 'temperature') ?? degreesCelsius(20),
    expansion: words.optional('expansion', 'linear-expansion') ?? bearingSteelExpansion,
  }
}

function surroundingLines({ambient, expansion}: Surroundings): readonly ResultLine[] {
  return [quantityLine('ambient', ambient, '°C', 1), quantityLine('expansion', expansion, 'µm/(m·K)', 3)]
}

function runBearingGrowth(words: CalculationWords): CalculationRun {
  const surroundings = surroundingsOf(words)
  const growth = bearingGrowth({
    ...surroundings,
    bore: words.quantity('bore', 'length'),
    temperature: words.quantity('temperature', 'temperature'),
  })
  return {
    results: [quantityLine('growth', growth, 'mm', 4)],
    taken: notGiven(words, surroundingLines(surroundings)),
    note: bearingGrowthNote,
  }
}

function runBearingHeating(words: CalculationWords): CalculationRun {
  const surroundings = surroundingsOf(words)
  const bearing = choiceWord(words, 'bearing', ['open', 'sealed'])
  const highest = words.optional('highest', 'temperature') ?? highestBearingTemperatures[bearing]
  const result = bearingHeating({
    ...surroundings,
    bore: words.quantity('bore', 'length'),
    growth: words.quantity('growth', 'length'),
    highest,
  })
  return {
    results: [
      quantityLine('temperature', result.temperature, '°C', 1),
      quantityLine('rise', result.rise, 'K', 1),
    ],
    taken: notGiven(words, [
      ...surroundingLines(surroundings),
      wordLine('bearing', bearing),
      quantityLine('highest', highest, '°C', 1),
    ]),
    note: bearingHeatingNote,
  }
}
