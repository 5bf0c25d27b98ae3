import {
  loadClasses,
  printedProofLoad,
  printedTensileLoad,
} from '../../../src/calculations/bolted-joints/bolt-load-tables.ts'
import {boltStrength, nominalStressArea} from '../../../src/calculations/bolted-joints/bolt-strength.ts'
import {coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {strengthOf} from '../../../src/calculations/bolted-joints/property-classes.ts'
import {threadGeometry} from '../../../src/calculations/bolted-joints/thread-geometry.ts'
import {millimetres} from '../../../src/quantities/named-units.ts'
import {type Agreement, type HeldRows, heldTo, near, same} from '../../published-values/agreement.ts'
import {published as strength} from '../../published-values/iso-898-1-loads.ts'
import {published as threads} from '../../published-values/iso-metric-threads.ts'

const megapascal = 1e6

/** Half a unit of the third decimal of a millimetre, as thread tables print. */
const printedMicrometre = 0.00051

function geometryOf(diameter: number, pitch: number) {
  return threadGeometry({nominalDiameter: millimetres(diameter), pitch: millimetres(pitch)})
}

function loadsOf(
  what: string,
  printed: readonly number[],
  found: (propertyClass: string) => number,
  share: number,
): readonly Agreement[] {
  return loadClasses.map((propertyClass, index) =>
    near(
      `${what} of ${propertyClass} in N`,
      found(propertyClass),
      printed[index] ?? Number.NaN,
      share * (printed[index] ?? 0),
    ),
  )
}

function strengthOfThread(diameter: number, pitch: number, propertyClass: string) {
  return boltStrength({
    thread: {nominalDiameter: millimetres(diameter), pitch: millimetres(pitch)},
    propertyClass,
  })
}

/** M5 has a row of loads and none among the coarse threads of the library. */
function threadOf(size: string) {
  return size === 'M5' ? {nominalDiameter: millimetres(5), pitch: millimetres(0.8)} : coarseThread(size)
}

/** Threads and loads of bolts against every published row. */
export const strengthAgreements: readonly HeldRows[] = [
  heldTo(threads.coarse, (row) => {
    const found = geometryOf(row.diameter, row.pitch)
    return [
      near('d2', found.pitchDiameter.si * 1000, row.d2, printedMicrometre),
      near('d1', found.minorDiameter.si * 1000, row.d1, printedMicrometre),
      near('d3', found.coreDiameter.si * 1000, row.d3, printedMicrometre),
      same('As', String(Number((found.stressArea.si * 1e6).toPrecision(3))), String(row.nominalArea)),
    ]
  }),
  heldTo(threads.fine, ([, diameter, pitch, d2, d3, nutMinor]) => {
    const found = geometryOf(diameter, pitch)
    return [
      near('d2', found.pitchDiameter.si * 1000, d2, printedMicrometre),
      near('d3', found.coreDiameter.si * 1000, d3, printedMicrometre),
      near('D1', found.minorDiameter.si * 1000, nutMinor, printedMicrometre),
    ]
  }),
  heldTo(threads.coreAreas, ([size, area]) => [
    near('A3', threadGeometry(coarseThread(size)).coreArea.si * 1e6, area, 0.011 + area * 1e-5),
  ]),
  heldTo(strength.proofLoads, ([size, area, ...loads]) => [
    near('nominal stress area', nominalStressArea(threadOf(size)).si * 1e6, area, 1e-9),
    ...loadsOf('shipped proof load', loads, (one) => printedProofLoad(size, one)?.si ?? 0, 1e-12),
    ...loadsOf(
      'proof load',
      loads,
      (propertyClass) => boltStrength({thread: threadOf(size), propertyClass}).proofLoad?.si ?? 0,
      0.006,
    ),
  ]),
  heldTo(strength.tensileLoads, ([size, ...loads]) => [
    ...loadsOf('shipped tensile load', loads, (one) => printedTensileLoad(size, one)?.si ?? 0, 1e-12),
    ...loadsOf(
      'tensile load',
      loads,
      (propertyClass) => boltStrength({thread: coarseThread(size), propertyClass}).tensileLoad.si,
      0.006,
    ),
  ]),
  heldTo(strength.classes, ([propertyClass, diameter, tensile, yielding, proof]) => {
    const found = strengthOf(propertyClass, millimetres(diameter))
    return [
      near('tensile strength', found.tensileStrength.si / megapascal, tensile, 1e-9),
      near('yield stress', found.yieldStress.si / megapascal, yielding, 1e-9),
      near('proof stress', (found.proofStress?.si ?? 0) / megapascal, proof, 1e-9),
    ]
  }),
  heldTo(strength.stainlessClasses, ([propertyClass, tensile, yielding]) => {
    const found = strengthOf(propertyClass, millimetres(20))
    return [
      near('tensile strength', found.tensileStrength.si / megapascal, tensile, 1e-9),
      near('0.2 % proof stress', found.yieldStress.si / megapascal, yielding, 1e-9),
    ]
  }),
  heldTo(strength.stainlessYieldForces, ([, diameter, pitch, printed]) =>
    ['A2-70', 'A4-70'].map((propertyClass) =>
      near(
        `yield force of ${propertyClass}`,
        strengthOfThread(diameter, pitch, propertyClass).yieldForce.si,
        printed,
        0.007 * printed,
      ),
    ),
  ),
  heldTo(strength.tensileLoadOfM4, ({right}) => [
    near('tensile load', strengthOfThread(4, 0.7, '10.9').tensileLoad.si, right, 0.006 * right),
  ]),
]
