import {expect} from 'vitest'
import {letterSize, textsOf, viewOf} from './svg-for-tests.ts'

/** Millimetres that a figure of lines is wide on paper, and the least height of a capital letter. */
const paperWidth = 150
const leastCapital = 2.5
/** Height of a capital letter of a sans-serif face, in shares of its size. */
const capital = 0.716

/** Every text lies inside of the view box, clear of every other one, of the bars and of the symbols, and is large enough in print. */
export function expectRoomForTexts(svg: string): void {
  const view = viewOf(svg)
  const texts = textsOf(svg)
  const legend = Number(/M0 ([\d.]+)H1500/u.exec(svg)?.[1])
  expect(texts.length).toBeGreaterThan(2)
  for (const [index, one] of texts.entries()) {
    expect((one.size / view.width) * paperWidth * capital, one.text).toBeGreaterThanOrEqual(leastCapital)
    expect(one.top, one.text).toBeGreaterThanOrEqual(0)
    expect(one.bottom, one.text).toBeLessThanOrEqual(view.height)
    const [least, most] =
      index === 0 || one.top > legend ? [0, view.width] : one.left < 750 ? [106, 620] : [880, 1394]
    expect(one.left, one.text).toBeGreaterThanOrEqual(least)
    expect(one.right, one.text).toBeLessThanOrEqual(most)
    for (const other of texts.slice(index + 1))
      expect(
        one.right <= other.left ||
          other.right <= one.left ||
          one.bottom <= other.top ||
          other.bottom <= one.top,
        `${one.text} / ${other.text}`,
      ).toBe(true)
  }
  for (const [, to = '', name = ''] of svg.matchAll(/V([\d.]+)h-70z"\/><text[^>]*>([^<]*)</gu))
    expect(Number(to), name).toBeLessThan(legend)
  expect(letterSize('figure-wide text')).toBeGreaterThan(0)
}
