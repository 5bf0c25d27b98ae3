import type {Job} from '../../handbook-model/office-content.ts'
import type {ExplainedDifference} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {refersTo} from '../identity.ts'
import type {Pump} from '../pump.ts'
import {type SisterPumps, sisterDifferences} from '../sisters/sister-differences.ts'

/**
 * A reason why a pump is not like its sisters stands only beside something that differs.
 *
 * Accepted: `differences: [{item: fact.backstop, reason: …}]` on a pump whose sisters have another backstop.
 * Rejected: the same where all sisters have the same; an item that sister pumps do not have.
 */
export function noIdleDifference(pumps: readonly Pump[], jobs: readonly Job[], files: ContentFiles): void {
  const written = pumps.flatMap(({position}) => position.differences ?? [])
  const ofShips = new Set(pumps.flatMap(({vessel}) => vessel.differences ?? []))
  if (written.length + ofShips.size === 0) return
  const groups = sisterDifferences(pumps, jobs)
  for (const one of [...written, ...ofShips]) {
    const own = pumps.filter(
      ({position, vessel}) => position.differences?.includes(one) || vessel.differences?.includes(one),
    )
    refuseIdle(one, own, groups, files)
  }
}

function refuseIdle(
  {item, place}: ExplainedDifference,
  own: readonly Pump[],
  groups: readonly SisterPumps[],
  files: ContentFiles,
): void {
  const sisters = groups.filter(({pumps}) => pumps.some((pump) => own.includes(pump)))
  const known = new Set(sisters.flatMap(({items}) => items))
  if (!refersTo(item, known, 'thing that is stated of sister pumps', files)) return
  const differs = sisters
    .flatMap(({differences}) => differences)
    .some(
      (one) =>
        one.item === item.id && one.sides.some(({holders}) => holders.some(({pump}) => own.includes(pump))),
    )
  if (differs) return
  addMessage(
    files,
    place,
    'no-idle-difference',
    `Unexpected reason for \`${item.id}\`, expected one beside what differs: all sister pumps have the same`,
    {note: 'Take the reason out: it would hide the next difference'},
  )
}
