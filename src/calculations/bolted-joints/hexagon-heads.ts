import {millimetres} from '../../quantities/named-units.ts'
import type {Quantity} from '../../quantities/quantity.ts'
import type {NotedSource} from '../calculation-note.ts'

/** Bearing diameter of hexagon heads and medium hole, in mm. Source: ISO 4014 class A (from memory) and ISO 273 medium (read in a file). M14 as the printed torque tables imply. */
const heads: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['M6', [8.88, 6.6]],
  ['M8', [11.63, 9]],
  ['M10', [14.63, 11]],
  ['M12', [16.63, 13.5]],
  ['M14', [19.37, 15.5]],
  ['M16', [22.49, 17.5]],
  ['M18', [25.34, 20]],
  ['M20', [28.19, 22]],
  ['M22', [31.71, 24]],
  ['M24', [33.61, 26]],
  ['M27', [38, 30]],
  ['M30', [42.75, 33]],
  ['M36', [51.11, 39]],
])

/** Where bearing diameters and holes come from. */
export const headSources: readonly NotedSource[] = [
  {
    title: 'ISO 4014 class A, bearing diameter of the head; M14 as the printed torque tables imply',
    edition: 'unknown',
    howKnown: 'memory',
    status: 'unknown',
  },
  {title: 'ISO 273 medium series, hole', edition: 'unknown', howKnown: 'read', status: 'unknown'},
]

/**
 * Bearing diameter of a hexagon head and its medium hole.
 *
 * Source: ISO 4014, class A; ISO 273, medium series.
 * Valid for: M6 to M30 and M36.
 *
 * @throws {RangeError}
 *   When the size is not in the table.
 */
export function hexagonHead(size: string): {
  readonly bearingDiameter: Quantity<'length'>
  readonly holeDiameter: Quantity<'length'>
} {
  const found = heads.get(size)
  if (!found)
    throw new RangeError(`Unexpected size \`${size}\`, expected one of ${[...heads.keys()].join(', ')}`)
  return {bearingDiameter: millimetres(found[0]), holeDiameter: millimetres(found[1])}
}
