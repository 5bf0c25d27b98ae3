import {existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {runBuild} from '../../src/commands/build.ts'
import type {RuleId} from '../../src/messages/severities.ts'
import {placeIn} from '../check/messages-for-tests.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {renderedContent} from './rendered-content.ts'

type Spoil = (content: ChangedContent) => void

/** A file, and words that stand in it once after the change; without words its first line. */
type At = readonly [path: string, words?: string]

const vessel = 'vessels/vessel-s/vessel.yaml'
const design = 'designs/design-s.yaml'
const procedure = 'procedures/ring-check.md'
const threads = 'tables/threads.csv'

function emptied(content: ChangedContent): void {
  for (const name of readdirSync(content.folder)) content.remove(name)
}

function positions(words: string): Spoil {
  return (content) => content.replace(vessel, /^positions:\n[\s\S]*(?=^tools-aboard)/mu, words)
}

function positionNamed(id: string): Spoil {
  return (content) => content.replace(vessel, '  - id: 1p\n', `  - id: ${id}\n`)
}

function diameter(value: string): Spoil {
  return (content) => content.replace(design, 'running-diameter: 210 mm', `running-diameter: ${value}`)
}

/** Each row of a table with one cell more, or with one less. */
function threadRows(change: (row: string, header: boolean) => string): Spoil {
  return (content) => {
    const lines = content.read(threads).trimEnd().split('\n')
    const rows = lines.map((line) => (line.startsWith('#') ? line : change(line, line.startsWith('size'))))
    content.write(threads, `${rows.join('\n')}\n`)
  }
}

const lines = (count: number, line: string): string => `${line}\n`.repeat(count)

describe('a build of bad content ends with 1 and one message, and makes no file', () => {
  test.each<[string, Spoil, RuleId, At]>([
    ['an empty content folder', emptied, 'no-missing-content', ['.']],
    [
      'a content folder with empty folders alone',
      (content) => {
        emptied(content)
        mkdirSync(content.path('vessels/vessel-s'), {recursive: true})
      },
      'no-missing-content',
      ['.'],
    ],
    ['a vessel with no pumps', positions('positions: []\n'), 'no-empty-vessel', [vessel]],
    ['a list of pumps left blank', positions('positions:\n'), 'no-wrong-shape', [vessel, '\ntools-aboard']],
    ['a vessel that says nothing of pumps', positions(''), 'no-missing-key', [vessel]],
    [
      'a YAML file indented with tabs throughout',
      (content) => content.write('office.yaml', content.read('office.yaml').replaceAll(/^ {2}/gmu, '\t')),
      'no-yaml-fault',
      ['office.yaml', '\t- {id: pump'],
    ],
    [
      'a YAML bomb of two megabytes',
      (content) =>
        content.write('terms.yaml', `a: &a [x]\nterms:\n${lines(300_000, '- *a')}${lines(100_000, '- b')}`),
      'no-oversized-file',
      ['terms.yaml'],
    ],
    [
      'a YAML bomb of a few lines',
      (content) =>
        content.write('terms.yaml', `a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\nterms: [*c, *c]\n`),
      'no-yaml-alias',
      ['terms.yaml', '[x, x]'],
    ],
    ['an empty file', (content) => content.write('office.yaml', ''), 'no-missing-key', ['office.yaml']],
    ['an empty procedure', (content) => content.write(procedure, ''), 'no-markdown-fault', [procedure]],
    ['an empty table', (content) => content.write(threads, ''), 'no-csv-fault', [threads]],
    [
      'a procedure that refers to itself',
      (content) => content.replace(procedure, 'is vented.', 'is vented: :procedure[here]{ref=ring-check}.'),
      'no-reference-loop',
      [procedure, ':procedure'],
    ],
    [
      'a caution whose id climbs out of its folder',
      (content) => content.replace('cautions/sharp-edges.yaml', 'id: sharp', 'id: ../../sharp'),
      'no-bad-id',
      ['cautions/sharp-edges.yaml', '../../sharp'],
    ],
    [
      'a reference that climbs out of its folder',
      (content) => content.replace(procedure, 'ref=sharp-edges', 'ref=../cautions/sharp-edges'),
      'no-undefined-reference',
      [procedure, '::caution{ref=../'],
    ],
    ...['CON', 'con', 'a/b', 'a\\b', '..', 'Größe', '1p '.repeat(20)].map(
      (id): [string, Spoil, RuleId, At] => [
        `a position named ${JSON.stringify(id)}`,
        positionNamed(id),
        'no-bad-id',
        [vessel, `${id}\n    tag`],
      ],
    ),
    ...['NaN', '1e999', 'Infinity', '3 bars', '-0.3 mm', '0x10 mm', '1,5 mm', `${'9'.repeat(400)} mm`].map(
      (value): [string, Spoil, RuleId, At] => [
        `a diameter of ${value.slice(0, 20)}`,
        diameter(value),
        'no-bad-quantity',
        [design, `${value}\n    material`],
      ],
    ),
    [
      'a table with a missing column',
      threadRows((row) => row.replace(/,[^,]*$/u, '')),
      'no-missing-key',
      [threads, 'size,'],
    ],
    [
      'a table with an extra column',
      threadRows((row, header) => `${row},${header ? 'colour' : 'red'}`),
      'no-unknown-key',
      [threads, 'colour'],
    ],
    [
      'a file that is not UTF-8',
      (content) =>
        content.write('parts.yaml', Buffer.from(`# Stückliste\n${content.read('parts.yaml')}`, 'latin1')),
      'no-foreign-encoding',
      ['parts.yaml', '\uFFFD'],
    ],
    [
      'a file of UTF-16, as some editors save it',
      (content) => content.write('parts.yaml', Buffer.from(`\uFEFF${content.read('parts.yaml')}`, 'utf16le')),
      'no-foreign-encoding',
      ['parts.yaml'],
    ],
  ])('%s', async (_what, spoil, rule, [path, words]) => {
    await withChangedContent(async (content) => {
      spoil(content)
      const site = join(content.folder, '.site')
      const {exitStatus, out, err} = await runBuild({
        content: content.folder,
        out: site,
        vessels: [],
        json: false,
        progress: () => undefined,
      })
      expect({exitStatus, out}, err).toEqual({
        exitStatus: 1,
        out: 'Nothing published: 1 errors, 0 warnings, 0 notes\n',
      })
      const [said = '', mend = '', ...rest] = err.replaceAll(`${content.folder}/`, '').trimEnd().split('\n')
      const place = words === undefined ? `${path}:1:1` : placeIn(content.read(path), words, path)
      expect(said.slice(0, place.length + 1)).toBe(`${place} `)
      expect(said).toMatch(/^\S+ error Unexpected .+, expected .+ no-[a-z-]+$/u)
      expect(said.split(' ').at(-1)).toBe(rule)
      expect(mend).toMatch(/^ {4}mend: [A-Z].+/u)
      expect(rest.filter((line) => !line.startsWith('    see: '))).toEqual([])
      expect(existsSync(site)).toBe(false)
    }, smallContent)
  })
})

describe('files as an editor on another system saves them', () => {
  /** Text of every page of the vessel by its path. */
  async function pagesOf(spoil: Spoil): Promise<ReadonlyMap<string, string>> {
    return withChangedContent(async (content) => {
      spoil(content)
      const {files, vessels} = await renderedContent(content.folder)
      expect([...files.values()].flatMap((file) => file.messages)).toEqual([])
      return new Map(
        (vessels.get('vessel-s') ?? []).map(({path, bytes}) => [path, Buffer.from(bytes).toString()]),
      )
    }, smallContent)
  }

  /** Every file of the content saved in another way. */
  function savedAs(change: (text: string) => string): Spoil {
    return (content) => {
      for (const entry of readdirSync(content.folder, {recursive: true, withFileTypes: true})) {
        const path = join(entry.parentPath, entry.name)
        if (entry.isFile()) writeFileSync(path, change(readFileSync(path, 'utf8')))
      }
    }
  }

  test.each<[string, (text: string) => string]>([
    ['a byte-order mark before each file', (text) => `\uFEFF${text}`],
    ['CRLF at the end of each line', (text) => text.replaceAll('\n', '\r\n')],
    ['both', (text) => `\uFEFF${text.replaceAll('\n', '\r\n')}`],
    ['no line end behind the last line', (text) => text.trimEnd()],
  ])('%s: give the same pages to the letter', async (_what, change) => {
    const plain = await pagesOf(() => undefined)
    expect(plain.size).toBeGreaterThan(10)
    expect(await pagesOf(savedAs(change))).toEqual(plain)
  })
})
