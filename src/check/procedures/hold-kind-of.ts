import {type HoldKind, holdKinds} from '../../handbook-model/hold-kinds.ts'
import {addMessage} from '../../messages/add-message.ts'
import {expectedWord} from '../nearest-word.ts'
import {
  attribute,
  type Desk,
  type Directive,
  placeOfNode,
  placeOfOffset,
  writtenAttribute,
} from './directive.ts'

/** The `kind` of a hold point; a word that is none of the ten is told at its place, and a hold without a kind has none. */
export function holdKindOf(node: Directive, desk: Desk): HoldKind | undefined {
  if (!Object.hasOwn(node.attributes ?? {}, 'kind')) return undefined
  const word = attribute(node, 'kind')
  const kind = holdKinds.find((one) => one === word)
  if (kind) return kind
  const written = writtenAttribute(node, 'kind', desk)
  addMessage(
    desk.files,
    written ? placeOfOffset(written.offset, desk) : placeOfNode(node, desk),
    'no-wrong-shape',
    `Unexpected \`${word}\`, ${expectedWord(word, holdKinds, 'a kind of hold point')}`,
    {note: `Write one of ${holdKinds.join(', ')}, or leave \`kind\` out`},
  )
  return undefined
}
