import {type SuitabilityWord, suitabilityWords, type WettedParts} from '../handbook-model/material-content.ts'
import type {MaterialTable, SuitabilityCell, WettedLine} from '../handbook-model/material-table.ts'
import {found, type PumpDesk} from './desk.ts'
import {wordsEn} from './words-en.ts'

/** Wetted parts of a pump with their material, undefined where nobody knows it. */
interface Wetted {
  readonly line: WettedLine
  readonly material: string | undefined
}

/** More cargoes than this are not held on one sheet: a table that is longer goes on in a second one. */
const mostCargoes = 8

/** The cargoes in tables that each fit a sheet, the source behind the last. */
export function materialTables(desk: PumpDesk): readonly MaterialTable[] {
  const {parts, cargoes, source} = materialTable(desk)
  const starts = cargoes.flatMap((_, index) => (index % mostCargoes === 0 ? [index] : []))
  return starts.map((start) => {
    const end = start + mostCargoes
    return {parts, cargoes: cargoes.slice(start, end), source: end < cargoes.length ? '' : source}
  })
}

/**
 * Each cargo of the vessel's list against each wetted material of this pump.
 *
 * What no row says, and what is made of nobody knows what, is not known: then the office is asked before loading.
 */
function materialTable(desk: PumpDesk): MaterialTable {
  const parts = desk.design.wetted.map((one) => wettedOf(one, desk))
  return {
    parts: parts.map((one) => one.line),
    cargoes: desk.vessel.cargoes.map(({id}) => {
      const cargo = found(
        desk.content.tables.cargoes.rows.find((row) => row.id === id),
        `cargo ${id}`,
      )
      const cells = parts.map(({material}) => cellOf(material, id, desk))
      const outcome = worst(cells.map((cell) => cell.outcome))
      return {id, title: cargo.title, cells, outcome, result: wordsEn.suitabilityResults[outcome]}
    }),
    source: sourceOf(desk),
  }
}

/** The wetted parts of a pump with the material of each, or why nobody knows it. */
export function wettedLines(desk: PumpDesk): readonly WettedLine[] {
  return desk.design.wetted.map((one) => wettedOf(one, desk).line)
}

function wettedOf({id, title, material}: WettedParts, desk: PumpDesk): Wetted {
  const fitted = desk.position.materials.find((one) => one.parts.id === id)
  const known = material?.id ?? fitted?.material?.id
  const row = desk.content.tables.materials.rows.find((one) => one.id === known)
  const words = row?.title ?? wordsEn.materialNotKnown(fitted?.reason ?? wordsEn.notStated)
  return {line: {id, title: title.en, material: words, known: row !== undefined}, material: row?.id}
}

function cellOf(material: string | undefined, cargo: string, desk: PumpDesk): SuitabilityCell {
  const row = desk.content.tables.suitability.rows.find(
    (one) => one.material.id === material && one.cargo.id === cargo,
  )
  const outcome = row?.word ?? 'unknown'
  const note = row?.note ?? (material === undefined ? '' : wordsEn.noSuitabilityRow)
  return {outcome, text: wordsEn.suitability[outcome], note}
}

/** Not suitable for one material outweighs all; then what is not known, which never counts as a yes. */
function worst(words: readonly SuitabilityWord[]): SuitabilityWord {
  if (words.includes('not-suitable')) return 'not-suitable'
  if (words.length === 0 || words.includes('unknown')) return 'unknown'
  return found(
    suitabilityWords.findLast((word) => words.includes(word)),
    'word of suitability',
  )
}

function sourceOf({content}: PumpDesk): string {
  const {origin, rows} = content.tables.suitability
  const source = content.sources.get(origin.source)
  if (!source || rows.length === 0) return ''
  return [source.title.en, wordsEn.howKnown[source.howKnown], origin.where ?? ''].filter(Boolean).join(', ')
}
