import {rounded, textWidth} from '../svg-text.ts'

/** Size of every letter of the figure and the height of a row of text, in units of its view box. */
export const letter = 36
export const row = 44

/** A text at a place along the stack. */
export interface Label {
  readonly text: string
  readonly x: number
}

/** A text in the nearest row that has the room for it; row 0 is the one at the dimension line. */
export interface PlacedLabel extends Label {
  readonly left: number
  readonly level: number
  /** Whether a leader from its place to it runs clear of every other text. */
  readonly hasLeader: boolean
}

const gap = 14

/**
 * Puts texts beside each other, each in the middle of its place, in as few rows as there is room for.
 *
 * The leader of a text in a farther row runs clear of the texts in the nearer ones. Where places are so near to each other that none can,
 * a text stands without a leader: it has to say by itself whose it is.
 */
export function placedLabels(labels: readonly Label[], least: number, most: number): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = []
  for (const label of labels) {
    const width = textWidth(label.text, letter)
    const own = {left: Math.max(least, Math.min(label.x - width / 2, most - width)), width}
    const levels = Array.from({length: placed.length + 1}, (_, level) => level).filter((level) =>
      placed.every((one) => !isInTheWay(own, one, level)),
    )
    const led = levels.find((level) =>
      placed.every((one) => one.level >= level || !crosses(label.x, one.left, textWidth(one.text, letter))),
    )
    placed.push({...label, left: own.left, level: led ?? levels[0] ?? 0, hasLeader: led !== undefined})
  }
  return placed
}

/** Whether a text in a row stands on another one, or on the leader of one in a farther row. */
function isInTheWay(
  {left, width}: {readonly left: number; readonly width: number},
  other: PlacedLabel,
  level: number,
): boolean {
  if (other.level > level) return other.hasLeader && crosses(other.x, left, width)
  const right = other.left + textWidth(other.text, letter)
  return other.level === level && left - gap < right && other.left < left + width + gap
}

function crosses(x: number, left: number, width: number): boolean {
  return x > left - 6 && x < left + width + 6
}

/** How many rows the texts take up. */
export function rowsOf(labels: readonly PlacedLabel[]): number {
  return Math.max(0, ...labels.map(({level}) => level + 1))
}

/** Arrowhead of a dimension line with its tip at a place, pointing to the left or the right. */
export function arrowhead(x: number, y: number, way: 'left' | 'right'): string {
  const back = way === 'right' ? -18 : 18
  return `M${rounded(x)} ${rounded(y)}l${back}-5v10z`
}
