import type {PositionPage} from '../handbook-model/pages.ts'
import {type PumpDesk, positionHead, valueOf} from './desk.ts'
import {isolationLines} from './isolation-lines.ts'
import {jobPath, positionPath, positionValuesPath, torquesPath} from './page-paths.ts'
import {procedureLine} from './procedure-page.ts'
import {proceduresOf} from './used-in.ts'
import {limitLine, valueLine} from './value-line.ts'

/** A pump position: identity, as fitted, ratings, limits, isolation points, jobs and procedures. */
export function positionPage(desk: PumpDesk): PositionPage {
  const {position, design, content, vessel} = desk
  return {
    kind: 'position',
    head: {
      id: `${vessel.id}/${position.id}`,
      shownAs: position.tag,
      path: positionPath(position.id),
      title: `Pump ${position.tag}`,
      language: 'en',
      position: positionHead(desk),
      madeFrom: [vessel.place.path, design.place.path],
    },
    description: design.description.en,
    intendedUse: design.intendedUse.en,
    misuse: design.misuse.en,
    asFitted: position.facts.map((fact) => {
      const declared = content.office.facts.find((one) => one.id === fact.fact.id)
      const value = declared?.values.find((one) => one.id === fact.value)
      return {
        label: declared?.title.en ?? fact.fact.id,
        text: fact.value === undefined ? `NOT KNOWN - MEASURE AND REPORT (${fact.reason ?? ''})` : (value?.title.en ?? fact.value),
        known: fact.value !== undefined,
      }
    }),
    components: position.components.map((component) => ({label: component.kind, text: component.serial})),
    ratings: design.ratings.map((rating) => valueLine(valueOf(desk, `rating.${rating.id}`), desk)),
    limits: design.limits.map((limit) => limitLine(limit, desk)),
    isolation: position.isolation.flatMap(isolationLines),
    jobs: [...content.jobs.values()].map((job) => ({link: {text: job.title.en, path: jobPath(position.id, job.id)}, purpose: job.purpose.en, interval: job.interval.en})),
    procedures: proceduresOf([desk]).map((procedure) => procedureLine(procedure, desk)),
    valuesPages: [
      {text: `Values of ${position.tag}`, path: positionValuesPath(position.id)},
      {text: `Bolted joints of ${position.tag}`, path: torquesPath(position.id)},
    ],
  }
}
