import type {Design} from '../../handbook-model/design-content.ts'
import {drawnFigures} from '../../handbook-model/drawn-figures.ts'
import {knownValueIds} from './known-value-ids.ts'

/** Names of the figures that a design states everything for. */
export function figuresOfDesign(design: Design): readonly string[] {
  const known = knownValueIds(design)
  return Object.entries(drawnFigures).flatMap(([name, values]) =>
    values.every((id) => known.has(id)) ? [name] : [],
  )
}
