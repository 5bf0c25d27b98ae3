import type {Design} from '../../handbook-model/design-content.ts'
import type {Caution, Symptom, Term} from '../../handbook-model/office-content.ts'
import type {Procedure, Section, Step, StepPart} from '../../handbook-model/procedure.ts'
import type {UrgentRevision} from '../../handbook-model/urgent-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import {judgeNote} from '../language/judge-note.ts'
import {judgeStep} from '../language/judge-step.ts'
import {judgeWords, type LanguageFault} from '../language/judge-words.ts'
import {wordsOfText} from '../language/words-of-text.ts'

/** Terms of the office, and where messages go. */
interface LanguageDesk {
  readonly terms: readonly Term[]
  readonly files: ContentFiles
}

/**
 * Steps are short, single instructions that begin with a verb; notes inform; no text hedges, contracts or renames a thing.
 *
 * The reader is on a wet deck at night and reads in a second language.
 *
 * Accepted: step "Close the purge supply valve.", note "The valve is at the top plate."
 * Rejected: step "The valve should be closed and then don't forget the lock."
 */
export function plainProcedure(procedure: Procedure, terms: Iterable<Term>, files: ContentFiles): void {
  const desk: LanguageDesk = {terms: [...terms], files}
  for (const text of [...procedure.purpose, ...procedure.before, ...procedure.after])
    tellNote(wordsOfText(text), procedure.place, desk)
  for (const section of procedure.sections) plainSection(section, desk)
}

function plainSection(section: Section, desk: LanguageDesk): void {
  tellWords(section.title, section.place, desk)
  for (const text of section.intro) tellNote(wordsOfText(text), section.place, desk)
  for (const item of section.items) {
    if (item.kind === 'hold-point') {
      tellWords(item.title, item.place, desk)
      for (const text of item.text) tellNote(wordsOfText(text), item.place, desk)
    } else plainStep(item, desk)
  }
}

const measures: ReadonlySet<StepPart['kind']> = new Set([
  'value',
  'reading',
  'derived',
  'wait',
  'alternatives',
  'second-person',
  'identify',
  'tally',
])

function plainStep(step: Step, desk: LanguageDesk): void {
  const words = wordsOfText(step.instruction)
  tell(
    judgeStep(
      words,
      step.parts.some((part) => measures.has(part.kind)),
    ),
    step.place,
    desk,
  )
  tellWords(words, step.place, desk)
  for (const part of step.parts) plainPart(part, desk)
}

function plainPart(part: StepPart, desk: LanguageDesk): void {
  switch (part.kind) {
    case 'note':
      tellNote(wordsOfText(part.text), part.place, desk)
      break
    case 'alternatives':
      for (const item of part.items) tellWords(wordsOfText(item.text), item.place, desk)
      break
    case 'wait':
      tellWords(part.missed, part.place, desk)
      break
    case 'repeat':
      tellWords(part.until, part.place, desk)
      break
    case 'second-person':
      tellWords(part.what, part.place, desk)
      break
    case 'reading':
    case 'derived':
      tellWords(part.title, part.place, desk)
      break
    case 'figure':
      tellWords(part.caption, part.place, desk)
      break
    default:
  }
}

/** The same for a caution: it states the harm and commands, and neither hedges nor renames. */
export function plainCaution(caution: Caution, terms: Iterable<Term>, files: ContentFiles): void {
  const desk: LanguageDesk = {terms: [...terms], files}
  const texts = [caution.title, caution.hazard, caution.consequence, ...caution.avoid, caution.residualRisk]
  for (const text of texts) tellWords(text.en, caution.place, desk)
}

/** The same for what the crew does outside a limit. */
export function plainLimits(design: Design, terms: Iterable<Term>, files: ContentFiles): void {
  const desk: LanguageDesk = {terms: [...terms], files}
  for (const limit of design.limits)
    for (const text of [limit.title, limit.action]) tellWords(text.en, limit.place, desk)
}

/** The same for symptoms. */
export function plainSymptom(symptom: Symptom, terms: Iterable<Term>, files: ContentFiles): void {
  const desk: LanguageDesk = {terms: [...terms], files}
  tellWords(symptom.title.en, symptom.place, desk)
  for (const {cause, check, advice, place} of symptom.causes)
    for (const text of [cause, check, ...(advice ? [advice] : [])]) tellWords(text.en, place, desk)
}

/** The same for an urgent revision; what prints in place of a step is judged as a step. */
export function plainUrgent(urgent: UrgentRevision, terms: Iterable<Term>, files: ContentFiles): void {
  const desk: LanguageDesk = {terms: [...terms], files}
  const {title, reason, hazard, consequence, cancelledBy} = urgent
  for (const text of [title, reason, hazard, consequence, ...urgent.do, cancelledBy])
    tellWords(text.en, urgent.place, desk)
  for (const {instead, place} of urgent.steps) {
    tell(judgeStep(instead.en, true), place, desk)
    tellWords(instead.en, place, desk)
  }
}

function tellNote(text: string, place: Place, desk: LanguageDesk): void {
  tell(judgeNote(text), place, desk)
  tellWords(text, place, desk)
}

function tellWords(text: string, place: Place, desk: LanguageDesk): void {
  tell(judgeWords(text, desk.terms), place, desk)
}

function tell(faults: readonly LanguageFault[], place: Place, {files}: LanguageDesk): void {
  for (const {ruleId, reason, note} of faults) addMessage(files, place, ruleId, reason, {note})
}
