// Changes each calculation in many small ways and looks whether its tests notice.
//
//   node .config/mutate.mjs             all families of src/calculations; fails below 95 % and where a change that nobody notices is not explained
//   node .config/mutate.mjs FAMILY …    those named; prints what nobody noticed

import {mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync} from 'node:fs'
import {join, relative} from 'node:path'
import {fileURLToPath} from 'node:url'
import {Worker} from 'node:worker_threads'
import {build} from 'esbuild'
import {mutantsOf, withAllMutants} from './mutants.mjs'
import {explained} from './mutants-explained.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const sources = join(root, 'src', 'calculations')
const tests = join(root, 'tests', 'calculations')

/** Percent of all changes that the tests notice at least. */
const leastShare = 95

/** Threads at a time. */
const workers = 2

/** A test whose loops turn so many times as often as without a mutant, and ten thousand times more, notices it: it does not end. */
const patience = 20

/** Milliseconds after which a mutant counts as endless without a loop. */
const longest = 120_000

/** Files beside the families, tested by whatever uses them. */
export const common = 'common'

/** Names of the families, and `common`. */
export function mutatedFamilies() {
  const folders = readdirSync(sources, {withFileTypes: true}).filter((entry) => entry.isDirectory())
  return [...folders.map((entry) => entry.name).sort(), common]
}

/**
 * Every mutant of a family: `{path, line, was, becomes, original, noticed}`.
 *
 * `noticed` is the first test that fails; undefined where all pass.
 */
export async function mutateFamily(family) {
  const files = filesOf(family)
  const mutants = []
  const instrumented = new Map()
  for (const path of files) {
    const source = readFileSync(path, 'utf8')
    const own = mutantsOf(source)
    instrumented.set(path, withAllMutants(source, mutants.length + 1))
    for (const one of own) mutants.push({path, source, ...one})
  }
  mkdirSync(join(root, '.build'), {recursive: true})
  const folder = mkdtempSync(join(root, '.build', 'mutate-'))
  try {
    const bundles = await bundleTests(family, instrumented, folder)
    const noticed = await runAll(mutants, bundles)
    return mutants.map((mutant, index) => told(mutant, noticed.get(index + 1)))
  } finally {
    rmSync(folder, {recursive: true, force: true})
  }
}

function filesOf(family) {
  const folder = family === common ? sources : join(sources, family)
  return readdirSync(folder)
    .filter((name) => name.endsWith('.ts'))
    .sort()
    .map((name) => join(folder, name))
}

/** Tests of a family, published rows first; for what all share, the tests of all. */
function testFilesOf(family) {
  const folders = family === common ? readdirSync(tests) : [family]
  return folders
    .flatMap((folder) => {
      try {
        return readdirSync(join(tests, folder)).map((name) => join(tests, folder, name))
      } catch {
        return []
      }
    })
    .filter((path) => path.endsWith('.test.ts'))
    .sort((a, b) => Number(b.includes('published-rows')) - Number(a.includes('published-rows')))
}

/** Each test file in one piece, with the paths of the sources in it. */
async function bundleTests(family, instrumented, folder) {
  const bundles = []
  for (const [index, path] of testFilesOf(family).entries()) {
    const outfile = join(folder, `${index}.mjs`)
    const {metafile} = await build({
      entryPoints: [path],
      outfile,
      bundle: true,
      metafile: true,
      packages: 'external',
      format: 'esm',
      target: 'node20',
      charset: 'utf8',
      logLevel: 'error',
      define: {'import.meta.url': '"file:///"'},
      plugins: [
        {
          name: 'mutants',
          setup(setup) {
            setup.onLoad({filter: /src\/calculations\/.*\.ts$/}, ({path: file}) =>
              instrumented.has(file) ? {contents: instrumented.get(file), loader: 'ts'} : undefined,
            )
          },
        },
      ],
    })
    const inputs = new Set(Object.keys(metafile.inputs).map((one) => join(root, one)))
    bundles.push({path, outfile, holds: (file) => inputs.has(file)})
  }
  return bundles
}

/** First failing test by number of the mutant; mutant 0 is none and has to pass. */
async function runAll(mutants, bundles) {
  const noticed = new Map()
  const jobs = mutants.map(({path}, index) => ({
    mutant: index + 1,
    bundles: bundles.filter((one) => one.holds(path)).map((one) => one.outfile),
  }))
  const mostTurns = await turnsAllowed(bundles.map((one) => one.outfile))
  await Promise.all(Array.from({length: workers}, () => drain(jobs, noticed, mostTurns)))
  return noticed
}

