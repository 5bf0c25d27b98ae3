import type {ChangedContent} from './changed-content.ts'
import {renderedContent} from './rendered-content.ts'

/** Files of the small vessel as text. */
export async function textsOf(content: ChangedContent): Promise<ReadonlyMap<string, string>> {
  const {vessels} = await renderedContent(content.folder)
  const decoder = new TextDecoder()
  return new Map((vessels.get('vessel-s') ?? []).map(({path, bytes}) => [path, decoder.decode(bytes)]))
}

/** The tables of a record page, a line for each row. */
export async function rowsOf(page: string, content: ChangedContent): Promise<readonly string[]> {
  const text = (await textsOf(content)).get(page) ?? ''
  return [...text.matchAll(/<tr>(.*?)<\/tr>/gu)].map(([, row = '']) =>
    row
      .split(/<\/t[hd]>/u)
      .map((cell) => cell.replace(/<[^>]*>/gu, ''))
      .filter((cell) => cell !== '')
      .join(' | '),
  )
}

/** Paths that one of two publications alone holds, or whose bytes differ. */
export function pathsChanged(
  before: ReadonlyMap<string, string>,
  after: ReadonlyMap<string, string>,
): readonly string[] {
  return [...new Set([...before.keys(), ...after.keys()])].filter(
    (path) => after.get(path) !== before.get(path),
  )
}
