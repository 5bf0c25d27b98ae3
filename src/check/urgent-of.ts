import type {ContentSources} from '../handbook-model/sources.ts'
import type {UrgentRevision} from '../handbook-model/urgent-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {parseCondition} from './conditions/parse-condition.ts'
import {nameFits} from './identity.ts'
import {checkShape} from './shapes/check-shape.ts'
import {urgentShape} from './shapes/urgent-shape.ts'

/** Files of urgent revisions. */
export const urgentFile = /^urgent\/[^/]+\.yaml$/u

/** The urgent revisions of the content in order of their numbers; a number that stands twice is a message. */
export function urgentOf(sources: ContentSources, files: ContentFiles): readonly UrgentRevision[] {
  const found = [...sources.yaml].flatMap(([path, node]): UrgentRevision[] => {
    const shaped = urgentFile.test(path) ? checkShape(node, urgentShape, files) : undefined
    if (!shaped) return []
    const {when, positions, procedures, values, steps, supersedes, ...rest} = shaped
    const condition = when && parseCondition(when.id, when.place, files)
    return [
      {
        ...rest,
        id: shaped.number.toLowerCase(),
        positions: positions ?? [],
        procedures: procedures ?? [],
        values: values ?? [],
        steps: steps ?? [],
        supersedes: supersedes ?? [],
        ...(condition ? {when: condition} : {}),
      },
    ]
  })
  const named = (one: UrgentRevision): boolean => one.place.path === `urgent/${one.id}.yaml`
  return found
    .filter((one) => {
      const first = found.find((other) => other.number === one.number && (named(other) || other === one))
      if (!first || first === one) {
        nameFits(one, `urgent/${one.id}.yaml`, files)
        return true
      }
      addMessage(
        files,
        one.place,
        'no-reused-number',
        `Unexpected second urgent revision \`${one.number}\`, expected a number that was never given`,
        {note: 'Take the next number of the office, and name the file after it', cause: first.place},
      )
      return false
    })
    .sort((a, b) => (a.id < b.id ? -1 : 1))
}
