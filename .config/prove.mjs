// `npm run prove`: every full matrix that `npm test` samples, in parts that can be resumed.
//
// A part that passed is remembered below .build/prove under a hash of all sources, and not run again until a source changes.
//   --part NAME    only this part, or all parts of this work
//   --again        forget what passed
//   --minutes N    start no part that would not end within N minutes; exit status 4 when parts are left
//   --list         show the plan alone

import {spawn, spawnSync} from 'node:child_process'
import {createHash} from 'node:crypto'
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {parseArgs} from 'node:util'
import {compile} from './compile.mjs'
import {ensureBrowsers} from './ensure-browsers.mjs'
import {describePage, planParts, singleChecks} from './prove-plan.mjs'

/** Minutes after which a part is stopped and counts as failed. */
const partMinutes = 9

const root = fileURLToPath(new URL('..', import.meta.url))
const store = join(root, '.build', 'prove')
const testFiles = [
  ['published-text', 'published-text'],
  ['open-', 'open'],
  ['print-', 'print'],
  ['same-bytes', 'same-bytes'],
  ['killed-builds', 'killed-builds'],
  ['stopped-issues', 'stopped-issues'],
  ['unnoticed-changes', 'unnoticed-changes'],
  ['recomputed-numbers', 'recomputed-numbers'],
]

const versions = new Map()
const options = readOptions()
if (options) {
  try {
    process.exitCode = await prove(options)
  } catch (error) {
    process.stderr.write(`${error.message}\n`)
    process.exitCode = 3
  }
}

function readOptions() {
  try {
    return parseArgs({
      options: {
        part: {type: 'string', multiple: true, default: []},
        again: {type: 'boolean', default: false},
        minutes: {type: 'string', default: '100000'},
        list: {type: 'boolean', default: false},
      },
    }).values
  } catch (error) {
    process.stderr.write(`${error.message}; see DEVELOPERS.md\n`)
    process.exitCode = 2
    return undefined
  }
}

async function prove({part: wanted, again, minutes, list}) {
  const started = performance.now()
  const browsers = ensureBrowsers()
  const hash = hashOfSources(browsers)
  const state = join(store, hash)
  forgetOthers(hash, again)
  const parts = readJson(join(state, 'plan.json')) ?? (await plan(state))
  if (!parts) return 1
  const chosen = parts.filter(
    (one) => wanted.length === 0 || wanted.includes(one.name) || wanted.includes(one.work),
  )
  if (chosen.length === 0) {
    process.stderr.write(
      `Unexpected part \`${wanted.join(' ')}\`, expected one of ${parts.map((one) => one.name).join(', ')}\n`,
    )
    return 2
  }
  let left = 0
  for (const part of chosen) {
    if (list || resultOf(state, part)?.passed) continue
    const spent = (performance.now() - started) / 1000
    if (spent + part.estimate * 1.15 > Number(minutes) * 60) {
      left += 1
      continue
    }
    const result = await runPart(part, state)
    if (hashOfSources(browsers) !== hash) {
      process.stdout.write('A source changed while this part ran: it is not remembered.\n')
      result.note = 'source changed meanwhile'
      result.passed = false
    }
    writeJson(join(state, `${part.name}.result.json`), result)
    if (result.checked > 0) rememberRate(part, result)
  }
  const results = chosen.map((part) => ({part, result: resultOf(state, part)}))
  process.stdout.write(summaryOf(results))
  if (list) return 0
  if (results.some(({result}) => result && !result.passed)) return 1
  if (left === 0) return 0
  process.stdout.write(`${left} parts left, run again\n`)
  return 4
}

/** Hash of everything that a result stands on. */
function hashOfSources(browsers) {
  const hash = createHash('sha256')
  for (const program of Object.values(browsers)) hash.update(versionOf(program))
  const files = ['src', 'templates', 'content', 'tests', '.config'].flatMap((folder) =>
    readdirSync(join(root, folder), {recursive: true, withFileTypes: true})
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name)),
  )
  for (const path of [...files, join(root, 'package.json'), join(root, 'package-lock.json')].sort())
    hash
      .update(`${path.slice(root.length)}\n`)
      .update(createHash('sha256').update(readFileSync(path)).digest('hex'))
  return hash.digest('hex').slice(0, 16)
}

function versionOf(program) {
  if (!versions.has(program))
    versions.set(program, spawnSync(program, ['--version'], {encoding: 'utf8'}).stdout ?? '')
  return versions.get(program)
}

