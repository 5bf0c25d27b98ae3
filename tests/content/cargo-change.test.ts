import {describe, expect, test} from 'vitest'
import {desksOfVessel} from '../../src/compile/desk.ts'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import {serves} from '../../src/conditions/serves.ts'
import type {MaterialTable} from '../../src/handbook-model/material-table.ts'
import {demonstration} from './demonstration.ts'

const {content, values} = await demonstration()

/** The table of materials on the page of the cargo change of each pump of a vessel; a long list stands there in parts. */
function tablesOf(vessel: string): ReadonlyMap<string, MaterialTable> {
  const procedure = content.procedures.get('cargo-change')
  if (!procedure) throw new Error('Unexpected content without the cargo change')
  const whole = new Map<string, MaterialTable>()
  for (const desk of desksOfVessel(content, values, vessel).filter(({facts}) => serves(procedure, facts)))
    for (const {items} of procedurePage(procedure, desk).sections)
      for (const item of items)
        for (const part of item.kind === 'step' ? item.parts : []) {
          if (part.kind !== 'material-table') continue
          const known = whole.get(desk.position.id)
          whole.set(desk.position.id, {...part, cargoes: [...(known?.cargoes ?? []), ...part.cargoes]})
        }
  return whole
}

const tables = tablesOf('vessel-a')

/** What follows for the loading, written by hand from lists, rings and materials of the vessels: vessel, pump, then by cargo. */
const results: readonly (readonly [vessel: string, pump: string, words: Readonly<Record<string, string>>])[] =
  [
    [
      'vessel-a',
      '4s',
      {
        'gas-oil': 'suitable',
        'palm-oil': 'LIMITED',
        methanol: 'LIMITED',
        toluene: 'LIMITED',
        styrene: 'LIMITED',
        'ethylene-glycol': 'suitable',
        'toluene-diisocyanate': 'ASK OFFICE',
        'sulphuric-acid': 'DO NOT LOAD',
      },
    ],
    [
      'vessel-b',
      '1p',
      {
        'gas-oil': 'suitable',
        'palm-oil': 'LIMITED',
        'fish-oil': 'LIMITED',
        molasses: 'LIMITED',
        ethanol: 'suitable',
        'ethylene-glycol': 'suitable',
        toluene: 'LIMITED',
        'caustic-soda': 'DO NOT LOAD',
      },
    ],
    ['vessel-b', '5p', {toluene: 'suitable', 'caustic-soda': 'LIMITED'}],
    ['vessel-b', '3p', {'caustic-soda': 'DO NOT LOAD'}],
    [
      'vessel-c',
      '6p',
      {
        'gas-oil': 'suitable',
        'motor-spirit': 'suitable',
        'jet-fuel': 'LIMITED',
        'palm-oil': 'LIMITED',
        'rapeseed-oil': 'LIMITED',
        ethanol: 'suitable',
        methanol: 'LIMITED',
        styrene: 'LIMITED',
        'ethylene-glycol': 'suitable',
        'phosphoric-acid': 'LIMITED',
      },
    ],
  ]

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

  test.each(results)('says of %s/%s what its rings and lips allow', (vessel, pump, words) => {
    const cargoes = tablesOf(vessel).get(pump)?.cargoes ?? []
    for (const [cargo, word] of Object.entries(words))
      expect(`${cargo}: ${cargoes.find((one) => one.id === cargo)?.result}`).toContain(word)
  })

  test('lists no cargo that no pump of the ship can carry but the one that shows DO NOT LOAD', () => {
    const idle = [...content.vessels.keys()].flatMap((vessel) => {
      const all = [...tablesOf(vessel).values()]
      return (content.vessels.get(vessel)?.cargoes ?? [])
        .filter(({id}) =>
          all.every((table) => table.cargoes.find((one) => one.id === id)?.result === 'DO NOT LOAD'),
        )
        .map(({id}) => `${vessel} ${id}`)
    })
    expect(idle).toEqual(['vessel-a sulphuric-acid'])
  })

  test('has a row of the table for each material in each cargo of a list', () => {
    const {materials, suitability} = content.tables
    const pairs = new Set(suitability.rows.map((row) => `${row.material.id} in ${row.cargo.id}`))
    const cargoes = [...content.vessels.values()].flatMap((one) => one.cargoes)
    expect(cargoes).toHaveLength(26)
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
    expect(resultOf('5p', 'sulphuric-acid')).toBe('DO NOT LOAD')
  })

  test('says that its words are from memory', () => {
    expect(content.tables.suitability.origin.status).toBe('assumed')
    for (const table of tables.values()) expect(table.source).toContain('from memory')
  })
})
