import type {WrittenCondition} from '../../handbook-model/condition.ts'
import type {Reference} from '../../handbook-model/datum.ts'
import type {Procedure} from '../../handbook-model/procedure.ts'
import type {MarkdownSource} from '../../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import {parseCondition} from '../conditions/parse-condition.ts'
import {checkShape} from '../shapes/check-shape.ts'
import type {Desk} from './directive.ts'
import {frontMatterShape} from './front-matter-shape.ts'
import {parseBody} from './parse-sections.ts'

/**
 * Parses one procedure; everything wrong in it is a message at its own place.
 *
 * @returns
 *   The procedure, or `undefined` when its front matter cannot be used.
 */
export function parseProcedure(
  path: string,
  source: MarkdownSource,
  files: ContentFiles,
): Procedure | undefined {
  const desk: Desk = {path, source: String(files.get(path)?.value ?? ''), files}
  const body = parseBody(source.tree, desk)
  const front = source.frontMatter && checkShape(source.frontMatter, frontMatterShape, files)
  if (!front) return undefined
  if (path !== `procedures/${front.id}.md`) {
    addMessage(
      files,
      front.place,
      'no-bad-id',
      `Unexpected id \`${front.id}\` in this file, expected the file to be \`procedures/${front.id}.md\``,
      {note: 'Make the id and the name of the file equal'},
    )
  }
  const {retiredIds = [], when, tools, parts, ...rest} = front
  const condition = when && parseCondition(when.id, when.place, files)
  const procedure: Procedure = {
    ...rest,
    ...body,
    ...(condition ? {when: condition} : {}),
    tools: tools.map((line) => conditional(line, files)),
    parts: parts.map((line) => conditional(line, files)),
    retiredIds,
    place: {path, line: 1, column: 1},
  }
  checkOwnIds(procedure, files)
  return procedure
}

/** A line of tools or parts with its condition parsed. */
function conditional<T extends {readonly when?: Reference | undefined}>(
  {when, ...line}: T,
  files: ContentFiles,
): Omit<T, 'when'> & {readonly when?: WrittenCondition} {
  const condition = when && parseCondition(when.id, when.place, files)
  return {...line, ...(condition ? {when: condition} : {})}
}

function checkOwnIds(procedure: Procedure, files: ContentFiles): void {
  const first = new Map<string, Place>()
  for (const {id, place} of ownIds(procedure)) {
    if (id === '') continue
    const known = first.get(id)
    if (known)
      addMessage(
        files,
        place,
        'no-duplicate-id',
        `Unexpected second \`${id}\` in this procedure, expected each id once`,
        {cause: known, note: 'Give it an id of its own'},
      )
    else first.set(id, place)
    if (procedure.retiredIds.includes(id)) {
      addMessage(
        files,
        place,
        'no-retired-id',
        `Unexpected id \`${id}\` that is retired, expected a new id`,
        {note: 'Records of old revisions still mean the old step: choose another id'},
      )
    }
  }
}

function ownIds(procedure: Procedure): readonly {readonly id: string; readonly place: Place}[] {
  return procedure.sections.flatMap((section) => [
    {id: section.id, place: section.place},
    ...section.items.flatMap((item) => [
      {id: item.id, place: item.place},
      ...(item.kind === 'step'
        ? item.parts.flatMap((part) => ('id' in part ? [{id: part.id, place: part.place}] : []))
        : []),
      ...(item.kind === 'step'
        ? item.parts.flatMap((part) =>
            part.kind === 'alternatives' ? part.items.map((one) => ({id: one.id, place: one.place})) : [],
          )
        : []),
    ]),
  ])
}
