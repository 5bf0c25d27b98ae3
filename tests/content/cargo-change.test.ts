import {describe, expect, test} from 'vitest'
import {compilePages} from '../../src/compile/compile-pages.ts'
import type {MaterialTable} from '../../src/handbook-model/material-table.ts'
import {demonstration} from './demonstration.ts'

const {content, values} = await demonstration()
const {pages} = compilePages(content, values, 'vessel-a')

/** The table of materials on the page of the cargo change of each pump. */
const tables = new Map(
  pages.flatMap((page): readonly (readonly [string, MaterialTable])[] =>
    page.kind === 'procedure' && page.head.path.endsWith('/cargo-change.html')
      ? page.sections.flatMap((section) =>
          section.items.flatMap((item) =>
            item.kind === 'step'
              ? item.parts.flatMap((part) =>
                  part.kind === 'material-table' ? [[page.head.position?.id ?? '', part] as const] : [],
                )
              : [],
          ),
        )
      : [],
  ),
)

function resultOf(pump: string, cargo: string): string | undefined {
  return tables.get(pump)?.cargoes.find((one) => one.id === cargo)?.result
}

describe('the cargo change of vessel one', () => {
  test('holds every cargo of the list against every material, on every pump', () => {
    const vessel = content.vessels.get('vessel-a')
    expect([...tables.keys()].sort()).toEqual(vessel?.positions.map((one) => one.id).sort())
    for (const table of tables.values()) {
      expect(table.cargoes.map((one) => one.id)).toEqual(vessel?.cargoes.map((one) => one.id))
      for (const cargo of table.cargoes) expect(cargo.cells).toHaveLength(table.parts.length)
    }
  })

  test('has a row of the table for each material in each cargo', () => {
    const {materials, suitability} = content.tables
    const pairs = new Set(suitability.rows.map((row) => `${row.material.id} in ${row.cargo.id}`))
    const cargoes = content.vessels.get('vessel-a')?.cargoes ?? []
    expect(cargoes).toHaveLength(8)
    for (const material of materials.rows)
      for (const cargo of cargoes) expect(pairs).toContain(`${material.id} in ${cargo.id}`)
  })

  test('asks the office before a cargo of which nobody knows what it does to FKM, and lets none of them pass', () => {
    expect(resultOf('4s', 'gas-oil')).toBe('every material suitable')
    expect(resultOf('4s', 'toluene-diisocyanate')).toBe('ASK OFFICE BEFORE LOADING')
    for (const table of tables.values())
      for (const cargo of table.cargoes.filter((one) => one.cells.some((cell) => cell.outcome === 'unknown')))
        expect(['ASK OFFICE BEFORE LOADING', 'DO NOT LOAD']).toContain(cargo.result)
  })

  test('asks the office for every cargo where the O-rings of a pump are not known', () => {
    expect(tables.get('5p')?.parts.find((one) => one.id === 'cargo-rings')).toMatchObject({
      material: 'NOT KNOWN (renewed by a yard that left no bag)',
      known: false,
    })
    expect(resultOf('5p', 'gas-oil')).toBe('ASK OFFICE BEFORE LOADING')
    expect(resultOf('5p', 'acrylonitrile')).toBe('DO NOT LOAD')
  })

  test('says that its words are from memory', () => {
    expect(content.tables.suitability.origin.status).toBe('assumed')
    for (const table of tables.values()) expect(table.source).toContain('from memory')
  })
})
