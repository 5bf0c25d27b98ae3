import {circulationTime, circulationTimeNote} from '../calculations/oil/circulation-time.ts'
import {drumCount, drumCountNote} from '../calculations/oil/drum-count.ts'
import {oilDeviationNote} from '../calculations/oil/oil-deviation.ts'
import {pumpOilContent, pumpOilContentNote} from '../calculations/oil/pump-oil-content.ts'
import {trappedOilPressure, trappedOilPressureNote} from '../calculations/oil/trapped-oil-pressure.ts'
import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {OilSpaces} from '../handbook-model/design-content.ts'
import type {HungPosition, Vessel} from '../handbook-model/vessel-content.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {kelvinDifference} from '../quantities/named-units.ts'
import {quantityOf} from '../quantities/quantity.ts'
import {calculationSources} from './calculation-sources.ts'
import {computedValue} from './computed-value.ts'
import {roundedDown, roundedUp, tracedConstant, tracedStep} from './value-builder.ts'

/** What the oil of one pump is computed from. */
interface OilBench {
  readonly content: Content
  readonly vessel: Vessel
  readonly position: HungPosition
  readonly oil: OilSpaces
}

/** Oil of one pump: what it holds, what may come out, drums, flushing, and what the sun does to it. */
export function oilValues(bench: OilBench, files: ContentFiles): readonly ComputedValue[] {
  const volume = volumeValue(bench, files)
  return [
    volume,
    sideValue(bench, volume, 'least', files),
    sideValue(bench, volume, 'most', files),
    drumsValue(bench, volume, files),
    flushTimeValue(bench, volume, files),
    trappedValue(bench, files),
  ]
}

const partTitles: Readonly<Record<string, readonly [string, string]>> = {
  'pressure-pipe': ['V pressure', 'oil in the pressure pipe'],
  'return-annulus': ['V return', 'oil in the return annulus'],
}

function volumeValue({oil, position}: OilBench, files: ContentFiles): ComputedValue {
  return computedValue(
    {
      id: 'oil.volume',
      title: 'oil of the pump and its stack',
      ofDesign: false,
      place: position.stackLength.place,
      where: position.tag,
      note: pumpOilContentNote,
      sources: calculationSources['pump-oil-content'],
      inputs: {
        stackLength: {symbol: 'L', title: 'stack length', datum: position.stackLength},
        pressurePipeBore: {symbol: 'd', title: 'bore of the pressure pipe', datum: oil.pressurePipeBore},
        pressurePipeOutside: {
          symbol: 'do',
          title: 'outside of the pressure pipe',
          datum: oil.pressurePipeOutside,
        },
        returnPipeBore: {symbol: 'D', title: 'bore of the return pipe', datum: oil.returnPipeBore},
        motorCasing: {symbol: 'V motor', title: 'oil in the motor casing', datum: oil.motorCasing},
        controlValve: {symbol: 'V valve', title: 'oil in the local control valve', datum: oil.controlValve},
      },
      compute: (known) => {
        const {parts, total} = pumpOilContent(known)
        return {
          quantity: total,
          unit: 'l',
          decimals: 0,
          steps: parts.flatMap(({name, volume}) => {
            const said = partTitles[name]
            return said ? [tracedStep(said[0], said[1], volume, 'l')] : []
          }),
        }
      },
    },
    files,
  )
}

