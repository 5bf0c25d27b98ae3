import {describe, expect, test} from 'vitest'
import {expectedWord, nearestWord} from '../../src/check/nearest-word.ts'

describe('the nearest word', () => {
  test('is the one that takes fewest changed letters, the first of equals', () => {
    expect(nearestWord('serail', ['tank', 'serial', 'role'])).toBe('serial')
    expect(nearestWord('x', ['a', 'b'])).toBe('a')
    expect(nearestWord('x', [])).toBeUndefined()
  })
})

describe('what was expected', () => {
  const many = Array.from({length: 9}, (_, index) => `row-${index}`)

  test('names a near word', () => {
    expect(expectedWord('hub-bolt', ['hub-bolts', 'cover-bolts'], 'a joint')).toBe(
      'expected a joint such as `hub-bolts`',
    )
  })

  test('names all words of a short list when none is near', () => {
    expect(expectedWord('flange-nuts-and-more', ['a', 'b'], 'a joint')).toBe('expected one of `a`, `b`')
  })

  test('names only the kind when the list is long or empty', () => {
    expect(expectedWord('something-else', many, 'a joint')).toBe('expected a joint')
    expect(expectedWord('x', [], 'a joint')).toBe('expected a joint')
  })
})
