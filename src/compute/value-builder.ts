import type {CalculationNote} from '../calculations/calculation-note.ts'
import {symbolsUsed} from '../calculations/symbols-used.ts'
import type {
  CalculationTrace,
  ComputedValue,
  KnownResult,
  SourceUse,
  TracedInput,
} from '../handbook-model/computed.ts'
import type {Datum, KnownDatum, Origin} from '../handbook-model/datum.ts'
import type {Source} from '../handbook-model/office-content.ts'
import type {Place} from '../messages/place.ts'
import {printedText, printQuantity} from '../quantities/print-quantity.ts'
import {type AnyQuantity, type Quantity, type QuantityKind, quantityOf} from '../quantities/quantity.ts'
import {decimalsFor} from '../quantities/round-decimal.ts'
import {unitOf} from '../quantities/units.ts'

/** An input of a calculation with what is said of it beside the result. */
export interface NamedDatum<K extends QuantityKind> {
  readonly symbol: string
  readonly title: string
  readonly datum: Datum<K>
}

/** Titles of sources for the origin of an input. */
export type SourceTitles = ReadonlyMap<string, Source>

const statusWords: Readonly<Record<Origin['status'], string>> = {
  'as-built': 'as built',
  measured: 'measured',
  calculated: 'calculated',
  published: 'published',
  assumed: 'assumed',
  'common-practice': 'common practice, no source',
}

/** Where an input came from, in words: status, source and place in the source. */
export function originWords(origin: Origin, sources: SourceTitles): string {
  const title =
    origin.status === 'common-practice' ? '' : (sources.get(origin.source)?.title.en ?? origin.source)
  return [statusWords[origin.status], title, origin.where, origin.date]
    .filter((one) => one !== undefined && one !== '')
    .join(', ')
}

/** How an input is known and the source that states it, apart. */
export function tracedOrigin(origin: Origin): {readonly origin: string; readonly source?: string} {
  const words = [statusWords[origin.status], origin.where, origin.date]
    .filter((one) => one !== undefined && one !== '')
    .join(', ')
  return origin.status === 'common-practice' ? {origin: words} : {origin: words, source: origin.source}
}

/** Digits and unit as the author wrote them. */
export function writtenText(datum: KnownDatum<QuantityKind>): string {
  return printedText({figure: datum.figure, unit: datum.unit})
}

/** A datum as a line of an explanation. */
export function tracedDatum<K extends QuantityKind>(input: NamedDatum<K>): TracedInput {
  const {datum, symbol, title} = input
  return datum.kind === 'known'
    ? {
        symbol,
        title,
        printed: writtenText(datum),
        ...tracedOrigin(datum.origin),
        place: datum.place,
      }
    : {symbol, title, printed: 'NOT KNOWN', origin: datum.reason, place: datum.place}
}

/** An intermediate result, printed with enough digits for a pocket calculator to go on. */
export function tracedStep(
  symbol: string,
  title: string,
  quantity: AnyQuantity,
  unit: string,
  significant = 5,
): TracedInput {
  const rough = printQuantity(quantity, unit, 6)
  const decimals = decimalsFor(Number(rough.figure.replace('−', '-')), significant)
  return {
    symbol,
    title,
    printed: printedText(printQuantity(quantity, unit, decimals)),
    origin: 'intermediate result',
  }
}

/** A line of an explanation that is the result of another value; the reader finds that by its id. */
export function computedBefore(valueId: string, line: TracedInput): TracedInput {
  return {...line, origin: `computed: ${valueId}`}
}

/** A bare number of a calculation, such as a tangent. */
export function tracedNumber(symbol: string, title: string, value: number, decimals = 5): TracedInput {
  return {symbol, title, printed: value.toFixed(decimals).replace('-', '−'), origin: 'intermediate result'}
}

/** A constant of nature or of a standard, with where it comes from. */
export function tracedConstant(symbol: string, title: string, printed: string, origin: string): TracedInput {
  return {symbol, title, printed, origin}
}

/**
 * A calculation with what it was given.
 *
 * Of the symbols those are kept that the formula uses and no line of the table beside it names.
 */
export function tracedCalculation(
  explained: Pick<CalculationNote, 'name' | 'words' | 'formula' | 'symbols'>,
  inputs: readonly TracedInput[],
  steps: readonly TracedInput[],
): CalculationTrace {
  const {name, words, formula, symbols} = explained
  const named = new Set([...inputs, ...steps].map((one) => one.symbol))
  return {
    name,
    words,
    formula,
    symbols: symbolsUsed(formula, symbols).filter(({symbol}) => !named.has(symbol)),
    inputs,
    steps,
  }
}

