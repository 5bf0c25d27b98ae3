import {runOut} from '../../../src/calculations/run-out/run-out.ts'
import {
  eccentricityOfRoundPart,
  totalIndicatorReading,
} from '../../../src/calculations/run-out/total-indicator-reading.ts'
import {millimetres, millimetresOfDifference} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {unitOf} from '../../../src/quantities/units.ts'
import {type Agreement, type HeldRows, heldTo, near, same} from '../../published-values/agreement.ts'
import {published} from '../../published-values/run-out-rows.ts'

function ifStated(
  what: string,
  found: number,
  stated: number | undefined,
  tolerance: number,
): readonly Agreement[] {
  return stated === undefined ? [] : [near(what, found, stated, tolerance)]
}

/** Run-out against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(published.fits, (row) => {
    const found = runOut(row.readings.map(millimetresOfDifference))
    const phase = found.phase ? (found.phase.si * 180) / Math.PI : Number.NaN
    return [
      near('total in mm', found.totalIndicatorReading.si * 1000, row.total, row.tolerance + 1e-12),
      near('eccentricity in mm', found.eccentricity.si * 1000, row.eccentricity, row.tolerance),
      same('phase', found.phase ? 'defined' : 'undefined', row.phase === undefined ? 'undefined' : 'defined'),
      ...ifStated('phase in °', phase, row.phase, row.phaseTolerance),
      ...ifStated('mean in mm', found.mean.si * 1000, row.mean, 5e-5),
      ...ifStated('residual range in mm', found.residualRange.si * 1000, row.residualRange, 5e-5),
    ]
  }),
  heldTo(published.totals, ({unit, readings, total}) => {
    const {factor} = unitOf('length-difference', unit)
    const found = totalIndicatorReading(readings.map((one) => quantityOf('length-difference', one * factor)))
    return [near(unit, found.si / factor, total, 1e-12)]
  }),
  heldTo(published.roundPart, ({total, eccentricity}) => [
    near('mm', eccentricityOfRoundPart(millimetres(total)).si * 1000, eccentricity, 1e-12),
  ]),
]
