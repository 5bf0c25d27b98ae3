import {describe, expect, test} from 'vitest'
import {printedEntryLimits} from '../published-values/entry-limit-rows.ts'
import {demonstration} from './demonstration.ts'

const {content} = await demonstration()

interface StatedLimit {
  readonly side: string
  readonly si: number
  readonly status: string
  readonly source: string
  readonly where: string
}

function stated(id: string): StatedLimit {
  const limit = content.office.house.entryLimits.find((one) => one.id === id)
  if (limit?.limit.kind !== 'known') throw new Error(`Unexpected entry limit \`${id}\`, expected a known one`)
  const {quantity, origin} = limit.limit
  return {
    side: limit.side,
    si: quantity.si,
    status: origin.status,
    source: origin.source,
    where: origin.where ?? '',
  }
}

describe('the entry limits of the house', () => {
  test('are limits of the house, each with the place it rests on', () => {
    for (const {id} of content.office.house.entryLimits) {
      expect([id, stated(id).status]).toEqual([id, 'common-practice'])
      expect(stated(id).where, id).not.toBe('')
    }
  })

  test('repeat what the superseded resolution prints for flammable and toxic gas (read)', () => {
    expect(stated('flammable-gas')).toMatchObject({side: 'not-above', source: 'a1050'})
    expect(stated('flammable-gas').si * 100).toBeCloseTo(printedEntryLimits.lowerFlammableLimitPercent, 12)
    expect(stated('toxic-gas')).toMatchObject({side: 'not-above', source: 'a1050'})
    expect(stated('toxic-gas').si * 100).toBeCloseTo(printedEntryLimits.exposureLimitPercent, 12)
    expect(content.sources.get('a1050')?.status).toBe('superseded')
  })

  test('name the printed 21 % of oxygen beside the figure that instruments show in clean air', () => {
    const {side, si, where} = stated('oxygen')
    expect([side, where.includes(`${printedEntryLimits.oxygenPercent} % by volume`)]).toEqual([
      'not-below',
      true,
    ])
    expect(Math.abs(si * 100 - printedEntryLimits.oxygenPercent)).toBeLessThanOrEqual(0.1 + 1e-9)
  })

  test('keep carbon dioxide below 0.5 %, not at it (read in a secondary page)', () => {
    expect(stated('carbon-dioxide').side).toBe('not-above')
    expect(stated('carbon-dioxide').si * 1e6).toBeLessThan(printedEntryLimits.carbonDioxidePartsPerMillion)
  })

  test('take no figure from the resolution that was not read', () => {
    const sources = content.office.house.entryLimits.map(({id}) => stated(id).source)
    expect(sources).not.toContain('msc-581')
  })
})
