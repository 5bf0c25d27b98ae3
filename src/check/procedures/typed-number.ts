import type {Node} from 'unist'
import {addMessage} from '../../messages/add-message.ts'
import {placeOfHiddenLetter, refuseHiddenLetter} from '../../messages/refuse-hidden-letter.ts'
import {
  attribute,
  type Desk,
  type Directive,
  placeOfNode,
  placeOfOffset,
  writtenAttribute,
} from './directive.ts'

/** Digits of every script, fractions and Roman numerals; the raised and lowered digits of `m³` and `CO₂` are no numbers. */
const typedNumber =
  /(?:(?![²³¹\u2070-\u2089])\p{N})+(?:[.,]\p{N}+)?(?:\s?(?:mm|µm|m|bar|N·m|kg|l|ml|°C|%|h|min|s)\b)?/gu

/** The numbers that stand in words. */
export function typedNumbers(words: string): readonly string[] {
  return [...words.matchAll(typedNumber)].map(([found]) => found)
}

/** A stretch of the file that holds words as they are written there. */
interface Stretch {
  readonly start: number
  readonly end: number
}

/** Each number in words that print has no source and moves with nothing: it is a message at its own place. */
export function refuseTypedNumber(
  words: string,
  node: Node,
  desk: Desk,
  stretch: Stretch | undefined = stretchOfNode(node),
): void {
  let from = stretch?.start ?? 0
  for (const match of words.matchAll(typedNumber)) {
    const at = stretch ? offsetOf(match, words, {...stretch, start: from}, desk) : undefined
    if (at !== undefined) from = at + match[0].length
    addMessage(
      desk.files,
      at === undefined ? placeOfNode(node, desk) : placeOfOffset(at, desk),
      'no-typed-number',
      `Unexpected number \`${match[0]}\` typed into prose, expected a reference such as \`:value{ref=…}\``,
      {
        note: 'State the number once as a value with its source and refer to it by id; spell small counts as words',
      },
    )
  }
}

/** A letter that does not print, written as an entity; written as it is, the whole file was looked at. */
export function refuseEscapedLetter(words: string, node: Node, desk: Desk): void {
  if (placeOfHiddenLetter(words) === undefined || placeOfHiddenLetter(desk.source) !== undefined) return
  refuseHiddenLetter(words, placeOfNode(node, desk), desk.files)
}

/** An attribute whose words print as they stand. */
export function printedWords(node: Directive, name: string, desk: Desk): string {
  const words = attribute(node, name)
  const written = writtenAttribute(node, name, desk)
  refuseEscapedLetter(words, node, desk)
  refuseTypedNumber(
    words,
    node,
    desk,
    written && {start: written.offset, end: written.offset + written.raw.length},
  )
  return words
}

function stretchOfNode(node: Node): Stretch | undefined {
  const start = node.position?.start.offset
  const end = node.position?.end.offset
  return start === undefined || end === undefined ? undefined : {start, end}
}

/** Words of a wrapped line have lost its indentation, so that the number itself is looked for behind the last one. */
function offsetOf(
  match: RegExpExecArray,
  words: string,
  {start, end}: Stretch,
  desk: Desk,
): number | undefined {
  const source = desk.source.slice(start, end)
  const whole = source.indexOf(words)
  const at = whole === -1 ? source.indexOf(match[0]) : whole + match.index
  return at === -1 ? undefined : start + at
}
