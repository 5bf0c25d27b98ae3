import type {Place} from '../messages/place.ts'
import type {Quantity, QuantityKind} from '../quantities/quantity.ts'

/** How a value came to be known. */
export const valueStatuses = [
  'as-built',
  'measured',
  'calculated',
  'published',
  'assumed',
  'common-practice',
] as const
export type ValueStatus = (typeof valueStatuses)[number]

/** Where a value comes from: how it is known, which source says so and, where given, the place in the source. */
export interface Origin {
  readonly status: ValueStatus
  /** Id of an entry of sources.yaml. */
  readonly source: string
  /** Page, sheet, table or record in the source. */
  readonly where?: string
  readonly date?: string
}

/** A value that the content states. */
export interface KnownDatum<K extends QuantityKind> {
  readonly kind: 'known'
  readonly quantity: Quantity<K>
  /** Digits as written; printing a datum repeats them. */
  readonly figure: string
  readonly unit: string
  readonly origin: Origin
  readonly place: Place
}

/** A value that nobody knows yet. It prints as NOT KNOWN - MEASURE AND REPORT, and so does everything that needs it. */
export interface UnknownDatum {
  readonly kind: 'not-known'
  readonly reason: string
  readonly place: Place
}

export type Datum<K extends QuantityKind> = KnownDatum<K> | UnknownDatum

/** A clearance always says whether it is measured on the radius or on the diameter. */
export type ClearanceKind = 'radial-clearance' | 'diametral-clearance'

/** A text by language. English stands always; other languages where translated. */
export interface Localised {
  readonly en: string
  readonly [language: string]: string
}

/** An id with the place where it is written, so that a dead reference can be pointed at. */
export interface Reference {
  readonly id: string
  readonly place: Place
}
