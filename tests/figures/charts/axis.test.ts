import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {clipped, roundAxis} from '../../../src/figures/charts/axis.ts'

describe('an axis', () => {
  test.each([
    [0.48, 0.96, 6, [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1], 1],
    [0, 11_115, 7, [0, 2000, 4000, 6000, 8000, 10_000, 12_000], 0],
    [3.983, 4.001, 6, [3.98, 3.985, 3.99, 3.995, 4, 4.005], 3],
    [-7, 3, 5, [-8, -6, -4, -2, 0, 2, 4], 0],
  ])('from %f to %f ends on round ticks', (least, most, spaces, ticks, decimals) => {
    expect(roundAxis(least, most, spaces)).toEqual({least: ticks[0], most: ticks.at(-1), ticks, decimals})
  })

  test('holds its range between evenly spaced ticks that their decimals tell apart', () => {
    fc.assert(
      fc.property(
        fc.double({min: -1e4, max: 1e4, noNaN: true}),
        fc.double({min: 1e-3, max: 1e5, noNaN: true}),
        fc.integer({min: 2, max: 10}),
        (least, span, spaces) => {
          const {ticks, decimals, ...axis} = roundAxis(least, least + span, spaces)
          const noise = span * 1e-5
          expect(axis.least).toBeLessThanOrEqual(least + noise)
          expect(axis.most).toBeGreaterThanOrEqual(least + span - noise)
          expect(ticks.length).toBeLessThanOrEqual(spaces + 2)
          expect(new Set(ticks.map((one) => one.toFixed(decimals))).size).toBe(ticks.length)
        },
      ),
    )
  })

  test('has a width where there is one value alone', () => {
    const {least, most} = roundAxis(5, 5, 4)
    expect(most).toBeGreaterThan(least)
  })
})

describe('a chain of points that is cut off', () => {
  const x = roundAxis(0, 10, 5)
  const y = roundAxis(0, 10, 5)

  test.each([
    [
      'stays whole inside',
      [
        [1, 1],
        [5, 9],
      ],
      [
        [
          [1, 1],
          [5, 9],
        ],
      ],
    ],
    [
      'ends where it leaves',
      [
        [5, 5],
        [5, 15],
      ],
      [
        [
          [5, 5],
          [5, 10],
        ],
      ],
    ],
    [
      'begins where it comes in',
      [
        [-5, 5],
        [5, 5],
      ],
      [
        [
          [0, 5],
          [5, 5],
        ],
      ],
    ],
    [
      'is in pieces where it comes back',
      [
        [2, 5],
        [2, 15],
        [4, 15],
        [4, 5],
      ],
      [
        [
          [2, 5],
          [2, 10],
        ],
        [
          [4, 10],
          [4, 5],
        ],
      ],
    ],
    [
      'is gone outside',
      [
        [1, 11],
        [9, 12],
      ],
      [],
    ],
    [
      'is gone past a corner',
      [
        [-4, 8],
        [2, 14],
      ],
      [],
    ],
    [
      'joins its stretches',
      [
        [1, 1],
        [2, 2],
        [3, 1],
      ],
      [
        [
          [1, 1],
          [2, 2],
          [3, 1],
        ],
      ],
    ],
  ] as const)('%s', (_what, points, pieces) => {
    const cut = clipped(
      points.map(([px, py]) => ({x: px, y: py})),
      x,
      y,
    )
    expect(cut.map((piece) => piece.map((point) => [point.x, point.y]))).toEqual(pieces)
  })
})
