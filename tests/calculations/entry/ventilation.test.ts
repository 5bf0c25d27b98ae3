import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {airChanges} from '../../../src/calculations/entry/air-changes.ts'
import {dilution} from '../../../src/calculations/entry/dilution.ts'
import {gasBuildUp} from '../../../src/calculations/entry/gas-build-up.ts'
import {
  airChangesWithin,
  halfLife,
  perfectMixing,
  type Ventilation,
  ventilationTime,
} from '../../../src/calculations/entry/ventilation-time.ts'
import {nothingInSupply} from '../../../src/calculations/gas/well-mixed.ts'
import {
  count,
  cubicMetres,
  cubicMetresPerHour,
  hours,
  minutes,
  percent,
  ratio,
  seconds,
} from '../../../src/quantities/named-units.ts'

function fan(volume: number, flow: number, mixing = 1): Ventilation {
  return {volume: cubicMetres(volume), flow: cubicMetresPerHour(flow), mixing: ratio(mixing)}
}

describe('air changes', () => {
  test('oxygen above that of the air blown in is never reached and is refused', () => {
    expect(() => airChanges({from: percent(16), to: percent(21), supply: percent(20.9)})).toThrow(
      'Unexpected aim of 21.0 %, expected one between 16.0 % at the start and 20.9 % of the supply',
    )
  })
})

describe('ventilation time', () => {
  test('half mixing takes twice the time, and the changes within a time are its inverse', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 5000, noNaN: true}),
        fc.double({min: 10, max: 20_000, noNaN: true}),
        fc.double({min: 0.05, max: 1, noNaN: true}),
        fc.double({min: 0, max: 40, noNaN: true}),
        (volume, flow, mixing, changes) => {
          const time = ventilationTime(fan(volume, flow, mixing), count(changes))
          expect(airChangesWithin(fan(volume, flow, mixing), time).si).toBeCloseTo(changes, 9)
          expect(time.si * mixing).toBeCloseTo(ventilationTime(fan(volume, flow), count(changes)).si, 3)
        },
      ),
    )
  })

  test('in each half-life the content falls to half', () => {
    const ventilation = fan(60, 600, 0.5)
    const half = halfLife(ventilation)
    for (const times of [1, 2, 3]) {
      const {content} = dilution({
        ...ventilation,
        from: percent(80),
        supply: nothingInSupply,
        time: seconds(times * half.si),
      })
      expect(content.si * 100).toBeCloseTo(80 / 2 ** times, 9)
    }
  })

  test('no volume, no flow, mixing out of range, and counts or times below none are refused', () => {
    const refusal = 'Unexpected volume or air flow of nothing, expected values above zero'
    expect(() => halfLife(fan(0, 600))).toThrow(refusal)
    expect(() => halfLife(fan(60, 0))).toThrow(refusal)
    expect(() => halfLife(fan(60, 600, 0))).toThrow(
      'Unexpected mixing of 0, expected one above 0 and at most 1',
    )
    expect(() => halfLife(fan(60, 600, 1.1))).toThrow('Unexpected mixing of 1.1')
    expect(() => ventilationTime(fan(60, 600), count(-1))).toThrow(
      'Unexpected count of -1 air changes, expected none or more',
    )
    expect(() => airChangesWithin(fan(60, 600), seconds(-1))).toThrow(
      'Unexpected time below zero, expected none or more',
    )
  })
})

describe('dilution', () => {
  test('after the air changes to an aim, the content is the aim', () => {
    fc.assert(
      fc.property(
        fc.double({min: 5, max: 19, noNaN: true}),
        fc.double({min: 19.1, max: 20.8, noNaN: true}),
        (from, to) => {
          const change = {from: percent(from), to: percent(to), supply: percent(20.9)}
          const ventilation = fan(600, 6000, 0.5)
          const time = ventilationTime(ventilation, airChanges(change))
          expect(dilution({...ventilation, ...change, time}).content.si * 100).toBeCloseTo(to, 9)
        },
      ),
    )
  })
})

describe('build-up of gas', () => {
  test('adding gas and air in small steps comes to the same content', () => {
    fc.assert(
      fc.property(
        fc.double({min: 10, max: 500, noNaN: true}),
        fc.double({min: 0.1, max: 1, noNaN: true}),
        fc.double({min: 0, max: 5, noNaN: true}),
        fc.double({min: 0, max: 30, noNaN: true}),
        fc.double({min: 0, max: 2, noNaN: true}),
        (flow, mixing, source, from, supply) => {
          const [volume, steps, time] = [100, 20_000, 1]
          let content = from / 100
          for (let step = 0; step < steps; step += 1) {
            const air = ((flow * mixing * time) / steps) * (supply / 100 - content)
            content += (air + (source / 10) * (time / steps)) / volume
          }
          const found = gasBuildUp({
            ...fan(volume, flow, mixing),
            source: cubicMetresPerHour(source / 10),
            from: percent(from),
            supply: percent(supply),
            time: hours(time),
          })
          expect(Math.abs(found.content.si - content)).toBeLessThanOrEqual(1e-4)
        },
      ),
      {numRuns: 20},
    )
  })

  test('it comes to source by flow in the end, whatever was there, and without a source it is dilution', () => {
    const ventilation = {...fan(60, 600, 0.5), supply: nothingInSupply, from: percent(40)}
    const end = gasBuildUp({...ventilation, source: cubicMetresPerHour(3), time: hours(50)})
    expect(end.steady.si).toBeCloseTo(0.01, 12)
    expect(end.content.si).toBeCloseTo(end.steady.si, 12)
    expect(gasBuildUp({...ventilation, source: cubicMetresPerHour(0), time: minutes(7)}).content.si).toBe(
      dilution({...ventilation, time: minutes(7)}).content.si,
    )
    expect(perfectMixing.si).toBe(1)
  })

  test('a source below none or as large as the flow is refused', () => {
    const ventilation = {...fan(60, 600), supply: nothingInSupply, from: percent(0), time: hours(1)}
    expect(() => gasBuildUp({...ventilation, source: cubicMetresPerHour(-1)})).toThrow(
      'Unexpected source below zero, expected none or more',
    )
    expect(() => gasBuildUp({...ventilation, source: cubicMetresPerHour(601)})).toThrow(
      'Unexpected source as large as the air flow, expected one that is small beside it',
    )
  })
})
