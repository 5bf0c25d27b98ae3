import {type Ink, line} from './ink.ts'
import {hangingTag, type PointKind, type PointState, padlock, pointSymbol} from './isolation-symbols.ts'
import {escaped, rounded, textWidth} from './svg-text.ts'

/** What the symbols of a diagram mean, below it. */
export interface DiagramLegend {
  readonly inks: readonly Ink[]
  readonly bottom: number
}

const letter = 36
const row = 80
const gap = 46

/** Words of the legend in one language; a point whose list leaves its state open is told by its own words. */
export interface LegendWords {
  readonly meanings: Readonly<Record<PointKind, Readonly<Record<PointState, string>>>>
  readonly lock: string
  readonly sealOrTag: string
}

/** Each symbol that the points of a diagram use, once, with its meaning. */
export function diagramLegend(
  points: readonly {readonly kind: PointKind; readonly state: PointState; readonly secured?: string}[],
  words: LegendWords,
  from: number,
  width: number,
): DiagramLegend {
  const found = new Map<string, (x: number, y: number) => readonly Ink[]>()
  for (const {kind, state} of points)
    found.set(words.meanings[kind][state], (x, y) => pointSymbol(kind, state, x, y))
  if (points.some(({secured}) => secured === 'locked')) found.set(words.lock, padlock)
  if (points.some(({secured}) => secured !== undefined && secured !== 'locked'))
    found.set(words.sealOrTag, hangingTag)
  const inks: Ink[] = [line(`M0 ${rounded(from)}H${width}`)]
  let x = 0
  let y = from + 56
  for (const [meaning, draw] of found) {
    const end = x + 90 + textWidth(meaning, letter)
    if (x > 0 && end > width) {
      x = 0
      y += row
    }
    inks.push(...draw(x + 42, y), {
      words: `<text x="${rounded(x + 90)}" y="${rounded(y + 13)}">${escaped(meaning)}</text>`,
    })
    x += 90 + textWidth(meaning, letter) + gap
  }
  return {inks, bottom: y + 52}
}
