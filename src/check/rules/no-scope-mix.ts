import type {Procedure, SectionItem, StepPart} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import {designReferences} from './design-references.ts'

/** Value groups that are the same on every pump of a ship. */
const ofShip = ['house', 'supply', 'hydraulics']
/** Value groups that differ from pump to pump whatever the design. */
const ofPump = ['cofferdam', 'purge', 'tank', 'oil', 'stripping']

/**
 * A procedure of the whole ship, or of a design, asks for nothing that differs from pump to pump.
 *
 * Its page stands once: a figure of one pump on it would be read on all.
 *
 * Accepted: `scope: vessel` with `:value{ref=house.isolation-recheck}`.
 * Rejected: `scope: vessel` with `:value{ref=cofferdam.volume}`, a reading, or an isolation point.
 */
export function noScopeMix(procedure: Procedure, files: ContentFiles): void {
  const {scope} = procedure
  if (scope === 'position') return
  const words = {vessel: 'the whole ship', design: 'all pumps of a design'}[scope]
  const refuse = (place: Place, what: string): void => {
    addMessage(
      files,
      place,
      'no-scope-mix',
      `Unexpected ${what} in a procedure for ${words}, expected what is the same on each of its pumps`,
      {note: 'Write `scope: position`, or take it out of this procedure'},
    )
  }
  for (const {kind, reference} of designReferences(procedure)) {
    if (kind === 'figure') refuse(reference.place, `figure \`${reference.id}\` of one pump`)
    const [group = ''] = reference.id.split('.')
    if (kind !== 'value' || (scope === 'vessel' ? ofShip.includes(group) : !ofPump.includes(group))) continue
    refuse(reference.place, `value \`${reference.id}\``)
  }
  for (const part of partsOf(procedure)) {
    if (part.kind === 'isolate' || part.kind === 'restore')
      refuse(part.place, `isolation role \`${part.role}\``)
    else if (part.kind === 'identify') refuse(part.place, `\`identify\` of \`${part.fact.id}\``)
    else if (part.kind === 'cargo-table')
      refuse(part.place, 'table of cargoes with the pressures of one pump')
    else if (part.kind === 'material-table') refuse(part.place, 'table of the materials of one pump')
    else if ((part.kind === 'reading' || part.kind === 'derived') && scope === 'vessel')
      refuse(part.place, `reading \`${part.id}\` against a limit of one design`)
  }
}

function itemsOf(procedure: Procedure): readonly SectionItem[] {
  return procedure.sections.flatMap((section) => section.items)
}

function partsOf(procedure: Procedure): readonly StepPart[] {
  return itemsOf(procedure).flatMap((item) => (item.kind === 'step' ? item.parts : []))
}