/** What is said of a value besides its figure. */
export interface ValueFacts {
  readonly id: string
  readonly title: string
  readonly ofDesign: boolean
  readonly place: Place
  readonly sources: readonly SourceUse[]
  readonly condition?: string
  readonly calculation?: CalculationTrace
  readonly rounding?: string
  readonly more?: readonly string[]
}

const halfEven = 'rounded once, half to even'

/** A value that is known. */
export function knownValue(
  quantity: AnyQuantity,
  unit: string,
  decimals: number,
  facts: ValueFacts,
): ComputedValue {
  const {more, rounding, ...rest} = facts
  const result: KnownResult = {
    kind: 'known',
    quantity,
    printed: printQuantity(quantity, unit, decimals),
    ...(more ? {more} : {}),
  }
  const step = decimals === 0 ? `to a whole ${unit || 'number'}` : `to ${decimals} decimals of ${unit}`
  return {...rest, result, rounding: rounding ?? `${step}, ${halfEven}`}
}

/** The last figure of so many decimals that is not above the quantity: a highest limit never prints higher than it is. */
export function roundedDown<K extends QuantityKind>(
  quantity: Quantity<K>,
  unitSymbol: string,
  decimals: number,
): Quantity<K> {
  return roundedToSide(quantity, unitSymbol, decimals, 1)
}

/** The first figure of so many decimals that is not below the quantity: what must at least be never prints lower. */
export function roundedUp<K extends QuantityKind>(
  quantity: Quantity<K>,
  unitSymbol: string,
  decimals: number,
): Quantity<K> {
  return roundedToSide(quantity, unitSymbol, decimals, -1)
}

/** Rounds down for side 1, up for side −1; what lies within the noise of the conversion stays on its figure. */
function roundedToSide<K extends QuantityKind>(
  quantity: Quantity<K>,
  unitSymbol: string,
  decimals: number,
  side: 1 | -1,
): Quantity<K> {
  const unit = unitOf(quantity.kind, unitSymbol)
  const steps = ((quantity.si - unit.offset) / unit.factor) * 10 ** decimals
  const whole = side * Math.floor(side * steps + 1e-9)
  return quantityOf(quantity.kind, (whole / 10 ** decimals) * unit.factor + unit.offset)
}

/** A value that is a text, such as a fastener or an order. */
export function textValue(text: string, facts: ValueFacts): ComputedValue {
  const {more, rounding, ...rest} = facts
  return {
    ...rest,
    result: {kind: 'known', printed: {figure: text, unit: ''}, ...(more ? {more} : {})},
    rounding: rounding ?? 'not rounded',
  }
}

/** A value that cannot be stated, with everything that is missing. */
export function unknownValue(missing: readonly string[], facts: ValueFacts): ComputedValue {
  const {more: _more, rounding: _rounding, condition: _condition, ...rest} = facts
  return {...rest, result: {kind: 'not-known', missing: [...new Set(missing)]}, rounding: 'not rounded'}
}

/** A value that the content states: it prints the digits as written, and says beside its source how it is known. */
export function statedValue(
  datum: Datum<QuantityKind>,
  facts: Omit<ValueFacts, 'sources' | 'place'>,
  missing: string,
): ComputedValue {
  if (datum.kind === 'not-known')
    return unknownValue([`${missing} (${datum.reason})`], {...facts, sources: [], place: datum.place})
  return {
    ...facts,
    result: {kind: 'known', quantity: quantityIn(datum), printed: {figure: datum.figure, unit: datum.unit}},
    sources: [{source: datum.origin.source, where: tracedOrigin(datum.origin).origin}],
    rounding: 'as stated by the source',
    place: datum.place,
  }
}

/** The source of a datum. */
export function sourceUse(origin: Origin): SourceUse {
  return {source: origin.source, ...(origin.where ? {where: origin.where} : {})}
}

function quantityIn(datum: KnownDatum<QuantityKind>): AnyQuantity {
  const {kind, si} = datum.quantity
  const any: {kind: QuantityKind; si: number} = {kind, si}
  return isAnyQuantity(any) ? any : datumFault(kind)
}

function isAnyQuantity(value: {kind: QuantityKind; si: number}): value is AnyQuantity {
  return Number.isFinite(value.si)
}

function datumFault(kind: string): never {
  throw new Error(`Unexpected ${kind} that is not finite, expected a finite quantity`)
}

/** Where the first input that is not known is stated; a message about the gap points there. */
export function placeOfMissing(inputs: readonly NamedDatum<QuantityKind>[]): Place | undefined {
  return inputs.find(({datum}) => datum.kind === 'not-known')?.datum.place
}

/** Splits inputs into all known, or the words of what is missing. */
export function missingOf(inputs: readonly NamedDatum<QuantityKind>[], where: string): readonly string[] {
  return inputs.flatMap(({datum, title}) =>
    datum.kind === 'not-known' ? [`${title} of ${where} (${datum.reason})`] : [],
  )
}
