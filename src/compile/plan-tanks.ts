import type {PlanShape} from '../figures/tank-plan.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {positionPath} from './page-paths.ts'

/** Tanks of a vessel in hundredths of the plan: the bow, at the highest frame, to the left; port below; a tank with a pump leads to its page, from the start page. */
export function planTanks(vessel: Vessel): readonly PlanShape[] {
  const frames = vessel.tanks.flatMap((tank) => [tank.plan.fromFrame, tank.plan.toFrame])
  const aft = Math.min(...frames)
  const fore = Math.max(...frames)
  const along = (frame: number): number => hundredths((fore - frame) / (fore - aft || 1))
  const across = (side: number): number => hundredths((1 - side) / 2)
  return vessel.tanks.map((tank) => {
    const position = vessel.positions.find((one) => one.tank?.id === tank.id)
    return {
      id: tank.id,
      tag: tank.tag,
      left: along(Math.max(tank.plan.fromFrame, tank.plan.toFrame)),
      right: along(Math.min(tank.plan.fromFrame, tank.plan.toFrame)),
      top: across(Math.max(tank.plan.fromSide, tank.plan.toSide)),
      bottom: across(Math.min(tank.plan.fromSide, tank.plan.toSide)),
      ...(position ? {address: positionPath(position.id)} : {}),
    }
  })
}

/** A share in hundredths with one decimal, free of the digits of the binary conversion. */
function hundredths(share: number): number {
  return Math.round(share * 1000) / 10
}
