import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Localised} from '../handbook-model/datum.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'

/**
 * Tells each data sheet that belongs to nothing: a design of no pump, a source on which nothing stands.
 *
 * A sheet that nobody uses is read as if somebody did, or its pump was forgotten in the vessel file. What is kept on
 * purpose says why under `kept-for`; a reason beside a sheet that is used would hide the day on which it no longer is.
 *
 * Accepted: design `design-b` with a pump on some vessel; source `old-book` with `kept-for: repairs of 2004`.
 * Told: the same without a pump, or without the reason; a reason where there is a pump.
 */
export function noIdleSheet(content: Content, values: ComputedValues, files: ContentFiles): void {
  const fitted = new Set(
    [...content.vessels.values()].flatMap(({positions}) => positions.map(({design}) => design.id)),
  )
  for (const {id, place, keptFor} of content.designs.values())
    tell(
      {
        rule: 'no-idle-design',
        what: `design \`${id}\``,
        use: 'a pump of that design',
        place,
        keptFor,
        isUsed: fitted.has(id),
      },
      files,
    )
  const standing = sourcesStoodOn(content, values)
  for (const {id, place, keptFor} of content.sources.values())
    tell(
      {
        rule: 'no-idle-source',
        what: `source \`${id}\``,
        use: 'a value, caution, table or record that stands on it',
        place,
        keptFor,
        isUsed: standing.has(id),
      },
      files,
    )
}

interface Sheet {
  readonly rule: 'no-idle-design' | 'no-idle-source'
  readonly what: string
  readonly use: string
  readonly place: Place
  readonly keptFor: Localised | undefined
  readonly isUsed: boolean
}

function tell({rule, what, use, place, keptFor, isUsed}: Sheet, files: ContentFiles): void {
  if (isUsed === (keptFor === undefined)) return
  if (isUsed)
    addMessage(files, place, rule, `Unexpected reason to keep ${what}, expected none: it is in use`, {
      note: 'Take `kept-for` out: it would hide the day on which nothing uses it any more',
    })
  else
    addMessage(files, place, rule, `Unexpected ${what} without ${use}, expected it to be in use`, {
      note: 'Take it out, name it where it belongs, or write why it is kept under `kept-for`',
    })
}

/** Sources that the content names, those of computed values, and what supersedes one of them. */
function sourcesStoodOn(content: Content, values: ComputedValues): ReadonlySet<string> {
  const used = new Set(content.namedSources)
  for (const positions of values.vessels.values())
    for (const ofPump of positions.values())
      for (const {sources} of ofPump.values()) for (const {source} of sources) used.add(source)
  for (const {id, supersededBy} of content.sources.values())
    if (supersededBy && used.has(id)) used.add(supersededBy.id)
  return used
}
