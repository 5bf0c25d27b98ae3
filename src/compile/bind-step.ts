import type {
  BoundHold,
  BoundItem,
  BoundPart,
  BoundReading,
  BoundSection,
  BoundStep,
  CautionLine,
} from '../handbook-model/pages.ts'
import type {
  DerivedReading,
  HoldPoint,
  Procedure,
  Reading,
  Section,
  Step,
  StepPart,
} from '../handbook-model/procedure.ts'
import {bindText} from './bind-text.ts'
import {boundFigure} from './bound-figure.ts'
import {cargoLines, entryLimitLines, missingInCargoes} from './cargo-and-entry.ts'
import {boundCautions, type CautionNumbers} from './caution-numbers.ts'
import {found, type PumpDesk, pumpValue} from './desk.ts'
import {isolationLines} from './isolation-lines.ts'
import {materialTables} from './material-table.ts'
import {elementId} from './page-paths.ts'
import {replacedStep} from './urgent-uses.ts'
import {limitLines, valueLine} from './value-line.ts'
import {standing} from './variant.ts'
import {wordsEn} from './words-en.ts'
import {instrumentWords} from './written-datum.ts'

/** Counts the steps of one page. */
export interface StepCounter {
  next(): number
}

/** Counts from one. */
export function stepCounter(): StepCounter {
  let number = 0
  return {next: () => (number += 1)}
}

/** A section as it stands on this pump, or undefined when its condition is false or nothing of it stands. */
export function boundSection(
  section: Section,
  procedure: Procedure,
  desk: PumpDesk,
  numbers: CautionNumbers,
  steps: StepCounter,
): BoundSection | undefined {
  const stands = standing(section.when, desk)
  if (!stands.stands) return undefined
  const cautions = boundCautions(section.cautions, desk, numbers)
  const recalls: readonly CautionLine[] = cautions.map(({number, word, title, link}) => ({
    number,
    word,
    title,
    link,
  }))
  const items = section.items.flatMap((item): readonly BoundItem[] => {
    const bound =
      item.kind === 'step'
        ? boundStep(item, procedure, desk, numbers, steps, recalls)
        : boundHold(item, procedure, desk)
    return bound ? [withVariants(bound, [stands.variant, bound.variant])] : []
  })
  if (items.length === 0) return undefined
  return {
    id: elementId(procedure.id, section.id),
    title: section.title,
    intro: section.intro.map((text) => bindText(text, desk)),
    cautions,
    items,
  }
}

/** An item under the condition of its section and its own. */
function withVariants(item: BoundItem, variants: readonly (string | undefined)[]): BoundItem {
  const words = variants.filter((one) => one !== undefined)
  return words.length === 0 ? item : {...item, variant: words.join(', ')}
}

function boundStep(
  step: Step,
  procedure: Procedure,
  desk: PumpDesk,
  numbers: CautionNumbers,
  steps: StepCounter,
  recalls: readonly CautionLine[],
): BoundStep | undefined {
  const stands = standing(step.when, desk)
  if (!stands.stands) return undefined
  const cautions = boundCautions(step.cautions, desk, numbers)
  const urgent = replacedStep(procedure.id, step.id, desk)
  return {
    kind: 'step',
    id: elementId(procedure.id, step.id),
    number: steps.next(),
    ...(stands.variant ? {variant: stands.variant} : {}),
    cautions,
    recalls: step.actions.length > 0 ? recalls : [],
    ...(urgent ? {urgent: wordsEn.inPlaceOfStep(urgent.revision.number, urgent.revision.validTo.id)} : {}),
    instruction: urgent
      ? [{kind: 'text', text: urgent.replaced.instead.en}]
      : bindText(step.instruction, desk),
    parts: step.parts.flatMap((part) => boundPart(part, procedure, desk)),
  }
}

function boundHold(hold: HoldPoint, procedure: Procedure, desk: PumpDesk): BoundHold | undefined {
  const stands = standing(hold.when, desk)
  if (!stands.stands) return undefined
  const head = desk.position.components.find((one) => one.kind === 'head')
  const nameplate =
    hold.id === 'nameplate'
      ? [[{kind: 'text' as const, text: wordsEn.nameplate(head?.serial ?? desk.position.serial)}]]
      : []
  return {
    kind: 'hold',
    id: elementId(procedure.id, hold.id),
    ...(stands.variant ? {variant: stands.variant} : {}),
    title: hold.title,
    text: [...nameplate, ...hold.text.map((text) => bindText(text, desk))],
    signedBy: hold.signedBy,
    secondBy: hold.secondBy,
  }
}

function boundPart(part: StepPart, procedure: Procedure, desk: PumpDesk): readonly BoundPart[] {
  const stands = standing('when' in part ? part.when : undefined, desk)
  if (!stands.stands) return []
  const variant = stands.variant ? {variant: stands.variant} : {}
  const head = stands.variant && !carryVariant.has(part.kind) ? [headingNote(stands.variant)] : []
  return [...head, ...boundStanding(part, variant, procedure, desk)]
}

/** Parts that print the condition under which they stand; any other one has it as a line above. */
const carryVariant: ReadonlySet<StepPart['kind']> = new Set(['value', 'reading', 'derived', 'figure'])

