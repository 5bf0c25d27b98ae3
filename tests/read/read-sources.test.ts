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
