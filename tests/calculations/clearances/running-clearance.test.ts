import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  diametralFromRadial,
  radialFromDiametral,
} from '../../../src/calculations/clearances/clearance-sides.ts'
import {runningClearance} from '../../../src/calculations/clearances/running-clearance.ts'
import {diametralMillimetres, millimetres, radialMillimetres} from '../../../src/quantities/named-units.ts'

describe('running clearance', () => {
  test('bores 200.50 and 200.54 mm with hubs 200.02 and 199.98 mm give 0.52, at least 0.48 and at most 0.56 mm (computed check value)', () => {
    const result = runningClearance({
      bores: [200.5, 200.54].map(millimetres),
      hubs: [200.02, 199.98].map(millimetres),
    })
    expect(result.mean.si * 1000).toBeCloseTo(0.52, 9)
    expect(result.smallest.si * 1000).toBeCloseTo(0.48, 9)
    expect(result.largest.si * 1000).toBeCloseTo(0.56, 9)
    expect(result.boreOvality.si * 1000).toBeCloseTo(0.04, 9)
    expect(result.hubOvality.si * 1000).toBeCloseTo(0.04, 9)
    expect(result.mean.kind).toBe('diametral-clearance')
  })

  test('the mean lies between smallest and largest, and a common shift changes nothing', () => {
    const diameters = (least: number, most: number) =>
      fc.array(fc.double({min: least, max: most, noNaN: true}), {minLength: 1, maxLength: 12})
    fc.assert(
      fc.property(
        diameters(201, 202),
        diameters(199, 200),
        fc.double({min: 0, max: 50, noNaN: true}),
        (bores, hubs, shift) => {
          const one = runningClearance({bores: bores.map(millimetres), hubs: hubs.map(millimetres)})
          const shifted = runningClearance({
            bores: bores.map((b) => millimetres(b + shift)),
            hubs: hubs.map((h) => millimetres(h + shift)),
          })
          expect(one.smallest.si).toBeLessThanOrEqual(one.mean.si + 1e-12)
          expect(one.mean.si).toBeLessThanOrEqual(one.largest.si + 1e-12)
          expect(shifted.mean.si).toBeCloseTo(one.mean.si, 9)
        },
      ),
    )
  })

  test('a hub larger than the bore and an empty list are refused', () => {
    expect(() =>
      runningClearance({
        bores: [200.02, 200.5].map(millimetres),
        hubs: [199.9, 200.07].map(millimetres),
      }),
    ).toThrow('Unexpected hub of 200.070 mm in a bore of 200.020 mm, expected hubs smaller than bores')
    expect(() => runningClearance({bores: [], hubs: [millimetres(200)]})).toThrow(
      'expected at least one bore and one hub',
    )
  })

  test('radial and diametral are half and double, and come back', () => {
    expect(diametralFromRadial(radialMillimetres(0.3)).si * 1000).toBeCloseTo(0.6, 12)
    expect(radialFromDiametral(diametralMillimetres(0.6)).si * 1000).toBeCloseTo(0.3, 12)
  })
})
