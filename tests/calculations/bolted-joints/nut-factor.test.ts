import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {hexagonHead} from '../../../src/calculations/bolted-joints/hexagon-heads.ts'
import {nutFactorFromFriction} from '../../../src/calculations/bolted-joints/nut-factor-from-friction.ts'
import {
  nutFactorOf,
  nutFactorPreload,
  nutFactorTorque,
  torqueUnderOtherNutFactor,
} from '../../../src/calculations/bolted-joints/nut-factor-torque.ts'
import {tighteningTorque} from '../../../src/calculations/bolted-joints/tightening-torque.ts'
import {
  kilonewtons,
  millimetres,
  newtonMetres,
  newtons,
  newtonsPerSquareMillimetre,
  percent,
  ratio,
} from '../../../src/quantities/named-units.ts'

const share = (of: number) => fc.double({min: 0.05, max: of, noNaN: true})

function tightened(size: string, friction: number) {
  return tighteningTorque({
    thread: coarseThread(size),
    ...hexagonHead(size),
    yieldStress: newtonsPerSquareMillimetre(640),
    utilisation: percent(90),
    threadFriction: ratio(friction),
    headFriction: ratio(friction),
    edition: '2003',
  })
}

describe('torque from a nut factor', () => {
  test('the preload found from a torque gives the torque again, and the factor of both is the one asked for', () => {
    fc.assert(
      fc.property(share(0.5), share(40), share(900), (nutFactor, diameter, preload) => {
        const input = {nutFactor: ratio(nutFactor), diameter: millimetres(diameter)}
        const torque = nutFactorTorque({...input, preload: kilonewtons(preload)})
        expect(nutFactorPreload({...input, torque}).si / 1000 / preload).toBeCloseTo(1, 12)
        const factor = nutFactorOf({
          torque,
          preload: kilonewtons(preload),
          diameter: millimetres(diameter),
        })
        expect(factor.si / nutFactor).toBeCloseTo(1, 12)
      }),
    )
  })

  test.each([
    [{nutFactor: ratio(0.04)}, 'Unexpected nut factor 0.04, expected 0.05 to 0.50'],
    [{nutFactor: ratio(20)}, 'Unexpected nut factor 20, expected 0.05 to 0.50'],
    [{diameter: millimetres(0)}, 'Unexpected diameter of 0, expected one above zero'],
    [{preload: newtons(0)}, 'Unexpected preload of 0, expected one above zero'],
  ])('%j is refused', (changed, reason) => {
    const input = {nutFactor: ratio(0.2), diameter: millimetres(12), preload: newtons(1000)}
    expect(() => nutFactorTorque({...input, ...changed})).toThrow(reason)
  })

  test('a torque, a preload or a diameter of nothing has no nut factor and gives no preload', () => {
    const known = {torque: newtonMetres(10), preload: newtons(1000), diameter: millimetres(12)}
    expect(() => nutFactorOf({...known, preload: newtons(0)})).toThrow('Unexpected preload of 0')
    expect(() => nutFactorOf({...known, torque: newtonMetres(0)})).toThrow('Unexpected torque of 0')
    expect(() => nutFactorOf({...known, diameter: millimetres(0)})).toThrow('Unexpected diameter of 0')
    expect(() =>
      nutFactorPreload({nutFactor: ratio(0.2), diameter: millimetres(12), torque: newtonMetres(0)}),
    ).toThrow('Unexpected torque of 0')
  })
})

describe('the torque for the same preload under another nut factor', () => {
  const swapped = (torque: number, from: number, to: number) =>
    torqueUnderOtherNutFactor({
      torque: newtonMetres(torque),
      nutFactor: ratio(from),
      otherNutFactor: ratio(to),
    }).si

  test('130 under 0.17 is 68.8 under 0.09, and not the 53 that one page prints', () => {
    expect(swapped(130, 0.17, 0.09)).toBeCloseTo(68.82, 2)
    expect(Math.abs(swapped(130, 0.17, 0.09) - 53)).toBeGreaterThan(15)
  })

  test('keeps the preload', () => {
    const diameter = millimetres(16)
    const before = nutFactorPreload({nutFactor: ratio(0.2), diameter, torque: newtonMetres(200)})
    const after = nutFactorPreload({
      nutFactor: ratio(0.12),
      diameter,
      torque: newtonMetres(swapped(200, 0.2, 0.12)),
    })
    expect(after.si / before.si).toBeCloseTo(1, 12)
  })

  test('refuses a factor out of range on either side and a torque of nothing', () => {
    expect(() => swapped(100, 0.6, 0.2)).toThrow('Unexpected nut factor 0.6')
    expect(() => swapped(100, 0.2, 0.01)).toThrow('Unexpected nut factor 0.01')
    expect(() => swapped(0, 0.2, 0.1)).toThrow('Unexpected torque of 0')
  })
})

describe('nut factor from friction', () => {
  const face = {bearingDiameter: millimetres(15.2), holeDiameter: millimetres(11)}
  const ofM10 = (friction: number) =>
    nutFactorFromFriction({
      thread: coarseThread('M10'),
      ...face,
      threadFriction: ratio(friction),
      headFriction: ratio(friction),
    })

  test('the face of 15.2 mm around a hole of 11 mm rubs at 13.212 mm, a little outside the middle', () => {
    const {si} = ofM10(0.1).bearingFrictionDiameter
    expect(Math.abs(si * 1000 - 13.212)).toBeLessThanOrEqual(0.0005)
    expect(si * 1000).toBeGreaterThan(13.1)
  })

  test('the friction diameter is that of a face summed ring by ring', () => {
    const rings = 20_000
    const width = (15.2 - 11) / rings
    let moment = 0
    let area = 0
    for (let ring = 0; ring < rings; ring += 1) {
      const diameter = 11 + (ring + 0.5) * width
      moment += diameter * diameter
      area += diameter
    }
    expect(ofM10(0.1).bearingFrictionDiameter.si * 1000).toBeCloseTo(moment / area, 6)
  })

  test('agrees with the exact form of the torque within 2 %', () => {
    for (const size of ['M8', 'M12', 'M16', 'M24', 'M30']) {
      const {nutFactor} = nutFactorFromFriction({
        thread: coarseThread(size),
        ...hexagonHead(size),
        threadFriction: ratio(0.12),
        headFriction: ratio(0.12),
      })
      const exact = nutFactorOf({
        ...tightened(size, 0.12),
        diameter: coarseThread(size).nominalDiameter,
      })
      expect(Math.abs(nutFactor.si / exact.si - 1)).toBeLessThan(0.02)
    }
  })

  test('friction out of range and a hole as large as the face are refused', () => {
    expect(() => ofM10(0.01)).toThrow('Unexpected friction 0.01, expected 0.02 to 0.60')
    expect(() =>
      nutFactorFromFriction({
        thread: coarseThread('M10'),
        bearingDiameter: millimetres(11),
        holeDiameter: millimetres(11),
        threadFriction: ratio(0.1),
        headFriction: ratio(0.1),
      }),
    ).toThrow('Unexpected hole as large as the bearing face')
  })
})
