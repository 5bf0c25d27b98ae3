import type {BlockContent, DefinitionContent, ListItem, RootContent} from 'mdast'
import type {WrittenCondition} from '../../handbook-model/condition.ts'
import type {Alternative, ReadingPhase, StepPart} from '../../handbook-model/procedure.ts'
import {isolationRoles} from '../../handbook-model/vessel-content.ts'
import {addMessage} from '../../messages/add-message.ts'
import {expectedWord} from '../nearest-word.ts'
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
  referencesOf,
  wordsOf,
} from './directive.ts'
import {inlineText, instructionOf} from './inline-text.ts'
import {partsUnder} from './parts-under.ts'
import {refuseBox} from './refuse-box.ts'
import {printedWords} from './typed-number.ts'

/** What follows the instruction of a step inside its list item, in order. */
export function parseStepParts(
  nodes: readonly (BlockContent | DefinitionContent)[],
  desk: Desk,
): readonly StepPart[] {
  return nodes.flatMap((node): readonly StepPart[] => {
    if (node.type === 'paragraph')
      return [{kind: 'note', text: inlineText(node.children, desk), place: placeOfNode(node, desk)}]
    if (isDirective(node)) {
      if (!isSoundDirective(node, desk)) return []
      return node.type === 'containerDirective' && node.name === 'only'
        ? partsUnder(conditionOf(node, desk), parseStepParts(node.children, desk), desk)
        : partOf(node, desk)
    }
    return stranger(node, 'inside a step, expected a note or a directive', desk)
  })
}

function stranger(node: RootContent, where: string, desk: Desk): readonly never[] {
  if (node.type === 'html')
    addMessage(
      desk.files,
      placeOfNode(node, desk),
      'no-raw-html',
      `Unexpected HTML \`${node.value.slice(0, 40)}\`, expected Markdown`,
      {note: 'Write it in Markdown or with a directive'},
    )
  else
    addMessage(desk.files, placeOfNode(node, desk), 'no-markdown-fault', `Unexpected ${node.type} ${where}`, {
      note: 'Write alternatives as a list inside `:::one-of`, and all else as notes of the step',
    })
  return []
}

function partOf(node: Directive, desk: Desk): readonly StepPart[] {
  const place = placeOfNode(node, desk)
  const when = conditionOf(node, desk)
  const conditional = when ? {when} : {}
  switch (node.name) {
    case 'value':
      return [{kind: 'value', value: referenceOf(node, 'ref', desk), ...conditional, place}]
    case 'reading':
    case 'derived':
      return readingOf(node, when, desk)
    case 'wait':
      return [
        {
          kind: 'wait',
          id: idOf(node, desk),
          least: referenceOf(node, 'least', desk),
          missed: printedWords(node, 'missed', desk),
          place,
        },
      ]
    case 'repeat':
      return repeatOf(node, desk)
    case 'one-of':
      return [{kind: 'alternatives', id: idOf(node, desk), items: alternativesOf(node, desk), place}]
    case 'second-person':
      return [{kind: 'second-person', id: idOf(node, desk), what: printedWords(node, 'what', desk), place}]
    case 'figure':
      return [
        {
          kind: 'figure',
          figure: attribute(node, 'name'),
          caption: printedWords(node, 'caption', desk),
          ...conditional,
          place,
        },
      ]
    case 'isolate':
    case 'restore': {
      const role = isolationRoles.find((one) => one === attribute(node, 'role'))
      if (role) return [{kind: node.name, role, place}]
      addMessage(
        desk.files,
        place,
        'no-undefined-reference',
        `Unexpected isolation role \`${attribute(node, 'role')}\`, ${expectedWord(attribute(node, 'role'), isolationRoles, 'a role')}`,
        {note: `The roles are ${isolationRoles.join(', ')}`},
      )
      return []
    }
    case 'identify':
      return [{kind: 'identify', fact: referenceOf(node, 'fact', desk), place}]
    case 'tally':
      return tallyOf(node, desk)
    case 'write-in':
      return writeInOf(node, desk)
    case 'cargo-table':
    case 'material-table':
    case 'entry-limits':
      return [{kind: node.name, place}]
    case 'caution':
      addMessage(
        desk.files,
        place,
        'no-late-caution',
        `Unexpected caution \`${attribute(node, 'ref')}\` after the instruction, expected it before the step`,
        {note: 'Move the `::caution` line above the list item'},
      )
      return []
    default:
      addMessage(
        desk.files,
        place,
        'no-misplaced-directive',
        `Unexpected \`${node.name}\` inside a step, expected it between steps or under a heading`,
        {note: 'Move it out of the list item'},
      )
      return []
  }
}

/** More boxes than this fill the sheet and say nothing. */
const mostTimes = 20

