import {describe, expect, test} from 'vitest'
import {barGauge, litres, metres} from '../../src/quantities/named-units.ts'
import {vesselA} from '../compile/vessel-for-tests.ts'
import {atLine, type Changes, computed, figureOf, notKnown, stated, valueIn} from './content-for-tests.ts'

const stripping = {
  footBelowStack: stated(metres(0.75), '0.75', 'm'),
  topAboveDeck: stated(metres(1.6), '1.60', 'm'),
  backPressure: stated(barGauge(1), '1.0', 'bar(g)'),
  place: atLine(70),
}

const source = {title: {en: 'regulation'}, edition: 'excerpt', status: 'unknown'} as const
const changes: Changes = {
  design: {stripping},
  sources: {'marpol-annex-ii': source},
  vessel: {
    built: '2011-06-30',
    tanks: vesselA.tanks.map((tank) =>
      tank.id === '4s' ? {...tank, recordedResidue: stated(litres(46), '46', 'l')} : tank,
    ),
  },
}

describe('stripping of a pump', () => {
  const {values, others} = computed(changes)

  test('is held against what the ship recorded for the tank, and NOT KNOWN where she recorded nothing', () => {
    expect(figureOf(values, 'stripping.recorded')).toBe('46 l')
    expect(valueIn(others, 'stripping.recorded').result).toEqual({
      kind: 'not-known',
      missing: [`recorded stripping quantity of tank ${vesselA.tanks[0]?.tag} (not stated for this ship)`],
    })
  })

  test.each([
    ['1986-06-30', '300 l', '12.1'],
    ['1986-07-01', '100 l', '12.2'],
    ['2006-12-31', '100 l', '12.2'],
    ['2007-01-01', '75 l', '12.3'],
  ])('of a ship built on %s has a ceiling of %s', (built, ceiling, regulation) => {
    const old = computed({...changes, vessel: {...changes.vessel, built}}).values
    expect(figureOf(old, 'stripping.ceiling')).toBe(ceiling)
    expect(valueIn(old, 'stripping.ceiling').condition).toContain(`regulation ${regulation}`)
    expect(valueIn(old, 'stripping.ceiling').calculation?.inputs[0]?.title).toContain(built)
  })

  test('asks for the weight of the riser and the back pressure, rounded up', () => {
    const pascals = 1000 * 9.80665 * (12 + 0.75 + 1.6) + 1e5
    expect(figureOf(values, 'stripping.gas-pressure')).toBe(
      `${(Math.ceil(pascals / 1e3) / 100).toFixed(2)} bar(g)`,
    )
  })

  test('leaves the gas pressure not known with the stack, and prints nothing where the design states no riser', () => {
    const gap = computed({
      ...changes,
      vessel: {
        ...changes.vessel,
        positions: vesselA.positions.map((one) => ({...one, stackLength: notKnown('never measured')})),
      },
    })
    expect(valueIn(gap.values, 'stripping.gas-pressure').result.kind).toBe('not-known')
    expect(figureOf(gap.values, 'stripping.ceiling')).toBe('75 l')
    expect([...computed().values.keys()].filter((id) => id.startsWith('stripping.'))).toEqual([])
  })
})
