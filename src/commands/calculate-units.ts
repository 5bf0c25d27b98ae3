import type {CalculationNote} from '../calculations/calculation-note.ts'
import {convertQuantity} from '../quantities/convert-quantity.ts'
import {roundSignificant} from '../quantities/round-decimal.ts'
import type {Unit} from '../quantities/units.ts'
import {type CalculationRun, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'

const convertNote: CalculationNote = {
  name: 'convert',
  words:
    'a number with its unit in another unit of the same kind; gauge and absolute pressure, temperature and temperature difference are kinds of their own',
  formula: [
    'SI = number·factor + offset',
    'converted = (SI − offset of the asked unit)/factor of the asked unit',
  ],
  symbols: [
    {symbol: 'SI', meaning: 'the number in the unit of the international system'},
    {
      symbol: 'factor',
      meaning:
        'what one of the unit is in that unit, by definition: inch, pound, standard gravity, bar, standard atmosphere and gallon are exact',
    },
    {
      symbol: 'offset',
      meaning: 'where the scale of the unit begins, by definition; zero but for °C, °F and gauge pressure',
    },
  ],
  sources: [
    {
      title: 'NIST SP 811 appendix B and ISO 80000, definitions of units',
      edition: '2008',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'units of one kind; twelve significant digits are printed',
}

/** Conversion of units. */
export const unitCalculations: readonly ListedCalculation[] = [
  {note: convertNote, keys: ['value', 'to'], optionalKeys: [], run: runConvert},
]

function runConvert(words: CalculationWords): CalculationRun {
  const {value, kind, from, to} = convertQuantity(words.text('value'), words.text('to'))
  return {
    results: [numberLine('converted', value, to.symbol)],
    taken: [
      wordLine('kind', kind.replaceAll('-', ' ')),
      ...[from, ...(from === to ? [] : [to])].flatMap(factorLines),
    ],
    note: convertNote,
  }
}

function factorLines(unit: Unit): readonly ResultLine[] {
  const name = unit.symbol === '' ? 'one' : unit.symbol
  return [
    numberLine(`factor of ${name}`, unit.factor, ''),
    ...(unit.offset === 0 ? [] : [numberLine(`offset of ${name}`, unit.offset, '')]),
  ]
}

/** A number with up to twelve significant digits, as long as they are not noughts. */
function numberLine(name: string, value: number, unit: string): ResultLine {
  const figure = roundSignificant(value, 12).replace('-', '−')
  return {name, value, figure: figure.includes('.') ? figure.replace(/\.?0+$/u, '') : figure, unit}
}
