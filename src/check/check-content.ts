import type {Content} from '../handbook-model/content.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import type {ContentSources} from '../handbook-model/sources.ts'
import {type ContentFiles, stopsTheBuild} from '../messages/add-message.ts'
import {byId, type ContentData, checkContentData, refersTo} from './check-content-data.ts'
import {parseProcedure} from './procedures/parse-procedure.ts'
import {knownValueIds} from './rules/known-value-ids.ts'
import {noIncompleteCaution} from './rules/no-incomplete-caution.ts'
import {noMissingIsolationPoint} from './rules/no-missing-isolation-point.ts'
import {noUncautionedHazard} from './rules/no-uncautioned-hazard.ts'
import {noUndefinedReference} from './rules/no-undefined-reference.ts'
import {noUnitMix} from './rules/no-unit-mix.ts'
import {
  factValuesOf,
  noUndeclaredFact,
  noUndeclaredFactValue,
  noUnidentifiedFact,
} from './rules/no-unknown-fact.ts'
import {noUnlimitedReading} from './rules/no-unlimited-reading.ts'
import {noJoblessIsolation, noUnrestoredIsolation} from './rules/no-unrestored-isolation.ts'
import {noUnwitnessedHold} from './rules/no-unwitnessed-hold.ts'

/**
 * Checks shapes, references and rules of the whole content; all faults are collected in one run.
 *
 * @returns
 *   The content, or `undefined` when a message stops the build.
 */
export function checkContent(sources: ContentSources, files: ContentFiles): Content | undefined {
  const data = checkContentData(sources, files)
  const parsed = [...sources.markdown].flatMap(([path, source]) => parseProcedure(path, source, files) ?? [])
  const procedures = byId(parsed, files)
  checkRules(data, procedures, files)
  if (!data.office || stopsTheBuild(files)) return undefined
  return {...data, office: data.office, procedures}
}

function checkRules(
  data: ContentData,
  procedures: ReadonlyMap<string, Procedure>,
  files: ContentFiles,
): void {
  const facts = factValuesOf(data.office?.facts ?? [], data.designs.keys(), data.vessels.keys())
  const designs = [...data.designs.values()]
  const reactive = new Set(data.tables.cargoes.rows.filter((row) => row.waterReactive).map((row) => row.id))
  const reactiveCargo = [...data.vessels.values()].some((vessel) =>
    vessel.cargoes.some((cargo) => reactive.has(cargo.id)),
  )
  for (const caution of data.cautions.values()) noIncompleteCaution(caution, files)
  for (const procedure of procedures.values()) {
    noUndefinedReference(procedure, {...data, procedures, facts, designs}, files)
    noUncautionedHazard(procedure, data.cautions, reactiveCargo, files)
    noUnlimitedReading(procedure, data.tools, files)
    noUnwitnessedHold(procedure, files)
    noUndeclaredFact(procedure, facts, files)
    for (const design of designs) noUnitMix(procedure, design, files)
  }
  for (const job of data.jobs.values()) {
    for (const reference of job.procedures) refersTo(reference, procedures, 'procedure', files)
    noUnrestoredIsolation(job, procedures, files)
  }
  noJoblessIsolation(procedures, data.jobs, files)
  checkDesigns(data, facts, files)
  checkVessels(data, procedures, facts, files)
}

function checkDesigns(data: ContentData, facts: ReturnType<typeof factValuesOf>, files: ContentFiles): void {
  for (const design of data.designs.values()) {
    noUndeclaredFactValue(design.facts, facts, files)
    for (const limit of design.limits) refersTo(limit.value, knownValueIds(design), 'value', files)
  }
}

function checkVessels(
  data: ContentData,
  procedures: ReadonlyMap<string, Procedure>,
  facts: ReturnType<typeof factValuesOf>,
  files: ContentFiles,
): void {
  const asFitted = new Set(
    (data.office?.facts ?? []).filter((fact) => fact.scope === 'position').map((fact) => fact.id),
  )
  for (const vessel of data.vessels.values()) {
    noUndeclaredFactValue(vessel.facts, facts, files)
    for (const position of vessel.positions) noUndeclaredFactValue(position.facts, facts, files)
    for (const procedure of procedures.values()) {
      noMissingIsolationPoint(procedure, vessel, files)
      for (const position of vessel.positions)
        noUnidentifiedFact(
          procedure,
          {vessel, position, design: data.designs.get(position.design.id), asFitted},
          files,
        )
    }
  }
}
