import type {Point} from './shape.ts'

/** A lip between its seat and what it runs on, with its open edge at one end. */
export function lip(
  inside: number,
  outside: number,
  low: number,
  height: number,
  looks: 'down' | 'up',
): readonly Point[] {
  const wide = outside - inside
  const shape: readonly Point[] = [
    [outside, 0.04],
    [outside, 0.96],
    [inside + wide * 0.3, 0.96],
    [inside, 0.22],
    [inside + wide * 0.1, 0.08],
    [inside + wide * 0.24, 0.16],
    [inside + wide * 0.52, 0.66],
    [outside - wide * 0.24, 0.66],
    [outside - wide * 0.24, 0.04],
  ]
  return shape.map(([r, part]): Point => [r, low + height * (looks === 'down' ? part : 1 - part)])
}
