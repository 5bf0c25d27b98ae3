import type {z} from 'zod'
import type {WrittenCondition} from '../handbook-model/condition.ts'
import type {Reference} from '../handbook-model/datum.ts'
import type {Symptom} from '../handbook-model/office-content.ts'
import {recordAt} from '../handbook-model/record-files.ts'
import type {ContentSources} from '../handbook-model/sources.ts'
import {addMessage, type ContentFiles, stopsTheBuild} from '../messages/add-message.ts'
import {calibrationsOf} from './calibrations-of.ts'
import {checkDesigns} from './check-designs.ts'
import {checkMaterials} from './check-materials.ts'
import {parseCondition} from './conditions/parse-condition.ts'
import type {ContentData} from './content-data.ts'
import {holdsOf} from './holds-of.ts'
import {hoursOf} from './hours-of.ts'
import {byId, type Identified, nameFits, refersTo} from './identity.ts'
import {faultyFiles, knownIds} from './known-ids.ts'
import {purgesOf} from './purges-of.ts'
import {noBrokenSupports} from './rules/no-broken-supports.ts'
import {noServingHull} from './rules/no-serving-hull.ts'
import {noUnfitSignature} from './rules/no-unfit-signature.ts'
import {noUnlistedLanguage} from './rules/no-unlisted-language.ts'
import {noUnlistedProtection} from './rules/no-unlisted-protection.ts'
import {approvalsShape, changesShape} from './shapes/approval-shapes.ts'
import {checkShape} from './shapes/check-shape.ts'
import {designShape} from './shapes/design-shape.ts'
import {jobShape} from './shapes/job-shape.ts'
import {
  cautionShape,
  exceptionsShape,
  failuresShape,
  partsShape,
  sourcesShape,
  symptomsShape,
  termsShape,
  toolsShape,
} from './shapes/library-shapes.ts'
import {officeShape} from './shapes/office-shape.ts'
import {checkTables, keyColumns} from './shapes/table-shapes.ts'
import {trialsShape} from './shapes/trial-shape.ts'
import {sourceReferences} from './source-references.ts'
import {urgentOf} from './urgent-of.ts'
import {noImpossibleScale} from './usual-windows.ts'
import {vesselsOf} from './vessels-of.ts'
import {wearOf} from './wear-of.ts'

