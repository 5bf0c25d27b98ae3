import type {RootContent} from 'mdast'
import {addMessage} from '../../messages/add-message.ts'
import {type Desk, placeOfNode} from './directive.ts'

/** Markdown at a place that expects something else: a message, and nothing of it is kept. */
export function stranger(node: RootContent, expected: string, desk: Desk): readonly never[] {
  const html = node.type === 'html'
  addMessage(
    desk.files,
    placeOfNode(node, desk),
    html ? 'no-raw-html' : 'no-markdown-fault',
    `Unexpected ${html ? 'HTML' : node.type}, expected ${expected}`,
    {note: `Write ${expected} here`},
  )
  return []
}
