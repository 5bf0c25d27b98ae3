import {bottleContent, bottleContentNote} from '../calculations/gas/bottle-content.ts'
import {bottleCount} from '../calculations/gas/bottle-count.ts'
import {purgeGas, purgeGasNote} from '../calculations/gas/purge-gas.ts'
import {purgeLowerBound, purgeLowerBoundNote} from '../calculations/gas/purge-lower-bound.ts'
import {purgeTime, purgeTimeNote} from '../calculations/gas/purge-time.ts'
import {absoluteFromGauge, standardAtmosphere} from '../calculations/gas/standard-air.ts'
import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Cargo, HungPosition, Vessel} from '../handbook-model/vessel-content.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {quantityOf} from '../quantities/quantity.ts'
import {calculationSources} from './calculation-sources.ts'
import {computedValue} from './computed-value.ts'
import {roundedUp, tracedConstant, tracedStep} from './value-builder.ts'

/** The purge of one pump, for the densest cargo of the list and for each cargo of it. */
export interface PurgeBench {
  readonly content: Content
  readonly vessel: Vessel
  readonly position: HungPosition
  /** Gas volume of the cofferdam. */
  readonly volume: ComputedValue
  /** Highest purge pressure. */
  readonly upperBound: ComputedValue
}

/** Values of a purge. Cargo changes each voyage: the densest cargo of the list stands in the step, each has its line. */
export function purgeValues(bench: PurgeBench, files: ContentFiles): readonly ComputedValue[] {
  const cargoes = bench.vessel.cargoes.map(({id}) => {
    const cargo = bench.content.tables.cargoes.rows.find((row) => row.id === id)
    if (!cargo) throw new Error(`Unexpected cargo \`${id}\`, expected one that the check has proved`)
    return cargo
  })
  const [densest] = [...cargoes].sort((a, b) => densityOf(b) - densityOf(a))
  const freeGas = freeGasValue(bench, files)
  return [
    ...(densest
      ? [
          leastPressure(
            'purge.lower-bound',
            `densest cargo of the list, ${densest.title}`,
            densest,
            bench,
            files,
          ),
        ]
      : []),
    ...cargoes.map((cargo) => leastPressure(`purge.least-${cargo.id}`, cargo.title, cargo, bench, files)),
    freeGas,
    timeValue(bench, freeGas, files),
    perBottleValue(bench, freeGas, files),
  ]
}

/** Not known counts as the densest: nothing is assumed to be light. */
function densityOf({density}: Cargo): number {
  return density.kind === 'known' ? density.quantity.si : Number.POSITIVE_INFINITY
}

function leastPressure(
  id: string,
  condition: string,
  cargo: Cargo,
  {content, position}: PurgeBench,
  files: ContentFiles,
): ComputedValue {
  return computedValue(
    {
      id,
      title: `lowest purge pressure, ${condition}`,
      ofDesign: false,
      place: position.stackLength.place,
      where: position.tag,
      note: purgeLowerBoundNote,
      sources: calculationSources['purge-lower-bound'],
      inputs: {
        density: {symbol: 'ρ', title: `density of ${cargo.title}`, datum: cargo.density},
        lift: {symbol: 'L', title: 'stack length', datum: position.stackLength},
        margin: {
          symbol: 'margin',
          title: 'margin by house rule',
          datum: content.office.house.purgeLiftMargin,
        },
      },
      constants: [tracedConstant('g', 'standard gravity', '9.80665 m/s²', 'definition')],
      compute: (known) => ({
        quantity: roundedUp(purgeLowerBound(known), 'bar(g)', 2),
        unit: 'bar(g)',
        decimals: 2,
        rounding: 'up to 2 decimals of bar(g), never lower',
        ...(id === 'purge.lower-bound' ? {condition} : {}),
      }),
    },
    files,
  )
}

