import type {IsolationLine} from '../handbook-model/pages.ts'
import type {IsolationRole, IsolationRoleName, Position} from '../handbook-model/vessel-content.ts'
import {wordsEn} from './words-en.ts'

/**
 * The points of a pump as lines; a role without a point is one line with its reason.
 *
 * A point has the same number on every page and figure of its pump: it is counted over the whole list.
 *
 * @param wanted
 *   The roles whose lines are asked for; all of them where none are named.
 */
export function isolationLines(
  {isolation}: Position,
  wanted?: ReadonlySet<IsolationRoleName>,
): readonly IsolationLine[] {
  let before = 0
  return isolation.flatMap((role) => {
    const lines = linesOf(role, before)
    before += role.points.length
    return !wanted || wanted.has(role.role) ? lines : []
  })
}

function linesOf(role: IsolationRole, before: number): readonly IsolationLine[] {
  const words = wordsEn.roles[role.role]
  if (role.points.length === 0) {
    return [
      {
        id: `${role.role}-none`,
        number: '',
        role: words,
        tag: '',
        medium: '',
        kind: '',
        normal: '',
        isolated: '',
        where: '',
        lock: '',
        proof: '',
        restoredWith: '',
        noneBecause: role.noneBecause?.en ?? '',
      },
    ]
  }
  return role.points.map((point, index) => ({
    id: point.id,
    number: String(before + index + 1),
    role: words,
    tag: point.tag,
    medium: point.medium.en,
    kind: wordsEn.pointKinds[point.kind],
    normal: point.normal.en,
    isolated: point.isolated.en,
    where: point.where.en,
    lock: point.lock.en,
    proof: point.proof.en,
    restoredWith: point.restoredWith.en,
    noneBecause: '',
  }))
}
