import type {Levels} from './levels.ts'
import {oilSealFace} from './oil-seal.ts'
import type {SectionGeometry} from './section-geometry.ts'
import type {Box, Point} from './shape.ts'

/** What each detail shows at least, right of the centre line, and where its letter stands free in the drawing. */
export function detailRegions(
  g: SectionGeometry,
  at: Levels,
): readonly (Box & {readonly name: 'cargo' | 'oil'; readonly mark: Point})[] {
  const ring = g.rings['lip-holder-ring']
  return [
    {
      name: 'cargo',
      left: at.hub - at.wall * 0.4,
      right: at.housingSpigot + at.wall * 0.4,
      low: at.back + at.wall * 0.2,
      high: at.housing + g.cargoSeat + at.wall,
      mark: [at.sleeveRadius + (at.chamber - at.sleeveRadius) * 0.55, at.housingFlange + at.wall * 4],
    },
    {
      name: 'oil',
      left: g.shaftDiameter / 2 - at.wall * 0.6,
      right: ring.groove / 2 + ring.section + g.bolts['lip-holder-bolts'].thread * 2.6,
      low: at.unitFlange - (at.unitFlange - at.hubSeat) * 0.56,
      high: at.unitFlange + oilSealFace(g) + g.shaftDiameter * 0.25,
      mark: [
        g.motorDiameter / 2 + at.wall * 3,
        at.unitFlange + g.bolts['head-flange-bolts'].length * 0.62 + at.wall * 3.6,
      ],
    },
  ]
}
