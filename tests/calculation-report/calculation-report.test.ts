import {mkdirSync, readdirSync, readFileSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {describe, expect, test} from 'vitest'
import {listedCalculations} from '../../src/commands/calculate-list.ts'
import {deviationOf} from '../published-values/agreement.ts'
import {everyAgreement} from './every-agreement.ts'
import {otherFiles, rowsFiles} from './every-rows-file.ts'
import {distinctRows, reportLines, reportText, waysKnown} from './report.ts'
import {withoutPublishedRows} from './without-published-rows.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const listed = listedCalculations.map(({note}) => note.name)
const headers = Object.values(rowsFiles).flatMap(({published}) => Object.values(published))
const lines = reportLines(everyAgreement)

function evidenceOf(name: string): number {
  const rows = lines.find(({calculation}) => calculation === name)?.rows
  return rows ? rows.read + rows.reprint + rows.memory : 0
}

test('the report is printed and kept', () => {
  const text = reportText(lines, headers, withoutPublishedRows, listed)
  mkdirSync(join(root, '.build'), {recursive: true})
  writeFileSync(join(root, '.build', 'calculation-report.txt'), text)
  process.stdout.write(`\n${text}\n`)
  for (const name of listed) expect(text).toContain(`\n${name} `)
})

describe('files of published rows', () => {
  test('are all counted', () => {
    const names = readdirSync(join(root, 'tests/published-values')).filter(
      (name) => !otherFiles.includes(name),
    )
    expect(Object.keys(rowsFiles).sort()).toEqual(names.sort())
  })

  test.each(Object.entries(rowsFiles))(
    '%s has a header for every row, or says why it is no row',
    (_, file) => {
      const {published, noRows = {}, ...values} = file
      const rows = Object.values(published).flatMap((header) => [header.rows, ...header.rows])
      expect(Object.keys(published).length).toBeGreaterThan(0)
      for (const [name, value] of Object.entries(values)) {
        if (typeof value === 'function') continue
        expect(rows.includes(value) !== name in noRows, name).toBe(true)
      }
      for (const name of Object.keys(noRows)) expect(Object.keys(values)).toContain(name)
      for (const {source, rows: own, known} of Object.values(published)) {
        expect(source).toMatch(/\p{L}{4}/u)
        expect(own.length).toBeGreaterThan(0)
        for (const way of known) expect(waysKnown).toContain(way)
      }
    },
  )

  test.each(Object.keys(rowsFiles))('%s takes nothing from the library but types', (name) => {
    const text = readFileSync(join(root, 'tests/published-values', name), 'utf8')
    expect(text.match(/^import (?!type ).*src\/.*$/gmu)).toBeNull()
  })

  test('say of a figure that was computed that it was computed apart from this project', () => {
    for (const {source, known} of headers)
      if (known.every((way) => way === 'computed'))
        expect(source).toMatch(/computed apart from this project|GNU units/u)
  })
})

describe('published rows', () => {
  test('are each held against the library', () => {
    const held = everyAgreement.map(({header}) => header)
    expect(headers.filter((header) => !held.includes(header)).map(({source}) => source)).toEqual([])
    expect(new Set(held).size).toBe(held.length)
    expect(held.length).toBe(headers.length)
    for (const {agreements} of everyAgreement)
      for (const row of agreements()) {
        expect(row.length).toBeGreaterThan(0)
        for (const one of row) expect(deviationOf(one), one.what).toBeLessThanOrEqual(1 + 1e-9)
      }
  })

  test('belong to a calculation that the command line lists, or to rounding', () => {
    for (const {calculation} of headers) expect([...listed, 'rounding']).toContain(calculation)
  })

  test('are at least four hundred, those from memory counted apart', () => {
    expect(distinctRows(headers, ['read', 'reprint', 'memory'])).toBeGreaterThanOrEqual(400)
    expect(distinctRows(headers, ['read', 'reprint'])).toBeGreaterThan(distinctRows(headers, ['memory']))
  })
})

describe('calculations', () => {
  test('are at least twenty-five, and as many have published rows', () => {
    expect(listed.length).toBeGreaterThanOrEqual(25)
    expect(listed.filter((name) => evidenceOf(name) > 0).length).toBeGreaterThanOrEqual(25)
  })

  test.each(listed)('%s has a published row, or a test that stands in for it', (name) => {
    expect(evidenceOf(name) > 0).toBe(!withoutPublishedRows.has(name))
  })

  test.each([...withoutPublishedRows])('%s is tested by %s', (name, file) => {
    expect(listed).toContain(name)
    const text = readFileSync(join(root, file), 'utf8')
    const note = listedCalculations.find((one) => one.note.name === name)?.note
    const imported = [...text.matchAll(/'((?:\.\.\/)+src\/calculations\/[^']*)'/gu)].map(([, path = '']) =>
      readFileSync(join(root, file, '..', path), 'utf8'),
    )
    expect(imported.some((source) => source.includes(`name: '${note?.name}'`))).toBe(true)
  })
})
