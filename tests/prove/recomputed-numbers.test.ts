import {readdirSync} from 'node:fs'
import {join} from 'node:path'
import {expect, test} from 'vitest'
import {faultOf, readHandbook} from './printed-numbers.ts'
import {expectNone, work} from './work.ts'

test('every figure of every vessel is recomputed from its own explanation', () => {
  for (const vessel of readdirSync(work.site).sort()) {
    const handbook = readHandbook(join(work.site, vessel))
    expect(handbook.numbers.length).toBeGreaterThan(1000)
    expectNone(handbook.numbers.flatMap((one) => faultOf(one, handbook) ?? []))
  }
})
