import {type ChildProcess, spawn} from 'node:child_process'
import {once} from 'node:events'
import {existsSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {setImmediate as soon, setTimeout as wait} from 'node:timers/promises'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {copyFolder, hashesBelow, newFolder} from './program.ts'
import {named, work} from './work.ts'

const folder = newFolder('killed')
const site = join(folder, 'site')
/** The vessel with the fewest files: each kill is followed by a look at all of them. */
const vessel = readdirSync(join(work.content, 'vessels')).sort(byFiles)[0] ?? ''
afterAll(() => rmSync(folder, {recursive: true, force: true}))

/** A content without a fault that is read quickly: for the command after a kill. */
const small = join('tests', 'handbooks', 'small')

/** Three contents that differ: in a word on every page of the vessel, and in a word on few pages. */
const contents = [
  {name: 'first', change: undefined},
  {name: 'renamed', change: {file: `vessels/${vessel}/vessel.yaml`, pattern: /^name: (.*)$/mu}},
  {name: 'reworded', change: {file: 'terms.yaml', pattern: /(?<=meaning: )([^,}\n]*)/u}},
] as const

/** Hashes of the whole handbook by name of its content, and the milliseconds of a build and of its last part, publishing. */
const wholes = new Map<string, ReadonlyMap<string, string>>()
let buildTime = 0
let publishTime = 0

beforeAll(async () => {
  for (const {name, change} of contents) {
    copyFolder(work.content, join(folder, name))
    if (change) {
      const path = join(folder, name, change.file)
      const text = readFileSync(path, 'utf8')
      const changed = text.replace(change.pattern, (whole) => `${whole} again`)
      if (changed === text) throw new Error(`Unexpected \`${change.file}\`, expected words to change in it`)
      writeFileSync(path, changed)
    }
    const started = performance.now()
    const build = startBuild(name)
    const published = await newFolderSeen(build)
    if ((await ended(build)) !== 0) throw new Error(`Unexpected fault of a build of \`${name}\``)
    buildTime = performance.now() - started
    publishTime = performance.now() - published
    wholes.set(name, hashesBelow(join(site, vessel)))
  }
})

function byFiles(a: string, b: string): number {
  const files = (one: string): number => readdirSync(join(work.site, one), {recursive: true}).length
  return files(a) - files(b)
}

function startBuild(content: string): ChildProcess {
  return startProgram(['build', '--content', join(folder, content), '--vessel', vessel])
}

function startProgram(words: readonly string[]): ChildProcess {
  return spawn(process.execPath, [join(work.program, '.build', 'cli.js'), ...words, '--out', site], {
    stdio: 'ignore',
  })
}

async function ended(process: ChildProcess): Promise<number | string | null> {
  if (process.exitCode === null && process.signalCode === null) await once(process, 'exit')
  return process.exitCode ?? process.signalCode
}

/** Waits until the new folder of the vessel is being filled, or the build has ended. */
async function newFolderSeen(build: ChildProcess): Promise<number> {
  while (!existsSync(join(site, `.new-${vessel}`)) && build.exitCode === null) await wait(1)
  return performance.now()
}

/** Waits until the folders are being swapped, or the build has ended; looks without a pause, as it is soon over. */
async function swapSeen(build: ChildProcess): Promise<void> {
  await newFolderSeen(build)
  while (!existsSync(join(site, `.swap-${vessel}`)) && build.exitCode === null) await soon()
}

/** A row of numbers from 0 to 1 that is the same in every run. */
function chance(seed: number): () => number {
  let state = Math.imul(seed, 0x9e3779b9) >>> 0
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

/** Where the kill fell, by what lies in the site folder. */
function momentOf(end: number | string | null, next: string): string {
  const names = readdirSync(site)
  if (names.includes(`.swap-${vessel}`) || names.includes(`.old-${vessel}`)) return 'swapping'
  if (names.includes(`.new-${vessel}`)) return 'writing'
  const published = nameOfWhole(hashesBelow(join(site, vessel))) === next
  return end !== 'SIGKILL' || published ? 'at the end' : 'reading'
}

function nameOfWhole(hashes: ReadonlyMap<string, string>): string | undefined {
  const same = (whole: ReadonlyMap<string, string>): boolean =>
    whole.size === hashes.size && [...whole].every(([path, hash]) => hashes.get(path) === hash)
  return [...wholes].find(([, whole]) => same(whole))?.[0]
}

test('the three handbooks are whole and differ', () => {
  const [first, renamed, reworded] = [...wholes.values()]
  const changed = (other: ReadonlyMap<string, string> | undefined): number =>
    [...(first ?? [])].filter(([path, hash]) => other?.get(path) !== hash).length
  expect(changed(renamed)).toBeGreaterThan(50)
  expect(changed(reworded)).toBeGreaterThan(2)
  expect(changed(reworded)).toBeLessThan((first?.size ?? 0) / 2)
})

test.for(named)('%s leaves a whole handbook after the next command', async ([path], {task}) => {
  const number = Number(path.replace(/\D/gu, ''))
  const random = chance(number)
  const before = nameOfWhole(hashesBelow(join(site, vessel)))
  expect(before).toBeDefined()
  const others = contents.filter((one) => one.name !== before)
  const next = others[Math.floor(random() * others.length)]?.name ?? ''

  const build = startBuild(next)
  // A third of the kills fall anywhere, a third while the folder is written, a third as it is swapped.
  if (number % 3 === 0) await wait(random() * buildTime * 1.05)
  else if (number % 3 === 1) {
    await newFolderSeen(build)
    await wait(random() * publishTime)
  } else await swapSeen(build)
  build.kill('SIGKILL')
  const moment = momentOf(await ended(build), next)

  // Every fifth time the next command is the same build, else a check of something else.
  const again = number % 5 === 0
  expect(await ended(again ? startBuild(next) : startProgram(['check', '--content', small]))).toBe(0)
  expect(readdirSync(site)).toEqual([vessel])
  const hashes = hashesBelow(join(site, vessel))
  const lines = readFileSync(join(site, vessel, 'manifest.txt'), 'utf8')
  for (const [file, hash] of hashes)
    if (!file.startsWith('manifest.')) expect(lines, file).toContain(`${hash}  ${file}\n`)
  const after = nameOfWhole(hashes)
  expect(after).toBe(again || moment === 'at the end' || moment === 'swapping' ? next : before)
  task.meta.moment = moment
})

test('kills fell before the new folder, and while it was written or swapped', ({task}) => {
  const moments = (task.suite?.tasks ?? task.file.tasks).map((one) => one.meta.moment)
  const count = (moment: string): number => moments.filter((one) => one === moment).length
  if (work.units.length < 10) return
  expect(count('writing') + count('swapping')).toBeGreaterThan(work.units.length / 5)
  expect(count('reading')).toBeGreaterThan(0)
})
