import {describe, expect, test} from 'vitest'
import {noIncompleteCaution} from '../../../src/check/rules/no-incomplete-caution.ts'
import {caution} from '../library-for-tests.ts'
import {toldBy} from '../messages-for-tests.ts'

function told(more: Readonly<Record<string, string>>): readonly string[] {
  return toldBy((files) => noIncompleteCaution(caution('load', 'H07', more), files))
}

const advice = (line: string): string =>
  `cautions/load.yaml:1:1 Unexpected advice \`${line}\` of caution \`load\`, expected a line that starts with a verb of the list no-incomplete-caution`

describe('advice', () => {
  test.each([
    'Stand clear of the load.',
    'Do not stand below the load.',
    'Never stand below the load.',
    'Lock, tag and try each valve.',
  ])('`%s` is accepted', (line) => {
    expect(told({avoid: `["${line}"]`})).toEqual([])
  })

  test.each([
    'Be careful.',
    'Be aware of the load.',
    'Look carefully at the load.',
    'Beware of the load.',
    'The load swings.',
    'Gloves.',
    'Do not be there.',
    'Never ever.',
    'Ensure that it hangs.',
  ])('`%s` is refused', (line) => {
    expect(told({avoid: `["${line}"]`})).toEqual([advice(line)])
  })

  test('is refused line by line', () => {
    expect(told({avoid: '[Stand clear., Gloves., Hats.]'})).toEqual([advice('Gloves.'), advice('Hats.')])
  })

  test('that is missing is refused', () => {
    expect(told({avoid: '[]'})).toEqual([
      'cautions/load.yaml:1:1 Unexpected caution `load` without advice, expected at least one line under `avoid` no-incomplete-caution',
    ])
  })
})

describe('the word fits the worst harm and its likelihood', () => {
  const words = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE']
  test.each([
    ['death-or-serious-injury', 'will', 'DANGER'],
    ['death-or-serious-injury', 'could', 'WARNING'],
    ['minor-or-moderate-injury', 'will', 'CAUTION'],
    ['minor-or-moderate-injury', 'could', 'CAUTION'],
    ['damage', 'will', 'NOTICE'],
    ['damage', 'could', 'NOTICE'],
  ])('%s that %s happen takes %s and no other word', (harm, likelihood, word) => {
    expect(told({word, 'worst-harm': harm, likelihood})).toEqual([])
    for (const other of words.filter((one) => one !== word)) {
      expect(told({word: other, 'worst-harm': harm, likelihood})).toEqual([
        `cautions/load.yaml:1:1 Unexpected word ${other} of caution \`load\`, expected ${word} for ${harm} that ${likelihood} happen no-incomplete-caution`,
      ])
    }
  })
})

test.each(['hazard', 'consequence', 'residual-risk'])(
  'a caution with a blank %s does not take shape',
  (key) => {
    expect(() => caution('load', 'H07', {[key]: '" "'})).toThrow('Unexpected blank, expected a text')
  },
)
