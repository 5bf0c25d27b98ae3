import type {ContainerDirective, LeafDirective, TextDirective} from 'mdast-util-directive'
import type {Node} from 'unist'
import type {WrittenCondition} from '../../handbook-model/condition.ts'
import type {Reference} from '../../handbook-model/datum.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import {parseCondition} from '../conditions/parse-condition.ts'
import {expectedWord} from '../nearest-word.ts'
import {faultOfId} from '../shapes/placed-shape.ts'
import {type WrittenAttribute, writtenAttributes} from './written-attributes.ts'

/** What the parser of one procedure needs everywhere: which file, its text, and where messages go. */
export interface Desk {
  readonly path: string
  readonly source: string
  readonly files: ContentFiles
}

export type Directive = TextDirective | LeafDirective | ContainerDirective

/** Attributes that each directive may carry; `*` marks those it must have. */
const attributes = {
  textDirective: {
    step: ['*id', 'action', 'when'],
    choice: ['*id', 'when'],
    value: ['*ref'],
    procedure: ['*ref'],
    term: ['*ref'],
    part: ['*ref'],
  },
  leafDirective: {
    section: ['*id', 'when'],
    caution: ['*ref', 'section', 'when'],
    value: ['*ref', 'when'],
    reading: ['*id', '*title', '*quantity', '*unit', '*stations', '*instrument', '*phase', 'limits', 'when'],
    derived: ['*id', '*title', '*unit', '*calculation', '*from', '*phase', '*limits', 'when'],
    wait: ['*id', '*least', '*missed'],
    repeat: ['*until', 'times'],
    'second-person': ['*id', '*what'],
    figure: ['*name', '*caption', 'when'],
    isolate: ['*role'],
    restore: ['*role'],
    identify: ['*fact'],
    tally: ['*id', '*what'],
    'write-in': ['*id', '*what', 'columns'],
    'cargo-table': [],
    'material-table': [],
    'entry-limits': [],
    'hold-point': ['*id', '*title', 'kind', 'signed-by', 'second-by', 'when'],
  },
  containerDirective: {'one-of': ['*id'], only: ['*when']},
} as const satisfies Record<Directive['type'], Record<string, readonly string[]>>

/** A place for any node of the tree. */
export function placeOfNode(node: Node, desk: Desk): Place {
  const position = node.position
  if (!position) return {path: desk.path, line: 1, column: 1}
  return {
    path: desk.path,
    line: position.start.line,
    column: position.start.column,
    endLine: position.end.line,
    endColumn: position.end.column,
  }
}

/** True for any of the three directive forms. */
export function isDirective(node: Node): node is Directive {
  return node.type === 'textDirective' || node.type === 'leafDirective' || node.type === 'containerDirective'
}

/** Reports an unknown directive or attribute, a missing or blank one, and words that would be lost; true when the directive can be used. */
export function isSoundDirective(node: Directive, desk: Desk): boolean {
  const place = placeOfNode(node, desk)
  const form: Readonly<Record<string, readonly string[]>> = attributes[node.type]
  const allowed = Object.hasOwn(form, node.name) ? form[node.name] : undefined
  const marks = {textDirective: ':', leafDirective: '::', containerDirective: ':::'}
  if (!allowed) {
    addMessage(
      desk.files,
      place,
      'no-unknown-directive',
      `Unexpected directive \`${marks[node.type]}${node.name}\`, ${expectedWord(node.name, Object.keys(form), 'a directive')}`,
      {
        note: `The directives written with ${marks[node.type]} are ${Object.keys(form).join(', ')}`,
      },
    )
    return false
  }
  const names = allowed.map((name) => name.replace('*', ''))
  const written = Object.keys(node.attributes ?? {})
  const strange = written.filter((name) => !names.includes(name))
  const missing = allowed.filter(
    (name) => name.startsWith('*') && attribute(node, name.slice(1)).trim() === '',
  )
  const doubled = doubledAttributes(node, desk)
  for (const name of strange) {
    addMessage(
      desk.files,
      place,
      'no-unknown-directive',
      `Unexpected attribute \`${name}\` of \`${node.name}\`, ${expectedWord(name, names, 'an attribute')}`,
      {
        note: `\`${node.name}\` takes ${names.join(', ')}`,
      },
    )
  }
  for (const name of missing) {
    const shown = name === '*id' ? `#id` : `${name.slice(1)}=…`
    addMessage(
      desk.files,
      place,
      'no-missing-key',
      `Unexpected \`${node.name}\` without \`${shown}\`, expected it in the braces`,
      {note: `Add \`${shown}\` inside the braces`},
    )
  }
  for (const name of doubled) {
    addMessage(
      desk.files,
      place,
      'no-duplicate-id',
      `Unexpected second attribute \`${name}\` of \`${node.name}\`, expected each attribute once`,
      {note: 'Take one of the two out'},
    )
  }
  return !losesWords(node, desk) && strange.length === 0 && missing.length === 0 && doubled.length === 0
}

