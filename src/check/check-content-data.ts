import type {z} from 'zod'
import {valueGroups} from '../handbook-model/computed.ts'
import type {Content, Tables} from '../handbook-model/content.ts'
import type {Reference} from '../handbook-model/datum.ts'
import type {Office} from '../handbook-model/office-content.ts'
import type {ContentSources} from '../handbook-model/sources.ts'
import type {Design, Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles, stopsTheBuild} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {faultyFiles, type KnownIds, knownIds} from './known-ids.ts'
import {expectedWord} from './nearest-word.ts'
import {checkShape} from './shapes/check-shape.ts'
import {designShape} from './shapes/design-shape.ts'
import {
  cautionShape,
  jobShape,
  partsShape,
  sourcesShape,
  termsShape,
  toolsShape,
} from './shapes/library-shapes.ts'
import {officeShape} from './shapes/office-shape.ts'
import {checkTables, keyColumns} from './shapes/table-shapes.ts'
import {vesselShape} from './shapes/vessel-shape.ts'
import {sourceReferences} from './source-references.ts'
import {noUnusualDesignValue, noUnusualVesselValue} from './usual-windows.ts'

/** Everything of the content but its procedures; `office` is undefined when it could not be read. */
export type ContentData = Omit<Content, 'procedures' | 'office'> & {
  readonly office: Office | undefined
  /** Files whose definitions could not be used. */
  readonly faulty: ReadonlySet<string>
}

interface Identified {
  readonly id: string
  readonly place: Place
}

/** Checks shapes, identity and references of the YAML and CSV content; every fault is a message. */
export function checkContentData(sources: ContentSources, files: ContentFiles): ContentData {
  const nothing = isNothing(sources) && stopsTheBuild(files)
  const one = <T>(path: string, shape: z.ZodType<T>): T | undefined => {
    const node = sources.yaml.get(path)
    if (node) return checkShape(node, shape, files)
    if (files.has(path) || nothing) return undefined
    addMessage(
      files,
      {path: '.', line: 1, column: 1},
      'no-missing-content',
      `Unexpected content without \`${path}\`, expected the file`,
      {note: `Write ${path}`},
    )
    return undefined
  }
  const many = <T extends Identified>(folder: string, shape: z.ZodType<T>): ReadonlyMap<string, T> => {
    const paths = [...sources.yaml.keys()].filter(
      (path) => path.startsWith(`${folder}/`) && path.split('/').length === 2,
    )
    const found = paths.flatMap(
      (path) =>
        checkShape(
          sources.yaml.get(path) ?? {kind: 'map', entries: [], place: {path, line: 1, column: 1}},
          shape,
          files,
        ) ?? [],
    )
    for (const item of found) nameFits(item, `${folder}/${item.id}.yaml`, files)
    return byId(found, files)
  }
  const tables = checkTables(sources, files, nothing)
  const shaped = {
    office: one('office.yaml', officeShape),
    sources: byId(one('sources.yaml', sourcesShape)?.sources ?? [], files),
    vessels: byId(checkVessels(sources, files, nothing), files),
    designs: many('designs', designShape),
    cautions: many('cautions', cautionShape),
    jobs: many('jobs', jobShape),
    tools: byId(one('tools.yaml', toolsShape)?.tools ?? [], files),
    parts: byId(one('parts.yaml', partsShape)?.parts ?? [], files),
    terms: byId(one('terms.yaml', termsShape)?.terms ?? [], files),
    tables,
  }
  refuseStrayFiles(sources, files)
  const data: ContentData = {...shaped, faulty: faultyFiles(files)}
  checkDesigns(data, tables, files)
  checkReferences(data, sources, files)
  return data
}

function isNothing({yaml, csv, markdown}: ContentSources): boolean {
  return yaml.size + csv.size + markdown.size === 0
}

function checkVessels(sources: ContentSources, files: ContentFiles, nothing: boolean): readonly Vessel[] {
  const serials = new Map<string, Place>()
  const paths = [...sources.yaml.keys()].filter((path) => /^vessels\/[^/]+\/vessel\.yaml$/u.test(path))
  if (paths.length === 0 && !nothing) {
    addMessage(
      files,
      {path: 'vessels', line: 1, column: 1},
      'no-missing-content',
      'Unexpected content without a vessel, expected `vessels/<id>/vessel.yaml`',
      {note: 'Write the file of at least one vessel'},
    )
  }
  return paths.flatMap((path) => {
    const node = sources.yaml.get(path)
    const vessel = node && checkShape(node, vesselShape, files)
    if (!vessel) return []
    nameFits(vessel, `vessels/${vessel.id}/vessel.yaml`, files)
    if (vessel.positions.length === 0) {
      addMessage(
        files,
        vessel.place,
        'no-empty-vessel',
        `Unexpected vessel \`${vessel.id}\` without a pump, expected at least one entry under \`positions\``,
        {note: 'List the pump positions of the vessel'},
      )
    }
    const tanks = byId(vessel.tanks, files)
    byId(vessel.positions, files)
    checkTags(vessel, files)
    for (const position of vessel.positions) refersTo(position.tank, tanks, 'tank of this vessel', files)
    refuseSecondSerials(vessel, serials, files)
    noUnusualVesselValue(vessel, files)
    return [vessel]
  })
}

