import {
  type DifferenceKind,
  judgeReading,
  judgeReadingNote,
  type ReadingLimit,
} from '../calculations/verdicts/judge-reading.ts'
import {parseQuantity} from '../quantities/parse-quantity.ts'
import {printFigure} from '../quantities/print-quantity.ts'
import type {Quantity, QuantityKind} from '../quantities/quantity.ts'
import {unitOf, units} from '../quantities/units.ts'
import {type CalculationRun, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import {choiceWord} from './choice-word.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

/** The verdict on a reading. */
export const verdictCalculations: readonly ListedCalculation[] = [
  {
    note: judgeReadingNote,
    keys: ['reading'],
    optionalKeys: ['not-above', 'above', 'not-below', 'below', 'uncertainty', 'limit-form', 'gas-flow'],
    run: runJudgeReading,
  },
]

const kinds: readonly QuantityKind[] = [...new Set(units.map((unit) => unit.kind))]

/** Kind and unit are those in which the reading is written; limits are of the same kind, the uncertainty is a difference of it. */
function runJudgeReading(words: CalculationWords): CalculationRun {
  const parsed = parseQuantity(words.text('reading'), kinds)
  if (!parsed.ok) throw new RangeError(`${parsed.reason} for \`reading\``)
  const {quantity, unit} = parsed.written
  const gasFlow = choiceWord(words, 'gas-flow', ['not asked', 'confirmed', 'not confirmed'])
  const uncertainty = words.optional('uncertainty', differenceOf(quantity.kind))
  const result = judgeReading({
    reading: quantity,
    uncertainty,
    limits: limitsOf(words, quantity.kind),
    gasFlow: gasFlow === 'not asked' ? undefined : gasFlow,
  })
  return {
    results: [
      wordLine('verdict', result.verdict),
      ...(result.decidedBy ? [wordLine('decided-by', result.decidedBy.side)] : []),
      ...(result.room ? [roomLine(result.room, differenceUnit(unit))] : []),
    ],
    taken: notGiven(words, [
      ...(words.has('not-above') ? [wordLine('above', choiceWord(words, 'above', actions))] : []),
      ...(words.has('not-below') ? [wordLine('below', choiceWord(words, 'below', actions))] : []),
      wordLine('uncertainty', 'not known'),
      wordLine('limit-form', choiceWord(words, 'limit-form', limitForms)),
      wordLine('gas-flow', gasFlow),
    ]),
    note: judgeReadingNote,
  }
}

const actions = ['RENEW', 'STOP'] as const
const limitForms = ['plain', 'holds the uncertainty'] as const

function limitsOf(words: CalculationWords, kind: QuantityKind): readonly ReadingLimit<QuantityKind>[] {
  const holdsUncertainty = choiceWord(words, 'limit-form', limitForms) === 'holds the uncertainty'
  const limits: readonly ReadingLimit<QuantityKind>[] = [
    {
      side: 'not-above',
      value: words.optional('not-above', kind),
      outside: choiceWord(words, 'above', actions),
      holdsUncertainty,
    },
    {
      side: 'not-below',
      value: words.optional('not-below', kind),
      outside: choiceWord(words, 'below', actions),
      holdsUncertainty,
    },
  ]
  return limits.filter((limit) => words.has(limit.side))
}

function differenceOf(kind: QuantityKind): DifferenceKind<QuantityKind> {
  if (kind === 'temperature') return 'temperature-difference'
  return kind === 'gauge-pressure' || kind === 'absolute-pressure' ? 'pressure-difference' : kind
}

function roomLine(room: Quantity<DifferenceKind<QuantityKind>>, symbol: string): ResultLine {
  const value = room.si / unitOf(room.kind, symbol).factor
  return {name: 'room', value, figure: printFigure(value, 4), unit: symbol}
}

function differenceUnit(unit: string): string {
  return unit === '°C' ? 'K' : unit.replace(/\((?:g|a)\)$/u, '')
}
