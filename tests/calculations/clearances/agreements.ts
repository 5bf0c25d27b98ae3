import {
  annularGapLeakage,
  smoothWallFriction,
} from '../../../src/calculations/clearances/annular-gap-leakage.ts'
import {leastRunningClearance} from '../../../src/calculations/clearances/least-running-clearance.ts'
import {inches, metres, millimetres, radialMillimetres, ratio} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {type HeldRows, heldTo, near} from '../../published-values/agreement.ts'
import {published as gaps} from '../../published-values/gap-leakage-rows.ts'
import {published as clearances} from '../../published-values/least-clearances.ts'

function leastOf(diameter: number, table: 'inch converted' | 'own metric'): number {
  const found = leastRunningClearance({runningDiameter: millimetres(diameter), table, galling: false})
  return found.clearance.si * 1000
}

/** Clearances and leakage against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(gaps.stated, (row) => {
    const found = annularGapLeakage(
      {
        diameter: metres(row.diameter),
        gap: radialMillimetres(row.gap * 1000),
        length: metres(row.length),
        head: metres(row.head),
        endLoss: ratio(1.5),
      },
      {kind: 'stated', friction: ratio(row.friction)},
    )
    return [
      near('velocity in m/s', found.velocity.si, row.velocity, 0.0005),
      near('leakage in m³/h', found.leakage.si * 3600, row.leakage, 0.0005),
    ]
  }),
  heldTo(gaps.smooth, (row) => {
    const found = annularGapLeakage(
      {
        diameter: metres(0.2),
        gap: radialMillimetres(0.25),
        length: metres(0.02),
        head: metres(60),
        endLoss: ratio(1.5),
      },
      {kind: 'smooth', viscosity: quantityOf('kinematic-viscosity', 1e-6)},
    )
    return [
      near('velocity in m/s', found.velocity.si, row.velocity, 0.0005),
      near('friction', found.friction.si, row.friction, 0.000005),
      near('Reynolds number', found.reynoldsNumber?.si ?? Number.NaN, row.reynolds, 0.5),
      near('leakage in m³/h', found.leakage.si * 3600, row.leakage, 0.0005),
    ]
  }),
  heldTo(gaps.smoothWall, ([reynolds, friction]) => [
    near('friction', smoothWallFriction(ratio(reynolds)).si, friction, 0.00005),
  ]),
  heldTo(clearances.least, ([from, mils, inchConverted, metric]) => {
    const diameter = from === 0 ? 49.99 : from
    return [
      near('converted', leastOf(diameter, 'inch converted'), inchConverted, 1e-9),
      near('own metric', leastOf(diameter, 'own metric'), metric, 1e-9),
      near('mils', leastOf(diameter, 'inch converted'), mils * 0.0254, 0.0051),
    ]
  }),
  heldTo(clearances.textbook, ([from, below, cold]) => {
    // Below 4.5 in the textbook gives more, see least-running-clearance.test.ts.
    const diameter = inches((Math.max(from, 4.5) + below) / 2)
    const found = leastRunningClearance({runningDiameter: diameter, table: 'inch converted', galling: false})
    return [near('cold, in mm', found.clearance.si * 1000, cold * 25.4, 0.0051)]
  }),
]
