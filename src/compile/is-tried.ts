import type {Content} from '../handbook-model/content.ts'
import type {Procedure} from '../handbook-model/procedure.ts'

/**
 * True when a procedure was tried on board: on a pump of this design, or, where it serves the whole ship, on any ship.
 */
export function isTried(
  {id, scope}: Pick<Procedure, 'id' | 'scope'>,
  design: string,
  content: Pick<Content, 'trials' | 'vessels'>,
): boolean {
  return content.trials.some(({procedure, vessel, position}) => {
    if (procedure.id !== id) return false
    if (scope === 'vessel') return true
    const pump = content.vessels.get(vessel.id)?.positions.find((one) => one.id === position?.id)
    return pump?.design.id === design
  })
}
