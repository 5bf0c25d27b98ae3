import {readdirSync, readFileSync} from 'node:fs'
import {dirname, join, normalize} from 'node:path'
import {calculationOf, figureOf, orderOf} from './pocket-calculator.ts'

/** A figure on a page, and where its explanation stands. */
export interface PrintedNumber {
  readonly page: string
  readonly printed: string
  /** Path of the page of the explanation, and its element. */
  readonly path: string
  readonly element: string
}

/** An explanation as a reader finds it. */
interface Explanation {
  readonly id: string
  readonly printed: string
  readonly formula: boolean
  readonly rounding: string
  readonly rows: readonly (readonly [symbol: string, printed: string])[]
  readonly origin: string
}

/** Every figure with a way to its explanation on the procedure pages of the pumps of a handbook. */
export function printedNumbers(vesselFolder: string): readonly PrintedNumber[] {
  const pumps = readdirSync(join(vesselFolder, 'p')).sort()
  return pumps.flatMap((pump) =>
    readdirSync(join(vesselFolder, 'p', pump))
      .filter((name) => name.endsWith('.html') && !/^(?:index|values|symptoms|job-.*)\.html$/u.test(name))
      .sort()
      .flatMap((name) => numbersOn(vesselFolder, `p/${pump}/${name}`)),
  )
}

function numbersOn(folder: string, page: string): readonly PrintedNumber[] {
  const html = readFileSync(join(folder, page), 'utf8')
  const address = (href: string): Pick<PrintedNumber, 'path' | 'element'> => {
    const [path = '', element = ''] = href.split('#')
    return {path: normalize(join(dirname(page), path)), element}
  }
  const plates = html
    .split('<div class="plate')
    .slice(1)
    .flatMap((part): readonly PrintedNumber[] => {
      const printed = /<p class="plate-figure">(.*?)<\/p>/su.exec(part)?.[1]
      const href = /<p class="plate-why"><a href="([^"]+)"/u.exec(part)?.[1]
      return printed === undefined || href === undefined
        ? []
        : [{page, printed: textOf(printed), ...address(href)}]
    })
  const inline = [...html.matchAll(/<a class="figure-inline" href="([^"]+)">(.*?)<\/a>/gsu)].map(
    ([, href = '', printed = '']): PrintedNumber => ({page, printed: textOf(printed), ...address(href)}),
  )
  return [...plates, ...inline]
}

/**
 * What is wrong with a figure and its explanation; undefined when a reader gets the printed figure from it.
 *
 * The printed figure may lie beside the recomputed one by half a unit of its last digit, by a whole one where the
 * rounding goes one way, and by what five digits of an intermediate result leave.
 */
export function faultOf(vesselFolder: string, number: PrintedNumber): string | undefined {
  const at = `${number.page}: ${number.printed} of ${number.element}`
  const explanation = explanationAt(vesselFolder, number)
  if (!explanation) return `${at} has no explanation at ${number.path}`
  if (number.printed.startsWith('NOT KNOWN'))
    return explanation.printed.startsWith('NOT KNOWN')
      ? undefined
      : `${at} is explained as ${explanation.printed}`
  if (explanation.printed !== number.printed) return `${at} is explained as ${explanation.printed}`
  if (explanation.rounding === '') return `${at} says nothing of its rounding`
  if (!explanation.formula)
    return explanation.origin === '' ? `${at} is stated and names no source` : undefined
  if (/\.order$/u.test(explanation.id)) {
    const bolts = number.printed.split(' ').length
    return orderOf(bolts).join(' ') === number.printed ? undefined : `${at} is not the order of its rule`
  }
  const calculation = calculationOf(explanation.id)
  if (!calculation) return `${at} has a formula that the pocket calculator does not know: ${explanation.id}`
  const asked = (symbol: string): number => {
    const row = explanation.rows.findLast(([one]) => one === symbol)
    if (!row) throw new Error(`no input \`${symbol}\``)
    return figureOf(row[1])
  }
  try {
    return faultOfFigures(at, explanation, calculation(asked))
  } catch (error) {
    return `${at}: ${error instanceof Error ? error.message : String(error)}`
  }
}

function faultOfFigures(
  at: string,
  {printed, rounding}: Explanation,
  recomputed: readonly number[],
): string | undefined {
  const unit = /\d\s*(\D*)$/u.exec(printed)?.[1]?.trim() ?? ''
  const figures = printed.match(/[−-]?\d[\d.]*/gu)?.slice(0, recomputed.length) ?? []
  if (figures.length < recomputed.length)
    return `${at} prints ${figures.length} figures of ${recomputed.length}`
  for (const [index, exact] of recomputed.entries()) {
    const figure = figures[index] ?? ''
    const digits = figure.split('.')[1]?.length ?? 0
    const found = figureOf(`${figure} ${unit}`)
    const step = Math.abs(figureOf(`${(10 ** -digits).toFixed(digits)} ${unit}`))
    const [up, down] = [/^(?:up|.*· up) /u.test(rounding), /^(?:down|.*· down) /u.test(rounding)]
    const slack = 1e-4 * Math.abs(exact)
    const [least, most] = up
      ? [exact - slack, exact + step + slack]
      : down
        ? [exact - step - slack, exact + slack]
        : [exact - step / 2 - slack, exact + step / 2 + slack]
    if (found < least || found > most) return `${at} is ${exact} by its own explanation, in base units`
  }
  return undefined
}

const pages = new Map<string, ReadonlyMap<string, Explanation>>()

function explanationAt(folder: string, {path, element}: PrintedNumber): Explanation | undefined {
  const file = join(folder, path)
  const known = pages.get(file) ?? readExplanations(readFileSync(file, 'utf8'))
  pages.set(file, known)
  return known.get(element)
}

function readExplanations(html: string): ReadonlyMap<string, Explanation> {
  return new Map(
    html
      .split('<section class="explained" id="')
      .slice(1)
      .map((part): [string, Explanation] => {
        const element = part.slice(0, part.indexOf('"'))
        const [, id = '', rounding = ''] =
          /<p class="hint">([a-z0-9.-]+) · (.*?)(?: · <span|<\/p>)/su.exec(part) ?? []
        return [
          element,
          {
            id,
            rounding: textOf(rounding),
            printed: textOf(/<p class="plate-figure">(.*?)<\/p>/su.exec(part)?.[1] ?? ''),
            formula: part.includes('<ul class="formula">'),
            origin: textOf(/<p class="hint sources">(.*?)<\/p>/su.exec(part)?.[1] ?? ''),
            rows: [
              ...part.matchAll(/<tr[^>]*><th scope="row">(.*?)<\/th><td>.*?<\/td><td><b>(.*?)<\/b>/gsu),
            ].map(([, symbol = '', printed = '']) => [textOf(symbol), textOf(printed)] as const),
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
