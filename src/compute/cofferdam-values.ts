import type {CalculationNote} from '../calculations/calculation-note.ts'
import {allowedDrop, allowedDropNote} from '../calculations/gas/allowed-drop.ts'
import {annulusVolume, annulusVolumeNote} from '../calculations/gas/annulus-volume.ts'
import {pressureHold, pressureHoldNote} from '../calculations/gas/pressure-hold.ts'
import {
  purgeUpperBound,
  purgeUpperBoundNote,
  tightnessTestPressure,
} from '../calculations/gas/purge-upper-bound.ts'
import {standardAtmosphere} from '../calculations/gas/standard-air.ts'
import {tightnessHoldTime, tightnessHoldTimeNote} from '../calculations/gas/tightness-hold-time.ts'
import type {CalculationTrace, ComputedValue, TracedInput} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Datum} from '../handbook-model/datum.ts'
import type {HungDesign} from '../handbook-model/design-content.ts'
import type {HungPosition, Tank, Vessel} from '../handbook-model/vessel-content.ts'
import {degreesCelsius} from '../quantities/named-units.ts'
import {type Quantity, type QuantityKind, quantityOf} from '../quantities/quantity.ts'
import {calculationSources} from './calculation-sources.ts'
import {
  computedBefore,
  knownValue,
  missingOf,
  type NamedDatum,
  placeOfMissing,
  roundedDown,
  roundedUp,
  sourceUse,
  tracedCalculation,
  tracedConstant,
  tracedDatum,
  tracedStep,
  unknownValue,
  type ValueFacts,
} from './value-builder.ts'

/** Reference temperature of the tightness test in the explanation; the sheet corrects for the measured one. */
const referenceTemperature = degreesCelsius(20)

const neverHigher = 'down to 2 decimals of bar(g), never higher'

/** What the tightness test of one pump is computed from. */
interface Bench {
  readonly content: Content
  readonly where: string
  readonly position: HungPosition
  readonly design: HungDesign
  readonly tank: Tank
  readonly vessel: Vessel
}

/** Values of the cofferdam and its tightness test for one pump position. */
export function cofferdamValues(
  vessel: Vessel,
  position: HungPosition,
  tank: Tank,
  design: HungDesign,
  content: Content,
): readonly ComputedValue[] {
  const bench: Bench = {content, where: position.tag, position, design, tank, vessel}
  const volume = volumeValue(bench)
  const bound = upperBoundValue(bench)
  const pressure = testPressureValue(bench, bound)
  const hold = holdValues(
    bench,
    quantityOfValue(volume, 'volume'),
    quantityOfValue(pressure, 'gauge-pressure'),
    [volume, pressure],
  )
  return [volume, bound, pressure, ...hold, perKelvinValue(pressure)]
}

function facts(
  name: string,
  title: string,
  place: ValueFacts['place'],
  inputs: readonly NamedDatum<QuantityKind>[],
  sources: readonly string[],
): ValueFacts {
  const own = inputs.flatMap(({datum}) => (datum.kind === 'known' ? [sourceUse(datum.origin)] : []))
  return {
    id: `cofferdam.${name}`,
    title,
    ofDesign: false,
    place,
    sources: [...own, ...sources.map((source) => ({source}))].filter(
      (use, index, all) => all.findIndex((one) => one.source === use.source) === index,
    ),
  }
}

function named<K extends QuantityKind>(symbol: string, title: string, datum: Datum<K>): NamedDatum<K> {
  return {symbol, title, datum}
}

function quantityOfValue<K extends QuantityKind>(value: ComputedValue, kind: K): Quantity<K> | undefined {
  const {result} = value
  return result.kind === 'known' && result.quantity?.kind === kind
    ? quantityOf(kind, result.quantity.si)
    : undefined
}

function missingIn(values: readonly ComputedValue[]): readonly string[] {
  return values.flatMap((value) => (value.result.kind === 'not-known' ? value.result.missing : []))
}

function placeOfUnknown(values: readonly ComputedValue[]): ComputedValue['place'] | undefined {
  return values.find((value) => value.result.kind === 'not-known')?.place
}

