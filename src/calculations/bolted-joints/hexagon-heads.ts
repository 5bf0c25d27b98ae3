import {millimetres, newtonsPerSquareMillimetre} from '../../quantities/named-units.ts'
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

/** Yield or proof stress in N/mm², up to 16 mm and above. Source: ISO 898-1 (reprint), ISO 3506-1 (reprint, up to 20 mm). */
const classes: ReadonlyMap<
  string,
  {readonly upTo16: number; readonly above16: number; readonly most: number}
> = new Map([
  ['8.8', {upTo16: 640, above16: 660, most: 36}],
  ['10.9', {upTo16: 940, above16: 940, most: 36}],
  ['12.9', {upTo16: 1100, above16: 1100, most: 36}],
  ['A4-70', {upTo16: 450, above16: 450, most: 20}],
  ['A4-80', {upTo16: 600, above16: 600, most: 20}],
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

/** Where the yield stress of a class comes from. */
export const classSources: readonly NotedSource[] = [
  {
    title: 'ISO 898-1 and ISO 3506-1, yield or proof stress of the class',
    edition: 'unknown',
    howKnown: 'reprint',
    status: 'unknown',
  },
]

/** Property classes that the library holds. */
export const heldClasses: readonly string[] = [...classes.keys()]

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

/**
 * Yield stress of a property class at a diameter.
 *
 * Source: ISO 898-1; ISO 3506-1.
 * Valid for: diameters that the class covers; stainless classes up to 20 mm.
 *
 * @throws {RangeError}
 *   When the class is not in the table or does not reach the diameter.
 */
export function yieldStressOf(
  propertyClass: string,
  nominalDiameter: Quantity<'length'>,
): Quantity<'stress'> {
  const found = classes.get(propertyClass)
  if (!found)
    throw new RangeError(`Unexpected class \`${propertyClass}\`, expected one of ${heldClasses.join(', ')}`)
  const diameter = Math.round(nominalDiameter.si * 1e6) / 1000
  if (diameter > found.most)
    throw new RangeError(
      `Unexpected class ${propertyClass} at ${diameter} mm, expected at most ${found.most} mm`,
    )
  return newtonsPerSquareMillimetre(diameter <= 16 ? found.upTo16 : found.above16)
}
