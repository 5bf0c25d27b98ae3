import type {PhrasingContent, Text} from 'mdast'
import type {TextDirective} from 'mdast-util-directive'
import type {Inline, RichText} from '../../handbook-model/procedure.ts'
import {addMessage} from '../../messages/add-message.ts'
import {
  type Desk,
  type Directive,
  isDirective,
  isSoundDirective,
  placeOfNode,
  placeOfOffset,
  referenceOf,
} from './directive.ts'
import {refuseEscapedLetter, refuseTypedNumber} from './typed-number.ts'

/** Turns Markdown inline content into bound-to-be text; typed numbers, raw HTML and strangers are messages. */
export function inlineText(nodes: readonly PhrasingContent[], desk: Desk): RichText {
  const inline = nodes.flatMap((node) => inlineOf(node, desk))
  return trimEnds(inline)
}

/** The words behind the mark of a step or choice; a mark without words is a message. */
export function instructionOf(mark: Directive, nodes: readonly PhrasingContent[], desk: Desk): RichText {
  const words = inlineText(nodes, desk)
  if (words.length > 0 || nodes.some((node) => node.type !== 'text')) return words
  addMessage(
    desk.files,
    placeOfNode(mark, desk),
    'no-markdown-fault',
    `Unexpected \`${mark.name}\` without words, expected a sentence behind the braces`,
    {note: 'Say in one sentence what is done'},
  )
  return words
}

function inlineOf(node: PhrasingContent, desk: Desk): readonly Inline[] {
  switch (node.type) {
    case 'text':
      refuseEscapedLetter(node.value, node, desk)
      refuseTypedNumber(node.value, node, desk)
      refuseBrokenDirective(node, desk)
      return [{kind: 'text', text: node.value.replace(/\s+/gu, ' ')}]
    case 'strong':
      return [{kind: 'strong', children: inlineText(node.children, desk)}]
    case 'emphasis':
      return [{kind: 'emphasis', children: inlineText(node.children, desk)}]
    case 'break':
      return [{kind: 'text', text: ' '}]
    case 'textDirective':
      return directiveOf(node, desk)
    case 'html':
      addMessage(
        desk.files,
        placeOfNode(node, desk),
        'no-raw-html',
        `Unexpected HTML \`${node.value.slice(0, 40)}\`, expected Markdown`,
        {note: 'Write it in Markdown or with a directive'},
      )
      return []
    default:
      addMessage(
        desk.files,
        placeOfNode(node, desk),
        'no-markdown-fault',
        `Unexpected ${node.type}, expected words, emphasis or a directive`,
        {note: 'Refer to procedures, values and terms by their directives'},
      )
      return []
  }
}

/** A leaf directive that is not written as one would print with its braces. */
function refuseBrokenDirective(node: Text, desk: Desk): void {
  const at = node.value.indexOf('::')
  if (at === -1) return
  const start = node.position?.start.offset ?? 0
  const written = desk.source.indexOf('::', start)
  addMessage(
    desk.files,
    written === -1 ? placeOfNode(node, desk) : placeOfOffset(written, desk),
    'no-unknown-directive',
    'Unexpected `::` among words, expected a directive in a line of its own with closed braces',
    {
      note: 'Write the directive alone in its line, with the brace right behind its name and closed at the end',
    },
  )
}

function directiveOf(node: TextDirective, desk: Desk): readonly Inline[] {
  if (!isDirective(node) || !isSoundDirective(node, desk)) return []
  const label = labelOf(node, desk)
  const ref = referenceOf(node, 'ref', desk)
  switch (node.name) {
    case 'value':
      return [{kind: 'value', value: ref}]
    case 'procedure':
      return [{kind: 'procedure', procedure: ref, label}]
    case 'term':
      return [{kind: 'term', term: ref, label}]
    case 'part':
      refuseWordless(node, label, desk)
      return [{kind: 'part', part: ref, label}]
    default:
      addMessage(
        desk.files,
        placeOfNode(node, desk),
        'no-misplaced-directive',
        `Unexpected \`:${node.name}\` inside a sentence, expected it at the start of a list item`,
        {note: 'Begin the list item with it'},
      )
      return []
  }
}

/** A balloon alone says nothing: a part is named in words. */
function refuseWordless(node: TextDirective, label: string, desk: Desk): void {
  if (label.trim() !== '') return
  addMessage(
    desk.files,
    placeOfNode(node, desk),
    'no-markdown-fault',
    'Unexpected `part` without words, expected what the part is called in the brackets',
    {note: 'Write it like `:part[lower wear ring]{ref=lower-ring}`'},
  )
}

/** The words in the brackets of a link or part: plain, for marks in them would be lost. */
function labelOf(node: TextDirective, desk: Desk): string {
  return node.children
    .map((child) => {
      if (child.type === 'text') {
        refuseEscapedLetter(child.value, child, desk)
        refuseTypedNumber(child.value, child, desk)
        return child.value.replace(/\s+/gu, ' ')
      }
      addMessage(
        desk.files,
        placeOfNode(child, desk),
        'no-markdown-fault',
        `Unexpected ${child.type} in the brackets of \`${node.name}\`, expected plain words`,
        {note: 'Write the words in the brackets without marks'},
      )
      return ''
    })
    .join('')
}

function trimEnds(inline: readonly Inline[]): RichText {
  return inline
    .map((one, index): Inline => {
      if (one.kind !== 'text') return one
      const start = index === 0 ? one.text.trimStart() : one.text
      return {kind: 'text', text: index === inline.length - 1 ? start.trimEnd() : start}
    })
    .filter((one) => one.kind !== 'text' || one.text !== '')
}
