import type {BoundCaution, IsolationLine, LimitLine, ValueLine} from '../handbook-model/pages.ts'
import type {TechnicalLine} from './technical-line.ts'

/** A value: figure with unit, each further figure, condition. */
export function valueLines(line: ValueLine): readonly TechnicalLine[] {
  return [
    {block: line.id, kind: 'value', text: line.unit === '' ? line.figure : `${line.figure} ${line.unit}`},
    ...line.more.map((text) => ({block: line.id, kind: 'more', text})),
    {block: line.id, kind: 'condition', text: line.condition},
  ]
}

/** A limit: the limit, what is done outside it, and the action in words. */
export function limitLines(line: LimitLine): readonly TechnicalLine[] {
  return [
    {block: line.id, kind: 'limit', text: line.limit},
    {block: line.id, kind: 'outside', text: line.outside},
    {block: line.id, kind: 'action', text: line.action},
  ]
}

/** A caution: word with its number, title, hazard, consequence, advice, protection. */
export function cautionLines(
  caution: BoundCaution,
  head = `${caution.word} ${caution.number}`,
): readonly TechnicalLine[] {
  const block = `caution-${caution.id}`
  return [
    {block, kind: 'word', text: head},
    {block, kind: 'title', text: caution.title},
    {block, kind: 'hazard', text: caution.hazard},
    {block, kind: 'consequence', text: caution.consequence},
    ...caution.avoid.map((text) => ({block, kind: 'avoid', text})),
    ...caution.protection.map((text) => ({block, kind: 'protection', text})),
  ]
}

/**
 * An isolation point, or the reason why there is none.
 *
 * What is done there and what kind of point it is stand in the kind of the line: a page shows them by its layout.
 */
export function isolationLines(
  line: IsolationLine,
  done: 'isolation' | 'isolate' | 'restore' = 'isolation',
): readonly TechnicalLine[] {
  const texts =
    line.noneBecause === ''
      ? [
          line.role,
          line.number,
          line.tag,
          line.medium,
          line.where,
          line.normal,
          line.isolated,
          line.lock,
          line.proof,
          line.restoredWith,
        ]
      : [line.role, line.noneBecause]
  const kind = line.kind === '' ? done : `${done} ${line.kind}`
  return texts.map((text) => ({block: line.id, kind, text}))
}
