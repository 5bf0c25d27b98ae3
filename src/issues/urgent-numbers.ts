import type {UrgentRevision} from '../handbook-model/urgent-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {IssueHistory} from './history.ts'

/** What was issued under a number stays so: another text, or one that was ended, does not come under it again. */
export function refuseReusedNumbers(
  urgent: readonly UrgentRevision[],
  hashes: ReadonlyMap<string, string>,
  {ledgers}: IssueHistory,
  files: ContentFiles,
): void {
  for (const {id, number, vessels, place} of urgent) {
    const path = `urgent/${id}.yaml`
    const faults = [...ledgers].flatMap(([vessel, own]) => {
      if (!vessels.some((one) => one.id === vessel)) return []
      const first = own.findIndex(({sources}) => sources[path] !== undefined)
      const since = first === -1 ? [] : own.slice(first)
      const other = since.find(
        ({sources}) => sources[path] !== undefined && sources[path] !== hashes.get(path),
      )
      const ended = since.find(({sources}) => sources[path] === undefined)
      return [
        ...(other ? [`another text than in issue ${other.issue} of \`${vessel}\``] : []),
        ...(ended ? [`the words that ended with issue ${ended.issue} of \`${vessel}\``] : []),
      ]
    })
    const [fault] = faults
    if (fault === undefined) continue
    addMessage(
      files,
      place,
      'no-reused-number',
      `Unexpected urgent revision \`${number}\` with ${fault}, expected a number that was never given`,
      {note: 'Take the next number of the office; let it supersede this one'},
    )
  }
}
