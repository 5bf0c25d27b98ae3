import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import type {PlacedNode} from '../../src/handbook-model/sources.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {readYaml} from '../../src/read/read-yaml.ts'
import {linesOf, messagesOf} from './messages-of.ts'

function read(text: string, firstLine = 1): {node: PlacedNode | undefined; files: ContentFiles} {
  const files: ContentFiles = new Map()
  return {node: readYaml('a.yaml', text, files, firstLine), files}
}

/** The tree as plain data, for looking at texts without places. */
function plain(node: PlacedNode | undefined): unknown {
  if (!node) return undefined
  if (node.kind === 'scalar') return node.text
  if (node.kind === 'list') return node.items.map(plain)
  return Object.fromEntries(node.entries.map(({key, value}) => [key.text, plain(value)]))
}

describe('YAML that is read', () => {
  test('keeps every scalar as the text that was written', () => {
    const {node, files} = read('a: no\nb: 1e3\nc: 0x10\nd: 2031-02-14\ne: null\nf: "0412"\ng: 1.50\nh:\n')
    expect(plain(node)).toEqual({
      a: 'no',
      b: '1e3',
      c: '0x10',
      d: '2031-02-14',
      e: 'null',
      f: '0412',
      g: '1.50',
      h: '',
    })
    expect(messagesOf(files)).toEqual([])
  })

  test('knows line and column of each key and value, from the first line that it is told', () => {
    const {node} = read('joints:\n  - {id: hub, length: 45 mm}\n', 2)
    const joint = node?.kind === 'map' ? node.entries[0]?.value : undefined
    const first = joint?.kind === 'list' ? joint.items[0] : undefined
    expect(first).toMatchObject({kind: 'map', place: {path: 'a.yaml', line: 3, column: 5}})
    expect(first?.kind === 'map' && first.entries[1]).toMatchObject({
      key: {text: 'length', place: {line: 3, column: 15}},
      value: {text: '45 mm', place: {line: 3, column: 23, endLine: 3, endColumn: 28}},
    })
  })

  test('takes an empty file for a map without keys', () => {
    expect(read('')).toMatchObject({node: {kind: 'map', entries: []}})
    expect(read('# only a comment\n')).toMatchObject({node: {kind: 'map', entries: []}})
  })

  test('keeps both of two equal keys, for the shapes to tell', () => {
    const {node, files} = read('a: b\na: c\n')
    expect(node).toMatchObject({entries: [{value: {text: 'b'}}, {value: {text: 'c'}}]})
    expect(messagesOf(files)).toEqual([])
  })
})

