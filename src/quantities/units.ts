import {foot, inch, pound, poundForce, poundForcePerSquareInch} from './exact-constants.ts'
import type {QuantityKind} from './quantity.ts'

/** One unit: how it is printed, which spellings are read, and how it converts to the SI base unit of its kind. */
export interface Unit<K extends QuantityKind = QuantityKind> {
  readonly kind: K
  /** The one proper form, used whenever the unit is printed. */
  readonly symbol: string
  /** Further spellings that are read, never printed. */
  readonly alsoRead: readonly string[]
  /** SI value = number × factor + offset. */
  readonly factor: number
  readonly offset: number
  /** True when a value below zero cannot exist, so that reading one is refused. */
  readonly neverNegative: boolean
}

const psi = poundForcePerSquareInch

/** Makes a unit; a value below zero is refused unless it is said that it may be. */
export function unit<K extends QuantityKind>(
  kind: K,
  symbol: string,
  factor: number,
  alsoRead: readonly string[] = [],
  more: {offset?: number; mayBeNegative?: boolean} = {},
): Unit<K> {
  return {kind, symbol, alsoRead, factor, offset: more.offset ?? 0, neverNegative: !more.mayBeNegative}
}

/**
 * Every unit the project reads or prints, the base unit of each kind first.
 *
 * Source: definitions of NIST SP 811 appendix B and ISO 80000 (inch, pound, standard gravity, bar and
 * litre are exact); from memory, compared in tests with an independent unit database.
 */
