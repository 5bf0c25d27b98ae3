import type {z} from 'zod'
import type {Localised} from '../../handbook-model/datum.ts'
import {type IsolationPoint, type IsolationRole, isolationRoles} from '../../handbook-model/vessel-content.ts'
import {expectedWord} from '../nearest-word.ts'
import {openMap} from './dynamic-maps.ts'
import {factsOfIssue, faultOfId, fields, leaf, list, localised, oneOf, refuse, text} from './placed-shape.ts'
import {isPlainMap, placeKey} from './plain-tree.ts'

const point = fields({
  id: leaf,
  tag: text,
  medium: localised,
  kind: oneOf(['valve', 'blind', 'fuse', 'relief-valve', 'plug', 'transport-bolt']),
  normal: localised,
  isolated: localised,
  where: localised,
  lock: localised,
  proof: localised,
  'restored-with': localised,
}).transform(({id, ...rest}, context): IsolationPoint => {
  const fault = faultOfId(id.text.replaceAll('{tag}', '1'))
  return fault
    ? refuse(context, fault, {
        ruleId: 'no-bad-id',
        place: id.place,
        note: 'Write it like `{tag}-pressure`',
      })
    : {id: id.text, ...rest}
})

const points = list(point)
const none = fields({none: localised})

/** `isolation:` or `isolation-pattern:`: for each role the points, or the reason why there is none. */
export const isolationShape = openMap.transform((map, context): readonly IsolationRole[] => {
  const found: IsolationRole[] = []
  for (const [key, place] of map[placeKey].keys) {
    const role = isolationRoles.find((one) => one === key)
    if (!role) {
      refuse(
        context,
        `Unexpected isolation role \`${key}\`, ${expectedWord(key, isolationRoles, 'a role')}`,
        {ruleId: 'no-unknown-key', place, note: `The roles are ${isolationRoles.join(', ')}`},
      )
      continue
    }
    const value = map[key]
    const parsed = isPlainMap(value) ? none.safeParse(value) : points.safeParse(value)
    if (!parsed.success) passOn(parsed.error.issues, context, place)
    else if ('none' in parsed.data) found.push({role, points: [], noneBecause: parsed.data.none, place})
    else found.push({role, points: parsed.data, place})
  }
  return found
})

function passOn(
  issues: readonly z.core.$ZodIssue[],
  context: z.core.$RefinementCtx,
  place: Parameters<typeof refuse>[2]['place'],
): void {
  for (const issue of issues) {
    refuse(
      context,
      factsOfIssue(issue)
        ? issue.message
        : 'Unexpected text, expected a list of isolation points or `{none: reason}`',
      factsOfIssue(issue) ?? {
        ruleId: 'no-wrong-shape',
        place,
        note: 'List the points, or say why there is none',
      },
    )
  }
}

/** The pattern of a vessel with the tag of one position filled in, and the position's own roles in place of the pattern's. */
export function isolationOf(
  tag: string,
  pattern: readonly IsolationRole[],
  own: readonly IsolationRole[],
): readonly IsolationRole[] {
  const roles = new Set(own.map((one) => one.role))
  const filled = pattern.filter((one) => !roles.has(one.role)).map((one) => fillRole(one, tag))
  const all = [...filled, ...own.map((one) => fillRole(one, tag))]
  return all.sort((a, b) => isolationRoles.indexOf(a.role) - isolationRoles.indexOf(b.role))
}

function fillRole(role: IsolationRole, tag: string): IsolationRole {
  const fill = (words: string): string => words.replaceAll('{tag}', tag)
  const fillAll = (words: Localised): Localised => ({
    ...words,
    ...Object.fromEntries(Object.entries(words).map(([language, one]) => [language, fill(one)])),
  })
  const low = tag.toLowerCase().replace(/[^a-z0-9]+/gu, '-')
  return {
    ...role,
    ...(role.noneBecause ? {noneBecause: fillAll(role.noneBecause)} : {}),
    points: role.points.map((one) => ({
      ...one,
      id: one.id.replaceAll('{tag}', low),
      tag: fill(one.tag),
      medium: fillAll(one.medium),
      normal: fillAll(one.normal),
      isolated: fillAll(one.isolated),
      where: fillAll(one.where),
      lock: fillAll(one.lock),
      proof: fillAll(one.proof),
      restoredWith: fillAll(one.restoredWith),
    })),
  }
}
