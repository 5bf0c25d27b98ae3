import type {PipeStack} from './stack-data.ts'

/** Places along a stack as it is drawn, in metres from the underside of the top plate. */
export interface StackStations {
  readonly total: number
  readonly sections: readonly {
    readonly number: number
    readonly from: number
    readonly to: number
    readonly text: string
  }[]
  /** From the top plate down; the joint to the motor is not one of them. */
  readonly joints: readonly {readonly number: number; readonly at: number}[]
  readonly supports: readonly {
    readonly number: number
    readonly at: number
    readonly text: string
    readonly known: boolean
  }[]
  /** Where the drawing is broken, because nobody knows the length. */
  readonly breaks: readonly number[]
}

/** Lengths of a drawing whose lengths nobody knows: of one section, and of what lies behind the last known place. */
const unknownSection = 2
const unknownShare = 0.15

/**
 * Places along a stack.
 *
 * What nobody knows takes a place in the drawing and is broken there: an unknown section what the whole length leaves, or the mean of
 * the others; the foot of a stack of unknown length some way behind the last known place.
 */
export function stationsOf({whole, sections, supports = []}: PipeStack): StackStations {
  const known = sections.flatMap(({length}) => length.metres ?? [])
  const sum = known.reduce((total, one) => total + one, 0)
  const unknown = sections.length - known.length
  const mean = known.length > 0 ? sum / known.length : unknownSection
  const left = whole.metres === undefined ? 0 : (whole.metres - sum) / Math.max(1, unknown)
  const each = left > 0 ? left : mean
  const breaks: number[] = []
  let at = 0
  const joints = [{number: 1, at: 0}]
  const placed = sections.map(({number, length}, index) => {
    const from = at
    at += length.metres ?? each
    if (length.metres === undefined) breaks.push((from + at) / 2)
    if (index < sections.length - 1) joints.push({number: number + 1, at})
    return {number, from, to: at, text: length.text}
  })
  const lowest = Math.max(at, unknownSection, ...supports.map(({metres}) => metres ?? 0))
  const foot = whole.metres === undefined ? lowest * (1 + unknownShare) : Math.max(at, whole.metres)
  const places = supportPlaces(supports, foot)
  // Nobody knows how far the foot of a stack without a known length lies behind the last known place.
  if (whole.metres === undefined) breaks.push((Math.max(lowest, ...places.map((one) => one.at)) + foot) / 2)
  return {total: foot, sections: placed, joints, supports: places, breaks}
}

/** Supports whose place nobody knows stand at even steps between their neighbours. */
function supportPlaces(
  supports: NonNullable<PipeStack['supports']>,
  foot: number,
): StackStations['supports'] {
  return supports.map(({metres, text}, index) => {
    if (metres !== undefined) return {number: index + 1, at: metres, text, known: true}
    const before = supports.slice(0, index).findLastIndex((one) => one.metres !== undefined)
    const behind = supports.findIndex((one, other) => other > index && one.metres !== undefined)
    const from = supports[before]?.metres ?? 0
    const to = supports[behind]?.metres ?? foot
    const steps = (behind < 0 ? supports.length : behind) - before
    return {number: index + 1, at: from + ((to - from) * (index - before)) / steps, text, known: false}
  })
}
