import {readdirSync, readFileSync} from 'node:fs'
import {join, relative, sep} from 'node:path'
import {fileURLToPath} from 'node:url'
import {VFile} from 'vfile'
import {describe, expect, test} from 'vitest'
import {checkContent} from '../../src/check/check-content.ts'
import type {Content} from '../../src/handbook-model/content.ts'
import type {ContentSources} from '../../src/handbook-model/sources.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {sourcesFromTexts} from '../../src/read/read-sources.ts'
import {servesVesselOne} from '../commands/vessel-one.ts'
import {linesOf} from './messages-for-tests.ts'

const folder = fileURLToPath(new URL('../../content/', import.meta.url))
/** What serves vessel one: a fault of these tests needs no second vessel. */
const texts: ReadonlyMap<string, string> = new Map(
  readdirSync(folder, {recursive: true, withFileTypes: true}).flatMap((entry) => {
    if (!entry.isFile()) return []
    const whole = join(entry.parentPath, entry.name)
    const path = relative(folder, whole).replaceAll(sep, '/')
    return servesVesselOne(path) ? [[path, readFileSync(whole, 'utf8')] as const] : []
  }),
)

/** Each file read once; a test reads again only what it changes. */
const unchanged: ReadonlyMap<string, ContentSources> = new Map(
  [...texts].map(([path, text]) => [path, sourcesFromTexts(new Map([[path, text]]), new Map())]),
)

/** One change of one file: the old words, which stand there, and the new ones. */
type Change = readonly [path: string, old: string | RegExp, words: string]

function readChanged(changes: readonly Change[], files: ContentFiles): ContentSources {
  const changed = new Map<string, string>()
  for (const [path, old, words] of changes) {
    const text = changed.get(path) ?? texts.get(path) ?? ''
    const after = text.replace(old, () => words)
    if (after === text) throw new Error(`Unexpected \`${path}\` without \`${old}\`, expected it there`)
    changed.set(path, after)
  }
  const read = [...unchanged].map(([path, sources]) => {
    const text = changed.get(path)
    if (text !== undefined) return sourcesFromTexts(new Map([[path, text]]), files)
    files.set(path, new VFile({path, value: texts.get(path) ?? ''}))
    return sources
  })
  return {
    yaml: new Map(read.flatMap(({yaml}) => [...yaml])),
    csv: new Map(read.flatMap(({csv}) => [...csv])),
    markdown: new Map(read.flatMap(({markdown}) => [...markdown])),
    ledgers: new Map(),
  }
}

function checked(...changes: readonly Change[]): {
  readonly content: Content | undefined
  readonly lines: readonly string[]
} {
  const files: ContentFiles = new Map()
  const content = checkContent(readChanged(changes, files), files)
  return {content, lines: linesOf(files)}
}

const rule = (line: string): string =>
  line
    .replace(/ see \S+$/u, '')
    .split(' ')
    .at(-1) ?? ''

describe('the demonstration content', () => {
  test('is accepted whole, every map in the order of its ids', () => {
    const {content, lines} = checked()
    expect(lines).toEqual([])
    if (!content) throw new Error('Unexpected content that stops the build')
    for (const map of [content.procedures, content.cautions, content.jobs, content.tools, content.parts])
      expect([...map.keys()]).toEqual([...map.keys()].sort())
    const files = [...texts.keys()].flatMap((path) => /^procedures\/(.*)\.md$/u.exec(path)?.[1] ?? [])
    expect(files.length).toBeGreaterThanOrEqual(7)
    expect([...content.procedures.keys()]).toEqual(files.sort())
  })
})

