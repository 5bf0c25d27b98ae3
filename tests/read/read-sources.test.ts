import {execFileSync} from 'node:child_process'
import {mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import {afterEach, beforeEach, describe, expect, test} from 'vitest'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {readSources, sourcesFromTexts} from '../../src/read/read-sources.ts'
import {messagesOf} from './messages-of.ts'

let folder: string

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'content ø #'))
})

afterEach(() => rmSync(folder, {recursive: true, force: true}))

function write(path: string, bytes: string | Uint8Array): void {
  mkdirSync(dirname(join(folder, path)), {recursive: true})
  writeFileSync(join(folder, path), bytes)
}

async function read(root = folder) {
  const files: ContentFiles = new Map()
  const sources = await readSources(root, files)
  return {sources, files, messages: messagesOf(files).map((line) => line.replaceAll(folder, 'CONTENT'))}
}

describe('a content folder', () => {
  test('is read sorted, each kind of file to its own map; hidden files are left alone', async () => {
    write('tools.yaml', 'tools: []\n')
    write('office.yaml', 'issuer: x\n')
    write('vessels/b/vessel.yaml', 'id: b\n')
    write('tables/threads.csv', 'size\nM6\n')
    write('procedures/a.md', '---\nid: a\n---\n')
    write('issues/b/2031-01.json', '{}')
    write('.editor', 'x')
    const {sources, messages, files} = await read()
    expect(messages).toEqual([])
    expect([...sources.yaml.keys()]).toEqual(['office.yaml', 'tools.yaml', 'vessels/b/vessel.yaml'])
    expect([...sources.csv.keys()]).toEqual(['tables/threads.csv'])
    expect([...sources.markdown.keys()]).toEqual(['procedures/a.md'])
    expect([...sources.ledgers]).toEqual([['issues/b/2031-01.json', '{}']])
    expect([...files.keys()].sort()).toEqual([
      'issues/b/2031-01.json',
      'office.yaml',
      'procedures/a.md',
      'tables/threads.csv',
      'tools.yaml',
      'vessels/b/vessel.yaml',
    ])
    expect(String(files.get('office.yaml'))).toBe('issuer: x\n')
  })

  test('that is empty is told once', async () => {
    expect((await read()).messages).toEqual([
      '.:1:1 Unexpected empty content folder, expected at least `office.yaml` and a vessel no-missing-content | Name the folder that holds the content with --content',
    ])
  })

  test('that is not there is told once', async () => {
    expect((await read(join(folder, 'none'))).messages).toEqual([
      '.:1:1 Unexpected content folder `CONTENT/none` that cannot be read (ENOENT), expected a folder no-missing-content | Name the folder that holds the content with --content',
    ])
  })

  test('that is a file is told once', async () => {
    write('plain', '')
    expect((await read(join(folder, 'plain'))).messages).toEqual([
      '.:1:1 Unexpected content folder `CONTENT/plain` that cannot be read (ENOTDIR), expected a folder no-missing-content | Name the folder that holds the content with --content',
    ])
  })
})

describe('a file', () => {
  test.each([
    [
      'that is not UTF-8 is named with the line and column of the first such byte',
      'office.yaml',
      new Uint8Array([...Buffer.from('a: ø\nb: '), 0xe9, 0x0a]),
      'office.yaml:2:4 Unexpected byte that is not UTF-8, expected a UTF-8 text file no-foreign-encoding | Save the file as UTF-8 in the editor',
    ],
    [
      'of UTF-16 is not UTF-8',
      'office.yaml',
      new Uint8Array([0xff, 0xfe, 0x61, 0x00]),
      'office.yaml:1:1 Unexpected byte that is not UTF-8, expected a UTF-8 text file no-foreign-encoding | Save the file as UTF-8 in the editor',
    ],
    [
      'of two megabytes is not read',
      'office.yaml',
      `a: &a [x]\nb: [${'*a,'.repeat(700_000)}]\n`,
      'office.yaml:1:1 Unexpected size of 2100016 bytes, expected at most 1000000 no-oversized-file | Split the file',
    ],
    [
      'of another kind is a stray',
      'notes.docx',
      'x',
      'notes.docx:1:1 Unexpected file `notes.docx`, expected .yaml, .csv, or .md in procedures no-stray-file | Move the file out of the content folder',
    ],
    [
      'of Markdown outside the procedures is a stray',
      'cautions/readme.md',
      'x',
      'cautions/readme.md:1:1 Unexpected file `cautions/readme.md`, expected .yaml, .csv, or .md in procedures no-stray-file | Move the file out of the content folder',
    ],
  ])(
    '%s',
    async (_what, path, bytes, line) => {
      write(path, bytes)
      const {messages, sources} = await read()
      expect(messages).toEqual([line])
      expect([...sources.yaml.keys(), ...sources.csv.keys()]).toEqual([])
    },
    5000,
  )

  test('that is no file, such as a queue, is named and never waited for', async () => {
    write('tools.yaml', 'tools: []\n')
    execFileSync('mkfifo', [join(folder, 'office.yaml')])
    const {messages} = await read()
    expect(messages).toEqual([
      'office.yaml:1:1 Unexpected thing that is no file, expected a file no-unreadable-file | Move it out of the content folder',
    ])
  }, 3000)

  test('whose lines end as in old editors keeps its lines', async () => {
    write('office.yaml', 'a: b\rc: [d\re: f\r')
    const {messages} = await read()
    expect(messages[0]).toMatch(/^office\.yaml:3:1 /u)
  })

  test('that cannot be opened is named, and the others are read', async () => {
    write('tools.yaml', 'tools: []\n')
    symlinkSync('nowhere', join(folder, 'office.yaml'))
    const {messages, sources} = await read()
    expect(messages).toEqual([
      'office.yaml:1:1 Unexpected file that cannot be read (ENOENT), expected a readable file no-unreadable-file | Give yourself the right to read it',
    ])
    expect([...sources.yaml.keys()]).toEqual(['tools.yaml'])
  })
})

