import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  checkSymbol,
  codeLetters,
  printCheckCode,
  readCheckCode,
} from '../../src/browser-contract/check-symbol.ts'

const eightLetters = fc
  .array(fc.constantFrom(...codeLetters), {minLength: 8, maxLength: 8})
  .map((letters) => letters.join(''))

/** The code of eight letters as printed. */
const codeOf = (letters: string): string => printCheckCode(`${letters}${checkSymbol(letters)}`)

describe('the check symbol', () => {
  test('uses 32 letters, none of which is taken for another', () => {
    expect(new Set(codeLetters).size).toBe(32)
    expect(codeLetters).not.toMatch(/[ILOU]/u)
  })

  /** Worked by hand: 1 at the last place has weight 9, so the sum is 9; at the first place the weight is 2. */
  test.each([
    ['00000000', '0'],
    ['00000001', '9'],
    ['10000000', '2'],
    ['10000001', 'B'],
  ])('of %s is %s', (letters, symbol) => {
    expect(checkSymbol(letters)).toBe(symbol)
  })

  test('finds every single wrong letter', () => {
    fc.assert(
      fc.property(eightLetters, fc.nat(8), fc.constantFrom(...codeLetters), (letters, place, other) => {
        const right = `${letters}${checkSymbol(letters)}`
        const wrong = `${right.slice(0, place)}${other}${right.slice(place + 1)}`
        expect(readCheckCode(wrong)?.sound).toBe(wrong === right)
      }),
    )
  })

  test('finds every swap of two neighbours', () => {
    fc.assert(
      fc.property(eightLetters, fc.nat(7), (letters, place) => {
        const right = `${letters}${checkSymbol(letters)}`
        const swapped = `${right.slice(0, place)}${right.charAt(place + 1)}${right.charAt(place)}${right.slice(place + 2)}`
        expect(readCheckCode(swapped)?.sound).toBe(swapped === right)
      }),
    )
  })

  test('refuses other than eight letters of the alphabet', () => {
    expect(() => checkSymbol('1234567')).toThrow('Unexpected 7 letters, expected 8')
    expect(() => checkSymbol('1234567U')).toThrow('Unexpected letter `U`')
  })
})

describe('a typed code', () => {
  test('is read whatever the case, the blanks and the hyphens', () => {
    fc.assert(
      fc.property(eightLetters, (letters) => {
        const code = codeOf(letters)
        for (const typed of [
          code,
          code.toLowerCase(),
          code.replaceAll('-', ''),
          code.replaceAll('-', ' '),
          code.replaceAll('-', '–'),
          code.replaceAll('-', '\u2011'),
        ])
          expect(readCheckCode(typed)).toEqual({code, sound: true})
      }),
    )
  })

  test('may have O for 0, and I or L for 1', () => {
    const code = codeOf('01010101')
    expect(readCheckCode(code.replaceAll('0', 'o').replaceAll('1', 'l'))).toEqual({code, sound: true})
    expect(readCheckCode(code.replaceAll('0', 'O').replaceAll('1', 'I'))).toEqual({code, sound: true})
  })

  test.each(['', '7K2M-9QTR', '7K2M-9QTR-44', '7K2M-9QUR-4', 'rev 3'])('`%s` is no code', (typed) => {
    expect(readCheckCode(typed)).toBeUndefined()
  })
})
