import {chartWordsEn} from '../figures/charts/chart-words-en.ts'
import {holdChart} from '../figures/charts/hold-chart.ts'
import type {HoldData} from '../figures/charts/hold-results.ts'
import type {ChartSection, FieldRow} from '../handbook-model/chart-section.ts'
import {type HoldReading, lastHold} from '../handbook-model/hold-history.ts'
import {printFigure, valueIn} from '../quantities/print-quantity.ts'
import type {AnyQuantity} from '../quantities/quantity.ts'
import {chartJson, field} from './chart-section.ts'
import type {PumpDesk} from './desk.ts'
import {recordWordsEn} from './record-words-en.ts'

const words = recordWordsEn.hold
const id = 'pressure-hold'

/** Readings of the last pressure hold of this pump. */
export function holdReadings({content, vessel, position}: PumpDesk): readonly HoldReading[] {
  return lastHold(content.tightness.get(vessel.id), position.id)
}

/** The last pressure hold of a pump that has a cofferdam; a portable pump has none. */
export function holdSections(desk: PumpDesk): readonly ChartSection[] {
  if (!desk.tank) return []
  const readings = holdReadings(desk)
  const [first] = readings
  const data: HoldData = {
    what: words.what(desk.position.tag),
    test: first ? words.test(first.day, first.test) : '',
    readings: readings.map((one) => ({
      minute: figure(one.minute, 'min'),
      gauge: figure(one.pressure, 'bar(g)'),
      temperature: figure(one.temperature, '°C'),
      barometer: figure(one.barometer, 'mbar(a)'),
    })),
    ...known('holdTime', 'cofferdam.hold-time', 'min', desk),
    ...known('allowedDrop', 'cofferdam.allowed-drop', 'mbar', desk),
    ...known('volume', 'cofferdam.volume', 'l', desk),
    outside: desk.design.limits.find(({value}) => value.id === 'cofferdam.allowed-drop')?.outside ?? 'STOP',
  }
  const {svg, statements} = holdChart(data, chartWordsEn)
  return [
    {
      id,
      kind: 'hold',
      title: words.title,
      ...(readings.length > 0 ? {figure: {svg}} : {}),
      statements,
      json: chartJson(data),
      columns: words.columns,
      rows: readings.map((one) => ({
        head: words.minute(printFigure(valueIn(one.minute, 'min'), 0)),
        cells: [
          words.gauge(written(figure(one.pressure, 'bar(g)'), 2)),
          words.temperature(written(figure(one.temperature, '°C'), 1)),
          words.barometer(written(figure(one.barometer, 'mbar(a)'), 0)),
          one.note,
        ],
      })),
      form: formOf(),
    },
  ]
}

/** A number in a unit, free of what the conversion leaves in the last digits. */
function figure(quantity: AnyQuantity, unit: string): number {
  return Number(valueIn(quantity, unit).toFixed(6))
}

/** A number with the decimals that it was read with, and at least so many. */
function written(value: number, least: number): string {
  const read = String(value).split('.')[1]?.length ?? 0
  return printFigure(value, Math.max(least, read))
}

/** A value of the pump under the name that the chart knows it by; nothing where it is not known. */
function known<const Name extends string>(
  name: Name,
  value: string,
  unit: string,
  {values}: PumpDesk,
): Partial<Record<Name, number>> {
  const result = values.get(value)?.result
  const made: Partial<Record<string, number>> = {}
  if (result?.kind === 'known' && result.quantity) made[name] = figure(result.quantity, unit)
  return made
}

function formOf(): readonly FieldRow[] {
  return chartWordsEn.tryIt.rows.map((row, index) => ({
    legend: words.rows[row],
    fields: (['minute', 'gauge', 'temperature', 'barometer'] as const).map((name) =>
      field(id, `${name}-${index + 1}`, words.form[name]),
    ),
  }))
}
