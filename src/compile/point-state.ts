import type {PointState} from '../figures/isolation-symbols.ts'
import type {IsolationPoint} from '../handbook-model/vessel-content.ts'

/** How the words of a state begin, kind by kind: what passes, and what is shut, fitted in the line or taken off. */
const beginnings: Record<IsolationPoint['kind'], readonly [RegExp, RegExp]> = {
  valve: [/^open\b/u, /^closed\b/u],
  blind: [/^no blind\b/u, /^blind\b/u],
  fuse: [/^in\b/u, /^drawn\b/u],
  'relief-valve': [/^fitted\b/u, /^taken off\b/u],
  plug: [/^no plug\b/u, /^plug\b/u],
  'transport-bolt': [/^no bolt/u, /^bolt/u],
}

/** The state of a point by the beginning of its words; `either` where they leave it open or say it otherwise. */
export function pointState(kind: IsolationPoint['kind'], words: string): PointState {
  const [passes, shut] = beginnings[kind]
  if (/\bunless\b/u.test(words)) return 'either'
  if (passes.test(words)) return 'passes'
  return shut.test(words) ? 'shut' : 'either'
}

/** The state that a point is given back in: by what it is restored with where that says so, else its normal one. */
export function restoredState({kind, normal, restoredWith}: IsolationPoint): PointState {
  if (kind === 'valve' && /\bleft closed\b/u.test(restoredWith.en)) return 'shut'
  if (kind === 'valve' && /\bopened\b/u.test(restoredWith.en)) return 'passes'
  return pointState(kind, normal.en)
}

/** How a point is held in its state by what the list names as its lock. */
export function securedBy(lock: string): 'locked' | 'sealed' | 'tagged' | undefined {
  if (/\block\b/u.test(lock)) return 'locked'
  if (/\bseal\b/u.test(lock)) return 'sealed'
  return /\btag\b/u.test(lock) ? 'tagged' : undefined
}
