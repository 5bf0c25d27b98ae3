import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {linesOf} from '../messages-for-tests.ts'
import {parsed, procedureText} from '../procedure-for-tests.ts'

/** Stretches of Markdown and of the procedure language, whole, broken and in odd company. */
const stretch = fc.constantFrom(
  ...[
    '# Title',
    '## Work',
    '### Part',
    '::section{#work}',
    ':::one-of{#a}',
    ':::',
    '::::',
    '::value{ref=a',
    '::',
  ],
  ...[
    '1. :step{#b} Look.',
    '2. [ ] :step{#c when="a = b"}',
    '- :choice{#d} One.',
    '- plain',
    '   ',
    '\t',
    '\n',
  ],
  ...[
    '::caution{ref=e}',
    '::caution{ref=e section}',
    '::hold-point{#f title=G}',
    '::repeat{until="x" times=9}',
  ],
  ...[
    '**bold',
    '_em_',
    '`code`',
    '<b>',
    '<!--',
    '-->',
    '&amp;',
    '&#0;',
    '[^1]',
    '[^1]: foot',
    '![a](b)',
    '[a]: b',
  ],
  ...[
    '| a | b |',
    '| - | - |',
    '***',
    '---',
    '===',
    '> quote',
    '~~~',
    'http://a.b',
    'a@b.cd',
    '\\',
    '  \n',
    '½',
    'ø',
  ],
  ...[
    ':value{ref=a}',
    ':procedure[**x**]{ref=y}',
    ':term[',
    ']{ref=z}',
    '{#g #h}',
    '"',
    "'",
    '=',
    ' when="',
    '}',
  ],
)

describe('any text below the front matter', () => {
  test('is read or told, never thrown, and every message says where and how to mend', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(stretch, fc.constantFrom('\n', '\n\n', ' ', '\n   ', '')), {maxLength: 30}),
        (stretches) => {
          const text = procedureText(stretches.map((one) => one.join('')).join(''))
          const lines = text.split('\n').length
          for (const line of linesOf(parsed(text).files)) {
            const [, at, column] = /^procedures\/sample\.md:(\d+):(\d+) Unexpected /u.exec(line) ?? []
            expect(Number(at)).toBeGreaterThan(0)
            expect(Number(at)).toBeLessThanOrEqual(lines)
            expect(Number(column)).toBeGreaterThan(0)
          }
        },
      ),
      {numRuns: 200},
    )
  })
})
