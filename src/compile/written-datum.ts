import {notKnownWords} from '../handbook-model/computed.ts'
import type {Datum} from '../handbook-model/datum.ts'
import type {InstrumentClass, Tool} from '../handbook-model/office-content.ts'
import {printedText} from '../quantities/print-quantity.ts'
import type {QuantityKind} from '../quantities/quantity.ts'
import {wordsEn} from './words-en.ts'

/** A datum as it was written, or NOT KNOWN. */
export function writtenDatum(datum: Datum<QuantityKind>): string {
  return datum.kind === 'known' ? printedText({figure: datum.figure, unit: datum.unit}) : notKnownWords
}

/** Scale and size of a tool, in words. */
export function toolSize({size, torqueRange}: Tool): string {
  return torqueRange
    ? `${wordsEn.fromTo(writtenDatum(torqueRange.least), writtenDatum(torqueRange.most))}, ${size.en}`
    : size.en
}

/** What an instrument can show, in words. */
export function instrumentWords({graduation, uncertainty}: InstrumentClass): string {
  return wordsEn.instrument(writtenDatum(graduation), writtenDatum(uncertainty))
}
