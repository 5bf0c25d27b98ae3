import {serves} from '../conditions/serves.ts'
import type {Symptom} from '../handbook-model/office-content.ts'
import type {SymptomLine, SymptomsPage} from '../handbook-model/pages.ts'
import {found, type PumpDesk, positionHead} from './desk.ts'
import {filesOfPump, unique} from './made-from.ts'
import {procedurePath, symptomsPath} from './page-paths.ts'
import {standing} from './variant.ts'
import {wordsEn} from './words-en.ts'

/** Symptoms that this pump can show, each with causes in the order in which they are looked for. */
export function symptomsPage(desk: PumpDesk): SymptomsPage {
  const {content, position, vessel} = desk
  const symptoms = content.symptoms.flatMap((symptom): readonly SymptomLine[] => {
    const stands = standing(symptom.when, desk)
    if (!stands.stands || causesHere(symptom, desk).length === 0) return []
    return [
      {
        id: symptom.id,
        title: symptom.title.en,
        ...(stands.variant ? {variant: stands.variant} : {}),
        causes: causesHere(symptom, desk),
      },
    ]
  })
  return {
    kind: 'symptoms',
    head: {
      id: `${vessel.id}/${position.id}/symptoms`,
      shownAs: `${position.tag} · symptoms`,
      path: symptomsPath(position.id),
      title: wordsEn.titles.symptoms(position.tag),
      language: 'en',
      position: positionHead(desk),
      madeFrom: unique([
        ...filesOfPump(desk),
        ...content.symptoms.map((one) => one.place.path),
        ...content.symptoms.flatMap((one) =>
          one.causes.flatMap((cause) =>
            cause.procedures.flatMap(({id}) => content.procedures.get(id)?.place.path ?? []),
          ),
        ),
      ]),
    },
    symptoms,
  }
}

/** Causes that this pump can have: where a cause ends in procedures, one of them at least is for this pump. */
function causesHere(symptom: Symptom, desk: PumpDesk): SymptomLine['causes'] {
  return symptom.causes.flatMap(({cause, check, procedures, advice}) => {
    const served = procedures
      .map(({id}) => found(desk.content.procedures.get(id), `procedure ${id}`))
      .filter((procedure) => serves(procedure, desk.facts))
    if (procedures.length > 0 && served.length === 0) return []
    return [
      {
        cause: cause.en,
        check: check.en,
        procedures: served.map((procedure) => ({
          text: procedure.title,
          path: procedurePath(procedure, desk),
        })),
        advice: advice?.en ?? '',
      },
    ]
  })
}