/** The condition as a line of its own, above a part that has no place for it. */
function headingNote(variant: string): BoundPart {
  return {kind: 'note', text: [{kind: 'strong', children: [{kind: 'text', text: `${variant}:`}]}]}
}

function boundStanding(
  part: StepPart,
  variant: {readonly variant?: string},
  procedure: Procedure,
  desk: PumpDesk,
): readonly BoundPart[] {
  switch (part.kind) {
    case 'note':
      return [{kind: 'note', text: bindText(part.text, desk)}]
    case 'value':
      return [{kind: 'value', ...variant, line: valueLine(pumpValue(desk, part.value.id), desk)}]
    case 'reading':
    case 'derived':
      return [{...boundReading(part, procedure, desk), ...variant}]
    case 'wait':
      return [
        {
          kind: 'wait',
          id: elementId(procedure.id, part.id),
          least: valueLine(pumpValue(desk, part.least.id), desk),
          missed: part.missed,
        },
      ]
    case 'repeat':
      return [{kind: 'repeat', until: part.until, boxes: part.times ?? 0}]
    case 'alternatives':
      return [
        {
          kind: 'alternatives',
          id: elementId(procedure.id, part.id),
          items: alternativesOf(part, procedure, desk),
        },
      ]
    case 'second-person':
      return [{kind: 'second-person', id: elementId(procedure.id, part.id), what: part.what}]
    case 'figure':
      return [
        {
          kind: 'figure',
          ...variant,
          figure: boundFigure(
            elementId(procedure.id, part.figure.replaceAll(/[:+]/gu, '-')),
            part.figure,
            part.caption,
            desk,
            procedure,
          ),
        },
      ]
    case 'isolate':
    case 'restore': {
      const points = isolationLines(desk.position, new Set([part.role]))
      return [{kind: part.kind, role: wordsEn.roles[part.role], points}]
    }
    case 'identify': {
      const fact = found(
        desk.content.office.facts.find((one) => one.id === part.fact.id),
        `fact ${part.fact.id}`,
      )
      return [{kind: 'identify', fact: fact.title.en, choices: fact.values.map((value) => value.title.en)}]
    }
    case 'cargo-table':
      return [{kind: 'cargo-table', cargoes: cargoLines(desk), missing: missingInCargoes(desk)}]
    case 'material-table':
      return materialTables(desk).map((table) => ({kind: 'material-table', ...table}))
    case 'entry-limits':
      return [{kind: 'entry-limits', limits: entryLimitLines(desk)}]
    case 'tally':
      return [{kind: 'tally', id: elementId(procedure.id, part.id), what: part.what}]
    case 'write-in':
      return [{kind: part.kind, id: elementId(procedure.id, part.id), what: part.what, columns: part.columns}]
    default:
      return neverReached(part)
  }
}

function alternativesOf(
  part: Extract<StepPart, {kind: 'alternatives'}>,
  procedure: Procedure,
  desk: PumpDesk,
): Extract<BoundPart, {kind: 'alternatives'}>['items'] {
  return part.items.flatMap((item) => {
    const stands = standing(item.when, desk)
    if (!stands.stands) return []
    return [
      {
        id: elementId(procedure.id, item.id),
        ...(stands.variant ? {variant: stands.variant} : {}),
        text: bindText(item.text, desk),
      },
    ]
  })
}

function boundReading(reading: Reading | DerivedReading, procedure: Procedure, desk: PumpDesk): BoundReading {
  const derived = reading.kind === 'derived'
  return {
    kind: 'reading',
    id: elementId(procedure.id, reading.id),
    title: reading.title,
    phase: reading.phase,
    unit: reading.unit,
    stations: derived ? [] : reading.stations,
    instrument: derived ? '' : toolWords(reading.instrument.id, desk),
    formula: derived ? formulaWords(reading, procedure) : '',
    limits: limitLines(
      reading.limits.map((one) => one.id),
      desk,
    ),
  }
}

function toolWords(id: string, desk: PumpDesk): string {
  const tool = found(desk.content.tools.get(id), `tool ${id}`)
  return [tool.title.en, ...(tool.instrument ? [instrumentWords(tool.instrument)] : [])].join(', ')
}

function formulaWords(reading: DerivedReading, procedure: Procedure): string {
  const titles = reading.from.map((from) => titleOfReading(from.id, procedure))
  switch (reading.calculation) {
    case 'clearance':
      return wordsEn.clearance(titles)
    case 'smallest-gap':
      return wordsEn.smallestGap(titles)
    case 'spread':
      return wordsEn.spread(titles)
    case 'sum':
      return wordsEn.sum(titles)
    case 'hourly-rate':
      return wordsEn.hourlyRate(titles)
    case 'daily-rate':
      return wordsEn.dailyRate(titles)
    case 'curve-share':
      return wordsEn.curveShare(titles)
    default:
      return wordsEn.correctedDrop(titles)
  }
}

function titleOfReading(id: string, procedure: Procedure): string {
  for (const section of procedure.sections) {
    for (const item of section.items) {
      if (item.kind !== 'step') continue
      for (const part of item.parts)
        if ((part.kind === 'reading' || part.kind === 'derived') && part.id === id) return part.title
    }
  }
  return id
}

function neverReached(value: never): never {
  throw new Error(`Unexpected part ${JSON.stringify(value)}`)
}