/** Results of other sources are of no use; what was learnt about speed is. */
function forgetOthers(hash, again) {
  mkdirSync(store, {recursive: true})
  for (const name of readdirSync(store))
    if (name !== 'rates.json' && (again || name !== hash))
      rmSync(join(store, name), {recursive: true, force: true})
}

/** Compiles and builds into a folder of its own, so that nothing changes under the parts, and plans them. */
async function plan(state) {
  rmSync(state, {recursive: true, force: true})
  const program = join(state, 'program')
  mkdirSync(program, {recursive: true})
  await compile()
  mkdirSync(join(program, '.build'))
  for (const name of readdirSync(join(root, '.build')))
    if (name.endsWith('.js')) cpSync(join(root, '.build', name), join(program, '.build', name))
  cpSync(join(root, '.build', 'runtime'), join(program, '.build', 'runtime'), {recursive: true})
  for (const name of ['templates', 'content', 'package.json'])
    cpSync(join(root, name), join(program, name), {recursive: true})
  symlinkSync(join(root, 'node_modules'), join(program, 'node_modules'))
  const site = join(state, 'site')
  const built = spawnSync(
    process.execPath,
    [join(program, '.build', 'cli.js'), 'build', '--content', join(program, 'content'), '--out', site],
    {stdio: ['ignore', 'inherit', 'pipe'], encoding: 'utf8'},
  )
  if (built.status !== 0) {
    process.stderr.write(built.stderr)
    return undefined
  }
  const pages = readdirSync(site)
    .sort()
    .flatMap((vessel) =>
      readdirSync(join(site, vessel), {recursive: true, encoding: 'utf8'})
        .filter((path) => path.endsWith('.html'))
        .sort()
        .map((path) => describePage(vessel, path, readFileSync(join(site, vessel, path), 'utf8'))),
    )
  const parts = planParts(pages, readJson(join(store, 'rates.json')) ?? {})
  writeJson(join(state, 'plan.json'), parts)
  return parts
}

async function runPart(part, state) {
  process.stdout.write(
    `\n${part.name}: ${part.units.length} to check, about ${Math.round(part.estimate)} s\n`,
  )
  const program = join(state, 'program')
  const workFile = join(state, `${part.name}.work.json`)
  const report = join(state, `${part.name}.report.json`)
  rmSync(report, {force: true})
  writeJson(workFile, {
    name: part.name,
    work: part.work,
    content: join(program, 'content'),
    program,
    site: join(state, 'site'),
    units: part.units.map(({vessel, path}) => ({vessel, path})),
  })
  const file = testFiles.find(([begin]) => part.work.startsWith(begin))[1]
  const started = performance.now()
  const ended = await runVitest(file, workFile, report)
  const seconds = (performance.now() - started) / 1000
  return {
    seconds,
    ...countsOf(readJson(report), ended, singleChecks.has(part.work) ? 1 : part.units.length),
  }
}

/** Runs one file of tests; `late` when it had to be stopped. */
function runVitest(file, workFile, report) {
  return new Promise((resolve) => {
    const run = spawn(
      process.execPath,
      [
        'node_modules/vitest/vitest.mjs',
        'run',
        '--config',
        '.config/vitest-prove.mjs',
        `tests/prove/${file}.test.ts`,
        '--reporter=default',
        '--reporter=json',
        `--outputFile=${report}`,
      ],
      {
        cwd: root,
        stdio: ['ignore', 'inherit', 'inherit'],
        detached: true,
        env: {...process.env, CI: 'true', NO_COLOR: '1', PROVE_WORK: workFile},
      },
    )
    const stop = (signal) => {
      try {
        process.kill(-run.pid, signal)
      } catch {
        // it has ended meanwhile
      }
    }
    const interrupted = () => {
      stop('SIGTERM')
      process.exit(130)
    }
    process.once('SIGINT', interrupted).once('SIGTERM', interrupted)
    let late = false
    const timer = setTimeout(() => {
      late = true
      stop('SIGTERM')
      setTimeout(() => stop('SIGKILL'), 5000).unref()
    }, partMinutes * 60_000)
    run.on('exit', (status) => {
      clearTimeout(timer)
      process.off('SIGINT', interrupted).off('SIGTERM', interrupted)
      resolve({status, late})
    })
  })
}

