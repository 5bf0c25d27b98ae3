import {annulusVolume, annulusVolumeNote} from '../calculations/gas/annulus-volume.ts'
import {bottleContent, bottleContentNote} from '../calculations/gas/bottle-content.ts'
import {fillGas, fillGasNote} from '../calculations/gas/fill-gas.ts'
import {gasLeakRate, gasLeakRateNote} from '../calculations/gas/gas-leak-rate.ts'
import {gasMass, gasMassNote} from '../calculations/gas/gas-mass.ts'
import {nitrogenMolarMass} from '../calculations/gas/molar-gas.ts'
import {molarLeakRate, molarLeakRateNote} from '../calculations/gas/molar-leak-rate.ts'
import {pressureHold, pressureHoldNote} from '../calculations/gas/pressure-hold.ts'
import {standardAtmosphere} from '../calculations/gas/standard-air.ts'
import {tightnessHoldTime, tightnessHoldTimeNote} from '../calculations/gas/tightness-hold-time.ts'
import {degreesCelsius, minutes, ratio} from '../quantities/named-units.ts'
import {quantityOf} from '../quantities/quantity.ts'
import {absoluteWord, barometerOf, referenceOf} from './absolute-pressure-words.ts'
import {type CalculationRun, quantityLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'
import {notesTogether} from './notes-together.ts'

/** Leaks of gas, tightness tests and gas in bottles. */
export const gasCalculations: readonly ListedCalculation[] = [
  {note: annulusVolumeNote, keys: ['outer', 'inner', 'length'], optionalKeys: [], run: runAnnulusVolume},
  {
    note: bottleContentNote,
    keys: ['volume', 'full', 'least'],
    optionalKeys: ['compressibility', 'reference', 'barometer'],
    run: runBottleContent,
  },
  {
    note: fillGasNote,
    keys: ['volume', 'from', 'to'],
    optionalKeys: ['temperature', 'molar-mass', 'reference', 'barometer'],
    run: runFillGas,
  },
  {note: gasLeakRateNote, keys: ['volume', 'drop', 'duration'], optionalKeys: [], run: runGasLeakRate},
  {
    note: gasMassNote,
    keys: ['volume', 'rise', 'temperature'],
    optionalKeys: ['molar-mass'],
    run: runGasMass,
  },
  {
    note: molarLeakRateNote,
    keys: ['volume', 'start', 'end', 'start-temperature', 'end-temperature', 'duration'],
    optionalKeys: ['barometer'],
    run: runMolarLeakRate,
  },
  {
    note: pressureHoldNote,
    keys: ['start', 'end', 'start-temperature', 'end-temperature'],
    optionalKeys: ['start-barometer', 'end-barometer', 'volume', 'duration'],
    run: runPressureHold,
  },
  {
    note: tightnessHoldTimeNote,
    keys: ['volume', 'test-pressure', 'gauge-step', 'temperature-uncertainty', 'allowed-leak'],
    optionalKeys: ['temperature', 'barometer', 'least'],
    run: runTightnessHoldTime,
  },
]

function runAnnulusVolume(words: CalculationWords): CalculationRun {
  const volume = annulusVolume({
    outerDiameter: words.quantity('outer', 'length'),
    innerDiameter: words.quantity('inner', 'length'),
    length: words.quantity('length', 'length'),
  })
  return {results: [quantityLine('volume', volume, 'l', 3)], taken: [], note: annulusVolumeNote}
}

function runBottleContent(words: CalculationWords): CalculationRun {
  const [barometer, reference] = [barometerOf(words), referenceOf(words)]
  const compressibility = words.optional('compressibility', 'ratio') ?? ratio(1)
  const content = bottleContent({
    volume: words.quantity('volume', 'volume'),
    full: absoluteWord(words, 'full', barometer),
    least: absoluteWord(words, 'least', barometer),
    compressibility,
    reference,
  })
  return {
    results: [quantityLine('content', content, 'm³', 3)],
    taken: notGiven(words, [
      quantityLine('compressibility', compressibility, '1', 2),
      quantityLine('reference', reference, 'bar(a)', 5),
      quantityLine('barometer', barometer, 'bar(a)', 5),
    ]),
    note: bottleContentNote,
  }
}

function runFillGas(words: CalculationWords): CalculationRun {
  const [barometer, reference] = [barometerOf(words), referenceOf(words)]
  const molarMass = words.optional('molar-mass', 'molar-mass') ?? nitrogenMolarMass
  const temperature = words.optional('temperature', 'temperature') ?? degreesCelsius(20)
  const volume = words.quantity('volume', 'volume')
  const [from, to] = [absoluteWord(words, 'from', barometer), absoluteWord(words, 'to', barometer)]
  const free = fillGas({volume, from, to, reference})
  const rise = quantityOf('pressure-difference', to.si - from.si)
  return {
    results: [
      quantityLine('free-gas', free, 'm³', 4),
      quantityLine('mass', gasMass({volume, rise, molarMass, temperature}), 'kg', 3),
    ],
    taken: notGiven(words, [
      quantityLine('temperature', temperature, '°C', 1),
      quantityLine('molar-mass', molarMass, 'g/mol', 4),
      quantityLine('reference', reference, 'bar(a)', 5),
      quantityLine('barometer', barometer, 'bar(a)', 5),
    ]),
    note: notesTogether(fillGasNote, gasMassNote),
  }
}

function runGasLeakRate(words: CalculationWords): CalculationRun {
  const {rate, flow} = gasLeakRate({
    volume: words.quantity('volume', 'volume'),
    drop: words.quantity('drop', 'pressure-difference'),
    duration: words.quantity('duration', 'time'),
  })
  return {
    results: [
      quantityLine('leak-rate', rate, 'Pa·m³/s', 8),
      quantityLine('leak-rate-in-mbar', rate, 'mbar·l/s', 7),
      quantityLine('leak-flow', flow, 'ml/min', 3),
    ],
    taken: [],
    note: gasLeakRateNote,
  }
}

function runGasMass(words: CalculationWords): CalculationRun {
  const molarMass = words.optional('molar-mass', 'molar-mass') ?? nitrogenMolarMass
  const mass = gasMass({
    volume: words.quantity('volume', 'volume'),
    rise: words.quantity('rise', 'pressure-difference'),
    temperature: words.quantity('temperature', 'temperature'),
    molarMass,
  })
  return {
    results: [quantityLine('mass', mass, 'kg', 4)],
    taken: notGiven(words, [quantityLine('molar-mass', molarMass, 'g/mol', 4)]),
    note: gasMassNote,
  }
}

function runMolarLeakRate(words: CalculationWords): CalculationRun {
  const barometer = barometerOf(words)
  const rate = molarLeakRate({
    volume: words.quantity('volume', 'volume'),
    start: absoluteWord(words, 'start', barometer),
    end: absoluteWord(words, 'end', barometer),
    startTemperature: words.quantity('start-temperature', 'temperature'),
    endTemperature: words.quantity('end-temperature', 'temperature'),
    duration: words.quantity('duration', 'time'),
  })
  return {
    results: [quantityLine('leak-rate', rate, 'mol/s', 9)],
    taken: notGiven(words, [quantityLine('barometer', barometer, 'bar(a)', 5)]),
    note: molarLeakRateNote,
  }
}

function runPressureHold(words: CalculationWords): CalculationRun {
  const volume = words.optional('volume', 'volume')
  const duration = words.optional('duration', 'time')
  if (volume && !duration) words.text('duration')
  if (duration && !volume) words.text('volume')
  const startBarometer = words.optional('start-barometer', 'absolute-pressure') ?? standardAtmosphere
  const endBarometer = words.optional('end-barometer', 'absolute-pressure') ?? standardAtmosphere
  const result = pressureHold({
    start: words.quantity('start', 'gauge-pressure'),
    end: words.quantity('end', 'gauge-pressure'),
    startTemperature: words.quantity('start-temperature', 'temperature'),
    endTemperature: words.quantity('end-temperature', 'temperature'),
    startBarometer,
    endBarometer,
    ...(volume && duration ? {volume, duration} : {}),
  })
  return {
    results: [
      quantityLine('expected-end', result.expectedEnd, 'bar(g)', 5),
      quantityLine('corrected-loss', result.correctedLoss, 'bar', 5),
      quantityLine('change-per-kelvin', result.changePerKelvin, 'mbar', 2),
      ...(result.leakRate ? [quantityLine('leak-rate', result.leakRate, 'Pa·m³/s', 5)] : []),
      ...(result.leakFlow ? [quantityLine('leak-flow', result.leakFlow, 'ml/min', 1)] : []),
    ],
    taken: notGiven(words, [
      quantityLine('start-barometer', startBarometer, 'bar(a)', 5),
      quantityLine('end-barometer', endBarometer, 'bar(a)', 5),
    ]),
    note: pressureHoldNote,
  }
}

function runTightnessHoldTime(words: CalculationWords): CalculationRun {
  const barometer = words.optional('barometer', 'absolute-pressure') ?? standardAtmosphere
  const temperature = words.optional('temperature', 'temperature') ?? degreesCelsius(20)
  const least = words.optional('least', 'time') ?? minutes(30)
  const result = tightnessHoldTime({
    volume: words.quantity('volume', 'volume'),
    testPressure: words.quantity('test-pressure', 'gauge-pressure'),
    barometer,
    gaugeResolution: words.quantity('gauge-step', 'pressure-difference'),
    temperature,
    temperatureUncertainty: words.quantity('temperature-uncertainty', 'temperature-difference'),
    allowedLeak: words.quantity('allowed-leak', 'volume-flow'),
    least,
  })
  return {
    results: [
      quantityLine('hold-time', result.holdTime, 'min', 1),
      wordLine('governed-by', result.governs === 'least' ? 'house rule' : 'formula'),
      quantityLine('temperature-effect', result.temperatureEffect, 'mbar', 2),
      quantityLine('smallest-leak', result.smallestLeak, 'ml/min', 2),
    ],
    taken: notGiven(words, [
      quantityLine('temperature', temperature, '°C', 1),
      quantityLine('barometer', barometer, 'bar(a)', 5),
      quantityLine('least', least, 'min', 0),
    ]),
    note: tightnessHoldTimeNote,
  }
}
