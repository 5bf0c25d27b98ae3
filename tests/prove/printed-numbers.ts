import {readFileSync} from 'node:fs'
import {dirname, join, normalize} from 'node:path'
import {filesBelow} from '../offline/odd-folder.ts'
import {pagesBeside} from './pages-beside.ts'
import type {Inputs, PocketCalculation} from './pocket-calculation.ts'
import {calculationsOf} from './pocket-calculator.ts'
import {readFigure} from './read-figure.ts'

/** A figure on a page, and where its explanation stands. */
export interface PrintedNumber {
  readonly page: string
  readonly printed: string
  /** Path of the page of the explanation, and its element. */
  readonly path: string
  readonly element: string
}

/** A line of the table of an explanation. */
export interface ExplanationRow {
  readonly symbol: string
  readonly printed: string
  readonly origin: string
}

/** An explanation as a reader finds it. */
export interface Explanation {
  readonly id: string
  readonly printed: string
  readonly formula: readonly string[]
  readonly rounding: string
  readonly rows: readonly ExplanationRow[]
  /** The sources with how the value is known and the place in them. */
  readonly origin: string
}

/** The pages of a published handbook as a reader meets them. */
export interface ReadHandbook {
  /** Every figure with a way to its explanation. */
  readonly numbers: readonly PrintedNumber[]
  /** Explanations by path of their page and element. */
  readonly explanations: ReadonlyMap<string, ReadonlyMap<string, Explanation>>
}

/** Reads every page of a published handbook. */
export function readHandbook(folder: string): ReadHandbook {
  const explanations = new Map<string, ReadonlyMap<string, Explanation>>()
  const numbers = filesBelow(folder)
    .filter((path) => path.endsWith('.html'))
    .flatMap((page) => {
      const html = readFileSync(join(folder, page), 'utf8')
      const own = readExplanations(html)
      if (own.size > 0) explanations.set(page, own)
      return [
        ...numbersOn(page, html),
        ...[...own].map(([element, {printed}]) => ({page, printed, path: page, element})),
      ]
    })
  return {numbers, explanations}
}

/** Plates, figures in sentences and cells, and rows of tables whose title leads to the explanation. */
function numbersOn(page: string, html: string): readonly PrintedNumber[] {
  const number = (printed: string, href: string): PrintedNumber => {
    const [path = '', element = ''] = href.split('#')
    return {page, printed: textOf(printed), path: normalize(join(dirname(page), path)), element}
  }
  const plates = html
    .split('<div class="plate')
    .slice(1)
    .flatMap((part): readonly PrintedNumber[] => {
      const printed = /<p class="plate-figure">(.*?)<\/p>/su.exec(part)?.[1]
      const href = /<p class="plate-why"><a href="([^"]+)"/u.exec(part)?.[1]
      return printed === undefined || href === undefined ? [] : [number(printed, href)]
    })
  const inline =
    /<a(?: href="(?<before>[^"]+)")? class="figure-inline[^"]*"(?: href="(?<behind>[^"]+)")?>(?<printed>.*?)<\/a>/gsu
  const rows =
    /<tr><th scope="row"><a href="(?<behind>[^"]+#value--[^"]+)">[^<]*<\/a><\/th><td class="num"><b[^>]*>(?<printed>.*?)<\/b>/gsu
  return [
    ...plates,
    ...[...html.matchAll(inline), ...html.matchAll(rows)].map(({groups}) =>
      number(groups?.['printed'] ?? '', groups?.['before'] ?? groups?.['behind'] ?? ''),
    ),
  ]
}

/** What is wrong with the way from a figure to its explanation, and with that; undefined when a reader gets the printed figure from it. */
export function faultOf(number: PrintedNumber, {explanations}: ReadHandbook): string | undefined {
  const at = `${number.page}: ${number.printed} of ${number.element}`
  const page = explanations.get(number.path)
  const explanation = page?.get(number.element)
  if (!page || !explanation) return `${at} has no explanation at ${number.path}`
  const same =
    explanation.printed === number.printed ||
    (explanation.printed.startsWith('NOT KNOWN') && number.printed.startsWith('NOT KNOWN'))
  if (!same) return `${at} is explained as ${explanation.printed}`
  const fault = faultOfExplanation(explanation, pagesBeside(number.path, explanations))
  return fault === undefined ? undefined : `${at}: ${fault}`
}

/** How a value may be known that a drawing, a book or a rule states. */
const known = /(?:as built|measured|calculated|published|assumed|common practice, no source)/u

