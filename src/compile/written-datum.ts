import {notKnownWords} from '../handbook-model/computed.ts'
import type {Datum} from '../handbook-model/datum.ts'
import {printedText} from '../quantities/print-quantity.ts'
import type {QuantityKind} from '../quantities/quantity.ts'

/** A datum as it was written, or NOT KNOWN. */
export function writtenDatum(datum: Datum<QuantityKind>): string {
  return datum.kind === 'known' ? printedText({figure: datum.figure, unit: datum.unit}) : notKnownWords
}
