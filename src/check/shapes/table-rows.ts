import type {
  BoltHeadRow,
  ClearanceHoleRow,
  FrictionRow,
  PropertyClassRow,
  RunningClearanceRow,
  ThreadRow,
} from '../../handbook-model/content.ts'
import {type Material, type Suitability, suitabilityWords} from '../../handbook-model/material-content.ts'
import type {Cargo} from '../../handbook-model/vessel-content.ts'
import type {Cells} from './table-cells.ts'

/** A thread of tables/threads.csv. */
export function threadRow(cells: Cells): ThreadRow | undefined {
  const diameter = cells.quantity('diameter', 'length')
  const pitch = cells.quantity('pitch', 'length')
  return diameter && pitch && {size: cells.text('size'), diameter, pitch, place: cells.place}
}

/** A bolt head of tables/bolt-heads.csv. */
export function boltHeadRow(cells: Cells): BoltHeadRow | undefined {
  const bearingDiameter = cells.quantity('bearing-diameter', 'length')
  const wrench = cells.quantity('wrench', 'length')
  const head = cells.oneOf('head', ['hexagon', 'socket'])
  return (
    head &&
    bearingDiameter &&
    wrench && {size: cells.text('size'), head, bearingDiameter, wrench, place: cells.place}
  )
}

/** A hole of tables/clearance-holes.csv. */
export function clearanceHoleRow(cells: Cells): ClearanceHoleRow | undefined {
  const fine = cells.quantity('fine', 'length')
  const medium = cells.quantity('medium', 'length')
  const coarse = cells.quantity('coarse', 'length')
  return fine && medium && coarse && {size: cells.text('size'), fine, medium, coarse, place: cells.place}
}

/** A class of tables/property-classes.csv. */
export function propertyClassRow(cells: Cells): PropertyClassRow | undefined {
  const aboveDiameter = cells.quantity('above-diameter', 'length')
  const upToDiameter = cells.quantity('up-to-diameter', 'length')
  const yieldStress = cells.quantity('yield', 'stress')
  const tensileStrength = cells.quantity('tensile', 'stress')
  if (!aboveDiameter || !upToDiameter || !yieldStress || !tensileStrength) return undefined
  return {
    id: cells.text('class'),
    aboveDiameter,
    upToDiameter,
    yieldStress,
    tensileStrength,
    place: cells.place,
  }
}

/** A lubrication state of tables/friction.csv. */
export function frictionRow(cells: Cells): FrictionRow | undefined {
  const id = cells.id('id')
  const threadFriction = cells.quantity('thread-friction', 'ratio')
  const headFriction = cells.quantity('head-friction', 'ratio')
  if (id === undefined || !threadFriction || !headFriction) return undefined
  return {
    id,
    title: cells.text('title'),
    frictionClass: cells.text('class'),
    threadFriction,
    headFriction,
    source: cells.text('source'),
    place: cells.place,
  }
}

/** A range of tables/running-clearances.csv. */
export function runningClearanceRow(cells: Cells): RunningClearanceRow | undefined {
  const fromDiameter = cells.quantity('from', 'length')
  const belowDiameter = cells.quantity('below', 'length')
  const clearance = cells.quantity('clearance', 'diametral-clearance')
  return (
    fromDiameter && belowDiameter && clearance && {fromDiameter, belowDiameter, clearance, place: cells.place}
  )
}

/** A cargo of tables/cargoes.csv. */
export function cargoRow(cells: Cells): Cargo | undefined {
  const id = cells.id('id')
  const density = cells.datum('density', 'density')
  const word = cells.oneOf('word', ['DANGER', 'WARNING'])
  if (id === undefined || !density || !word) return undefined
  return {
    id,
    title: cells.text('title'),
    density,
    flammable: cells.yesNo('flammable'),
    waterReactive: cells.yesNo('water-reactive'),
    toxic: cells.yesNo('toxic'),
    purgeMedium: cells.text('purge-medium'),
    word,
    protection: cells.text('protection'),
    place: cells.place,
  }
}

/** A material of tables/materials.csv. */
export function materialRow(cells: Cells): Material | undefined {
  const id = cells.id('id')
  return id === undefined ? undefined : {id, title: cells.text('title'), place: cells.place}
}

/** What a cargo does to a material, by tables/suitability.csv. */
export function suitabilityRow(cells: Cells): Suitability | undefined {
  const word = cells.oneOf('word', suitabilityWords)
  return (
    word && {
      material: cells.reference('material'),
      cargo: cells.reference('cargo'),
      word,
      note: cells.text('note'),
      place: cells.place,
    }
  )
}
