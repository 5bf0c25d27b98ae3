import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {entryLimit, entryLimitNote} from '../../../src/calculations/entry/entry-limit.ts'
import {percent, ratio} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

const partsPerMillion = (value: number) => quantityOf('concentration', value * 1e-6)

describe('entry limit', () => {
  test('a limit in % is the same limit in ppm, and a share of a share is their product', () => {
    fc.assert(
      fc.property(
        fc.double({min: 0.01, max: 100, noNaN: true}),
        fc.double({min: 0.01, max: 1, noNaN: true}),
        fc.double({min: 0.01, max: 1, noNaN: true}),
        (limit, one, other) => {
          const of = (share: number) => entryLimit({limit: percent(limit), share: ratio(share)})
          expect(of(one).si).toBeCloseTo(
            entryLimit({limit: partsPerMillion(limit * 1e4), share: ratio(one)}).si,
            12,
          )
          expect(entryLimit({limit: of(one), share: ratio(other)}).si).toBeCloseTo(of(one * other).si, 12)
        },
      ),
    )
  })

  test('it leaves the judgement to the permit and names the superseded source as such', () => {
    expect(entryLimitNote.words).toContain('the permit decides')
    expect(entryLimitNote.sources.map(({howKnown, status}) => [howKnown, status])).toEqual([
      ['read', 'superseded'],
      ['reprint', 'current'],
    ])
  })

  test('limits and shares of nothing or above the whole are refused', () => {
    const [noLimit, noShare] = [
      'Unexpected limit of nothing or above 100 %, expected a content by volume',
      'Unexpected share of nothing or above 100 %, expected a share of the limit',
    ]
    expect(() => entryLimit({limit: percent(0), share: percent(50)})).toThrow(noLimit)
    expect(() => entryLimit({limit: percent(101), share: percent(50)})).toThrow(noLimit)
    expect(() => entryLimit({limit: percent(5), share: percent(0)})).toThrow(noShare)
    expect(() => entryLimit({limit: percent(5), share: percent(101)})).toThrow(noShare)
  })
})
