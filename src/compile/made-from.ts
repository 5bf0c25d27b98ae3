import type {ComputedValue} from '../handbook-model/computed.ts'
import type {CautionUse, Procedure, RichText, Step} from '../handbook-model/procedure.ts'
import {found, type PumpDesk, pumpValue} from './desk.ts'
import {onceOnEachPump} from './once-on-each-pump.ts'
import {standingSections} from './standing-items.ts'
import {valuesShown} from './values-shown.ts'
import {standing} from './variant.ts'

/** Paths of the files that every page of a pump is made from. */
export function filesOfPump(desk: PumpDesk): readonly string[] {
  return [desk.vessel.place.path, desk.design.place.path, desk.content.office.place.path]
}

/** Paths of the files that a value stands on: where it is stated or asked for, its inputs, its sources. */
export function filesOfValue(value: ComputedValue, desk: PumpDesk): readonly string[] {
  return [
    value.place.path,
    ...(value.calculation?.inputs ?? []).flatMap((input) => input.place?.path ?? []),
    ...value.sources.flatMap(({source}) => desk.content.sources.get(source)?.place.path ?? []),
  ]
}

/**
 * Paths of the files that a procedure on a pump is made from, each once.
 *
 * A page counts as approved only when all of them are; a caution left out here would change unseen.
 */
export const filesOfProcedure: (procedure: Procedure, desk: PumpDesk) => readonly string[] =
  onceOnEachPump(filesOf)

function filesOf(procedure: Procedure, desk: PumpDesk): readonly string[] {
  const {tools, parts} = desk.content
  return unique([
    procedure.place.path,
    ...filesOfPump(desk),
    ...procedure.tools
      .filter(({when}) => standing(when, desk).stands)
      .map(({tool}) => found(tools.get(tool.id), `tool ${tool.id}`).place.path),
    ...procedure.parts
      .filter(({when}) => standing(when, desk).stands)
      .map(({part}) => found(parts.get(part.id), `part ${part.id}`).place.path),
    ...[...procedure.purpose, ...procedure.before, ...procedure.after].flatMap((text) =>
      filesOfText(text, desk),
    ),
    ...standingSections(procedure, desk).flatMap(({section, items}) => [
      ...filesOfCautions(section.cautions, desk),
      ...section.intro.flatMap((text) => filesOfText(text, desk)),
      ...items.flatMap((item) =>
        item.kind === 'step'
          ? filesOfStep(item.step, desk)
          : item.hold.text.flatMap((text) => filesOfText(text, desk)),
      ),
    ]),
    ...valuesShown(procedure, desk).flatMap((use) => filesOfValue(pumpValue(desk, use.value), desk)),
  ])
}

/** The same paths, each once, in order of first use. */
export function unique(paths: readonly string[]): readonly string[] {
  return [...new Set(paths)]
}

function filesOfStep(step: Step, desk: PumpDesk): readonly string[] {
  return [
    ...filesOfCautions(step.cautions, desk),
    ...filesOfText(step.instruction, desk),
    ...step.parts.flatMap((part) => {
      if (part.kind === 'note') return filesOfText(part.text, desk)
      if (part.kind === 'alternatives') return part.items.flatMap((item) => filesOfText(item.text, desk))
      if (part.kind === 'cargo-table')
        return desk.content.tables.cargoes.rows.slice(0, 1).map((row) => row.place.path)
      if (part.kind === 'material-table') return filesOfMaterials(desk)
      return part.kind === 'reading'
        ? [found(desk.content.tools.get(part.instrument.id), `tool ${part.instrument.id}`).place.path]
        : []
    }),
  ]
}

/** Each table by its first row; one without rows says nothing. */
function filesOfMaterials({content}: PumpDesk): readonly string[] {
  const {cargoes, materials, suitability} = content.tables
  const first = [cargoes.rows[0], materials.rows[0], suitability.rows[0]]
  return [...first, content.sources.get(suitability.origin.source)].flatMap((one) => one?.place.path ?? [])
}

function filesOfCautions(uses: readonly CautionUse[], desk: PumpDesk): readonly string[] {
  return uses.flatMap((use) =>
    standing(use.when, desk).stands ? (desk.content.cautions.get(use.caution.id)?.place.path ?? []) : [],
  )
}

/** Words and titles that a text takes from other files. */
function filesOfText(text: RichText, desk: PumpDesk): readonly string[] {
  return text.flatMap((inline): readonly string[] => {
    if (inline.kind === 'strong' || inline.kind === 'emphasis') return filesOfText(inline.children, desk)
    if (inline.kind === 'term') return [desk.content.terms.get(inline.term.id)?.place.path ?? []].flat()
    if (inline.kind === 'part') return [desk.content.parts.get(inline.part.id)?.place.path ?? []].flat()
    if (inline.kind === 'procedure' && inline.label === '')
      return [desk.content.procedures.get(inline.procedure.id)?.place.path ?? []].flat()
    return []
  })
}
