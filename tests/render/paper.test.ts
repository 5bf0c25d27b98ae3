import {describe, expect, test} from 'vitest'
import {templateText} from './templates-on-disk.ts'

const paper = templateText('styles/paper.css').replace(/\/\*[\s\S]*?\*\//gu, '')

/** Declarations of every rule that has the selector, later ones winning. */
function rule(selector: string): ReadonlyMap<string, string> {
  const found = [...paper.matchAll(/([^{}]+)\{([^{}]*)\}/gu)].filter(([, selectors = '']) =>
    selectors.split(',').some((one) => one.trim() === selector),
  )
  if (found.length === 0) throw new Error(`Unexpected gap: paper.css has no rule for ${selector}`)
  return new Map(
    found.flatMap(([, , body = '']) =>
      body.split(';').map((one): [string, string] => {
        const [name = '', value = ''] = one.split(':')
        return [name.trim(), value.trim()]
      }),
    ),
  )
}

/** A length of a rule, in the unit asked for. */
function length(selector: string, property: string, unit: 'mm' | 'pt'): number {
  const value = rule(selector).get(property) ?? ''
  const match = new RegExp(`^(\\d*\\.?\\d+)${unit}(?:$|/|\\s)`, 'u').exec(value)
  if (!match) throw new Error(`Unexpected ${property} \`${value}\` of ${selector}, expected ${unit}`)
  return Number(match[1])
}

/** Margins of the page: top, right, bottom, left. */
const margins = (rule('@page').get('margin') ?? '').split(' ').map((one) => Number.parseFloat(one))
const [top = 0, right = 0, bottom = 0, left = 0] = margins

/** A4. Source: ISO 216; from memory. */
const sheet = {width: 210, height: 297}

describe('the page', () => {
  /** Source: ISO 838, two holes 80 mm apart, their middle 12 mm from the edge, 6 mm wide; from memory. */
  test('leaves the zone of the filing holes free', () => {
    expect(margins).toHaveLength(4)
    expect(left).toBeGreaterThanOrEqual(20)
    expect(rule('@page').get('size')).toBe('A4 portrait')
  })

  test('fits an explicit sheet between its margins, and wastes no sheet on rounding', () => {
    expect(length('.sheet', 'width', 'mm')).toBe(sheet.width - left - right)
    const height = length('.sheet', 'height', 'mm')
    expect(height).toBeLessThan(sheet.height - top - bottom)
    expect(height).toBeGreaterThan(sheet.height - top - bottom - 2)
  })
})

describe('things to write into', () => {
  test('are at least 8 by 25 mm for a reading', () => {
    expect(length('.box', 'height', 'mm')).toBeGreaterThanOrEqual(8)
    expect(length('.box', 'min-width', 'mm')).toBeGreaterThanOrEqual(25)
    expect(length('.boxes .box', 'width', 'mm')).toBeGreaterThanOrEqual(25)
    expect(length('.box-inline', 'height', 'mm')).toBeGreaterThanOrEqual(8)
    expect(length('.box-inline', 'width', 'mm')).toBeGreaterThanOrEqual(25)
  })

  test('are at least 5 mm for a tick and 8 mm above a signature', () => {
    expect(length('.tick', 'width', 'mm')).toBeGreaterThanOrEqual(5)
    expect(length('.tick', 'height', 'mm')).toBeGreaterThanOrEqual(5)
    expect(length('.sign-line', 'height', 'mm')).toBeGreaterThanOrEqual(8)
  })
})

describe('print', () => {
  test('draws every line at least half a point thick', () => {
    const lines = [...paper.matchAll(/(?:^|[\s:])(\d*\.?\d+)mm (?:solid|dashed|double|dotted)/gu)].map(
      ([, thickness]) => Number(thickness),
    )
    expect(lines.length).toBeGreaterThan(12)
    /** Half a point in millimetres; a point is 25.4 mm / 72. */
    const thinnest = (0.5 * 25.4) / 72
    for (const one of lines) expect(one).toBeGreaterThanOrEqual(thinnest)
  })

  test('sets text at 10 points or more, values and instructions at 11 or more', () => {
    expect(length('html', 'font-size', 'pt')).toBeGreaterThanOrEqual(10)
    for (const one of ['.caution-text', '.recalls', '.points', '.boxes th', '.plate .plate-why'])
      expect(length(one, 'font-size', 'pt'), one).toBeGreaterThanOrEqual(10)
    for (const one of [
      '.instruction',
      '.plate-figure',
      '.plate-figure .unit',
      '.plate-condition',
      '.plate-more',
    ])
      expect(length(one, 'font-size', 'pt'), one).toBeGreaterThanOrEqual(11)
  })

  test('is black on white: no tint and no third colour but the mark of a sheet that overflows', () => {
    const colours = [...paper.matchAll(/#[0-9a-f]{3,6}\b/gu)].map(([colour]) => colour)
    const allowed = ['#fff', '#000']
    expect(colours.filter((one) => !allowed.includes(one))).toEqual(['#c8102e'])
    expect(rule('.sheet[data-overflow]').get('outline')).toContain('#c8102e')
    for (const name of ['danger', 'warning', 'caution', 'notice', 'sign', 'plate', 'paper'])
      expect(rule(':root').get(`--${name}`), name).toBe('#fff')
    for (const name of ['ink', 'soft', 'line', 'faint', 'accent', 'sign-ink'])
      expect(rule(':root').get(`--${name}`), name).toBe('#000')
  })

  test('counts for each palette, so that a page opened at night prints like one of the day', () => {
    expect(rule('[data-palette]')).toEqual(rule(':root'))
  })

  test('never splits a unit of the task sheet, and repeats its head', () => {
    expect(rule('.task>tbody').get('break-inside')).toBe('avoid')
    expect(rule('.task>thead').get('display')).toBe('table-header-group')
    expect(rule('.task').get('display')).toBe('table')
  })
})

describe('signal words without colour', () => {
  const borders = new Map(
    ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'].map((word) => [word, rule(`.cautions.${word}`)]),
  )
  const borderOf = (word: string): string => borders.get(word)?.get('border') ?? ''

  test('are told apart by their border: double, thick, dashed, thin with a bar at the side', () => {
    expect(borderOf('DANGER')).toContain('double')
    expect(borderOf('WARNING')).toContain('solid')
    expect(borderOf('CAUTION')).toContain('dashed')
    expect(Number.parseFloat(borderOf('WARNING'))).toBeGreaterThan(3 * Number.parseFloat(borderOf('NOTICE')))
    expect(borders.get('NOTICE')?.get('border-left-width')).toBe('3mm')
  })

  test('print no swatch, and a triangle that is black on white', () => {
    expect(rule('.caution-word::before').get('display')).toBe('none')
    expect(rule('.sign-ground').get('fill')).toBe('#fff')
  })
})

test('NOTICE has no triangle, on a screen and on paper', () => {
  const screen = templateText('styles/3-parts.css')
  expect(screen).toContain('.caution.NOTICE .sign{display:none}')
  expect(rule('.sign').has('display')).toBe(false)
})