function volumeValue(bench: Bench): ComputedValue {
  const {cofferdam} = bench.design
  const outer = named('D', 'bore of the outer pipe', cofferdam.outerPipeBore)
  const inner = named('d', 'outside diameter of the inner pipe', cofferdam.innerPipeOutside)
  const length = named('L', 'stack length', bench.position.stackLength)
  const head = named('V head', 'cofferdam volume in the pump head', cofferdam.headVolume)
  const inputs = [outer, inner, length, head]
  const own = facts(
    'volume',
    'gas volume of the cofferdam',
    bench.position.stackLength.place,
    inputs,
    calculationSources['annulus-volume'],
  )
  const traced = inputs.map((one) => tracedDatum(one))
  const {datum: outerDatum} = outer
  const {datum: innerDatum} = inner
  const {datum: lengthDatum} = length
  const {datum: headDatum} = head
  if (
    outerDatum.kind === 'not-known' ||
    innerDatum.kind === 'not-known' ||
    lengthDatum.kind === 'not-known' ||
    headDatum.kind === 'not-known'
  ) {
    return unknownValue(missingOf(inputs, bench.where), {
      ...own,
      place: placeOfMissing(inputs) ?? own.place,
      calculation: tracedCalculation(annulusVolumeNote, traced, []),
    })
  }
  const annulus = annulusVolume({
    outerDiameter: outerDatum.quantity,
    innerDiameter: innerDatum.quantity,
    length: lengthDatum.quantity,
  })
  const volume = quantityOf('volume', annulus.si + headDatum.quantity.si)
  const calculation = tracedCalculation(
    {
      ...annulusVolumeNote,
      formula: [...annulusVolumeNote.formula, 'V cofferdam = V + V head'],
      symbols: [
        ...annulusVolumeNote.symbols,
        {symbol: 'V cofferdam', meaning: 'gas volume of the cofferdam'},
      ],
    },
    traced,
    [tracedStep('V', 'annulus over the stack length', annulus, 'l')],
  )
  return knownValue(volume, 'l', 1, {...own, calculation})
}

function upperBoundValue(bench: Bench): ComputedValue {
  const {cofferdam} = bench.design
  const rating = named('p rating', 'rating of the cofferdam', cofferdam.rating)
  const lip = named('p lip', 'pressure that the seal lip holds from behind', cofferdam.lipReverseLimit)
  const tank = named(
    'p tank lowest',
    'setting of the vacuum valve of the tank',
    bench.tank.vacuumValveSetting,
  )
  const regulator = named(
    'p regulator',
    'maximum of the purge regulator',
    bench.vessel.hydraulics.purgeRegulatorMaximum,
  )
  const inputs = [rating, lip, tank, regulator]
  const own = facts(
    'upper-bound',
    'highest pressure in the cofferdam with an empty tank',
    cofferdam.place,
    inputs,
    calculationSources['purge-upper-bound'],
  )
  const calculation = tracedCalculation(
    purgeUpperBoundNote,
    inputs.map((one) => tracedDatum(one)),
    [],
  )
  const {datum: a} = rating
  const {datum: b} = lip
  const {datum: c} = tank
  const {datum: d} = regulator
  if (a.kind === 'not-known' || b.kind === 'not-known' || c.kind === 'not-known' || d.kind === 'not-known') {
    const place = placeOfMissing(inputs) ?? own.place
    return unknownValue(missingOf(inputs, bench.where), {...own, place, calculation})
  }
  const bound = purgeUpperBound({
    cofferdamRating: a.quantity,
    lipReverseLimit: b.quantity,
    lowestTankPressure: c.quantity,
    regulatorMaximum: d.quantity,
  })
  return knownValue(roundedDown(bound.bound, 'bar(g)', 2), 'bar(g)', 2, {
    ...own,
    calculation,
    condition: `the ${bound.governs} governs`,
    rounding: neverHigher,
  })
}

