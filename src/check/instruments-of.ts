import type {Reference} from '../handbook-model/datum.ts'
import type {Tool} from '../handbook-model/office-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {QuantityKind} from '../quantities/quantity.ts'
import {refersTo} from './identity.ts'
import {knownIds} from './known-ids.ts'
import {expectedWord} from './nearest-word.ts'
import type {RecordCell} from './record-of.ts'

/** Tools of the office, and the files whose definitions could not be used. */
export interface InstrumentDesk {
  readonly tools: ReadonlyMap<string, Tool>
  readonly faulty: ReadonlySet<string>
  readonly files: ContentFiles
}

/** `inside-micrometer and outside-micrometer`: the tools that a reading was taken with; none where the cell is blank, undefined where one cannot be. */
export function instrumentsOf(
  {id, place}: RecordCell,
  kind: QuantityKind,
  {tools, faulty, files}: InstrumentDesk,
): readonly Reference[] | undefined {
  if (id === '') return []
  const known = knownIds(tools, 'tools.yaml', faulty)
  const named = id.split(' and ').map((one) => ({id: one.trim(), place}))
  const fit = named.filter((one) => {
    if (!refersTo(one, known, 'tool', files)) return false
    const tool = tools.get(one.id)
    if (!tool || measures(tool, kind)) return true
    const measuring = [...tools.values()].filter((other) => measures(other, kind))
    addMessage(
      files,
      place,
      'no-undefined-reference',
      `Unexpected \`${one.id}\` that does not measure a ${kind}, ${expectedWord(
        one.id,
        measuring.map((other) => other.id),
        `a tool whose \`instrument:\` does`,
      )}`,
      {
        note: 'Name the tool that it was measured with, or leave the cell blank where nobody wrote it',
        cause: tool.place,
      },
    )
    return false
  })
  return fit.length === named.length ? fit : undefined
}

function measures({instrument}: Tool, kind: QuantityKind): boolean {
  const uncertainty = instrument?.uncertainty
  return uncertainty !== undefined && (uncertainty.kind === 'not-known' || uncertainty.quantity.kind === kind)
}
