import {distance} from 'fastest-levenshtein'

/** The known word closest to a mistyped one, for messages; undefined when there is nothing to choose from. */
export function nearestWord(word: string, known: Iterable<string>): string | undefined {
  let best: {word: string; steps: number} | undefined
  for (const one of known) {
    const steps = distance(word, one)
    if (!best || steps < best.steps) best = {word: one, steps}
  }
  return best?.word
}

/** "expected `hub-bolts`" where a near word exists, else the given expectation; the list is named when it is short. */
export function expectedWord(word: string, known: Iterable<string>, otherwise: string): string {
  const list = [...known]
  if (list.length === 0) return `expected ${otherwise}`
  const near = nearestWord(word, list)
  if (near !== undefined && distance(word, near) <= Math.max(2, Math.floor(word.length / 2))) {
    return `expected ${otherwise} such as \`${near}\``
  }
  return list.length <= 8
    ? `expected one of ${list.map((one) => `\`${one}\``).join(', ')}`
    : `expected ${otherwise}`
}
