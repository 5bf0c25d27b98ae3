import {describe, expect, test} from 'vitest'
import {valueIn} from '../../src/quantities/print-quantity.ts'
import type {QuantityKind} from '../../src/quantities/quantity.ts'
import {units} from '../../src/quantities/units.ts'
import {demonstration, stepsOf, wordsOf} from './demonstration.ts'

const {content, values} = await demonstration()
const vessel = content.vessels.get('vessel-a')
const design = content.designs.get('design-a')
const pump = values.vessels.get('vessel-a')?.get('4s')

/** A value of pump 4S in the unit asked for. */
function figure(id: string, symbol: string): number {
  const result = pump?.get(id)?.result
  const unit = units.find((one) => one.symbol === symbol && one.kind === kindOf(id))
  if (result?.kind !== 'known' || !result.quantity || !unit) return Number.NaN
  return valueIn(result.quantity, unit.symbol)
}

function kindOf(id: string): QuantityKind | undefined {
  const result = pump?.get(id)?.result
  return result?.kind === 'known' ? result.quantity?.kind : undefined
}

function uncertaintyOf(tool: string, unit: string): number {
  const datum = content.tools.get(tool)?.instrument?.uncertainty
  return datum?.kind === 'known' ? valueIn(datum.quantity, unit) : Number.NaN
}

describe('the bands of a purge', () => {
  test.each([
    ['oil-rate', 'ml/h'],
    ['cargo-rate', 'ml/h'],
    ['oil-day', 'ml/d'],
    ['cargo-day', 'ml/d'],
  ])('of %s rise from watching over renewing to stopping', (name, unit) => {
    const bands = ['watch', 'renew', 'stop'].map((band) => figure(`setting.${name}-${band}`, unit))
    expect(bands).toEqual([...new Set(bands)].sort((a, b) => a - b))
    expect(bands.every((one) => one > 0)).toBe(true)
  })

  test('are held by limits that renew first and stop later', () => {
    const limits = new Map(design?.limits.map((one) => [one.id, one]))
    for (const name of ['oil-rate', 'cargo-rate', 'oil-day', 'cargo-day']) {
      expect(limits.get(`${name}-renew`)).toMatchObject({side: 'not-above', outside: 'RENEW'})
      expect(limits.get(`${name}-stop`)).toMatchObject({side: 'not-above', outside: 'STOP'})
    }
  })

  test('are marked as figures for demonstration', () => {
    const bands = (design?.settings ?? []).filter(({id}) => /-(?:rate|day)-(?:watch|renew|stop)$/u.test(id))
    expect(bands).toHaveLength(12)
    for (const {value} of bands) expect(value).toMatchObject({origin: {status: 'assumed'}})
  })
})

describe('a purge', () => {
  const purging = content.procedures.get('purging')
  const ids = (purging ? stepsOf(purging) : []).map((step) => step.id)

  test('drains first, sees gas flow before it counts the time, and measures when the gas is off', () => {
    const order = ['drain-cofferdam', 'start-purge', 'confirm-flow', 'run-purge', 'vent', 'read-volume']
    expect(ids.filter((id) => order.includes(id))).toEqual(order)
  })

  test.each(['purging', 'purge-result', 'restoration'])('in %s is NOT VALID where no gas was seen', (id) => {
    const procedure = content.procedures.get(id)
    const choices = (procedure ? stepsOf(procedure) : []).flatMap((step) =>
      step.parts.flatMap((part) => (part.kind === 'alternatives' ? part.items : [])),
    )
    const words = choices.map((choice) => wordsOf(choice.text))
    expect(
      words.filter((text) => /no gas|wheel stands still/iu.test(text) && /NOT VALID/u.test(text)),
    ).not.toEqual([])
  })

  test.each([...content.jobs.values()].filter((job) => job.procedures.some((one) => one.id === 'isolation')))(
    'of job $id is done before its gas is locked off',
    (job) => {
      const order = job.procedures.map((one) => one.id)
      expect(order).toContain('purging')
      expect(order.indexOf('purging')).toBeLessThan(order.indexOf('isolation'))
    },
  )
})

describe('the test run', () => {
  test('raises the speed stage by stage and stays below the rated speed by more than the indicator errs', () => {
    const speeds = [
      'setting.idle-speed',
      'setting.turn-speed-highest',
      'setting.half-speed',
      'setting.duty-speed',
      'rating.speed',
    ].map((id) => figure(id, 'rpm'))
    expect(speeds).toEqual([...new Set(speeds)].sort((a, b) => a - b))
    expect(figure('rating.speed', 'rpm') - figure('setting.duty-speed', 'rpm')).toBeGreaterThan(
      uncertaintyOf('speed-indicator', 'rpm'),
    )
  })

  test.each(vessel?.tanks ?? [])(
    'shows in tank $tag at half speed a gauge that rises, and tells the wrong direction from the right one',
    (tank) => {
      const height = tank.height.kind === 'known' ? valueIn(tank.height.quantity, 'm') : Number.NaN
      const lift = height - figure('setting.test-water-level', 'm') + figure('geometry.gauge-height', 'm')
      const closed = figure('curve.shut-off-head', 'm')
      const head = closed * (figure('setting.half-speed', 'rpm') / figure('curve.speed', 'rpm')) ** 2
      const least = (head * figure('setting.direction-share', '%')) / 100
      /** Source: fresh water, 9.81 kPa for each metre; textbook, from memory. */
      const error = uncertaintyOf('discharge-gauge', 'bar') * 10.2
      expect(least - lift).toBeGreaterThan(2 * error)
      expect(head - least).toBeGreaterThan(2 * error)
    },
  )

  test('reads a head that fits its gauge', () => {
    const size = content.tools.get('discharge-gauge')?.size.en ?? ''
    const range = Number(/to (\d+) bar/u.exec(size)?.[1])
    expect(figure('curve.shut-off-head', 'm') / 10.2).toBeLessThan(range)
  })
})
