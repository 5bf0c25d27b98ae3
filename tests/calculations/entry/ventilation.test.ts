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
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {
  airChangeRows,
  buildUpMinutes,
  buildUpRows,
  fanRow,
  remainingRows,
  twentyChanges,
} from '../../published-values/ventilation-rows.ts'

const partsPerMillion = (value: number) => quantityOf('concentration', value * 1e-6)

function fan(volume: number, flow: number, mixing = 1): Ventilation {
  return {volume: cubicMetres(volume), flow: cubicMetresPerHour(flow), mixing: ratio(mixing)}
}

describe('air changes', () => {
  test.each(airChangeRows)('$what takes $changes (computed check value)', ({from, to, supply, changes}) => {
    const found = airChanges({from: percent(from), to: percent(to), supply: percent(supply)}).si
    expect(Math.abs(found - changes)).toBeLessThanOrEqual(0.0005)
  })

  test('oxygen above that of the air blown in is never reached and is refused', () => {
    expect(() => airChanges({from: percent(16), to: percent(21), supply: percent(20.9)})).toThrow(
      'Unexpected aim of 21.0 %, expected one between 16.0 % at the start and 20.9 % of the supply',
    )
  })
})

describe('ventilation time', () => {
  test('600 m³, 20 changes and 6000 m³/h take 2.0 h (computed check value)', () => {
    expect(Math.abs(ventilationTime(fan(600, 6000), count(20)).si / 3600 - twentyChanges)).toBeLessThan(1e-9)
  })

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
  test.each(remainingRows.map((remaining, index) => ({remaining, changes: index + 1})))(
    '$changes air changes leave $remaining % (computed check value)',
    ({remaining, changes}) => {
      const {content} = dilution({
        ...fan(1, changes),
        from: percent(100),
        supply: nothingInSupply,
        time: hours(1),
      })
      const digits = remaining < 0.1 ? 0.00005 : 0.0005
      expect(Math.abs(content.si * 100 - remaining)).toBeLessThanOrEqual(digits)
    },
  )

  test('50 ppm in 60 m³ with 600 m³/h for 15 min are 4.104 ppm after 2.5 changes (computed check value)', () => {
    const after = dilution({
      ...fan(60, 600),
      from: partsPerMillion(50),
      supply: nothingInSupply,
      time: minutes(15),
    })
    expect(after.changes.si).toBeCloseTo(fanRow.changes, 12)
    expect(Math.abs(after.content.si * 1e6 - fanRow.partsPerMillion)).toBeLessThanOrEqual(0.0005)
  })

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
  const rows = buildUpRows.flatMap(({changesAnHour, contents}) =>
    contents.map((content, index) => ({changesAnHour, after: buildUpMinutes[index] ?? Number.NaN, content})),
  )

  /** A thousandth of the source that the table takes, as the table knows no limit of a content. */
  function builtUp(changesAnHour: number, after: number): number {
    return gasBuildUp({
      ...fan(1, changesAnHour),
      source: cubicMetresPerHour(0.001),
      from: percent(0),
      supply: nothingInSupply,
      time: minutes(after),
    }).content.si
  }

  test.each(rows)(
    '$changesAnHour changes an hour, $after min: $content (read)',
    ({changesAnHour, after, content}) => {
      expect(Math.abs(builtUp(changesAnHour, after) * 1000 - content)).toBeLessThanOrEqual(0.00005)
    },
  )

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
