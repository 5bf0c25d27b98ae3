import {wrenchCovers} from '../calculations/bolted-joints/wrench-covers.ts'
import {factsOfPosition} from '../conditions/facts-of-position.ts'
import {serves} from '../conditions/serves.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Reference} from '../handbook-model/datum.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {Tool} from '../handbook-model/office-content.ts'
import type {Procedure, RichText, StepPart} from '../handbook-model/procedure.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {printedText} from '../quantities/print-quantity.ts'
import type {Quantity} from '../quantities/quantity.ts'
import {writtenText} from './value-builder.ts'

/**
 * A torque to which a procedure tightens lies in the range of a wrench that it lists and that is aboard.
 *
 * Earlier passes are smaller and may need another wrench; the last one is the torque that counts. A procedure that
 * lists no torque wrench is told too. Conditions are not decided here: a torque of another variant counts as shown.
 *
 * Accepted: 61 N·m with a wrench of 40 to 200 N·m among the tools of the procedure and aboard.
 * Rejected: the same with a wrench of 5 to 50 N·m; with none aboard.
 */
export function noWrenchAboard(
  content: Content,
  vessels: ComputedValues['vessels'],
  files: ContentFiles,
): void {
  for (const vessel of content.vessels.values()) {
    const aboard = new Set(vessel.toolsAboard.map(({tool}) => tool.id))
    const values = vessels.get(vessel.id)
    for (const procedure of content.procedures.values()) {
      const listed = wrenchesOf(procedure, content)
      const told = new Set<string>()
      for (const {id, place} of torquesShown(procedure))
        for (const position of vessel.positions) {
          const design = content.designs.get(position.design.id)
          if (!design || !isSet(id, design)) continue
          if (!serves(procedure, factsOfPosition(vessel, design, position, content.office.facts))) continue
          const result = values?.get(position.id)?.get(id)?.result
          if (result?.kind !== 'known' || result.quantity?.kind !== 'torque') continue
          const {quantity, printed} = result
          const torque: Quantity<'torque'> = {kind: 'torque', si: quantity.si}
          const key = `${position.design.id} ${id}`
          if (told.has(key) || listed.some((one) => aboard.has(one.tool.id) && covers(one.tool, torque)))
            continue
          told.add(key)
          const others = [...content.tools.values()].filter(
            (tool) => aboard.has(tool.id) && covers(tool, torque),
          )
          tell({procedure, vessel, id, place, torque: printedText(printed), listed, aboard, others}, files)
        }
    }
  }
}

/** A torque wrench among the tools of a procedure. */
interface ListedWrench {
  readonly tool: Tool
  /** Line of the procedure that lists it. */
  readonly place: Place
}

interface ShownTorque {
  readonly procedure: Procedure
  readonly vessel: Vessel
  readonly id: string
  readonly place: Place
  readonly torque: string
  readonly listed: readonly ListedWrench[]
  readonly aboard: ReadonlySet<string>
  /** Wrenches aboard that cover the torque and are not listed. */
  readonly others: readonly Tool[]
}

function tell(shown: ShownTorque, files: ContentFiles): void {
  const {procedure, vessel, id, place, torque, listed, aboard, others} = shown
  const looked = listed.map(
    ({tool}) =>
      `\`${tool.id}\` of ${rangeText(tool)}${aboard.has(tool.id) ? '' : `, not aboard \`${vessel.id}\``}`,
  )
  const [first] = listed
  addMessage(
    files,
    place,
    'no-wrench-aboard',
    `Unexpected torque \`${id}\` of ${torque} in \`${procedure.id}\` with ${looked.length === 0 ? 'no torque wrench among the tools' : looked.join(' and ')}, expected one aboard \`${vessel.id}\` whose range from 20 % to 100 % of its most holds it`,
    {
      note:
        others.length === 0
          ? 'List a torque wrench that covers it among the tools of the procedure, and put it aboard'
          : `List ${others.map((tool) => `\`${tool.id}\` of ${rangeText(tool)}`).join(' or ')} among the tools of the procedure: it is aboard`,
      ...(first ? {cause: first.place} : {}),
    },
  )
}

/** Torque wrenches that the procedure lists. */
function wrenchesOf(procedure: Procedure, content: Content): readonly ListedWrench[] {
  return procedure.tools.flatMap(({tool: {id, place}}) => {
    const tool = content.tools.get(id)
    return tool?.torqueRange ? [{tool, place}] : []
  })
}

function covers({torqueRange}: Tool, torque: Quantity<'torque'>): boolean {
  if (torqueRange?.least.kind !== 'known' || torqueRange.most.kind !== 'known' || torque.si <= 0) return false
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

/** Values that stand in steps and hold points and before them, as plates and in sentences. */
function torquesShown(procedure: Procedure): readonly Reference[] {
  return procedure.sections.flatMap((section) => [
    ...section.intro.flatMap(valuesIn),
    ...section.items.flatMap((item) =>
      item.kind === 'step'
        ? [...valuesIn(item.instruction), ...item.parts.flatMap(valuesOfPart)]
        : item.text.flatMap(valuesIn),
    ),
  ])
}

function valuesOfPart(part: StepPart): readonly Reference[] {
  if (part.kind === 'value') return [part.value]
  if (part.kind === 'note') return valuesIn(part.text)
  return part.kind === 'alternatives' ? part.items.flatMap(({text}) => valuesIn(text)) : []
}

function valuesIn(text: RichText): readonly Reference[] {
  return text.flatMap((inline) => {
    if (inline.kind === 'value') return [inline.value]
    return inline.kind === 'strong' || inline.kind === 'emphasis' ? valuesIn(inline.children) : []
  })
}
