import type {RootContent} from 'mdast'
import type {RichText} from '../../handbook-model/procedure.ts'
import {addMessage} from '../../messages/add-message.ts'
import {type Desk, placeOfNode} from './directive.ts'
import {inlineText} from './inline-text.ts'
import {refuseBox} from './refuse-box.ts'
import {stranger} from './stranger.ts'

/** A heading of the second level with everything below it. */
export interface Chapter {
  readonly title: string
  readonly heading: RootContent
  readonly nodes: readonly RootContent[]
}

/** The bullets of a reserved heading, `State before` or `State after`; it stands once and holds a list. */
export function parseState(name: string, chapters: readonly Chapter[], desk: Desk): readonly RichText[] {
  const [only, second] = chapters.filter((one) => one.title === name)
  if (only && second) refuseSecondState(only, second, desk)
  return statesOf(only, name, desk)
}

function refuseSecondState(first: Chapter, second: Chapter, desk: Desk): void {
  addMessage(
    desk.files,
    placeOfNode(second.heading, desk),
    'no-duplicate-id',
    `Unexpected second \`## ${second.title}\`, expected the heading once`,
    {note: 'Join the two lists', cause: placeOfNode(first.heading, desk)},
  )
}

function statesOf(chapter: Chapter | undefined, name: string, desk: Desk): readonly RichText[] {
  if (!chapter) {
    addMessage(
      desk.files,
      {path: desk.path, line: 1, column: 1},
      'no-missing-key',
      `Unexpected procedure without \`## ${name}\`, expected the heading with a list`,
      {note: `Add \`## ${name}\` and a bullet list below it`},
    )
    return []
  }
  if (chapter.nodes.length === 0)
    addMessage(
      desk.files,
      placeOfNode(chapter.heading, desk),
      'no-missing-key',
      `Unexpected heading \`${name}\` without a list, expected a bullet list below it`,
      {note: 'List the states one by one'},
    )
  return chapter.nodes.flatMap((node): readonly RichText[] => {
    if (node.type !== 'list') return stranger(node, 'a bullet list', desk)
    return node.children.flatMap((item) => {
      refuseBox(item, desk)
      return item.children.flatMap((child): readonly RichText[] =>
        child.type === 'paragraph'
          ? [inlineText(child.children, desk)]
          : stranger(child, 'words alone in each bullet', desk),
      )
    })
  })
}
