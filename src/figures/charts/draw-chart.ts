import type {Chart} from './chart-frame.ts'
import type {ChartWords} from './chart-words-en.ts'
import {holdChart} from './hold-chart.ts'
import type {HoldData} from './hold-results.ts'
import {purgeChart} from './purge-chart.ts'
import type {PurgeData} from './purge-results.ts'
import {type Entries, refused, tryClearance, tryHold, tryPurge} from './try-reading.ts'
import {wearChart} from './wear-chart.ts'
import type {WearData} from './wear-trend.ts'

/** A chart, or in plain words why nothing is drawn. */
export type DrawnChart =
  | {readonly ok: true; readonly chart: Chart}
  | {readonly ok: false; readonly refusal: string}

/**
 * Draws a chart from the data that its page carries, with a reading that is tried where one is given.
 *
 * @param kind
 *   What is charted, as the page says it.
 */
export function drawChart(
  kind: string,
  data: unknown,
  entries: Entries | undefined,
  words: ChartWords,
): DrawnChart {
  if (kind === 'wear' && isWear(data)) {
    const tried = entries ? tryClearance(data, entries, words) : {ok: true as const, data}
    return tried.ok ? {ok: true, chart: wearChart(tried.data, words)} : tried
  }
  if (kind === 'purge' && isPurge(data)) {
    const tried = entries ? tryPurge(data, entries, words) : {ok: true as const, data}
    return tried.ok ? {ok: true, chart: purgeChart(tried.data, words)} : tried
  }
  if (kind === 'hold' && isHold(data)) {
    const tried = entries ? tryHold(data, entries, words) : {ok: true as const, data}
    return tried.ok ? {ok: true, chart: holdChart(tried.data, words)} : tried
  }
  return refused(words.tryIt.unread)
}

function isWear(data: unknown): data is WearData {
  return typeof data === 'object' && data !== null && 'readings' in data && 'service' in data
}

function isPurge(data: unknown): data is PurgeData {
  return typeof data === 'object' && data !== null && 'results' in data && 'hourly' in data
}

function isHold(data: unknown): data is HoldData {
  return typeof data === 'object' && data !== null && 'readings' in data && 'test' in data
}