/** What keeps a reader from the printed figure. Other explanations of its page are looked up where it names them. */
export function faultOfExplanation(
  explanation: Explanation,
  page: ReadonlyMap<string, Explanation>,
): string | undefined {
  const {id, printed, formula, rounding, rows, origin} = explanation
  if (printed.startsWith('NOT KNOWN')) return undefined
  if (rounding === '') return 'says nothing of its rounding'
  if (formula.length === 0) {
    if (!/\[\d+\]/u.test(origin)) return 'is stated and names no source'
    return rounding === 'as stated by the source' && !known.test(origin)
      ? 'is stated and does not say how it is known'
      : undefined
  }
  const calculation = calculationsOf(id).find((one) => one.formula.join('\n') === formula.join('\n'))
  if (!calculation) return `has lines that the pocket calculator does not know: ${formula.join(' | ')}`
  const doubled = rows.find(({symbol}, index) => rows.findIndex((one) => one.symbol === symbol) < index)
  if (doubled) return `has two lines for \`${doubled.symbol}\``
  try {
    return faultOfRows(explanation, calculation, page) ?? faultOfFigures(explanation, calculation)
  } catch (error) {
    return error instanceof Error ? error.message : String(error)
  }
}

/** Intermediate results are recomputed; results of other values are those of the explanation they name. */
function faultOfRows(
  {rows}: Explanation,
  calculation: PocketCalculation,
  page: ReadonlyMap<string, Explanation>,
): string | undefined {
  for (const {symbol, printed, origin} of rows) {
    const at = `\`${symbol}\` of ${printed}`
    const {value, step} = readFigure(printed)
    if (origin === 'intermediate result') {
      const recompute = calculation.steps?.[symbol]
      if (!recompute) return `${at} is an intermediate result that the pocket calculator does not know`
      const [exact] = recomputed(rows, (of) => [recompute(of)])
      if (!exact || !(Math.abs(value - exact.value) <= step / 2 + exact.slack))
        return `${at} is ${exact?.value} by its formula`
    }
    const [, before] = /^computed: (\S+)$/u.exec(origin) ?? []
    if (before !== undefined) {
      const other = [...page.values()].find((one) => one.id === before)
      if (!other) return `${at} is computed as \`${before}\`, which no page beside it explains`
      const result = readFigure(other.printed)
      if (Math.abs(value - result.value) > result.step + step / 2)
        return `${at} is ${other.printed} at \`${before}\``
    }
    const [, there] = /^explained at (\S+)$/u.exec(origin) ?? []
    if (there !== undefined) {
      const other = [...page.values()]
        .find((one) => one.id === there)
        ?.rows.find((one) => one.symbol === symbol)
      if (!other || readFigure(other.printed).value !== value) return `${at} is not that of \`${there}\``
    }
  }
  return undefined
}

/**
 * The printed figures against the recomputed ones.
 *
 * A figure may lie beside the recomputed one by half a unit of its last digit, a tie on the even side; by less than a
 * whole one to the side to which the page says that it was rounded; and by what half a unit of the last digit of
 * each rounded input comes to. Data are exact.
 */
function faultOfFigures(
  {printed, rounding, rows}: Explanation,
  {result}: PocketCalculation,
): string | undefined {
  const exact = recomputed(rows, result)
  const unit = /\d\s*(\D*)$/u.exec(printed)?.[1]?.trim() ?? ''
  const figures = printed.match(/[−-]?\d[\d.]*/gu) ?? []
  if (figures.length !== exact.length) return `prints ${figures.length} figures for ${exact.length}`
  for (const [index, {value, slack}] of exact.entries()) {
    const figure = readFigure(`${figures[index] ?? ''} ${unit}`)
    const said = roundingOf(rounding, value)
    if (!said) return `is rounded in a way that nobody can repeat: ${rounding}`
    if (said.decimals !== undefined && said.decimals !== figure.decimals)
      return `prints ${figure.decimals} decimals and says "${rounding}"`
    const off = (figure.value - value) / figure.step
    const loose = slack / figure.step
    const [least, most] = said.bounds
    const tie = said.toEven && Math.abs(Math.abs(off) - 0.5) < 1e-6 && loose < 1e-6
    if (tie ? !/[02468]$/u.test(figures[index] ?? '') : off < least - loose || off > most + loose)
      return `\`${figures[index] ?? ''}\` is ${value} by its own explanation, in base units`
  }
  return undefined
}

/** How far a printed figure may lie from the exact one, in units of its last digit, its decimals, and where a tie goes. */
interface Rounding {
  readonly bounds: readonly [least: number, most: number]
  readonly toEven: boolean
  readonly decimals?: number
}

