import type {ListItem} from 'mdast'
import {addMessage} from '../../messages/add-message.ts'
import {type Desk, placeOfNode} from './directive.ts'

/** A box `[ ]` at the start of a list item is a tick of its own in Markdown and would be lost: pages print theirs. */
export function refuseBox(item: ListItem, desk: Desk): void {
  if (typeof item.checked !== 'boolean') return
  addMessage(
    desk.files,
    placeOfNode(item, desk),
    'no-markdown-fault',
    `Unexpected box \`[${item.checked ? 'x' : ' '}]\` of a list item, expected words alone`,
    {note: 'Take the box out: the page prints a tick for each item'},
  )
}
