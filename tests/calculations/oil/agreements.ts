import {drumCount} from '../../../src/calculations/oil/drum-count.ts'
import {oilCompression} from '../../../src/calculations/oil/oil-compression.ts'
import {oilExpansion} from '../../../src/calculations/oil/oil-expansion.ts'
import {oilVolumeOf} from '../../../src/calculations/oil/oil-volume.ts'
import {trappedOilPressure} from '../../../src/calculations/oil/trapped-oil-pressure.ts'
import {convertQuantity} from '../../../src/quantities/convert-quantity.ts'
import {
  bar,
  kelvinDifference,
  litres,
  metres,
  millimetres,
  perKelvin,
} from '../../../src/quantities/named-units.ts'
import {type HeldRows, heldTo, near} from '../../published-values/agreement.ts'
import {published} from '../../published-values/oil-rows.ts'

const psi = (value: number) => bar(convertQuantity(`${value} psi`, 'bar').value)

/** Oil against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(published.pipes, ({bore, litresPerMetre}) => {
    const found = oilVolumeOf({kind: 'pipe', name: 'pipe', bore: millimetres(bore), length: metres(1)})
    return [near('l', found.si * 1000, litresPerMetre, 5e-5)]
  }),
  heldTo(published.annulus, ({outer, inner, litresPerMetre}) => {
    const found = oilVolumeOf({
      kind: 'annulus',
      name: 'return',
      outerDiameter: millimetres(outer),
      innerDiameter: millimetres(inner),
      length: metres(1),
    })
    return [near('l', found.si * 1000, litresPerMetre, 5e-5)]
  }),
  heldTo(published.drums, (row) => {
    const found = drumCount({volume: litres(row.volume), drum: litres(row.drum)})
    return [
      near('fills', found.fills.si, row.fills, row.tolerance),
      near('drums', found.drums.si, row.drums, 1e-9),
    ]
  }),
  heldTo(published.expansionPerFahrenheit, (row) => {
    const expansion = convertQuantity(`${row.expansion} 1/°F`, '1/K').value
    const rise = convertQuantity(`${row.riseFahrenheit} °F difference`, 'K').value
    const found = oilExpansion({
      volume: litres(1),
      expansion: perKelvin(expansion),
      rise: kelvinDifference(rise),
    })
    return [
      near('1/K', expansion, row.expansionPerKelvin, 5e-7),
      near('share', found.share.si, row.share, 5e-4),
    ]
  }),
  heldTo(published.compression, ({bulkModulus, pressureRise, share}) => {
    const found = oilCompression({
      volume: litres(100),
      bulkModulus: psi(bulkModulus),
      pressureRise: psi(pressureRise),
    })
    return [near('share', found.share.si, share, 5e-4)]
  }),
  heldTo(published.expansion, ({volume, expansion, rise, change}) => {
    const found = oilExpansion({
      volume: litres(volume),
      expansion: perKelvin(expansion),
      rise: kelvinDifference(rise),
    })
    return [near('l', found.change.si * 1000, change, 0.005)]
  }),
  heldTo(published.trapped, (row) => {
    const found = trappedOilPressure({
      bulkModulus: bar(row.bulkModulus),
      expansion: perKelvin(row.expansion),
      warming: kelvinDifference(1),
    })
    const ofTheRule =
      convertQuantity(`${row.psiPerFahrenheit} psi`, 'bar').value /
      convertQuantity('1 °F difference', 'K').value
    return [
      near('bar a kelvin, computed apart', found.risePerKelvin.si / 1e5, row.barPerKelvin, 0.05),
      near('the rule in bar', ofTheRule, row.barPerKelvinOfTheRule, 0.005),
      near('bar a kelvin as the page rounds', found.risePerKelvin.si / 1e5, row.barPerKelvinRounded, 0.5),
    ]
  }),
]