/** Names that are written twice: the tree keeps the last one alone. A class is refused anyway. */
function doubledAttributes(node: Directive, desk: Desk): readonly string[] {
  const names = writtenAttributes(node, desk.source).map((one) => one.name)
  return [...new Set(names.filter((name, index) => name !== 'class' && names.indexOf(name) < index))]
}

/** Directives that print the words in their brackets. */
const withWords: ReadonlySet<string> = new Set(['procedure', 'term', 'part'])

/** Words in brackets print for links and parts alone; elsewhere they would silently be lost. */
function losesWords(node: Directive, desk: Desk): boolean {
  if (node.type === 'containerDirective' || node.children.length === 0) return false
  if (withWords.has(node.name)) return false
  addMessage(
    desk.files,
    placeOfNode(node, desk),
    'no-unknown-directive',
    `Unexpected words in the brackets of \`${node.name}\`, expected no brackets`,
    {note: 'Write the words outside the directive'},
  )
  return true
}

/** An attribute as text, blank when absent. */
export function attribute(node: Directive, name: string): string {
  return node.attributes?.[name] ?? ''
}

/** An attribute with the place of its value in the file, or undefined when it cannot be told. */
export function writtenAttribute(node: Directive, name: string, desk: Desk): WrittenAttribute | undefined {
  return writtenAttributes(node, desk.source).findLast((one) => one.name === name)
}

/** Line and column of an offset of the file. */
export function placeOfOffset(offset: number, desk: Desk): Place {
  const before = desk.source.slice(0, offset).split('\n')
  return {path: desk.path, line: before.length, column: (before.at(-1) ?? '').length + 1}
}

/** The author-written id of a directive; a malformed one is a message. */
export function idOf(node: Directive, desk: Desk): string {
  const id = attribute(node, 'id')
  const fault = faultOfId(id)
  if (fault)
    addMessage(desk.files, placeOfNode(node, desk), 'no-bad-id', fault, {
      note: 'Write it like `#loosen-hub-bolts`',
    })
  return id
}

/** An attribute that refers to something by id. */
export function referenceOf(node: Directive, name: string, desk: Desk): Reference {
  return {id: attribute(node, name), place: placeOfNode(node, desk)}
}

/** An attribute that holds several ids with blanks between. */
export function referencesOf(node: Directive, name: string, desk: Desk): readonly Reference[] {
  return attribute(node, name)
    .split(/[\s,]+/u)
    .filter((id) => id !== '')
    .map((id) => ({id, place: placeOfNode(node, desk)}))
}

/** An attribute that lists words with commas between. */
export function wordsOf(node: Directive, name: string): readonly string[] {
  return attribute(node, name)
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '')
}

/** The `when` of a directive, parsed, with faults placed at their own line and column. */
export function conditionOf(node: Directive, desk: Desk): WrittenCondition | undefined {
  if (!Object.hasOwn(node.attributes ?? {}, 'when')) return undefined
  const text = attribute(node, 'when')
  const written = text.trim() === '' ? undefined : writtenAttribute(node, 'when', desk)
  if (!written) return parseCondition(text, placeOfNode(node, desk), desk.files)
  const {raw, offset} = written
  return parseCondition(raw.includes('&') ? text : raw, placeOfOffset(offset, desk), desk.files)
}
