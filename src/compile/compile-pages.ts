import {serves} from '../conditions/serves.ts'
import {tankPlan} from '../figures/tank-plan.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import type {Page, StartPage, VesselHead} from '../handbook-model/pages.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {calibrationsPage} from './calibrations-page.ts'
import {desksOfVessel, found, type PumpDesk} from './desk.ts'
import {failuresPage} from './failures-page.ts'
import {planWordsEn} from './figure-words-en.ts'
import {hoursPage} from './hours-page.ts'
import {intervalText} from './interval-text.ts'
import {cautionsPage, partsPage, sourcesPage, toolsPage, wordsPage} from './library-pages.ts'
import {filesOfPump, unique} from './made-from.ts'
import {positionPath, pumpRecordPath, startPath} from './page-paths.ts'
import {
  figuresUnderUrgent,
  jobUnderUrgent,
  positionUnderUrgent,
  procedureUnderUrgent,
  pumpsOfDesign,
  wallSheetUnderUrgent,
} from './pages-under-urgent.ts'
import {pictureFiles} from './picture.ts'
import {planTanks} from './plan-tanks.ts'
import {procedureLine} from './procedure-page.ts'
import {pumpRecordPage} from './pump-record-page.ts'
import {sectionFiles} from './section-figure.ts'
import {symptomsPage} from './symptoms-page.ts'
import {sharedDesk, withUrgentUses} from './urgent-uses.ts'
import {jobsOf, proceduresOf} from './used-in.ts'
import {designValuesPages, positionValuesPage} from './values-pages.ts'
import {wordsEn} from './words-en.ts'
import {workPage} from './work-page.ts'
import {writtenDatum} from './written-datum.ts'

/**
 * Makes the page models of one vessel: conditions decided, cautions placed, values bound.
 *
 * With places, a copy for the office, explanations name file and line of each input.
 *
 * @throws {Error}
 *   When something is missing that the check has proved to exist.
 */
export function compilePages(
  content: Content,
  values: ComputedValues,
  vesselId: string,
  withPlaces = false,
): HandbookPages {
  const vessel = found(content.vessels.get(vesselId), `vessel ${vesselId}`)
  const desks = desksOfVessel(content, values, vesselId, withPlaces).map(withUrgentUses)
  const overviews = overviewsOf(desks)
  const pages: readonly Page[] = [
    startPage(vessel, desks, overviews),
    ...sharedPages(desks),
    ...desks.flatMap(pagesOfPump),
    wallSheetUnderUrgent(desks),
    cautionsPage(desks),
    toolsPage(desks),
    partsPage(desks),
    sourcesPage(desks),
    wordsPage(desks),
    ...overviews.map(({page}) => page),
  ]
  return {
    vessel: vesselHead(vessel, content),
    pages,
    figures: [...sectionFiles(desks), ...pictureFiles(pages)],
    records: [hoursPage(content, vesselId), calibrationsPage(desks), ...desks.map(pumpRecordPage)],
  }
}

function pagesOfPump(desk: PumpDesk): readonly Page[] {
  return [
    positionUnderUrgent(desk),
    ...proceduresOf([desk])
      .filter((procedure) => procedure.scope === 'position')
      .map((procedure) => procedureUnderUrgent(procedure, desk)),
    ...(desk.content.symptoms.length > 0 ? [symptomsPage(desk)] : []),
    ...jobsOf([desk]).map((job) => jobUnderUrgent(job, desk)),
    figuresUnderUrgent(positionValuesPage(desk), desk),
  ]
}

/** What is the same on every pump of the ship or of a design: one page each. */
function sharedPages(desks: readonly PumpDesk[]): readonly Page[] {
  const procedures = proceduresOf(desks).flatMap((procedure) => {
    if (procedure.scope === 'position') return []
    const served = desks.filter(({facts}) => serves(procedure, facts))
    const isOfShip = procedure.scope === 'vessel'
    const shown = isOfShip ? served.slice(0, 1) : firstOfDesigns(served)
    return shown.map((desk) =>
      procedureUnderUrgent(procedure, sharedDesk(desk, isOfShip ? served : pumpsOfDesign(desk, served))),
    )
  })
  return [
    ...procedures,
    ...firstOfDesigns(desks).flatMap((one) => {
      const desk = sharedDesk(one, pumpsOfDesign(one, desks))
      return designValuesPages(desk).map((page) => figuresUnderUrgent(page, desk))
    }),
  ]
}

