import {describe, expect, test} from 'vitest'
import {checkSymbol, codeLetters, readCheckCode} from '../../src/browser-contract/check-symbol.ts'

const letters = [...codeLetters]

/** Codes whose letters differ from each other in many ways. */
const samples = ['00000000', 'ZZZZZZZZ', '7K2M9QTR', '01234567', 'ZYXWVTSR', '0Z0Z0Z0Z', 'A1B2C3D4']

describe('no typing error of a check code is missed', () => {
  test('neither each of the 31 other letters at each of the nine places', () => {
    const missed = samples.flatMap((text) => {
      const code = text + checkSymbol(text)
      return [...code].flatMap((right, at) =>
        letters
          .filter((letter) => letter !== right)
          .map((letter) => code.slice(0, at) + letter + code.slice(at + 1))
          .filter((wrong) => readCheckCode(wrong)?.sound !== false),
      )
    })
    expect(missed).toEqual([])
  })

  test('nor the swap of any two letters at each of the seven pairs of places', () => {
    const pairs = letters.flatMap((one) => letters.filter((two) => two > one).map((two) => `${one}${two}`))
    const missed = [0, 1, 2, 3, 4, 5, 6].flatMap((at) =>
      pairs
        .map((pair) => `${'7K2M9Q'.slice(0, at)}${pair}${'7K2M9Q'.slice(at)}`)
        .map((text) => text + checkSymbol(text))
        .filter((code) => readCheckCode(swapped(code, at))?.sound !== false),
    )
    expect(pairs).toHaveLength(496)
    expect(missed).toEqual([])
  })

  test('nor the swap of the last letter with the symbol itself', () => {
    const missed = letters.flatMap((last) => {
      const code = `7K2M9QT${last}${checkSymbol(`7K2M9QT${last}`)}`
      const turned = swapped(code, 7)
      return turned !== code && readCheckCode(turned)?.sound !== false ? [code] : []
    })
    expect(missed).toEqual([])
  })
})

function swapped(code: string, at: number): string {
  return code.slice(0, at) + code.charAt(at + 1) + code.charAt(at) + code.slice(at + 2)
}
