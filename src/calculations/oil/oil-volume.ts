import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {annulusVolume} from '../gas/annulus-volume.ts'
import {refuseBelowZero, refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** A space that holds oil, with what its volume is computed from. */
export type OilSpace = {readonly name: string} & (
  | {readonly kind: 'pipe'; readonly bore: Quantity<'length'>; readonly length: Quantity<'length'>}
  | {
      readonly kind: 'annulus'
      /** Bore of the outer pipe. */
      readonly outerDiameter: Quantity<'length'>
      /** Outside diameter of the inner pipe. */
      readonly innerDiameter: Quantity<'length'>
      readonly length: Quantity<'length'>
    }
  /** A casing, valve or hose whose volume is stated. */
  | {readonly kind: 'casing'; readonly volume: Quantity<'volume'>}
)

/** Oil of several spaces: each part by its name, in the order given, and the sum. */
export interface OilVolume {
  readonly parts: readonly {readonly name: string; readonly volume: Quantity<'volume'>}[]
  readonly total: Quantity<'volume'>
}

export const oilVolumeNote: CalculationNote = {
  name: 'oil-volume',
  words:
    'oil in pipes, in annuli between two pipes and in casings of stated volume, part by part, and the sum',
  formula: ['V pipe = π/4·d²·L', 'V annulus = π/4·(D² − d²)·L', 'V = ΣV pipe + ΣV annulus + ΣV casing'],
  symbols: [
    {symbol: 'V', meaning: 'volume'},
    {symbol: 'V pipe', meaning: 'volume of one bore'},
    {symbol: 'V annulus', meaning: 'volume between two pipes'},
    {symbol: 'V casing', meaning: 'volume of a casing'},
    {symbol: 'd', meaning: 'bore of the pipe, or outside diameter of the inner pipe'},
    {symbol: 'D', meaning: 'bore of the outer pipe'},
    {symbol: 'L', meaning: 'length'},
  ],
  sources: [{title: 'geometry', edition: 'none', howKnown: 'computed', status: 'current'}],
  validFor: 'straight round pipes filled to the top',
}

/**
 * Volume of oil that one space holds when full.
 *
 * Source: geometry.
 * Valid for: straight round pipes; a casing has the volume that its drawing states.
 *
 * @throws {RangeError}
 *   When a bore or length is not above zero, pipes do not nest, or a stated volume is below zero.
 */
export function oilVolumeOf(space: OilSpace): Quantity<'volume'> {
  switch (space.kind) {
    case 'pipe':
      refuseUnlessAboveZero(`bore of \`${space.name}\``, space.bore, 'mm')
      refuseUnlessAboveZero(`length of \`${space.name}\``, space.length, 'm')
      return quantityOf('volume', (Math.PI / 4) * space.bore.si ** 2 * space.length.si)
    case 'annulus':
      return annulusVolume(space)
    case 'casing':
      refuseBelowZero(`volume of \`${space.name}\``, space.volume, 'l')
      return space.volume
  }
}

/**
 * Oil of several spaces, part by part, and the sum.
 *
 * Source: geometry.
 * Valid for: spaces that do not overlap, filled to the top.
 *
 * @throws {RangeError}
 *   When there is no space, or a space cannot be as it is stated.
 */
export function oilVolume(spaces: readonly OilSpace[]): OilVolume {
  if (spaces.length === 0) throw new RangeError('Unexpected oil volume of no space, expected one or more')
  const parts = spaces.map((space) => ({name: space.name, volume: oilVolumeOf(space)}))
  return {
    parts,
    total: quantityOf(
      'volume',
      parts.reduce((sum, {volume}) => sum + volume.si, 0),
    ),
  }
}
