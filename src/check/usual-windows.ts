import type {Datum} from '../handbook-model/datum.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {Tool} from '../handbook-model/office-content.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {QuantityKind} from '../quantities/quantity.ts'

/** A window of usual values, in the SI unit of the value and in words. */
interface Window {
  readonly what: string
  readonly least: number
  readonly most: number
  readonly words: string
}

/** Estimates for the tankers that carry such pumps: common practice, no source. */
const windows = {
  deadweight: {what: 'deadweight', least: 3e6, most: 50e6, words: '3000 t to 50000 t'},
  systemPressure: {what: 'system pressure', least: 160e5, most: 350e5, words: '160 bar(g) to 350 bar(g)'},
  returnPressure: {what: 'return pressure', least: 2e5, most: 12e5, words: '2 bar(g) to 12 bar(g)'},
  tankVolume: {what: 'tank volume', least: 100, most: 3000, words: '100 m³ to 3000 m³'},
  tankHeight: {what: 'tank height', least: 6, most: 22, words: '6 m to 22 m'},
  stackLength: {what: 'stack length', least: 6, most: 22, words: '6 m to 22 m'},
  runningDiameter: {what: 'running diameter', least: 0.09, most: 0.28, words: '90 mm to 280 mm'},
} as const satisfies Record<string, Window>

/** Values of a vessel that cannot exist stop the build; unusual ones are warned of. */
export function noUnusualVesselValue(vessel: Vessel, files: ContentFiles): void {
  hold(vessel.deadweight, windows.deadweight, files)
  hold(vessel.hydraulics.systemPressure, windows.systemPressure, files)
  hold(vessel.hydraulics.returnPressure, windows.returnPressure, files)
  for (const tank of vessel.tanks) {
    hold(tank.volume, windows.tankVolume, files)
    hold(tank.height, windows.tankHeight, files)
  }
  for (const {stackLength} of vessel.positions) if (stackLength) hold(stackLength, windows.stackLength, files)
}

/** The same for a design; its pipes nest. */
export function noUnusualDesignValue(design: Design, files: ContentFiles): void {
  for (const ring of design.rings) hold(ring.runningDiameter, windows.runningDiameter, files)
  for (const mass of design.masses) isNothing(mass.value, 'mass', files)
  if (!design.cofferdam) return
  const {outerPipeBore: outer, innerPipeOutside: inner} = design.cofferdam
  if (outer.kind === 'known' && inner.kind === 'known' && outer.quantity.si <= inner.quantity.si) {
    addMessage(
      files,
      outer.place,
      'no-impossible-value',
      'Unexpected outer pipe that is not larger than the inner pipe, expected pipes that nest',
      {note: 'Read the drawing or the record again', cause: inner.place},
    )
  }
}

/** A scale that does not rise measures nothing. */
export function noImpossibleScale({id, torqueRange}: Tool, files: ContentFiles): void {
  if (torqueRange?.least.kind !== 'known' || torqueRange.most.kind !== 'known') return
  const {least, most} = torqueRange
  if (least.quantity.si < most.quantity.si) return
  addMessage(
    files,
    most.place,
    'no-impossible-value',
    `Unexpected scale of \`${id}\` from \`${least.figure} ${least.unit}\` to \`${most.figure} ${most.unit}\`, expected one that ends above its beginning`,
    {note: 'Read the wrench again', cause: least.place},
  )
}

function hold<K extends QuantityKind>(
  datum: Datum<K>,
  {what, least, most, words}: Window,
  files: ContentFiles,
): void {
  if (datum.kind === 'not-known' || isNothing(datum, what, files)) return
  if (datum.quantity.si >= least && datum.quantity.si <= most) return
  addMessage(
    files,
    datum.place,
    'no-implausible-value',
    `Unexpected ${what} of \`${datum.figure} ${datum.unit}\` outside the usual window, expected ${words}`,
    {note: 'Read the drawing or the record again; the build goes on'},
  )
}

function isNothing<K extends QuantityKind>(datum: Datum<K>, what: string, files: ContentFiles): boolean {
  if (datum.kind === 'not-known' || datum.quantity.si > 0) return false
  addMessage(
    files,
    datum.place,
    'no-impossible-value',
    `Unexpected ${what} of \`${datum.figure} ${datum.unit}\`, expected more than zero`,
    {note: 'Read the drawing or the record again'},
  )
  return true
}
