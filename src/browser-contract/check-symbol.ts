/** Letters of a check code: base 32 without I, L, O and U, so that no two are confused when read aloud or from a photocopy. */
export const codeLetters = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'

/** Distinct non-zero weights, one for each of the eight letters; the check symbol itself has weight one. */
const weights = [2, 3, 4, 5, 6, 7, 8, 9] as const

/**
 * Check symbol of eight letters: the weighted sum in the field of 32 elements.
 *
 * Distinct non-zero weights in a field find every single wrong letter and every swap of two neighbours.
 *
 * @throws {RangeError}
 *   When the text is not eight letters of the alphabet.
 */
export function checkSymbol(letters: string): string {
  if (letters.length !== weights.length)
    throw new RangeError(`Unexpected ${letters.length} letters, expected ${weights.length}`)
  const sum = weights.reduce(
    (total, weight, index) => total ^ multiply(weight, letterValue(letters.charAt(index))),
    0,
  )
  return codeLetters.charAt(sum)
}

/**
 * Reads a code as typed: small letters, blanks, hyphens and the dashes that editors make of them are forgiven, O is read as 0, I and L as 1.
 *
 * @returns
 *   The proper form, and whether its check symbol fits; `undefined` when it is no code at all.
 */
export function readCheckCode(text: string): {readonly code: string; readonly sound: boolean} | undefined {
  const letters = text
    .toUpperCase()
    .replace(/[\s\p{Dash}]+/gu, '')
    .replaceAll('O', '0')
    .replace(/[IL]/gu, '1')
  if (letters.length !== 9 || [...letters].some((letter) => !codeLetters.includes(letter))) return undefined
  return {code: printCheckCode(letters), sound: checkSymbol(letters.slice(0, 8)) === letters.charAt(8)}
}

/** Groups nine letters for print: `7K2M-9QTR-4`. */
export function printCheckCode(letters: string): string {
  return `${letters.slice(0, 4)}-${letters.slice(4, 8)}-${letters.slice(8)}`
}

function letterValue(letter: string): number {
  const value = codeLetters.indexOf(letter)
  if (letter === '' || value === -1)
    throw new RangeError(`Unexpected letter \`${letter}\`, expected one of ${codeLetters}`)
  return value
}

/** Product in GF(32) with the polynomial x⁵ + x² + 1. */
function multiply(a: number, b: number): number {
  let product = 0
  for (let bit = 0; bit < 5; bit += 1) if ((b >> bit) & 1) product ^= a << bit
  for (let bit = 9; bit >= 5; bit -= 1) if ((product >> bit) & 1) product ^= 0b100101 << (bit - 5)
  return product
}
