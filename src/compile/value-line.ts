import {type ComputedValue, notKnownWords} from '../handbook-model/computed.ts'
import type {Limit} from '../handbook-model/design-content.ts'
import type {LimitLine, ValueLine} from '../handbook-model/pages.ts'
import {found, type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {valueLink} from './page-paths.ts'
import {wordsEn} from './words-en.ts'

/** A value as one line: figure, unit, condition, what it rests on, and the way to its explanation. */
export function valueLine(value: ComputedValue, desk: PumpDesk): ValueLine {
  const {result} = value
  const known = result.kind === 'known'
  return {
    id: value.id,
    title: value.title,
    figure: known ? result.printed.figure : notKnownWords,
    unit: known ? (result.printed.unit === '1' ? '' : result.printed.unit) : '',
    known,
    more: known ? (result.more ?? []) : [],
    condition: known ? (value.condition ?? '') : wordsEn.missing(result.missing),
    basis: value.calculation ? value.calculation.name.replaceAll('-', ' ') : wordsEn.stated,
    mark: markOfValue(value, desk),
    link: valueLink(value, value.title, desk),
  }
}

/** What is said beside a figure that no published source or drawing carries. */
export function markOfValue(value: ComputedValue, desk: PumpDesk): string {
  const known = value.sources.map(({source}) => desk.content.sources.get(source)?.howKnown)
  if (known.includes('common-practice')) return wordsEn.howKnown['common-practice']
  return known.includes('demonstration') ? wordsEn.howKnown.demonstration : ''
}

/** A limit with its figure and the rule that governs it. */
export function limitLine(limit: Limit, desk: PumpDesk): LimitLine {
  const value = pumpValue(desk, limit.value.id)
  const {result} = value
  const known = result.kind === 'known'
  return {
    id: limit.id,
    title: limit.title.en,
    limit: known
      ? `${wordsEn.sides[limit.side]} ${printedValue(value)}`
      : `${wordsEn.sides[limit.side]}: ${notKnownWords}`,
    known,
    outside: limit.outside,
    action: limit.action.en,
    because: known ? (value.condition ?? '') : wordsEn.missing(result.missing),
  }
}

/** The limits that a reading names. */
export function limitLines(ids: readonly string[], desk: PumpDesk): readonly LimitLine[] {
  return ids.map((id) =>
    limitLine(
      found(
        desk.design.limits.find((one) => one.id === id),
        `limit ${id}`,
      ),
      desk,
    ),
  )
}