/** How often the loops of each test may turn; while nothing is changed, every test has to pass. */
async function turnsAllowed(bundles) {
  const worker = await startWorker()
  const {noticed, turns} = await worker.run({mutant: 0, bundles})
  await worker.end()
  if (noticed !== undefined) throw new Error(`Unexpected failure without a mutant: ${noticed}`)
  for (const [path, counts] of Object.entries(turns)) {
    if (counts.length < 2) throw new Error('Unexpected file without a test, expected at least one')
    turns[path] = counts.map((count) => count * patience + 10_000)
  }
  return turns
}

/** Takes jobs off a queue and has a thread do them; a thread that ends is followed by another. */
async function drain(queue, noticed, mostTurns) {
  let worker = await startWorker(mostTurns)
  for (let job = queue.shift(); job; job = queue.shift()) {
    const answer = await worker.run(job)
    if (answer.noticed !== undefined) noticed.set(job.mutant, answer.noticed)
    if (!answer.ended) continue
    await worker.end()
    worker = await startWorker(mostTurns)
  }
  await worker.end()
}

async function startWorker(mostTurns) {
  const thread = new Worker(new URL('mutate-worker.mjs', import.meta.url), {
    workerData: mostTurns,
    resourceLimits: {maxOldGenerationSizeMb: 1024},
  })
  const next = () =>
    new Promise((resolve) => {
      const done = (answer) => {
        clearTimeout(timer)
        for (const name of ['message', 'error', 'exit']) thread.removeAllListeners(name)
        resolve(answer)
      }
      const timer = setTimeout(() => done({noticed: 'it does not end', ended: true}), longest)
      thread.once('message', done)
      thread.once('error', (error) => done({noticed: `the thread ended: ${error.message}`, ended: true}))
      thread.once('exit', () => done({noticed: 'the thread ended', ended: true}))
    })
  await next()
  const run = (job) => {
    thread.postMessage(job)
    return next()
  }
  return {run, end: () => thread.terminate()}
}

function told({path, source, start, end, text}, noticed) {
  const lineStart = source.lastIndexOf('\n', start - 1) + 1
  const lineEnd = source.indexOf('\n', start)
  return {
    path: relative(root, path),
    line: source.slice(0, start).split('\n').length,
    was: source.slice(lineStart, lineEnd).trim(),
    original: shortened(source.slice(start, end)),
    becomes: text === '' ? 'nothing' : shortened(text),
    noticed,
  }
}

function shortened(text) {
  return text.replaceAll(/\s+/gu, ' ').trim()
}

/** How a survivor is written, in the list of those that are explained too; what is short with the line that it stands in. */
export function survivorLine({path, was, original, becomes}) {
  const inLine = original.length < 25 ? ` in \`${was}\`` : ''
  return `${path}: \`${original}\`${inLine} becomes \`${becomes}\``
}

/** Survivors that nobody explained, and explained ones that were noticed or are gone. */
function unexplained(survivors) {
  const left = explained.flatMap(({changes}) => changes)
  const unknown = survivors.filter((line) => {
    const index = left.indexOf(line)
    if (index !== -1) left.splice(index, 1)
    return index === -1
  })
  return {unknown, idle: left}
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const asked = process.argv.slice(2)
  const lines = []
  let [all, caught] = [0, 0]
  for (const family of asked.length > 0 ? asked : mutatedFamilies()) {
    const started = performance.now()
    const mutants = await mutateFamily(family)
    const survivors = mutants.filter(({noticed}) => noticed === undefined)
    all += mutants.length
    caught += mutants.length - survivors.length
    lines.push(...survivors.map(survivorLine))
    const seconds = ((performance.now() - started) / 1000).toFixed(0)
    process.stdout.write(
      `${family}: ${mutants.length - survivors.length} of ${mutants.length} noticed, ${seconds} s\n`,
    )
    if (asked.length === 0) continue
    for (const one of survivors)
      process.stdout.write(`  ${one.line} ${survivorLine(one)}\n      ${one.was}\n`)
  }
  const share = (100 * caught) / all
  process.stdout.write(`${caught} of ${all} noticed, ${share.toFixed(1)} %\n`)
  if (asked.length === 0) {
    const {unknown, idle} = unexplained(lines)
    for (const line of unknown) process.stdout.write(`not noticed and not explained: ${line}\n`)
    for (const line of idle) process.stdout.write(`explained, but noticed or gone: ${line}\n`)
    if (share < leastShare) process.stdout.write(`noticed are fewer than ${leastShare} %\n`)
    if (share < leastShare || unknown.length + idle.length > 0) process.exitCode = 1
  }
}