function freeGasValue(
  {content, position, volume, upperBound}: PurgeBench,
  files: ContentFiles,
): ComputedValue {
  return computedValue(
    {
      id: 'purge.free-gas',
      title: 'free gas of one purge',
      ofDesign: false,
      place: volume.place,
      where: position.tag,
      note: purgeGasNote,
      formula: ['V free = n·V·(p + p ref)/p ref'],
      sources: calculationSources['purge-gas'],
      inputs: {
        changes: {symbol: 'n', title: 'gas changes by house rule', datum: content.office.house.purgeChanges},
        volume: {symbol: 'V', title: 'gas volume of the cofferdam', kind: 'volume', unit: 'l', value: volume},
        pressure: {
          symbol: 'p',
          title: 'highest purge pressure',
          kind: 'gauge-pressure',
          unit: 'bar(g)',
          value: upperBound,
        },
      },
      constants: [tracedConstant('p ref', 'standard atmosphere', '1.01325 bar(a)', 'definition')],
      compute: ({changes, volume: space, pressure}) => ({
        quantity: roundedUp(
          purgeGas({
            volume: space,
            pressure: absoluteFromGauge(pressure, standardAtmosphere),
            changes,
            reference: standardAtmosphere,
          }),
          'l',
          0,
        ),
        unit: 'l',
        decimals: 0,
        condition: 'at the highest purge pressure',
        rounding: 'up to a whole l, never lower',
      }),
    },
    files,
  )
}

function timeValue(
  {content, vessel, position}: PurgeBench,
  freeGas: ComputedValue,
  files: ContentFiles,
): ComputedValue {
  return computedValue(
    {
      id: 'purge.time',
      title: 'shortest purge with gas flow at the outlet',
      ofDesign: false,
      place: freeGas.place,
      where: position.tag,
      note: purgeTimeNote,
      formula: ['t = max(V free/q, t least)'],
      sources: calculationSources['purge-time'],
      inputs: {
        freeGas: {
          symbol: 'V free',
          title: 'free gas of one purge',
          kind: 'volume',
          unit: 'l',
          value: freeGas,
        },
        freeFlow: {symbol: 'q', title: 'free gas at the purge supply', datum: vessel.supplies.purgeGasFlow},
        least: {
          symbol: 't least',
          title: 'shortest purge by house rule',
          datum: content.office.house.purgeLeast,
        },
      },
      compute: (known) => {
        const {time, governs} = purgeTime(known)
        return {
          quantity: roundedUp(time, 'min', 0),
          unit: 'min',
          decimals: 0,
          condition: governs === 'least' ? 'the house rule governs' : 'the gas flow governs',
          rounding: 'up to a whole minute, never shorter',
        }
      },
    },
    files,
  )
}

/** Nitrogen at full pressure holds less than an ideal gas. Source: from memory, about 5 % at 200 bar. */
const compressibility = quantityOf('ratio', 1.05)

function perBottleValue(
  {vessel, position, upperBound}: PurgeBench,
  freeGas: ComputedValue,
  files: ContentFiles,
): ComputedValue {
  return computedValue(
    {
      id: 'purge.per-bottle',
      title: 'purges from one bottle',
      ofDesign: false,
      place: freeGas.place,
      where: position.tag,
      note: bottleContentNote,
      formula: [
        'V free = V bottle·((p full + p ref)/Z − (p least + p ref))/p ref',
        'purges = V free/V purge, whole ones',
      ],
      sources: calculationSources['bottle-content'],
      inputs: {
        freeGas: {
          symbol: 'V purge',
          title: 'free gas of one purge',
          kind: 'volume',
          unit: 'l',
          value: freeGas,
        },
        bottle: {symbol: 'V bottle', title: 'volume of a gas bottle', datum: vessel.supplies.bottleVolume},
        full: {symbol: 'p full', title: 'pressure of a full bottle', datum: vessel.supplies.bottlePressure},
        least: {
          symbol: 'p least',
          title: 'highest purge pressure',
          kind: 'gauge-pressure',
          unit: 'bar(g)',
          value: upperBound,
        },
      },
      constants: [
        tracedConstant('Z', 'compressibility of nitrogen at full pressure', '1.05', 'from memory'),
        tracedConstant('p ref', 'standard atmosphere', '1.01325 bar(a)', 'definition'),
      ],
      compute: ({freeGas: needed, bottle, full, least}) => {
        const content = bottleContent({
          volume: bottle,
          full: absoluteFromGauge(full, standardAtmosphere),
          least: absoluteFromGauge(least, standardAtmosphere),
          compressibility,
          reference: standardAtmosphere,
        })
        const {purgesPerBottle} = bottleCount({
          freeGas: needed,
          purges: quantityOf('count', 1),
          bottleContent: content,
        })
        return {
          quantity: purgesPerBottle,
          unit: '',
          decimals: 0,
          rounding: 'down to whole purges',
          steps: [tracedStep('V free', 'free gas of a full bottle', content, 'l')],
        }
      },
    },
    files,
  )
}
