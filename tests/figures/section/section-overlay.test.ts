import {describe, expect, test} from 'vitest'
import {partsOfSection, type SectionPart} from '../../../src/figures/section/section-geometry.ts'
import {partsOfBalloons, sectionOverlay} from '../../../src/figures/section/section-overlay.ts'
import {doubleLip, sectionOf} from './section-for-tests.ts'

const section = sectionOf(doubleLip)

/** What the procedures that open a pump touch. */
const jobs: readonly (readonly [name: string, parts: readonly SectionPart[]])[] = [
  ['wear rings', ['lower-ring', 'lower-ring-screws', 'impeller', 'upper-ring', 'upper-ring-screws']],
  ['cargo seal', ['cargo-seal', 'oil-seal']],
  ['sleeve', ['sleeve']],
  [
    'dismantling',
    ['suction-cover', 'suction-cover-bolts', 'suction-cover-ring', 'impeller', 'hand-hole-ring'],
  ],
  ['motor', ['motor']],
  ['unit off', ['casing', 'suction-cover', 'impeller', 'hub-bolts', 'head-flange-bolts', 'head-flange-ring']],
]

describe.each(jobs)('marks of the parts for %s', (_, parts) => {
  const svg = sectionOverlay(section, parts)

  test('lie on the view box of the section and weigh less than 3 kB', () => {
    expect(svg).toContain(`viewBox="0 0 ${section.frame.width} ${section.frame.height}"`)
    expect(new TextEncoder().encode(svg).length).toBeLessThan(3000)
  })

  test('ring the balloon of each part, and no other', () => {
    expect(svg.match(/<circle /gu)).toHaveLength(parts.length)
    for (const {part, at} of section.balloons) {
      const x = Math.round(at[0] - section.frame.left)
      const y = Math.round(section.frame.ceiling - at[1])
      expect(svg.includes(`cx="${x}" cy="${y}"`), part).toBe(parts.includes(part))
    }
  })

  test('hatch as many areas as the parts have', () => {
    const areas = section.outlines.filter(
      ({part, drawn, isOpen}) => drawn !== 'hidden' && isOpen !== true && parts.some((one) => one === part),
    )
    const drawnOf = (id: string): number => {
      const [, path = ''] = new RegExp(`<path id="${id}" d="([^"]*)"`, 'u').exec(svg) ?? []
      return (path.match(/z/gu) ?? []).length
    }
    expect(svg.match(/<use href="#m" transform="matrix\(-1 0 0 1 [\d.]+ 0\)"\/>/gu)).toHaveLength(2)
    expect(drawnOf('a') + 2 * drawnOf('m')).toBe(areas.length)
    expect(areas.length).toBeGreaterThan(1)
  })

  test('lead from each ring to its part, and stay inside of the view box', () => {
    const {width, height, text} = section.frame
    const [, leaders = ''] = /<path d="([^"]*)"/u.exec(svg) ?? []
    expect(leaders.match(/M/gu)).toHaveLength(parts.length)
    const rings = [...svg.matchAll(/cx="(\d+)" cy="(\d+)" r="(\d+)"/gu)].map((one) =>
      one.slice(1).map(Number),
    )
    for (const [x = 0, y = 0, radius = 0] of rings) {
      expect(radius).toBeLessThan(text)
      expect(Math.min(x - radius, y - radius, width - x - radius, height - y - radius)).toBeGreaterThan(0)
    }
    for (const [index, [x = 0, y = 0, radius = 0]] of rings.entries())
      for (const [otherX = 0, otherY = 0] of rings.slice(index + 1))
        expect(Math.hypot(otherX - x, otherY - y)).toBeGreaterThan(radius * 2)
  })
})

test('nothing is marked where nothing is touched', () => {
  expect(sectionOverlay(section, [])).not.toMatch(/<circle|<path/u)
})

test('parts are found by the balloons of a list', () => {
  expect(new Set(partsOfBalloons(section, new Set(['4', '12'])))).toEqual(new Set(['lower-ring', 'sleeve']))
  const all = partsOfSection(doubleLip).map((_, index) => String(index + 1))
  expect(partsOfBalloons(section, new Set(all))).toHaveLength(21)
})
