import {type Quantity, type QuantityKind, quantityOf} from './quantity.ts'
import {unitOf} from './units.ts'

function constructorOf<K extends QuantityKind>(kind: K, symbol: string): (value: number) => Quantity<K> {
  const unit = unitOf(kind, symbol)
  return (value) => quantityOf(kind, value * unit.factor + unit.offset)
}

/** Constructors of quantities, one for each unit that code or tests write numbers in. Each throws a `RangeError` for a number that is not finite. */
export const metres = constructorOf('length', 'm')
export const millimetres = constructorOf('length', 'mm')
export const micrometres = constructorOf('length', 'µm')
export const radialMillimetres = constructorOf('radial-clearance', 'mm radial')
export const diametralMillimetres = constructorOf('diametral-clearance', 'mm diametral')
export const squareMillimetres = constructorOf('area', 'mm²')
export const cubicMetres = constructorOf('volume', 'm³')
export const litres = constructorOf('volume', 'l')
export const degrees = constructorOf('angle', '°')
export const kilograms = constructorOf('mass', 'kg')
export const kilogramsPerCubicMetre = constructorOf('density', 'kg/m³')
export const newtons = constructorOf('force', 'N')
export const kilonewtons = constructorOf('force', 'kN')
export const newtonMetres = constructorOf('torque', 'N·m')
export const newtonsPerSquareMillimetre = constructorOf('stress', 'N/mm²')
export const barGauge = constructorOf('gauge-pressure', 'bar(g)')
export const barAbsolute = constructorOf('absolute-pressure', 'bar(a)')
export const millibarAbsolute = constructorOf('absolute-pressure', 'mbar(a)')
export const bar = constructorOf('pressure-difference', 'bar')
export const degreesCelsius = constructorOf('temperature', '°C')
export const kelvinDifference = constructorOf('temperature-difference', 'K')
export const seconds = constructorOf('time', 's')
export const minutes = constructorOf('time', 'min')
export const hours = constructorOf('time', 'h')
export const litresPerMinute = constructorOf('volume-flow', 'l/min')
export const millilitresPerMinute = constructorOf('volume-flow', 'ml/min')
export const ratio = constructorOf('ratio', '1')
export const percent = constructorOf('ratio', '%')
export const count = constructorOf('count', '')
