import {unit as mathUnit} from 'mathjs'
import {conversionUnits} from '../../src/quantities/conversion-units.ts'
import type {Unit} from '../../src/quantities/units.ts'

/** Pure numbers, and units that mathjs does not know or carries with six digits only: rows of definitions and of GNU units hold the latter. */
const withoutSecondOpinion: readonly string[] = [
  '',
  '%',
  '1',
  'Torr',
  'imp gal',
  'imp gal/min',
  'mmHg',
  'ppm',
]

/** How mathjs spells what has another name there. */
const otherWords: Readonly<Record<string, string>> = {
  '1/K': 'K^-1',
  '1/°F': 'degF^-1',
  '°': 'deg',
  '°C': 'degC',
  '°F': 'degF',
  'US gal': 'gallon',
  'US gal/min': 'gallon/minute',
  bbl: 'oilbarrel',
  'bbl/h': 'oilbarrel/hour',
  'cm³/rev': 'cm^3',
  'in³/rev': 'in^3',
  'l/rev': 'L',
  'm³/rev': 'm^3',
  d: 'day',
  kn: '1852 m/hour',
  'lb/ft³': 'lbm/ft^3',
  lb: 'lbm',
  'long ton': '2240 lbm',
  'metric hp': '75 kgf m/s',
  months: 'month',
  'rev/s': 'Hz',
  rpm: 'minute^-1',
  'short ton': 'ton',
  t: 'tonne',
  't/m³': 'tonne/m^3',
  thou: 'mil',
}

const powers: Readonly<Record<string, string>> = {'²': '^2', '³': '^3', '·': ' '}

/** The name of the unit without what makes it a kind of its own here: gauge, absolute, radial, diametral, difference. */
function plainName({symbol}: Unit): string {
  return symbol.replace(/\((?:g|a)\)$| (?:radial|diametral|difference)$/u, '')
}

function wordsOf(one: Unit): string {
  const name = plainName(one)
  return (
    otherWords[name] ??
    name
      .replaceAll(/[²³·]/gu, (letter) => powers[letter] ?? letter)
      .replaceAll(/\bl\b/gu, 'L')
      .replaceAll(/\bml\b/gu, 'mL')
      .replaceAll(/\bmin\b/gu, 'minute')
      .replaceAll(/\bh\b/gu, 'hour')
      .replaceAll('µ', 'u')
  )
}

/** What one of the unit is in the base unit of its kind, as mathjs has it; of a temperature, what one degree is. */
export function secondOpinion(one: Unit): number {
  const base = conversionUnits.find(
    ({kind, factor, offset}) => kind === one.kind && factor === 1 && offset === 0,
  )
  const words = wordsOf(one)
  const [, times = '1', plain = words] = /^(\d+) (.+)$/u.exec(words) ?? []
  const size = (count: number): number =>
    mathUnit(count * Number(times), plain).toNumber(base ? wordsOf(base) : 'm')
  return words.startsWith('deg') && words !== 'deg' && !words.endsWith('-1') ? size(2) - size(1) : size(1)
}

/** Every unit that mathjs can speak on. */
export const secondlyKnown: readonly Unit[] = conversionUnits.filter((one) => {
  if (withoutSecondOpinion.includes(plainName(one))) return false
  try {
    return Number.isFinite(secondOpinion(one))
  } catch {
    return false
  }
})
