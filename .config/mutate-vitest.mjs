// The few words of vitest that the tests of calculations use, so that one process can run them again for each mutant.

import {chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend} from '@vitest/expect'

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin)

/** Tests in the order in which they were described. */
const tests = []

export const {expect} = chai

export function describe(_, body) {
  body()
}

export function test(name, body) {
  tests.push({name, body})
}

/** `test.each(rows)(name, body)`: a row that is a list is spread over the arguments. */
test.each = (rows) => (name, body) => {
  for (const row of rows) test(name, () => body(...(Array.isArray(row) ? row : [row])))
}

/** Takes what was described since the last time. */
export function takeTests() {
  return tests.splice(0)
}
