import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {HandbookPages, Page, PlanTank, StartPage, VesselHead} from '../handbook-model/pages.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {found, type PumpDesk, pumpDesk} from './desk.ts'
import {jobPage} from './job-page.ts'
import {cautionsPage, partsPage, sourcesPage, toolsPage, wordsPage} from './library-pages.ts'
import {positionPath, startPath} from './page-paths.ts'
import {positionPage} from './position-page.ts'
import {procedurePage} from './procedure-page.ts'
import {proceduresOf} from './used-in.ts'
import {positionValuesPage, torquesPage, valuesPage} from './values-pages.ts'
import {wordsEn} from './words-en.ts'
import {writtenDatum} from './written-datum.ts'

/**
 * Makes the page models of one vessel: conditions decided, cautions placed, values bound.
 *
 * @throws {Error}
 *   When something is missing that the check has proved to exist.
 */
export function compilePages(content: Content, values: ComputedValues, vesselId: string): HandbookPages {
  const vessel = found(content.vessels.get(vesselId), `vessel ${vesselId}`)
  const ofVessel = found(values.vessels.get(vesselId), `values of ${vesselId}`)
  const desks = vessel.positions.map((position) => pumpDesk(content, vessel, position, found(ofVessel.get(position.id), `values of ${position.id}`)))
  const pages: readonly Page[] = [
    startPage(vessel, desks, content),
    ...desks.flatMap(pagesOfPump),
    valuesPage(desks),
    cautionsPage(desks),
    toolsPage(desks),
    partsPage(desks),
    sourcesPage(desks),
    wordsPage(desks),
  ]
  return {vessel: vesselHead(vessel, content), pages}
}

function pagesOfPump(desk: PumpDesk): readonly Page[] {
  return [
    positionPage(desk),
    ...proceduresOf([desk]).map((procedure) => procedurePage(procedure, desk)),
    ...[...desk.content.jobs.values()].map((job) => jobPage(job, desk)),
    positionValuesPage(desk),
    torquesPage(desk),
  ]
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
    tanks: planTanks(vessel),
    language: 'en',
  }
}

/** Tanks in hundredths of the plan: the bow, at the highest frame, to the left. */
function planTanks(vessel: Vessel): readonly PlanTank[] {
  const frames = vessel.tanks.flatMap((tank) => [tank.plan.fromFrame, tank.plan.toFrame])
  const aft = Math.min(...frames)
  const fore = Math.max(...frames)
  const along = (frame: number): number => Math.round(((fore - frame) / (fore - aft || 1)) * 1000) / 10
  const across = (side: number): number => Math.round(((1 + side) / 2) * 1000) / 10
  return vessel.tanks.map((tank) => {
    const position = vessel.positions.find((one) => one.tank.id === tank.id)
    return {
      id: tank.id,
      tag: tank.tag,
      left: along(Math.max(tank.plan.fromFrame, tank.plan.toFrame)),
      right: along(Math.min(tank.plan.fromFrame, tank.plan.toFrame)),
      top: 100 - across(Math.max(tank.plan.fromSide, tank.plan.toSide)),
      bottom: 100 - across(Math.min(tank.plan.fromSide, tank.plan.toSide)),
      ...(position ? {position: {id: position.id, tag: position.tag, path: positionPath(position.id)}} : {}),
    }
  })
}

function startPage(vessel: Vessel, desks: readonly PumpDesk[], content: Content): StartPage {
  return {
    kind: 'start',
    head: {id: `${vessel.id}/start`, shownAs: 'start', path: startPath, title: `Pump handbook of ${vessel.name.en}`, language: 'en', madeFrom: [vessel.place.path, 'office.yaml']},
    positions: desks.map((desk) => ({
      link: {text: desk.position.tag, path: positionPath(desk.position.id)},
      serial: desk.position.serial,
      design: desk.design.title.en,
      notKnown: [...desk.values.values()].filter((value) => value.result.kind === 'not-known' && value.calculation === undefined).length + desk.position.facts.filter((fact) => fact.value === undefined).length,
    })),
    jobs: [...content.jobs.values()].map((job) => ({title: job.title.en, purpose: job.purpose.en, interval: job.interval.en})),
    safety: wordsEn.safety,
    particulars: [
      {label: 'Hull number', text: vessel.hullNumber},
      {label: 'Type', text: vessel.shipType.en},
      {label: 'Built', text: vessel.built},
      {label: 'Deadweight', text: writtenDatum(vessel.deadweight)},
      {label: 'Cargo tanks', text: String(vessel.tanks.length)},
      {label: 'Cargo pumps', text: String(vessel.positions.length)},
    ],
    locations: vessel.locations.map((one) => one.en),
  }
}
