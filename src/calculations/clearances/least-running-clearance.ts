import {diametralMillimetres, millimetres} from '../../quantities/named-units.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote, NotedSource} from '../calculation-note.ts'

/** The two metric forms in which the table goes around; they differ by up to 0.01 mm. */
export type ClearanceTable = 'inch converted' | 'own metric'

/** One step of the table: running diameters from the first up to below the second. */
export interface LeastClearanceRow {
  readonly from: Quantity<'length'>
  readonly below: Quantity<'length'>
  readonly clearances: Readonly<Record<ClearanceTable, Quantity<'diametral-clearance'>>>
}

/** Least clearance of a ring, with the step it was read from. */
export interface LeastRunningClearance {
  readonly clearance: Quantity<'diametral-clearance'>
  readonly row: LeastClearanceRow
}

/**
 * Least diametral running clearances by running diameter.
 *
 * The steps are printed as 50.00 to 64.99 and 65.00 to 79.99; they are taken half open, so that 64.995 mm has a clearance.
 *
 * Source: API 610, minimum internal running clearances; the inch steps in mils times 0.0254 read in two secondary
 * documents, the metric column from memory.
 */
export const leastClearanceRows: readonly LeastClearanceRow[] = [
  row(0, 50, 0.25, 0.25),
  row(50, 65, 0.28, 0.28),
  row(65, 80, 0.3, 0.3),
  row(80, 90, 0.33, 0.33),
  row(90, 100, 0.36, 0.35),
  row(100, 115, 0.38, 0.38),
  row(115, 125, 0.41, 0.4),
  row(125, 150, 0.43, 0.43),
  row(150, 175, 0.46, 0.45),
  row(175, 200, 0.48, 0.48),
  row(200, 225, 0.51, 0.5),
  row(225, 250, 0.53, 0.53),
  row(250, 275, 0.56, 0.55),
  row(275, 300, 0.58, 0.58),
  row(300, 325, 0.61, 0.6),
  row(325, 350, 0.63, 0.63),
  row(350, 375, 0.66, 0.65),
  row(375, 400, 0.69, 0.68),
  row(400, 425, 0.71, 0.7),
  row(425, 450, 0.74, 0.73),
  row(450, 475, 0.76, 0.75),
  row(475, 500, 0.79, 0.78),
  row(500, 525, 0.81, 0.8),
  row(525, 550, 0.84, 0.83),
  row(550, 575, 0.86, 0.85),
  row(575, 600, 0.89, 0.88),
  row(600, 625, 0.91, 0.9),
  row(625, 650, 0.94, 0.93),
]

const tableSources: Readonly<Record<ClearanceTable, NotedSource>> = {
  'inch converted': {
    title: 'API 610, minimum internal running clearances, inch steps converted to millimetres',
    edition: 'unknown',
    howKnown: 'reprint',
    status: 'unknown',
  },
  'own metric': {
    title: 'API 610 and ISO 13709, minimum internal running clearances, metric column',
    edition: 'unknown',
    howKnown: 'memory',
    status: 'unknown',
  },
}

/** The calculation by the table in its read form. */
export const leastRunningClearanceNote: CalculationNote = leastRunningClearanceNoteOf('inch converted')

/**
 * The calculation explained with the source of one form of the table.
 *
 * Source: API 610.
 * Valid for: both forms.
 */
export function leastRunningClearanceNoteOf(table: ClearanceTable): CalculationNote {
  return {
    name: 'least-running-clearance',
    words:
      'least diametral clearance of a new metal wear ring by its running diameter; pairs that tend to gall, or that run above 260 °C, get 0.125 mm more',
    formula: ['c = step of the table that holds D', 'c galling = c + 0.125 mm'],
    symbols: [
      {
        symbol: 'c',
        meaning: 'diametral clearance; a step of the table holds its lower end and not its upper one',
      },
      {symbol: 'c galling', meaning: 'diametral clearance of materials that gall'},
      {symbol: 'D', meaning: 'running diameter'},
    ],
    sources: [
      tableSources[table],
      {
        title: 'API 610, addition of 0.125 mm for galling or hot pairs',
        edition: 'unknown',
        howKnown: 'memory',
        status: 'unknown',
      },
    ],
    validFor: 'metal rings with running diameters below 650 mm; not for rings of plastic or composite',
  }
}

const gallingAddition = diametralMillimetres(0.125)

/**
 * Least diametral running clearance of a new metal wear ring.
 *
 * Source: API 610, minimum internal running clearances; inch steps read in two secondary documents, metric column from memory.
 * Valid for: metal rings with running diameters below 650 mm. What the standard adds beyond is known from memory and
 * from a misprint only, so it is refused.
 *
 * @throws {RangeError}
 *   When the diameter is not above zero or not below 650 mm.
 */
export function leastRunningClearance(input: {
  readonly runningDiameter: Quantity<'length'>
  readonly table: ClearanceTable
  readonly galling: boolean
}): LeastRunningClearance {
  const diameter = roundedToNoise(input.runningDiameter.si)
  const found = leastClearanceRows.find((one) => diameter >= one.from.si && diameter < one.below.si)
  if (!found || diameter <= 0)
    throw new RangeError(
      `Unexpected running diameter of ${roundedToNoise(diameter * 1000)} mm, expected one above 0 and below 650 mm: take the clearance of the drawing`,
    )
  const addition = input.galling ? gallingAddition.si : 0
  return {
    clearance: quantityOf('diametral-clearance', found.clearances[input.table].si + addition),
    row: found,
  }
}

/** The diameter without the noise of its conversion to metres, so that 65 mm begins its own step. */
function roundedToNoise(metres: number): number {
  return Number(metres.toPrecision(12))
}

function row(from: number, below: number, inchConverted: number, ownMetric: number): LeastClearanceRow {
  return {
    from: quantityOf('length', roundedToNoise(millimetres(from).si)),
    below: quantityOf('length', roundedToNoise(millimetres(below).si)),
    clearances: {
      'inch converted': diametralMillimetres(inchConverted),
      'own metric': diametralMillimetres(ownMetric),
    },
  }
}
