import {
  calibrationInterval,
  lastCalibration,
  numbersOf,
  validToOf,
} from '../handbook-model/calibration-content.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'

/**
 * The youngest calibration of a measuring tool aboard counts on the day that dates are compared with; for information.
 *
 * The day is never that of the machine. Where none is known, nothing is compared.
 *
 * Accepted: a gauge calibrated on 2018-05-14 with an interval of 12 months, compared with 2019-05-14.
 * Rejected: one that was calibrated a day earlier; one whose certificate names a day before that.
 */
export function noPastCalibration(
  {vessels, calibrations}: Content,
  values: ComputedValues,
  day: string | undefined,
  files: ContentFiles,
): void {
  if (day === undefined) return
  for (const record of calibrations.values()) {
    const interval = calibrationInterval(values.vessels.get(record.vessel)?.values() ?? [])
    for (const aboard of vessels.get(record.vessel)?.toolsAboard ?? [])
      for (const number of numbersOf(aboard)) {
        const last = lastCalibration(record, aboard.tool.id, number)
        const validTo = last && validToOf(last, interval)
        if (!validTo || day <= validTo.day) continue
        addMessage(
          files,
          last.place,
          'no-past-calibration',
          `Unexpected \`${aboard.tool.id}\` \`${number}\` aboard \`${record.vessel}\`, calibrated ${last.day} and valid to ${validTo.day}, expected a calibration that is valid on ${day}`,
          {
            note: 'Send another one, or have this one calibrated and add its line; until then nothing is judged by it',
            ...(validTo.by === 'interval' && interval ? {cause: interval.place} : {}),
          },
        )
      }
  }
}
