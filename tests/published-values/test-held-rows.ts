import {describe, expect, test} from 'vitest'
import {deviationOf, type HeldRows} from './agreement.ts'

/** Tests of every published row: each figure of it agrees within its tolerance. */
export function testHeldRows(all: readonly HeldRows[]): void {
  for (const held of all) {
    const {calculation, source, rows, known} = held.header
    describe(`${calculation} agrees with: ${source}`, () => {
      test.each(rows.map((row, index) => [index, `${known[index]}: ${JSON.stringify(row)}`] as const))(
        'row %d, %s',
        (index) => {
          const agreements = held.agreements()[index] ?? []
          expect(agreements.length).toBeGreaterThan(0)
          for (const one of agreements)
            expect(
              deviationOf(one),
              `${one.what}: ${one.found}, published ${one.published}`,
            ).toBeLessThanOrEqual(1)
        },
      )
    })
  }
}
