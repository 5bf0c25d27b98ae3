import type {Position} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {quantityOf} from '../../quantities/quantity.ts'

/** How far each section may lie from its stated length, in metres: they are stated to the millimetre. */
const tolerance = 0.001

/**
 * The sections of a pipe stack are numbered from deck without a hole, and their lengths make the length of the stack.
 *
 * A section that is missing in the list is missing in each volume and pressure that the length goes into.
 *
 * Accepted: sections of 2.000 m, 2.000 m and 1.400 m in a stack of 5.4 m.
 * Rejected: the same in a stack of 5.44 m; numbers 1 and 3 alone.
 */
export function noBrokenStack(position: Position, files: ContentFiles): void {
  const {stackSections: sections, stackLength, tag} = position
  for (const [index, {number, place}] of sections.entries()) {
    if (number === index + 1) continue
    addMessage(
      files,
      place,
      'no-broken-stack',
      `Unexpected stack section \`${number}\` of \`${tag}\`, expected section \`${index + 1}\``,
      {note: 'Number the sections from deck, each once, and list every one'},
    )
    return
  }
  if (!stackLength) return
  const lengths = sections.map(({length}) => length)
  const known = lengths.flatMap((length) => (length.kind === 'known' ? [length.quantity.si] : []))
  if (sections.length === 0 || stackLength.kind === 'not-known' || known.length < lengths.length) return
  const sum = known.reduce((total, one) => total + one, 0)
  const difference = sum - stackLength.quantity.si
  if (Math.abs(difference) <= tolerance * sections.length + 1e-9) return
  const written = (si: number, unit: string, decimals: number): string =>
    printedText(printQuantity(quantityOf('length', si), unit, decimals))
  addMessage(
    files,
    stackLength.place,
    'no-broken-stack',
    `Unexpected stack length of \`${stackLength.figure} ${stackLength.unit}\` of \`${tag}\`, expected the \`${written(sum, 'm', 3)}\` that its ${sections.length} sections make to 1 mm each: ${written(Math.abs(difference), 'mm', 0)} ${difference < 0 ? 'are missing' : 'are too many'}`,
    {
      note: 'Measure the sections again, or the whole stack',
      ...(sections[0] ? {cause: sections[0].place} : {}),
    },
  )
}
