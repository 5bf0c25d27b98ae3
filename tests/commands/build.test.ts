import {cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {sha256} from '../../src/publish/manifest.ts'
import {withOldBook} from '../handbooks/idle-faults.ts'
import {smallContent, withChangedContent} from './changed-content.ts'
import {compileProgram, type Program, type ProgramRun} from './program-for-tests.ts'

let program: Program
let site: string
let built: ProgramRun

beforeAll(() => {
  program = compileProgram()
  site = join(program.folder, 'site')
  built = program.run(['build'])
  if (built.status !== 0) throw new Error(built.err)
}, 120_000)

afterAll(() => rmSync(program.folder, {recursive: true, force: true}))

/** Hash of every file of a published vessel by its path. */
function hashesOf(siteFolder: string): ReadonlyMap<string, string> {
  const folder = join(siteFolder, 'vessel-a')
  const paths = readdirSync(folder, {recursive: true, encoding: 'utf8', withFileTypes: true})
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
  return new Map(paths.sort().map((path) => [path.slice(folder.length + 1), sha256(readFileSync(path))]))
}

describe('building a handbook', () => {
  test('says which file to open, how many pages it has and what was noted', () => {
    expect(built.status).toBe(0)
    expect(built.out).toMatch(
      /^Handbook of \S.*: open site\/vessel-a\/index\.html \(\d+ pages, [\d.]+ MB\)\n0 errors, 0 warnings, \d+ notes\n$/u,
    )
    expect(existsSync(join(site, 'vessel-a', 'index.html'))).toBe(true)
  })

  test('lists every page that stands on a superseded source', async () => {
    await withChangedContent((content) => {
      withOldBook('superseded, superseded-by: demo-data')(content)
      content.replace(
        'designs/design-s.yaml',
        /origin: \{status: as-built, source: demo-data[^}]*\}/u,
        (origin) => origin.replace('demo-data', 'old-data'),
      )
      const words = ['build', '--content', content.folder, '--out', join(program.folder, 'superseded')]
      const run = program.run(words)
      expect(run.status, run.err).toBe(0)
      expect(run.out).toContain('\npages that stand on old-data: 1\n    vessel-s/1p/ring-check\n')
      expect(JSON.parse(program.run([...words, '--json']).out)).toMatchObject({
        superseded: [{source: 'old-data', pages: ['vessel-s/1p/ring-check']}],
      })
      return Promise.resolve()
    }, smallContent)
  }, 60_000)

  test('gives a manifest that fits every file but itself', () => {
    const hashes = hashesOf(site)
    const lines = readFileSync(join(site, 'vessel-a', 'manifest.txt'), 'utf8')
      .trimEnd()
      .split('\n')
    const listed = new Map(lines.map((line) => [line.slice(66), line.slice(0, 64)]))
    const present = [...hashes].filter(([path]) => !path.startsWith('manifest.'))
    expect(present.length).toBeGreaterThan(150)
    expect(listed).toEqual(new Map(present))
  })

  test('gives the same bytes in another time zone, locale and folder, and tells machines where', () => {
    const elsewhere = join(program.folder, 'Pump book #2 (100 %) ø')
    mkdirSync(elsewhere)
    cpSync(join(program.folder, 'content'), join(elsewhere, 'inhalt'), {recursive: true, dereference: true})
    const words = [
      '--content',
      join(elsewhere, 'inhalt'),
      '--out',
      join(elsewhere, 'site'),
      '--vessel',
      'vessel-a',
      '--json',
    ]
    const again = program.run(['build', ...words], {
      TZ: 'Pacific/Apia',
      LANG: 'tr_TR.UTF-8',
      LC_ALL: 'tr_TR.UTF-8',
    })
    expect(again.status, again.err).toBe(0)
    expect(hashesOf(join(elsewhere, 'site'))).toEqual(hashesOf(site))
    expect(JSON.parse(again.out)).toMatchObject({
      passed: true,
      published: [
        {
          vessel: 'vessel-a',
          open: join(elsewhere, 'site', 'vessel-a', 'index.html'),
          pages: expect.any(Number),
        },
      ],
    })
  }, 60_000)
})

describe('a build of content with an error', () => {
  test('ends with 1, names the line, publishes nothing and leaves the last good folder as it was', async () => {
    const before = hashesOf(site)
    await withChangedContent((content) => {
      content.replace('designs/design-a.yaml', /^ +lubrication: assembly-paste\n/mu, '')
      const {status, out, err} = program.run(['build', '--content', content.folder])
      expect({status, out: out.replace(/, \d+ warnings, \d+ notes/u, '')}).toEqual({
        status: 1,
        out: 'Nothing published: 1 errors\n',
      })
      expect(err).toMatch(/designs\/design-a\.yaml:\d+:\d+ error .* no-dry-torque\n {4}mend: /u)
    })
    expect(hashesOf(site)).toEqual(before)
  }, 60_000)
})

describe('a build after one that was interrupted', () => {
  test('first completes the swap, even when its own content has an error', async () => {
    const finished = hashesOf(site)
    cpSync(join(site, 'vessel-a'), join(site, '.new-vessel-a'), {recursive: true})
    writeFileSync(join(site, '.swap-vessel-a'), 'vessel-a\n')
    rmSync(join(site, 'vessel-a'), {recursive: true})
    await withChangedContent((content) => {
      content.write('office.yaml', '\tid: x\n')
      expect(program.run(['build', '--content', content.folder]).status).toBe(1)
    })
    expect(hashesOf(site)).toEqual(finished)
    expect(readdirSync(site)).toEqual(['vessel-a'])
  }, 60_000)
})
