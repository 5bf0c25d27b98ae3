import {hasPart, isFitted} from '../conditions/has-part.ts'
import {serves} from '../conditions/serves.ts'
import type {FailureRow, MachineUnit, Part} from '../handbook-model/office-content.ts'
import type {FailuresPage, PageLink, PartFailures} from '../handbook-model/pages.ts'
import {found, type PumpDesk} from './desk.ts'
import {failuresPath, procedurePath, symptomsPath} from './page-paths.ts'
import {shipPageHead} from './ship-page-head.ts'
import {proceduresOf} from './used-in.ts'
import {wordsEn} from './words-en.ts'

/** Every part that a pump of the ship has, by unit of the machine, with each way in which it fails and what is done. */
export function failuresPage(desks: readonly PumpDesk[]): FailuresPage {
  const {content} = found(desks[0], 'a pump')
  const withRows = new Set(content.failures.map(({part}) => part.id))
  const lines = [...content.parts.values()].flatMap((part) => {
    const having = withRows.has(part.id) ? desks.filter((desk) => hasPart(part, desk, content)) : []
    return having.length > 0 ? [{part, line: partFailures(part, having, desks.length)}] : []
  })
  const units = content.units.map((unit) => ({
    id: unit.id,
    title: unit.title.en,
    parts: unit.balloons.flatMap((balloon) =>
      lines.filter(({part}) => part.balloon === balloon).map(({line}) => line),
    ),
  }))
  const others = lines.filter(({part}) => !isInUnit(part, content.units)).map(({line}) => line)
  return {
    kind: 'failures',
    head: shipPageHead(desks, 'failures', failuresPath, wordsEn.titles.failures, [
      ...desks.map((desk) => desk.design.place.path),
      ...[...content.failures, ...content.parts.values(), ...proceduresOf(desks)].map(
        (one) => one.place.path,
      ),
    ]),
    units: [...units, {id: 'no-unit', title: wordsEn.failures.otherParts, parts: others}].filter(
      ({parts}) => parts.length > 0,
    ),
    symptoms:
      content.symptoms.length > 0
        ? desks.map(({position}) => ({text: position.tag, path: symptomsPath(position.id)}))
        : [],
  }
}

function isInUnit({balloon}: Part, units: readonly MachineUnit[]): boolean {
  return balloon !== undefined && units.some(({balloons}) => balloons.includes(balloon))
}

function partFailures(part: Part, having: readonly PumpDesk[], all: number): PartFailures {
  const {content} = found(having[0], `a pump with ${part.id}`)
  return {
    id: part.id,
    title: part.title.en,
    pumps: pumpsWith(part, having, all),
    failures: content.failures
      .filter((row) => row.part.id === part.id)
      .map((row) => ({
        mode: row.mode.en,
        procedures: proceduresAgainst(row, having),
        reason: row.reason?.en ?? '',
      })),
  }
}

/** On how many pumps it is, and on how many nobody knows; blank where it is on all of them. */
function pumpsWith(part: Part, having: readonly PumpDesk[], all: number): string {
  const open = having.filter((desk) => isFitted(part, desk, desk.content) === 'unknown').length
  const sure = having.length - open
  if (sure === all) return ''
  return open === 0 ? wordsEn.failures.pumps(sure, all) : wordsEn.failures.pumpsOpen(sure, open, all)
}

/** Procedures of a row that are for a pump with the part, each linked on the first of these. */
function proceduresAgainst(row: FailureRow, having: readonly PumpDesk[]): readonly PageLink[] {
  return row.procedures.flatMap(({id}) => {
    const procedure = found(having[0]?.content.procedures.get(id), `procedure ${id}`)
    const first = having.find(({facts}) => serves(procedure, facts))
    return first ? [{text: procedure.title, path: procedurePath(procedure, first)}] : []
  })
}