function checkTags(vessel: Vessel, files: ContentFiles): void {
  for (const tagged of [vessel.tanks, vessel.positions]) {
    const first = new Map<string, Place>()
    for (const {tag, place} of tagged) {
      const cause = first.get(tag)
      if (cause)
        addMessage(
          files,
          place,
          'no-duplicate-id',
          `Unexpected second tag \`${tag}\`, expected each tag once`,
          {
            cause,
            note: 'Read the plates again: the tag is the largest thing on every sheet',
          },
        )
      else first.set(tag, place)
    }
  }
}

/** No two things in the fleet carry one serial number: what is found on a nameplate tells one pump from another. */
function refuseSecondSerials(vessel: Vessel, serials: Map<string, Place>, files: ContentFiles): void {
  for (const position of vessel.positions) {
    const plates = [{kind: 'pump', serial: position.serial, place: position.place}, ...position.components]
    for (const {kind, serial, place} of plates) {
      const first = serials.get(`${kind} ${serial}`)
      if (first)
        addMessage(
          files,
          place,
          'no-duplicate-id',
          `Unexpected second ${kind} with serial \`${serial}\`, expected each serial once`,
          {cause: first, note: 'Read the nameplates again'},
        )
      else serials.set(`${kind} ${serial}`, place)
    }
  }
}

function nameFits(item: Identified, path: string, files: ContentFiles): void {
  if (item.place.path === path) return
  addMessage(
    files,
    item.place,
    'no-bad-id',
    `Unexpected id \`${item.id}\` in this file, expected the file to be \`${path}\``,
    {note: 'Make the id and the name of the file equal'},
  )
}

/** A map by id in sorted order; a second entry of an id is a message that points at the first. */
export function byId<T extends Identified>(items: readonly T[], files: ContentFiles): ReadonlyMap<string, T> {
  const found = new Map<string, T>()
  for (const item of items) {
    const first = found.get(item.id)
    if (first)
      addMessage(
        files,
        item.place,
        'no-duplicate-id',
        `Unexpected second \`${item.id}\`, expected each id once`,
        {cause: first.place, note: 'Rename one of the two'},
      )
    else found.set(item.id, item)
  }
  return new Map([...found].sort(([a], [b]) => (a < b ? -1 : 1)))
}

const knownFile =
  /^(office|sources|terms|tools|parts|symptoms|approvals|changes)\.yaml$|^(cautions|designs|jobs)\/[^/]+\.yaml$|^vessels\/[^/]+\/(vessel\.yaml|history\/[^/]+\.yaml)$/u

function refuseStrayFiles(sources: ContentSources, files: ContentFiles): void {
  const tables = Object.keys(keyColumns).map((name) => `tables/${name}.csv`)
  for (const path of [...sources.yaml.keys(), ...sources.csv.keys()]) {
    if (knownFile.test(path) || tables.includes(path)) continue
    addMessage(
      files,
      {path, line: 1, column: 1},
      'no-stray-file',
      `Unexpected file \`${path}\`, expected one of the places that the content model knows`,
      {note: 'Move the file to its folder or out of the content'},
    )
  }
}

/** Reports a reference that leads nowhere, with the nearest id. */
export function refersTo(reference: Reference, known: KnownIds, what: string, files: ContentFiles): boolean {
  if (known.has(reference.id)) return true
  addMessage(
    files,
    reference.place,
    'no-undefined-reference',
    `Unexpected \`${reference.id}\`, ${expectedWord(reference.id, known.keys(), `the id of a ${what}`)}`,
    {note: `Write the id of a ${what} that exists, or add it`},
  )
  return false
}

function checkDesigns(data: ContentData, tables: Tables, files: ContentFiles): void {
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

function checkReferences(data: ContentData, sources: ContentSources, files: ContentFiles): void {
  const designs = knownIds(data.designs, 'designs/', data.faulty)
  const cargoes = knownIds(
    new Set(data.tables.cargoes.rows.map((row) => row.id)),
    'tables/cargoes.csv',
    data.faulty,
  )
  const tools = knownIds(data.tools, 'tools.yaml', data.faulty)
  const parts = knownIds(data.parts, 'parts.yaml', data.faulty)
  const known = knownIds(data.sources, 'sources.yaml', data.faulty)
  for (const vessel of data.vessels.values()) {
    for (const position of vessel.positions) refersTo(position.design, designs, 'design', files)
    for (const cargo of vessel.cargoes) refersTo(cargo, cargoes, 'row of tables/cargoes.csv', files)
    for (const aboard of vessel.toolsAboard) refersTo(aboard.tool, tools, 'tool', files)
    for (const aboard of vessel.sparesAboard) refersTo(aboard.part, parts, 'part', files)
  }
  for (const reference of sourceReferences(sources)) refersTo(reference, known, 'source', files)
  for (const source of data.sources.values())
    if (source.supersededBy) refersTo(source.supersededBy, known, 'source', files)
}
