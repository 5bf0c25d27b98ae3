import type {ComputedValue} from '../../src/handbook-model/computed.ts'
import type {Datum, KnownDatum, Localised, Reference} from '../../src/handbook-model/datum.ts'
import type {JobInterval} from '../../src/handbook-model/job-interval.ts'
import type {Caution, Job, Part, SignalWord, Tool} from '../../src/handbook-model/office-content.ts'
import type {FactValue} from '../../src/handbook-model/vessel-content.ts'
import type {Place} from '../../src/messages/place.ts'
import {parseQuantity} from '../../src/quantities/parse-quantity.ts'
import type {Quantity, QuantityKind} from '../../src/quantities/quantity.ts'

export const place: Place = {path: 'office.yaml', line: 1, column: 1}

export function at(path: string): Place {
  return {path, line: 1, column: 1}
}

export function english(text: string): Localised {
  return {en: text}
}

export function to(id: string): Reference {
  return {id, place}
}

export function datum<K extends QuantityKind>(quantity: Quantity<K>, figure: string, unit: string): Datum<K> {
  return {kind: 'known', quantity, figure, unit, origin: {status: 'as-built', source: 'drawing'}, place}
}

export function fact(id: string, value: string | undefined, reason?: string): FactValue {
  return {fact: to(id), value, place, ...(reason === undefined ? {} : {reason})}
}

/** A value that is known, stated by the given source. */
export function knownValue(
  id: string,
  figure: string,
  unit: string,
  more: Partial<ComputedValue> = {},
): ComputedValue {
  return {
    id,
    title: `value ${id}`,
    ofDesign: true,
    result: {kind: 'known', printed: {figure, unit}},
    sources: [{source: 'drawing'}],
    rounding: 'as stated by the source',
    place: at('designs/design-a.yaml'),
    ...more,
  }
}

/** A value that nobody knows. */
export function unknownValue(id: string, missing: readonly string[]): ComputedValue {
  return knownValue(id, '', '', {result: {kind: 'not-known', missing}, sources: []})
}

export function caution(id: string, word: SignalWord, more: Partial<Caution> = {}): Caution {
  return {
    id,
    hazardClass: 'H01',
    word,
    worstHarm: 'death-or-serious-injury',
    likelihood: 'could',
    title: english(`title of ${id}`),
    hazard: english(`hazard of ${id}`),
    consequence: english(`consequence of ${id}`),
    avoid: [english(`Avoid ${id}.`)],
    protection: [english(`gloves for ${id}`)],
    residualRisk: english(`what remains of ${id}`),
    source: to('standard'),
    place: at(`cautions/${id}.yaml`),
    ...more,
  }
}

export function tool(id: string, instrument?: Tool['instrument']): Tool {
  return {
    id,
    title: english(`tool ${id}`),
    size: english(`size of ${id}`),
    place: at('tools.yaml'),
    ...(instrument ? {instrument} : {}),
  }
}

export function part(id: string): Part {
  return {
    id,
    title: english(`part ${id}`),
    class: 'spare',
    size: english(`size of ${id}`),
    balloon: '4',
    place: at('parts.yaml'),
  }
}

export function job(id: string, procedures: readonly string[], more: Partial<Job> = {}): Job {
  return {
    id,
    title: english(`Job ${id}`),
    purpose: english('what the job is for'),
    interval: interval({events: [english('each dry docking')]}),
    procedures: procedures.map(to),
    asFound: [english('clearance as found')],
    asLeft: [english('clearance as left')],
    place: at(`jobs/${id}.yaml`),
    ...more,
  }
}

/** A time as a job file writes it. */
export function writtenTime(text: string): KnownDatum<'time'> {
  const parsed = parseQuantity(text, ['time'])
  if (!parsed.ok) throw new Error(parsed.reason)
  return {kind: 'known', ...parsed.written, origin: {status: 'common-practice', source: 'practice'}, place}
}

/** An interval that says what the test gives it. */
export function interval(more: Partial<JobInterval>): JobInterval {
  return {
    origin: {status: 'common-practice', source: 'practice'},
    calendar: [],
    events: [],
    reason: english('it wears'),
    place,
    ...more,
  }
}