/** Checks shapes, identity and references of the YAML and CSV content; every fault is a message. */
export function checkContentData(sources: ContentSources, files: ContentFiles): ContentData {
  const nothing = isNothing(sources) && stopsTheBuild(files)
  const missing = new Set<string>()
  const one = <T>(path: string, shape: z.ZodType<T>): T | undefined => {
    const node = sources.yaml.get(path)
    if (node) return checkShape(node, shape, files)
    if (files.has(path) || nothing) return undefined
    missing.add(path)
    addMessage(
      files,
      {path: '.', line: 1, column: 1},
      'no-missing-content',
      `Unexpected content without \`${path}\`, expected the file`,
      {note: `Write ${path}`},
    )
    return undefined
  }
  const optional = <T>(path: string, shape: z.ZodType<T>): T | undefined => {
    const node = sources.yaml.get(path)
    return node && checkShape(node, shape, files)
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
  const changes = optional('changes.yaml', changesShape)
  const parts = one('parts.yaml', partsShape)
  const shaped = {
    office: one('office.yaml', officeShape),
    sources: byId(one('sources.yaml', sourcesShape)?.sources ?? [], files),
    vessels: byId(vesselsOf(sources, files, nothing), files),
    designs: many('designs', designShape),
    cautions: many('cautions', cautionShape),
    jobs: withConditions(many('jobs', jobShape), files),
    tools: byId(one('tools.yaml', toolsShape)?.tools ?? [], files),
    parts: withConditions(byId(parts?.parts ?? [], files), files),
    units: inOrder(parts?.units ?? [], files),
    terms: byId(one('terms.yaml', termsShape)?.terms ?? [], files),
    symptoms: symptomsOf(optional('symptoms.yaml', symptomsShape)?.symptoms ?? [], files),
    failures: [...byId(optional('failures.yaml', failuresShape)?.failures ?? [], files).values()],
    exceptions: optional('exceptions.yaml', exceptionsShape)?.exceptions ?? [],
    tables,
    approvals: optional('approvals.yaml', approvalsShape)?.approvals ?? [],
    changes: changes?.changes ?? [],
    withdrawals: changes?.withdrawn ?? [],
    ended: changes?.ended ?? [],
    urgent: urgentOf(sources, files),
    trials: optional('trials.yaml', trialsShape)?.trials ?? [],
  }
  const hours = hoursOf(sources, shaped.vessels, files)
  refuseStrayFiles(sources, files)
  if (shaped.office) {
    noUnfitSignature(shaped, shaped.office, files)
    noUnlistedLanguage(shaped.office, sources, files)
    noServingHull(shaped.office, shaped.vessels.values(), sources, files)
    noUnlistedProtection(shaped.office, sources, files)
  }
  const faulty = new Set([...[...faultyFiles(files)].filter((path) => nothing || path !== '.'), ...missing])
  const {vessels, tools} = shaped
  const calibrations = calibrationsOf({sources, vessels, tools, faulty, files})
  const readings = {sources, vessels, tools, designs: shaped.designs, hours, faulty, files}
  const wear = wearOf(readings)
  const purges = purgesOf(readings)
  const tightness = holdsOf(readings)
  const namedSources = new Set(sourceReferences(sources).map(({id}) => id))
  const data: ContentData = {...shaped, hours, calibrations, wear, purges, tightness, namedSources, faulty}
  checkDesigns(data, tables, files)
  for (const tool of data.tools.values()) noImpossibleScale(tool, files)
  checkReferences(data, sources, files)
  return data
}

/** Symptoms with their conditions parsed; a cause leads to a procedure or says what to do instead. */
function symptomsOf(
  written: readonly (Omit<Symptom, 'when'> & {readonly when?: Reference})[],
  files: ContentFiles,
): readonly Symptom[] {
  byId(written, files)
  return written.map(({when, ...symptom}) => {
    for (const cause of symptom.causes) {
      if (cause.procedures.length > 0 || cause.advice) continue
      addMessage(
        files,
        cause.place,
        'no-missing-key',
        `Unexpected cause of symptom \`${symptom.id}\` that leads nowhere, expected \`procedures:\` or \`advice:\``,
        {note: 'Name the procedure that finds or mends it, or say what to do'},
      )
    }
    const condition = when && parseCondition(when.id, when.place, files)
    return {...symptom, ...(condition ? {when: condition} : {})}
  })
}

/** The same in the order in which they are written; an id that stands twice is told. */
function inOrder<T extends Identified>(written: readonly T[], files: ContentFiles): readonly T[] {
  byId(written, files)
  return written
}

/** Jobs or parts with their conditions parsed. */
function withConditions<T extends {readonly when?: Reference}>(
  written: ReadonlyMap<string, T>,
  files: ContentFiles,
): ReadonlyMap<string, Omit<T, 'when'> & {readonly when?: WrittenCondition}> {
  return new Map(
    [...written].map(([id, {when, ...rest}]) => {
      const condition = when && parseCondition(when.id, when.place, files)
      return [id, {...rest, ...(condition ? {when: condition} : {})}]
    }),
  )
}

function isNothing({yaml, csv, markdown}: ContentSources): boolean {
  return yaml.size + csv.size + markdown.size === 0
}

const knownFile =
  /^(office|sources|terms|tools|parts|symptoms|failures|exceptions|approvals|changes|trials)\.yaml$|^(cautions|designs|jobs|urgent)\/[^/]+\.yaml$|^vessels\/[^/]+\/vessel\.yaml$|^issues\/[^/]+\/([^/]+\.json|texts\/[0-9a-f]{64}\.txt)$/u

function refuseStrayFiles(sources: ContentSources, files: ContentFiles): void {
  const tables = Object.keys(keyColumns).map((name) => `tables/${name}.csv`)
  for (const path of [...sources.yaml.keys(), ...sources.csv.keys(), ...sources.ledgers.keys()]) {
    if (knownFile.test(path) || recordAt(path) || tables.includes(path)) continue
    addMessage(
      files,
      {path, line: 1, column: 1},
      'no-stray-file',
      `Unexpected file \`${path}\`, expected one of the places that the content model knows`,
      {note: 'Move the file to its folder or out of the content'},
    )
  }
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
    for (const position of vessel.positions) {
      refersTo(position.design, designs, 'design', files)
      const design = data.designs.get(position.design.id)
      if (design) noBrokenSupports(position, design, files)
    }
    for (const cargo of vessel.cargoes) refersTo(cargo, cargoes, 'row of tables/cargoes.csv', files)
    for (const aboard of vessel.toolsAboard) refersTo(aboard.tool, tools, 'tool', files)
    for (const aboard of vessel.sparesAboard) refersTo(aboard.part, parts, 'part', files)
  }
  checkMaterials(data, cargoes, files)
  for (const reference of sourceReferences(sources)) refersTo(reference, known, 'source', files)
  for (const source of data.sources.values())
    if (source.supersededBy) refersTo(source.supersededBy, known, 'source', files)
}
