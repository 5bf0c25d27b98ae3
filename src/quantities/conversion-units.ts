import {
  atmosphere,
  foot,
  gallonImperial,
  gallonUnitedStates,
  inch,
  pound,
  poundForce,
  poundForcePerSquareInch,
  standardGravity,
} from './exact-constants.ts'
import {type Unit, unit, units} from './units.ts'

const kilogramForcePerSquareCentimetre = standardGravity * 1e4
const signed = {mayBeNegative: true}

/**
 * Every unit that can be converted: those of the project first, then those met on old plates and in foreign papers.
 *
 * The further ones are read on the command line alone; content is written in the units of the project.
 *
 * Source: definitions of NIST SP 811 appendix B and ISO 80000; from memory, compared in tests with units computed
 * apart from this project.
 */
export const conversionUnits: readonly Unit[] = [
  ...units,
  unit('length', 'ft', foot),
  unit('length', 'thou', inch / 1000, ['mil']),
  unit('area', 'cm²', 1e-4, ['cm2']),
  unit('area', 'in²', inch ** 2, ['in2']),
  unit('area', 'ft²', foot ** 2, ['ft2']),
  unit('volume', 'in³', inch ** 3, ['in3', 'cu in']),
  unit('volume', 'ft³', foot ** 3, ['ft3', 'cu ft']),
  unit('volume', 'US gal', gallonUnitedStates, ['gal (US)']),
  unit('volume', 'imp gal', gallonImperial, ['gal (imp)', 'gal (UK)']),
  unit('volume', 'bbl', 42 * gallonUnitedStates, ['barrel']),
  unit('mass', 'g', 1e-3),
  unit('mass', 'long ton', 2240 * pound),
  unit('mass', 'short ton', 2000 * pound),
  unit('density', 'kg/l', 1000, ['kg/L', 'g/cm³', 'g/cm3', 'g/ml']),
  unit('density', 'lb/ft³', pound / foot ** 3, ['lb/ft3']),
  unit('force', 'kgf', standardGravity, ['kp']),
  unit('force', 'lbf', poundForce),
  unit('torque', 'lbf·in', poundForce * inch, ['lbf in', 'in·lbf']),
  unit('torque', 'kgf·m', standardGravity, ['kgf m', 'kp·m', 'mkg']),
  unit('stress', 'kgf/mm²', standardGravity * 1e6, ['kgf/mm2']),
  unit('gauge-pressure', 'kPa(g)', 1e3, ['kPa g', 'kPag'], signed),
  unit('gauge-pressure', 'kgf/cm²(g)', kilogramForcePerSquareCentimetre, ['kgf/cm2(g)'], signed),
  unit('absolute-pressure', 'kPa(a)', 1e3, ['kPa a', 'kPaa']),
  unit('absolute-pressure', 'hPa(a)', 100, ['hPa a', 'hPa']),
  unit('absolute-pressure', 'psi(a)', poundForcePerSquareInch, ['psi a', 'psia']),
  unit('absolute-pressure', 'kgf/cm²(a)', kilogramForcePerSquareCentimetre, ['kgf/cm2(a)']),
  unit('absolute-pressure', 'atm(a)', atmosphere),
  unit('absolute-pressure', 'Torr(a)', atmosphere / 760, ['torr(a)']),
  unit('absolute-pressure', 'mmHg(a)', 133.322387415),
  unit('pressure-difference', 'kPa', 1e3, [], signed),
  unit('pressure-difference', 'MPa', 1e6, [], signed),
  unit('pressure-difference', 'kgf/cm²', kilogramForcePerSquareCentimetre, ['kgf/cm2', 'kp/cm²'], signed),
  unit('pressure-difference', 'atm', atmosphere, [], signed),
  unit('pressure-difference', 'Torr', atmosphere / 760, ['torr'], signed),
  unit('pressure-difference', 'mmHg', 133.322387415, [], signed),
  unit('temperature', '°F', 5 / 9, ['degF'], {offset: 273.15 - (32 * 5) / 9, mayBeNegative: true}),
  unit('temperature-difference', '°F difference', 5 / 9, ['degF difference'], signed),
  unit('speed', 'km/h', 1 / 3.6),
  unit('speed', 'kn', 1852 / 3600, ['knot', 'knots']),
  unit('volume-flow', 'l/s', 1e-3, ['L/s']),
  unit('volume-flow', 'US gal/min', gallonUnitedStates / 60, ['gpm (US)']),
  unit('volume-flow', 'imp gal/min', gallonImperial / 60, ['gpm (imp)']),
  unit('volume-flow', 'bbl/h', (42 * gallonUnitedStates) / 3600),
  unit('displacement', 'in³/rev', inch ** 3, ['in3/rev']),
  unit('displacement', 'l/rev', 1e-3, ['L/rev']),
  unit('gas-leak-rate', 'atm·cm³/s', atmosphere * 1e-6, ['atm cm3/s', 'std cm³/s']),
  unit('thermal-expansion', '1/°F', 9 / 5, ['/°F']),
  unit('power', 'hp', 550 * foot * poundForce),
  unit('power', 'metric hp', 75 * standardGravity, ['PS']),
]
