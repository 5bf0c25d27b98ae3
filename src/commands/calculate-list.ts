import {coarseThread} from '../calculations/bolted-joints/coarse-threads.ts'
import {hexagonHead, yieldStressOf} from '../calculations/bolted-joints/hexagon-heads.ts'
import {threadGeometry, threadGeometryNote} from '../calculations/bolted-joints/thread-geometry.ts'
import {tighteningOrder, tighteningOrderNote} from '../calculations/bolted-joints/tightening-order.ts'
import {tighteningTorque, tighteningTorqueNote} from '../calculations/bolted-joints/tightening-torque.ts'
import type {CalculationNote} from '../calculations/calculation-note.ts'
import {runningClearance, runningClearanceNote} from '../calculations/clearances/running-clearance.ts'
import {annulusVolume, annulusVolumeNote} from '../calculations/gas/annulus-volume.ts'
import {pressureHold, pressureHoldNote} from '../calculations/gas/pressure-hold.ts'
import {purgeUpperBound, purgeUpperBoundNote} from '../calculations/gas/purge-upper-bound.ts'
import {standardAtmosphere} from '../calculations/gas/standard-air.ts'
import {tightnessHoldTime, tightnessHoldTimeNote} from '../calculations/gas/tightness-hold-time.ts'
import {degreesCelsius, minutes, percent} from '../quantities/named-units.ts'
import {printQuantity} from '../quantities/print-quantity.ts'
import type {AnyQuantity, Quantity} from '../quantities/quantity.ts'
import type {CalculationWords} from './calculate-words.ts'

/** One figure of a result. */
export interface ResultLine {
  readonly name: string
  readonly value: number
  readonly figure: string
  readonly unit: string
}

/** A calculation of the library as the command line knows it. */
export interface ListedCalculation {
  readonly note: CalculationNote
  readonly keys: readonly string[]
  readonly optionalKeys: readonly string[]
  run(words: CalculationWords): readonly ResultLine[]
}

function line(name: string, quantity: AnyQuantity, unit: string, decimals: number): ResultLine {
  return {name, value: quantity.si, ...printQuantity(quantity, unit, decimals)}
}

function ratioOf(words: CalculationWords, key: string): Quantity<'ratio'> {
  return words.quantity(key, 'ratio')
}

/** All calculations, sorted by name. */
export const listedCalculations: readonly ListedCalculation[] = [
  {
    note: annulusVolumeNote,
    keys: ['outer', 'inner', 'length'],
    optionalKeys: [],
    run: (words) => [
      line(
        'volume',
        annulusVolume({
          outerDiameter: words.quantity('outer', 'length'),
          innerDiameter: words.quantity('inner', 'length'),
          length: words.quantity('length', 'length'),
        }),
        'l',
        3,
      ),
    ],
  },
  {
    note: runningClearanceNote,
    keys: ['bores', 'hubs'],
    optionalKeys: [],
    run: (words) => {
      const result = runningClearance({
        bores: words.list('bores', 'length'),
        hubs: words.list('hubs', 'length'),
      })
      return [
        line('clearance', result.mean, 'mm diametral', 3),
        line('smallest', result.smallest, 'mm diametral', 3),
        line('largest', result.largest, 'mm diametral', 3),
        line('bore-ovality', result.boreOvality, 'mm', 3),
        line('hub-ovality', result.hubOvality, 'mm', 3),
      ]
    },
  },
  {
    note: pressureHoldNote,
    keys: ['start', 'end', 'start-temperature', 'end-temperature'],
    optionalKeys: ['start-barometer', 'end-barometer', 'volume', 'duration'],
    run: runPressureHold,
  },
  {
    note: purgeUpperBoundNote,
    keys: ['rating', 'lip', 'tank', 'regulator'],
    optionalKeys: [],
    run: (words) => {
      const {bound} = purgeUpperBound({
        cofferdamRating: words.quantity('rating', 'gauge-pressure'),
        lipReverseLimit: words.quantity('lip', 'pressure-difference'),
        lowestTankPressure: words.quantity('tank', 'gauge-pressure'),
        regulatorMaximum: words.quantity('regulator', 'gauge-pressure'),
      })
      return [line('upper-bound', bound, 'bar(g)', 3)]
    },
  },
  {
    note: threadGeometryNote,
    keys: ['size'],
    optionalKeys: ['pitch'],
    run: (words) => {
      const thread = coarseThread(words.text('size'))
      const geometry = threadGeometry({...thread, pitch: words.optional('pitch', 'length') ?? thread.pitch})
      return [
        line('pitch-diameter', geometry.pitchDiameter, 'mm', 3),
        line('minor-diameter', geometry.minorDiameter, 'mm', 3),
        line('core-diameter', geometry.coreDiameter, 'mm', 3),
        line('stress-area', geometry.stressArea, 'mm²', 2),
        line('core-area', geometry.coreArea, 'mm²', 2),
      ]
    },
  },
  {
    note: tighteningOrderNote,
    keys: ['bolts'],
    optionalKeys: [],
    run: (words) => {
      const order = tighteningOrder(Number(words.text('bolts')))
      return [{name: 'order', value: order.length, figure: order.join(' '), unit: ''}]
    },
  },
  {
    note: tighteningTorqueNote,
    keys: ['size', 'class', 'friction'],
    optionalKeys: ['head-friction', 'utilisation', 'edition'],
    run: runTighteningTorque,
  },
  {
    note: tightnessHoldTimeNote,
    keys: ['volume', 'test-pressure', 'gauge-step', 'temperature-uncertainty', 'allowed-leak'],
    optionalKeys: ['temperature', 'barometer', 'least'],
    run: runHoldTime,
  },
]

