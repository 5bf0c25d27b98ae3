import {micrometresPerMetreKelvin} from '../../quantities/named-units.ts'
import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** What the temperature of a bearing for fitting is computed from. */
export interface BearingHeatingInput {
  readonly bore: Quantity<'length'>
  /** By how much the bore must grow: interference of the fit and the play that fitting needs. */
  readonly growth: Quantity<'length'>
  readonly ambient: Quantity<'temperature'>
  readonly expansion: Quantity<'linear-expansion'>
  /** No bearing is heated above this. */
  readonly highest: Quantity<'temperature'>
}

/** Temperature of a bearing for fitting. */
export interface BearingHeating {
  readonly temperature: Quantity<'temperature'>
  readonly rise: Quantity<'temperature-difference'>
}

/** Expansion of bearing steel, 0.6 µm over a bore of 1 mm and 55 K. Source: implied by every row of the printed table of bore growth, read in a reprint. */
export const bearingSteelExpansion: Quantity<'linear-expansion'> = micrometresPerMetreKelvin(600 / 55)

/** Highest temperature of an open bearing and of a sealed and greased one, °C. Source: common practice, no source. */
export const highestBearingTemperatures = {
  open: quantityOf('temperature', 273.15 + 120),
  sealed: quantityOf('temperature', 273.15 + 80),
} as const

export const bearingHeatingNote: CalculationNote = {
  name: 'bearing-heating',
  words:
    'temperature to which a bearing is heated so that its bore grows by the interference of the fit and the play for fitting; inner and outer ring are both measured',
  formula: ['ΔT = Δd/(α·d)', 'T = T ambient + ΔT, at most T highest'],
  symbols: [
    {symbol: 'ΔT', meaning: 'rise of the temperature'},
    {symbol: 'Δd', meaning: 'growth of the bore'},
    {symbol: 'α', meaning: 'expansion of the steel'},
    {symbol: 'd', meaning: 'bore'},
    {symbol: 'T', meaning: 'temperature of the bearing'},
    {symbol: 'T ambient', meaning: 'temperature around'},
    {symbol: 'T highest', meaning: 'highest temperature that the bearing bears'},
  ],
  sources: [
    {
      title: 'temperature rise for a growth of the bore, formula of the trade',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
    {
      title: 'table of bore growth by bore and temperature, for the usual expansion',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
    {
      title: 'at most 120 °C, sealed and greased bearings at most 80 °C',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor: 'bearings of through-hardened steel, heated evenly, on a shaft at ambient temperature',
}

export const bearingGrowthNote: CalculationNote = {
  name: 'bearing-growth',
  words: 'growth of the bore of a bearing that was heated',
  formula: ['Δd = α·d·(T − T ambient)'],
  symbols: [
    {symbol: 'Δd', meaning: 'growth of the bore'},
    {symbol: 'α', meaning: 'expansion of the steel'},
    {symbol: 'd', meaning: 'bore'},
    {symbol: 'T', meaning: 'temperature of the bearing'},
    {symbol: 'T ambient', meaning: 'temperature around'},
  ],
  sources: [
    {
      title: 'table of bore growth by bore and temperature, from 20 °C',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor: 'rings of one steel, heated evenly',
}

/**
 * Growth of the bore of a heated bearing.
 *
 * Source: table of bore growth by bore and temperature; read in a reprint.
 * Valid for: rings of one steel, heated evenly.
 *
 * @throws {RangeError}
 *   When bore or expansion is not above zero, or the bearing is not warmer than ambient.
 */
export function bearingGrowth(
  input: Pick<BearingHeatingInput, 'bore' | 'ambient' | 'expansion'> & {
    readonly temperature: Quantity<'temperature'>
  },
): Quantity<'length'> {
  refuseNoRing(input.bore, input.expansion)
  const rise = input.temperature.si - input.ambient.si
  if (rise < 0)
    throw new RangeError(
      `Unexpected bearing of ${inCelsius(input.temperature)} colder than ${inCelsius(input.ambient)}, expected a warmer one`,
    )
  return quantityOf('length', input.expansion.si * input.bore.si * rise)
}

/**
 * Temperature to which a bearing is heated for fitting.
 *
 * Source: formula of the trade, read in a reprint; highest temperatures by common practice, no source.
 * Valid for: through-hardened steel, heated evenly, up to the highest temperature.
 *
 * @throws {RangeError}
 *   When bore, growth or expansion is not above zero, or the temperature would be above the highest.
 */
export function bearingHeating(input: BearingHeatingInput): BearingHeating {
  refuseNoRing(input.bore, input.expansion)
  if (input.growth.si <= 0) throw new RangeError('Unexpected growth of nothing, expected one above zero')
  const rise = input.growth.si / (input.expansion.si * input.bore.si)
  const temperature = quantityOf('temperature', input.ambient.si + rise)
  if (temperature.si > input.highest.si + 1e-9)
    throw new RangeError(
      `Unexpected temperature of ${inCelsius(temperature)}, expected at most ${inCelsius(input.highest)} where no higher one is stated`,
    )
  return {temperature, rise: quantityOf('temperature-difference', rise)}
}

function refuseNoRing(bore: Quantity<'length'>, expansion: Quantity<'linear-expansion'>): void {
  if (bore.si <= 0 || expansion.si <= 0)
    throw new RangeError('Unexpected bore or expansion of nothing, expected values above zero')
}

function inCelsius(temperature: Quantity<'temperature'>): string {
  return printedText(printQuantity(temperature, '°C', 1))
}
