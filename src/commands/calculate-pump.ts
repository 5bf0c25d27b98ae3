import {type AffinityChange, affinity, affinityNote} from '../calculations/pump/affinity.ts'
import {flowFromUllage, flowFromUllageNote} from '../calculations/pump/flow-from-ullage.ts'
import {flowVelocity, flowVelocityNote} from '../calculations/pump/flow-velocity.ts'
import {
  headFromPressure,
  headFromPressureNote,
  pressureFromHead,
  pressureFromHeadNote,
} from '../calculations/pump/head-and-pressure.ts'
import {headFromGauge, headFromGaugeNote} from '../calculations/pump/head-from-gauge.ts'
import {pumpPower, pumpPowerNote} from '../calculations/pump/pump-power.ts'
import {kilowatts, metres, metresPerSecond} from '../quantities/named-units.ts'
import {type Quantity, quantityOf} from '../quantities/quantity.ts'
import {type CalculationRun, quantityLine} from './calculate-result.ts'
import {runTestRun, testRunEntry} from './calculate-test-run.ts'
import type {CalculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

/** Head, pressure, power, affinity, flow and the test run of a pump. */
export const pumpCalculations: readonly ListedCalculation[] = [
  {
    note: affinityNote,
    keys: [],
    optionalKeys: ['flow', 'head', 'power', 'from-speed', 'to-speed', 'from-diameter', 'to-diameter'],
    run: runAffinity,
  },
  {
    note: flowFromUllageNote,
    keys: ['start-volume', 'end-volume', 'duration'],
    optionalKeys: [],
    run: runFlowFromUllage,
  },
  {note: flowVelocityNote, keys: ['flow', 'bore'], optionalKeys: [], run: runFlowVelocity},
  {
    note: headFromGaugeNote,
    keys: ['gauge', 'tank', 'density', 'height'],
    optionalKeys: ['velocity', 'flow', 'bore', 'riser-loss'],
    run: runHeadFromGauge,
  },
  {note: headFromPressureNote, keys: ['pressure', 'density'], optionalKeys: [], run: runHeadFromPressure},
  {note: pressureFromHeadNote, keys: ['head', 'density'], optionalKeys: [], run: runPressureFromHead},
  {
    note: pumpPowerNote,
    keys: ['flow', 'head', 'density', 'efficiency'],
    optionalKeys: [],
    run: runPumpPower,
  },
  {...testRunEntry, run: runTestRun},
]

function runAffinity(words: CalculationWords): CalculationRun {
  const flow = words.optional('flow', 'volume-flow')
  const head = words.optional('head', 'length')
  const power = words.optional('power', 'power')
  const scaled = affinity(
    {flow: flow ?? quantityOf('volume-flow', 0), head: head ?? metres(0), power: power ?? kilowatts(0)},
    affinityChange(words),
  )
  return {
    results: [
      quantityLine('ratio', scaled.ratio, '1', 5),
      ...(flow ? [quantityLine('flow', scaled.flow, 'm³/h', 2)] : []),
      ...(head ? [quantityLine('head', scaled.head, 'm', 3)] : []),
      ...(power ? [quantityLine('power', scaled.power, 'kW', 2)] : []),
    ],
    taken: [],
    note: affinityNote,
  }
}

/** The change by speed or by diameter; one of the two is asked for, and not both. */
function affinityChange(words: CalculationWords): AffinityChange {
  const bySpeed = words.has('from-speed') || words.has('to-speed')
  const byDiameter = words.has('from-diameter') || words.has('to-diameter')
  if (bySpeed && byDiameter)
    throw new RangeError('Unexpected speed and diameter together, expected one of them: scale twice for both')
  return byDiameter
    ? {
        kind: 'diameter',
        from: words.quantity('from-diameter', 'length'),
        to: words.quantity('to-diameter', 'length'),
      }
    : {
        kind: 'speed',
        from: words.quantity('from-speed', 'rotational-speed'),
        to: words.quantity('to-speed', 'rotational-speed'),
      }
}

function runFlowFromUllage(words: CalculationWords): CalculationRun {
  const flow = flowFromUllage({
    startVolume: words.quantity('start-volume', 'volume'),
    endVolume: words.quantity('end-volume', 'volume'),
    duration: words.quantity('duration', 'time'),
  })
  return {results: [quantityLine('flow', flow, 'm³/h', 1)], taken: [], note: flowFromUllageNote}
}

function runFlowVelocity(words: CalculationWords): CalculationRun {
  const velocity = flowVelocity({
    flow: words.quantity('flow', 'volume-flow'),
    bore: words.quantity('bore', 'length'),
  })
  return {results: [quantityLine('velocity', velocity, 'm/s', 3)], taken: [], note: flowVelocityNote}
}

function runHeadFromGauge(words: CalculationWords): CalculationRun {
  const riserLoss = words.optional('riser-loss', 'length') ?? metres(0)
  const velocity = velocityOf(words)
  const result = headFromGauge({
    gauge: words.quantity('gauge', 'gauge-pressure'),
    tankPressure: words.quantity('tank', 'gauge-pressure'),
    density: words.quantity('density', 'density'),
    gaugeHeight: words.quantity('height', 'length'),
    velocity,
    riserLoss,
  })
  return {
    results: [
      quantityLine('head', result.head, 'm', 2),
      quantityLine('pressure-head', result.pressureHead, 'm', 2),
      quantityLine('velocity-head', result.velocityHead, 'm', 3),
    ],
    taken: notGiven(words, [
      quantityLine('velocity', velocity, 'm/s', 3),
      quantityLine('riser-loss', riserLoss, 'm', 1),
    ]),
    note: headFromGaugeNote,
  }
}

/** Velocity as given, or of the flow in the bore; nothing where neither is given, which is told. */
function velocityOf(words: CalculationWords): Quantity<'speed'> {
  const velocity = words.optional('velocity', 'speed')
  const byFlow = words.has('flow') || words.has('bore')
  if (velocity && byFlow)
    throw new RangeError(
      'Unexpected velocity beside flow or bore, expected the velocity alone or flow and bore',
    )
  if (!byFlow) return velocity ?? metresPerSecond(0)
  return flowVelocity({
    flow: words.quantity('flow', 'volume-flow'),
    bore: words.quantity('bore', 'length'),
  })
}

function runHeadFromPressure(words: CalculationWords): CalculationRun {
  const head = headFromPressure({
    pressure: words.quantity('pressure', 'pressure-difference'),
    density: words.quantity('density', 'density'),
  })
  return {results: [quantityLine('head', head, 'm', 3)], taken: [], note: headFromPressureNote}
}

function runPressureFromHead(words: CalculationWords): CalculationRun {
  const pressure = pressureFromHead({
    head: words.quantity('head', 'length'),
    density: words.quantity('density', 'density'),
  })
  return {results: [quantityLine('pressure', pressure, 'bar', 3)], taken: [], note: pressureFromHeadNote}
}

function runPumpPower(words: CalculationWords): CalculationRun {
  const result = pumpPower({
    flow: words.quantity('flow', 'volume-flow'),
    head: words.quantity('head', 'length'),
    density: words.quantity('density', 'density'),
    efficiency: words.quantity('efficiency', 'ratio'),
  })
  return {
    results: [
      quantityLine('shaft-power', result.shaftPower, 'kW', 2),
      quantityLine('liquid-power', result.liquidPower, 'kW', 2),
    ],
    taken: [],
    note: pumpPowerNote,
  }
}
