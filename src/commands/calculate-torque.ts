import {coarseThread} from '../calculations/bolted-joints/coarse-threads.ts'
import {headSources, hexagonHead} from '../calculations/bolted-joints/hexagon-heads.ts'
import {classSources, yieldStressOf} from '../calculations/bolted-joints/property-classes.ts'
import {
  type TorqueEdition,
  tighteningTorque,
  tighteningTorqueNoteOf,
} from '../calculations/bolted-joints/tightening-torque.ts'
import {percent} from '../quantities/named-units.ts'
import type {Quantity} from '../quantities/quantity.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'

/** Bearing face below a head. */
export interface BearingFace {
  readonly bearingDiameter: Quantity<'length'>
  readonly holeDiameter: Quantity<'length'>
}

/**
 * Tightening torque from the words of the command line.
 *
 * @throws {RangeError}
 *   When a word is missing, does not read or is out of range.
 */
export function runTighteningTorque(words: CalculationWords): CalculationRun {
  const size = words.text('size')
  const thread = coarseThread(size)
  const edition = editionOf(words)
  const face = bearingFaceOf(words, size)
  const yieldStress = yieldStressOf(words.text('class'), thread.nominalDiameter)
  const threadFriction = words.quantity('friction', 'ratio')
  const headFriction = words.optional('head-friction', 'ratio') ?? threadFriction
  const utilisation = words.optional('utilisation', 'ratio') ?? percent(90)
  const result = tighteningTorque({
    thread,
    ...face,
    yieldStress,
    utilisation,
    threadFriction,
    headFriction,
    edition,
  })
  const note = tighteningTorqueNoteOf(edition)
  const defaults: readonly ResultLine[] = [
    quantityLine('head-friction', headFriction, '1', 3),
    quantityLine('utilisation', utilisation, '%', 0),
    wordLine('edition', edition),
    quantityLine('head', face.bearingDiameter, 'mm', 2),
    quantityLine('hole', face.holeDiameter, 'mm', 2),
  ]
  return {
    results: [
      quantityLine('torque', result.torque, 'N·m', 1),
      quantityLine('preload', result.preload, 'kN', 2),
    ],
    taken: [
      ...defaults.filter((one) => !words.has(one.name)),
      quantityLine('pitch', thread.pitch, 'mm', 2),
      quantityLine('yield-stress', yieldStress, 'N/mm²', 0),
    ],
    note: {
      ...note,
      sources: [
        ...note.sources,
        ...classSources,
        ...(words.has('head') && words.has('hole') ? [] : headSources),
      ],
    },
  }
}

function editionOf(words: CalculationWords): TorqueEdition {
  const edition = words.optionalText('edition', '2003')
  if (edition === '2003' || edition === '1986') return edition
  throw new RangeError(`Unexpected edition \`${edition}\`, expected \`2003\` or \`1986\``)
}

/** The bearing face from `head=` and `hole=`; the table is asked only for what is not given, so that sizes beyond it can be computed too. */
export function bearingFaceOf(words: CalculationWords, size: string): BearingFace {
  const head = words.optional('head', 'length')
  const hole = words.optional('hole', 'length')
  if (head && hole) return {bearingDiameter: head, holeDiameter: hole}
  const table = hexagonHead(size)
  return {
    bearingDiameter: head ?? table.bearingDiameter,
    holeDiameter: hole ?? table.holeDiameter,
  }
}
