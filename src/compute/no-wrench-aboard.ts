import {wrenchCovers} from '../calculations/bolted-joints/wrench-covers.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {Tool} from '../handbook-model/office-content.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {printedText} from '../quantities/print-quantity.ts'
import type {Quantity} from '../quantities/quantity.ts'
import {writtenText} from './value-builder.ts'

/**
 * A torque that a procedure shows as a plate lies in the range of a wrench that it lists and that is aboard.
 *
 * Earlier passes are smaller and may need another wrench; the last one is the torque that counts. A procedure that
 * lists no torque wrench is told too.
 *
 * Accepted: 61 N·m with a wrench of 40 to 200 N·m among the tools of the procedure and aboard.
 * Rejected: the same with a wrench of 5 to 50 N·m; with none aboard.
 */
export function noWrenchAboard(
  content: Content,
  vessels: ComputedValues['vessels'],
  files: ContentFiles,
): void {
  const ranged = [...content.tools.values()].filter((tool) => tool.torqueRange)
  if (ranged.length === 0) return
  for (const vessel of content.vessels.values()) {
    const values = vessels.get(vessel.id)
    for (const procedure of content.procedures.values()) {
      const wrenches = wrenchesOf(procedure, vessel, content)
      const told = new Set<string>()
      for (const {id, place} of torquesShown(procedure))
        for (const position of vessel.positions) {
          if (!isSet(id, content.designs.get(position.design.id))) continue
          const result = values?.get(position.id)?.get(id)?.result
          if (result?.kind !== 'known' || result.quantity?.kind !== 'torque') continue
          const {quantity} = result
          const torque: Quantity<'torque'> = {kind: 'torque', si: quantity.si}
          const key = `${position.design.id} ${id}`
          if (told.has(key) || wrenches.some((wrench) => covers(wrench, torque))) continue
          told.add(key)
          tell({procedure, vessel, id, place, torque: printedText(result.printed)}, wrenches, files)
        }
    }
  }
}

interface ShownTorque {
  readonly procedure: Procedure
  readonly vessel: Vessel
  readonly id: string
  readonly place: Place
  readonly torque: string
}

function tell(shown: ShownTorque, wrenches: readonly Tool[], files: ContentFiles): void {
  const {procedure, vessel, id, place, torque} = shown
  const ranges = wrenches.map((wrench) => `\`${wrench.id}\` of ${rangeText(wrench)}`)
  const [first] = wrenches
  addMessage(
    files,
    place,
    'no-wrench-aboard',
    `Unexpected torque \`${id}\` of ${torque} in \`${procedure.id}\` with ${ranges.length === 0 ? `no torque wrench that is listed and aboard \`${vessel.id}\`` : ranges.join(' and ')}, expected one whose range from 20 % to 100 % of its most holds it`,
    {
      note: 'List a torque wrench that covers it among the tools of the procedure, and put it aboard',
      ...(first ? {cause: first.place} : {}),
    },
  )
}

/** Torque wrenches that the procedure lists and the vessel has. */
function wrenchesOf(procedure: Procedure, vessel: Vessel, content: Content): readonly Tool[] {
  const aboard = new Set(vessel.toolsAboard.map(({tool}) => tool.id))
  return procedure.tools.flatMap(({tool}) => {
    const found = content.tools.get(tool.id)
    return found?.torqueRange && aboard.has(found.id) ? [found] : []
  })
}

function covers({torqueRange}: Tool, torque: Quantity<'torque'>): boolean {
  if (torqueRange?.least.kind !== 'known' || torqueRange.most.kind !== 'known') return false
  return wrenchCovers({torque, begin: torqueRange.least.quantity, most: torqueRange.most.quantity}).covers
}

function rangeText({torqueRange}: Tool): string {
  if (torqueRange?.least.kind !== 'known' || torqueRange.most.kind !== 'known') return 'unknown range'
  return `${writtenText(torqueRange.least)} to ${writtenText(torqueRange.most)}`
}

/** A torque to which something is tightened, not one that a shaft carries or a hand needs. */
function isSet(id: string, design: Design | undefined): boolean {
  return id.startsWith('setting.') || (design?.joints ?? []).some((joint) => id === `${joint.id}.torque`)
}

/** Values that stand as plates at the steps. */
function torquesShown(procedure: Procedure): readonly {readonly id: string; readonly place: Place}[] {
  return procedure.sections.flatMap((section) =>
    section.items.flatMap((item) =>
      item.kind === 'step'
        ? item.parts.flatMap((part) =>
            part.kind === 'value' ? [{id: part.value.id, place: part.value.place}] : [],
          )
        : [],
    ),
  )
}
