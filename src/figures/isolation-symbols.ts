import {dashed, type Ink, line, open, solid} from './ink.ts'
import {rounded} from './svg-text.ts'

export type PointKind = 'valve' | 'blind' | 'fuse' | 'relief-valve' | 'plug' | 'transport-bolt'

/** Whether something passes the point: open, out of the line or in service; or shut, fitted in the line or taken off. */
export type PointState = 'passes' | 'shut' | 'either'

/**
 * Symbol of a point about its middle: a bow tie for a valve, solid when it is shut.
 *
 * @param side
 *   Where its line comes from: 1 from the right, -1 from the left.
 */
export function pointSymbol(
  kind: PointKind,
  state: PointState,
  x: number,
  y: number,
  side: 1 | -1 = 1,
): readonly Ink[] {
  return shapes[kind](state, (dx, dy) => `M${rounded(x + dx)} ${rounded(y + dy)}`, side)
}

/** A move to a place beside the middle of the symbol. */
type Move = (dx: number, dy: number) => string

const shapes: Record<PointKind, (state: PointState, at: Move, side: 1 | -1) => readonly Ink[]> = {
  valve: (state, at) => {
    const first = `${at(0, 0)}l-36 -27v54z`
    const second = `${at(0, 0)}l36 -27v54z`
    if (state === 'either') return [open(second), solid(first)]
    return [state === 'shut' ? solid(first + second) : open(first + second)]
  },
  // Two flanges; a plate between them, higher than they are, when the blind is in.
  blind: (state, at) => {
    const flanges = `${at(-14, -32)}v64${at(14, -32)}v64`
    const plate = `${at(-7, -40)}h14v80h-14z`
    if (state === 'passes') return [line(flanges)]
    return [line(flanges), state === 'shut' ? solid(plate) : open(plate)]
  },
  // A box with its wire; without the wire and dashed when the fuse is drawn.
  fuse: (state, at) => {
    const box = `${at(-34, -17)}h68v34h-68z`
    return state === 'passes' ? [open(box), {layer: 'line over', d: `${at(-34, 0)}h68`}] : [dashed(box)]
  },
  // A valve round the corner below its spring; dashed when it is taken off.
  'relief-valve': (state, at, side) => {
    const body = `${at(0, 0)}l${side * 36} -27v54z${at(0, 0)}l-27 36h54z`
    const spring = `${at(0, 0)}v-7l-14 -6l28 -7l-28 -7l14 -6`
    return state === 'passes' ? [open(body), line(spring)] : [dashed(`${body}${spring}`)]
  },
  plug: (state, at) => square(state, at),
  'transport-bolt': (state, at) => square(state, at),
}

function square(state: PointState, at: Move): readonly Ink[] {
  const d = `${at(-22, -22)}h44v44h-44z`
  return [state === 'passes' ? open(d) : solid(d)]
}

/** A closed padlock about its middle. */
export function padlock(x: number, y: number): readonly Ink[] {
  const bow = `M${rounded(x - 9)} ${rounded(y - 2)}v-7a9 9 0 0 1 18 0v7`
  return [line(bow), solid(`M${rounded(x - 15)} ${rounded(y - 3)}h30v20h-30z`)]
}

/** A hanging tag, about its middle, for what is sealed or tagged without a lock. */
export function hangingTag(x: number, y: number): readonly Ink[] {
  return [open(`M${rounded(x)} ${rounded(y - 17)}l13 11v23h-26v-23zv10`)]
}
