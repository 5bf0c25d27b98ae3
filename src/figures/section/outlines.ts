import {type Levels, levelsOf} from './levels.ts'
import {motorEnd} from './motor-end.ts'
import {sealEnd} from './seal-end.ts'
import type {SectionGeometry, SectionVariant} from './section-geometry.ts'
import type {Outline, Point} from './shape.ts'
import {wetEnd} from './wet-end.ts'

/** Every outline of the section through the axis of a pump, in the order in which they are painted. */
export function sectionOutlines(g: SectionGeometry, variant: SectionVariant): readonly Outline[] {
  const at = levelsOf(g)
  return [...surroundings(g, at), ...wetEnd(g, variant, at), ...motorEnd(g, at), ...sealEnd(g, variant, at)]
}

/** Bottom of the well. */
function surroundings(g: SectionGeometry, at: Levels): readonly Outline[] {
  const wide = g.spigotOffset + g.spigotBore * 0.6
  const left = at.casing
  const plate: readonly Point[] = [
    [-left, 0],
    [wide, 0],
    [wide, -at.wall],
    [-left, -at.wall],
  ]
  return [
    {
      part: 'surroundings',
      piece: 'bottom of the well',
      drawn: 'ground',
      points: plate,
      hatch: {way: 'up', spacing: 12},
    },
  ]
}
