import type {Node} from 'unist'
import {addMessage} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import {attribute, type Desk, type Directive, placeOfNode} from './directive.ts'

const typedNumber =
  /(?:\d+(?:[.,]\d+)?|[\u00BC-\u00BE\u2150-\u215E])(?:\s?(?:mm|µm|m|bar|N·m|kg|l|ml|°C|%|h|min|s)\b)?/u

/** A number in words that print has no source and moves with nothing: it is a message at its own place. */
export function refuseTypedNumber(words: string, node: Node, desk: Desk): void {
  const match = typedNumber.exec(words)
  if (!match) return
  addMessage(
    desk.files,
    placeOfMatch(match, words, node, desk),
    'no-typed-number',
    `Unexpected number \`${match[0]}\` typed into prose, expected a reference such as \`:value{ref=…}\``,
    {
      note: 'State the number once as a value with its source and refer to it by id; spell small counts as words',
    },
  )
}

/** An attribute whose words print as they stand. */
export function printedWords(node: Directive, name: string, desk: Desk): string {
  const words = attribute(node, name)
  refuseTypedNumber(words, node, desk)
  return words
}

/** Words of a wrapped line have lost its indentation, so that the number itself is looked for in the source. */
function placeOfMatch(match: RegExpExecArray, words: string, node: Node, desk: Desk): Place {
  const from = node.position?.start.offset
  if (from === undefined) return placeOfNode(node, desk)
  const source = desk.source.slice(from, node.position?.end.offset)
  const whole = source.indexOf(words)
  const at = whole === -1 ? source.indexOf(match[0]) : whole + match.index
  if (at === -1) return placeOfNode(node, desk)
  const before = desk.source.slice(0, from + at).split('\n')
  return {path: desk.path, line: before.length, column: (before.at(-1) ?? '').length + 1}
}
