import {pumpOf} from '../check/pump.ts'
import {type SisterPumps, type SisterSide, sisterDifferences} from '../check/sisters/sister-differences.ts'
import type {Content} from '../handbook-model/content.ts'

/** Pumps of one design with what is stated otherwise of some of them, as plain strings. */
export interface SistersReport {
  readonly design: string
  readonly title: string
  readonly vessels: readonly string[]
  readonly pumps: number
  readonly compared: number
  /** Each length with its pumps; lengths differ by the tanks and are told here alone. */
  readonly stackLengths: readonly {readonly text: string; readonly on: string}[]
  readonly differences: readonly SistersRow[]
}

/** One thing that differs. */
export interface SistersRow {
  readonly item: string
  readonly sides: readonly {
    readonly text: string
    readonly usual: boolean
    readonly pumps: number
    /** Pumps in words, ship by ship: `vessel-a: 1P, 1S`. */
    readonly on: string
    /** Files with the lines in them: `vessels/vessel-a/vessel.yaml:117, 134`. */
    readonly at: string
    /** Written reasons, each with the pumps that it is for. */
    readonly reasons: readonly {readonly reason: string; readonly on: string}[]
    /** Pumps that differ from the usual without a written reason, in words; blank where there are none. */
    readonly unexplained: string
  }[]
}

/** What is stated otherwise of some pumps of a design, over the named ships. */
export function sistersReport(content: Content, vessels: readonly string[]): readonly SistersReport[] {
  const pumps = [...content.vessels.values()]
    .filter(({id}) => vessels.length === 0 || vessels.includes(id))
    .flatMap((vessel) =>
      vessel.positions.flatMap((position) => {
        const design = content.designs.get(position.design.id)
        return design ? [pumpOf(vessel, position, design, content.office.facts)] : []
      }),
    )
  return sisterDifferences(pumps, [...content.jobs.values()]).map((group) => ({
    design: group.design,
    title: content.designs.get(group.design)?.title.en ?? group.design,
    vessels: [...new Set(group.pumps.map(({vessel}) => vessel.id))],
    pumps: group.pumps.length,
    compared: group.items.length,
    stackLengths: stackLengths(group),
    differences: group.differences.map(({item, sides}) => ({
      item,
      sides: sides.map(({text, usual, holders}) => ({
        text,
        usual,
        pumps: holders.length,
        on: pumpsOn(holders),
        at: linesOf(holders),
        ...reasonsOf(item, {usual, holders}, sides),
      })),
    })),
  }))
}

function stackLengths({pumps}: SisterPumps): SistersReport['stackLengths'] {
  const lengths = new Map<string, {si: number; holders: {pump: SisterPumps['pumps'][number]}[]}>()
  for (const pump of pumps) {
    const {stackLength} = pump.position
    if (!stackLength) continue
    const known = stackLength.kind === 'known'
    const text = known ? `${stackLength.figure} ${stackLength.unit}` : 'NOT KNOWN'
    const one = lengths.get(text) ?? {si: known ? stackLength.quantity.si : Number.MAX_VALUE, holders: []}
    one.holders.push({pump})
    lengths.set(text, one)
  }
  return [...lengths]
    .sort(([, a], [, b]) => a.si - b.si)
    .map(([text, {holders}]) => ({text, on: pumpsOn(holders)}))
}

function pumpsOn(holders: readonly {readonly pump: SisterPumps['pumps'][number]}[]): string {
  const ships = new Map<string, string[]>()
  for (const {pump} of holders)
    ships.set(pump.vessel.id, [...(ships.get(pump.vessel.id) ?? []), pump.position.tag])
  return [...ships].map(([ship, tags]) => `${ship}: ${tags.join(', ')}`).join('; ')
}

/** Reasons of one side; where none is usual, a side whose every pump has a reason explains the others. */
function reasonsOf(
  item: string,
  {usual, holders}: Pick<SisterSide, 'usual' | 'holders'>,
  sides: readonly SisterSide[],
): Pick<SistersRow['sides'][number], 'reasons' | 'unexplained'> {
  const by = new Map<string, Holder[]>()
  for (const holder of holders) {
    const reason = reasonOf(item, holder)
    if (reason !== undefined) by.set(reason, [...(by.get(reason) ?? []), holder])
  }
  const told = sides.some(
    (other) => other.holders !== holders && other.holders.every((one) => reasonOf(item, one) !== undefined),
  )
  const settled = usual || (told && !sides.some((other) => other.usual))
  return {
    reasons: [...by].map(([reason, own]) => ({reason, on: pumpsOn(own)})),
    unexplained: settled ? '' : pumpsOn(holders.filter((one) => reasonOf(item, one) === undefined)),
  }
}

type Holder = SisterSide['holders'][number]

/** What pump or ship writes about the difference, the pump first; else what the thing itself says. */
function reasonOf(item: string, {pump, reason}: Holder): string | undefined {
  const written = [...(pump.position.differences ?? []), ...(pump.vessel.differences ?? [])]
  return written.find((one) => one.item.id === item)?.reason.en ?? reason
}

/** Lines file by file, each once. */
function linesOf(holders: SisterSide['holders']): string {
  const files = new Map<string, Set<number>>()
  for (const {place} of holders) files.set(place.path, (files.get(place.path) ?? new Set()).add(place.line))
  return [...files]
    .map(([path, lines]) => `${path}:${[...lines].sort((a, b) => a - b).join(', ')}`)
    .join('; ')
}