function testPressureValue(bench: Bench, bound: ComputedValue): ComputedValue {
  const house = named(
    'p house',
    'house maximum of the test pressure',
    bench.content.office.house.tightnessTestPressure,
  )
  const own = facts(
    'test-pressure',
    'test pressure of the cofferdam',
    house.datum.place,
    [house],
    calculationSources['purge-upper-bound'],
  )
  const upper = quantityOfValue(bound, 'gauge-pressure')
  const inputs = [tracedDatum(house)]
  const base = {
    name: 'purge-upper-bound',
    words: 'the house maximum, unless the upper bound of the cofferdam lies lower',
    formula: ['p test = min(p house, p upper)'],
    symbols: [
      {symbol: 'p test', meaning: 'test pressure'},
      {symbol: 'p upper', meaning: 'upper bound of the cofferdam'},
    ],
  }
  if (!upper || house.datum.kind === 'not-known') {
    return unknownValue([...missingIn([bound]), ...missingOf([house], bench.where)], {
      ...own,
      place: placeOfMissing([house]) ?? bound.place,
      calculation: tracedCalculation(base, inputs, []),
    })
  }
  const lowest = tightnessTestPressure(house.datum.quantity, {
    bound: upper,
    governs: 'upper bound of the cofferdam',
  })
  return knownValue(roundedDown(lowest.bound, 'bar(g)', 2), 'bar(g)', 2, {
    ...own,
    calculation: tracedCalculation(base, inputs, [
      computedBefore(bound.id, tracedStep('p upper', 'upper bound of the cofferdam', upper, 'bar(g)', 4)),
    ]),
    condition: `the ${lowest.governs} governs`,
    rounding: neverHigher,
  })
}

const [hiddenLine = '', timeLine = '', leakLine = ''] = tightnessHoldTimeNote.formula
const holdTimeNote: CalculationNote = {...tightnessHoldTimeNote, formula: [hiddenLine, timeLine]}
const smallestLeakNote: CalculationNote = {...tightnessHoldTimeNote, formula: [hiddenLine, leakLine]}

