/** Layers of a drawing of lines by their classes, each above those before it. */
export const layers = ['line', 'line wire', 'part dashed', 'part', 'solid', 'line over'] as const

export type Layer = (typeof layers)[number]

/** Something drawn: a piece of path in its layer, or words above all of them. */
export type Ink = {readonly layer: Layer; readonly d: string} | {readonly words: string}

/** All ink as SVG: one path for each layer, so that a drawing of many symbols stays small. */
export function painted(inks: readonly Ink[]): string {
  const paths = layers.flatMap((layer) => {
    const d = inks.flatMap((ink) => ('layer' in ink && ink.layer === layer ? [ink.d] : [])).join('')
    return d === '' ? [] : [`<path class="${layer.replace(' over', '')}" d="${d}"/>`]
  })
  return [...paths, ...inks.flatMap((ink) => ('words' in ink ? [ink.words] : []))].join('')
}

/** A line of the usual width. */
export function line(d: string): Ink {
  return {layer: 'line', d}
}

/** An outline filled with paper. */
export function open(d: string): Ink {
  return {layer: 'part', d}
}

/** A black shape. */
export function solid(d: string): Ink {
  return {layer: 'solid', d}
}

/** What is not there: an outline of dashes. */
export function dashed(d: string): Ink {
  return {layer: 'part dashed', d}
}

/** A circle about its middle. */
export function circle(x: number, y: number, radius: number): string {
  return `M${x - radius} ${y}a${radius} ${radius} 0 1 1 ${2 * radius} 0a${radius} ${radius} 0 1 1 ${-2 * radius} 0z`
}
