import {type Quantity, type QuantityKind, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** What a reading comes to; the words are the same on screen, on paper and in records. */
export type Verdict = 'STOP' | 'RENEW' | 'NOT VALID' | 'CANNOT JUDGE' | 'WATCH' | 'WITHIN LIMITS'

/** Kind in which two values of a kind differ, and in which an uncertainty is stated. */
export type DifferenceKind<K extends QuantityKind> = K extends 'temperature'
  ? 'temperature-difference'
  : K extends 'gauge-pressure' | 'absolute-pressure'
    ? 'pressure-difference'
    : K

/** One side of a limit. */
export interface ReadingLimit<K extends QuantityKind> {
  readonly side: 'not-above' | 'not-below'
  /** Undefined where nobody knows the limit. */
  readonly value: Quantity<K> | undefined
  /** What is done beyond it. */
  readonly outside: 'RENEW' | 'STOP'
  /** True for a limit on a change, written as a number that holds the uncertainty of the instrument already. */
  readonly holdsUncertainty: boolean
}

/** A reading with what it is held against. */
export interface ReadingToJudge<K extends QuantityKind> {
  /** Undefined where nothing was read. */
  readonly reading: Quantity<K> | undefined
  /** Uncertainty of the instrument; undefined where nobody knows it. */
  readonly uncertainty: Quantity<DifferenceKind<K>> | undefined
  readonly limits: readonly ReadingLimit<K>[]
  /** For a purged volume only: whether gas was seen to flow. */
  readonly gasFlow: 'confirmed' | 'not confirmed' | undefined
}

/** Verdict on a reading. */
export interface ReadingVerdict<K extends QuantityKind> {
  readonly verdict: Verdict
  /** The limit that decided; undefined where none could be asked. */
  readonly decidedBy: ReadingLimit<K> | undefined
  /** How far the reading lies inside that limit, negative beyond it; undefined where the uncertainty is not known. */
  readonly room: Quantity<DifferenceKind<K>> | undefined
}

export const judgeReadingNote: CalculationNote = {
  name: 'judge-reading',
  words:
    'beyond a limit its action counts, whatever the uncertainty; at the limit, or inside it by less than the uncertainty of the instrument, the reading is watched; with two limits the worse verdict counts; what is missing cannot be judged, and a purge of nothing counts only when gas was seen to flow',
  formula: [
    'room = limit − reading for a limit not to be exceeded, reading − limit for one not to be fallen below',
    'room < 0: RENEW or STOP, as the limit says',
    'room = 0 or room < u: WATCH; a limit that holds the uncertainty already: u = 0',
    'otherwise: WITHIN LIMITS',
  ],
  symbols: [{symbol: 'u', meaning: 'uncertainty of the instrument'}],
  sources: [
    {
      title: 'rule of the house for readings',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor: 'readings and limits of one kind, such as both diametral',
}

/** The worst first. */
export const verdictsByWeight: readonly Verdict[] = [
  'STOP',
  'RENEW',
  'NOT VALID',
  'CANNOT JUDGE',
  'WATCH',
  'WITHIN LIMITS',
]

/**
 * Verdict on one reading.
 *
 * A reading beyond a limit keeps the action of the limit even where the
 * uncertainty or the other limit is not known: missing knowledge never softens.
 *
 * Source: rule of the house; common practice, no source.
 * Valid for: readings and limits of one kind.
 *
 * @throws {RangeError}
 *   When the uncertainty is negative.
 */
export function judgeReading<K extends QuantityKind>(input: ReadingToJudge<K>): ReadingVerdict<K> {
  const {reading, limits, uncertainty} = input
  if (uncertainty && uncertainty.si < 0)
    throw new RangeError(`Unexpected uncertainty of ${uncertainty.si} in SI, expected zero or more`)
  if (!reading) return {verdict: 'CANNOT JUDGE', decidedBy: undefined, room: undefined}
  if (reading.si === 0 && input.gasFlow === 'not confirmed')
    return {verdict: 'NOT VALID', decidedBy: undefined, room: undefined}
  const verdicts = limits.map((limit) => judgeLimit(reading, limit, uncertainty))
  const worst = verdictsByWeight.find((one) => verdicts.some(({verdict}) => verdict === one))
  const found = verdicts.find(({verdict}) => verdict === worst)
  return found ?? {verdict: 'CANNOT JUDGE', decidedBy: undefined, room: undefined}
}

function judgeLimit<K extends QuantityKind>(
  reading: Quantity<K>,
  limit: ReadingLimit<K>,
  uncertainty: Quantity<DifferenceKind<K>> | undefined,
): ReadingVerdict<K> {
  if (!limit.value) return {verdict: 'CANNOT JUDGE', decidedBy: limit, room: undefined}
  const room = limit.side === 'not-above' ? limit.value.si - reading.si : reading.si - limit.value.si
  const noise = 1e-9 * Math.max(Math.abs(reading.si), Math.abs(limit.value.si))
  return {
    verdict: verdictOn(room, noise, limit, uncertainty?.si),
    decidedBy: limit,
    room: uncertainty && quantityOf(uncertainty.kind, room),
  }
}

/** The noise is what the conversion to SI leaves in the last digits: less than it apart counts as equal. */
function verdictOn(
  room: number,
  noise: number,
  limit: Pick<ReadingLimit<QuantityKind>, 'outside' | 'holdsUncertainty'>,
  uncertainty: number | undefined,
): Verdict {
  if (room < -noise) return limit.outside
  const band = limit.holdsUncertainty ? 0 : uncertainty
  if (band === undefined) return 'CANNOT JUDGE'
  return room <= noise || room < band - noise ? 'WATCH' : 'WITHIN LIMITS'
}
