import type {CalculationNote} from '../calculations/calculation-note.ts'
import {dutyPressure, dutyPressureNote} from '../calculations/hydraulics/duty-pressure.ts'
import {hydraulicMotor, hydraulicMotorNote} from '../calculations/hydraulics/hydraulic-motor.ts'
import {pumpPower} from '../calculations/pump/pump-power.ts'
import {testRunNote} from '../calculations/pump/test-run.ts'
import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Datum} from '../handbook-model/datum.ts'
import type {Design, Motor, PumpCurve} from '../handbook-model/design-content.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {kilogramsPerCubicMetre} from '../quantities/named-units.ts'
import {quantityOf} from '../quantities/quantity.ts'
import {calculationSources} from './calculation-sources.ts'
import {computedValue} from './computed-value.ts'
import {roundedUp, tracedConstant, tracedStep} from './value-builder.ts'

/** Heads that a test run is held against, and what the motor needs at the duty point. */
export function pumpValues(design: Design, content: Content, files: ContentFiles): readonly ComputedValue[] {
  const {curve, motor} = design
  return [
    ...(curve ? headValues(curve, design, content, files) : []),
    ...(curve && motor ? motorValues(curve, motor, design, files) : []),
  ]
}

function headValues(
  curve: PumpCurve,
  design: Design,
  content: Content,
  files: ContentFiles,
): readonly ComputedValue[] {
  const {testRunAct, testRunWatch} = content.office.house
  const head = (id: string, title: string, share: Datum<'ratio'>): ComputedValue =>
    computedValue(
      {
        id,
        title,
        ofDesign: true,
        place: curve.place,
        where: design.title.en,
        note: testRunNote,
        formula: ['H least = share·H curve'],
        symbols: [{symbol: 'H least', meaning: 'head that the pump has to reach'}],
        sources: calculationSources['test-run-share'],
        inputs: {
          curve: {
            symbol: 'H curve',
            title: 'head of the curve with the discharge valve closed',
            datum: curve.shutOffHead,
          },
          share: {symbol: 'share', title: 'share by house rule', datum: share},
        },
        compute: (known) => ({
          quantity: roundedUp(quantityOf('length', known.curve.si * known.share.si), 'm', 1),
          unit: 'm',
          decimals: 1,
          condition: 'at the speed of the curve, discharge valve closed',
          rounding: 'up to 1 decimal of m, never lower',
        }),
      },
      files,
    )
  return [
    head('curve.watch-head', 'head below which the pump is watched', testRunWatch),
    head('curve.act-head', 'head below which the pump is opened', testRunAct),
  ]
}

/** Pressure over the motor at the duty point, from the power that the pump takes. */
const pressureLines = ['P = ρ·g·Qp·H/ηp', 'Δp = P/(D·n·ηm)']

/** Fresh water, on which the curve stands. */
const water = kilogramsPerCubicMetre(1000)

function motorValues(
  curve: PumpCurve,
  motor: Motor,
  design: Design,
  files: ContentFiles,
): readonly ComputedValue[] {
  const inputs = {
    displacement: {symbol: 'D', title: 'oil for one turn of the motor', datum: motor.displacement},
    speed: {symbol: 'n', title: 'speed of the curve', datum: curve.speed},
    volumetricEfficiency: {
      symbol: 'ηv',
      title: 'volumetric efficiency of the motor',
      datum: motor.volumetricEfficiency,
    },
    mechanicalEfficiency: {
      symbol: 'ηm',
      title: 'mechanical efficiency of the motor',
      datum: motor.mechanicalEfficiency,
    },
    flow: {symbol: 'Qp', title: 'flow of the duty point', datum: curve.flow},
    head: {symbol: 'H', title: 'head of the duty point', datum: curve.head},
    efficiency: {symbol: 'ηp', title: 'efficiency of the pump', datum: curve.efficiency},
  }
  const value = (
    name: string,
    title: string,
    note: CalculationNote,
    formula: readonly string[],
    print: (running: Running) => Running[keyof Running],
    unit: string,
    decimals: number,
  ): ComputedValue =>
    computedValue(
      {
        id: `motor.${name}`,
        title,
        ofDesign: true,
        place: motor.place,
        where: design.title.en,
        note,
        formula,
        symbols: [
          {symbol: 'T', meaning: 'torque of the motor'},
          {symbol: 'Q', meaning: 'oil flow into the motor'},
        ],
        sources: calculationSources['duty-pressure'],
        inputs,
        constants: [
          tracedConstant('ρ', 'fresh water, on which the curve stands', '1000 kg/m³', 'stated reference'),
          tracedConstant('g', 'standard gravity', '9.80665 m/s²', 'definition'),
        ],
        compute: (known) => {
          const {shaftPower} = pumpPower({...known, density: water})
          const pressure = dutyPressure({...known, shaftPower})
          const {displacement, speed, volumetricEfficiency, mechanicalEfficiency} = known
          const run = hydraulicMotor({
            displacement,
            speed,
            volumetricEfficiency,
            mechanicalEfficiency,
            pressureDrop: pressure,
          })
          if (!run.running) throw new RangeError('Unexpected motor without a speed, expected one')
          const running: Running = {torque: run.torque, oilFlow: run.running.flow, pressure}
          return {
            quantity: print(running),
            unit,
            decimals,
            condition: 'at the duty point on water',
            steps: [
              tracedStep('P', 'shaft power', shaftPower, 'kW'),
              tracedStep('Δp', 'pressure drop over the motor', pressure, 'bar'),
            ],
          }
        },
      },
      files,
    )
  return [
    value(
      'oil-flow',
      'oil flow into the motor',
      hydraulicMotorNote,
      ['Q = D·n/ηv'],
      (one) => one.oilFlow,
      'l/min',
      0,
    ),
    value(
      'torque',
      'torque of the motor',
      hydraulicMotorNote,
      [...pressureLines, 'T = D·Δp·ηm/(2π)'],
      (one) => one.torque,
      'N·m',
      0,
    ),
    value(
      'pressure-difference',
      'pressure drop over the motor',
      dutyPressureNote,
      pressureLines,
      (one) => one.pressure,
      'bar',
      0,
    ),
  ]
}

interface Running {
  readonly torque: ReturnType<typeof hydraulicMotor>['torque']
  readonly oilFlow: NonNullable<ReturnType<typeof hydraulicMotor>['running']>['flow']
  readonly pressure: ReturnType<typeof dutyPressure>
}
