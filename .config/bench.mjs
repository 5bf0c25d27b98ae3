// `npm run bench`: what the stages cost beside their floors, taken in turns in one run. Times drift from day to day, so the ratios count. No gate.
//   --rounds N   (7)

import {spawnSync} from 'node:child_process'
import {createHash} from 'node:crypto'
import {mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {parseArgs} from 'node:util'
import rehypeStringify from 'rehype-stringify'
import remarkDirective from 'remark-directive'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import {unified} from 'unified'
import {loadStages} from './in-process.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const {values: options} = parseArgs({options: {rounds: {type: 'string', default: '7'}}})
process.chdir(root)

const stages = await loadStages()
const folder = mkdtempSync(join(tmpdir(), 'bench-'))
const program = await stages.readProgramFiles()
const {content, values, history} = await stages.checkAndCompute('content')
if (!content || !values) throw new Error('Unexpected content with errors, expected it to check')
const vessel = [...content.vessels.keys()].sort()[0]
const pumps = content.vessels.get(vessel).positions.length
const procedures = readdirSync('content/procedures')
  .sort()
  .map((name) => readFileSync(`content/procedures/${name}`, 'utf8'))
const rendered = stages.renderHandbook({...stages.stateVessel(content, values, vessel, history), ...program})
const bytes = rendered.reduce((sum, file) => sum + file.bytes.length, 0)

let count = 0
const newFolder = () => join(folder, String(count++))

function writeRaw() {
  const to = newFolder()
  for (const below of new Set(rendered.map((file) => dirname(file.path))))
    mkdirSync(join(to, below), {recursive: true})
  for (const file of rendered) writeFileSync(join(to, file.path), file.bytes)
}

const markdown = () => unified().use(remarkParse).use(remarkGfm).use(remarkDirective).use(remarkFrontmatter)

function parseOnce() {
  const parser = markdown()
  for (const text of procedures) parser.parse(text)
}

function parseForEveryPage() {
  for (let pump = 0; pump < pumps; pump += 1)
    for (const text of procedures) markdown().use(remarkRehype).use(rehypeStringify).processSync(text)
}

function runProgram(...words) {
  const run = spawnSync(process.execPath, ['.build/cli.js', ...words], {encoding: 'utf8'})
  if (run.status !== 0) throw new Error(run.stderr)
}

const standing = newFolder()
runProgram('build', '--vessel', vessel, '--out', standing)

/** Every work with its floor; the ratio is taken between their medians. */
const works = [
  {name: 'write the files of a vessel', run: writeRaw},
  {
    name: 'the same and SHA-256',
    floor: 'write the files of a vessel',
    run: () => {
      for (const file of rendered) createHash('sha256').update(file.bytes).digest('hex')
      writeRaw()
    },
  },
  {
    name: 'compile, render and publish it',
    floor: 'write the files of a vessel',
    run: () =>
      stages.publishVessel({
        vesselId: vessel,
        files: stages.renderHandbook({
          ...stages.stateVessel(content, values, vessel, history),
          ...program,
        }),
        siteFolder: newFolder(),
        disk: stages.nodeDisk,
      }),
  },
  {name: 'parse every procedure once', run: parseOnce},
  {
    name: 'read, check and compute all',
    floor: 'parse every procedure once',
    run: () => stages.checkAndCompute('content'),
  },
  {name: 'parse the procedure anew for every page', run: parseForEveryPage},
  {name: 'start of Node', run: () => spawnSync(process.execPath, ['-e', '0'])},
  {
    name: '`build` of the vessel, a new process',
    floor: 'parse every procedure once',
    run: () => runProgram('build', '--vessel', vessel, '--out', newFolder()),
  },
  {
    name: 'the same against parsing anew for every page',
    same: '`build` of the vessel, a new process',
    floor: 'parse the procedure anew for every page',
  },
  {
    name: '`build` when nothing changed',
    floor: '`build` of the vessel, a new process',
    run: () => runProgram('build', '--vessel', vessel, '--out', standing),
  },
  {
    name: '`check`, a new process',
    floor: '`build` of the vessel, a new process',
    run: () => runProgram('check', '--out', standing),
  },
]

const times = new Map(works.map(({name}) => [name, []]))
try {
  for (let round = 0; round < Number(options.rounds); round += 1) {
    for (const {name, run} of works) {
      if (!run) continue
      const started = performance.now()
      await run()
      times.get(name).push(performance.now() - started)
    }
  }
} finally {
  rmSync(folder, {recursive: true, force: true})
}

function median(name) {
  const work = works.find((one) => one.name === name)
  const sorted = [...times.get(work.same ?? name)].sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)]
}

process.stdout.write(
  `\n${vessel}: ${pumps} pumps, ${procedures.length} procedures, ${rendered.length} files, ${(bytes / 1e6).toFixed(1)} MB; medians of ${options.rounds} rounds\n\n`,
)
for (const {name, floor} of works) {
  const ratio = floor ? `${(median(name) / median(floor)).toFixed(2).padStart(7)} x  ${floor}` : ''
  process.stdout.write(
    `${name.padEnd(46)} ${median(name).toFixed(1).padStart(8)} ms ${ratio}`.trimEnd().concat('\n'),
  )
}
