import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {readCsv} from '../../src/read/read-csv.ts'
import {messagesOf} from './messages-of.ts'

const table =
  '# title: Threads\n# unit pitch: mm\n# a remark\n\nsize,title,pitch\nM6,"screw, ""short""",1\nM8,bolt,1.25\n'

function read(text: string) {
  const files: ContentFiles = new Map()
  const csv = readCsv('tables/threads.csv', text, files)
  return {
    messages: messagesOf(files),
    head: csv && Object.fromEntries([...csv.head].map(([key, {text: value}]) => [key, value])),
    rows: csv && [csv.header, ...csv.rows].map((row) => row.map((cell) => cell.text)),
    csv,
  }
}

describe('a table', () => {
  test('has a head of keys, a header and rows; quotes hold commas and quotes', () => {
    expect(read(table)).toMatchObject({
      messages: [],
      head: {title: 'Threads', 'unit pitch': 'mm'},
      rows: [
        ['size', 'title', 'pitch'],
        ['M6', 'screw, "short"', '1'],
        ['M8', 'bolt', '1.25'],
      ],
    })
  })

  test('tells the place of head, header and cells, also of equal cells in one row', () => {
    const {csv} = read('# title: T\na,b,c\n1,11,1\n')
    expect(csv?.head.get('title')?.place).toMatchObject({line: 1, column: 1})
    expect(csv?.place).toMatchObject({path: 'tables/threads.csv', line: 2, column: 1})
    expect(csv?.rows[0]?.map(({place}) => [place.line, place.column])).toEqual([
      [3, 1],
      [3, 3],
      [3, 6],
    ])
    expect(read('a,b,c\nx,,y\n').csv?.rows[0]?.map(({place}) => place.column)).toEqual([1, 3, 4])
  })

  test.each([
    ['M6,"a ""2"" b, 1",1,2', [1, 4, 19, 21]],
    ['M6 , , 1,2', [1, 5, 8, 10]],
    [' "M6",a,"",2', [2, 7, 9, 12]],
    ['\u00a0M6,a,\tb, 2 ', [2, 5, 8, 11]],
  ])('tells the column at which each cell of `%s` begins', (row, columns) => {
    const {csv, messages} = read(`a,b,c,d\n${row}\n`)
    expect(messages).toEqual([])
    expect(csv?.rows[0]?.map(({place}) => place.column)).toEqual(columns)
  })

  test('reads the same with the line ends of old editors, and loses no row to one', () => {
    const {rows, head, messages} = read(table)
    expect(read(table.replaceAll('\n', '\r'))).toMatchObject({rows, head, messages})
    expect(read('a,b\n1,2\r3,4\n').rows).toEqual([
      ['a', 'b'],
      ['1', '2'],
      ['3', '4'],
    ])
  })

  test('reads the same with CRLF line ends and without a last line end', () => {
    const {rows, head, messages} = read(table)
    expect(read(table.replaceAll('\n', '\r\n'))).toMatchObject({rows, head, messages})
    expect(read(table.trimEnd())).toMatchObject({rows, head, messages})
  })

  test.each([
    [
      'a row with a cell too many, pointing at the header too',
      `${table}M10,bolt,1.5,9\n`,
      'tables/threads.csv:8:1 Unexpected row of 4 cells, expected 3 as in the header no-csv-fault | Give the row one cell for each column; put a cell that holds a comma in quotes | see tables/threads.csv:5:1',
    ],
    [
      'a row with a cell too few',
      `${table}M10,bolt\n`,
      'tables/threads.csv:8:1 Unexpected row of 2 cells, expected 3 as in the header no-csv-fault | Give the row one cell for each column; put a cell that holds a comma in quotes | see tables/threads.csv:5:1',
    ],
    [
      'a quote inside a cell',
      `${table}M10,bo"lt,1.5\n`,
      'tables/threads.csv:8:1 Unexpected quotes in the row, expected quotes around a whole cell no-csv-fault | Put the whole cell in quotes and double the quotes inside it',
    ],
    [
      'a quote that does not close',
      `${table}M10,"bolt,1.5\n`,
      'tables/threads.csv:8:1 Unexpected quotes in the row, expected quotes around a whole cell no-csv-fault | Put the whole cell in quotes and double the quotes inside it',
    ],
  ])('names %s, and keeps the other rows', (_what, text, line) => {
    const {messages, rows} = read(text)
    expect(messages).toEqual([line])
    expect(rows?.map((row) => row[0])).toEqual(['size', 'M6', 'M8'])
  })

  test('with a key of its head twice is told, for one of the two would be lost', () => {
    expect(read('# unit pitch: mm\n# unit pitch: m\npitch\n1\n').messages).toEqual([
      'tables/threads.csv:2:1 Unexpected second line `# unit pitch: …`, expected each key once no-duplicate-id | Remove one of the two | see tables/threads.csv:1:1',
    ])
  })

  test('with a fault in its header is told once: no row takes the place of the header', () => {
    const {csv, messages} = read('a,"b\n1,2\n3,4\n')
    expect(csv).toBeUndefined()
    expect(messages).toEqual([
      'tables/threads.csv:1:1 Unexpected quotes in the row, expected quotes around a whole cell no-csv-fault | Put the whole cell in quotes and double the quotes inside it',
    ])
  })

  test.each(['', '# title: T\n'])('without a header (%j) is refused', (text) => {
    const {csv, messages} = read(text)
    expect(csv).toBeUndefined()
    expect(messages).toHaveLength(1)
    expect(messages[0]).toContain('Unexpected end of table, expected a header row no-csv-fault')
  })
})

describe('any table', () => {
  const cell = fc.string({unit: fc.constantFrom('a', '1', ' ', ',', '"', '#', 'ø', '\t'), maxLength: 6})
  const written = (text: string): string => `"${text.replaceAll('"', '""')}"`

  test('of quoted cells is read cell by cell, each at its own place', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), {maxLength: 4}), (rows) => {
        const lines = rows.map((row) => row.map(written).join(','))
        const {csv, messages} = read(`a,b,c\n${lines.map((line) => `${line}\n`).join('')}`)
        expect(messages).toEqual([])
        expect(csv?.rows.map((row) => row.map(({text}) => text))).toEqual(
          rows.map((row) => row.map((text) => text)),
        )
        for (const [index, row] of (csv?.rows ?? []).entries()) {
          const starts = [0, 1, 2].map((at) => rows[index]?.slice(0, at).map(written).join(',').length ?? 0)
          expect(row.map(({place}) => [place.line, place.column])).toEqual(
            starts.map((start, at) => [index + 2, start + (at === 0 ? 1 : 2)]),
          )
        }
      }),
    )
  })

  test('of any text is read or told, never thrown', () => {
    const letters = fc.constantFrom('a', ',', '"', '#', ':', ' ', '\n', '\r', '\r\n', '\u2028', '\u0000', '1')
    fc.assert(
      fc.property(fc.string({unit: letters, maxLength: 60}), (text) => {
        const {csv, messages} = read(text)
        expect(csv !== undefined || messages.length > 0).toBe(true)
      }),
    )
  })
})