function roundingOf(words: string, value: number): Rounding | undefined {
  const half = [-0.5, 0.5] as const
  const whole = 1 - 1e-6
  if (words === 'not rounded') return {bounds: [0, 0], toEven: false}
  if (/^(?:each )?to a whole N·m from 10 N·m up, to 0\.1 N·m below, rounded once, half to even$/u.test(words))
    return {bounds: half, toEven: true, decimals: value < 10 ? 1 : 0}
  const [, way, count, tenth] =
    /^(to|up to|down to) (?:(\d) decimals? of|(0\.1) h|a whole |whole )/u.exec(words) ?? []
  if (way === undefined) return undefined
  const bounds = way === 'to' ? half : way === 'up to' ? ([0, whole] as const) : ([-whole, 0] as const)
  return {
    bounds,
    toEven: /half to even$/u.test(words),
    decimals: count === undefined ? (tenth === undefined ? 0 : 1) : Number(count),
  }
}

interface Recomputed {
  readonly value: number
  /** What the rounding of the inputs may have moved it by, and the noise of binary numbers. */
  readonly slack: number
}

/** Recomputes figures, and once more for each rounded input, moved by half a unit of its last digit to either side. */
function recomputed(
  rows: readonly ExplanationRow[],
  compute: (of: Inputs) => readonly number[],
): readonly Recomputed[] {
  const read = new Map(rows.map(({symbol, printed}) => [symbol, readFigure(printed)]))
  const asked = new Set<string>()
  const taken =
    (moved: string, by: number): Inputs =>
    (symbol) => {
      const figure = read.get(symbol)
      if (!figure) throw new Error(`gives no \`${symbol}\``)
      asked.add(symbol)
      return figure.value + (symbol === moved ? by : 0)
    }
  const exact = compute(taken('', 0))
  const slacks = exact.map((value) => 1e-12 * Math.abs(value))
  for (const {symbol, origin} of rows) {
    if (!asked.has(symbol) || !/^(?:intermediate result|computed: |explained at )/u.test(origin)) continue
    const half = (read.get(symbol)?.step ?? 0) / 2
    const [up, down] = [compute(taken(symbol, half)), compute(taken(symbol, -half))]
    for (const [index, value] of exact.entries()) {
      const moves = [up[index] ?? value, down[index] ?? value].map((one) => Math.abs(one - value))
      slacks[index] = (slacks[index] ?? 0) + Math.max(...moves)
    }
  }
  return exact.map((value, index) => ({value, slack: slacks[index] ?? 0}))
}

function readExplanations(html: string): ReadonlyMap<string, Explanation> {
  const rows =
    /<tr[^>]*><th scope="row">(?<symbol>.*?)<\/th><td>.*?<\/td><td><b>(?<printed>.*?)<\/b><\/td><td>(?<origin>.*?)<\/td>/gsu
  return new Map(
    html
      .split('<section class="explained" id="')
      .slice(1)
      .map((whole): [string, Explanation] => {
        const part = whole.split('</section>')[0] ?? ''
        const element = part.slice(0, part.indexOf('"'))
        const [, id = '', rounding = ''] =
          /<p class="hint">([a-z0-9.-]+) · (.*?)(?: · <span|<\/p>)/su.exec(part) ?? []
        const [, formula = ''] = /<ul class="formula">(.*?)<\/ul>/su.exec(part) ?? []
        return [
          element,
          {
            id,
            rounding: textOf(rounding),
            printed: textOf(/<p class="plate-figure">(.*?)<\/p>/su.exec(part)?.[1] ?? ''),
            formula: [...formula.matchAll(/<li>(.*?)<\/li>/gsu)].map(([, line = '']) => textOf(line)),
            origin: textOf(/<p class="hint sources">(.*?)<\/p>/su.exec(part)?.[1] ?? ''),
            rows: [...part.matchAll(rows)].map(({groups}) => ({
              symbol: textOf(groups?.['symbol'] ?? ''),
              printed: textOf(groups?.['printed'] ?? ''),
              origin: textOf(groups?.['origin'] ?? ''),
            })),
          },
        ]
      }),
  )
}

/** Words of a piece of HTML as a reader sees them. */
function textOf(html: string): string {
  return html
    .replace(/<[^>]+>/gu, '')
    .replace(/&#x([0-9A-Fa-f]+);/gu, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)))
    .replaceAll('&amp;', '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replace(/\s+/gu, ' ')
    .trim()
}
