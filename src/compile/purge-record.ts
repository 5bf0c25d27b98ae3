import {chartWordsEn} from '../figures/charts/chart-words-en.ts'
import {purgeChart} from '../figures/charts/purge-chart.ts'
import {
  judgePurges,
  type PurgeData,
  type PurgePoint,
  type RateLimits,
} from '../figures/charts/purge-results.ts'
import {volumeText} from '../figures/charts/purge-statements.ts'
import type {ChartSection, FieldRow} from '../handbook-model/chart-section.ts'
import {writtenHours} from '../handbook-model/hours-content.ts'
import type {PurgeResult} from '../handbook-model/purge-history.ts'
import {valueIn} from '../quantities/print-quantity.ts'
import {chartJson, field, instrumentTitles, uncertaintyOf} from './chart-section.ts'
import type {PumpDesk} from './desk.ts'
import {recordWordsEn} from './record-words-en.ts'

const words = recordWordsEn.purge
const id = 'purge-results'

/** Purges of this pump. */
export function purgeResults({content, vessel, position}: PumpDesk): readonly PurgeResult[] {
  const results = content.purges.get(vessel.id)?.results ?? []
  return results.filter((one) => one.at.id === position.id)
}

/** The purges of a pump that has a cofferdam; a portable pump has none. */
export function purgeSections(desk: PumpDesk): readonly ChartSection[] {
  if (!desk.tank) return []
  const results = purgeResults(desk)
  const data = dataOf(results, desk)
  const {svg, statements} = purgeChart(data, chartWordsEn)
  const judged = judgePurges(data)
  return [
    {
      id,
      kind: 'purge',
      title: words.title,
      ...(results.length > 0 ? {figure: {svg}} : {}),
      statements,
      json: chartJson(data),
      columns: words.columns,
      rows: results.map((one, index) => ({
        head: one.day,
        cells: [
          words.hours(writtenHours(one.tenths)),
          one.gas ? recordWordsEn.yes : recordWordsEn.no,
          words.volume(volumeText(valueIn(one.volume, 'ml'))),
          chartWordsEn.purge.fluids[one.liquid],
          judged[index]?.verdict ?? '',
          instrumentTitles(one.instruments, desk),
          one.note,
        ],
      })),
      form: formOf(data.results.at(-1)),
    },
  ]
}

function dataOf(results: readonly PurgeResult[], desk: PumpDesk): PurgeData {
  const limits = (measure: 'rate' | 'day'): PurgeData['hourly'] => ({
    oil: limitsOf('oil', measure, desk),
    cargo: limitsOf('cargo', measure, desk),
  })
  const large = numberOf('setting.purge-large-volume', 'volume', 'ml', desk)
  return {
    what: words.what(desk.position.tag),
    results: results.map((one) => pointOf(one, desk)),
    ...(large === undefined ? {} : {large}),
    hourly: limits('rate'),
    daily: limits('day'),
  }
}

function pointOf({day, tenths, gas, volume, liquid, instruments}: PurgeResult, desk: PumpDesk): PurgePoint {
  const uncertainty = uncertaintyOf(instruments, 'volume', 'ml', desk)
  return {
    day,
    hours: tenths / 10,
    gas,
    volume: Number(valueIn(volume, 'ml').toFixed(6)),
    fluid: liquid,
    ...(uncertainty === undefined ? {} : {uncertainty}),
  }
}

/** Figures of the design under the names that its procedures ask for. */
function limitsOf(kind: 'oil' | 'cargo', measure: 'rate' | 'day', desk: PumpDesk): RateLimits {
  const unit = measure === 'rate' ? 'ml/h' : 'ml/d'
  const known = (name: keyof RateLimits): RateLimits => {
    const value = numberOf(`setting.${kind}-${measure}-${name}`, 'volume-flow', unit, desk)
    return value === undefined ? {} : {[name]: value}
  }
  return {...known('watch'), ...known('renew'), ...known('stop')}
}

function numberOf(
  value: string,
  kind: 'volume' | 'volume-flow',
  unit: string,
  {values}: PumpDesk,
): number | undefined {
  const result = values.get(value)?.result
  return result?.kind === 'known' && result.quantity?.kind === kind
    ? Number(valueIn(result.quantity, unit).toFixed(6))
    : undefined
}

function formOf(last: PurgePoint | undefined): readonly FieldRow[] {
  const {form} = words
  const {fluids} = chartWordsEn.purge
  return [
    {
      legend: '',
      fields: [
        field(id, 'day', form.day, {type: 'date'}),
        field(id, 'hours', form.hours),
        field(id, 'gas', form.gas, {
          options: [
            ['yes', recordWordsEn.yes],
            ['no', recordWordsEn.no],
          ],
        }),
        field(id, 'volume', form.volume),
        field(id, 'fluid', form.fluid, {options: Object.entries(fluids)}),
        field(id, 'uncertainty', form.uncertainty, {
          value: last?.uncertainty === undefined ? '' : String(last.uncertainty),
        }),
      ],
    },
  ]
}
