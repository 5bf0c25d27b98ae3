import {isAlias, isMap, isNode, isScalar, isSeq, LineCounter, type Node, parseDocument, visit} from 'yaml'
import type {PlacedMap, PlacedNode, PlacedScalar} from '../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {placeOfHiddenLetter, refuseHiddenLetter} from '../messages/refuse-hidden-letter.ts'
import {placeOfDeepNesting} from './nesting-of-yaml.ts'

/**
 * Reads YAML text into a tree whose leaves are texts that know their place.
 *
 * The failsafe schema is used: nothing is guessed to be a number, a date or a
 * truth value. Anchors and aliases are refused before anything is expanded, so
 * that a few lines cannot grow into gigabytes. A key written twice is left to
 * the shapes: they name the first place too, and do not slow down on long maps.
 * A file indented with tabs is one mistake and not one a line.
 *
 * @param firstLine
 *   Line of the file on which the text begins, for front matter.
 * @returns
 *   The tree, or `undefined` when a message was added.
 */
export function readYaml(
  path: string,
  text: string,
  files: ContentFiles,
  firstLine = 1,
): PlacedNode | undefined {
  const deep = placeOfDeepNesting(text)
  if (deep) {
    addMessage(
      files,
      {path, line: deep.line + firstLine - 1, column: deep.column},
      'no-yaml-fault',
      'Unexpected nesting deeper than content ever is, expected a few levels',
      {note: 'Look for brackets that do not close, or for a file that is no content'},
    )
    return undefined
  }
  const lines = new LineCounter()
  const document = parseDocument(text, {
    schema: 'failsafe',
    lineCounter: lines,
    prettyErrors: false,
    uniqueKeys: false,
    logLevel: 'error',
  })
  const placeOf = (start: number, end: number): Place => {
    const from = lines.linePos(start)
    const to = lines.linePos(Math.max(start, end))
    return {
      path,
      line: from.line + firstLine - 1,
      column: from.col,
      endLine: to.line + firstLine - 1,
      endColumn: to.col,
    }
  }
  const faults = [...document.errors, ...document.warnings]
  const tab = faults.find((fault) => fault.code === 'TAB_AS_INDENT')
  const faultyLines = new Set<number>()
  for (const fault of tab ? [tab] : faults) {
    const place = placeOf(fault.pos[0], fault.pos[1])
    if (faultyLines.has(place.line)) continue
    faultyLines.add(place.line)
    addMessage(files, place, 'no-yaml-fault', ...yamlFault(fault.code, fault.message))
  }
  if (faults.length > 0) return undefined
  const alias = firstAlias(document.contents)
  if (alias) {
    const range = alias.range ?? [0, 0]
    addMessage(
      files,
      placeOf(range[0], range[1]),
      'no-yaml-alias',
      'Unexpected anchor or alias, expected every value written out',
      {note: 'Write the value at each place that needs it, or refer to it by id'},
    )
    return undefined
  }
  const tree: PlacedNode =
    document.contents === null
      ? {kind: 'map', entries: [], place: placeOf(0, 0)}
      : placedNode(document.contents, placeOf)
  if (placeOfHiddenLetter(text) === undefined) refuseEscapedLetters(tree, files)
  return tree
}

/** Letters that do not print, written as escapes such as `\\u202E`; written as they are, the whole file was looked at. */
function refuseEscapedLetters(node: PlacedNode, files: ContentFiles): void {
  if (node.kind === 'scalar') refuseHiddenLetter(node.text, node.place, files)
  else if (node.kind === 'list') for (const item of node.items) refuseEscapedLetters(item, files)
  else
    for (const {key, value} of node.entries) {
      refuseHiddenLetter(key.text, key.place, files)
      refuseEscapedLetters(value, files)
    }
}

function yamlFault(code: string, message: string): [string, {note: string}] {
  if (code === 'TAB_AS_INDENT') {
    return ['Unexpected tab as indentation, expected blanks', {note: 'Indent with two blanks for each level'}]
  }
  if (code === 'MULTIPLE_DOCS') {
    return [
      'Unexpected second document in the file, expected one',
      {note: 'Take the line `---` out, or move what follows to a file of its own'},
    ]
  }
  const sentence = message.split('\n')[0] ?? message
  return [
    `Unexpected YAML fault \`${sentence.replace(/[.:]$/u, '')}\`, expected well-formed YAML`,
    {note: 'Mend the line, or put the text in quotes'},
  ]
}

function firstAlias(contents: Node | null): Node | undefined {
  let found: Node | undefined
  visit(contents, {
    Node(_key, node) {
      if (isAlias(node) || ('anchor' in node && node.anchor)) {
        found = node
        return visit.BREAK
      }
      return undefined
    },
  })
  return found
}

function placedNode(node: unknown, placeOf: (start: number, end: number) => Place): PlacedNode {
  if (isMap(node)) {
    const range = node.range ?? [0, 0, 0]
    const entries = node.items.map((pair) => {
      const key = scalar(pair.key, placeOf)
      return {key, value: pair.value === null ? {...key, text: ''} : placedNode(pair.value, placeOf)}
    })
    return {kind: 'map', entries, place: placeOf(range[0], range[1])} satisfies PlacedMap
  }
  if (isSeq(node)) {
    const range = node.range ?? [0, 0, 0]
    return {
      kind: 'list',
      items: node.items.map((item) => placedNode(item, placeOf)),
      place: placeOf(range[0], range[1]),
    }
  }
  return scalar(node, placeOf)
}

function scalar(node: unknown, placeOf: (start: number, end: number) => Place): PlacedScalar {
  const range = (isNode(node) ? node.range : undefined) ?? [0, 0, 0]
  const text = isScalar(node) ? String(node.value ?? '') : ''
  return {kind: 'scalar', text, place: placeOf(range[0], range[1])}
}
