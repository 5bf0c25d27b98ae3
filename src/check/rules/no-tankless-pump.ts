import type {Design} from '../../handbook-model/design-content.ts'
import type {Position} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'

/**
 * A pump hangs in a tank on a stack; a portable pump hangs in none and says where it is kept.
 *
 * Accepted: `role: main` with `tank:` and `stack-length:`; `role: portable` with `kept-at:`.
 * Rejected: `role: main` without `tank:`; `role: portable` with `tank:`.
 */
export function noTanklessPump(position: Position, files: ContentFiles): void {
  const {id, role, tank, stackLength, stackSections, stackSupports, keptAt, place} = position
  const portable = role === 'portable'
  const here = {tank, 'stack-length': stackLength, 'kept-at': keptAt}
  const wanted = portable ? (['kept-at'] as const) : (['tank', 'stack-length'] as const)
  for (const key of wanted) {
    if (here[key]) continue
    addMessage(
      files,
      place,
      'no-missing-key',
      `Unexpected position \`${id}\` of role \`${role}\` without \`${key}:\`, expected ${portable ? 'where the pump is kept' : 'the tank in which it hangs and the length of its stack'}`,
      {
        note: portable
          ? 'Write `kept-at:` with the place'
          : 'Add it from the drawing; `role: portable` is for a pump without a tank',
      },
    )
  }
  const strange = portable
    ? [
        ...(tank ? ['tank'] : []),
        ...(stackLength ? ['stack-length'] : []),
        ...(stackSections.length > 0 ? ['stack-sections'] : []),
        ...(stackSupports ? ['stack-supports'] : []),
      ]
    : keptAt
      ? ['kept-at']
      : []
  for (const key of strange)
    addMessage(
      files,
      place,
      'no-unknown-key',
      `Unexpected \`${key}:\` of position \`${id}\` of role \`${role}\`, expected none`,
      {note: portable ? 'A portable pump hangs in no tank' : 'The tank says where this pump is'},
    )
}

/**
 * Designs of pumps in tanks state their cofferdam; those of portable pumps have none.
 *
 * Rejected: a position of role `main` whose design states no `cofferdam:`; one of role `portable` whose design does.
 */
export function noUnfitDesign(position: Position, design: Design, files: ContentFiles): void {
  const portable = position.role === 'portable'
  if (portable !== (design.cofferdam !== undefined)) return
  addMessage(
    files,
    position.design.place,
    'no-undefined-reference',
    `Unexpected design \`${design.id}\` ${portable ? 'with' : 'without'} \`cofferdam:\` for position \`${position.id}\` of role \`${position.role}\`, expected one ${portable ? 'without' : 'with'} it`,
    {note: 'Name the design on the nameplate', cause: design.place},
  )
}
