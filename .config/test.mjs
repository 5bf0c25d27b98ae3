// README command two: the whole gate. Each area has a budget in seconds that fails the run; the sum stays under eight minutes on two cores.

import {spawnSync} from 'node:child_process'
import {readdirSync, readFileSync, rmSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {ensureBrowsers} from './ensure-browsers.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const node = process.execPath
const vitest = (config, name) => [
  node,
  'node_modules/vitest/vitest.mjs',
  'run',
  '--config',
  config,
  '--reporter=default',
  '--reporter=json',
  `--outputFile=.build/${name}.json`,
]

const ownScripts = readdirSync(`${root}.config`)
  .filter((name) => name.endsWith('.mjs'))
  .map((name) => `.config/${name}`)

const areas = [
  {name: 'compile', budget: 5, words: [node, '.config/compile.mjs']},
  {name: 'types', budget: 16, words: [node, 'node_modules/typescript/bin/tsc', '--noEmit', '-p', '.']},
  {
    name: 'types of the runtime',
    budget: 5,
    words: [node, 'node_modules/typescript/bin/tsc', '--noEmit', '-p', 'src/browser'],
  },
  {
    name: 'lint and format',
    budget: 6,
    words: [
      node,
      'node_modules/@biomejs/biome/bin/biome',
      'check',
      '--config-path=.config/lint.json',
      'src',
      'tests',
      ...ownScripts,
    ],
  },
  {name: 'unit tests', budget: 205, words: vitest('.config/vitest.mjs', 'unit'), counts: '.build/unit.json'},
  {name: 'sample build', budget: 35, words: [node, '.build/cli.js', 'build']},
  {
    name: 'offline and printed',
    budget: 205,
    words: vitest('.config/vitest-browsers.mjs', 'browsers'),
    counts: '.build/browsers.json',
  },
]

let passed = 0
let failed = 0
const rows = []
try {
  ensureBrowsers()
} catch (error) {
  process.stderr.write(`${error.message}\n`)
  process.exit(3)
}
for (const area of areas) {
  const started = performance.now()
  if (area.counts) rmSync(`${root}${area.counts}`, {force: true})
  const run = spawnSync(area.words[0], area.words.slice(1), {
    cwd: root,
    stdio: 'inherit',
    env: {...process.env, CI: 'true'},
  })
  const seconds = (performance.now() - started) / 1000
  const late = seconds > area.budget
  let sound = run.status === 0 && !late
  if (area.counts) {
    const counts = readCounts(`${root}${area.counts}`)
    passed += counts.passed
    failed += counts.failed
    if (counts.passed === 0) sound = false
  }
  if (!sound && !(area.counts && run.status !== 0 && failed > 0)) failed += 1
  rows.push(
    `${area.name.padEnd(24)} ${seconds.toFixed(1).padStart(7)} s of ${String(area.budget).padStart(4)} s  ${sound ? 'passed' : late ? 'OVER ITS BUDGET' : 'FAILED'}`,
  )
  if (!sound) break
}
process.stdout.write(`\n${rows.join('\n')}\n\n${passed} passed, ${failed} failed\n`)
process.exitCode = failed > 0 ? 1 : 0

function readCounts(path) {
  try {
    const report = JSON.parse(readFileSync(path, 'utf8'))
    return {passed: report.numPassedTests, failed: report.numFailedTests}
  } catch {
    return {passed: 0, failed: 1}
  }
}
