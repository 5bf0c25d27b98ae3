import {valueGroups} from '../handbook-model/computed.ts'
import type {Tables} from '../handbook-model/content.ts'
import type {Design} from '../handbook-model/design-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {ContentData} from './content-data.ts'
import {byId, type Identified, refersTo} from './identity.ts'
import {type KnownIds, knownIds} from './known-ids.ts'
import {noContradictingClearance} from './rules/no-contradicting-clearance.ts'
import {noUnusualDesignValue} from './usual-windows.ts'

/** References and identity inside each design: rows of tables, masses, parts, and one id for one thing. */
export function checkDesigns(data: ContentData, tables: Tables, files: ContentFiles): void {
  const rows = (name: string, ids: readonly string[]): KnownIds =>
    knownIds(new Set(ids), `tables/${name}.csv`, data.faulty)
  const threads = rows(
    'threads',
    tables.threads.rows.map((row) => row.size),
  )
  const classes = rows(
    'property-classes',
    tables.propertyClasses.rows.map((row) => row.id),
  )
  const frictions = rows(
    'friction',
    tables.friction.rows.map((row) => row.id),
  )
  const parts = knownIds(data.parts, 'parts.yaml', data.faulty)
  for (const design of data.designs.values()) {
    for (const joint of design.joints) {
      refersTo(joint.thread, threads, 'row of tables/threads.csv', files)
      refersTo(joint.propertyClass, classes, 'row of tables/property-classes.csv', files)
      if (joint.lubrication) refersTo(joint.lubrication, frictions, 'row of tables/friction.csv', files)
    }
    noUnusualDesignValue(design, files)
    for (const ring of design.rings) noContradictingClearance(ring, tables.runningClearances, files)
    if (design.lowering) {
      refersTo(design.lowering.thread, threads, 'row of tables/threads.csv', files)
      refersTo(design.lowering.lubrication, frictions, 'row of tables/friction.csv', files)
      refersTo(design.lowering.mass, masses(design), 'mass of this design', files)
    }
    for (const lift of design.lifts) refersTo(lift.mass, masses(design), 'mass of this design', files)
    for (const {part} of [...design.seals, ...design.oRings]) refersTo(part, parts, 'part', files)
    const withValues = [...design.joints, ...design.rings, ...design.lifts, ...design.seals, ...design.oRings]
    byId(withValues, files)
    for (const one of withValues) refuseGroupName(one, files)
    for (const named of [design.limits, design.masses, design.settings, design.ratings, design.geometry])
      byId<Identified>(named, files)
  }
}

function masses(design: Design): KnownIds {
  return new Set(design.masses.map((one) => one.id))
}

/** `oil.volume` is the value of the group `oil`; a joint of that name would take its place. */
function refuseGroupName(item: Identified, files: ContentFiles): void {
  if (!valueGroups.some((group) => group === item.id)) return
  addMessage(
    files,
    item.place,
    'no-bad-id',
    `Unexpected id \`${item.id}\`, expected one that names no group of values`,
    {note: `These names are taken: ${valueGroups.join(', ')}`},
  )
}
