import {describe, expect, test} from 'vitest'
import {pageDifferences} from '../../src/issues/page-differences.ts'
import {compareTexts} from '../../src/technical-text/compare-texts.ts'

const step = (id: string, number: number, text: string): string =>
  `${id}\tnumber\t${number}\n${id}\tstep\t${text}\n`
const caution = (number: number): string =>
  `caution-fall\tword\tDANGER ${number}\ncaution-fall\ttitle\tFall\ncaution-fall\thazard\tThe tank is deep.\n`

const told = (before: string, after: string): readonly string[] =>
  pageDifferences(compareTexts(before, after)).map(({area, change, block}) => `${area} ${change} ${block}`)

describe('differences of a page', () => {
  test('join the lines of a caution that came, and renumber what stands behind it', () => {
    const before = `${step('open', 1, 'Open it.')}caution-cut\tword\tCAUTION 1\n`
    const after = `${caution(1)}${step('open', 1, 'Open it.')}caution-cut\tword\tCAUTION 2\n`
    expect(told(before, after)).toEqual(['cautions added caution-fall', 'numbers renumbered numbers'])
  })

  test('tell a step that moved once, and not as one that went and one that came', () => {
    const [open, drain, close] = ['Open it.', 'Drain it.', 'Close it.']
    const before = step('open', 1, open) + step('drain', 2, drain) + step('close', 3, close)
    const after = step('drain', 1, drain) + step('close', 2, close) + step('open', 3, open)
    expect(told(before, after)).toEqual(['steps moved open', 'numbers renumbered numbers'])
  })

  test('keep another word of a caution apart from its number', () => {
    expect(told('caution-fall\tword\tWARNING 1\n', 'caution-fall\tword\tDANGER 1\n')).toEqual([
      'cautions changed caution-fall',
    ])
  })

  test('hold each line that differs exactly once', () => {
    const before = step('open', 1, 'Open it.') + caution(1) + step('drain', 2, 'Drain it.')
    const after = step('drain', 1, 'Drain it slowly.') + caution(1) + step('open', 2, 'Open it.')
    const lines = compareTexts(before, after)
    const held = pageDifferences(lines).flatMap((one) => one.lines)
    expect(held.length).toBe(lines.length)
    expect(new Set(held)).toEqual(new Set(lines))
  })
})
