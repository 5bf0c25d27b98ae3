import {describe, expect, test} from 'vitest'
import {materialTables} from '../../src/compile/material-table.ts'
import type {Suitability, SuitabilityWord} from '../../src/handbook-model/material-content.ts'
import type {Position} from '../../src/handbook-model/vessel-content.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {at, to} from './data-for-tests.ts'

const cargoNames = ['oil', 'acid', 'spirit']

function row(material: string, cargo: string, word: SuitabilityWord, note = 'note'): Suitability {
  return {material: to(material), cargo: to(cargo), word, note, place: at('tables/suitability.csv')}
}

/** Tables of pump 4S, whose casing is of steel, with O-rings as fitted. */
function tablesOf(rows: readonly Suitability[], cargoes = ['oil'], fitted?: Partial<Position>) {
  const content = contentOf({list: []})
  const desk = deskOf(content, '4s')
  const [oil] = content.tables.cargoes.rows
  if (!oil) throw new Error('Unexpected gap, expected a cargo')
  return materialTables({
    ...desk,
    vessel: {...desk.vessel, cargoes: cargoes.map((id) => to(id))},
    position: {...desk.position, ...fitted},
    content: {
      ...content,
      tables: {
        ...content.tables,
        cargoes: {
          ...content.tables.cargoes,
          rows: [...new Set([...cargoNames, ...cargoes])].map((id) => ({...oil, id, title: `cargo ${id}`})),
        },
        suitability: {...content.tables.suitability, rows},
      },
    },
  })
}

const resultsOf = (...given: Parameters<typeof tablesOf>): readonly string[] =>
  tablesOf(...given).flatMap((table) => table.cargoes.map((cargo) => `${cargo.outcome}: ${cargo.result}`))

describe('the materials of a pump', () => {
  test('are those of its design and those that were fitted last', () => {
    expect(tablesOf([])[0]?.parts).toEqual([
      {id: 'casing', title: 'casing', material: 'stainless steel', known: true},
      {id: 'rings', title: 'O-rings', material: 'FKM', known: true},
    ])
  })

  test('print NOT KNOWN with the reason where nobody knows what was fitted', () => {
    const unknown = {materials: [{parts: to('rings'), material: undefined, reason: 'no bag'}]}
    expect(tablesOf([], ['oil'], unknown)[0]?.parts[1]).toEqual({
      id: 'rings',
      title: 'O-rings',
      material: 'NOT KNOWN (no bag)',
      known: false,
    })
    expect(tablesOf([], ['oil'], {materials: []})[0]?.parts[1]?.material).toBe(
      'NOT KNOWN (the vessel file does not say)',
    )
  })
})

describe('a cargo against the materials', () => {
  test('is suitable only when each material is', () => {
    const both = [row('steel', 'oil', 'suitable'), row('fkm', 'oil', 'suitable', 'below 40 °C')]
    expect(resultsOf(both)).toEqual(['suitable: every material suitable'])
    expect(tablesOf(both)[0]?.cargoes[0]?.cells).toEqual([
      {outcome: 'suitable', text: 'suitable', note: 'note'},
      {outcome: 'suitable', text: 'suitable', note: 'below 40 °C'},
    ])
  })

  test('asks the office before loading when one material is unknown, has no row or is not known itself', () => {
    const asks = ['unknown: ASK OFFICE BEFORE LOADING']
    const steel = row('steel', 'oil', 'suitable')
    expect(resultsOf([steel, row('fkm', 'oil', 'unknown')])).toEqual(asks)
    expect(resultsOf([steel])).toEqual(asks)
    expect(resultsOf([steel, row('fkm', 'acid', 'suitable')])).toEqual(asks)
    expect(resultsOf([steel, row('fkm', 'oil', 'suitable')], ['oil'], {materials: []})).toEqual(asks)
    expect(resultsOf([steel, row('fkm', 'oil', 'limited')], ['oil'], {materials: []})).toEqual(asks)
    expect(tablesOf([steel])[0]?.cargoes[0]?.cells[1]).toEqual({
      outcome: 'unknown',
      text: 'NOT KNOWN: ask office',
      note: 'no row in the table of the office',
    })
  })

  test('is limited when one is limited and none is worse', () => {
    const rows = [row('steel', 'oil', 'limited'), row('fkm', 'oil', 'suitable')]
    expect(resultsOf(rows)).toEqual(['limited: LIMITED: within this row only'])
  })

  test('is not loaded when one material is not suitable, whatever else is not known', () => {
    expect(resultsOf([row('steel', 'oil', 'not-suitable')])).toEqual(['not-suitable: DO NOT LOAD'])
  })

  test('stands in the order of the list of the vessel, in tables of eight', () => {
    const list = Array.from({length: 17}, (_, index) => `cargo-${index}`)
    const tables = tablesOf([row('steel', 'oil', 'suitable')], list)
    expect(tables.map((table) => table.cargoes.length)).toEqual([8, 8, 1])
    expect(tables.flatMap((table) => table.cargoes.map((cargo) => cargo.id))).toEqual(list)
    expect(tables.map((table) => table.source)).toEqual([
      '',
      '',
      'source practice, common practice, no source, edition',
    ])
  })

  test('is asked for where the design says nothing of its materials', () => {
    const content = contentOf({list: []})
    const desk = deskOf(content, '4s')
    const [table] = materialTables({...desk, design: {...desk.design, wetted: []}})
    expect(table?.cargoes.map((cargo) => cargo.result)).toEqual(['ASK OFFICE BEFORE LOADING'])
  })
})
