import {rounded} from './svg-text.ts'

/** Layers of a drawing of lines by their classes, each above those before it. */
export const layers = ['line', 'line wire', 'part dashed', 'part', 'solid', 'line over'] as const

export type Layer = (typeof layers)[number]

/** Something drawn: a piece of path in its layer, words above all of them, words of one pump alone, or what is drawn at many heights alike. */
export type Ink =
  | {readonly layer: Layer; readonly d: string}
  | {readonly words: string}
  | {readonly own: string}
  | {readonly drawn: readonly Ink[]; readonly down: number}

/**
 * All ink as SVG, small where much repeats: one path for each layer, and what stands at several heights alike is drawn once
 * and used again. What is used again lies above the layers, words above all.
 */
export function painted(inks: readonly Ink[]): string {
  const places = new Map<string, number[]>()
  for (const ink of inks)
    if ('drawn' in ink) {
      const drawn = painted(ink.drawn)
      places.set(drawn, [...(places.get(drawn) ?? []), ink.down])
    }
  const repeated = [...places].map(
    ([drawn, downs], index) =>
      `<defs><g id="r${index}">${drawn}</g></defs>${downs.map((down) => `<use href="#r${index}" y="${rounded(down)}"/>`).join('')}`,
  )
  return [pathsOf(inks), ...repeated, ...inks.flatMap((ink) => ('words' in ink ? [ink.words] : []))].join('')
}

function pathsOf(inks: readonly Ink[]): string {
  return layers
    .flatMap((layer) => {
      const d = inks.flatMap((ink) => ('layer' in ink && ink.layer === layer ? [ink.d] : [])).join('')
      return d === '' ? [] : [`<path class="${layer.replace(' over', '')}" d="${d}"/>`]
    })
    .join('')
}

/** Words that belong to one pump alone: they lie over the drawing that pumps alike share. */
export function ownWords(inks: readonly Ink[]): string {
  return inks.flatMap((ink) => ('own' in ink ? [ink.own] : [])).join('')
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
