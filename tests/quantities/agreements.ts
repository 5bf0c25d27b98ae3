import {convertQuantity} from '../../src/quantities/convert-quantity.ts'
import {roundDecimal, roundSignificant, roundToStep} from '../../src/quantities/round-decimal.ts'
import {unitOf} from '../../src/quantities/units.ts'
import {type Agreement, type HeldRows, heldTo, near, same} from '../published-values/agreement.ts'
import {type ConversionRow, published as conversions} from '../published-values/conversion-rows.ts'
import {published as exact} from '../published-values/exact-units.ts'
import {published as leaks} from '../published-values/gas-leak-rows.ts'
import {type RoundingRow, published as rounding} from '../published-values/rounding-rows.ts'

function converted({value, to, expected, tolerance}: ConversionRow): readonly Agreement[] {
  return [
    near(`${value} in ${to}`, convertQuantity(value, to).value, expected, Math.abs(expected) * tolerance),
  ]
}

function rounded({value, step, halfEven, halfUp}: RoundingRow): readonly Agreement[] {
  return [
    same('half to even', roundToStep(value, step), halfEven),
    same('half up', roundToStep(value, step, 'half-up'), halfUp),
  ]
}

/** Units and rounding against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(conversions.definitions, converted),
  heldTo(conversions.factors, converted),
  heldTo(conversions.printed, converted),
  heldTo(conversions.readOnPages, converted),
  heldTo(exact.exact, ({kind, symbol, si}) => [
    near(symbol, unitOf(kind, symbol).factor, si, Math.abs(si) * 1e-12),
  ]),
  heldTo(leaks.units, ({text, pascalCubicMetres, tolerance}) => [
    near(text, convertQuantity(text, 'Pa·m³/s').value, pascalCubicMetres, tolerance),
  ]),
  heldTo(rounding.iso, (row) => {
    const decimals = row.step === 10 ? -1 : 1
    return [
      ...rounded(row),
      same('decimals, half to even', roundDecimal(row.value, decimals), row.halfEven),
      same('decimals, half up', roundDecimal(row.value, decimals, 'half-up'), row.halfUp),
    ]
  }),
  heldTo(rounding.intervals, rounded),
  heldTo(rounding.significant, ({value, digits, printed}) => [
    same('significant digits', roundSignificant(value, digits), printed),
  ]),
]