function holdValues(
  bench: Bench,
  volume: Quantity<'volume'> | undefined,
  pressure: Quantity<'gauge-pressure'> | undefined,
  before: readonly ComputedValue[],
): readonly ComputedValue[] {
  const gauge = bench.content.tools.get('test-gauge')?.instrument
  const thermometer = bench.content.tools.get('thermometer')?.instrument
  const missingTool: Datum<'pressure-difference'> = {
    kind: 'not-known',
    reason: 'tools.yaml states no instrument class',
    place: bench.design.cofferdam.place,
  }
  const step = named('gauge step', 'smallest step of the test gauge', gauge?.graduation ?? missingTool)
  const thermal = named('uT', 'uncertainty of the thermometer', thermometer?.uncertainty ?? missingTool)
  const leak = named('q allowed', 'allowed leak', bench.design.cofferdam.allowedLeak)
  const least = named(
    't least',
    'shortest hold time by house rule',
    bench.content.office.house.tightnessHoldLeast,
  )
  const inputs = [step, thermal, leak, least]
  const own = (name: string, title: string): ValueFacts =>
    facts(name, title, leak.datum.place, inputs, calculationSources['tightness-hold-time'])
  const inputLines = [
    ...inputs.map((one) => tracedDatum(one)),
    tracedConstant('T', 'reference temperature', '293.15 K (20 °C)', 'stated reference'),
    tracedConstant(
      'p atm',
      'standard atmosphere',
      '1.01325 bar(a)',
      'definition; a barometer reading replaces it',
    ),
  ]
  const titles = [
    ['hold-time', 'hold time of the tightness test', holdTimeNote],
    ['smallest-leak', 'smallest leak this test can show', smallestLeakNote],
    ['allowed-drop', 'allowed drop after correction', allowedDropNote],
  ] as const
  const unknown = (): readonly ComputedValue[] => {
    const missing = [...missingIn(before), ...missingOf(inputs, bench.where)]
    return titles.map(([name, title, note]) =>
      unknownValue(missing, {
        ...own(name, title),
        place: placeOfMissing(inputs) ?? placeOfUnknown(before) ?? leak.datum.place,
        calculation: tracedCalculation(note, inputLines, []),
      }),
    )
  }
  const {datum: stepDatum} = step
  const {datum: thermalDatum} = thermal
  const {datum: leakDatum} = leak
  const {datum: leastDatum} = least
  if (
    !volume ||
    !pressure ||
    leakDatum.kind === 'not-known' ||
    leastDatum.kind === 'not-known' ||
    stepDatum.kind === 'not-known' ||
    thermalDatum.kind === 'not-known'
  )
    return unknown()
  if (
    (stepDatum.quantity.kind !== 'pressure-difference' && stepDatum.quantity.kind !== 'gauge-pressure') ||
    thermalDatum.quantity.kind !== 'temperature-difference'
  )
    return unknown()
  const hold = tightnessHoldTime({
    volume,
    testPressure: pressure,
    barometer: standardAtmosphere,
    gaugeResolution: quantityOf('pressure-difference', stepDatum.quantity.si),
    temperature: referenceTemperature,
    temperatureUncertainty: quantityOf('temperature-difference', thermalDatum.quantity.si),
    allowedLeak: leakDatum.quantity,
    least: leastDatum.quantity,
  })
  const printedHold = roundedUp(hold.holdTime, 'min', 0)
  const smallestLeak = quantityOf('volume-flow', (hold.smallestLeak.si * hold.holdTime.si) / printedHold.si)
  const steps = [
    computedBefore('cofferdam.volume', tracedStep('V', 'gas volume of the cofferdam', volume, 'l')),
    computedBefore('cofferdam.test-pressure', tracedStep('p test', 'test pressure', pressure, 'bar(g)', 4)),
    tracedStep('Δp T', 'pressure that the thermometer can hide', hold.temperatureEffect, 'mbar'),
  ]
  const stepsWithTime = [
    ...steps,
    computedBefore('cofferdam.hold-time', tracedStep('t', 'hold time', printedHold, 'min')),
  ]
  const calculation = tracedCalculation(holdTimeNote, inputLines, steps)
  const drop = allowedDrop({
    volume,
    barometer: standardAtmosphere,
    allowedLeak: leakDatum.quantity,
    duration: printedHold,
  })
  const dropDecimals = drop.si < 1000 ? 1 : 0
  return [
    knownValue(printedHold, 'min', 0, {
      ...own('hold-time', 'hold time of the tightness test'),
      calculation,
      rounding: 'up to a whole minute, never shorter',
      condition:
        hold.governs === 'least' ? 'the house rule governs' : 'allowed leak, gauge and thermometer govern',
    }),
    knownValue(roundedUp(smallestLeak, 'ml/min', 1), 'ml/min', 1, {
      ...own('smallest-leak', 'smallest leak this test can show'),
      calculation: tracedCalculation(smallestLeakNote, inputLines, stepsWithTime),
      rounding: 'up to 1 decimal of ml/min, never smaller',
    }),
    knownValue(roundedDown(drop, 'mbar', dropDecimals), 'mbar', dropDecimals, {
      ...own('allowed-drop', 'allowed drop after correction'),
      condition: 'over the hold time, corrected for temperature and barometer',
      calculation: tracedCalculation(allowedDropNote, inputLines, stepsWithTime),
      rounding: `down to ${dropDecimals === 0 ? 'a whole mbar' : '1 decimal of mbar'}, never higher`,
    }),
  ]
}

function perKelvinValue(pressure: ComputedValue): ComputedValue {
  const own = facts(
    'pressure-per-kelvin',
    'change of pressure for each kelvin of gas temperature',
    pressure.place,
    [],
    calculationSources['pressure-hold'],
  )
  const test = quantityOfValue(pressure, 'gauge-pressure')
  const explain = (steps: readonly TracedInput[]): CalculationTrace =>
    tracedCalculation(
      {...pressureHoldNote, formula: ['p1 abs = p test + p atm', 'Δp per kelvin = p1 abs/T1']},
      [
        tracedConstant('T1', 'reference temperature', '293.15 K (20 °C)', 'stated reference'),
        tracedConstant('p atm', 'standard atmosphere', '1.01325 bar(a)', 'definition'),
      ],
      steps,
    )
  if (!test) return unknownValue(missingIn([pressure]), {...own, calculation: explain([])})
  const hold = pressureHold({
    start: test,
    end: test,
    startTemperature: referenceTemperature,
    endTemperature: referenceTemperature,
    startBarometer: standardAtmosphere,
    endBarometer: standardAtmosphere,
  })
  return knownValue(hold.changePerKelvin, 'mbar', 1, {
    ...own,
    condition: 'at the test pressure and 20 °C',
    calculation: explain([
      computedBefore(pressure.id, tracedStep('p test', 'test pressure', test, 'bar(g)', 4)),
    ]),
  })
}
