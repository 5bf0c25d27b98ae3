import {serves} from '../conditions/serves.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import type {ContentSources} from '../handbook-model/sources.ts'
import type {Position, Vessel} from '../handbook-model/vessel-content.ts'
import {type ContentFiles, stopsTheBuild} from '../messages/add-message.ts'
import {acceptExceptions} from './accept-exceptions.ts'
import {checkContentData} from './check-content-data.ts'
import {checkUrgent} from './check-urgent.ts'
import type {ContentData} from './content-data.ts'
import {byId, refersTo} from './identity.ts'
import {isWhole, knownIds} from './known-ids.ts'
import {parseProcedure} from './procedures/parse-procedure.ts'
import {type Pump, pumpsOf} from './pump.ts'
import {knownValueIds} from './rules/known-value-ids.ts'
import {noAbsentReference} from './rules/no-absent-reference.ts'
import {noFileReference} from './rules/no-file-reference.ts'
import {noIdleDifference} from './rules/no-idle-difference.ts'
import {noIncompleteCaution} from './rules/no-incomplete-caution.ts'
import {noLongProcedure} from './rules/no-long-procedure.ts'
import {noMasslessLift} from './rules/no-massless-lift.ts'
import {noMissingIsolationPoint} from './rules/no-missing-isolation-point.ts'
import {noScopeMix} from './rules/no-scope-mix.ts'
import {noUnfitDesign} from './rules/no-tankless-pump.ts'
import {noUncautionedHazard} from './rules/no-uncautioned-hazard.ts'
import {noUncoveredFailure} from './rules/no-uncovered-failure.ts'
import {noUndefinedReference} from './rules/no-undefined-reference.ts'
import {noUndisposedDrain} from './rules/no-undisposed-drain.ts'
import {noUnheldWork} from './rules/no-unheld-work.ts'
import {noMixedReadings, noUnitMix} from './rules/no-unit-mix.ts'
import {
  factValuesOf,
  noOpenService,
  noUndeclaredFact,
  noUndeclaredFactIn,
  noUndeclaredFactValue,
  noUnidentifiedFact,
} from './rules/no-unknown-fact.ts'
import {noUnlimitedReading} from './rules/no-unlimited-reading.ts'
import {noUnnumberedPart} from './rules/no-unnumbered-part.ts'
import {noUnplacedTrial} from './rules/no-unplaced-trial.ts'
import {noJoblessIsolation, noUnrestoredIsolation} from './rules/no-unrestored-isolation.ts'
import {noUnservedReference} from './rules/no-unserved-reference.ts'
import {noUnwitnessedHold} from './rules/no-unwitnessed-hold.ts'
import {plainCaution, plainLimits, plainProcedure, plainSymptom} from './rules/plain-language.ts'

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
  const procedureFiles = [...files.keys()].filter((path) => /^procedures\/.*\.md$/u.test(path))
  checkRules(data, {procedures, allRead: parsed.length >= procedureFiles.length}, files)
  acceptExceptions(data.exceptions, data.office, files)
  const {faulty: _faulty, ...content} = data
  if (!content.office || stopsTheBuild(files)) return undefined
  return {...content, office: content.office, procedures}
}

/** The procedures that could be parsed, and whether these are all. */
interface ParsedProcedures {
  readonly procedures: ReadonlyMap<string, Procedure>
  readonly allRead: boolean
}

