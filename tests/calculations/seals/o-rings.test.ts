import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {oRingSections, oRingSectionTolerance} from '../../../src/calculations/seals/o-ring-sections.ts'
import {oRingDepth, oRingSqueeze, oRingSqueezeLimits} from '../../../src/calculations/seals/o-ring-squeeze.ts'
import {greatestStretch, oRingFill, oRingStretch} from '../../../src/calculations/seals/o-ring-stretch.ts'
import {inches, millimetres, percent} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {sectionRows} from '../../published-values/o-ring-tables.ts'

/** Least and greatest squeeze of a gland from its limits of depth, in inches. */
function limits(section: number, tolerance: number, [least, greatest]: readonly [number, number]) {
  return oRingSqueezeLimits(
    {section: inches(section), depth: inches((least + greatest) / 2)},
    {section: inches(tolerance), depth: inches((greatest - least) / 2)},
  )
}

describe('squeeze of an O-ring', () => {
  test('section .139 in a static radial gland has 14.07 and 23.08 %, which the table rounds to 14 and 23 (computed check value)', () => {
    const {least, greatest} = limits(0.139, 0.004, [0.11, 0.116])
    expect(Math.abs(least.share.si * 100 - 14.07)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(greatest.share.si * 100 - 23.08)).toBeLessThanOrEqual(0.005)
  })

  test('taking every share of the middle section would miss the printed 32 % of section .070', () => {
    const {greatest} = limits(0.07, 0.003, [0.05, 0.055])
    expect((greatest.length.si / inches(0.07).si) * 100).toBeGreaterThan(32.5)
    expect(greatest.share.si * 100).toBeLessThan(32)
  })

  test('section 3.53 mm with 12 % needs a depth of 3.11 mm (example of a trade page, read in a reprint)', () => {
    expect(Math.abs(oRingDepth(millimetres(3.53), percent(12)).si * 1000 - 3.11)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(oRingDepth(millimetres(3.53), percent(12)).si * 1000 - 3.1064)).toBeLessThanOrEqual(5e-5)
  })

  test('depth and squeeze are inverse; tolerances only widen the limits; both limits meet without them', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 10, noNaN: true}),
        fc.double({min: 0.05, max: 0.5, noNaN: true}),
        fc.double({min: 0, max: 0.02, noNaN: true}),
        (section, share, tolerance) => {
          const depth = oRingDepth(millimetres(section), quantityOf('ratio', share))
          const gland = {section: millimetres(section), depth}
          expect(oRingSqueeze(gland).share.si).toBeCloseTo(share, 9)
          const none = oRingSqueezeLimits(gland, {section: millimetres(0), depth: millimetres(0)})
          expect(none.least).toEqual(none.greatest)
          const wide = oRingSqueezeLimits(gland, {
            section: millimetres(tolerance),
            depth: millimetres(tolerance),
          })
          expect(wide.least.share.si).toBeLessThanOrEqual(share + 1e-12)
          expect(wide.greatest.share.si).toBeGreaterThanOrEqual(share - 1e-12)
        },
      ),
    )
  })

  test('glands without squeeze, sizes of nothing and negative tolerances are refused', () => {
    const gland = {section: millimetres(3.53), depth: millimetres(3.4)}
    expect(() => oRingSqueeze({...gland, depth: millimetres(3.53)})).toThrow(
      'Unexpected gland of 3.530 mm for a section of 3.530 mm, expected a gland shallower than the section',
    )
    expect(() => oRingSqueeze({...gland, depth: millimetres(0)})).toThrow('expected values above zero')
    expect(() => oRingSqueezeLimits(gland, {section: millimetres(0.1), depth: millimetres(0.05)})).toThrow(
      'Unexpected gland of 3.450 mm for a section of 3.430 mm',
    )
    expect(() =>
      oRingSqueezeLimits(gland, {section: quantityOf('length', -1e-4), depth: millimetres(0)}),
    ).toThrow('Unexpected tolerance below zero')
    expect(() => oRingDepth(millimetres(3.53), percent(100))).toThrow(
      'Unexpected squeeze of 1, expected above 0 and below 1',
    )
    expect(() => oRingDepth(millimetres(3.53), percent(0))).toThrow('expected above 0 and below 1')
    expect(() => oRingDepth(millimetres(0), percent(12))).toThrow('expected a section above zero')
  })
})

