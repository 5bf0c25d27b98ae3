import {nearestWord} from '../check/nearest-word.ts'
import {printedText} from '../quantities/print-quantity.ts'
import {type ListedCalculation, listedCalculations, type ResultLine} from './calculate-list.ts'
import {calculationWords} from './calculate-words.ts'
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
  const inputs = new Map(
    rest.map((word): [string, string] => [word.split('=')[0] ?? '', word.slice(word.indexOf('=') + 1)]),
  )
  const known = [...calculation.keys, ...calculation.optionalKeys]
  for (const word of rest) {
    const [key = ''] = word.split('=')
    if (!word.includes('=') || !known.includes(key))
      return used(
        `Unexpected \`${word}\`, expected \`${nearestWord(key, known)}=…\` or another of ${known.join(', ')}`,
      )
  }
  try {
    const results = calculation.run(calculationWords(inputs))
    return {
      exitStatus: 0,
      out: json ? jsonText(calculation, inputs, results) : resultText(calculation, inputs, results),
      err: '',
    }
  } catch (error) {
    if (error instanceof RangeError) return used(error.message)
    throw error
  }
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
  return listedCalculations
    .map(
      (one) =>
        `${one.note.name} ${one.keys.map((key) => `${key}=`).join(' ')} ${one.optionalKeys.map((key) => `[${key}=]`).join(' ')}\n    ${one.note.words}\n`,
    )
    .join('')
}

function statusText(calculation: ListedCalculation): string {
  return calculation.note.sources
    .map((one) => `${one.title}, edition ${one.edition}; known: ${one.howKnown}; status ${one.status}`)
    .join('\n    ')
}

function resultText(
  calculation: ListedCalculation,
  inputs: ReadonlyMap<string, string>,
  results: readonly ResultLine[],
): string {
  const {note} = calculation
  return [
    ...results.map((one) => `${one.name} = ${printedText(one)}`),
    'formula:',
    ...note.formula.map((one) => `    ${one}`),
    'inputs:',
    ...[...inputs].map(([key, value]) => `    ${key} = ${value}`),
    'source:',
    `    ${statusText(calculation)}`,
    `valid for: ${note.validFor}`,
    '',
  ].join('\n')
}

function jsonText(
  calculation: ListedCalculation,
  inputs: ReadonlyMap<string, string>,
  results: readonly ResultLine[],
): string {
  const {note} = calculation
  return `${JSON.stringify(
    {
      name: note.name,
      inputs: Object.fromEntries(inputs),
      results: Object.fromEntries(
        results.map((one) => [one.name, {value: one.value, unit: one.unit, printed: printedText(one)}]),
      ),
      formula: note.formula,
      source: note.sources,
      status: note.sources.map((one) => one.status).join(', '),
    },
    null,
    2,
  )}\n`
}
