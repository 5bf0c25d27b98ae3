import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {airToVent} from '../../../src/calculations/oil/air-to-vent.ts'
import {circulationTime} from '../../../src/calculations/oil/circulation-time.ts'
import {drumCount} from '../../../src/calculations/oil/drum-count.ts'
import {oilDeviation} from '../../../src/calculations/oil/oil-deviation.ts'
import {type OilSpace, oilVolume, oilVolumeOf} from '../../../src/calculations/oil/oil-volume.ts'
import {type PumpOilSpaces, pumpOilContent} from '../../../src/calculations/oil/pump-oil-content.ts'
import {litres, litresPerMinute, metres, millimetres} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

const pipe = (bore: number, length: number): OilSpace => ({
  kind: 'pipe',
  name: 'pipe',
  bore: millimetres(bore),
  length: metres(length),
})

const spaces: PumpOilSpaces = {
  stackLength: metres(12.4),
  pressurePipeBore: millimetres(60.3),
  pressurePipeOutside: millimetres(76.1),
  returnPipeBore: millimetres(127.1),
  motorCasing: litres(4.2),
  controlValve: litres(1.5),
}

const length = fc.double({min: 0.1, max: 25, noNaN: true})
const diameter = fc.double({min: 1, max: 400, noNaN: true})

describe('oil in pipes', () => {
  test('a pipe agrees with the sum of thin square bars that fit into it', () => {
    const bars = 2000
    const side = 0.08 / bars
    let count = 0
    for (let row = 0; row < bars; row++) {
      const y = (row + 0.5) * side - 0.04
      count += 2 * Math.round(Math.sqrt(0.04 ** 2 - y ** 2) / side)
    }
    const volume = oilVolumeOf(pipe(80, 1)).si
    expect(Math.abs((count * side ** 2) / volume - 1)).toBeLessThan(1e-4)
  })

  test('an annulus is the outer pipe less the inner one, at any size', () => {
    fc.assert(
      fc.property(diameter, diameter, length, (one, other, long) => {
        fc.pre(Math.abs(one - other) > 0.01)
        const [inner, outer] = [Math.min(one, other), Math.max(one, other)]
        const annulus = oilVolumeOf({
          kind: 'annulus',
          name: 'return',
          outerDiameter: millimetres(outer),
          innerDiameter: millimetres(inner),
          length: metres(long),
        })
        const difference = oilVolumeOf(pipe(outer, long)).si - oilVolumeOf(pipe(inner, long)).si
        expect(annulus.si).toBeCloseTo(difference, 12)
      }),
    )
  })

  test('the sum keeps each part by its name, in the order given', () => {
    const sum = oilVolume([pipe(25, 1), {kind: 'casing', name: 'motor', volume: litres(4.2)}, pipe(50, 1)])
    expect(sum.parts.map((part) => part.name)).toEqual(['pipe', 'motor', 'pipe'])
    expect(sum.total.si * 1000).toBeCloseTo(0.4909 + 4.2 + 1.9635, 3)
  })

  test('no space, no bore, no length and a casing below nothing are refused', () => {
    expect(() => oilVolume([])).toThrow('Unexpected oil volume of no space, expected one or more')
    expect(() => oilVolumeOf(pipe(0, 1))).toThrow(
      'Unexpected bore of `pipe` of 0 mm, expected one above zero',
    )
    expect(() => oilVolumeOf(pipe(25, 0))).toThrow('Unexpected length of `pipe` of 0 m')
    expect(() => oilVolumeOf({kind: 'casing', name: 'valve', volume: litres(-0.5)})).toThrow(
      'Unexpected volume of `valve` of −0.5 l, expected zero or more',
    )
  })
})

describe('oil content of a pump', () => {
  test('is pressure pipe, return annulus, motor casing and control valve', () => {
    const content = pumpOilContent(spaces)
    expect(content.parts.map(({name}) => name)).toEqual([
      'pressure-pipe',
      'return-annulus',
      'motor-casing',
      'control-valve',
    ])
    const perMetre = [60.3 ** 2, 127.1 ** 2 - 76.1 ** 2].map((square) => (Math.PI * square) / 4000)
    for (const [index, volume] of perMetre.entries())
      expect((content.parts[index]?.volume.si ?? 0) * 1000).toBeCloseTo(volume * 12.4, 9)
    expect(content.total.si * 1000).toBeCloseTo(
      perMetre.reduce((sum, one) => sum + one * 12.4, 5.7),
      9,
    )
  })

  test('of two stacks one upon the other is the content of the long one', () => {
    fc.assert(
      fc.property(length, length, (one, other) => {
        const none = {motorCasing: litres(0), controlValve: litres(0)}
        const of = (long: number) => pumpOilContent({...spaces, ...none, stackLength: metres(long)}).total.si
        expect(of(one) + of(other)).toBeCloseTo(of(one + other), 12)
      }),
    )
  })

  test('a pressure pipe without a wall, or wider than the return pipe, is refused', () => {
    expect(() => pumpOilContent({...spaces, pressurePipeOutside: millimetres(60.3)})).toThrow(
      'Unexpected pressure pipe without a wall, expected',
    )
    expect(() => pumpOilContent({...spaces, returnPipeBore: millimetres(76)})).toThrow(
      'expected pipes that nest',
    )
  })
})

