import {serves} from '../conditions/serves.ts'
import type {Job} from '../handbook-model/office-content.ts'
import type {WorkLine, WorkPage} from '../handbook-model/pages.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import {found, type PumpDesk} from './desk.ts'
import {markOfOrigin, regularText, triggerText} from './interval-text.ts'
import {jobPath, workPath} from './page-paths.ts'
import {shipPageHead} from './ship-page-head.ts'
import {jobsOf} from './used-in.ts'
import {wordsEn} from './words-en.ts'

const groupsInOrder = ['time', 'event', 'condition'] as const

/** Every job that serves a pump of the ship, by how often it is done. */
export function workPage(desks: readonly PumpDesk[]): WorkPage {
  const {content} = found(desks[0], 'a pump')
  const jobs = [...jobsOf(desks)].sort(byOften)
  const sources = jobs.flatMap(({interval}) => content.sources.get(interval.origin.source) ?? [])
  const groups = groupsInOrder.map((group) => ({
    title: wordsEn.work.groups[group],
    jobs: jobs.filter((job) => groupOf(job) === group).map((job) => workLine(job, desks)),
  }))
  return {
    kind: 'work',
    head: shipPageHead(desks, 'work', workPath, wordsEn.titles.work, [
      ...desks.map((desk) => desk.design.place.path),
      ...[...jobs, ...jobs.flatMap((job) => proceduresIn(job, desks)), ...sources].map(
        (one) => one.place.path,
      ),
    ]),
    groups: groups.filter((group) => group.jobs.length > 0),
  }
}

function workLine(job: Job, desks: readonly PumpDesk[]): WorkLine {
  const served = desks.filter(({facts}) => serves(job, facts))
  const {content} = found(served[0], `a pump of job ${job.id}`)
  return {
    id: job.id,
    title: job.title.en,
    interval: regularText(job.interval),
    trigger: triggerText(job.interval),
    reason: job.interval.reason.en,
    mark: markOfOrigin(job.interval.origin, content),
    doneBy: doneBy(proceduresIn(job, served)),
    pumps: wordsEn.work.pumps(served.length, desks.length),
    onPumps: served.map(({position}) => ({text: position.tag, path: jobPath(position.id, job.id)})),
  }
}

function groupOf({interval}: Job): (typeof groupsInOrder)[number] {
  if (interval.hours || interval.calendar.length > 0) return 'time'
  return interval.events.length > 0 ? 'event' : 'condition'
}

/** The shortest time of the calendar first; running hours, which no calendar knows, behind all of them. */
function byOften(a: Job, b: Job): number {
  return (
    shortestOf(a) - shortestOf(b) ||
    (a.interval.hours?.quantity.si ?? 0) - (b.interval.hours?.quantity.si ?? 0) ||
    (a.title.en < b.title.en ? -1 : 1)
  )
}

/** In seconds; beyond every calendar where there is none. */
function shortestOf({interval}: Job): number {
  return Math.min(Number.MAX_VALUE, ...interval.calendar.map(({every}) => every.quantity.si))
}

/** Procedures of a job that are for one of these pumps, in its order. */
function proceduresIn(job: Job, desks: readonly PumpDesk[]): readonly Procedure[] {
  return job.procedures
    .flatMap(({id}) => desks[0]?.content.procedures.get(id) ?? [])
    .filter((procedure) => desks.some(({facts}) => serves(procedure, facts)))
}

/** The hardest competence that the job asks for, and each rating once. */
function doneBy(procedures: readonly Procedure[]): string {
  const isHeavy = procedures.some(({competence}) => competence === 'heavy-maintenance')
  return wordsEn.work.doneBy(wordsEn.competence[isHeavy ? 'heavy-maintenance' : 'crew'], [
    ...new Set(procedures.map(({performedBy}) => performedBy.en)),
  ])
}
