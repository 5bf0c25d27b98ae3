import {dutyPressure, dutyPressureNote} from '../calculations/hydraulics/duty-pressure.ts'
import {hydraulicMotor, hydraulicMotorNote} from '../calculations/hydraulics/hydraulic-motor.ts'
import {type Comparison, powerBalance, powerBalanceNote} from '../calculations/hydraulics/power-balance.ts'
import {ratio} from '../quantities/named-units.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

/** Hydraulic motor, pressure at duty, and hydraulic data against pump data. */
export const hydraulicCalculations: readonly ListedCalculation[] = [
  {
    note: dutyPressureNote,
    keys: ['shaft-power', 'displacement', 'speed'],
    optionalKeys: ['mechanical-efficiency'],
    run: runDutyPressure,
  },
  {
    note: hydraulicMotorNote,
    keys: ['displacement', 'pressure-drop'],
    optionalKeys: ['flow', 'speed', 'volumetric-efficiency', 'mechanical-efficiency'],
    run: runHydraulicMotor,
  },
  {
    note: powerBalanceNote,
    keys: ['displacement', 'pressure-drop', 'speed', 'pump-shaft-power'],
    optionalKeys: ['oil-flow', 'volumetric-efficiency', 'mechanical-efficiency', 'tolerance'],
    run: runPowerBalance,
  },
]

const withoutLoss = ratio(1)

function runDutyPressure(words: CalculationWords): CalculationRun {
  const mechanicalEfficiency = words.optional('mechanical-efficiency', 'ratio') ?? withoutLoss
  const pressure = dutyPressure({
    shaftPower: words.quantity('shaft-power', 'power'),
    displacement: words.quantity('displacement', 'displacement'),
    speed: words.quantity('speed', 'rotational-speed'),
    mechanicalEfficiency,
  })
  return {
    results: [quantityLine('pressure-drop', pressure, 'bar', 1)],
    taken: notGiven(words, [quantityLine('mechanical-efficiency', mechanicalEfficiency, '%', 0)]),
    note: dutyPressureNote,
  }
}

function runHydraulicMotor(words: CalculationWords): CalculationRun {
  const mechanicalEfficiency = words.optional('mechanical-efficiency', 'ratio') ?? withoutLoss
  const volumetricEfficiency = words.optional('volumetric-efficiency', 'ratio')
  const flow = words.optional('flow', 'volume-flow')
  const speed = words.optional('speed', 'rotational-speed')
  const {torque, idealTorque, running} = hydraulicMotor({
    displacement: words.quantity('displacement', 'displacement'),
    pressureDrop: words.quantity('pressure-drop', 'pressure-difference'),
    mechanicalEfficiency,
    ...(flow ? {flow} : {}),
    ...(speed ? {speed} : {}),
    ...(volumetricEfficiency ? {volumetricEfficiency} : {}),
  })
  const fromBoth = flow !== undefined && speed !== undefined
  const efficiency = running
    ? quantityLine('volumetric-efficiency', running.volumetricEfficiency, '%', 1)
    : undefined
  return {
    results: [
      quantityLine('torque', torque, 'N·m', 1),
      quantityLine('ideal-torque', idealTorque, 'N·m', 1),
      ...(running
        ? [
            quantityLine('speed', running.speed, 'rpm', 1),
            quantityLine('flow', running.flow, 'l/min', 2),
            quantityLine('ideal-flow', running.idealFlow, 'l/min', 2),
            quantityLine('leak-flow', running.leakFlow, 'l/min', 2),
            quantityLine('oil-power', running.fluidPower, 'kW', 3),
            quantityLine('ideal-power', running.idealPower, 'kW', 3),
            quantityLine('shaft-power', running.shaftPower, 'kW', 3),
          ]
        : []),
      ...(fromBoth && efficiency ? [efficiency] : []),
    ],
    taken: notGiven(words, [
      ...(!fromBoth && efficiency ? [efficiency] : []),
      quantityLine('mechanical-efficiency', mechanicalEfficiency, '%', 0),
    ]),
    note: hydraulicMotorNote,
  }
}

function runPowerBalance(words: CalculationWords): CalculationRun {
  const volumetricEfficiency = words.optional('volumetric-efficiency', 'ratio') ?? withoutLoss
  const mechanicalEfficiency = words.optional('mechanical-efficiency', 'ratio') ?? withoutLoss
  const tolerance = words.optional('tolerance', 'ratio') ?? ratio(0.15)
  const oilFlow = words.optional('oil-flow', 'volume-flow')
  const balance = powerBalance({
    displacement: words.quantity('displacement', 'displacement'),
    pressureDrop: words.quantity('pressure-drop', 'pressure-difference'),
    speed: words.quantity('speed', 'rotational-speed'),
    pumpShaftPower: words.quantity('pump-shaft-power', 'power'),
    volumetricEfficiency,
    mechanicalEfficiency,
    tolerance,
    ...(oilFlow ? {oilFlow} : {}),
  })
  return {
    results: [
      wordLine('agree', balance.agrees ? 'yes' : 'no: hydraulic and pump data do not agree'),
      ...comparisonLines('torque', balance.torque, 'N·m'),
      ...comparisonLines('power', balance.power, 'kW'),
      ...(balance.speed ? comparisonLines('speed', balance.speed, 'rpm') : []),
    ],
    taken: notGiven(words, [
      quantityLine('volumetric-efficiency', volumetricEfficiency, '%', 0),
      quantityLine('mechanical-efficiency', mechanicalEfficiency, '%', 0),
      quantityLine('tolerance', tolerance, '%', 0),
    ]),
    note: powerBalanceNote,
  }
}

function comparisonLines(
  name: string,
  comparison: Comparison<'torque'> | Comparison<'power'> | Comparison<'rotational-speed'>,
  unit: string,
): readonly ResultLine[] {
  return [
    quantityLine(`${name}-by-motor`, comparison.byMotor, unit, 1),
    quantityLine(`${name}-by-pump`, comparison.byPump, unit, 1),
    quantityLine(`${name}-difference`, comparison.difference, '%', 1),
  ]
}
