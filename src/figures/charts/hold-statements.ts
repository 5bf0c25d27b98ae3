import {printFigure} from '../../quantities/print-quantity.ts'
import type {ChartWords} from './chart-words-en.ts'
import type {HoldData, HoldEnd, JudgedHold} from './hold-results.ts'

/** Minutes and drops as they are printed. */
export function oneDecimal(value: number): string {
  return printFigure(value, Number.isInteger(value) ? 0 : 1)
}

/** What a pressure hold comes to, in sentences: what the gauge says, what is left after correction, limit, verdict. */
export function holdStatements(data: HoldData, judged: JudgedHold, words: ChartWords): readonly string[] {
  const {hold, verdicts, tried} = words
  const {end, verdict} = judged
  const isTried = data.readings.some((one) => one.tried)
  if (data.readings.length === 0) return [hold.none, ...limitStatements(data, words)]
  if (!end) return [hold.notEnough(data.readings.length), ...limitStatements(data, words)]
  return [
    ...(data.test === '' ? [] : [hold.test(data.test)]),
    hold.gauge(
      end.gaugeDrop < 0 ? hold.rose : hold.fell,
      printFigure(Math.abs(end.gaugeDrop), 1),
      signed(end.warming, 1),
      signed(end.barometerRise, 1),
    ),
    end.drop > 0
      ? hold.corrected(printFigure(end.drop, 1), oneDecimal(end.minutes))
      : hold.nothingLost(printFigure(-end.drop, 1), oneDecimal(end.minutes)),
    ...leakStatements(end, words),
    ...limitStatements(data, words),
    ...(end.isShort ? [hold.short] : []),
    ...explained(data, end, words),
    hold.verdict(printFigure(end.drop, 1), verdicts[verdict]) + (isTried ? ` (${tried})` : ''),
  ]
}

/** What passes a minute; nothing is said where nothing is lost. */
function leakStatements({leak, drop}: HoldEnd, {hold}: ChartWords): readonly string[] {
  if (leak === undefined) return [hold.noVolume]
  return drop > 0 ? [hold.leak(printFigure(leak, 1))] : []
}

function signed(value: number, decimals: number): string {
  const figure = printFigure(value, decimals)
  return value > 0 ? `+${figure}` : figure
}

function limitStatements({allowedDrop, holdTime}: HoldData, {hold}: ChartWords): readonly string[] {
  return [
    allowedDrop === undefined || holdTime === undefined
      ? hold.noLimit
      : hold.limit(oneDecimal(allowedDrop), oneDecimal(holdTime)),
  ]
}

/** Where gauge and corrected drop lie on two sides of the limit. */
function explained(
  {allowedDrop}: HoldData,
  {gaugeDrop, drop}: HoldEnd,
  {hold}: ChartWords,
): readonly string[] {
  if (allowedDrop === undefined) return []
  if (gaugeDrop > allowedDrop && drop <= allowedDrop) return [hold.onlyCorrected]
  return gaugeDrop <= allowedDrop && drop > allowedDrop ? [hold.hiddenByGauge] : []
}
