import {airToVent, airToVentNote} from '../calculations/oil/air-to-vent.ts'
import {circulationTime, circulationTimeNote} from '../calculations/oil/circulation-time.ts'
import {drumCount, drumCountNote} from '../calculations/oil/drum-count.ts'
import {oilCompression, oilCompressionNote} from '../calculations/oil/oil-compression.ts'
import {oilDeviation, oilDeviationNote} from '../calculations/oil/oil-deviation.ts'
import {oilExpansion, oilExpansionNote} from '../calculations/oil/oil-expansion.ts'
import {type OilSpace, type OilVolume, oilVolume, oilVolumeNote} from '../calculations/oil/oil-volume.ts'
import {pumpOilContent, pumpOilContentNote} from '../calculations/oil/pump-oil-content.ts'
import {trappedOilPressure, trappedOilPressureNote} from '../calculations/oil/trapped-oil-pressure.ts'
import {kelvinDifference, litres} from '../quantities/named-units.ts'
import {type Quantity, quantityOf} from '../quantities/quantity.ts'
import {type CalculationRun, quantityLine, type ResultLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'

/** Oil volumes, drums, growth with temperature, trapped oil, flushing and venting. */
export const oilCalculations: readonly ListedCalculation[] = [
  {note: airToVentNote, keys: ['content', 'filled'], optionalKeys: [], run: runAirToVent},
  {note: circulationTimeNote, keys: ['volume', 'flow'], optionalKeys: ['changes'], run: runCirculationTime},
  {note: drumCountNote, keys: ['volume', 'drum'], optionalKeys: [], run: runDrumCount},
  {
    note: oilCompressionNote,
    keys: ['volume', 'bulk-modulus', 'pressure-rise'],
    optionalKeys: [],
    run: runOilCompression,
  },
  {note: oilDeviationNote, keys: ['expected', 'measured'], optionalKeys: [], run: runOilDeviation},
  {note: oilExpansionNote, keys: ['volume', 'expansion', 'rise'], optionalKeys: [], run: runOilExpansion},
  {
    note: oilVolumeNote,
    keys: [],
    optionalKeys: [
      'pipe-bores',
      'pipe-lengths',
      'annulus-outers',
      'annulus-inners',
      'annulus-lengths',
      'casings',
    ],
    run: runOilVolume,
  },
  {
    note: pumpOilContentNote,
    keys: ['length', 'pressure-bore', 'pressure-outside', 'return-bore', 'motor-casing'],
    optionalKeys: ['control-valve'],
    run: runPumpOilContent,
  },
  {
    note: trappedOilPressureNote,
    keys: ['bulk-modulus', 'expansion'],
    optionalKeys: ['warming'],
    run: runTrappedOilPressure,
  },
]

function runAirToVent(words: CalculationWords): CalculationRun {
  const air = airToVent({
    content: words.quantity('content', 'volume'),
    filled: words.quantity('filled', 'volume'),
  })
  return {results: [quantityLine('air', air, 'l', 2)], taken: [], note: airToVentNote}
}

function runCirculationTime(words: CalculationWords): CalculationRun {
  const changes = words.optional('changes', 'count') ?? quantityOf('count', 10)
  const result = circulationTime({
    volume: words.quantity('volume', 'volume'),
    flow: words.quantity('flow', 'volume-flow'),
    changes,
  })
  return {
    results: [
      quantityLine('time', result.time, 'min', 1),
      quantityLine('circulated', result.circulated, 'l', 1),
    ],
    taken: words.has('changes') ? [] : [quantityLine('changes', changes, '', 0)],
    note: circulationTimeNote,
  }
}

function runDrumCount(words: CalculationWords): CalculationRun {
  const result = drumCount({
    volume: words.quantity('volume', 'volume'),
    drum: words.quantity('drum', 'volume'),
  })
  return {
    results: [
      quantityLine('drums', result.drums, '', 0),
      quantityLine('fills', result.fills, '1', 3),
      quantityLine('rest', result.rest, 'l', 1),
    ],
    taken: [],
    note: drumCountNote,
  }
}

function runOilCompression(words: CalculationWords): CalculationRun {
  const result = oilCompression({
    volume: words.quantity('volume', 'volume'),
    bulkModulus: words.quantity('bulk-modulus', 'pressure-difference'),
    pressureRise: words.quantity('pressure-rise', 'pressure-difference'),
  })
  return {
    results: [quantityLine('change', result.change, 'l', 3), quantityLine('share', result.share, '%', 3)],
    taken: [],
    note: oilCompressionNote,
  }
}

function runOilDeviation(words: CalculationWords): CalculationRun {
  const deviation = oilDeviation({
    expected: words.quantity('expected', 'volume'),
    measured: words.quantity('measured', 'volume'),
  })
  return {results: [quantityLine('deviation', deviation, '%', 1)], taken: [], note: oilDeviationNote}
}

function runOilExpansion(words: CalculationWords): CalculationRun {
  const result = oilExpansion({
    volume: words.quantity('volume', 'volume'),
    expansion: words.quantity('expansion', 'thermal-expansion'),
    rise: words.quantity('rise', 'temperature-difference'),
  })
  return {
    results: [
      quantityLine('change', result.change, 'l', 3),
      quantityLine('after', result.after, 'l', 3),
      quantityLine('share', result.share, '%', 3),
    ],
    taken: [],
    note: oilExpansionNote,
  }
}

function runOilVolume(words: CalculationWords): CalculationRun {
  const casings = words.has('casings') ? words.list('casings', 'volume') : []
  const result = oilVolume([
    ...pipesOf(words),
    ...annuliOf(words),
    ...casings.map((volume, index): OilSpace => ({kind: 'casing', name: `casing-${index + 1}`, volume})),
  ])
  return {results: volumeLines(result), taken: [], note: oilVolumeNote}
}

function pipesOf(words: CalculationWords): readonly OilSpace[] {
  const [bores, lengths] = [lengthsOf(words, 'pipe-bores'), lengthsOf(words, 'pipe-lengths')]
  refuseUnlikeLists({'pipe-bores': bores, 'pipe-lengths': lengths})
  return bores.flatMap((bore, index): readonly OilSpace[] => {
    const length = lengths[index]
    return length ? [{kind: 'pipe', name: `pipe-${index + 1}`, bore, length}] : []
  })
}

function annuliOf(words: CalculationWords): readonly OilSpace[] {
  const outers = lengthsOf(words, 'annulus-outers')
  const inners = lengthsOf(words, 'annulus-inners')
  const lengths = lengthsOf(words, 'annulus-lengths')
  refuseUnlikeLists({'annulus-outers': outers, 'annulus-inners': inners, 'annulus-lengths': lengths})
  return outers.flatMap((outerDiameter, index): readonly OilSpace[] => {
    const [innerDiameter, length] = [inners[index], lengths[index]]
    return innerDiameter && length
      ? [{kind: 'annulus', name: `annulus-${index + 1}`, outerDiameter, innerDiameter, length}]
      : []
  })
}

function lengthsOf(words: CalculationWords, key: string): readonly Quantity<'length'>[] {
  return words.has(key) ? words.list(key, 'length') : []
}

function refuseUnlikeLists(lists: Readonly<Record<string, readonly unknown[]>>): void {
  const counts = Object.values(lists).map((list) => list.length)
  if (new Set(counts).size <= 1) return
  const keys = Object.keys(lists).map((key) => `\`${key}\``)
  throw new RangeError(
    `Unexpected ${counts.join(' and ')} values of ${keys.join(', ')}, expected as many of each`,
  )
}

function runPumpOilContent(words: CalculationWords): CalculationRun {
  const controlValve = words.optional('control-valve', 'volume') ?? litres(0)
  const result = pumpOilContent({
    stackLength: words.quantity('length', 'length'),
    pressurePipeBore: words.quantity('pressure-bore', 'length'),
    pressurePipeOutside: words.quantity('pressure-outside', 'length'),
    returnPipeBore: words.quantity('return-bore', 'length'),
    motorCasing: words.quantity('motor-casing', 'volume'),
    controlValve,
  })
  return {
    results: volumeLines(result),
    taken: words.has('control-valve') ? [] : [quantityLine('control-valve', controlValve, 'l', 1)],
    note: pumpOilContentNote,
  }
}

function volumeLines({parts, total}: OilVolume): readonly ResultLine[] {
  return [
    quantityLine('total', total, 'l', 3),
    ...parts.map(({name, volume}) => quantityLine(name, volume, 'l', 3)),
  ]
}

function runTrappedOilPressure(words: CalculationWords): CalculationRun {
  const warming = words.optional('warming', 'temperature-difference') ?? kelvinDifference(1)
  const result = trappedOilPressure({
    bulkModulus: words.quantity('bulk-modulus', 'pressure-difference'),
    expansion: words.quantity('expansion', 'thermal-expansion'),
    warming,
  })
  return {
    results: [
      quantityLine('rise', result.rise, 'bar', 2),
      quantityLine('rise-per-kelvin', result.risePerKelvin, 'bar', 3),
    ],
    taken: words.has('warming') ? [] : [quantityLine('warming', warming, 'K', 0)],
    note: trappedOilPressureNote,
  }
}