/** The first pump of each design. */
function firstOfDesigns(desks: readonly PumpDesk[]): readonly PumpDesk[] {
  return desks.filter((desk, index) => desks.findIndex((one) => one.design.id === desk.design.id) === index)
}

function vesselHead(vessel: Vessel, content: Content): VesselHead {
  const {office} = content
  return {
    id: vessel.id,
    name: vessel.name.en,
    hullNumber: vessel.hullNumber,
    issuer: office.issuer.en,
    contact: office.contact,
    owner: office.ownerRole.en,
    approvedBy: office.approverRole.en,
    demonstration: office.demonstration,
    language: 'en',
  }
}

/** Pages that look over all jobs and over all parts, each with what the start page says of it. */
interface Overview {
  readonly page: Page
  readonly about: string
}

function overviewsOf(desks: readonly PumpDesk[]): readonly Overview[] {
  const {failures = []} = desks[0]?.content ?? {}
  return [
    ...(jobsOf(desks).length > 0 ? [{page: workPage(desks), about: wordsEn.work.about}] : []),
    ...(failures.length > 0 ? [{page: failuresPage(desks), about: wordsEn.failures.about}] : []),
  ]
}

function startPage(vessel: Vessel, desks: readonly PumpDesk[], overviews: readonly Overview[]): StartPage {
  const urgent = [...new Set(desks.flatMap((desk) => desk.urgent.map(({revision}) => revision)))].sort(
    (a, b) => (a.id < b.id ? -1 : 1),
  )
  return {
    kind: 'start',
    head: {
      id: `${vessel.id}/start`,
      shownAs: 'start',
      path: startPath,
      title: wordsEn.titles.start(vessel.name.en),
      language: 'en',
      madeFrom: unique([
        ...desks.flatMap(filesOfPump),
        ...jobsOf(desks).map((job) => job.place.path),
        ...urgent.map((one) => one.place.path),
      ]),
    },
    plan: tankPlan({tanks: planTanks(vessel), words: planWordsEn}),
    positions: desks.map((desk) => ({
      link: {text: desk.position.tag, path: positionPath(desk.position.id)},
      serial: desk.position.serial,
      design: desk.design.title.en,
      notKnown:
        [...desk.values.values()].filter(
          (value) => value.result.kind === 'not-known' && value.calculation === undefined,
        ).length + desk.position.facts.filter((fact) => fact.value === undefined).length,
    })),
    portable: desks.flatMap(({position: {id, tag, keptAt}}) =>
      keptAt ? [{link: {text: tag, path: positionPath(id)}, keptAt: keptAt.en}] : [],
    ),
    overviews: overviews.map(({page: {head}, about}) => ({link: {text: head.title, path: head.path}, about})),
    jobs: jobsOf(desks).map((job) => ({
      title: job.title.en,
      purpose: job.purpose.en,
      interval: intervalText(job.interval),
    })),
    procedures: proceduresOf(desks).flatMap((procedure) =>
      procedure.scope === 'vessel'
        ? desks
            .filter(({facts}) => serves(procedure, facts))
            .slice(0, 1)
            .map((desk) => procedureLine(procedure, desk))
        : [],
    ),
    records: desks.map(({position: {id, tag}}) => ({text: tag, path: pumpRecordPath(id)})),
    urgent: urgent.map((one) => ({
      block: `urgent-${one.id}`,
      number: one.number,
      title: one.title.en,
      validTo: one.validTo.id,
      to: wordsEn.urgent.to(one.validTo.id),
    })),
    safety: wordsEn.safety,
    particulars: [
      {label: wordsEn.particulars.hullNumber, text: vessel.hullNumber},
      {label: wordsEn.particulars.shipType, text: vessel.shipType.en},
      {label: wordsEn.particulars.built, text: vessel.built},
      {label: wordsEn.particulars.deadweight, text: writtenDatum(vessel.deadweight)},
      {label: wordsEn.particulars.tanks, text: String(vessel.tanks.length)},
      {label: wordsEn.particulars.pumps, text: String(vessel.positions.length)},
    ],
    locations: vessel.locations.map((one) => one.en),
  }
}