describe('sections of the standard series', () => {
  test.each(sectionRows)('$millimetres mm is $inches in (ISO 3601-1 and AS568, read in a reprint)', (row) => {
    expect(oRingSections.map((one) => Math.round(one.section.si * 1e5) / 100)).toContain(row.millimetres)
    expect(Math.abs(inches(row.inches).si * 1000 - row.millimetres)).toBeLessThanOrEqual(0.0051)
    expect(oRingSectionTolerance(inches(row.inches))).toBeDefined()
    expect(oRingSectionTolerance(inches(row.inches))).toEqual(
      oRingSectionTolerance(millimetres(row.millimetres)),
    )
  })

  test('a section beside the series has no tolerance here, and 3.53 mm has the four thousandths of its own', () => {
    expect(oRingSectionTolerance(millimetres(3.53))?.si).toBeCloseTo(0.004 * 0.0254, 12)
    expect(oRingSectionTolerance(millimetres(4))).toBeUndefined()
    expect(oRingSectionTolerance(millimetres(3.6))).toBeUndefined()
  })
})

describe('stretch and fill of an O-ring', () => {
  const ring = {
    section: millimetres(3.53),
    insideDiameter: millimetres(24.99),
    grooveDiameter: millimetres(25.7),
  }

  test('24.99 by 3.53 mm in a groove of 25.4 mm, 2.87 deep and 4.75 wide fills 72.42 % (computed check value)', () => {
    const fill = oRingFill({
      ...ring,
      grooveDiameter: millimetres(25.4),
      depth: millimetres(2.87),
      width: millimetres(4.75),
    })
    expect(Math.abs(fill.si * 100 - 72.42)).toBeLessThanOrEqual(0.005)
  })

  test('at rest a ring is stretched by 5 % at most (trade page, read in a reprint)', () => {
    expect(greatestStretch.si).toBe(0.05)
    expect(oRingStretch(ring).stretch.si).toBeLessThan(greatestStretch.si)
  })

  test('the stretched ring keeps its volume, added up from thin slices', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1.5, max: 7, noNaN: true}),
        fc.double({min: 10, max: 200, noNaN: true}),
        fc.double({min: 0, max: 0.05, noNaN: true}),
        (section, inside, stretch) => {
          const result = oRingStretch({
            section: millimetres(section),
            insideDiameter: millimetres(inside),
            grooveDiameter: millimetres(inside * (1 + stretch)),
          })
          const made = slicedVolume(section, inside + section)
          const stretched = slicedVolume(result.reducedSection.si * 1000, inside * (1 + stretch) + section)
          expect(stretched / made).toBeCloseTo(1, 4)
          expect(result.stretch.si).toBeCloseTo(stretch, 9)
        },
      ),
    )
  })

  test('fill is ring over groove, both added up from thin slices', () => {
    const groove = {
      ...ring,
      grooveDiameter: millimetres(25.4),
      depth: millimetres(2.87),
      width: millimetres(4.75),
    }
    let space = 0
    for (let slice = 0; slice < 1000; slice += 1)
      space += 2 * Math.PI * (12.7 + (2.87 * (slice + 0.5)) / 1000) * 4.75 * (2.87 / 1000)
    expect(oRingFill(groove).si).toBeCloseTo(slicedVolume(3.53, 24.99 + 3.53) / space, 4)
  })

  test('loose rings, rings too large for the groove and sizes of nothing are refused', () => {
    const groove = {...ring, depth: millimetres(2.87), width: millimetres(4.75)}
    expect(() => oRingStretch({...ring, grooveDiameter: millimetres(24)})).toThrow(
      'Unexpected groove of 24.000 mm in a ring of 24.990 mm, expected a groove at least as large',
    )
    expect(() => oRingStretch({...ring, insideDiameter: millimetres(0)})).toThrow('expected sizes above zero')
    expect(() => oRingFill({...groove, width: millimetres(3)})).toThrow('expected one that goes in')
    expect(() => oRingFill({...groove, width: millimetres(0)})).toThrow(
      'Unexpected groove of no depth or width, expected sizes above zero',
    )
  })
})

/** Volume of a ring in mm³ from its section and the diameter of its middle line, cut into thin sleeves. */
function slicedVolume(section: number, middle: number): number {
  const slices = 4000
  const [radius, width] = [section / 2, section / slices]
  let volume = 0
  for (let slice = 0; slice < slices; slice += 1) {
    const offset = -radius + (slice + 0.5) * width
    volume += 2 * Math.PI * (middle / 2 + offset) * 2 * Math.sqrt(radius ** 2 - offset ** 2) * width
  }
  return volume
}
