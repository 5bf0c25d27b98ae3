import type {FrictionRow, PropertyClassRow, Tables} from '../../src/handbook-model/content.ts'
import type {Origin} from '../../src/handbook-model/datum.ts'
import {millimetres, newtonsPerSquareMillimetre, ratio} from '../../src/quantities/named-units.ts'

/** Hexagon bolts: size, diameter, pitch, bearing diameter, width across flats, medium hole, all in mm. */
const sizes: readonly (readonly [string, number, number, number, number, number])[] = [
  ['M6', 6, 1, 8.88, 10, 6.6],
  ['M12', 12, 1.75, 16.63, 18, 13.5],
  ['M16', 16, 2, 22.49, 24, 17.5],
  ['M20', 20, 2.5, 28.19, 30, 22],
]

const place = {path: 'tables/table.csv', line: 2, column: 1}

function propertyClass(
  id: string,
  above: number,
  upTo: number,
  yields: number,
  tensile: number,
): PropertyClassRow {
  return {
    id,
    aboveDiameter: millimetres(above),
    upToDiameter: millimetres(upTo),
    yieldStress: newtonsPerSquareMillimetre(yields),
    tensileStrength: newtonsPerSquareMillimetre(tensile),
    place,
  }
}

/** A lubrication state whose id and words name its friction: `friction-0.1`. */
function frictionRow(friction: number): FrictionRow {
  return {
    id: `friction-${friction}`,
    title: `threads and head with paste of ${friction}`,
    frictionClass: 'B',
    threadFriction: ratio(friction),
    headFriction: ratio(friction),
    source: 'paste-sheet',
    place,
  }
}

/**
 * Tables of four sizes and three classes.
 *
 * Dimensions by ISO 261, 273 and 4014, strengths by ISO 898-1 and 3506-1: the rows of the published torque tables, from
 * memory and reprints.
 */
export function tablesOf(): Tables {
  const from = (source: string): Origin => ({status: 'assumed', source})
  return {
    threads: {
      origin: from('iso-261'),
      rows: sizes.map(([size, diameter, pitch]) => ({
        size,
        diameter: millimetres(diameter),
        pitch: millimetres(pitch),
        place,
      })),
    },
    boltHeads: {
      origin: from('iso-4014'),
      rows: sizes.map(([size, , , bearing, wrench]) => ({
        size,
        head: 'hexagon',
        bearingDiameter: millimetres(bearing),
        wrench: millimetres(wrench),
        place,
      })),
    },
    clearanceHoles: {
      origin: from('iso-273'),
      rows: sizes.map(([size, diameter, , , , hole]) => ({
        size,
        fine: millimetres(diameter + 0.4),
        medium: millimetres(hole),
        coarse: millimetres(hole + 1),
        place,
      })),
    },
    propertyClasses: {
      origin: from('iso-898-1'),
      rows: [
        propertyClass('8.8', 0, 16, 640, 800),
        propertyClass('8.8', 16, 39, 660, 830),
        propertyClass('A4-70', 0, 16, 450, 700),
      ],
    },
    friction: {origin: from('vdi-2230'), rows: [0.08, 0.1, 0.12, 0.14].map(frictionRow)},
    runningClearances: {origin: from('api-610'), rows: []},
    cargoes: {origin: from('drawing'), rows: []},
    materials: {origin: from('drawing'), rows: []},
    suitability: {origin: from('drawing'), rows: []},
  }
}
