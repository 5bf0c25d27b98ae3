import {type ComputedValue, notKnownWords} from '../handbook-model/computed.ts'
import type {CargoLine, EntryLimitLine, FigureCell} from '../handbook-model/pages.ts'
import type {Cargo} from '../handbook-model/vessel-content.ts'
import {found, type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {valueLink} from './page-paths.ts'
import {wordsEn} from './words-en.ts'
import {writtenDatum} from './written-datum.ts'

/** Every cargo of the vessel's list with what it asks for at this pump; a cargo changes each voyage, so none is left out. */
export function cargoLines(desk: PumpDesk): readonly CargoLine[] {
  return desk.vessel.cargoes.map(({id}) => {
    const cargo = found(
      desk.content.tables.cargoes.rows.find((row) => row.id === id),
      `cargo ${id}`,
    )
    const least = pumpValue(desk, `purge.least-${id}`)
    const most = pumpValue(desk, 'cofferdam.upper-bound')
    const closed =
      least.result.kind === 'known' &&
      most.result.kind === 'known' &&
      (least.result.quantity?.si ?? 0) > (most.result.quantity?.si ?? 0)
    return {
      id: cargo.id,
      title: cargo.title,
      word: cargo.word,
      density: writtenDatum(cargo.density),
      hazards: hazardsOf(cargo),
      purgeMedium: cargo.purgeMedium,
      least: figureCell(least, desk),
      most: figureCell(most, desk),
      noWindow: closed ? wordsEn.noSafeWindow : '',
      protection: cargo.protection,
    }
  })
}

function figureCell(value: ComputedValue, desk: PumpDesk): FigureCell {
  const {result} = value
  const text = result.kind === 'known' ? printedValue(value) : wordsEn.notKnownCell
  return {
    text,
    because: result.kind === 'known' ? (value.condition ?? '') : '',
    link: valueLink(value, text, desk),
  }
}

/** What is missing where a figure of the table is not known, said once below it. */
export function missingInCargoes(desk: PumpDesk): string {
  const ids = [...desk.vessel.cargoes.map(({id}) => `purge.least-${id}`), 'cofferdam.upper-bound']
  const missing = ids.flatMap((id) => {
    const {result} = pumpValue(desk, id)
    return result.kind === 'not-known' ? result.missing : []
  })
  return missing.length === 0 ? '' : `${notKnownWords}, ${wordsEn.missing([...new Set(missing)])}`
}

function hazardsOf(cargo: Cargo): readonly string[] {
  const {flammable, waterReactive, toxic} = wordsEn.cargoHazards
  return [
    ...(cargo.flammable ? [flammable] : []),
    ...(cargo.waterReactive ? [waterReactive] : []),
    ...(cargo.toxic ? [toxic] : []),
  ]
}

/** The house limits for entry, each with what it stands on; the permit decides. */
export function entryLimitLines(desk: PumpDesk): readonly EntryLimitLine[] {
  return desk.content.office.house.entryLimits.map(({id, gas, side, limit}) => ({
    id,
    gas: gas.en,
    limit: `${wordsEn.sides[side]} ${writtenDatum(limit)}`,
    source:
      limit.kind === 'known' ? sourceWords(limit.origin.source, limit.origin.where, desk) : limit.reason,
  }))
}

function sourceWords(id: string, where: string | undefined, desk: PumpDesk): string {
  const source = found(desk.content.sources.get(id), `source ${id}`)
  const status = source.supersededBy
    ? wordsEn.supersededBy(found(desk.content.sources.get(source.supersededBy.id), 'source').title.en)
    : wordsEn.howKnown[source.howKnown]
  return [source.title.en, where, status].filter((one) => one !== undefined && one !== '').join(', ')
}
