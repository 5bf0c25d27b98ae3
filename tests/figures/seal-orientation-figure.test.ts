import {describe, expect, test} from 'vitest'
import {sealWordsEn} from '../../src/compile/figure-words-en.ts'
import {sealOrientationFigure} from '../../src/figures/seal-orientation-figure.ts'
import {textsOf, viewOf} from './svg-for-tests.ts'

const lips = [
  {title: 'lip at the wet end', faces: 'cargo'},
  {title: 'second lip', faces: 'cofferdam'},
] as const
const facts = {title: 'cargo seal', sides: ['cargo', 'cofferdam'], depth: 24, words: sealWordsEn} as const
const double = sealOrientationFigure({...facts, lips})

/** The solid shapes in the order of the lips: the lip, then its arrow. */
function solids(svg: string): readonly string[] {
  return [...svg.matchAll(/<path class="solid" d="([^"]+)"/gu)].map(([, d = '']) => d)
}

/** Heights of the corners of a path: second number of each pair, and what V says. */
function heights(d: string): readonly number[] {
  return [...d.matchAll(/[ML][\d.]+ ([\d.]+)|V([\d.]+)/gu)].map(([, pair, upright]) =>
    Number(pair ?? upright),
  )
}

/** The height where an arrow has its point: the corner that it shares with no other. */
function pointOf(d: string): number {
  return Number(/L620 ([\d.]+)/u.exec(d)?.[1])
}

/** Whether an arrow points down. */
function pointsDown(d: string): boolean {
  return pointOf(d) === Math.max(...heights(d))
}

/** Whether a fork is open below: its back, where it begins, lies above the middle of its corners. */
function opensDown(d: string): boolean {
  const all = heights(d)
  return (all[0] ?? 0) < (Math.max(...all) + Math.min(...all)) / 2
}

describe('the orientation of a seal with two lips', () => {
  test('tells the lips from the wet end up, each with its direction', () => {
    expect(double.data).toBe(
      'In the pump cargo below, cofferdam above; 1 lip at the wet end: open edge looks at the cargo; 2 second lip: open edge looks at the cofferdam.',
    )
    expect(double.alternative).toBe(
      'Half section of the cargo seal as it stands in the pump: cofferdam side above, cargo side below. From the wet end up: 1 lip at the wet end: open edge looks at the cargo; 2 second lip: open edge looks at the cofferdam.',
    )
  })

  test('draws them back to back, each open to where its arrow points', () => {
    const [wetLip = '', wetArrow = '', secondLip = '', secondArrow = ''] = solids(double.svg)
    expect([opensDown(wetLip), pointsDown(wetArrow)]).toEqual([true, true])
    expect([opensDown(secondLip), pointsDown(secondArrow)]).toEqual([false, false])
    expect(Math.max(...heights(secondLip))).toBeLessThan(Math.min(...heights(wetLip)))
  })

  test('names cofferdam side above and cargo side below', () => {
    const texts = textsOf(double.svg)
    const above = texts.find(({text}) => text === 'COFFERDAM SIDE')
    const below = texts.find(({text}) => text === 'CARGO SIDE')
    expect(above?.top).toBeLessThan(below?.top ?? 0)
  })

  test('a lip that is turned moves shape, arrow, words and data', () => {
    const turned = sealOrientationFigure({...facts, lips: [{...lips[0], faces: 'cofferdam'}, lips[1]]})
    const [lip = '', arrow = ''] = solids(turned.svg)
    expect([opensDown(lip), pointsDown(arrow)]).toEqual([false, false])
    expect(turned.data).toContain('1 lip at the wet end: open edge looks at the cofferdam')
    expect(turned.alternative).not.toBe(double.alternative)
  })
})

test('a seal with one lip is half as high and shows one lip', () => {
  const single = sealOrientationFigure({...facts, depth: 12, lips: [lips[0]]})
  expect(solids(single.svg)).toHaveLength(2)
  expect([viewOf(double.svg).height, viewOf(single.svg).height]).toEqual([720, 480])
  expect(single.data).not.toContain('2 ')
})

test('between cofferdam and oil the cofferdam is below', () => {
  const upper = sealOrientationFigure({
    words: sealWordsEn,
    title: 'single lip seal',
    sides: ['cofferdam', 'oil'],
    depth: 12,
    lips: [{title: 'upper lip', faces: 'cofferdam'}],
  })
  expect(upper.data).toBe(
    'In the pump cofferdam below, oil above; 1 upper lip: open edge looks at the cofferdam.',
  )
  const [lip = '', arrow = ''] = solids(upper.svg)
  expect([opensDown(lip), pointsDown(arrow)]).toEqual([true, true])
})

test('a seal of unknown depth is drawn all the same', () => {
  const {svg} = sealOrientationFigure({...facts, depth: undefined, lips})
  expect(solids(svg)).toHaveLength(4)
  expect(svg).not.toMatch(/NaN|undefined/u)
})

test.each([
  ['two lips', double],
  [
    'a long title',
    sealOrientationFigure({
      ...facts,
      lips: [{...lips[0], title: 'lip at the wet end, below the groove for the spring & rim'}],
    }),
  ],
  ['a thin seal', sealOrientationFigure({...facts, depth: 5, lips})],
])('texts of %s lie inside and apart', (_, {svg}) => {
  const view = viewOf(svg)
  const texts = textsOf(svg)
  for (const one of texts) {
    expect(one.left, one.text).toBeGreaterThanOrEqual(0)
    expect(one.right, one.text).toBeLessThanOrEqual(view.width)
    // Sides are named between sleeve and housing, lips right of their arrows.
    expect(one.left, one.text).toBeGreaterThanOrEqual(/ SIDE$/u.test(one.text) ? 200 : 660)
    expect(one.top, one.text).toBeGreaterThanOrEqual(0)
    expect(one.bottom, one.text).toBeLessThanOrEqual(view.height)
    for (const other of texts.slice(texts.indexOf(one) + 1))
      expect(
        one.right <= other.left ||
          other.right <= one.left ||
          one.bottom <= other.top ||
          other.bottom <= one.top,
        `${one.text} / ${other.text}`,
      ).toBe(true)
  }
})
