import {diffArrays} from 'diff'

/** A line of a technical text that is not the same before and after; one side is missing where it came or went. */
export interface LineChange {
  readonly block: string
  readonly kind: string
  readonly before?: string
  readonly after?: string
}

/** A change with its place: the index of its line in the later text, or of the line before which it was taken out. */
export interface PlacedChange extends LineChange {
  readonly at: number
}

/** What became of a page between two sets of technical texts. */
export type PageChange =
  | {readonly page: string; readonly kind: 'added' | 'removed'}
  | {readonly page: string; readonly kind: 'changed'; readonly lines: readonly LineChange[]}

/** Pages that differ between two sets of technical texts by page id, in order of their ids. */
export function compareTextSets(
  before: ReadonlyMap<string, string>,
  after: ReadonlyMap<string, string>,
): readonly PageChange[] {
  const ids = [...new Set([...before.keys(), ...after.keys()])].sort((a, b) => (a < b ? -1 : 1))
  return ids.flatMap((page): readonly PageChange[] => {
    const [old, now] = [before.get(page), after.get(page)]
    if (old === undefined) return [{page, kind: 'added'}]
    if (now === undefined) return [{page, kind: 'removed'}]
    return old === now ? [] : [{page, kind: 'changed', lines: compareTexts(old, now)}]
  })
}

/**
 * Lines that differ between two technical texts of one page, in page order.
 *
 * Where lines of one block and kind were taken out and put in at one place,
 * the first of each are one change: `61 N·m` became `70 N·m`.
 */
export function compareTexts(before: string, after: string): readonly LineChange[] {
  return placedChanges(before, after).map(({at: _at, ...change}) => change)
}

/** The same lines, each with its place in the later text. */
export function placedChanges(before: string, after: string): readonly PlacedChange[] {
  const changes: PlacedChange[] = []
  let gone: readonly Line[] = []
  let at = 0
  for (const part of diffArrays(linesOf(before), linesOf(after))) {
    const lines = part.value.map(lineOf)
    if (part.removed) gone = lines
    else {
      changes.push(...paired(gone, part.added ? lines : [], at))
      gone = []
      at += lines.length
    }
  }
  return [...changes, ...paired(gone, [], at)]
}

interface Line {
  readonly block: string
  readonly kind: string
  readonly text: string
}

function paired(gone: readonly Line[], come: readonly Line[], at: number): readonly PlacedChange[] {
  const left = [...gone]
  const changed = come.map(({block, kind, text}, place): PlacedChange => {
    const index = left.findIndex((one) => one.block === block && one.kind === kind)
    const [old] = index === -1 ? [] : left.splice(index, 1)
    return {block, kind, ...(old ? {before: old.text} : {}), after: text, at: at + place}
  })
  return [...left.map(({block, kind, text}) => ({block, kind, before: text, at})), ...changed]
}

function linesOf(text: string): string[] {
  return text.split('\n').filter((line) => line !== '')
}

function lineOf(line: string): Line {
  const [block = '', kind = '', ...rest] = line.split('\t')
  return {block, kind, text: rest.join('\t')}
}