function repeatOf(node: Directive, desk: Desk): readonly StepPart[] {
  const place = placeOfNode(node, desk)
  const until = printedWords(node, 'until', desk)
  const written = node.attributes?.['times']
  if (written === undefined || written === null) return [{kind: 'repeat', until, place}]
  const times = /^[1-9]\d?$/u.test(written) ? Number(written) : 0
  if (times >= 1 && times <= mostTimes) return [{kind: 'repeat', until, times, place}]
  addMessage(
    desk.files,
    place,
    'no-wrong-shape',
    `Unexpected \`times\` of \`${written}\`, expected a whole number from 1 to ${mostTimes}`,
    {note: 'Write how many boxes the sheet shall have, or leave `times` out'},
  )
  return []
}

function tallyOf(node: Directive, desk: Desk): readonly StepPart[] {
  const place = placeOfNode(node, desk)
  const what = wordsOf(node, 'what')
  if (what.length > 0) return [{kind: 'tally', id: idOf(node, desk), what, place}]
  addMessage(
    desk.files,
    place,
    'no-missing-key',
    'Unexpected `tally` of nothing, expected what is counted, with commas between',
    {note: 'Name each thing that is counted out and in'},
  )
  return []
}

/** More columns than this leave no room to write on a sheet. */
const mostColumns = 6

function writeInOf(node: Directive, desk: Desk): readonly StepPart[] {
  const place = placeOfNode(node, desk)
  const what = wordsOf(node, 'what')
  const columns = node.attributes?.['columns'] === undefined ? [] : wordsOf(node, 'columns')
  if (what.length > 0 && columns.length <= mostColumns)
    return [{kind: 'write-in', id: idOf(node, desk), what, columns, place}]
  addMessage(
    desk.files,
    place,
    what.length > 0 ? 'no-wrong-shape' : 'no-missing-key',
    what.length > 0
      ? `Unexpected ${columns.length} columns of \`write-in\`, expected at most ${mostColumns}`
      : 'Unexpected `write-in` of nothing, expected what is written, with commas between',
    {note: what.length > 0 ? 'Write two of them, one below the other' : 'Name each line that is written'},
  )
  return []
}

const phases: readonly ReadingPhase[] = ['as-found', 'as-left', 'during']

function readingOf(node: Directive, when: WrittenCondition | undefined, desk: Desk): readonly StepPart[] {
  const place = placeOfNode(node, desk)
  const phase = phases.find((one) => one === attribute(node, 'phase'))
  if (!phase) {
    addMessage(
      desk.files,
      place,
      'no-wrong-shape',
      `Unexpected phase \`${attribute(node, 'phase')}\`, expected one of \`as-found\`, \`as-left\`, \`during\``,
      {note: 'Say whether the reading is taken as found, as left or during the work'},
    )
    return []
  }
  const common = {
    id: idOf(node, desk),
    title: printedWords(node, 'title', desk),
    unit: attribute(node, 'unit'),
    phase,
    limits: referencesOf(node, 'limits', desk),
    ...(when ? {when} : {}),
    place,
  }
  return node.name === 'reading'
    ? [
        {
          kind: 'reading',
          ...common,
          quantity: attribute(node, 'quantity'),
          stations: wordsOf(node, 'stations'),
          instrument: referenceOf(node, 'instrument', desk),
        },
      ]
    : [
        {
          kind: 'derived',
          ...common,
          calculation: attribute(node, 'calculation'),
          from: referencesOf(node, 'from', desk),
        },
      ]
}

function alternativesOf(node: Directive, desk: Desk): readonly Alternative[] {
  const items = node.children.flatMap((child): readonly ListItem[] =>
    child.type === 'list' ? child.children : stranger(child, 'among choices, expected a bullet list', desk),
  )
  if (items.length < 2) {
    addMessage(
      desk.files,
      placeOfNode(node, desk),
      'no-markdown-fault',
      `Unexpected \`:::one-of\` with ${items.length} choices, expected a list of two or more`,
      {note: 'Write each alternative as a list item that starts with `:choice{#id}`'},
    )
  }
  return items.flatMap((item): readonly Alternative[] => {
    const [first, ...more] = item.children
    const [mark, ...rest] = first?.type === 'paragraph' ? first.children : []
    if (mark?.type !== 'textDirective' || mark.name !== 'choice' || !isSoundDirective(mark, desk)) {
      addMessage(
        desk.files,
        placeOfNode(item, desk),
        'no-unmarked-step',
        'Unexpected alternative without a mark, expected `:choice{#id}` at its start',
        {note: 'Begin the list item with `:choice{#id}`'},
      )
      return []
    }
    refuseBox(item, desk)
    for (const node of more) stranger(node, 'below a choice, expected one paragraph', desk)
    const when = conditionOf(mark, desk)
    return [
      {
        id: idOf(mark, desk),
        ...(when ? {when} : {}),
        text: instructionOf(mark, rest, desk),
        place: placeOfNode(item, desk),
      },
    ]
  })
}
