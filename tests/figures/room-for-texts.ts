import {expect} from 'vitest'
import type {Figure} from '../../src/figures/figure.ts'
import {capital, overlap, paperWidths, textsOf, viewOf} from './svg-for-tests.ts'

/** Least height of a capital letter in print, in millimetres. */
const leastCapital = 2.5

/** Every text of a figure lies inside of its view box, clear of every other one, and is large enough in print. */
export function expectRoomForTexts({
  svg,
  own,
  size,
}: {
  readonly svg: string
  /** Words that lie over the drawing, as a figure or a picture has them. */
  readonly own?: string | {readonly svg: string}
  readonly size: Figure['size']
}): void {
  const view = viewOf(svg)
  const texts = [
    ...textsOf(svg),
    ...(own === undefined ? [] : textsOf(typeof own === 'string' ? own : own.svg)),
  ]
  expect(texts.length).toBeGreaterThan(0)
  for (const [index, one] of texts.entries()) {
    expect((one.size / view.width) * paperWidths[size] * capital, one.text).toBeGreaterThanOrEqual(
      leastCapital,
    )
    expect(one.left, one.text).toBeGreaterThanOrEqual(0)
    expect(one.top, one.text).toBeGreaterThanOrEqual(0)
    expect(one.right, one.text).toBeLessThanOrEqual(view.width)
    expect(one.bottom, one.text).toBeLessThanOrEqual(view.height)
    for (const other of texts.slice(index + 1))
      expect(overlap(one, other), `${one.text} / ${other.text}`).toBe(false)
  }
}
