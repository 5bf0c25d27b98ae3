import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {tighteningOrder} from '../../src/calculations/bolted-joints/tightening-order.ts'
import {tighteningWordsEn} from '../../src/compile/figure-words-en.ts'
import {type TighteningInput, tighteningOrderFigure} from '../../src/figures/tightening-order-figure.ts'
import {expectRoomForTexts} from './room-for-texts.ts'
import {singleTexts, textsOf, viewOf} from './svg-for-tests.ts'

const four: TighteningInput = {
  title: 'hub bolts',
  bolts: 4,
  order: [1, 3, 2, 4],
  head: 'hexagon',
  passes: '15 · 31 · 48 N·m',
  words: tighteningWordsEn,
}

interface Place {
  readonly x: number
  readonly y: number
  readonly label: string
}

/** Numbers of the bolts, or of their turns, with the middles of their places. */
function labels(svg: string, name: 'central strong' | 'central'): readonly Place[] {
  return [
    ...singleTexts(svg).matchAll(
      new RegExp(`<text class="${name}" x="([\\d.]+)" y="([\\d.]+)">([^<]*)<`, 'gu'),
    ),
  ].map(([, x, y, label = '']) => ({x: Number(x), y: Number(y), label}))
}

const boltsOf = (svg: string): readonly Place[] => labels(svg, 'central strong')
const turnsOf = (svg: string): readonly Place[] => labels(svg, 'central')

describe('a tightening order of four bolts', () => {
  const figure = tighteningOrderFigure(four)

  test('numbers the bolts clockwise from the top, seen from the heads', () => {
    const bolts = boltsOf(figure.svg)
    expect(bolts.map(({label}) => label)).toEqual(['1', '2', '3', '4'])
    const [top, right, below, left] = bolts
    expect(top?.y).toBeLessThan(right?.y ?? 0)
    expect(right?.x).toBeGreaterThan(top?.x ?? 9999)
    expect(below?.y).toBeGreaterThan(right?.y ?? 9999)
    expect(left?.x).toBeLessThan(top?.x ?? 0)
  })

  test('writes the turn of each bolt beside it, outside of the circle', () => {
    expect(turnsOf(figure.svg).map(({label}) => label)).toEqual(['1.', '3.', '2.', '4.'])
    const middle = boltsOf(figure.svg)[1]?.y ?? 0
    expect(middle - (turnsOf(figure.svg)[0]?.y ?? 0)).toBeGreaterThan(
      middle - (boltsOf(figure.svg)[0]?.y ?? 0),
    )
  })

  test('joins the first two bolts by a line', () => {
    const [first, , third] = boltsOf(figure.svg)
    expect(figure.svg).toContain(`M${first?.x} ${first?.y}L${third?.x} ${third?.y}`)
  })

  test('says the same in words and as data, passes too', () => {
    expect(figure.alternative).toBe(
      'Bolt circle of 4 bolts, hub bolts, seen from the heads and numbered clockwise from the top. Tighten in the order 1 3 2 4. in passes: 15 · 31 · 48 N·m',
    )
    expect(figure.data).toBe('hub bolts: 4; order 1 3 2 4')
    expect(textsOf(figure.svg).map(({text}) => text)).toContain('in passes: 15 · 31 · 48 N·m')
  })

  test('draws hexagons, or round heads where a key goes into them', () => {
    const socket = tighteningOrderFigure({...four, head: 'socket'})
    const heads = (svg: string): string => /<path class="part" d="([^"]*)"/u.exec(svg)?.[1] ?? ''
    expect(heads(figure.svg).match(/L/gu)).toHaveLength(4 * 5)
    expect(heads(socket.svg).match(/a/gu)).toHaveLength(4 * 2)
  })

  test('is another figure with other words and data when count, passes or title change', () => {
    const others: readonly Partial<TighteningInput>[] = [
      {bolts: 12, order: tighteningOrder(12)},
      {passes: '48 N·m'},
      {title: 'bolts of the cover'},
    ]
    for (const more of others) {
      const other = tighteningOrderFigure({...four, ...more})
      for (const field of ['svg', 'alternative'] as const)
        expect(other[field], JSON.stringify(more)).not.toBe(figure[field])
      expect(other.data === figure.data, JSON.stringify(more)).toBe('passes' in more)
    }
    expect(boltsOf(tighteningOrderFigure({...four, bolts: 12, order: tighteningOrder(12)}).svg)).toHaveLength(
      12,
    )
  })
})

test.each([3, 6, 7, 16, 24, 25, 47])(
  'a circle of %i bolts has room for every text and for every head',
  (bolts) => {
    const figure = tighteningOrderFigure({...four, bolts, order: tighteningOrder(bolts)})
    expectRoomForTexts(figure)
    const {width, height} = viewOf(figure.svg)
    const heads = boltsOf(figure.svg)
    for (const [index, {x, y}] of heads.entries()) {
      const next = heads[(index + 1) % bolts]
      expect(Math.hypot(x - (next?.x ?? 0), y - (next?.y ?? 0))).toBeGreaterThan(84)
      expect(Math.min(x, y, width - x, height - y)).toBeGreaterThan(42)
    }
  },
)

test('every bolt of every joint gets exactly one turn, and no two bolts stand on one place', () => {
  fc.assert(
    fc.property(fc.integer({min: 3, max: 47}), (bolts) => {
      const order = tighteningOrder(bolts)
      const {svg} = tighteningOrderFigure({...four, bolts, order})
      const turns = turnsOf(svg).map(({label}) => Number.parseInt(label, 10))
      expect(turns.map((turn) => order[turn - 1])).toEqual(
        Array.from({length: bolts}, (_, index) => index + 1),
      )
      expect(new Set(boltsOf(svg).map(({x, y}) => `${x} ${y}`)).size).toBe(bolts)
    }),
  )
})
