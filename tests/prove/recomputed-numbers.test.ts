import {readdirSync} from 'node:fs'
import {join} from 'node:path'
import {expect, test} from 'vitest'
import {faultOf, printedNumbers} from './printed-numbers.ts'
import {work} from './work.ts'

test('every figure on the procedure pages of every pump is recomputed from its own explanation', () => {
  for (const vessel of readdirSync(work.site).sort()) {
    const folder = join(work.site, vessel)
    const numbers = printedNumbers(folder)
    expect(numbers.length).toBeGreaterThan(1000)
    expect(numbers.flatMap((one) => faultOf(folder, one) ?? [])).toEqual([])
  }
})
