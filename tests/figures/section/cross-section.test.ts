import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {sectionWordsEn} from '../../../src/compile/section-words-en.ts'
import {distance} from '../../../src/figures/section/balloons.ts'
import {crossSection} from '../../../src/figures/section/cross-section.ts'
import type {SectionVariant} from '../../../src/figures/section/section-geometry.ts'
import {boundsOf, isInside, type Point} from '../../../src/figures/section/shape.ts'
import {crossings, labelsOf, overlaps, placesOf} from './labels-for-tests.ts'
import {changed, doubleLip, geometry, lengthsOf, numbered, sectionOf, variants} from './section-for-tests.ts'

describe.each(variants)('the section of a pump with %s', (_, variant) => {
  const section = sectionOf(variant)
  const {svg, frame, balloons, outlines} = section
  const labels = labelsOf(section)

  test('no label lies on another one', () => {
    expect(labels.length).toBe(balloons.length + 6)
    expect(overlaps(labels)).toEqual([])
  })

  test('no leader crosses another one or runs through a balloon', () => {
    expect(crossings(balloons, frame.text * 0.8)).toEqual([])
  })

  test('no leader runs through a letter', () => {
    const letters = labels.filter(({text}) => /^[XY]$/u.test(text))
    expect(letters).toHaveLength(2)
    for (const {at, wide, high} of letters)
      for (const balloon of balloons) {
        const middle: Point = [at[0] + frame.left, frame.ceiling - at[1]]
        expect(distance(middle, balloon.at, balloon.anchor)).toBeGreaterThan(Math.min(wide, high))
      }
  })

  test('each leader ends in a piece of its part that nothing hides', () => {
    for (const {part, anchor} of balloons) {
      const over = outlines.filter((one) => one.isOpen !== true && isInside(anchor, one.points))
      expect(over.at(-1)?.part, part).toBe(part)
    }
  })

  test('balloons stand beside the drawing, not on it', () => {
    const drawn = boundsOf(outlines.flatMap(({points}) => points))
    const radius = frame.text * 0.8
    for (const {at, number} of balloons)
      expect(at[0] + radius < drawn.left || at[0] - radius > drawn.right, number).toBe(true)
  })

  test('numbers count from the wet end up on each side', () => {
    for (const side of [balloons.filter(({at}) => at[0] < 0), balloons.filter(({at}) => at[0] > 0)]) {
      const upwards = [...side].sort((a, b) => a.at[1] - b.at[1]).map(({number}) => Number(number))
      expect(upwards.length).toBeGreaterThan(6)
      expect(upwards).toEqual([...upwards].sort((a, b) => a - b))
    }
  })

  test('everything lies inside the view box', () => {
    const places = placesOf(svg)
    expect(places.length).toBeGreaterThan(1000)
    const outside = places.filter(([x, y]) => x < 0 || y < 0 || x > frame.width || y > frame.height)
    expect(outside).toEqual([])
    for (const {at, wide, high, text} of labels) {
      expect(at[0] - wide, text).toBeGreaterThanOrEqual(0)
      expect(at[0] + wide, text).toBeLessThanOrEqual(frame.width)
      expect(at[1] - high, text).toBeGreaterThanOrEqual(0)
      expect(at[1] + high, text).toBeLessThanOrEqual(frame.height)
    }
  })

  test('digits are at least 2.5 mm high where it is printed 90 mm wide, and it weighs less than 40 kB', () => {
    const sizes = [...svg.matchAll(/font:[^}]*?([\d.]+)px/gu)].map(([, size]) => Number(size))
    expect(sizes).toHaveLength(1)
    for (const size of sizes) expect((size * 0.716 * 90) / frame.width).toBeGreaterThanOrEqual(2.5)
    expect(new TextEncoder().encode(svg).length).toBeLessThan(40_000)
  })
})

test('labels stay apart and leaders uncrossed where a length differs by some hundredths', () => {
  const lengths = lengthsOf(geometry).filter(([first]) => first !== 'bolts')
  fc.assert(
    fc.property(
      fc.constantFrom(...lengths),
      fc.double({min: 0.94, max: 1.06, noNaN: true}),
      (path, factor) => {
        const section = sectionOf(
          doubleLip,
          changed(path, (length) => length * factor),
        )
        expect(overlaps(labelsOf(section))).toEqual([])
        expect(crossings(section.balloons, section.frame.text * 0.8)).toEqual([])
      },
    ),
    {numRuns: 40},
  )
})

describe('the text alternative', () => {
  const told = (variant: SectionVariant): string => sectionOf(variant).alternative

  test('names all parts in order with their numbers, what is cut, and the letters of the details', () => {
    const text = told(doubleLip)
    const places = sectionOf(doubleLip)
      .balloons.map(({number}) => Number(number))
      .sort((a, b) => a - b)
    expect(places.map((number) => text.indexOf(` ${number} `) > 0)).toEqual(places.map(() => true))
    expect(text).toMatch(/ 4 lower wear ring, 5 screws of the lower wear ring, 6 impeller with hub, /u)
    expect(text).toMatch(/cut and hatched/u)
    expect(text).toMatch(/Detail X .* Detail Y /u)
    expect(sectionOf(doubleLip).svg).toContain(`aria-label="${text}"`)
  })

  test('says the direction of each lip, and changes when a lip is turned', () => {
    expect(told(doubleLip)).toContain('The open edge of the lip at the wet end looks down, to the cargo.')
    expect(told(doubleLip)).toContain('The open edge of the second lip looks up, to the cofferdam.')
    const turned: SectionVariant = {
      ...doubleLip,
      cargoLips: doubleLip.cargoLips.map((lip) => ({...lip, faces: 'cargo'})),
      singleLip: {id: 'single', faces: 'oil'},
    }
    expect(told(turned)).toContain('The open edge of the second lip looks down, to the cargo.')
    expect(told(turned)).toContain('The open edge of the single lip below the motor looks up, to the oil.')
    expect(told(turned)).not.toContain('looks up, to the cofferdam')
  })

  test('says NOT KNOWN where nobody knows rings or lips', () => {
    expect(told({...doubleLip, ringFit: 'not-known'})).toContain('How the wear rings are held is NOT KNOWN')
    expect(told({...doubleLip, cargoLips: []})).toContain('What the cargo seal is like is NOT KNOWN')
    expect(told(doubleLip)).not.toContain('NOT KNOWN')
  })
})

test('a part that the pump has is not drawn without its balloon', () => {
  const {motor: _, ...others} = numbered
  const drawn = (parts: typeof numbered): unknown =>
    crossSection({geometry, variant: doubleLip, parts, words: sectionWordsEn})
  expect(() => drawn(others)).toThrow(
    'Unexpected part `motor` without a balloon, expected one of the parts list',
  )
  expect(() => drawn(numbered)).not.toThrow()
})
