import {millimetres} from '../../quantities/named-units.ts'
import type {MetricThread} from './thread-geometry.ts'

/** Nominal diameter and coarse pitch in mm. Source: ISO 261, coarse series; read in a reprint. */
const coarsePitches: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['M6', [6, 1]],
  ['M8', [8, 1.25]],
  ['M10', [10, 1.5]],
  ['M12', [12, 1.75]],
  ['M14', [14, 2]],
  ['M16', [16, 2]],
  ['M18', [18, 2.5]],
  ['M20', [20, 2.5]],
  ['M22', [22, 2.5]],
  ['M24', [24, 3]],
  ['M27', [27, 3]],
  ['M30', [30, 3.5]],
  ['M33', [33, 3.5]],
  ['M36', [36, 4]],
])

/** Sizes of the coarse series that the library holds. */
export const coarseSizes: readonly string[] = [...coarsePitches.keys()]

/**
 * A thread of the coarse series by its size.
 *
 * Source: ISO 261, coarse series; read in a reprint.
 * Valid for: M6 to M36.
 *
 * @throws {RangeError}
 *   When the size is not in the table.
 */
export function coarseThread(size: string): MetricThread {
  const found = coarsePitches.get(size)
  if (!found) throw new RangeError(`Unexpected size \`${size}\`, expected one of ${coarseSizes.join(', ')}`)
  const [diameter, pitch] = found
  return {nominalDiameter: millimetres(diameter), pitch: millimetres(pitch)}
}
