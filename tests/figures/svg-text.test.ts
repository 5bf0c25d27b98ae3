import {describe, expect, test} from 'vitest'
import {textLines, textWidth} from '../../src/figures/svg-text.ts'

/**
 * Widths of the characters from blank to tilde in thousandths of the size, as the metrics of the usual sans-serif
 * face give them, and of its bold form; both from memory.
 */
const regular = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
  556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278,
  500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469,
  556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500,
  278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
]

describe('the width of a text', () => {
  test.each([
    'closed, hose taken off and cap fitted, locked',
    'left closed, lock off, told to cargo control room',
    'stays: no blind, line to the purge outlet valve open',
    'HP SLOP P',
    'RT 9 C',
    'COFFERDAM SIDE',
    'lip above the cofferdam',
    'WB 5P OUT MQ',
    'Example: 1234567890 mm (wet) & more',
  ])('of "%s" is not less than by the metrics of the face, and at most a tenth more', (text) => {
    const by = [...text].reduce((sum, one) => sum + (regular[one.charCodeAt(0) - 32] ?? 0), 0) / 1000
    expect(textWidth(text, 36)).toBeGreaterThanOrEqual(36 * by)
    expect(textWidth(text, 36)).toBeLessThanOrEqual(36 * by * 1.1)
  })

  test('grows with size and weight', () => {
    expect(textWidth('valve', 20)).toBeCloseTo(2 * textWidth('valve', 10))
    expect(textWidth('valve', 20, true)).toBeGreaterThan(textWidth('valve', 20))
  })
})

describe('lines of a text', () => {
  test('break between words, none wider than the room', () => {
    const lines = textLines('closed, hose taken off and cap fitted', 36, 300)
    expect(lines.join(' ')).toBe('closed, hose taken off and cap fitted')
    expect(lines.length).toBeGreaterThan(1)
    for (const one of lines) expect(textWidth(one, 36)).toBeLessThanOrEqual(300)
  })

  test('keep a word that is wider than the room whole', () => {
    expect(textLines('a disproportionately b', 36, 60)).toEqual(['a', 'disproportionately', 'b'])
  })

  test('of no words are none', () => {
    expect(textLines('  ', 36, 60)).toEqual([])
  })
})
