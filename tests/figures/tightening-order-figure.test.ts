import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {tighteningOrder} from '../../src/calculations/bolted-joints/tightening-order.ts'
import {tighteningOrderFigure} from '../../src/figures/tightening-order-figure.ts'

interface Place {
  readonly x: number
  readonly y: number
  readonly label: string
}

/** Texts of a class with their places. */
function labels(svg: string, name: string): readonly Place[] {
  return [
    ...svg.matchAll(new RegExp(`<text class="${name}" x="([\\d.]+)" y="([\\d.]+)">([^<]*)<`, 'gu')),
  ].map(([, x, y, label = '']) => ({x: Number(x), y: Number(y), label}))
}

describe('a tightening order of four bolts', () => {
  const figure = tighteningOrderFigure({bolts: 4, order: [1, 3, 2, 4]})

  test('numbers the bolts clockwise from the top, seen from outside', () => {
    const bolts = labels(figure.svg, 'figure-number')
    expect(bolts.map(({label}) => label)).toEqual(['1', '2', '3', '4'])
    const [top, right, below, left] = bolts
    expect(top?.y).toBeLessThan(right?.y ?? 0)
    expect(right?.x).toBeGreaterThan(top?.x ?? 999)
    expect(below?.y).toBeGreaterThan(right?.y ?? 999)
    expect(left?.x).toBeLessThan(top?.x ?? 0)
  })

  test('writes the turn of each bolt beside it, outside of the circle', () => {
    expect(labels(figure.svg, 'figure-turn').map(({label}) => label)).toEqual(['1.', '3.', '2.', '4.'])
  })

  test('joins the first two bolts by a line', () => {
    const [first, , third] = labels(figure.svg, 'figure-number')
    expect(figure.svg).toContain(`M${first?.x} ${first?.y}L${third?.x} ${third?.y}`)
  })

  test('says the same in words and as data', () => {
    expect(figure.alternative).toBe(
      'Bolt circle of 4 bolts numbered clockwise from the top. Tighten in the order 1 3 2 4.',
    )
    expect(figure.svg).toContain(`aria-label="${figure.alternative}"`)
    expect(figure.data).toBe('order 1 3 2 4')
  })
})

test('every bolt of every joint gets exactly one turn, and no two bolts stand on one place', () => {
  fc.assert(
    fc.property(fc.integer({min: 3, max: 24}), (bolts) => {
      const order = tighteningOrder(bolts)
      const {svg} = tighteningOrderFigure({bolts, order})
      const turns = labels(svg, 'figure-turn').map(({label}) => Number.parseInt(label, 10))
      expect(turns.map((turn) => order[turn - 1])).toEqual(
        Array.from({length: bolts}, (_, index) => index + 1),
      )
      expect(new Set(labels(svg, 'figure-number').map(({x, y}) => `${x} ${y}`)).size).toBe(bolts)
    }),
  )
})
