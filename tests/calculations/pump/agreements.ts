import {affinity} from '../../../src/calculations/pump/affinity.ts'
import {headFromPressure, pressureFromHead} from '../../../src/calculations/pump/head-and-pressure.ts'
import {pumpPower} from '../../../src/calculations/pump/pump-power.ts'
import {convertQuantity} from '../../../src/quantities/convert-quantity.ts'
import {
  bar,
  cubicMetresPerHour,
  kilogramsPerCubicMetre,
  kilowatts,
  metres,
  percent,
  revolutionsPerMinute,
} from '../../../src/quantities/named-units.ts'
import {type HeldRows, heldTo, near} from '../../published-values/agreement.ts'
import {handbookConstants, published} from '../../published-values/pump-rows.ts'

const handbookWater = kilogramsPerCubicMetre(
  convertQuantity(`${handbookConstants.waterPoundsPerCubicFoot} lb/ft³`, 'kg/m³').value,
)

/** Water of the handbook's pounds to the US gallon. */
const waterByGallon = kilogramsPerCubicMetre(
  convertQuantity(`${handbookConstants.waterPoundsPerGallon} lb`, 'kg').value /
    convertQuantity('1 US gal', 'm³').value,
)

const point = {flow: cubicMetresPerHour(500), head: metres(120), power: kilowatts(181.6)}
const psi = convertQuantity('1 psi', 'bar').value

function scaledTo(from: number, to: number) {
  return affinity(point, {kind: 'speed', from: revolutionsPerMinute(from), to: revolutionsPerMinute(to)})
}

function shaftKilowatts(flow: number, head: number, density: number, efficiency: number): number {
  const {shaftPower} = pumpPower({
    flow: cubicMetresPerHour(flow),
    head: metres(head),
    density: kilogramsPerCubicMetre(density),
    efficiency: percent(efficiency),
  })
  return shaftPower.si / 1000
}

/** US gal/min times feet of water for one horsepower. */
function horsepowerConstant(density: typeof handbookWater): number {
  const {shaftPower} = pumpPower({
    flow: cubicMetresPerHour(convertQuantity('1 US gal/min', 'm³/h').value),
    head: metres(0.3048),
    density,
    efficiency: percent(100),
  })
  return convertQuantity('1 hp', 'W').value / shaftPower.si
}

/** Pumps against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(published.moreSpeed, (row) => {
    const found = scaledTo(1000, 1000 * row.speed)
    return [
      near('head', found.head.si / point.head.si, row.head, 5e-5),
      near('power', found.power.si / point.power.si, row.power, 5e-5),
      near('flow', found.flow.si / point.flow.si, row.speed, 1e-9),
    ]
  }),
  heldTo(published.lessSpeed, (row) => {
    const found = scaledTo(row.from, row.to)
    return [
      near('flow in m³/h', found.flow.si * 3600, row.scaledFlow, 0.005),
      near('head in m', found.head.si, row.scaledHead, 5e-4),
      near('power in kW', found.power.si / 1000, row.scaledPower, 0.005),
    ]
  }),
  heldTo(published.kilowatts, ({printed, exact, tolerance}) => {
    const constant = 1 / shaftKilowatts(1, 1, 1000, 100)
    return [
      near('exact', constant, exact, 5e-4),
      near('as the handbook rounds', constant, printed, tolerance * constant),
    ]
  }),
  heldTo(published.horsepower, ({printed, exact, tolerance}) => {
    const [byGallon, byFoot] = [horsepowerConstant(waterByGallon), horsepowerConstant(handbookWater)]
    return [
      near('exact', byGallon, exact, 0.05),
      near('by the gallon', byGallon, printed, tolerance * printed),
      near('by the cubic foot', byFoot, printed, tolerance * printed),
    ]
  }),
  heldTo(published.feetPerPsi, ({printed, exact, tolerance}) => {
    const feet = headFromPressure({pressure: bar(psi), density: handbookWater}).si / 0.3048
    return [
      near('exact', feet, exact, 5e-4),
      near('as the handbook rounds', feet, printed, tolerance * printed),
    ]
  }),
  heldTo(published.psiOfFeet, ({printed, tolerance}) => {
    const pressure = pressureFromHead({head: metres(printed * 0.3048), density: handbookWater})
    return [near('psi', pressure.si / 1e5 / psi, 1, tolerance)]
  }),
  heldTo(published.hundredMetres, ({density, pressure}) => {
    const found = pressureFromHead({head: metres(100), density: kilogramsPerCubicMetre(density)})
    return [near('bar', found.si / 1e5, pressure, 5e-4)]
  }),
  heldTo(published.shaftPower, ({flow, head, density, efficiency, power}) => [
    near('kW', shaftKilowatts(flow, head, density, efficiency), power, 0.005),
  ]),
  heldTo(published.wholeKilowatts, ({flow, head, power}) => [
    near('kW', shaftKilowatts(flow, head, 1000, 70), power, 0.5),
  ]),
]
