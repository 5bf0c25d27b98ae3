import {compilePages} from '../compile/compile-pages.ts'
import type {ComputedValue, ComputedValues} from '../handbook-model/computed.ts'
import {notKnownWords} from '../handbook-model/computed.ts'
import {printedText} from '../quantities/print-quantity.ts'
import {compareTextSets, type PageChange} from '../technical-text/compare-texts.ts'
import {technicalText} from '../technical-text/technical-text.ts'
import {
  figureText,
  type PrintedFigure,
  type PrintedValue,
  type ValueMove,
  valueMoves,
} from '../technical-text/value-moves.ts'
import type {CheckedContent} from './run-stages.ts'

/** What differs between two contents: values as they print, and pages by their technical text. */
export interface ContentMoves {
  readonly values: readonly ValueMove[]
  readonly pages: readonly PageChange[]
}

/** Holds a content against an earlier one. Both have passed the check. */
export function compareContents(before: CheckedContent, after: CheckedContent): ContentMoves {
  return {
    values: valueMoves(printedValues(before.values), printedValues(after.values)),
    pages: compareTextSets(technicalTextsOf(before), technicalTextsOf(after)),
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

/** Every value of every pump as pages print it. */
export function printedValues(values: ComputedValues | undefined): readonly PrintedValue[] {
  return [...(values?.vessels ?? [])].flatMap(([vessel, positions]) =>
    [...positions].flatMap(([position, ofPump]) =>
      [...ofPump.values()].map(
        (value): PrintedValue => ({
          value: value.id,
          title: value.title,
          vessel,
          position,
          printed: printedValue(value),
        }),
      ),
    ),
  )
}

function printedValue({result, condition}: ComputedValue): PrintedFigure {
  if (result.kind === 'not-known') return {figure: notKnownWords, condition: result.missing.join('; ')}
  const figure = [printedText(result.printed), ...(result.more ?? [])].join(' · ')
  return condition ? {figure, condition} : {figure}
}

/** Technical texts of all pages of all vessels by page id. */
export function technicalTextsOf({content, values}: CheckedContent): ReadonlyMap<string, string> {
  if (!content || !values) return new Map()
  return new Map(
    [...content.vessels.keys()].flatMap((id) => {
      const {vessel, pages} = compilePages(content, values, id)
      return pages.map((page): [string, string] => [page.head.id, technicalText(page, vessel.name)])
    }),
  )
}
