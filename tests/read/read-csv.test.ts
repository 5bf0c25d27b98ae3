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

  test.each(['', '# title: T\n'])('without a header (%j) is refused', (text) => {
    const {csv, messages} = read(text)
    expect(csv).toBeUndefined()
    expect(messages).toHaveLength(1)
    expect(messages[0]).toContain('Unexpected end of table, expected a header row no-csv-fault')
  })
})