describe('drained oil', () => {
  test('110 l where 100 l were expected is 10 % more', () => {
    expect(oilDeviation({expected: litres(100), measured: litres(110)}).si).toBeCloseTo(0.1, 12)
    expect(oilDeviation({expected: litres(100), measured: litres(0)}).si).toBe(-1)
  })

  test('lies on the other side by as much when the measured volume mirrors the expected one', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 900, noNaN: true}),
        fc.double({min: 0, max: 1, noNaN: true}),
        (volume, off) => {
          const of = (share: number) =>
            oilDeviation({expected: litres(volume), measured: litres(volume * (1 + share))}).si
          expect(of(off)).toBeCloseTo(-of(-off), 9)
        },
      ),
    )
  })

  test('is not compared with an expectation of nothing', () => {
    expect(() => oilDeviation({expected: litres(0), measured: litres(1)})).toThrow(
      'Unexpected expected volume of 0 l, expected one above zero',
    )
    expect(() => oilDeviation({expected: litres(1), measured: litres(-1)})).toThrow(
      'Unexpected measured volume of −1 l, expected zero or more',
    )
  })
})

describe('drums', () => {
  test('hold the volume with less than one drum to spare; a full last drum is not one more', () => {
    fc.assert(
      fc.property(fc.integer({min: 1, max: 40}), fc.constantFrom(20, 60, 200, 208.198), (whole, drum) => {
        expect(drumCount({volume: litres(whole * drum), drum: litres(drum)}).drums.si).toBe(whole)
        const more = drumCount({volume: litres(whole * drum + 0.1), drum: litres(drum)})
        expect(more.drums.si).toBe(whole + 1)
        expect(more.rest.si * 1000).toBeCloseTo(drum - 0.1, 9)
      }),
    )
  })

  test('of nothing, or for nothing, are refused', () => {
    expect(() => drumCount({volume: litres(0), drum: litres(200)})).toThrow('Unexpected volume of 0 l')
    expect(() => drumCount({volume: litres(1), drum: litres(0)})).toThrow('Unexpected drum of 0 l')
  })
})

describe('flushing and venting', () => {
  const ten = quantityOf('count', 10)

  test('ten changes of 157 l at 60 l/min take as long as a bucket of 60 l filled again and again', () => {
    const {time, circulated} = circulationTime({
      volume: litres(157),
      flow: litresPerMinute(60),
      changes: ten,
    })
    let minutes = 0
    for (let passed = 0; passed < 1570; passed += 60 / 1000) minutes += 1 / 1000
    expect(Math.abs(time.si / 60 - minutes)).toBeLessThan(0.002)
    expect(circulated.si * 1000).toBeCloseTo(1570, 9)
  })

  test('twice the flow takes half the time', () => {
    fc.assert(
      fc.property(fc.double({min: 1, max: 900, noNaN: true}), (flow) => {
        const at = (one: number) =>
          circulationTime({volume: litres(157), flow: litresPerMinute(one), changes: ten}).time.si
        expect(at(flow) / at(2 * flow)).toBeCloseTo(2, 9)
      }),
    )
  })

  test('without flow, volume or a whole change is refused', () => {
    const input = {volume: litres(157), flow: litresPerMinute(60), changes: ten}
    expect(() => circulationTime({...input, flow: litresPerMinute(0)})).toThrow('Unexpected flow of 0 l/min')
    expect(() => circulationTime({...input, volume: litres(0)})).toThrow('Unexpected volume of 0 l')
    expect(() => circulationTime({...input, changes: quantityOf('count', 0)})).toThrow(
      'Unexpected 0 changes of the volume, expected one or more',
    )
  })

  test('air is what was not filled, and more than the content is refused', () => {
    expect(airToVent({content: litres(157), filled: litres(150)}).si * 1000).toBeCloseTo(7, 9)
    expect(airToVent({content: litres(0.3), filled: litres(0.1 + 0.2)}).si).toBe(0)
    expect(() => airToVent({content: litres(157), filled: litres(158)})).toThrow(
      'Unexpected filled volume above the content, expected at most the content',
    )
    expect(() => airToVent({content: litres(0), filled: litres(0)})).toThrow('Unexpected content of 0 l')
    expect(() => airToVent({content: litres(1), filled: litres(-1)})).toThrow(
      'Unexpected filled volume of −1 l',
    )
  })
})
