import {describe, expect, test} from 'vitest'
import {palettes} from '../../src/browser-contract/page-contract.ts'
import {channels, contrast} from './contrast.ts'
import {templateText} from './templates-on-disk.ts'

const styles = templateText('styles/1-palettes.css')

/** Named colours of the rule that follows a selector. */
function coloursOf(selector: string): ReadonlyMap<string, string> {
  const from = styles.indexOf(`${selector}{`)
  if (from === -1) throw new Error(`Unexpected gap: no rule for ${selector}`)
  const body = styles.slice(from + selector.length + 1, styles.indexOf('}', from))
  return new Map(
    [...body.matchAll(/--([\w-]+):(#\w+)/gu)].map(([, name, colour]) => [name ?? '', colour ?? '']),
  )
}

const selectors = {day: ':root', dusk: '[data-palette=dusk]', night: '[data-palette=night]'}

function colourIn(colours: ReadonlyMap<string, string>, name: string): string {
  const colour = colours.get(name)
  if (colour === undefined) throw new Error(`Unexpected gap: no colour --${name}`)
  return colour
}

/** Brightest channel and spread between the channels of a colour. */
function spreadOf(colour: string): {readonly brightest: number; readonly spread: number} {
  const all = channels(colour)
  return {brightest: Math.max(...all), spread: Math.max(...all) - Math.min(...all)}
}

describe('contrast', () => {
  /** Source: WCAG 2.2, black on white is the largest ratio, 21:1; grey #767676 on white is the lightest that passes 4.5:1; from memory. */
  test.each([
    ['#000', '#fff', 21],
    ['#fff', '#000', 21],
    ['#767676', '#ffffff', 4.54],
    ['#777777', '#ffffff', 4.48],
    ['#336699', '#336699', 1],
  ])('of %s and %s is %d', (one, other, ratio) => {
    expect(contrast(one, other)).toBeCloseTo(ratio, 2)
  })
})

describe.each(palettes)('the palette of the %s', (palette) => {
  const colours = coloursOf(selectors[palette])

  test.each([
    ['ink', 'paper'],
    ['ink', 'plate'],
    ['soft', 'paper'],
    ['soft', 'plate'],
    ['accent', 'paper'],
    ['accent', 'plate'],
  ])('prints %s on %s at 4.5 to 1 or better', (text, ground) => {
    expect(contrast(colourIn(colours, text), colourIn(colours, ground))).toBeGreaterThanOrEqual(4.5)
  })

  test.each([
    ['line', 'paper'],
    ['line', 'plate'],
    ['sign-ink', 'sign'],
  ])('draws %s on %s at 3 to 1 or better: borders of boxes and cautions are seen', (line, ground) => {
    expect(contrast(colourIn(colours, line), colourIn(colours, ground))).toBeGreaterThanOrEqual(3)
  })

  test('keeps the colours of the four signal words apart', () => {
    const swatches = ['danger', 'warning', 'caution', 'notice'].map((name) => colourIn(colours, name))
    expect(new Set(swatches).size).toBe(4)
  })
})

test.each(['dusk', 'night'] as const)(
  'the palette of the %s names every colour that the day names',
  (palette) => {
    expect([...coloursOf(selectors[palette]).keys()]).toEqual([...coloursOf(selectors.day).keys()])
  },
)

describe('the night palette', () => {
  const colours = coloursOf(selectors.night)

  test('has a black ground, no white and nothing bright', () => {
    expect(colourIn(colours, 'paper')).toBe('#000')
    for (const [name, colour] of colours) expect(spreadOf(colour).brightest, name).toBeLessThanOrEqual(0.7)
  })

  test('dims the safety colours below those of the day', () => {
    const day = coloursOf(selectors.day)
    for (const name of ['danger', 'warning', 'caution', 'notice', 'sign'])
      expect(contrast(colourIn(colours, name), '#000'), name).toBeLessThan(
        contrast(colourIn(day, name), '#000') / 1.5,
      )
  })

  test('keeps red for DANGER: text and lines lean to amber at most', () => {
    for (const name of ['ink', 'soft', 'accent', 'line']) {
      const [red, green] = channels(colourIn(colours, name))
      expect(green / red, name).toBeGreaterThan(0.6)
    }
    const [red, green] = channels(colourIn(colours, 'danger'))
    expect(green / red).toBeLessThan(0.4)
  })
})

test('without scripts a PC set to dark gets the dusk palette, on a screen only', () => {
  expect([...coloursOf(':root:not([data-palette])')]).toEqual([...coloursOf('[data-palette=dusk]')])
  expect(styles).toContain('@media screen and (prefers-color-scheme:dark){:root:not([data-palette])')
})
