import type {IsolationLine} from '../handbook-model/pages.ts'
import type {IsolationRole} from '../handbook-model/vessel-content.ts'
import {wordsEn} from './words-en.ts'

/** The points of one role as lines; a role without a point is one line with its reason. */
export function isolationLines(role: IsolationRole): readonly IsolationLine[] {
  const words = wordsEn.roles[role.role]
  if (role.points.length === 0) {
    return [
      {
        id: `${role.role}-none`,
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
  return role.points.map((point) => ({
    id: point.id,
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
