import {describe, expect, test} from 'vitest'
import {addMessage, type ContentFiles} from '../../src/messages/add-message.ts'
import {printMessages} from '../../src/messages/print-messages.ts'

describe('a printed message', () => {
  test('has place, weight, reason and rule, then the remedy and the other place', () => {
    const files: ContentFiles = new Map()
    const note = {note: 'Rename one of the two', cause: {path: 'a.yaml', line: 2, column: 3}}
    addMessage(files, {path: 'b.yaml', line: 1, column: 5}, 'no-duplicate-id', 'Unexpected second `x`', note)
    addMessage(files, {path: 'a.yaml', line: 9, column: 1}, 'no-implausible-value', 'Unexpected mass')
    addMessage(files, {path: 'a.yaml', line: 7, column: 1}, 'no-uncomputable-value', 'Unexpected gap')
    expect(printMessages(files, 'content')).toBe(
      [
        'content/a.yaml:7:1 information Unexpected gap no-uncomputable-value\n',
        'content/a.yaml:9:1 warning Unexpected mass no-implausible-value\n',
        'content/b.yaml:1:5 error Unexpected second `x` no-duplicate-id\n',
        '    mend: Rename one of the two\n',
        '    see: content/a.yaml:2:3\n',
      ].join(''),
    )
  })

  const saidOf = (reason: string): string => {
    const files: ContentFiles = new Map()
    addMessage(files, {path: 'a.yaml', line: 1, column: 1}, 'no-bad-quantity', reason)
    return printMessages(files, 'content')
  }

  test.each(['\n', '\r', '\u0000', '\u001B', '\u009B', '\u2028'])(
    'stays one line and moves no cursor where an author wrote %j',
    (sign) => {
      expect(saidOf(`Unexpected \`a${sign}b\`, expected c`)).toBe(
        'content/a.yaml:1:1 error Unexpected `a\uFFFDb`, expected c no-bad-quantity\n',
      )
    },
  )

  test('quotes up to 120 letters of an author and no page of them', () => {
    expect(saidOf(`Unexpected \`${'9'.repeat(120)}\`, expected \`mm\``)).toContain(
      `Unexpected \`${'9'.repeat(120)}\`, expected \`mm\` no-bad-quantity`,
    )
    expect(saidOf(`Unexpected \`${'9'.repeat(121)}\`, expected \`mm\``)).toContain(
      `Unexpected \`${'9'.repeat(120)}…\`, expected \`mm\` no-bad-quantity`,
    )
  })
})
