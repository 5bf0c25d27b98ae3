/** How large a figure stands on paper: 52, 120 or 150 mm wide. */
export type FigureSize = 'small' | 'middle' | 'wide'

/** Widths of lines in units of the view box, and sizes of letters; a middle or wide figure is drawn four to six times as large as a small one. */
interface Weights {
  readonly usual: number
  readonly thin: number
  readonly bold: number
  readonly letter: number
}

const small: Weights = {usual: 1.6, thin: 0.8, bold: 2.6, letter: 17}
const large: Weights = {usual: 4, thin: 2.5, bold: 7, letter: 36}

/** Rules of each class, later ones above earlier ones. */
const rules: readonly (readonly [name: string, rule: (weights: Weights) => string])[] = [
  ['line', ({usual}) => `fill:none;stroke:#000;stroke-width:${usual}`],
  ['thin', ({thin}) => `fill:none;stroke:#000;stroke-width:${thin};stroke-dasharray:14 4 3 4`],
  ['hair', ({thin}) => `fill:none;stroke:#000;stroke-width:${thin}`],
  ['bold', ({bold}) => `fill:none;stroke:#000;stroke-width:${bold}`],
  ['blank', () => 'fill:#fff'],
  ['part', ({usual}) => `fill:#fff;stroke:#000;stroke-width:${usual}`],
  ['solid', ({thin}) => `stroke:#000;stroke-width:${thin}`],
  ['wire', () => 'stroke-dasharray:16 9'],
  ['dashed', () => 'stroke-dasharray:9 6'],
  ['word', ({letter}) => `font-size:${letter}px`],
  ['mid', () => 'text-anchor:middle'],
  ['end', () => 'text-anchor:end'],
  ['central', () => 'text-anchor:middle;dominant-baseline:central'],
  ['strong', () => 'font-weight:700'],
  ['hull', () => 'fill:none;stroke:#000;stroke-width:5'],
  ['tanks', () => 'fill:none;stroke:#000;stroke-width:4'],
  ['tank-hatch', () => 'fill:none;stroke:#000;stroke-width:5'],
  ['tank-marked', () => 'stroke:#000;stroke-width:11'],
  ['tag', () => 'font-size:134px;font-weight:700;text-anchor:middle'],
]

/** Size of the letters of a figure, in units of its view box. */
export function letterOf(size: FigureSize): number {
  return weightsOf(size).letter
}

/** Styles of the classes that a drawing uses. */
export function figureStyles(drawn: string, size: FigureSize): string {
  const weights = weightsOf(size)
  const used = new Set(
    [...drawn.matchAll(/ class="([^"]*)"/gu)].flatMap(([, names = '']) => names.split(' ')),
  )
  const texts = drawn.includes('<text') ? `svg{font:${weights.letter}px Arial,sans-serif}` : ''
  return `${texts}${rules.flatMap(([name, rule]) => (used.has(name) ? [`.${name}{${rule(weights)}}`] : [])).join('')}`
}

function weightsOf(size: FigureSize): Weights {
  return size === 'small' ? small : large
}
