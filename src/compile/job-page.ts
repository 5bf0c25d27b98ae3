import {serves} from '../conditions/serves.ts'
import type {Job} from '../handbook-model/office-content.ts'
import type {JobPage, PartLine, ToolLine} from '../handbook-model/pages.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import type {IsolationRoleName} from '../handbook-model/vessel-content.ts'
import {boundCautions, cautionNumbers} from './caution-numbers.ts'
import {found, type PumpDesk, positionHead} from './desk.ts'
import {intervalText, markOfOrigin} from './interval-text.ts'
import {isolationLines} from './isolation-lines.ts'
import {filesOfProcedure, unique} from './made-from.ts'
import {jobPath} from './page-paths.ts'
import {partLines, procedureLine, standingParts, toolLines} from './procedure-page.ts'
import {standingSections} from './standing-items.ts'
import {wordsEn} from './words-en.ts'

/** A job on one pump: those of its procedures that are for this pump in order, tools and parts summed against what is aboard. */
export function jobPage(job: Job, desk: PumpDesk): JobPage {
  const procedures = job.procedures
    .map((reference) => found(desk.content.procedures.get(reference.id), `procedure ${reference.id}`))
    .filter((procedure) => serves(procedure, desk.facts))
  const roles = new Set(procedures.flatMap((procedure) => rolesOf(procedure, desk)))
  return {
    kind: 'job',
    head: {
      id: `${desk.vessel.id}/${desk.position.id}/job-${job.id}`,
      shownAs: `${desk.position.tag} · ${job.title.en.toLowerCase()}`,
      path: jobPath(desk.position.id, job.id),
      title: job.title.en,
      language: 'en',
      position: positionHead(desk),
      madeFrom: unique([job.place.path, ...procedures.flatMap((one) => filesOfProcedure(one, desk))]),
    },
    purpose: job.purpose.en,
    interval: intervalText(job.interval),
    intervalReason: job.interval.reason.en,
    intervalMark: markOfOrigin(job.interval.origin, desk.content),
    procedures: procedures.map((procedure) => procedureLine(procedure, desk)),
    hours: wordsEn.hours(Math.round(procedures.reduce((sum, one) => sum + one.hours, 0) * 10) / 10),
    tools: jobTools(procedures, desk),
    parts: jobParts(procedures, desk),
    asFound: job.asFound.map((one) => one.en),
    asLeft: job.asLeft.map((one) => one.en),
    isolation: isolationLines(desk.position, roles),
    cautions: cautionsOf(procedures, desk),
  }
}

function rolesOf(procedure: Procedure, desk: PumpDesk): readonly IsolationRoleName[] {
  const steps = standingSections(procedure, desk).flatMap(({items}) =>
    items.flatMap((item) => (item.kind === 'step' ? [item.step] : [])),
  )
  return steps.flatMap((step) => step.parts.flatMap((part) => (part.kind === 'isolate' ? [part.role] : [])))
}

function jobTools(procedures: readonly Procedure[], desk: PumpDesk): JobPage['tools'] {
  const lines = new Map<string, {line: ToolLine; usedIn: readonly string[]}>()
  for (const procedure of procedures) {
    for (const line of toolLines(procedure, desk)) {
      const known = lines.get(line.id) ?? {line, usedIn: []}
      lines.set(line.id, {line: known.line, usedIn: [...known.usedIn, procedure.title]})
    }
  }
  return [...lines.values()].map(({line, usedIn}) => ({
    ...line,
    aboard: toolAboard(line.id, desk),
    usedIn: usedIn.join(', '),
  }))
}

/** Numbers of the tool and where it lies. One entry may hold several pieces, so that entries are never counted. */
function toolAboard(id: string, desk: PumpDesk): string {
  const entries = desk.vessel.toolsAboard.filter((one) => one.tool.id === id)
  if (entries.length === 0) return wordsEn.notListed
  const places = new Set(entries.map((one) => one.location.en))
  return [...places]
    .map((place) =>
      wordsEn.numbered(
        entries.filter((one) => one.location.en === place).map((one) => one.number),
        place,
      ),
    )
    .join('; ')
}

/** A part with its need, summed over procedures; each unit of a part is a line of its own. */
interface Need {
  readonly line: PartLine
  readonly quantity: number
  readonly unit: string
  readonly usedIn: readonly string[]
}

function jobParts(procedures: readonly Procedure[], desk: PumpDesk): JobPage['parts'] {
  const needs = new Map<string, Need>()
  for (const procedure of procedures) {
    const made = partLines(procedure, desk)
    standingParts(procedure, desk).forEach(({quantity, unit}, index) => {
      const line = found(made[index], `part line ${index}`)
      const noun = wordsEn.nounOf(unit)
      const key = `${line.id} ${noun}`
      const before = needs.get(key)
      needs.set(key, {
        line: before?.line ?? line,
        quantity: (before?.quantity ?? 0) + quantity,
        unit: noun,
        usedIn: [...(before?.usedIn ?? []), procedure.title],
      })
    })
  }
  return [...needs.values()].map(({line, quantity, unit, usedIn}) => ({
    ...line,
    quantity: wordsEn.amount(Math.round(quantity * 1e6) / 1e6, unit),
    aboard: partAboard(line.id, desk),
    usedIn: usedIn.join(', '),
  }))
}

function partAboard(id: string, desk: PumpDesk): string {
  const entries = desk.vessel.sparesAboard.filter((one) => one.part.id === id)
  if (entries.length === 0) return wordsEn.notListed
  const quantity = entries.reduce((sum, one) => sum + one.quantity, 0)
  const places = new Set(entries.filter((one) => one.quantity > 0).map((one) => one.location.en))
  const aboard = quantity > 0 ? wordsEn.aboard(quantity, [...places].join(', ')) : wordsEn.noneAboard
  const least = entries.reduce((sum, one) => sum + (one.least ?? 0), 0)
  return least > 0 ? wordsEn.orderBelow(aboard, least) : aboard
}

function cautionsOf(procedures: readonly Procedure[], desk: PumpDesk): JobPage['cautions'] {
  const numbers = cautionNumbers(desk)
  for (const procedure of procedures) {
    for (const {section, items} of standingSections(procedure, desk)) {
      boundCautions(section.cautions, desk, numbers)
      for (const item of items) if (item.kind === 'step') boundCautions(item.step.cautions, desk, numbers)
    }
  }
  return numbers.used()
}
