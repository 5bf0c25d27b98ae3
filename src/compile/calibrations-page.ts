import {
  type Calibration,
  type CalibrationRecord,
  calibrationInterval,
  isMeasuring,
  lastCalibration,
  numbersOf,
  validToOf,
} from '../handbook-model/calibration-content.ts'
import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Tool} from '../handbook-model/office-content.ts'
import type {CalibrationLine, CalibrationsPage} from '../handbook-model/publication.ts'
import type {ToolAboard} from '../handbook-model/vessel-content.ts'
import {found, type PumpDesk, printedValue} from './desk.ts'
import {recordParts} from './record-page.ts'
import {markOfValue} from './value-line.ts'
import {wordsEn} from './words-en.ts'
import {toolSize} from './written-datum.ts'

const words = wordsEn.calibrations

/** What the lines of a vessel are made from. */
interface Bench {
  readonly record: CalibrationRecord | undefined
  readonly interval: ComputedValue | undefined
  /** What is said beside the interval. */
  readonly mark: string
}

/** Last calibration of each measuring tool aboard, by the place where it lies. A record page, so that a new line moves no other. */
export function calibrationsPage(desks: readonly PumpDesk[]): CalibrationsPage {
  const desk = found(desks[0], 'a pump')
  const {content, vessel} = desk
  const record = content.calibrations.get(vessel.id)
  const interval = calibrationInterval(desks.map(({values}) => values))
  const bench: Bench = {record, interval, mark: interval ? markOfValue(interval, desk) : ''}
  const places = new Map<string, CalibrationLine[]>()
  for (const aboard of vessel.toolsAboard) {
    const tool = found(content.tools.get(aboard.tool.id), `tool ${aboard.tool.id}`)
    if (!isMeasuring(tool)) continue
    const location = aboard.location.en
    places.set(location, [...(places.get(location) ?? []), ...linesOf(tool, aboard, bench)])
  }
  return {
    kind: 'calibrations',
    ...recordParts(content, vessel.id, 'calibrations', {record, last: record?.calibrations.at(-1)?.day}),
    places: [...places].map(([location, lines]) => ({location, lines})),
  }
}

/** A line for all numbers of a tool whose last calibration reads alike. */
function linesOf(tool: Tool, aboard: ToolAboard, bench: Bench): readonly CalibrationLine[] {
  const alike = new Map<string, {readonly numbers: string[]; readonly last: Calibration | undefined}>()
  const all = numbersOf(aboard)
  for (const number of all) {
    const last = lastCalibration(bench.record, tool.id, number)
    const key = JSON.stringify([last?.day, last?.certificate, last?.validTo, last?.note])
    const group = alike.get(key) ?? {numbers: [], last}
    group.numbers.push(number)
    alike.set(key, group)
  }
  return [...alike.values()].map(({numbers, last}) => ({
    tool: tool.title.en,
    size: toolSize(tool),
    number: numbers.length === all.length ? aboard.number : numbers.join(', '),
    ...calibrationText(last, bench),
  }))
}

function calibrationText(
  last: Calibration | undefined,
  {interval, mark}: Bench,
): Omit<CalibrationLine, 'tool' | 'size' | 'number'> {
  if (!last)
    return {
      read: false,
      day: wordsEn.notKnownCell,
      certificate: '',
      certificateKnown: false,
      validTo: words.noLine,
      validToKnown: false,
      basis: '',
      mark: '',
      note: '',
    }
  const validTo = validToOf(last, interval)
  const isByInterval = validTo?.by === 'interval' && interval !== undefined
  return {
    read: true,
    day: last.day,
    certificate: last.certificate === '' ? wordsEn.notKnownCell : last.certificate,
    certificateKnown: last.certificate !== '',
    validTo: validTo?.day ?? wordsEn.notKnownCell,
    validToKnown: validTo !== undefined,
    basis: isByInterval
      ? words.byInterval(printedValue(interval))
      : validTo
        ? words.byCertificate
        : words.noInterval,
    mark: isByInterval ? mark : '',
    note: last.note,
  }
}
