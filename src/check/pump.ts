import type {Facts} from '../conditions/decide-condition.ts'
import {factsOfPosition} from '../conditions/facts-of-position.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {FactDeclaration} from '../handbook-model/office-content.ts'
import type {Position, Vessel} from '../handbook-model/vessel-content.ts'
import type {ContentData} from './content-data.ts'

/** One pump of the fleet, with what is known of it. */
export interface Pump {
  readonly vessel: Vessel
  readonly position: Position
  readonly design: Design
  readonly facts: Facts
}

/** Every pump whose design could be read. */
export function pumpsOf({vessels, designs, office}: ContentData): readonly Pump[] {
  return [...vessels.values()].flatMap((vessel) =>
    vessel.positions.flatMap((position) => {
      const design = designs.get(position.design.id)
      return design ? [pumpOf(vessel, position, design, office?.facts ?? [])] : []
    }),
  )
}

/** A pump with its facts. */
export function pumpOf(
  vessel: Vessel,
  position: Position,
  design: Design,
  declared: readonly FactDeclaration[],
): Pump {
  return {vessel, position, design, facts: factsOfPosition(vessel, design, position, declared)}
}
