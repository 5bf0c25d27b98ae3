import {newtons, squareMillimetres} from '../../quantities/named-units.ts'
import type {Quantity} from '../../quantities/quantity.ts'
import type {NotedSource} from '../calculation-note.ts'

/** Classes of the columns of both load tables. */
export const loadClasses = ['8.8', '10.9', '12.9'] as const

/** A class that the load tables have a column for. */
export type LoadClass = (typeof loadClasses)[number]

/** One row of a load table: a size of the coarse series and its loads by class. */
export interface BoltLoadRow {
  readonly size: string
  readonly loads: Readonly<Record<LoadClass, Quantity<'force'>>>
}

/** A row of the proof loads, which also prints the nominal stress area. */
export interface ProofLoadRow extends BoltLoadRow {
  readonly nominalStressArea: Quantity<'area'>
}

/**
 * Proof loads of coarse threads as printed: not always the nominal area times the proof stress, the printed figures
 * lie up to 0.5 % beside it.
 *
 * Source: ISO 898-1, proof loads, coarse pitch; read in two reprints up to M16 and in one up to M27, whose row of M30 was cut off.
 */
export const proofLoadRows: readonly ProofLoadRow[] = [
  proofRow('M5', 14.2, 8230, 11_800, 13_800),
  proofRow('M6', 20.1, 11_600, 16_700, 19_500),
  proofRow('M8', 36.6, 21_200, 30_400, 35_500),
  proofRow('M10', 58.0, 33_700, 48_100, 56_300),
  proofRow('M12', 84.3, 48_900, 70_000, 81_800),
  proofRow('M14', 115, 66_700, 95_500, 112_000),
  proofRow('M16', 157, 91_000, 130_000, 152_000),
  proofRow('M18', 192, 115_000, 159_000, 186_000),
  proofRow('M20', 245, 147_000, 203_000, 238_000),
  proofRow('M22', 303, 182_000, 252_000, 294_000),
  proofRow('M24', 353, 212_000, 293_000, 342_000),
  proofRow('M27', 459, 275_000, 381_000, 445_000),
]

/**
 * Least tensile loads of coarse threads as printed.
 *
 * Source: ISO 898-1, minimum ultimate tensile loads, coarse pitch; read in two reprints.
 */
export const tensileLoadRows: readonly BoltLoadRow[] = [
  row('M6', 16_100, 20_900, 24_500),
  row('M8', 29_200, 38_100, 44_600),
  row('M10', 46_400, 60_300, 70_800),
  row('M12', 67_400, 87_700, 103_000),
  row('M14', 92_000, 120_000, 140_000),
  row('M16', 125_000, 163_000, 192_000),
  row('M18', 159_000, 200_000, 234_000),
  row('M20', 203_000, 255_000, 299_000),
  row('M22', 252_000, 315_000, 370_000),
  row('M24', 293_000, 367_000, 431_000),
  row('M27', 381_000, 477_000, 560_000),
  row('M30', 466_000, 583_000, 684_000),
  row('M33', 576_000, 722_000, 847_000),
  row('M36', 678_000, 850_000, 997_000),
]

/** Where the printed loads come from. */
export const boltLoadSources: readonly NotedSource[] = [
  {
    title: 'ISO 898-1, proof loads and least tensile loads of coarse threads, as printed',
    edition: 'unknown',
    howKnown: 'reprint',
    status: 'unknown',
  },
]

/**
 * Proof load of a coarse thread as printed, where the table has it.
 *
 * Source: ISO 898-1, proof loads, coarse pitch; read in reprints.
 * Valid for: M5 to M27 in classes 8.8, 10.9 and 12.9, bolts other than structural ones.
 */
export function printedProofLoad(size: string, propertyClass: string): Quantity<'force'> | undefined {
  return printedLoad(proofLoadRows, size, propertyClass)
}

/**
 * Least tensile load of a coarse thread as printed, where the table has it.
 *
 * Source: ISO 898-1, minimum ultimate tensile loads, coarse pitch; read in reprints.
 * Valid for: M6 to M36 in classes 8.8, 10.9 and 12.9, bolts other than structural ones.
 */
export function printedTensileLoad(size: string, propertyClass: string): Quantity<'force'> | undefined {
  return printedLoad(tensileLoadRows, size, propertyClass)
}

function printedLoad(
  rows: readonly BoltLoadRow[],
  size: string,
  propertyClass: string,
): Quantity<'force'> | undefined {
  const column = loadClasses.find((one) => one === propertyClass)
  return column && rows.find((row) => row.size === size)?.loads[column]
}

function proofRow(size: string, area: number, ...loads: readonly [number, number, number]): ProofLoadRow {
  return {...row(size, ...loads), nominalStressArea: squareMillimetres(area)}
}

function row(size: string, ...loads: readonly [number, number, number]): BoltLoadRow {
  const [class88, class109, class129] = loads
  return {
    size,
    loads: {'8.8': newtons(class88), '10.9': newtons(class109), '12.9': newtons(class129)},
  }
}
