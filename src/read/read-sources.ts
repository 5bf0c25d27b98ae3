import type {Dirent} from 'node:fs'
import {readdir, readFile, stat} from 'node:fs/promises'
import {join} from 'node:path'
import {VFile} from 'vfile'
import type {ContentSources, CsvSource, MarkdownSource, PlacedNode} from '../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {placeOfHiddenLetter, refuseHiddenLetter} from '../messages/refuse-hidden-letter.ts'
import {readCsv} from './read-csv.ts'
import {readMarkdown} from './read-markdown.ts'
import {readYaml} from './read-yaml.ts'

const largestFile = 1_000_000

/**
 * Reads the content folder into trees whose leaves know their place.
 *
 * @throws {Error}
 *   When the machine fails while reading a listed file for another reason than its rights.
 */
export async function readSources(contentFolder: string, files: ContentFiles): Promise<ContentSources> {
  const texts = new Map<string, string>()
  const decoder = new TextDecoder('utf-8', {fatal: true})
  for (const path of await listFiles(contentFolder, '', files)) {
    const bytes = await readBytes(contentFolder, path, files)
    if (!bytes) continue
    try {
      texts.set(path, decoder.decode(bytes))
    } catch {
      addMessage(
        files,
        {path, ...placeOfBadByte(bytes)},
        'no-foreign-encoding',
        'Unexpected byte that is not UTF-8, expected a UTF-8 text file',
        {
          note: 'Save the file as UTF-8 in the editor',
        },
      )
    }
  }
  return sourcesFromTexts(texts, files)
}

type Read<T> = (path: string, text: string, files: ContentFiles) => T | undefined

/** Of two contents that are held against each other most files are equal: one that was read without a message is not read again. */
function onceForEachText<T>(read: Read<T>): Read<T> {
  const known = new Map<string, T>()
  return (path, text, files) => {
    const key = `${path}\n${text}`
    const before = known.get(key)
    if (before !== undefined) return before
    const told = (): number => files.get(path)?.messages.length ?? 0
    const toldBefore = told()
    const source = read(path, text, files)
    if (source !== undefined && told() === toldBefore) known.set(key, source)
    return source
  }
}

const yamlOf = onceForEachText((path, text, files) => readYaml(path, text, files))
const csvOf = onceForEachText(readCsv)
const markdownOf = onceForEachText(readMarkdown)

/** The same from texts in memory, by path below the content folder. */
export function sourcesFromTexts(texts: ReadonlyMap<string, string>, files: ContentFiles): ContentSources {
  const yaml = new Map<string, PlacedNode>()
  const csv = new Map<string, CsvSource>()
  const markdown = new Map<string, MarkdownSource>()
  const ledgers = new Map<string, string>()
  for (const path of [...texts.keys()].sort()) {
    const text = (texts.get(path) ?? '').replace(/^\uFEFF/u, '').replace(/\r\n?/gu, '\n')
    files.set(path, files.get(path) ?? new VFile({path, value: text}))
    refuseHiddenLetter(text, placeOfFirstHidden(path, text), files)
    if (path.endsWith('.yaml')) setIfRead(yaml, path, yamlOf(path, text, files))
    else if (path.endsWith('.csv')) setIfRead(csv, path, csvOf(path, text, files))
    else if (path.startsWith('procedures/') && path.endsWith('.md'))
      setIfRead(markdown, path, markdownOf(path, text, files))
    else if (path.startsWith('issues/') && (path.endsWith('.json') || path.endsWith('.txt')))
      ledgers.set(path, text)
    else {
      addMessage(
        files,
        {path, line: 1, column: 1},
        'no-stray-file',
        `Unexpected file \`${path}\`, expected .yaml, .csv, or .md in procedures`,
        {
          note: 'Move the file out of the content folder',
        },
      )
    }
  }
  if (texts.size === 0 && files.size === 0) {
    addMessage(
      files,
      {path: '.', line: 1, column: 1},
      'no-missing-content',
      'Unexpected empty content folder, expected at least `office.yaml` and a vessel',
      {
        note: 'Name the folder that holds the content with --content',
      },
    )
  }
  return {yaml, csv, markdown, ledgers}
}

function placeOfFirstHidden(path: string, text: string): Place {
  const lines = text.slice(0, placeOfHiddenLetter(text) ?? 0).split('\n')
  return {path, line: lines.length, column: (lines.at(-1) ?? '').length + 1}
}

function setIfRead<T>(map: Map<string, T>, path: string, value: T | undefined): void {
  if (value !== undefined) map.set(path, value)
}

async function listFiles(root: string, below: string, files: ContentFiles): Promise<readonly string[]> {
  let entries: Dirent[]
  try {
    entries = await readdir(join(root, below), {withFileTypes: true})
  } catch (error) {
    if (below === '')
      addMessage(
        files,
        {path: '.', line: 1, column: 1},
        'no-missing-content',
        `Unexpected content folder \`${root}\` that cannot be read (${codeOf(error)}), expected a folder`,
        {note: 'Name the folder that holds the content with --content'},
      )
    else
      addMessage(
        files,
        {path: below, line: 1, column: 1},
        'no-unreadable-file',
        `Unexpected folder that cannot be read (${codeOf(error)}), expected a readable folder`,
        {note: 'Give yourself the right to read it'},
      )
    return []
  }
  const found: string[] = []
  for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    if (entry.name.startsWith('.')) continue
    const path = below === '' ? entry.name : `${below}/${entry.name}`
    if (entry.isDirectory()) found.push(...(await listFiles(root, path, files)))
    else found.push(path)
  }
  return found
}

async function readBytes(root: string, path: string, files: ContentFiles): Promise<Uint8Array | undefined> {
  const place = {path, line: 1, column: 1}
  try {
    const stats = await stat(join(root, path))
    if (!stats.isFile()) {
      addMessage(files, place, 'no-unreadable-file', 'Unexpected thing that is no file, expected a file', {
        note: 'Move it out of the content folder',
      })
      return undefined
    }
    if (stats.size > largestFile) {
      addMessage(
        files,
        place,
        'no-oversized-file',
        `Unexpected size of ${stats.size} bytes, expected at most ${largestFile}`,
        {note: 'Split the file'},
      )
      return undefined
    }
    return await readFile(join(root, path))
  } catch (error) {
    addMessage(
      files,
      place,
      'no-unreadable-file',
      `Unexpected file that cannot be read (${codeOf(error)}), expected a readable file`,
      {
        note: 'Give yourself the right to read it',
      },
    )
    return undefined
  }
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error)
}

/** Line and column of the first byte that is not UTF-8. */
function placeOfBadByte(bytes: Uint8Array): {line: number; column: number} {
  const decoder = new TextDecoder('utf-8')
  const before = decoder.decode(bytes).split('\uFFFD')[0] ?? ''
  const lines = before.split('\n')
  return {line: lines.length, column: (lines.at(-1) ?? '').length + 1}
}
