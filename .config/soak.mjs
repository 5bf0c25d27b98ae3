// `npm run soak`: checks and builds in one process for minutes, and watches whether memory or open files grow.
//   --minutes N   (10)
//
// Exit status 1 when open files grew, or memory in use after collection grew by more than a tenth between the second fifth and the last.

import {spawnSync} from 'node:child_process'
import {mkdtempSync, readdirSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {parseArgs} from 'node:util'
import {loadStages} from './in-process.mjs'

const {values: options} = parseArgs({options: {minutes: {type: 'string', default: '10'}}})
const minutes = Number(options.minutes)
if (!(minutes > 0)) throw new Error(`Unexpected --minutes ${options.minutes}, expected a number above zero`)

if (globalThis.gc) process.exitCode = await soak()
else {
  const again = spawnSync(
    process.execPath,
    ['--expose-gc', fileURLToPath(import.meta.url), '--minutes', String(minutes)],
    {stdio: 'inherit'},
  )
  process.exitCode = again.status ?? 3
}

async function soak() {
  process.chdir(fileURLToPath(new URL('..', import.meta.url)))
  const stages = await loadStages()
  const out = mkdtempSync(join(tmpdir(), 'soak-'))
  const commandOptions = {content: 'content', out, vessels: [], json: false, progress: () => undefined}
  const end = performance.now() + minutes * 60_000
  const samples = []
  let shown = 0
  try {
    while (performance.now() < end || samples.length < 10) {
      for (const run of [stages.runCheck, stages.runBuild]) {
        const outcome = await run(commandOptions)
        if (outcome.exitStatus !== 0) throw new Error(outcome.err)
      }
      globalThis.gc()
      const {rss, heapUsed} = process.memoryUsage()
      samples.push({rss: rss / 1e6, heap: heapUsed / 1e6, handles: openFiles()})
      if (performance.now() - shown > 30_000) {
        shown = performance.now()
        show(`${samples.length} rounds`, samples.at(-1))
      }
    }
  } finally {
    rmSync(out, {recursive: true, force: true})
  }
  const fifth = Math.floor(samples.length / 5)
  const early = middleOf(samples.slice(fifth, 2 * fifth))
  const late = middleOf(samples.slice(-fifth))
  show('\nsecond fifth, median', early)
  show('last fifth, median', late)
  const grown = [
    ...(late.handles > early.handles ? ['open files'] : []),
    ...(late.heap > early.heap * 1.1 ? ['memory in use'] : []),
    ...(late.rss > early.rss * 1.2 ? ['memory of the process'] : []),
  ]
  process.stdout.write(
    `${samples.length} rounds of check and build: ${grown.length === 0 ? 'nothing grew' : `GREW: ${grown.join(', ')}`}\n`,
  )
  return grown.length === 0 ? 0 : 1
}

/** Open files and pipes of this process, where the system lists them. */
function openFiles() {
  try {
    return readdirSync('/proc/self/fd').length
  } catch {
    return 0
  }
}

function middleOf(samples) {
  const median = (what) => samples.map(what).sort((a, b) => a - b)[Math.floor(samples.length / 2)]
  return {
    rss: median((one) => one.rss),
    heap: median((one) => one.heap),
    handles: median((one) => one.handles),
  }
}

function show(words, {rss, heap, handles}) {
  process.stdout.write(
    `${words}: ${rss.toFixed(0)} MB of the process, ${heap.toFixed(1)} MB in use, ${handles} open files\n`,
  )
}
