import type {UrgentRevision} from '../handbook-model/urgent-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Ledger} from './ledger.ts'

/** An issue holds urgent revisions that count on its day and on the day that dates are compared with. */
export function refuseUntimely(
  urgent: readonly UrgentRevision[],
  {vessel, issue, date, asOf}: Pick<Ledger, 'vessel' | 'issue' | 'date' | 'asOf'>,
  files: ContentFiles,
): void {
  const last = date < asOf ? asOf : date
  for (const {number, vessels, validFrom, validTo} of urgent) {
    if (!vessels.some((one) => one.id === vessel)) continue
    if (last > validTo.id)
      addMessage(
        files,
        validTo.place,
        'no-untimely-urgent',
        `Unexpected urgent revision \`${number}\` that was valid to ${validTo.id} in issue ${issue} of ${last}, expected one that counts on that day`,
        {
          note: `Take it into the page, take its file out and add \`- {urgent: ${number}, reason: …, reviewed-by: …}\` to \`ended:\` of changes.yaml; or write another one that supersedes it`,
        },
      )
    else if (date < validFrom.id)
      addMessage(
        files,
        validFrom.place,
        'no-untimely-urgent',
        `Unexpected urgent revision \`${number}\` that is valid from ${validFrom.id} in issue ${issue} of ${date}, expected one that counts on that day`,
        {note: 'Issue it on its first day, or write an earlier one'},
      )
  }
}
