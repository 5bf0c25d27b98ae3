import type {Condition, WrittenCondition} from '../../src/handbook-model/condition.ts'
import type {
  Alternative,
  CautionUse,
  DerivedReading,
  HoldPoint,
  Inline,
  Procedure,
  Reading,
  RichText,
  Section,
  Step,
  StepPart,
} from '../../src/handbook-model/procedure.ts'
import {at, english, place, to} from './data-for-tests.ts'

/** A sentence; words are text, `{id}` shows a value. */
export function sentence(words: string): RichText {
  return words.split(/(\{[^}]+\})/u).flatMap((piece): readonly Inline[] => {
    if (piece === '') return []
    return piece.startsWith('{')
      ? [{kind: 'value', value: to(piece.slice(1, -1))}]
      : [{kind: 'text', text: piece}]
  })
}

export function equals(fact: string, value: string): WrittenCondition {
  return written({kind: 'equals', fact, value, place}, `${fact} = ${value}`)
}

export function written(condition: Condition, text: string): WrittenCondition {
  return {condition, text}
}

export function uses(...ids: readonly string[]): readonly CautionUse[] {
  return ids.map((id) => ({caution: to(id), place}))
}

export function usesWhen(id: string, when: WrittenCondition): CautionUse {
  return {caution: to(id), when, place}
}

export function step(id: string, more: Partial<Step> = {}): Step {
  return {
    kind: 'step',
    id,
    actions: [],
    cautions: [],
    instruction: sentence(`Do ${id}.`),
    parts: [],
    place,
    ...more,
  }
}

export function hold(id: string, more: Partial<HoldPoint> = {}): HoldPoint {
  return {
    kind: 'hold-point',
    id,
    title: `Hold ${id}`,
    signedBy: 'second engineer',
    secondBy: 'chief engineer',
    text: [],
    place,
    ...more,
  }
}

export function section(id: string, items: Section['items'], more: Partial<Section> = {}): Section {
  return {id, title: `Part ${id}`, cautions: [], intro: [], items, place, ...more}
}

export function procedure(
  id: string,
  sections: readonly Section[],
  more: Partial<Procedure> = {},
): Procedure {
  return {
    id,
    title: `Procedure ${id}`,
    activity: 'overhaul',
    maintenance: 'all',
    scope: 'position',
    performedBy: english('second engineer'),
    supervisedBy: english('chief engineer'),
    competence: 'crew',
    people: 2,
    hours: 3,
    clearHeight: english('two metres'),
    weather: english('calm'),
    permits: [english('entry permit')],
    tools: [],
    parts: [],
    records: [english('clearances')],
    retiredIds: [],
    purpose: [sentence('What it is for.')],
    before: [],
    after: [],
    sections,
    place: at(`procedures/${id}.md`),
    ...more,
  }
}

export function valuePlate(id: string, when?: WrittenCondition): StepPart {
  return {kind: 'value', value: to(id), place, ...(when ? {when} : {})}
}

export function reading(id: string, more: Partial<Reading> = {}): Reading {
  return {
    kind: 'reading',
    id,
    title: `reading ${id}`,
    quantity: 'length',
    unit: 'mm',
    stations: ['a 0°', 'a 90°'],
    instrument: to('micrometer'),
    phase: 'as-found',
    limits: [],
    place,
    ...more,
  }
}

export function derived(
  id: string,
  calculation: string,
  from: readonly string[],
  more: Partial<DerivedReading> = {},
): DerivedReading {
  return {
    kind: 'derived',
    id,
    title: `derived ${id}`,
    unit: 'mm diametral',
    calculation,
    from: from.map(to),
    phase: 'as-found',
    limits: [],
    place,
    ...more,
  }
}

export function choice(id: string, when?: WrittenCondition): Alternative {
  return {id, text: sentence(`Choice ${id}.`), place, ...(when ? {when} : {})}
}
