import {notKnownWords} from '../handbook-model/computed.ts'
import type {FactDeclaration} from '../handbook-model/office-content.ts'
import type {BoundFigure, Field, PositionPage} from '../handbook-model/pages.ts'
import type {FactValue} from '../handbook-model/vessel-content.ts'
import {type PumpDesk, positionHead, pumpValue} from './desk.ts'
import {intervalText} from './interval-text.ts'
import {isolationLines} from './isolation-lines.ts'
import {filesOfPump, filesOfValue, unique} from './made-from.ts'
import {wettedLines} from './material-table.ts'
import {
  designPagePath,
  designPages,
  jobPath,
  positionPath,
  positionValuesPath,
  pumpRecordPath,
  symptomsPath,
} from './page-paths.ts'
import {pictureOf} from './picture.ts'
import {pipeStackOfPump, valuesOfStack} from './pipe-stack-of-pump.ts'
import {arrangementOf, filesOfArrangement} from './portable-figure.ts'
import {procedureLine} from './procedure-page.ts'
import {recordWordsEn} from './record-words-en.ts'
import {sectionFigure} from './section-figure.ts'
import {stackCaptionEn} from './stack-words-en.ts'
import {jobsOf, proceduresOf} from './used-in.ts'
import {limitLine, valueLine} from './value-line.ts'
import {wordsEn} from './words-en.ts'

/** A pump position: identity, as fitted, ratings, limits, isolation points, jobs and procedures. */
export function positionPage(desk: PumpDesk): PositionPage {
  const section = sectionFigure(desk)
  const arrangement = arrangementOf(desk)
  const stack = stackOfPage(desk)
  const {position, design, content, vessel} = desk
  const ratings = design.ratings.map((rating) => pumpValue(desk, `rating.${rating.id}`))
  return {
    kind: 'position',
    head: {
      id: `${vessel.id}/${position.id}`,
      shownAs: position.tag,
      path: positionPath(position.id),
      title: wordsEn.titles.position(position.tag),
      language: 'en',
      position: positionHead(desk),
      madeFrom: unique([
        ...filesOfPump(desk),
        ...[...jobsOf([desk]), ...proceduresOf([desk])].map((one) => one.place.path),
        ...ratings.flatMap((value) => filesOfValue(value, desk)),
        ...design.limits.flatMap((limit) => filesOfValue(pumpValue(desk, limit.value.id), desk)),
        ...(section ? [...content.parts.values()].map((part) => part.place.path) : []),
        ...(section?.sizes ?? []).flatMap(({id}) => filesOfValue(pumpValue(desk, id), desk)),
        ...filesOfArrangement(desk),
        ...(stack ? valuesOfStack : []).flatMap((id) => filesOfValue(pumpValue(desk, id), desk)),
        ...(position.materials.length > 0
          ? content.tables.materials.rows.slice(0, 1).map((row) => row.place.path)
          : []),
      ]),
    },
    description: design.description.en,
    intendedUse: design.intendedUse.en,
    misuse: design.misuse.en,
    asFitted: [...fittedFields(desk), ...fittedMaterials(desk)],
    components: position.components.map((component) => ({label: component.kind, text: component.serial})),
    ratings: ratings.map((value) => valueLine(value, desk)),
    limits: design.limits.map((limit) => limitLine(limit, desk)),
    isolation: isolationLines(position),
    ...(section ? {section} : {}),
    ...(arrangement ? {arrangement} : {}),
    ...(stack ? {stack} : {}),
    jobs: jobsOf([desk]).map((job) => ({
      link: {text: job.title.en, path: jobPath(position.id, job.id)},
      purpose: job.purpose.en,
      interval: intervalText(job.interval),
    })),
    procedures: proceduresOf([desk]).map((procedure) => procedureLine(procedure, desk)),
    ...(content.symptoms.length > 0
      ? {symptoms: {text: wordsEn.titles.symptoms(position.tag), path: symptomsPath(position.id)}}
      : {}),
    records: {
      link: {text: recordWordsEn.title(position.tag), path: pumpRecordPath(position.id)},
      about: recordWordsEn.about,
    },
    valuesPages: [
      {text: wordsEn.titles.positionValues(position.tag), path: positionValuesPath(position.id)},
      ...designPages.map((page) => ({
        text: wordsEn.designPages[page](design.title.en),
        path: designPagePath(design.id, page),
      })),
    ],
  }
}

/** The pipe stack of a pump that has one, with the values that stand in it. */
function stackOfPage(desk: PumpDesk): BoundFigure | undefined {
  const figure = pipeStackOfPump(desk)
  return (
    figure && {
      id: 'pipe-stack',
      caption: stackCaptionEn,
      picture: pictureOf('pipe-stack', figure),
      data: figure.data,
      values: valuesOfStack.map((id) => valueLine(pumpValue(desk, id), desk)),
      wide: true,
    }
  )
}

/**
 * Facts as fitted: every fact declared for a position, also where the vessel file does not mention it.
 *
 * The facts are those of pumps that hang in tanks: a portable pump shows what its vessel file says alone.
 */
function fittedFields({position, content, tank}: PumpDesk): readonly Field[] {
  const isStated = (id: string): boolean => position.facts.some((fact) => fact.fact.id === id)
  const declared = content.office.facts.filter(
    (one) => one.scope === 'position' && (tank !== undefined || isStated(one.id)),
  )
  const others = position.facts.filter((fact) => !declared.some((one) => one.id === fact.fact.id))
  return [
    ...declared.map((one) =>
      fittedField(
        one.id,
        position.facts.find((fact) => fact.fact.id === one.id),
        one,
      ),
    ),
    ...others.map((fact) =>
      fittedField(
        fact.fact.id,
        fact,
        content.office.facts.find((one) => one.id === fact.fact.id),
      ),
    ),
  ]
}

/** Materials that the design leaves to the pump, as fitted. */
function fittedMaterials(desk: PumpDesk): readonly Field[] {
  const asked = new Set(desk.design.wetted.flatMap((one) => (one.material ? [] : [one.id])))
  return wettedLines(desk)
    .filter((one) => asked.has(one.id))
    .map(({title, material, known}) => ({label: wordsEn.materialOf(title), text: material, known}))
}

function fittedField(id: string, fact: FactValue | undefined, declared: FactDeclaration | undefined): Field {
  const label = declared?.title.en ?? id
  if (fact?.value === undefined)
    return {label, text: fact?.reason ? `${notKnownWords} (${fact.reason})` : notKnownWords, known: false}
  return {
    label,
    text: declared?.values.find((one) => one.id === fact.value)?.title.en ?? fact.value,
    known: true,
  }
}
