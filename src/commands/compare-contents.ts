import type {ComputedValue, ComputedValues} from '../handbook-model/computed.ts'
import {notKnownWords} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import {printedText} from '../quantities/print-quantity.ts'
import {compareTextSets, type PageChange} from '../technical-text/compare-texts.ts'
import {type CheckedContent, stateVessel} from './run-stages.ts'

/** A value that prints otherwise, on the pumps of a vessel where it does so in the same way; one side is missing where it came or went. */
export interface ValueMove {
  readonly value: string
  readonly title: string
  readonly vessel: string
  readonly positions: readonly string[]
  readonly before?: PrintedFigure
  readonly after?: PrintedFigure
}

/** A value as pages print it. */
export interface PrintedFigure {
  readonly figure: string
  readonly condition?: string
}

/** What differs between two contents: values as they print, and pages by their technical text. */
export interface ContentMoves {
  readonly values: readonly ValueMove[]
  readonly pages: readonly PageChange[]
}

/** Holds a content against an earlier one. Both have passed the check. */
export function compareContents(before: CheckedContent, after: CheckedContent): ContentMoves {
  return {
    values: movedValues(before.values, after.values),
    pages: compareTextSets(textsOf(before), textsOf(after)),
  }
}

/** The moves for people: values first, then pages, each line with how many pumps it stands for. */
export function movesText({values, pages}: ContentMoves): string {
  const pumps = new Set(values.flatMap((move) => move.positions.map((one) => `${move.vessel}/${one}`)))
  const valueLines = values.map(({value, vessel, positions, before, after}) => {
    const where =
      positions.length === 1 ? `${vessel}/${positions.join('')}` : `${positions.length} pumps of ${vessel}`
    const same = before?.condition === after?.condition ? before?.condition : undefined
    const side = (one: PrintedFigure | undefined): string =>
      one === undefined ? 'not there' : same === undefined ? figureText(one) : one.figure
    const condition = same === undefined ? '' : `, ${same}`
    return `  ${value}: ${side(before)} → ${side(after)}${condition} (${where})`
  })
  const pageLines = pages.map((page) =>
    page.kind === 'changed'
      ? `  ${page.page}: ${page.lines.length} ${page.lines.length === 1 ? 'line' : 'lines'}`
      : `  ${page.page}: ${page.kind}`,
  )
  return [
    `${values.length} values on ${pumps.size} pumps moved`,
    ...valueLines,
    `${pages.length} pages moved`,
    ...pageLines,
    '',
  ].join('\n')
}

function movedValues(
  before: ComputedValues | undefined,
  after: ComputedValues | undefined,
): readonly ValueMove[] {
  const old = printedValues(before)
  const now = printedValues(after)
  const moves = new Map<string, {readonly move: ValueMove; readonly positions: string[]}>()
  for (const key of [...new Set([...old.keys(), ...now.keys()])]) {
    const [from, to] = [old.get(key), now.get(key)]
    const some = to ?? from
    const [was, is] = [from, to].map((one) => one && figureText(one.printed))
    if (!some || was === is) continue
    const {value, title, vessel, position} = some
    const group = [vessel, value, was, is].join('\n')
    const known = moves.get(group)
    if (known) known.positions.push(position)
    else {
      const positions = [position]
      const move: ValueMove = {
        value,
        title,
        vessel,
        positions,
        ...(from ? {before: from.printed} : {}),
        ...(to ? {after: to.printed} : {}),
      }
      moves.set(group, {move, positions})
    }
  }
  return [...moves.values()]
    .map(({move}) => move)
    .sort((a, b) => (`${a.vessel} ${a.value}` < `${b.vessel} ${b.value}` ? -1 : 1))
}

interface PrintedValue {
  readonly value: string
  readonly title: string
  readonly vessel: string
  readonly position: string
  readonly printed: PrintedFigure
}

function printedValues(values: ComputedValues | undefined): ReadonlyMap<string, PrintedValue> {
  const all = [...(values?.vessels ?? [])].flatMap(([vessel, positions]) =>
    [...positions].flatMap(([position, ofPump]) =>
      [...ofPump.values()].map((value): [string, PrintedValue] => [
        `${vessel} ${position} ${value.id}`,
        {value: value.id, title: value.title, vessel, position, printed: printedValue(value)},
      ]),
    ),
  )
  return new Map(all)
}

function printedValue({result, condition}: ComputedValue): PrintedFigure {
  if (result.kind === 'not-known') return {figure: notKnownWords, condition: result.missing.join('; ')}
  const figure = [printedText(result.printed), ...(result.more ?? [])].join(' · ')
  return condition ? {figure, condition} : {figure}
}

function figureText({figure, condition}: PrintedFigure): string {
  return condition === undefined ? figure : `${figure} (${condition})`
}

function textsOf({content, values, ledgers, history}: CheckedContent): ReadonlyMap<string, string> {
  if (!content || !values) return new Map()
  return new Map(
    vesselsOf(content).flatMap((vessel) => [
      ...stateVessel(content, values, vessel, ledgers, false, history).technicalTexts,
    ]),
  )
}

function vesselsOf(content: Content): readonly string[] {
  return [...content.vessels.keys()]
}