function runPressureHold(words: CalculationWords): readonly ResultLine[] {
  const volume = words.optional('volume', 'volume')
  const duration = words.optional('duration', 'time')
  const result = pressureHold({
    start: words.quantity('start', 'gauge-pressure'),
    end: words.quantity('end', 'gauge-pressure'),
    startTemperature: words.quantity('start-temperature', 'temperature'),
    endTemperature: words.quantity('end-temperature', 'temperature'),
    startBarometer: words.optional('start-barometer', 'absolute-pressure') ?? standardAtmosphere,
    endBarometer: words.optional('end-barometer', 'absolute-pressure') ?? standardAtmosphere,
    ...(volume ? {volume} : {}),
    ...(duration ? {duration} : {}),
  })
  return [
    line('expected-end', result.expectedEnd, 'bar(g)', 5),
    line('corrected-loss', result.correctedLoss, 'bar', 5),
    line('change-per-kelvin', result.changePerKelvin, 'mbar', 2),
    ...(result.leakRate ? [line('leak-rate', result.leakRate, 'Pa·m³/s', 5)] : []),
    ...(result.leakFlow ? [line('leak-flow', result.leakFlow, 'ml/min', 1)] : []),
  ]
}

function runTighteningTorque(words: CalculationWords): readonly ResultLine[] {
  const size = words.text('size')
  const thread = coarseThread(size)
  const edition = words.optionalText('edition', '2003')
  if (edition !== '2003' && edition !== '1986')
    throw new RangeError(`Unexpected edition \`${edition}\`, expected 2003 or 1986`)
  const threadFriction = ratioOf(words, 'friction')
  const result = tighteningTorque({
    thread,
    ...hexagonHead(size),
    yieldStress: yieldStressOf(words.text('class'), thread.nominalDiameter),
    utilisation: words.optional('utilisation', 'ratio') ?? percent(90),
    threadFriction,
    headFriction: words.optional('head-friction', 'ratio') ?? threadFriction,
    edition,
  })
  return [line('torque', result.torque, 'N·m', 1), line('preload', result.preload, 'kN', 2)]
}

function runHoldTime(words: CalculationWords): readonly ResultLine[] {
  const result = tightnessHoldTime({
    volume: words.quantity('volume', 'volume'),
    testPressure: words.quantity('test-pressure', 'gauge-pressure'),
    barometer: words.optional('barometer', 'absolute-pressure') ?? standardAtmosphere,
    gaugeResolution: words.quantity('gauge-step', 'pressure-difference'),
    temperature: words.optional('temperature', 'temperature') ?? degreesCelsius(20),
    temperatureUncertainty: words.quantity('temperature-uncertainty', 'temperature-difference'),
    allowedLeak: words.quantity('allowed-leak', 'volume-flow'),
    least: words.optional('least', 'time') ?? minutes(30),
  })
  return [
    line('hold-time', result.holdTime, 'min', 1),
    line('smallest-leak', result.smallestLeak, 'ml/min', 2),
  ]
}
