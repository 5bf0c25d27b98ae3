import type {LineChange} from '../technical-text/compare-texts.ts'
import {doneTo, isRenumbering} from '../technical-text/line-changes.ts'

/** Where a reviewer looks for a difference. */
export const differenceAreas = [
  'values',
  'limits',
  'steps',
  'cautions',
  'isolation',
  'other',
  'numbers',
] as const

export type DifferenceArea = (typeof differenceAreas)[number]

/** One thing that is not the same on a page; lines that came or went together are one. */
export interface PageDifference {
  readonly area: DifferenceArea
  readonly change: 'added' | 'changed' | 'removed' | 'moved' | 'renumbered'
  readonly block: string
  readonly before: readonly string[]
  readonly after: readonly string[]
  /** Lines of the technical text behind it. */
  readonly lines: readonly LineChange[]
}

const areaOfKind: Readonly<Record<string, DifferenceArea>> = {
  value: 'values',
  more: 'values',
  condition: 'values',
  torque: 'values',
  clearance: 'values',
  limit: 'limits',
  outside: 'limits',
  action: 'limits',
  step: 'steps',
  number: 'steps',
  urgent: 'steps',
  variant: 'steps',
  section: 'steps',
  intro: 'steps',
  note: 'steps',
  choice: 'steps',
  identify: 'steps',
  missed: 'steps',
  hold: 'steps',
  'signed-by': 'steps',
  'second-by': 'steps',
  'second-person': 'steps',
  recall: 'cautions',
}

/** What differs on a page, in page order; numbers that only moved on stand together at the end. */
export function pageDifferences(changes: readonly LineChange[]): readonly PageDifference[] {
  const numbers = changes.filter(isRenumbering)
  const groups = joined(changes.filter((one) => !isRenumbering(one)))
  const found = moved(groups.map(differenceOf))
  if (numbers.length === 0) return found
  const side = (pick: (one: LineChange) => string | undefined): readonly string[] => [
    numbers.map((one) => pick(one) ?? '').join(', '),
  ]
  return [
    ...found,
    {
      area: 'numbers',
      change: 'renumbered',
      block: 'numbers',
      before: side(({before}) => before),
      after: side(({after}) => after),
      lines: numbers,
    },
  ]
}

/** Neighbouring lines of one block that all came, or all went. */
function joined(changes: readonly LineChange[]): readonly (readonly LineChange[])[] {
  const groups: LineChange[][] = []
  for (const change of changes) {
    const last = groups.at(-1)
    const [first] = last ?? []
    const together =
      first?.block === change.block && doneTo(first) !== 'changed' && doneTo(first) === doneTo(change)
    if (last && together) last.push(change)
    else groups.push([change])
  }
  return groups
}

function differenceOf(lines: readonly LineChange[]): PageDifference {
  const [first] = lines
  const block = first?.block ?? ''
  const texts = (pick: (one: LineChange) => string | undefined): readonly string[] =>
    lines.flatMap((one) => pick(one) ?? [])
  return {
    area: areaOfLines(block, lines),
    change: first ? doneTo(first) : 'changed',
    block,
    before: texts(({before}) => before),
    after: texts(({after}) => after),
    lines,
  }
}

/** Where a reader looks for lines of one block. */
export function areaOfLines(block: string, lines: readonly LineChange[]): DifferenceArea {
  if (/^(?:caution|urgent)-/u.test(block) || block === 'cautions') return 'cautions'
  const kinds = lines.map(({kind}) => kind)
  if (kinds.some((kind) => /^(?:isolation|isolate|restore)\b/u.test(kind))) return 'isolation'
  if (kinds.includes('step')) return 'steps'
  return kinds.map((kind) => areaOfKind[kind]).find((area) => area !== undefined) ?? 'other'
}

/** What went at one place and came at another with the same words has moved; its number does not count. */
function moved(differences: readonly PageDifference[]): readonly PageDifference[] {
  const words = ({lines}: PageDifference): string =>
    lines
      .filter(({kind}) => kind !== 'number')
      .map(({block, kind, before, after}) => [block, kind, before ?? after].join('\t'))
      .join('\n')
  const taken = new Set<PageDifference>()
  return differences.flatMap((one): readonly PageDifference[] => {
    if (taken.has(one)) return []
    if (one.change !== 'added' && one.change !== 'removed') return [one]
    const other = differences.find(
      (two) => two.change !== one.change && two.change !== 'changed' && words(two) === words(one),
    )
    if (!other || words(one) === '') return [one]
    taken.add(other)
    const [gone, come] = one.change === 'removed' ? [one, other] : [other, one]
    return [
      {
        ...one,
        change: 'moved',
        before: gone.before,
        after: come.after,
        lines: [...gone.lines, ...come.lines],
      },
    ]
  })
}
