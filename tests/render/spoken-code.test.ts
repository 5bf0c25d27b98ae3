import {expect, test} from 'vitest'
import {codeLetters} from '../../src/browser-contract/check-symbol.ts'
import {spokenCode} from '../../src/render/words-en.ts'

test('every letter of a check code has a spoken word of its own that begins with it', () => {
  const words = [...codeLetters].map((letter) => [letter, spokenCode(letter)] as const)
  expect(new Set(words.map(([, word]) => word)).size).toBe(32)
  for (const [letter, word] of words) {
    expect(word.length, letter).toBeGreaterThan(2)
    if (/[A-Z]/u.test(letter)) expect(word.startsWith(letter), word).toBe(true)
  }
})

test('a code is read aloud in the groups in which it is printed', () => {
  expect(spokenCode('7K2M-9QTR-4')).toBe('Seven Kilo Two Mike, Nine Quebec Tango Romeo, Four')
})
