import type {Procedure} from '../handbook-model/procedure.ts'
import type {ReplacedStep, UrgentRevision} from '../handbook-model/urgent-content.ts'
import type {PumpDesk} from './desk.ts'
import type {UrgentUse} from './urgent-use.ts'
import {valuesShown} from './values-shown.ts'
import {standing} from './variant.ts'

/** A pump with the urgent revisions that count for it, also where its facts leave that open. */
export function withUrgentUses(desk: PumpDesk): PumpDesk {
  return {...desk, urgent: urgentOfPump(desk)}
}

function urgentOfPump(desk: PumpDesk): readonly UrgentUse[] {
  return desk.content.urgent.flatMap((revision): UrgentUse[] => {
    const {vessels, positions, when} = revision
    if (!vessels.some((one) => one.id === desk.vessel.id)) return []
    if (positions.length > 0 && !positions.some((one) => one.id === desk.position.id)) return []
    const stands = standing(when, desk)
    if (!stands.stands) return []
    return [{revision, pumps: [], ...(stands.variant === undefined ? {} : {variant: stands.variant})}]
  })
}

/**
 * The desk of a page that several pumps share.
 *
 * What counts for some of them names their tags, and figures that are replaced on some alone stay as they are on the
 * others.
 */
export function sharedDesk(desk: PumpDesk, served: readonly PumpDesk[]): PumpDesk {
  if (desk.content.urgent.length === 0) return desk
  const urgent = desk.content.urgent.flatMap((revision): UrgentUse[] => {
    const concerned = served.filter((one) => one.urgent.some((use) => use.revision === revision))
    const [first] = concerned
    const use = first?.urgent.find((one) => one.revision === revision)
    if (!use) return []
    return [
      concerned.length === served.length ? use : {...use, pumps: concerned.map((one) => one.position.tag)},
    ]
  })
  const values = new Map(
    [...desk.values].map(([id, value]) => {
      const isOfAll = served.every((one) => {
        const own = one.values.get(id)
        return own?.replaces !== undefined && own.place.path === value.place.path
      })
      return [id, value.replaces && !isOfAll ? value.replaces : value]
    }),
  )
  return {...desk, urgent, values}
}

/** True where an urgent revision stands above a procedure: it is named, one of its steps or figures is replaced, or the revision names nothing and counts for all. */
export function concernsProcedure({revision}: UrgentUse, procedure: Procedure, desk: PumpDesk): boolean {
  const {procedures, steps, values} = revision
  if (procedures.length + steps.length + values.length === 0) return true
  if (procedures.some(({id}) => id === procedure.id)) return true
  if (steps.some((one) => one.procedure.id === procedure.id)) return true
  return values.length > 0 && valuesShown(procedure, desk).some(({value}) => replacesValue(revision, value))
}

/** True where the figure of a value is replaced. */
export function replacesValue({values}: UrgentRevision, id: string): boolean {
  return values.some(({value}) => value.id === id)
}

/** The instruction that prints in place of that of a step, with its urgent revision. */
export function replacedStep(
  procedure: string,
  step: string,
  desk: PumpDesk,
): {readonly revision: UrgentRevision; readonly replaced: ReplacedStep} | undefined {
  for (const {revision, pumps, variant} of desk.urgent) {
    const replaced = revision.steps.find((one) => one.procedure.id === procedure && one.step.id === step)
    if (replaced && pumps.length === 0 && variant === undefined) return {revision, replaced}
  }
  return undefined
}
