import type {Figure} from '../figures/figure.ts'
import {markedPlan} from '../figures/tank-plan.ts'
import {onceForEach} from '../handbook-model/once-for-each.ts'
import type {Picture} from '../handbook-model/pages.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {planWordsEn} from './figure-words-en.ts'
import {pictureOf} from './picture.ts'
import {planTanks} from './plan-tanks.ts'

/** What of a pump its plan needs. */
interface PumpOfPlan {
  readonly vessel: Vessel
  readonly tank?: {readonly id: string}
}

/** The tank plan with the tank of a pump marked. */
export function planOfPump({vessel, tank}: PumpOfPlan): Figure {
  const tanks = planTanks(vessel)
  return markedPlan(
    tanks,
    tanks.find(({id}) => id === tank?.id),
    planWordsEn,
  )
}

/** The plan of each tank of a vessel, for it stands on every page of a pump. */
const plansOf = onceForEach(
  (vessel: Vessel) =>
    new Map(vessel.tanks.map((tank) => [tank.id, pictureOf('plan', planOfPump({vessel, tank}))])),
)

/** The plan of a pump as every page of it shows it; none for a pump that hangs in no tank. */
export function planPicture({vessel, tank}: PumpOfPlan): Picture | undefined {
  return tank && plansOf(vessel).get(tank.id)
}
