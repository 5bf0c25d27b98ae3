import {spawnSync} from 'node:child_process'
import {expect, test} from 'vitest'

test('the tests of the calculations notice small changes of them, and what they do not notice is explained', () => {
  const run = spawnSync(process.execPath, ['.config/mutate.mjs'], {encoding: 'utf8'})
  expect(
    `${run.stderr}${run.stdout}`
      .split('\n')
      .filter((line) => /noticed.*explained|explained.*noticed/u.test(line)),
  ).toEqual([])
  const share = /(\d+) of (\d+) noticed, ([\d.]+) %/u.exec(run.stdout)
  expect(Number(share?.[2])).toBeGreaterThan(3000)
  expect(Number(share?.[3])).toBeGreaterThanOrEqual(95)
  expect(run.status).toBe(0)
}, 500_000)
