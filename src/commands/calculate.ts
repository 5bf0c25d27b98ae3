import {nearestWord} from '../check/nearest-word.ts'
import {printedText} from '../quantities/print-quantity.ts'
import {listedCalculations} from './calculate-list.ts'
import type {CalculationRun} from './calculate-result.ts'
import {calculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import type {Outcome} from './outcome.ts'

/** `sheetanchor calculate NAME key=value …`: one calculation with its formula, inputs, source and status; without a name, the list. */
export function runCalculate(words: readonly string[], json: boolean): Outcome {
  const [name, ...rest] = words
  if (name === undefined || name === '--help') return {exitStatus: 0, out: listText(json), err: ''}
  const calculation = listedCalculations.find((one) => one.note.name === name)
  if (!calculation) {
    const names = listedCalculations.map((one) => one.note.name)
    return used(
      `Unexpected calculation \`${name}\`, expected \`${nearestWord(name, names)}\` or another of ${names.join(', ')}`,
    )
  }
  if (rest.includes('--help')) return {exitStatus: 0, out: listLine(calculation), err: ''}
  const refusal = refusalOf(rest, [...calculation.keys, ...calculation.optionalKeys])
  if (refusal !== undefined) return used(refusal)
  const inputs = new Map(rest.map((word) => [keyOf(word), word.slice(word.indexOf('=') + 1)]))
  try {
    const run = calculation.run(calculationWords(inputs))
    return {exitStatus: 0, out: json ? jsonText(inputs, run) : resultText(inputs, run), err: ''}
  } catch (error) {
    if (error instanceof RangeError) return used(error.message)
    throw error
  }
}

function keyOf(word: string): string {
  return word.split('=', 1)[0] ?? ''
}

/** Why words cannot be used: a key that is not known, or one given twice. */
function refusalOf(words: readonly string[], known: readonly string[]): string | undefined {
  const seen = new Set<string>()
  for (const word of words) {
    const key = keyOf(word)
    if (!word.includes('=') || !known.includes(key))
      return `Unexpected \`${word}\`, expected \`${nearestWord(key, known)}=…\` or another of ${known.join(', ')}`
    if (seen.has(key)) return `Unexpected second \`${word}\`, expected \`${key}=\` once`
    seen.add(key)
  }
  return undefined
}

function used(reason: string): Outcome {
  return {exitStatus: 2, out: '', err: `${reason}\n`}
}

function listText(json: boolean): string {
  if (json)
    return `${JSON.stringify(
      listedCalculations.map((one) => ({
        name: one.note.name,
        words: one.note.words,
        keys: one.keys,
        optional: one.optionalKeys,
      })),
      null,
      2,
    )}\n`
  return listedCalculations.map(listLine).join('')
}

function listLine({note, keys, optionalKeys}: ListedCalculation): string {
  const asked = [...keys.map((key) => `${key}=`), ...optionalKeys.map((key) => `[${key}=]`)]
  return `${note.name} ${asked.join(' ')}\n    ${note.words}\n`
}

function resultText(inputs: ReadonlyMap<string, string>, {results, taken, note}: CalculationRun): string {
  const notGiven = taken.map((one) => `    ${one.name} = ${printedText(one)}`)
  return [
    ...results.map((one) => `${one.name} = ${printedText(one)}`),
    'formula:',
    ...note.formula.map((one) => `    ${one}`),
    ...note.symbols.map(({symbol, meaning}) => `        ${symbol}: ${meaning}`),
    'inputs:',
    ...[...inputs].map(([key, value]) => `    ${key} = ${value}`),
    ...(notGiven.length > 0 ? ['taken where nothing was given:', ...notGiven] : []),
    'source:',
    ...note.sources.map(
      (one) => `    ${one.title}, edition ${one.edition}; known: ${one.howKnown}; status ${one.status}`,
    ),
    `valid for: ${note.validFor}`,
    'for study: sheets compute their own figures from content and take none from here',
    '',
  ].join('\n')
}

/** The object for machines; its inputs hold what was given and what was taken where nothing was given. */
function jsonText(inputs: ReadonlyMap<string, string>, {results, taken, note}: CalculationRun): string {
  return `${JSON.stringify(
    {
      name: note.name,
      use: 'for study',
      inputs: {
        ...Object.fromEntries(taken.map((one) => [one.name, printedText(one)])),
        ...Object.fromEntries(inputs),
      },
      results: Object.fromEntries(
        results.map((one) => [one.name, {value: one.value, unit: one.unit, printed: printedText(one)}]),
      ),
      formula: note.formula,
      symbols: Object.fromEntries(note.symbols.map(({symbol, meaning}) => [symbol, meaning])),
      source: note.sources,
      status: [...new Set(note.sources.map((one) => one.status))].join(', '),
    },
    null,
    2,
  )}\n`
}
