import type {CalculationWords} from './calculate-words.ts'

/**
 * One word of a closed choice.
 *
 * @throws {RangeError}
 *   When another word is given.
 */
export function choiceWord<Word extends string>(
  words: CalculationWords,
  key: string,
  choices: readonly [Word, ...Word[]],
): Word {
  const [usual] = choices
  const given = words.optionalText(key, usual)
  const found = choices.find((one) => one === given)
  if (found === undefined)
    throw new RangeError(
      `Unexpected ${key} \`${given}\`, expected ${choices.map((one) => `\`${one}\``).join(' or ')}`,
    )
  return found
}
