import type {Quantity} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {type OilVolume, oilVolume} from './oil-volume.ts'

/** The oil spaces of one pump with its stack, from the deck down to the motor. */
export interface PumpOilSpaces {
  readonly stackLength: Quantity<'length'>
  readonly pressurePipeBore: Quantity<'length'>
  /** Outside diameter of the pressure pipe, which stands inside the return pipe. */
  readonly pressurePipeOutside: Quantity<'length'>
  readonly returnPipeBore: Quantity<'length'>
  readonly motorCasing: Quantity<'volume'>
  readonly controlValve: Quantity<'volume'>
}

export const pumpOilContentNote: CalculationNote = {
  name: 'pump-oil-content',
  words:
    'oil that a pump with its stack holds, and so what comes out when it is drained and what goes in when it is filled: pressure pipe, return annulus around it, motor casing and local control valve',
  formula: [
    'V pressure = π/4·d²·L',
    'V return = π/4·(D² − do²)·L',
    'V = V pressure + V return + V motor + V valve',
  ],
  symbols: [
    {symbol: 'V', meaning: 'oil content of the pump'},
    {symbol: 'V pressure', meaning: 'volume in the pressure pipe'},
    {symbol: 'V return', meaning: 'volume between the pipes'},
    {symbol: 'V motor', meaning: 'volume of the motor casing'},
    {symbol: 'V valve', meaning: 'volume of the local control valve'},
    {symbol: 'd', meaning: 'bore of the pressure pipe'},
    {symbol: 'do', meaning: 'outside diameter of the pressure pipe'},
    {symbol: 'D', meaning: 'bore of the return pipe'},
    {symbol: 'L', meaning: 'stack length'},
  ],
  sources: [{title: 'geometry', edition: 'none', howKnown: 'computed', status: 'current'}],
  validFor: 'concentric stacks filled with oil from the motor to the deck',
}

/**
 * Oil content of a pump with a concentric stack, part by part, and the sum.
 *
 * Source: geometry.
 * Valid for: a pressure pipe inside a return pipe over the whole stack length.
 *
 * @throws {RangeError}
 *   When a bore or the length is not above zero, the pipes do not nest, or a stated volume is below zero.
 */
export function pumpOilContent(spaces: PumpOilSpaces): OilVolume {
  if (spaces.pressurePipeOutside.si <= spaces.pressurePipeBore.si)
    throw new RangeError(
      'Unexpected pressure pipe without a wall, expected an outside diameter above its bore',
    )
  return oilVolume([
    {kind: 'pipe', name: 'pressure-pipe', bore: spaces.pressurePipeBore, length: spaces.stackLength},
    {
      kind: 'annulus',
      name: 'return-annulus',
      outerDiameter: spaces.returnPipeBore,
      innerDiameter: spaces.pressurePipeOutside,
      length: spaces.stackLength,
    },
    {kind: 'casing', name: 'motor-casing', volume: spaces.motorCasing},
    {kind: 'casing', name: 'control-valve', volume: spaces.controlValve},
  ])
}