describe('a letter that nobody sees', () => {
  const told = (path: string, text: string): readonly string[] => {
    const files: ContentFiles = new Map()
    sourcesFromTexts(new Map([[path, text]]), files)
    return messagesOf(files).map((line) => line.split(' | ')[0] ?? line)
  }
  const line = (place: string, code: string): string =>
    `${place} Unexpected letter ${code} that does not print, expected letters that the reader sees no-foreign-encoding`

  test.each([
    ['a control character', 'tools.yaml', 'a: b\nc: d\u0007e\n', 'tools.yaml:2:5', 'U+0007'],
    [
      'a mark that turns the order of digits',
      'tables/a.csv',
      'a,b\n1,2\u202E34\n',
      'tables/a.csv:2:4',
      'U+202E',
    ],
    [
      'a blank of no width',
      'procedures/a.md',
      '---\nid: a\n---\n\n# T\u200Bitle\n',
      'procedures/a.md:5:4',
      'U+200B',
    ],
    ['a letter that an editor could not keep', 'tools.yaml', 'a: Gr\uFFFDsse\n', 'tools.yaml:1:6', 'U+FFFD'],
    ['a byte-order mark amid the text', 'tools.yaml', 'a: b\uFEFFc\n', 'tools.yaml:1:5', 'U+FEFF'],
    ['one that is written as an escape', 'tools.yaml', 'a: b\nc: "d\\u202E34"\n', 'tools.yaml:2:4', 'U+202E'],
    ['half of a letter as an escape', 'tools.yaml', 'a: "\\uD83D"\n', 'tools.yaml:1:4', 'U+D83D'],
    ['one in a key', 'tools.yaml', '"a\\0": b\n', 'tools.yaml:1:1', 'U+0000'],
  ])('%s is told at its place', (_what, path, text, place, code) => {
    expect(told(path, text)).toEqual([line(place, code)])
  })

  test('tabs, line ends and letters of every language are seen', () => {
    const text = 'a: "tab\\there"\nb: Ångström, Größe, 船, Корабль, “x” – 3 µm²\u00a0!\r\nc: "🚢"\n'
    expect(told('tools.yaml', text)).toEqual([])
    expect(told('tables/a.csv', 'a,b\r\n1,\t2\r\n')).toEqual([])
  })
})

describe('texts in memory', () => {
  test('are read like files, a byte-order mark left aside', () => {
    const files: ContentFiles = new Map()
    const texts = new Map([
      ['tools.yaml', '\uFEFFtools: [a]\n'],
      ['tables/threads.csv', '\uFEFF# title: T\nsize\nM6\n'],
      ['procedures/a.md', '\uFEFF---\nid: a\n---\n'],
    ])
    const sources = sourcesFromTexts(texts, files)
    expect(messagesOf(files)).toEqual([])
    expect(sources.yaml.get('tools.yaml')).toMatchObject({
      entries: [{key: {text: 'tools', place: {line: 1, column: 1}}}],
    })
    expect(sources.csv.get('tables/threads.csv')?.head.get('title')?.text).toBe('T')
    expect(sources.markdown.has('procedures/a.md')).toBe(true)
  })

  test('give the same, in whatever order they come', () => {
    const texts: [string, string][] = [
      ['b.yaml', 'x: &a y'],
      ['a.yaml', 'x: [y'],
      ['c.csv', ''],
      ['e.yaml', 'x: y'],
      ['d.yaml', 'x: y'],
    ]
    const [first, second] = [texts, texts.toReversed()].map((order) => {
      const files: ContentFiles = new Map()
      const {yaml} = sourcesFromTexts(new Map(order), files)
      return {keys: [...yaml.keys()], messages: messagesOf(files)}
    })
    expect(first).toEqual(second)
    expect(first?.keys).toEqual(['d.yaml', 'e.yaml'])
    expect(first?.messages).toHaveLength(3)
  })
})

test('a text that is read again says again what is wrong with it', () => {
  const texts = new Map([['procedures/strainer.md', '---\nid: [strainer\n---\n\n# Strainer\n']])
  const told = (): readonly string[] => {
    const files: ContentFiles = new Map()
    sourcesFromTexts(texts, files)
    return [...files.values()].flatMap(({messages}) => messages.map(({ruleId}) => ruleId ?? ''))
  }
  const first = told()
  expect(first).toContain('no-yaml-fault')
  expect(told()).toEqual(first)
})
