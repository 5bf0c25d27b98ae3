import type {BlockContent, DefinitionContent, Heading, ListItem, Root, RootContent} from 'mdast'
import {toString as textOf} from 'mdast-util-to-string'
import type {CautionUse, HoldPoint, RichText, Section, Step} from '../../handbook-model/procedure.ts'
import {addMessage} from '../../messages/add-message.ts'
import {
  attribute,
  conditionOf,
  type Desk,
  type Directive,
  idOf,
  isDirective,
  isSoundDirective,
  placeOfNode,
  referenceOf,
} from './directive.ts'
import {holdKindOf} from './hold-kind-of.ts'
import {inlineText, instructionOf} from './inline-text.ts'
import {type Chapter, parseState} from './parse-states.ts'
import {parseStepParts} from './parse-step-parts.ts'
import {refuseBox} from './refuse-box.ts'
import {stranger} from './stranger.ts'
import {printedWords} from './typed-number.ts'

/** The body of a procedure: title, purpose, states and sections of steps. */
export interface ProcedureBody {
  readonly title: string
  readonly purpose: readonly RichText[]
  readonly before: readonly RichText[]
  readonly after: readonly RichText[]
  readonly sections: readonly Section[]
}

/** Parses everything below the front matter. */
export function parseBody(tree: Root, desk: Desk): ProcedureBody {
  const content = tree.children.filter((node) => node.type !== 'yaml')
  const [first, ...rest] = content
  const title = first?.type === 'heading' && first.depth === 1 ? titleOf(first, desk) : ''
  if (title === '') {
    addMessage(
      desk.files,
      first ? placeOfNode(first, desk) : {path: desk.path, line: 1, column: 1},
      'no-markdown-fault',
      'Unexpected procedure without a title, expected a line `# Title` below the front matter',
      {note: 'Write the title as a heading of the first level'},
    )
  }
  const chapters = chaptersOf(rest, desk)
  const [head, ...others] = chapters
  return {
    title,
    purpose: paragraphsOf(head?.nodes ?? [], desk),
    before: parseState('State before', others, desk),
    after: parseState('State after', others, desk),
    sections: others
      .filter((one) => one.title !== 'State before' && one.title !== 'State after')
      .map((one) => sectionOf(one, desk)),
  }
}

/** The words of a heading; numbers, HTML and directives in it are messages. */
function titleOf(heading: Heading, desk: Desk): string {
  for (const inline of inlineText(heading.children, desk)) {
    if (inline.kind !== 'value' && inline.kind !== 'procedure' && inline.kind !== 'term') continue
    addMessage(
      desk.files,
      placeOfNode(heading, desk),
      'no-misplaced-directive',
      `Unexpected \`:${inline.kind}\` in a heading, expected words`,
      {note: 'Move it into a sentence below the heading'},
    )
  }
  return textOf(heading)
}

function chaptersOf(nodes: readonly RootContent[], desk: Desk): readonly Chapter[] {
  const chapters: {title: string; heading: RootContent; nodes: RootContent[]}[] = []
  const [first] = nodes
  if (!first) return []
  chapters.push({title: '', heading: first, nodes: []})
  for (const node of nodes) {
    if (node.type === 'heading' && node.depth === 2)
      chapters.push({title: titleOf(node, desk), heading: node, nodes: []})
    else chapters.at(-1)?.nodes.push(node)
  }
  return chapters
}

function paragraphsOf(nodes: readonly RootContent[], desk: Desk): readonly RichText[] {
  return nodes.flatMap((node): readonly RichText[] =>
    node.type === 'paragraph' ? [inlineText(node.children, desk)] : stranger(node, 'a paragraph', desk),
  )
}

function sectionOf(chapter: Chapter, desk: Desk): Section {
  const [mark] = chapter.nodes
  const place = placeOfNode(chapter.heading, desk)
  const marked = mark && isDirective(mark) && mark.name === 'section' ? mark : undefined
  const sound = marked && isSoundDirective(marked, desk) ? marked : undefined
  if (!marked) {
    addMessage(
      desk.files,
      place,
      'no-missing-key',
      `Unexpected heading \`${chapter.title}\` without an id, expected \`::section{#id}\` below it`,
      {note: 'Write `::section{#id}` in a line of its own under the heading'},
    )
  }
  const when = sound ? conditionOf(sound, desk) : undefined
  const parts: SectionParts = {cautions: [], intro: [], items: [], waiting: []}
  for (const node of chapter.nodes.slice(marked ? 1 : 0)) addToSection(node, parts, desk)
  refuseWaiting(parts, desk)
  if (isIntroduction(chapter.nodes))
    addMessage(
      desk.files,
      place,
      'no-markdown-fault',
      `Unexpected section \`${chapter.title}\` without a step, expected a step or a hold point`,
      {note: 'Write the step, or move the words to the section they introduce'},
    )
  return {
    id: sound ? idOf(sound, desk) : '',
    title: chapter.title,
    ...(when ? {when} : {}),
    cautions: parts.cautions,
    intro: parts.intro,
    items: parts.items,
    place,
  }
}