/** What a report counts; a part that checked nothing, or less than it should, has failed. */
function countsOf(report, {status, late}, units) {
  const tests = report?.testResults?.flatMap((one) => one.assertionResults) ?? []
  const passed = tests.filter((one) => one.status === 'passed')
  const metas = tests.map((one) => one.meta ?? {})
  const moments = {}
  for (const {moment} of metas) if (moment) moments[moment] = (moments[moment] ?? 0) + 1
  return {
    passed: status === 0 && units > 0 && passed.length >= units && passed.length === tests.length,
    checked: passed.length,
    failed: tests
      .filter((one) => one.status === 'failed')
      .map((one) => `${one.title}: ${one.failureMessages?.[0]?.split('\n')[0] ?? ''}`.slice(0, 200)),
    sheets: metas.reduce((sum, one) => sum + (one.sheets ?? 0), 0),
    files: metas.reduce((sum, one) => sum + (one.files ?? 0), 0),
    tall: metas.flatMap((one) => one.tall ?? []),
    goOn: metas.flatMap((one) => one.goOn ?? []),
    moments,
    note: late ? `stopped after ${partMinutes} minutes` : tests.length === 0 ? 'nothing was checked' : '',
  }
}

function rememberRate(part, result) {
  const rates = readJson(join(store, 'rates.json')) ?? {}
  const own = Math.max(0.02, (result.seconds - 10) / Math.max(1, part.units.length))
  const before = rates[part.work]
  writeJson(join(store, 'rates.json'), {
    ...rates,
    [part.work]: before === undefined ? own : Math.max(own, (own + before) / 2),
  })
}

function summaryOf(results) {
  const rows = results.map(({part, result}) => {
    const about = [
      part.left,
      ...(result?.files ? [`${result.files} files compared`] : []),
      ...Object.entries(result?.moments ?? {}).map(([moment, count]) => `${count} ${moment}`),
      ...(result?.note ? [result.note] : []),
    ].filter((one) => one !== '')
    return [
      part.name.padEnd(22),
      String(result?.checked ?? part.units.length).padStart(7),
      String(result?.sheets || '').padStart(7),
      (result?.seconds ?? part.estimate).toFixed(0).padStart(6),
      (result ? (result.passed ? 'passed' : 'FAILED') : 'to do').padEnd(7),
      about.join('; '),
    ].join(' ')
  })
  const done = results.filter(({result}) => result).map(({result}) => result)
  const sum = (what) => done.reduce((total, one) => total + what(one), 0)
  const passed = done.filter((one) => one.passed).length
  const failures = results.flatMap(({part, result}) =>
    shortened(result?.failed ?? []).map((words) => `  ${part.name}: ${words}`),
  )
  return [
    '',
    `${'part'.padEnd(22)} checked  sheets      s`,
    ...rows.map((row) => row.trimEnd()),
    ...(failures.length > 0 ? ['', 'Failed:', ...failures] : []),
    ...named(
      'Units taller than a sheet',
      done.flatMap((one) => one.tall),
      sum((one) => one.sheets) > 0,
    ),
    ...named(
      'Steps longer than a sheet, which go on over the next',
      done.flatMap((one) => one.goOn),
      sum((one) => one.sheets) > 0,
    ),
    '',
    `${results.length} parts: ${passed} passed, ${done.length - passed} failed, ${results.length - done.length} to do; ${sum((one) => one.checked)} checks, ${sum((one) => one.sheets)} sheets, ${sum((one) => one.seconds).toFixed(0)} s`,
    '',
  ].join('\n')
}

function shortened(list) {
  const most = 8
  return list.length > most ? [...list.slice(0, most), `and ${list.length - most} more`] : list
}

/** A list of names, each once, with how often it was met. */
function named(title, names, printed) {
  if (names.length === 0) return printed ? ['', `${title}: none`] : []
  const counts = new Map()
  // The same unit on every pump is one line.
  for (const name of names) {
    const [, page = '', unit = ''] = /^(\S*) ?(.*)$/u.exec(name) ?? []
    const [vessel = '', , procedure = ''] = page.split('/')
    const key = `${vessel} ${procedure || page} ${unit}`
    counts.set(key, (counts.get(key) ?? 0) + 1)
  }
  return ['', `${title}:`, ...[...counts].sort().map(([name, count]) => `  ${name} (${count} times printed)`)]
}

function resultOf(state, part) {
  return readJson(join(state, `${part.name}.result.json`))
}

function readJson(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined
}

/** Whole or not at all, so that a killed run leaves nothing half written. */
function writeJson(path, value) {
  writeFileSync(`${path}.new`, `${JSON.stringify(value, null, 1)}\n`)
  renameSync(`${path}.new`, path)
}
