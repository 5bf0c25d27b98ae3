import {
  bearingGrowth,
  bearingHeating,
  bearingSteelExpansion,
} from '../../../src/calculations/heating/bearing-heating.ts'
import {degreesCelsius, millimetres} from '../../../src/quantities/named-units.ts'
import {type HeldRows, heldTo, near} from '../../published-values/agreement.ts'
import {growthTemperatures, published} from '../../published-values/bearing-growth-rows.ts'

/** Heating against every published row, forwards and backwards. */
export const agreements: readonly HeldRows[] = [
  heldTo(published.growth, ({bore, growth}) =>
    growthTemperatures.map((celsius, index) => {
      const found = bearingGrowth({
        bore: millimetres(bore),
        temperature: degreesCelsius(celsius),
        ambient: degreesCelsius(20),
        expansion: bearingSteelExpansion,
      })
      return near(`growth at ${celsius} °C in mm`, found.si * 1000, growth[index] ?? Number.NaN, 5e-5)
    }),
  ),
  heldTo(published.heating, ({bore, growth}) =>
    growthTemperatures.map((celsius, index) => {
      const printed = growth[index] ?? Number.NaN
      const found = bearingHeating({
        bore: millimetres(bore),
        growth: millimetres(printed),
        ambient: degreesCelsius(20),
        expansion: bearingSteelExpansion,
        highest: degreesCelsius(160),
      })
      return near(
        `temperature for ${printed} mm`,
        found.temperature.si - 273.15,
        celsius,
        5e-5 / (bearingSteelExpansion.si * bore),
      )
    }),
  ),
]
