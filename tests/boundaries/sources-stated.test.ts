import {describe, expect, test} from 'vitest'
import {filesIn} from './source-files.ts'

interface Exported {
  readonly place: string
  readonly comment: string
}

/** Every exported function with the comment before it. */
function exportedFunctions(path: string, text: string): readonly Exported[] {
  const pattern = /(?:\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\n)?export (?:async )?function (\w+)/gu
  return [...text.matchAll(pattern)].map((match) => ({place: `${path} ${match[2]}`, comment: match[1] ?? ''}))
}

const calculations = filesIn('src/calculations', '.ts').flatMap(({path, text}) =>
  exportedFunctions(path, text),
)

describe('every calculation', () => {
  test('states its source and what it is valid for', () => {
    expect(calculations.length).toBeGreaterThan(8)
    const silent = calculations.filter(
      ({comment}) => !/Source: \S/u.test(comment) || !/Valid for: \S/u.test(comment),
    )
    expect(silent.map((one) => one.place)).toEqual([])
  })

  test('is found with and without a comment', () => {
    const text =
      '/** One. Source: a. */\nexport function one() {}\n\n/** Private. */\nfunction two() {}\n\nexport function three() {}\n'
    expect(exportedFunctions('a.ts', text)).toEqual([
      {place: 'a.ts one', comment: ' One. Source: a. '},
      {place: 'a.ts three', comment: ''},
    ])
  })
})

describe('every table of the content', () => {
  const tables = filesIn('content/tables', '.csv')

  test('says in its head which source it comes from and how it is known', () => {
    expect(tables.length).toBeGreaterThan(5)
    for (const {path, text} of tables) {
      for (const key of ['title', 'source', 'edition', 'status']) {
        expect(text, path).toMatch(new RegExp(`^# ${key}: \\S`, 'mu'))
      }
    }
  })
})
