import {serves} from '../conditions/serves.ts'
import type {Job} from '../handbook-model/office-content.ts'
import type {ExplanationsPage, Page} from '../handbook-model/pages.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import {found, type PumpDesk} from './desk.ts'
import {jobPage} from './job-page.ts'
import {positionPage} from './position-page.ts'
import {procedurePage} from './procedure-page.ts'
import {withUrgent} from './urgent-notices.ts'
import {concernsProcedure, replacesValue, sharedDesk} from './urgent-uses.ts'
import {valuesPage} from './values-pages.ts'

/** The page of a pump under every urgent revision that counts for it. */
export function positionUnderUrgent(desk: PumpDesk): Page {
  return withUrgent(positionPage(desk), desk.urgent, desk)
}

/** A procedure under the urgent revisions that concern it. */
export function procedureUnderUrgent(procedure: Procedure, desk: PumpDesk): Page {
  const uses = desk.urgent.filter((use) => concernsProcedure(use, procedure, desk))
  return withUrgent(procedurePage(procedure, desk), uses, desk)
}

/** A job under the urgent revisions that concern one of its procedures on this pump. */
export function jobUnderUrgent(job: Job, desk: PumpDesk): Page {
  const procedures = job.procedures
    .flatMap(({id}) => desk.content.procedures.get(id) ?? [])
    .filter((procedure) => serves(procedure, desk.facts))
  const uses = desk.urgent.filter((use) => procedures.some((one) => concernsProcedure(use, one, desk)))
  return withUrgent(jobPage(job, desk), uses, desk)
}

/** A page of explanations under the urgent revisions that replace a figure of it. */
export function figuresUnderUrgent(page: ExplanationsPage, desk: PumpDesk): Page {
  const uses = desk.urgent.filter(({revision}) =>
    page.values.some(({line}) => replacesValue(revision, line.id)),
  )
  return withUrgent(page, uses, desk)
}

/** The wall sheet of the ship under the urgent revisions that replace a figure which the pumps of a design share. */
export function wallSheetUnderUrgent(desks: readonly PumpDesk[]): Page {
  const shared = desks.map((desk) => sharedDesk(desk, pumpsOfDesign(desk, desks)))
  const first = found(desks[0], 'a pump')
  const uses = sharedDesk(first, desks).urgent.filter(({revision}) =>
    shared.some(
      (desk) =>
        desk.urgent.some((use) => use.revision === revision) &&
        [...desk.values.values()].some((value) => value.ofDesign && replacesValue(revision, value.id)),
    ),
  )
  return withUrgent(valuesPage(shared), uses, first)
}

/** The pumps of a vessel that have the design of one of them. */
export function pumpsOfDesign(desk: PumpDesk, desks: readonly PumpDesk[]): readonly PumpDesk[] {
  return desks.filter((one) => one.design.id === desk.design.id)
}
