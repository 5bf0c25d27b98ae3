import type {JobPage, PartLine, ToolLine} from '../handbook-model/pages.ts'
import type {Job} from '../handbook-model/office-content.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import {cautionNumbers} from './caution-numbers.ts'
import {found, type PumpDesk, positionHead} from './desk.ts'
import {isolationLines} from './isolation-lines.ts'
import {jobPath} from './page-paths.ts'
import {partLines, procedureLine, toolLines} from './procedure-page.ts'
import {standing} from './variant.ts'
import {wordsEn} from './words-en.ts'

/** A job on one pump: its procedures in order, tools and parts summed against what is aboard. */
export function jobPage(job: Job, desk: PumpDesk): JobPage {
  const procedures = job.procedures.map((reference) => found(desk.content.procedures.get(reference.id), `procedure ${reference.id}`))
  const roles = new Set(procedures.flatMap(rolesOf))
  return {
    kind: 'job',
    head: {
      id: `${desk.vessel.id}/${desk.position.id}/job-${job.id}`,
      shownAs: `${desk.position.tag} · ${job.title.en.toLowerCase()}`,
      path: jobPath(desk.position.id, job.id),
      title: job.title.en,
      language: 'en',
      position: positionHead(desk),
      madeFrom: [job.place.path, ...procedures.map((one) => one.place.path), desk.design.place.path, desk.vessel.place.path],
    },
    purpose: job.purpose.en,
    interval: job.interval.en,
    intervalReason: job.intervalReason.en,
    procedures: procedures.map((procedure) => procedureLine(procedure, desk)),
    hours: wordsEn.hours(Math.round(procedures.reduce((sum, one) => sum + one.hours, 0) * 10) / 10),
    tools: jobTools(procedures, desk),
    parts: jobParts(procedures, desk),
    asFound: job.asFound.map((one) => one.en),
    asLeft: job.asLeft.map((one) => one.en),
    isolation: desk.position.isolation.filter((one) => roles.has(one.role)).flatMap(isolationLines),
    cautions: cautionsOf(procedures, desk),
  }
}

function rolesOf(procedure: Procedure): readonly string[] {
  return procedure.sections.flatMap((section) => section.items.flatMap((item) => (item.kind === 'step' ? item.parts.flatMap((part) => (part.kind === 'isolate' ? [part.role] : [])) : [])))
}

function jobTools(procedures: readonly Procedure[], desk: PumpDesk): JobPage['tools'] {
  const lines = new Map<string, {line: ToolLine; usedIn: string[]}>()
  for (const procedure of procedures) {
    for (const line of toolLines(procedure, desk)) {
      const known = lines.get(line.id) ?? {line, usedIn: []}
      lines.set(line.id, {line: known.line, usedIn: [...known.usedIn, procedure.title]})
    }
  }
  return [...lines.values()].map(({line, usedIn}) => {
    const aboard = desk.vessel.toolsAboard.filter((one) => one.tool.id === line.id)
    const place = [...new Set(aboard.map((one) => one.location.en))].join(', ')
    return {...line, aboard: aboard.length > 0 ? wordsEn.aboard(aboard.length, place) : wordsEn.noneAboard, usedIn: usedIn.join(', ')}
  })
}

function jobParts(procedures: readonly Procedure[], desk: PumpDesk): JobPage['parts'] {
  const lines = new Map<string, {line: PartLine; needed: number; unit: string; usedIn: string[]}>()
  for (const procedure of procedures) {
    const made = partLines(procedure, desk)
    procedure.parts.forEach(({quantity, unit}, index) => {
      const line = made[index]
      if (!line) return
      const known = lines.get(line.id) ?? {line, needed: 0, unit, usedIn: []}
      lines.set(line.id, {line, needed: known.needed + quantity, unit, usedIn: [...known.usedIn, procedure.title]})
    })
  }
  return [...lines.values()].map(({line, needed, unit, usedIn}) => {
    const aboard = desk.vessel.sparesAboard.filter((one) => one.part.id === line.id)
    const quantity = aboard.reduce((sum, one) => sum + one.quantity, 0)
    const place = [...new Set(aboard.map((one) => one.location.en))].join(', ')
    return {...line, quantity: `${Math.round(needed * 100) / 100} ${unit}`, aboard: quantity > 0 ? wordsEn.aboard(quantity, place) : wordsEn.noneAboard, usedIn: usedIn.join(', ')}
  })
}

function cautionsOf(procedures: readonly Procedure[], desk: PumpDesk): JobPage['cautions'] {
  const numbers = cautionNumbers(desk)
  for (const procedure of procedures) {
    for (const section of procedure.sections) {
      const uses = [...section.cautions, ...section.items.flatMap((item) => (item.kind === 'step' ? item.cautions : []))]
      for (const use of uses) if (standing(use.when, desk).stands) numbers.numberOf(use.caution.id)
    }
  }
  return numbers.used()
}
