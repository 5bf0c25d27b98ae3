import {describe, expect, test} from 'vitest'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {readMarkdown} from '../../src/read/read-markdown.ts'
import {messagesOf} from './messages-of.ts'

function read(text: string) {
  const files: ContentFiles = new Map()
  return {source: readMarkdown('procedures/a.md', text, files), files}
}

describe('a procedure', () => {
  test('has front matter and a tree, both with lines of the whole file', () => {
    const {source, files} = read(
      '---\nid: a\npeople: 2\n---\n\n# Title\n\n1. :step{#one} Do it.\n\n::hold-point{#h}\n',
    )
    expect(messagesOf(files)).toEqual([])
    expect(source?.frontMatter).toMatchObject({
      entries: [
        {value: {text: 'a', place: {line: 2, column: 5}}},
        {value: {text: '2', place: {line: 3, column: 9}}},
      ],
    })
    expect(source?.tree.children.map((node) => [node.type, node.position?.start.line])).toEqual([
      ['yaml', 1],
      ['heading', 6],
      ['list', 8],
      ['leafDirective', 10],
    ])
  })

  test('reads tables and inline directives', () => {
    const {source} = read('---\nid: a\n---\n\n| a | b |\n| - | - |\n| c | :value{ref=x} |\n')
    expect(JSON.stringify(source?.tree)).toContain('"type":"table"')
    expect(JSON.stringify(source?.tree)).toContain(
      '"type":"textDirective","name":"value","attributes":{"ref":"x"}',
    )
  })

  test('without front matter is refused at its start', () => {
    const {source, files} = read('# Title\n')
    expect(source).toBeUndefined()
    expect(messagesOf(files)).toEqual([
      'procedures/a.md:1:1 Unexpected start of the procedure, expected front matter between `---` lines no-markdown-fault | Begin the file with a line `---`, then the fields, then a line `---`',
    ])
  })

  test('with a fault in its front matter names the line of the file', () => {
    const {source, files} = read('---\nid: a\npeople:\n\t- 2\n---\n\n# Title\n')
    expect(source?.frontMatter).toBeUndefined()
    expect(messagesOf(files)).toEqual([
      'procedures/a.md:4:1 Unexpected tab as indentation, expected blanks no-yaml-fault | Indent with two blanks for each level',
    ])
  })
})
