import type {Job} from '../../handbook-model/office-content.ts'
import type {Place} from '../../messages/place.ts'
import type {Pump} from '../pump.ts'
import {notListed, type SisterItem, sisterItems} from './sister-items.ts'

/** The pumps of one design, over all ships, and what is stated otherwise of some of them. */
export interface SisterPumps {
  readonly design: string
  readonly pumps: readonly Pump[]
  /** Every thing that was held against each other. */
  readonly items: readonly string[]
  readonly differences: readonly SisterDifference[]
}

/** One thing that is not the same on all: what most say first. */
export interface SisterDifference {
  readonly item: string
  readonly sides: readonly SisterSide[]
}

/** What some of the pumps say alike. */
export interface SisterSide {
  readonly text: string
  /** True where more pumps say so than say anything else. */
  readonly usual: boolean
  readonly holders: readonly SisterHolder[]
}

/** A pump that says so, where, and why where the thing itself says why. */
export interface SisterHolder {
  readonly pump: Pump
  readonly place: Place
  readonly reason?: string
}

/** Holds the pumps of each design against each other, whatever ship they are on. */
export function sisterDifferences(pumps: readonly Pump[], jobs: readonly Job[]): readonly SisterPumps[] {
  const designs = [...new Set(pumps.map(({design}) => design.id))].sort()
  return designs.map((design) => {
    const sisters = pumps.filter((pump) => pump.design.id === design)
    const stated = sisters.map((pump) => ({pump, items: sisterItems(pump, jobs)}))
    const keys = new Map(
      stated.flatMap(({items}) => items.map((item): [string, SisterItem] => [keyOf(item), item])),
    )
    return {
      design,
      pumps: sisters,
      items: [...new Set([...keys.values()].map(({id}) => id))],
      differences: [...keys].flatMap(([key, {id, group}]) => {
        const sides = sidesOf(stated, key, group === '')
        return sides.length > 1 ? [{item: id, sides}] : []
      }),
    }
  })
}

function keyOf({id, group}: SisterItem): string {
  return `${id}\t${group}`
}

/** Each text with the pumps that say it, most pumps first; a thing that stands alone in its group is missing on no other. */
function sidesOf(
  stated: readonly {readonly pump: Pump; readonly items: readonly SisterItem[]}[],
  key: string,
  absentCounts: boolean,
): readonly SisterSide[] {
  const sides = new Map<string, {text: string; holders: SisterHolder[]}>()
  for (const {pump, items} of stated) {
    const item = items.find((one) => keyOf(one) === key)
    if (!item && !absentCounts) continue
    const same = item?.same ?? notListed
    const side = sides.get(same) ?? {text: item?.text ?? notListed, holders: []}
    side.holders.push({
      pump,
      place: item?.place ?? placeOfAbsence(key, pump),
      ...(item?.reason === undefined ? {} : {reason: item.reason}),
    })
    sides.set(same, side)
  }
  const ordered = [...sides.values()].sort((a, b) => b.holders.length - a.holders.length)
  const most = ordered[0]?.holders.length ?? 0
  const alone = ordered.filter(({holders}) => holders.length === most).length === 1
  return ordered.map(({text, holders}) => ({text, usual: alone && holders.length === most, holders}))
}

/** Where one would write what is missing: at the ship for her facts and spares, else at the pump. */
function placeOfAbsence(key: string, {vessel, position}: Pump): Place {
  return /^(ship-fact|spare)\./u.test(key) ? vessel.place : position.place
}
