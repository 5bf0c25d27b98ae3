/** Axis of a chart: its ends lie on round ticks. */
export interface Axis {
  readonly least: number
  readonly most: number
  readonly ticks: readonly number[]
  /** Decimals that tell each tick from the next. */
  readonly decimals: number
}

/** Round steps between powers of ten. */
const roundSteps = [1, 2, 5, 10]

/**
 * Axis that holds a range between round ticks.
 *
 * @param spaces
 *   About how many spaces there are between ticks.
 */
export function roundAxis(least: number, most: number, spaces: number): Axis {
  const span = most > least ? most - least : Math.max(Math.abs(least), 1)
  const raw = span / spaces
  const power = 10 ** Math.floor(Math.log10(raw))
  const step = power * (roundSteps.find((one) => one * power >= raw * 0.999_999) ?? 10)
  const first = Math.floor(least / step + 1e-6)
  const last = Math.max(first + 1, Math.ceil(most / step - 1e-6))
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9))
  const at = (index: number): number => Number((index * step).toFixed(decimals))
  return {
    least: at(first),
    most: at(last),
    ticks: Array.from({length: last - first + 1}, (_, index) => at(first + index)),
    decimals,
  }
}

/** A point of a chart in the units of its axes. */
export interface ChartPoint {
  readonly x: number
  readonly y: number
}

/** What of a chain of points lies between the ends of both axes; a chain that leaves and comes back is in pieces. */
export function clipped(points: readonly ChartPoint[], x: Axis, y: Axis): readonly (readonly ChartPoint[])[] {
  const pieces: ChartPoint[][] = []
  for (const [index, to] of points.entries()) {
    const from = points[index - 1]
    const part = from && clippedPart(from, to, x, y)
    if (!part) continue
    const [start, end] = part
    const last = pieces.at(-1)?.at(-1)
    if (last && last.x === start.x && last.y === start.y) pieces.at(-1)?.push(end)
    else pieces.push([start, end])
  }
  return pieces
}

/** The part of one stretch that lies within both axes. */
function clippedPart(
  from: ChartPoint,
  to: ChartPoint,
  x: Axis,
  y: Axis,
): readonly [ChartPoint, ChartPoint] | undefined {
  let start = 0
  let end = 1
  const sides = [
    [from.x - to.x, from.x - x.least],
    [to.x - from.x, x.most - from.x],
    [from.y - to.y, from.y - y.least],
    [to.y - from.y, y.most - from.y],
  ] as const
  for (const [run, room] of sides) {
    if (run === 0 && room < 0) return undefined
    if (run < 0) start = Math.max(start, room / run)
    if (run > 0) end = Math.min(end, room / run)
  }
  if (start >= end) return undefined
  const at = (share: number): ChartPoint =>
    share === 0
      ? from
      : share === 1
        ? to
        : {x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y)}
  return [at(start), at(end)]
}
