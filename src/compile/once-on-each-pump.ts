import {onceForEach} from '../handbook-model/once-for-each.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import type {PumpDesk} from './desk.ts'

/** A pure function of a procedure on one pump that is worked out once for each pair: pages, links and values ask for it again and again. */
export function onceOnEachPump<T>(
  workOut: (procedure: Procedure, desk: PumpDesk) => T,
): (procedure: Procedure, desk: PumpDesk) => T {
  const ofPump = onceForEach((desk: PumpDesk) =>
    onceForEach((procedure: Procedure) => workOut(procedure, desk)),
  )
  return (procedure, desk) => ofPump(desk)(procedure)
}