function sideValue(
  {content, position}: OilBench,
  volume: ComputedValue,
  side: 'least' | 'most',
  files: ContentFiles,
): ComputedValue {
  const sign = side === 'least' ? -1 : 1
  return computedValue(
    {
      id: `oil.${side}`,
      title: side === 'least' ? 'least oil that comes out or goes in' : 'most oil that comes out or goes in',
      ofDesign: false,
      place: volume.place,
      where: position.tag,
      note: oilDeviationNote,
      formula: [side === 'least' ? 'V least = V·(1 − tolerance)' : 'V most = V·(1 + tolerance)'],
      symbols: [
        {symbol: 'V least', meaning: 'least that comes out or goes in'},
        {symbol: 'V most', meaning: 'most that comes out or goes in'},
      ],
      sources: calculationSources['oil-tolerance'],
      inputs: {
        volume: {
          symbol: 'V',
          title: 'oil of the pump and its stack',
          kind: 'volume',
          unit: 'l',
          value: volume,
        },
        tolerance: {
          symbol: 'tolerance',
          title: 'tolerance by house rule',
          datum: content.office.house.oilTolerance,
        },
      },
      compute: ({volume: whole, tolerance}) => {
        const bound = quantityOf('volume', whole.si * (1 + sign * tolerance.si))
        return {
          quantity: side === 'least' ? roundedUp(bound, 'l', 0) : roundedDown(bound, 'l', 0),
          unit: 'l',
          decimals: 0,
          rounding: side === 'least' ? 'up to a whole l' : 'down to a whole l',
        }
      },
    },
    files,
  )
}

function drumsValue({vessel, position}: OilBench, volume: ComputedValue, files: ContentFiles): ComputedValue {
  return computedValue(
    {
      id: 'oil.drums',
      title: 'drums for the oil of the pump',
      ofDesign: false,
      place: volume.place,
      where: position.tag,
      note: drumCountNote,
      formula: drumCountNote.formula.slice(0, 2),
      sources: calculationSources['drum-count'],
      inputs: {
        volume: {
          symbol: 'V',
          title: 'oil of the pump and its stack',
          kind: 'volume',
          unit: 'l',
          value: volume,
        },
        drum: {symbol: 'V drum', title: 'volume of an oil drum', datum: vessel.supplies.drumVolume},
      },
      compute: (known) => ({
        quantity: drumCount(known).drums,
        unit: '',
        decimals: 0,
        rounding: 'up to a whole drum',
      }),
    },
    files,
  )
}

function flushTimeValue(
  {content, vessel, position}: OilBench,
  volume: ComputedValue,
  files: ContentFiles,
): ComputedValue {
  return computedValue(
    {
      id: 'oil.flush-time',
      title: 'shortest time of flushing',
      ofDesign: false,
      place: volume.place,
      where: position.tag,
      note: circulationTimeNote,
      sources: calculationSources['circulation-time'],
      inputs: {
        changes: {symbol: 'n', title: 'oil changes by house rule', datum: content.office.house.flushChanges},
        volume: {
          symbol: 'V',
          title: 'oil of the pump and its stack',
          kind: 'volume',
          unit: 'l',
          value: volume,
        },
        flow: {symbol: 'Q', title: 'oil flow while the pump is flushed', datum: vessel.supplies.flushFlow},
      },
      compute: (known) => ({
        quantity: roundedUp(circulationTime(known).time, 'min', 0),
        unit: 'min',
        decimals: 0,
        rounding: 'up to a whole minute, never shorter',
      }),
    },
    files,
  )
}

function trappedValue({vessel, position}: OilBench, files: ContentFiles): ComputedValue {
  return computedValue(
    {
      id: 'oil.trapped-pressure',
      title: 'rise of the pressure of shut-in oil for each kelvin',
      ofDesign: false,
      place: vessel.place,
      where: position.tag,
      note: trappedOilPressureNote,
      sources: calculationSources['trapped-oil-pressure'],
      inputs: {
        bulkModulus: {symbol: 'K', title: 'bulk modulus of the oil', datum: vessel.supplies.oilBulkModulus},
        expansion: {symbol: 'α', title: 'volume expansion of the oil', datum: vessel.supplies.oilExpansion},
      },
      constants: [tracedConstant('ΔT', 'rise of the temperature', '1 K', 'for each kelvin')],
      compute: (known) => ({
        quantity: trappedOilPressure({...known, warming: kelvinDifference(1)}).risePerKelvin,
        unit: 'bar',
        decimals: 1,
        condition: 'between closed valves, pipe taken as rigid',
      }),
    },
    files,
  )
}