/** True when nothing below a heading is, or tries to be, a step or a hold point. */
function isIntroduction(nodes: readonly RootContent[]): boolean {
  return nodes.every(
    (node) =>
      node.type === 'paragraph' ||
      (isDirective(node) && (node.name === 'section' || node.name === 'caution')),
  )
}

interface SectionParts {
  readonly cautions: CautionUse[]
  readonly intro: RichText[]
  readonly items: (Step | HoldPoint)[]
  /** Cautions that wait for their step. */
  waiting: CautionUse[]
}

function refuseWaiting(parts: SectionParts, desk: Desk): void {
  for (const one of parts.waiting) {
    addMessage(
      desk.files,
      one.place,
      'no-misplaced-directive',
      `Unexpected caution \`${one.caution.id}\` before no step, expected a step right after it`,
      {note: 'Move it above the step it guards, or mark it `section`'},
    )
  }
  parts.waiting = []
}

function addToSection(node: RootContent, parts: SectionParts, desk: Desk): void {
  if (node.type === 'paragraph') {
    refuseWaiting(parts, desk)
    const last = parts.items.at(-1)
    if (parts.items.length === 0) parts.intro.push(inlineText(node.children, desk))
    else if (last?.kind === 'hold-point')
      parts.items.splice(-1, 1, {...last, text: [...last.text, inlineText(node.children, desk)]})
    else stranger(node, 'a step or a directive after the first step of a section', desk)
  } else if (node.type === 'list' && node.ordered) {
    for (const item of node.children) {
      const step = stepOf(item, parts.waiting, desk)
      parts.waiting = []
      if (step) parts.items.push(step)
    }
  } else if (isDirective(node)) {
    if (isSoundDirective(node, desk)) addDirective(node, parts, desk)
  } else stranger(node, 'an ordered list of steps, a paragraph or a directive', desk)
}

function addDirective(node: Directive, parts: SectionParts, desk: Desk): void {
  const place = placeOfNode(node, desk)
  const when = conditionOf(node, desk)
  if (node.name === 'caution') {
    const use: CautionUse = {caution: referenceOf(node, 'ref', desk), ...(when ? {when} : {}), place}
    if (node.attributes?.['section'] === undefined) parts.waiting.push(use)
    else parts.cautions.push(use)
  } else if (node.name === 'hold-point') {
    refuseWaiting(parts, desk)
    const holds = holdKindOf(node, desk)
    parts.items.push({
      kind: 'hold-point',
      id: idOf(node, desk),
      title: printedWords(node, 'title', desk),
      signedBy: attribute(node, 'signed-by'),
      secondBy: attribute(node, 'second-by'),
      ...(holds ? {holds} : {}),
      ...(when ? {when} : {}),
      text: [],
      place,
    })
  } else if (node.name === 'section') {
    addMessage(
      desk.files,
      place,
      'no-misplaced-directive',
      'Unexpected `section` between steps, expected it directly under a heading',
      {note: 'Begin the section with a heading `## …`'},
    )
  } else {
    addMessage(
      desk.files,
      place,
      'no-misplaced-directive',
      `Unexpected \`${node.name}\` between steps, expected it inside a step`,
      {note: 'Indent it below the step it belongs to'},
    )
  }
}

function stepOf(item: ListItem, cautions: readonly CautionUse[], desk: Desk): Step | undefined {
  const [first, ...rest] = item.children
  const [mark, ...words] = first?.type === 'paragraph' ? first.children : []
  if (mark?.type !== 'textDirective' || mark.name !== 'step') {
    addMessage(
      desk.files,
      placeOfNode(item, desk),
      'no-unmarked-step',
      'Unexpected step without a mark, expected `:step{#id}` at its start',
      {note: 'Begin the list item with `:step{#id action=…}`'},
    )
    return undefined
  }
  refuseBox(item, desk)
  if (!isSoundDirective(mark, desk)) return undefined
  const when = conditionOf(mark, desk)
  const blocks: readonly (BlockContent | DefinitionContent)[] = rest
  return {
    kind: 'step',
    id: idOf(mark, desk),
    actions: attribute(mark, 'action')
      .split(/\s+/u)
      .filter((one) => one !== ''),
    ...(when ? {when} : {}),
    cautions,
    instruction: instructionOf(mark, words, desk),
    parts: parseStepParts(blocks, desk),
    place: placeOfNode(mark, desk),
  }
}