function checkRules(data: ContentData, {procedures, allRead}: ParsedProcedures, files: ContentFiles): void {
  const {faulty} = data
  const unreadProcedures = new Set(allRead ? [] : ['procedures/'])
  const knownProcedures = knownIds(procedures, 'procedures/', unreadProcedures)
  const facts = factValuesOf(data.office?.facts ?? [], data.designs.keys(), data.vessels.keys())
  const factsWhole = ['office.yaml', 'designs/', 'vessels/'].every((path) => isWhole(path, faulty))
  const designs = [...data.designs.values()]
  const reactive = new Set(data.tables.cargoes.rows.filter((row) => row.waterReactive).map((row) => row.id))
  const reactiveCargo = [...data.vessels.values()].some((vessel) =>
    vessel.cargoes.some((cargo) => reactive.has(cargo.id)),
  )
  for (const caution of data.cautions.values()) {
    noIncompleteCaution(caution, files)
    plainCaution(caution, data.terms.values(), files)
  }
  for (const procedure of procedures.values()) {
    noUndefinedReference(
      procedure,
      {
        cautions: knownIds(data.cautions, 'cautions/', faulty),
        procedures: knownProcedures,
        tools: knownIds(data.tools, 'tools.yaml', faulty),
        parts: knownIds(data.parts, 'parts.yaml', faulty),
        terms: knownIds(data.terms, 'terms.yaml', faulty),
        facts: knownIds(facts, 'office.yaml', faulty),
        designs,
        designUnread: !isWhole('designs/', faulty),
      },
      files,
    )
    noUncautionedHazard(procedure, data.cautions, reactiveCargo, files)
    noUnlimitedReading(procedure, data.tools, files)
    noMixedReadings(procedure, files)
    noScopeMix(procedure, files)
    noLongProcedure(procedure, files)
    noUndisposedDrain(procedure, files)
    noMasslessLift(procedure, files)
    noFileReference(procedure, files)
    plainProcedure(procedure, data.terms.values(), files)
    noUnwitnessedHold(procedure, files)
    if (factsWhole) noUndeclaredFact(procedure, facts, files)
    for (const design of designs) noUnitMix(procedure, design, files)
  }
  for (const job of data.jobs.values()) {
    for (const reference of job.procedures) refersTo(reference, knownProcedures, 'procedure', files)
    if (job.when && factsWhole) noUndeclaredFactIn([job.when], facts, files)
    if (job.procedures.every(({id}) => procedures.has(id))) noUnrestoredIsolation(job, procedures, files)
  }
  for (const part of data.parts.values())
    if (part.when && factsWhole) noUndeclaredFactIn([part.when], facts, files)
  for (const symptom of data.symptoms) {
    plainSymptom(symptom, data.terms.values(), files)
    if (symptom.when && factsWhole) noUndeclaredFactIn([symptom.when], facts, files)
    for (const cause of symptom.causes)
      for (const reference of cause.procedures) refersTo(reference, knownProcedures, 'procedure', files)
  }
  const trialled = {
    procedures,
    procedureIds: knownProcedures,
    vessels: data.vessels,
    vesselIds: knownIds(data.vessels, 'vessels/', faulty),
  }
  for (const trial of data.trials) if (allRead) noUnplacedTrial(trial, trialled, files)
  noUncoveredFailure(
    data.failures,
    {...data, procedures, pumps: factsWhole && allRead ? pumpsOf(data) : []},
    {procedures: knownProcedures, parts: knownIds(data.parts, 'parts.yaml', faulty)},
    files,
  )
  if (factsWhole && allRead && isWhole('parts.yaml', faulty))
    noUnnumberedPart(procedures.values(), {...data, procedures, pumps: pumpsOf(data)}, files)
  if (isWhole('jobs/', faulty)) noJoblessIsolation(procedures, data.jobs, files)
  checkUrgent(data, {procedures, ids: knownProcedures}, facts, files)
  checkDesigns(data, facts, files)
  checkVessels(data, procedures, facts, files)
  if (allRead && isWhole('jobs/', faulty))
    noUnheldWork([...data.jobs.values()], procedures, pumpsOf(data), designs, files)
}

function checkDesigns(data: ContentData, facts: ReturnType<typeof factValuesOf>, files: ContentFiles): void {
  for (const design of data.designs.values()) {
    if (isWhole('office.yaml', data.faulty)) noUndeclaredFactValue(design.facts, facts, files)
    plainLimits(design, data.terms.values(), files)
    for (const {value} of [...design.limits, ...(design.alsoStated ?? [])])
      refersTo(value, knownValueIds(design), 'value', files)
  }
}

function checkVessels(
  data: ContentData,
  procedures: ReadonlyMap<string, Procedure>,
  facts: ReturnType<typeof factValuesOf>,
  files: ContentFiles,
): void {
  const officeRead = isWhole('office.yaml', data.faulty)
  const pumps = pumpsOf(data)
  for (const vessel of data.vessels.values()) {
    const stated = [vessel.facts, ...vessel.positions.map((position) => position.facts)]
    if (officeRead) for (const values of stated) noUndeclaredFactValue(values, facts, files)
    for (const procedure of procedures.values())
      noMissingIsolationPoint(procedure, positionsServed(procedure, vessel, pumps), files)
  }
  for (const {position, design} of pumps) noUnfitDesign(position, design, files)
  if (['office.yaml', 'designs/', 'vessels/', 'jobs/'].every((path) => isWhole(path, data.faulty)))
    noIdleDifference(pumps, [...data.jobs.values()], files)
  for (const job of data.jobs.values()) noOpenService(job, pumps, facts, files)
  for (const procedure of procedures.values()) {
    noOpenService(procedure, pumps, facts, files)
    noUnservedReference(procedure, procedures, pumps, files)
    for (const pump of pumps) noUnidentifiedFact(procedure, pump, facts, files)
    if (officeRead) noAbsentReference(procedure, pumps, files)
  }
}

/** Pumps of a vessel that a procedure is for; one whose design could not be read counts. */
function positionsServed(procedure: Procedure, vessel: Vessel, pumps: readonly Pump[]): readonly Position[] {
  const others = new Set(pumps.filter(({facts}) => !serves(procedure, facts)).map(({position}) => position))
  return vessel.positions.filter((position) => !others.has(position))
}
