import {spawnSync} from 'node:child_process'
import {transformSync} from 'esbuild'
import {expect, test} from 'vitest'
import {mutantsOf, withAllMutants} from '../../.config/mutants.mjs'

test('the tests of the calculations notice small changes of them, and what they do not notice is explained', () => {
  const run = spawnSync(process.execPath, ['.config/mutate.mjs'], {encoding: 'utf8'})
  expect(
    `${run.stderr}${run.stdout}`
      .split('\n')
      .filter((line) => /noticed.*explained|explained.*noticed|fewer|Error/u.test(line)),
  ).toEqual([])
  const share = /(\d+) of (\d+) noticed, ([\d.]+) %/u.exec(run.stdout)
  expect(Number(share?.[2])).toBeGreaterThan(3500)
  expect(Number(share?.[3])).toBeGreaterThanOrEqual(95)
  expect(run.status).toBe(0)
}, 500_000)

const source = `
function work(a, b) {
  if (a > b) throw new Error('above ' + 1)
  let all = 0
  for (let turn = 0; turn < 2; turn += 1) all += a
  return a === b ? Math.max(all, b) * 2.5 : all && !b
}
answer = work
`

/** The function of the source with one change in force, none for zero, and how often its loop turned. */
function changed(mutant: number): {readonly run: (a: number, b: number) => unknown; turns: () => number} {
  let turns = 0
  const {code} = transformSync(withAllMutants(source, 1), {loader: 'ts'})
  const made: unknown = new Function('__mutant', '__turn', `let answer; ${code}; return answer`)(
    mutant,
    () => {
      turns += 1
      if (turns > 100) throw new RangeError('endless')
    },
  )
  if (typeof made !== 'function') throw new Error('Unexpected source without a function')
  return {run: (a, b) => made(a, b), turns: () => turns}
}

test('a source is changed at each place that a test can notice, and words are left alone', () => {
  const told = mutantsOf(source).map(({start, end, text}) => `${source.slice(start, end)} → ${text}`)
  expect([...told].sort()).toEqual(
    [
      'a > b → a <= b',
      'a > b → a >= b',
      "throw new Error('above ' + 1) → ",
      '0 → 1',
      '0 → 1',
      '2 → 0',
      '2 → 3',
      '1 → 0',
      '1 → 2',
      'turn < 2 → turn <= 2',
      'turn < 2 → turn >= 2',
      'turn += 1 → turn -= 1',
      'all += a → all -= a',
      'a === b → a !== b',
      'a === b ? Math.max(all, b) * 2.5 : all && !b → Math.max(all, b) * 2.5',
      'a === b ? Math.max(all, b) * 2.5 : all && !b → all && !b',
      'Math.max(all, b) → Math.min(all, b)',
      'Math.max(all, b) * 2.5 → Math.max(all, b) / 2.5',
      '2.5 → 2.525',
      '2.5 → 0',
      'all && !b → all || !b',
      'all && !b → all',
      'all && !b → !b',
      '!b → b',
    ].sort(),
  )
})

test('one change is in force at a time, none where none is asked for', () => {
  const plain = changed(0)
  expect([plain.run(4, 4), plain.run(0, 3), plain.turns()]).toEqual([20, 0, 4])
  expect(() => plain.run(2, 1)).toThrow('above 1')
  const inputs = [
    [4, 4],
    [1, 4],
    [1, 0],
    [-1, 0],
    [0, 1],
  ] as const
  const outcome = (mutant: number): string =>
    JSON.stringify(
      inputs.map(([a, b]) => {
        try {
          return changed(mutant).run(a, b)
        } catch (error) {
          return String(error)
        }
      }),
    )
  const unchanged = outcome(0)
  const count = mutantsOf(source).length
  const same = Array.from({length: count}, (_, index) => index + 1).filter(
    (mutant) => outcome(mutant) === unchanged,
  )
  expect(same).toEqual([])
  expect(outcome(count + 1)).toBe(unchanged)
})
