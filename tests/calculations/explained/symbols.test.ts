import {describe, expect, test} from 'vitest'
import {symbolsUsed} from '../../../src/calculations/symbols-used.ts'
import {listedCalculations} from '../../../src/commands/calculate-list.ts'
import {unexplainedSymbols} from './unexplained-symbols.ts'

describe('the formula of each calculation', () => {
  test.each(listedCalculations)('$note.name explains every symbol in words', ({note}) => {
    expect(
      unexplainedSymbols(
        note.formula,
        note.symbols.map((one) => one.symbol),
      ),
    ).toEqual([])
  })

  test.each(listedCalculations)(
    '$note.name explains no symbol that it does not use, and none twice',
    ({note}) => {
      expect(symbolsUsed(note.formula, note.symbols)).toEqual(note.symbols)
      for (const {meaning} of note.symbols) expect(meaning).toMatch(/\p{L}{3}/u)
    },
  )
})

describe('a symbol that nobody explains', () => {
  test.each<[string, readonly string[], readonly string[]]>([
    ['F = m·g', ['F'], ['m', 'g']],
    ['V after = V + ΔV', ['V', 'V after'], ['ΔV']],
    ['As = π/4·d0²', ['As', 'd'], ['d0']],
    ['p2 abs = p1 abs·T2/T1', ['p2 abs', 'T1', 'T2'], ['p1']],
    ['c galling = c + 0.125 mm, at least 3 m/s', ['c'], []],
    ['c galling = c + 0.125 mm', ['c galling'], ['c']],
    ['FM = As·Rp0.2', ['FM', 'As'], ['Rp0.2']],
    ['Σy² where y is counted', [], ['Σy', 'y']],
  ])('is found in %s', (line, explained, found) => {
    expect(unexplainedSymbols([line], explained)).toEqual(found)
  })
})
