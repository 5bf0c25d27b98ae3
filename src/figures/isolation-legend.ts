import {type Ink, line} from './ink.ts'
import {hangingTag, type PointKind, type PointState, padlock, pointSymbol} from './isolation-symbols.ts'
import {rounded, textWidth} from './svg-text.ts'

/** What the symbols of a diagram mean, below it. */
export interface DiagramLegend {
  readonly inks: readonly Ink[]
  readonly bottom: number
}

const letter = 36
const row = 80
const gap = 46

/** Words of each symbol; a point whose list leaves its state open is told by its own words. */
const meanings: Record<PointKind, Record<PointState, string>> = {
  valve: {passes: 'valve open', shut: 'valve closed', either: 'valve, see its words'},
  blind: {passes: 'no blind', shut: 'blind in', either: 'blind, see its words'},
  fuse: {passes: 'fuse in', shut: 'fuse drawn', either: 'fuse, see its words'},
  'relief-valve': {
    passes: 'relief valve fitted',
    shut: 'relief valve off',
    either: 'relief valve, see its words',
  },
  plug: {passes: 'no plug', shut: 'plug in', either: 'plug, see its words'},
  'transport-bolt': {passes: 'no bolt', shut: 'bolt in', either: 'bolt, see its words'},
}

/** What the symbol of a point says. */
export function meaningOf({kind, state}: {readonly kind: PointKind; readonly state: PointState}): string {
  return meanings[kind][state]
}

/** Each symbol that the points of a diagram use, once, with its meaning. */
export function diagramLegend(
  points: readonly {readonly kind: PointKind; readonly state: PointState; readonly secured?: string}[],
  from: number,
  width: number,
): DiagramLegend {
  const found = new Map<string, (x: number, y: number) => readonly Ink[]>()
  for (const {kind, state} of points)
    found.set(meaningOf({kind, state}), (x, y) => pointSymbol(kind, state, x, y))
  if (points.some(({secured}) => secured === 'locked')) found.set('lock', padlock)
  if (points.some(({secured}) => secured !== undefined && secured !== 'locked'))
    found.set('seal or tag', hangingTag)
  const inks: Ink[] = [line(`M0 ${rounded(from)}H${width}`)]
  let x = 0
  let y = from + 56
  for (const [words, draw] of found) {
    const end = x + 90 + textWidth(words, letter)
    if (x > 0 && end > width) {
      x = 0
      y += row
    }
    inks.push(...draw(x + 42, y), {
      words: `<text x="${rounded(x + 90)}" y="${rounded(y + 13)}">${words}</text>`,
    })
    x += 90 + textWidth(words, letter) + gap
  }
  return {inks, bottom: y + 52}
}