export const units = [
  unit('length', 'm', 1),
  unit('length', 'mm', 1e-3),
  unit('length', 'µm', 1e-6, ['um', 'μm']),
  unit('length', 'cm', 1e-2),
  unit('length', 'in', inch),
  unit('length-difference', 'm', 1, [], {mayBeNegative: true}),
  unit('length-difference', 'mm', 1e-3, [], {mayBeNegative: true}),
  unit('length-difference', 'µm', 1e-6, ['um', 'μm'], {mayBeNegative: true}),
  unit('length-difference', 'in', inch, [], {mayBeNegative: true}),
  unit('radial-clearance', 'mm radial', 1e-3, ['mm rad']),
  unit('diametral-clearance', 'mm diametral', 1e-3, ['mm dia']),
  unit('diametral-wear', 'm diametral/s', 1, [], {mayBeNegative: true}),
  unit('diametral-wear', 'mm diametral/1000 h', 1e-3 / 3.6e6, [], {mayBeNegative: true}),
  unit('area', 'm²', 1, ['m2']),
  unit('area', 'mm²', 1e-6, ['mm2']),
  unit('volume', 'm³', 1, ['m3']),
  unit('volume', 'l', 1e-3, ['L', 'litre', 'dm³']),
  unit('volume', 'ml', 1e-6, ['mL', 'cm³', 'cm3']),
  unit('angle', 'rad', 1, [], {mayBeNegative: true}),
  unit('angle', '°', Math.PI / 180, ['deg'], {mayBeNegative: true}),
  unit('mass', 'kg', 1),
  unit('mass', 't', 1000),
  unit('mass', 'lb', pound),
  unit('density', 'kg/m³', 1, ['kg/m3']),
  unit('density', 't/m³', 1000, ['t/m3']),
  unit('force', 'N', 1),
  unit('force', 'kN', 1000),
  unit('torque', 'N·m', 1, ['Nm', 'N m', 'N.m', 'N*m']),
  unit('torque', 'lbf·ft', poundForce * foot, ['lbf ft', 'ft·lbf']),
  unit('stress', 'Pa', 1),
  unit('stress', 'N/mm²', 1e6, ['N/mm2', 'MPa']),
  unit('hardness', 'HRC', 1),
  unit('gauge-pressure', 'Pa(g)', 1, [], {mayBeNegative: true}),
  unit('gauge-pressure', 'bar(g)', 1e5, ['bar g', 'barg'], {mayBeNegative: true}),
  unit('gauge-pressure', 'mbar(g)', 100, ['mbar g', 'mbarg'], {mayBeNegative: true}),
  unit('gauge-pressure', 'psi(g)', psi, ['psi g', 'psig'], {mayBeNegative: true}),
  unit('absolute-pressure', 'Pa(a)', 1),
  unit('absolute-pressure', 'bar(a)', 1e5, ['bar a', 'bara']),
  unit('absolute-pressure', 'mbar(a)', 100, ['mbar a', 'mbara']),
  unit('pressure-difference', 'Pa', 1, [], {mayBeNegative: true}),
  unit('pressure-difference', 'bar', 1e5, [], {mayBeNegative: true}),
  unit('pressure-difference', 'mbar', 100, [], {mayBeNegative: true}),
  unit('pressure-difference', 'psi', psi, [], {mayBeNegative: true}),
  unit('temperature', 'K', 1),
  unit('temperature', '°C', 1, ['degC', '℃'], {offset: 273.15, mayBeNegative: true}),
  unit('temperature-difference', 'K', 1, ['degC difference'], {mayBeNegative: true}),
  unit('linear-expansion', '1/K', 1, ['/K', 'K⁻¹']),
  unit('linear-expansion', 'µm/(m·K)', 1e-6, ['um/(m·K)', 'um/(m K)']),
  unit('time', 's', 1),
  unit('time', 'min', 60),
  unit('time', 'h', 3600, ['hours']),
  unit('time', 'd', 86400, ['days']),
  unit('time', 'months', 2629800, ['month']),
  unit('speed', 'm/s', 1),
  unit('speed', 'mm/s', 1e-3),
  unit('rotational-speed', 'rev/s', 1),
  unit('rotational-speed', 'rpm', 1 / 60, ['1/min', 'rev/min']),
  unit('volume-flow', 'm³/s', 1, ['m3/s']),
  unit('volume-flow', 'm³/h', 1 / 3600, ['m3/h']),
  unit('volume-flow', 'l/min', 1e-3 / 60, ['L/min']),
  unit('volume-flow', 'ml/min', 1e-6 / 60, ['mL/min']),
  unit('volume-flow', 'ml/h', 1e-6 / 3600, ['mL/h']),
  unit('volume-flow', 'ml/d', 1e-6 / 86400, ['mL/d', 'ml/day']),
  unit('displacement', 'm³/rev', 1, ['m3/rev']),
  unit('displacement', 'cm³/rev', 1e-6, ['cm3/rev', 'ml/rev']),
  unit('gas-leak-rate', 'Pa·m³/s', 1, ['Pa m3/s']),
  unit('gas-leak-rate', 'mbar·l/s', 0.1, ['mbar l/s']),
  unit('molar-mass', 'kg/mol', 1),
  unit('molar-mass', 'g/mol', 1e-3),
  unit('molar-flow', 'mol/s', 1),
  unit('kinematic-viscosity', 'm²/s', 1, ['m2/s']),
  unit('kinematic-viscosity', 'mm²/s', 1e-6, ['mm2/s', 'cSt']),
  unit('thermal-expansion', '1/K', 1, ['/K', 'K⁻¹']),
  unit('power', 'W', 1),
  unit('power', 'kW', 1000),
  unit('concentration', 'ppm', 1e-6),
  unit('ratio', '1', 1, [''], {mayBeNegative: true}),
  unit('ratio', '%', 0.01, ['percent'], {mayBeNegative: true}),
  unit('count', '', 1, ['pcs']),
] as const satisfies readonly Unit[]

/** Finds a unit by its printed symbol; an unknown one is a mistake of the program. */
export function unitOf<K extends QuantityKind>(kind: K, symbol: string): Unit<K> {
  const found = units.find((one) => one.kind === kind && one.symbol === symbol)
  if (!found)
    throw new RangeError(`Unexpected unit \`${symbol}\` for ${kind}, expected one of the unit table`)
  return {...found, kind}
}