describe('every rule is asked', () => {
  test.each<[string, Change]>([
    ['no-incomplete-caution', ['cautions/noise.yaml', /^word: .*/mu, 'word: DANGER']],
    [
      'no-undefined-reference',
      ['procedures/purging.md', 'ref=cofferdam.upper-bound', 'ref=cofferdam.uper-bound'],
    ],
    ['no-undefined-reference', ['jobs/wear-ring-service.yaml', 'wear-rings,', 'wear-ring,']],
    [
      'no-undefined-reference',
      ['designs/design-a.yaml', 'value: lower-ring.renewal', 'value: lower-ring.renewel'],
    ],
    ['no-reference-loop', ['procedures/isolation.md', 'ref=restoration', 'ref=isolation']],
    ['no-uncautioned-hazard', ['procedures/purging.md', '::caution{ref=lack-of-oxygen section}\n', '']],
    ['no-unlimited-reading', ['procedures/purging.md', ' limits=purge-highest', '']],
    [
      'no-unit-mix',
      ['procedures/purging.md', 'unit="bar(g)" stations="at the start', 'unit="bar" stations="at the start'],
    ],
    [
      'no-unwitnessed-hold',
      ['procedures/isolation.md', 'second-by="pumpman"', 'second-by="second engineer"'],
    ],
    [
      'no-unknown-fact',
      ['procedures/isolation.md', ':step{#announce}', ':step{#announce when="bakstop = fitted"}'],
    ],
    ['no-unknown-fact', ['vessels/vessel-a/vessel.yaml', 'nitrogen-supply: plant', 'nitrogen-supply: plnt']],
    ['no-unknown-fact', ['designs/design-a.yaml', 'stack-layout: concentric', 'stack-layout: concentrc']],
    ['no-unrestored-isolation', ['procedures/restoration.md', '   ::restore{role=pilot}\n', '']],
    ['no-unmatched-restoration', ['procedures/isolation.md', '   ::isolate{role=pilot}\n', '']],
    ['no-missing-isolation-point', ['vessels/vessel-a/vessel.yaml', /^ {2}pilot:\n.*\n/mu, '']],
    ['no-as-left-alone', ['procedures/wear-rings.md', '#lower-bore-left', '#lower-bor-left']],
    [
      'no-unread-instrument',
      [
        'tools.yaml',
        /(id: purge-gauge[^\n]*?), instrument: \{[^\n]*\}\}/u,
        'id: purge-gauge, title: gauge, size: small}',
      ],
    ],
  ])('%s', (ruleId, change) => {
    const {content, lines} = checked(change)
    expect(content).toBeUndefined()
    expect(lines.map(rule)).toContain(ruleId)
  })

  test('a fact that nobody knows on one pump of the fleet', () => {
    const {lines} = checked(
      [
        'vessels/vessel-a/vessel.yaml',
        /backstop: fitted/u,
        'backstop: {value: not known, reason: no record}',
      ],
      ['procedures/isolation.md', ':step{#announce}', ':step{#announce when="backstop = fitted"}'],
    )
    expect(lines.map(rule)).toContain('no-unknown-fact')
    expect(lines.join('\n')).toContain(
      'expected an `::identify{fact=backstop}` step and a hold point before it',
    )
  })
})

test('mistakes in several files are all told in one run', () => {
  const {content, lines} = checked(
    ['cautions/noise.yaml', /^word: .*/mu, 'word: DANGER'],
    ['procedures/isolation.md', ':step{#announce}', ':stepp{#announce}'],
    ['procedures/wear-rings.md', '## State before', '<b>stop</b>\n\n## State before'],
    ['vessels/vessel-a/vessel.yaml', 'deadweight: 17600 t', 'deadweight: 17600 tons'],
    ['tables/threads.csv', /^M12,/mu, 'M12,x'],
  )
  expect(content).toBeUndefined()
  const told = new Set(lines.map((line) => line.slice(0, line.indexOf(':'))))
  for (const path of [
    'cautions/noise.yaml',
    'procedures/isolation.md',
    'procedures/wear-rings.md',
    'vessels/vessel-a/vessel.yaml',
    'tables/threads.csv',
  ])
    expect(told).toContain(path)
})

test('a warning alone does not stop the build', () => {
  const {content, lines} = checked([
    'vessels/vessel-a/vessel.yaml',
    'deadweight: 17600 t',
    'deadweight: 90000 t',
  ])
  expect(lines.map(rule)).toEqual(['no-implausible-value'])
  expect(content?.vessels.get('vessel-a')?.deadweight).toMatchObject({figure: '90000'})
})

test('an empty content folder is one message', () => {
  const files: ContentFiles = new Map()
  expect(checkContent(sourcesFromTexts(new Map(), files), files)).toBeUndefined()
  expect(linesOf(files)).toEqual([
    '.:1:1 Unexpected empty content folder, expected at least `office.yaml` and a vessel no-missing-content',
  ])
})
