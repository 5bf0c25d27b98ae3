import {readFileSync} from 'node:fs'
import {expect} from 'vitest'
import {textWidth} from '../../../src/figures/svg-text.ts'

const styles = readFileSync(new URL('../../../templates/styles/5-charts.css', import.meta.url), 'utf8')
const paper = readFileSync(new URL('../../../templates/styles/paper.css', import.meta.url), 'utf8')

/** A text of a chart with its place. */
export interface ChartText {
  readonly text: string
  readonly x: number
  readonly y: number
}

/** All texts of a chart. */
export function textsOf(svg: string): readonly ChartText[] {
  return [...svg.matchAll(/<text x="(-?[\d.]+)" y="(-?[\d.]+)">([^<]*)<\/text>/gu)].map(
    ([, x, y, text = '']) => ({
      text: text.replaceAll('&lt;', '<').replaceAll('&amp;', '&'),
      x: Number(x),
      y: Number(y),
    }),
  )
}

/** Turns places of the drawing into values by the words at the ticks: it knows nothing of how the chart was drawn. */
export function valuesOf(
  svg: string,
): (place: {readonly x: number; readonly y: number}) => {x: number; y: number} {
  const axis = /class="chart-axis" d="([^"]+)"/u.exec(svg)?.[1] ?? ''
  const texts = textsOf(svg)
  const alongX = [...axis.matchAll(/M([\d.]+) [\d.]+v/gu)].map(([, x]) => Number(x))
  const alongY = [...axis.matchAll(/M[\d.]+ ([\d.]+)h-/gu)].map(([, y]) => Number(y))
  expect(alongX).toEqual([...alongX].sort((a, b) => a - b))
  expect(alongY).toEqual([...alongY].sort((a, b) => b - a))
  const figures = texts.map(({text}) => Number(text.replace('−', '-')))
  const ofX = lineThrough(alongX, figures.slice(0, alongX.length))
  const ofY = lineThrough(alongY, figures.slice(alongX.length, alongX.length + alongY.length))
  return ({x, y}) => ({x: ofX(x), y: ofY(y)})
}

function lineThrough(places: readonly number[], values: readonly number[]): (place: number) => number {
  const [from = 0, to = 0] = [places[0], places.at(-1)]
  const [least = Number.NaN, most = Number.NaN] = [values[0], values.at(-1)]
  return (place) => least + ((place - from) / (to - from)) * (most - least)
}

/** Middles of the marks of a shape, as values; the legend below the axes is none. */
export function marksOf(svg: string, shape: keyof typeof shapes): readonly {x: number; y: number}[] {
  const value = valuesOf(svg)
  return [...svg.matchAll(shapes[shape])]
    .map(([, x, y]) => ({x: Number(x), y: Number(y)}))
    .filter(({y}) => y <= 697)
    .map(value)
}

const shapes = {
  circle: /chart-open" d="M([\d.]+) ([\d.]+)m-13 0a/gu,
  dot: /chart-solid" d="M([\d.]+) ([\d.]+)m-13 0a/gu,
  square: /chart-solid" d="M([\d.]+) ([\d.]+)m-13-13h/gu,
  cup: /chart-open" d="M([\d.]+) ([\d.]+)m-13-13h/gu,
  triangle: /chart-solid" d="M([\d.]+) ([\d.]+)m0-16l/gu,
  diamond: /chart-open" d="M([\d.]+) ([\d.]+)m0-17l/gu,
  cross: /chart-strokes" d="M([\d.]+) ([\d.]+)m-20-20l/gu,
  star: /chart-strokes" d="M([\d.]+) ([\d.]+)m-22 0h/gu,
} as const

/** Points of the lines of a kind that lie in the chart, as values; one list for each piece. */
export function linesOf(svg: string, kind: string): readonly (readonly {x: number; y: number}[])[] {
  const value = valuesOf(svg)
  return [...svg.matchAll(new RegExp(`class="chart-${kind}" d="(M[^"]+)"`, 'gu'))]
    .flatMap(([, d = '']) => d.split(/(?=M)/u))
    .map((piece) =>
      [...piece.matchAll(/[ML]([\d.]+) ([\d.]+)/gu)].map(([, x, y]) => ({x: Number(x), y: Number(y)})),
    )
    .filter((points) => points.length > 1)
    .map((points) => points.map(value))
}

/** Every text lies within the drawing, clear of every other, and prints with capitals of 2.5 mm. */
export function expectRoomInChart(svg: string): void {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/u.exec(svg) ?? []
  const size = Number(/\.chart text\{font-size:([\d.]+)px/u.exec(styles)?.[1])
  const printed = Number(/\.chart\{width:([\d.]+)mm/u.exec(paper)?.[1])
  expect((size / Number(width)) * printed * 0.716).toBeGreaterThanOrEqual(2.5)
  const rooms = textsOf(svg).map(({text, x, y}) => ({
    text,
    left: x,
    right: x + textWidth(text, size),
    top: y - size * 0.74,
    bottom: y + size * 0.21,
  }))
  expect(rooms.length).toBeGreaterThan(6)
  for (const [index, one] of rooms.entries()) {
    expect(one.left, one.text).toBeGreaterThanOrEqual(0)
    expect(one.right, one.text).toBeLessThanOrEqual(Number(width))
    expect(one.top, one.text).toBeGreaterThanOrEqual(0)
    expect(one.bottom, one.text).toBeLessThanOrEqual(Number(height))
    for (const other of rooms.slice(index + 1))
      expect(
        one.right <= other.left ||
          other.right <= one.left ||
          one.bottom <= other.top ||
          other.bottom <= one.top,
        `${one.text} / ${other.text}`,
      ).toBe(true)
  }
}