describe('YAML that is refused', () => {
  test.each([
    [
      'a tab as indentation',
      'contact:\n\t- office\n',
      'a.yaml:2:1 Unexpected tab as indentation, expected blanks no-yaml-fault | Indent with two blanks for each level',
    ],
    [
      'a bracket that does not close',
      'a: [b\nc: d\n',
      'a.yaml:2:1 Unexpected YAML fault `Flow sequence in block collection must be sufficiently indented and end with a ]`, expected well-formed YAML no-yaml-fault | Mend the line, or put the text in quotes',
    ],
    [
      'a colon inside a text',
      'title: bolts: eight\n',
      'a.yaml:1:8 Unexpected YAML fault `Nested mappings are not allowed in compact mappings`, expected well-formed YAML no-yaml-fault | Mend the line, or put the text in quotes',
    ],
    [
      'a second document, which would be left out',
      'a: b\n---\nc: d\n',
      'a.yaml:2:1 Unexpected second document in the file, expected one no-yaml-fault | Take the line `---` out, or move what follows to a file of its own',
    ],
    [
      'a tag',
      'a: !odd b\n',
      'a.yaml:1:4 Unexpected YAML fault `Unresolved tag: !odd`, expected well-formed YAML no-yaml-fault | Mend the line, or put the text in quotes',
    ],
    [
      'an anchor that nothing refers to',
      'a: &x b\n',
      'a.yaml:1:7 Unexpected anchor or alias, expected every value written out no-yaml-alias | Write the value at each place that needs it, or refer to it by id',
    ],
    [
      'an anchor with its alias',
      'a: &x [b]\nc: [*x, *x]\n',
      'a.yaml:1:7 Unexpected anchor or alias, expected every value written out no-yaml-alias | Write the value at each place that needs it, or refer to it by id',
    ],
  ])('%s', (_what, text, line) => {
    const {node, files} = read(text)
    expect(node).toBeUndefined()
    expect(messagesOf(files)).toEqual([line])
  })

  test('tells the lines of the file, not of the front matter', () => {
    expect(linesOf(read('a: &x b\n', 2).files)).toEqual([
      'a.yaml:2:7 Unexpected anchor or alias, expected every value written out no-yaml-alias',
    ])
  })

  test('tells tabs once in a file, whatever they make of its lines', () => {
    expect(
      messagesOf(read('contact:\n\t- office\n\t- mail\nhouse:\n\tpurge: x\n\t\tleast: y\n').files),
    ).toEqual([
      'a.yaml:2:1 Unexpected tab as indentation, expected blanks no-yaml-fault | Indent with two blanks for each level',
    ])
  })

  test('tells one message a line', () => {
    expect(messagesOf(read('[[[[[[[[ :::\n').files)).toHaveLength(1)
  })

  const tooDeep = 'Unexpected nesting deeper than content ever is, expected a few levels no-yaml-fault'
  test.each([
    ['open brackets', '['.repeat(900_000), `a.yaml:1:101 ${tooDeep}`],
    ['closed brackets', `a: ${'['.repeat(400_000)}${']'.repeat(400_000)}`, `a.yaml:1:104 ${tooDeep}`],
    ['lists in one line', `${'- '.repeat(400_000)}a`, `a.yaml:1:201 ${tooDeep}`],
    [
      'maps in maps',
      Array.from({length: 900}, (_, level) => `${' '.repeat(level)}a:`).join('\n'),
      `a.yaml:202:201 ${tooDeep}`,
    ],
  ])(
    'nesting without end by %s, quickly',
    (_what, text, line) => {
      const {node, files} = read(text)
      expect(node).toBeUndefined()
      expect(linesOf(files)).toEqual([line])
    },
    2000,
  )

  test('a bomb of aliases that would grow to a billion texts, quickly', () => {
    const levels = Array.from(
      {length: 9},
      (_, level) => `a${level + 1}: &a${level + 1} [${`*a${level}, `.repeat(10)}]`,
    )
    const {node, files} = read(['a0: &a0 [lol]', ...levels].join('\n'))
    expect(node).toBeUndefined()
    expect(linesOf(files)).toEqual([
      'a.yaml:1:9 Unexpected anchor or alias, expected every value written out no-yaml-alias',
    ])
  }, 2000)
})

describe('nesting that content has', () => {
  test('is read: twenty levels of each kind, and brackets inside texts', () => {
    const deep = `${'['.repeat(20)}${']'.repeat(20)}`
    const {files, node} = read(`a: ${deep}\nb: "${'['.repeat(60)}"\nc: "${'['.repeat(30)}"\n`)
    expect(messagesOf(files)).toEqual([])
    expect(node).toBeDefined()
  })
})

describe('any text at all', () => {
  test('is either read or refused with a message, and never throws', () => {
    const pieces = fc.constantFrom(
      'a',
      ': ',
      '- ',
      '\n',
      '  ',
      '[',
      ']',
      '{',
      '}',
      '&x ',
      '*x',
      '"',
      "'",
      '|',
      '>',
      '#',
      '---',
      '\t',
      '? ',
      '!!int ',
      '%YAML',
      '\u0000',
      '\uFEFF',
      'é',
      '\r\n',
    )
    const text = fc.oneof(
      fc.string({unit: 'binary', maxLength: 200}),
      fc.array(pieces, {maxLength: 60}).map((parts) => parts.join('')),
    )
    fc.assert(
      fc.property(text, (written) => {
        const {node, files} = read(written)
        expect(node === undefined).toBe(messagesOf(files).length > 0)
      }),
      {numRuns: 1000},
    )
  })
})
