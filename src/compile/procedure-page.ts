import type {PartLine, ProcedureLine, ProcedurePage, ToolLine, ValueLine} from '../handbook-model/pages.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import {boundSection, stepCounter} from './bind-step.ts'
import {bindText} from './bind-text.ts'
import {cautionNumbers} from './caution-numbers.ts'
import {found, type PumpDesk, positionHead, pumpValue} from './desk.ts'
import {isTried} from './is-tried.ts'
import {filesOfProcedure} from './made-from.ts'
import {partLink, procedurePageId, procedurePath, toolLink} from './page-paths.ts'
import {touchedParts} from './touched-parts.ts'
import {valueLine} from './value-line.ts'
import {valuesShown} from './values-shown.ts'
import {standing} from './variant.ts'
import {wordsEn} from './words-en.ts'
import {toolSize} from './written-datum.ts'

/** A procedure on one pump: what reads on screen and prints as the task sheet. */
export function procedurePage(procedure: Procedure, desk: PumpDesk): ProcedurePage {
  const numbers = cautionNumbers(desk)
  const steps = stepCounter()
  const sections = procedure.sections.flatMap(
    (section) => boundSection(section, procedure, desk, numbers, steps) ?? [],
  )
  const parts = partLines(procedure, desk)
  const touched = touchedParts(procedure, sections, parts, desk)
  return {
    kind: 'procedure',
    head: {
      id: procedurePageId(procedure, desk),
      shownAs: `${ownerWords(procedure, desk)} · ${procedure.title.toLowerCase()}`,
      path: procedurePath(procedure, desk),
      title: procedure.title,
      language: 'en',
      ...(procedure.scope === 'position' ? {position: positionHead(desk)} : {}),
      madeFrom: filesOfProcedure(procedure, desk),
    },
    activity: wordsEn.activities[procedure.activity],
    isTried: isTried(procedure, desk.design.id, desk.content),
    isCard: procedure.activity === 'card',
    isOfDesign: procedure.scope === 'design',
    performedBy: procedure.performedBy.en,
    supervisedBy: procedure.supervisedBy.en,
    competence: wordsEn.competence[procedure.competence],
    people: wordsEn.people(procedure.people),
    hours: wordsEn.hours(procedure.hours),
    clearHeight: procedure.clearHeight.en,
    weather: procedure.weather.en,
    permits: procedure.permits.map((one) => one.en),
    purpose: procedure.purpose.map((text) => bindText(text, desk)),
    before: procedure.before.map((text) => bindText(text, desk)),
    after: procedure.after.map((text) => bindText(text, desk)),
    tools: toolLines(procedure, desk),
    parts,
    ...(touched ? {touched} : {}),
    records: procedure.records.map((one) => one.en),
    sections,
    cautionsUsed: numbers.used(),
    valuesUsed: valuesUsed(procedure, desk),
  }
}

function ownerWords(procedure: Procedure, desk: PumpDesk): string {
  const owners = {position: desk.position.tag, design: desk.design.title.en, vessel: desk.vessel.name.en}
  return owners[procedure.scope]
}

/** Tools of a procedure with their notes. */
export function toolLines(procedure: Procedure, desk: PumpDesk): readonly ToolLine[] {
  return procedure.tools.flatMap(({tool: reference, note, when}) => {
    const stands = standing(when, desk)
    if (!stands.stands) return []
    const tool = found(desk.content.tools.get(reference.id), `tool ${reference.id}`)
    return {
      id: tool.id,
      title: tool.title.en,
      size: toolSize(tool),
      note: noteUnder(stands.variant, note?.en),
      link: toolLink(tool.id, tool.title.en),
    }
  })
}

/** Parts that a procedure needs on one pump, in its order. */
export function standingParts(procedure: Procedure, desk: PumpDesk): Procedure['parts'] {
  return procedure.parts.filter(({when}) => standing(when, desk).stands)
}

/** A note behind the condition that nobody could decide. */
function noteUnder(variant: string | undefined, note = ''): string {
  return [variant ?? '', note].filter((one) => one !== '').join('; ')
}

/** Parts of a procedure with their quantities. */
export function partLines(procedure: Procedure, desk: PumpDesk): readonly PartLine[] {
  return standingParts(procedure, desk).map(({part: reference, quantity, unit, note, when}) => {
    const stands = standing(when, desk)
    const part = found(desk.content.parts.get(reference.id), `part ${reference.id}`)
    return {
      id: part.id,
      title: part.title.en,
      size: part.size.en,
      quantity: wordsEn.amount(quantity, unit),
      note: noteUnder(stands.stands ? stands.variant : undefined, note?.en),
      balloon: part.balloon ?? '',
      link: partLink(part.id, part.title.en),
    }
  })
}

/** One line for lists of procedures. */
export function procedureLine(procedure: Procedure, desk: PumpDesk): ProcedureLine {
  return {
    link: {text: procedure.title, path: procedurePath(procedure, desk)},
    people: wordsEn.people(procedure.people),
    hours: wordsEn.hours(procedure.hours),
    competence: wordsEn.competence[procedure.competence],
  }
}

function valuesUsed(procedure: Procedure, desk: PumpDesk): readonly ValueLine[] {
  const ids = new Set(valuesShown(procedure, desk).map((use) => use.value))
  return [...ids].map((id) => valueLine(pumpValue(desk, id), desk))
}
