import type {z} from 'zod'
import type {Content, Tables} from '../handbook-model/content.ts'
import type {Reference} from '../handbook-model/datum.ts'
import type {Office} from '../handbook-model/office-content.ts'
import type {ContentSources} from '../handbook-model/sources.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
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
import {checkTables} from './shapes/table-shapes.ts'
import {vesselShape} from './shapes/vessel-shape.ts'

/** Everything of the content but its procedures; `office` is undefined when it could not be read. */
export type ContentData = Omit<Content, 'procedures' | 'office'> & {readonly office: Office | undefined}

interface Identified {
  readonly id: string
  readonly place: Place
}

/** Checks shapes, identity and references of the YAML and CSV content; every fault is a message. */
export function checkContentData(sources: ContentSources, files: ContentFiles): ContentData {
  const one = <T>(path: string, shape: z.ZodType<T>): T | undefined => {
    const node = sources.yaml.get(path)
    if (node) return checkShape(node, shape, files)
    if (files.has(path)) return undefined
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
  const tables = checkTables(sources, files)
  const data: ContentData = {
    office: one('office.yaml', officeShape),
    sources: byId(one('sources.yaml', sourcesShape)?.sources ?? [], files),
    vessels: byId(checkVessels(sources, files), files),
    designs: many('designs', designShape),
    cautions: many('cautions', cautionShape),
    jobs: many('jobs', jobShape),
    tools: byId(one('tools.yaml', toolsShape)?.tools ?? [], files),
    parts: byId(one('parts.yaml', partsShape)?.parts ?? [], files),
    terms: byId(one('terms.yaml', termsShape)?.terms ?? [], files),
    tables,
  }
  refuseStrayYaml(sources, files)
  checkReferences(data, tables, files)
  return data
}

function checkVessels(sources: ContentSources, files: ContentFiles): readonly Vessel[] {
  const paths = [...sources.yaml.keys()].filter((path) => /^vessels\/[^/]+\/vessel\.yaml$/u.test(path))
  if (paths.length === 0 && files.size > 0) {
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
    const tags = byId(vessel.tanks, files)
    byId(vessel.positions, files)
    checkVesselReferences(vessel, tags, files)
    return [vessel]
  })
}

function checkVesselReferences(
  vessel: Vessel,
  tanks: ReadonlyMap<string, unknown>,
  files: ContentFiles,
): void {
  const serials = new Map<string, Place>()
  for (const position of vessel.positions) {
    refersTo(position.tank, tanks, 'tank of this vessel', files)
    for (const component of position.components) {
      const key = `${component.kind} ${component.serial}`
      const first = serials.get(key)
      if (first)
        addMessage(
          files,
          component.place,
          'no-duplicate-id',
          `Unexpected second ${component.kind} with serial \`${component.serial}\`, expected each serial once`,
          {cause: first, note: 'Read the nameplates again'},
        )
      else serials.set(key, component.place)
    }
    impossible(
      position.stackLength.kind === 'known' && position.stackLength.quantity.si <= 0,
      position.stackLength.place,
      'stack length of nothing',
      'a length above zero',
      files,
    )
    implausible(
      position.stackLength.kind === 'known' &&
        (position.stackLength.quantity.si < 6 || position.stackLength.quantity.si > 22),
      position.stackLength.place,
      'stack length',
      '6 m to 22 m',
      files,
    )
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

const knownYaml =
  /^(office|sources|terms|tools|parts|symptoms|approvals|changes)\.yaml$|^(cautions|designs|jobs)\/[^/]+\.yaml$|^vessels\/[^/]+\/(vessel\.yaml|history\/[^/]+\.yaml)$/u

function refuseStrayYaml(sources: ContentSources, files: ContentFiles): void {
  for (const path of [...sources.yaml.keys()].filter((one) => !knownYaml.test(one))) {
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
export function refersTo(
  reference: Reference,
  known: {has(id: string): boolean; keys(): Iterable<string>},
  what: string,
  files: ContentFiles,
): boolean {
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

function checkReferences(data: ContentData, tables: Tables, files: ContentFiles): void {
  const keys = (ids: readonly string[]): ReadonlySet<string> => new Set(ids)
  const threads = keys(tables.threads.rows.map((row) => row.size))
  const classes = keys(tables.propertyClasses.rows.map((row) => row.id))
  const frictions = keys(tables.friction.rows.map((row) => row.id))
  const cargoes = keys(tables.cargoes.rows.map((row) => row.id))
  for (const design of data.designs.values()) {
    for (const joint of design.joints) {
      refersTo(joint.thread, threads, 'row of tables/threads.csv', files)
      refersTo(joint.propertyClass, classes, 'row of tables/property-classes.csv', files)
      if (joint.lubrication) refersTo(joint.lubrication, frictions, 'row of tables/friction.csv', files)
    }
    const {outerPipeBore: outer, innerPipeOutside: inner} = design.cofferdam
    impossible(
      outer.kind === 'known' && inner.kind === 'known' && outer.quantity.si <= inner.quantity.si,
      outer.place,
      'outer pipe that is not larger than the inner pipe',
      'pipes that nest',
      files,
    )
    byId([...design.joints, ...design.rings], files)
    byId(design.limits, files)
    byId(design.masses, files)
    byId(design.settings, files)
  }
  for (const vessel of data.vessels.values()) {
    for (const position of vessel.positions) refersTo(position.design, data.designs, 'design', files)
    for (const cargo of vessel.cargoes) refersTo(cargo, cargoes, 'row of tables/cargoes.csv', files)
    for (const aboard of vessel.toolsAboard) refersTo(aboard.tool, data.tools, 'tool', files)
    for (const aboard of vessel.sparesAboard) refersTo(aboard.part, data.parts, 'part', files)
  }
  for (const caution of data.cautions.values()) refersTo(caution.source, data.sources, 'source', files)
  for (const source of data.sources.values())
    if (source.supersededBy) refersTo(source.supersededBy, data.sources, 'source', files)
}

function impossible(fails: boolean, place: Place, what: string, expected: string, files: ContentFiles): void {
  if (fails)
    addMessage(files, place, 'no-impossible-value', `Unexpected ${what}, expected ${expected}`, {
      note: 'Read the drawing or the record again',
    })
}

function implausible(
  fails: boolean,
  place: Place,
  what: string,
  expected: string,
  files: ContentFiles,
): void {
  if (fails)
    addMessage(
      files,
      place,
      'no-implausible-value',
      `Unexpected ${what} outside the usual window, expected ${expected}`,
      {note: 'Read the drawing or the record again; the build goes on'},
    )
}
