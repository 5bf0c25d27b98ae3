import type {CalculationNote} from '../calculations/calculation-note.ts'
import type {ComputedValue, TracedInput} from '../handbook-model/computed.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {type AnyQuantity, type Quantity, type QuantityKind, quantityOf} from '../quantities/quantity.ts'
import {
  computedBefore,
  knownValue,
  missingOf,
  type NamedDatum,
  placeOfMissing,
  sourceUse,
  textValue,
  tracedCalculation,
  tracedDatum,
  tracedStep,
  unknownValue,
} from './value-builder.ts'

/** An input that was itself computed for the same pump. */
export interface EarlierValue<K extends QuantityKind> {
  readonly symbol: string
  readonly title: string
  readonly kind: K
  /** Unit in which the explanation shows it. */
  readonly unit: string
  readonly value: ComputedValue
}

type Input = NamedDatum<QuantityKind> | EarlierValue<QuantityKind>

/** The quantities of named inputs, each of the kind its input has. */
type QuantitiesOf<I extends Readonly<Record<string, Input>>> = {
  readonly [Name in keyof I]: I[Name] extends NamedDatum<infer K>
    ? Quantity<K>
    : I[Name] extends EarlierValue<infer K>
      ? Quantity<K>
      : never
}

/** What a calculation gives back to be printed. */
export interface Computed {
  readonly quantity: AnyQuantity
  readonly unit: string
  readonly decimals: number
  readonly steps?: readonly TracedInput[]
  readonly condition?: string
  readonly rounding?: string
  /** Printed in place of the quantity, where a figure alone says too little: "14.1 to 18.4 %". */
  readonly text?: string
}

/** A value to be computed: what it is, from what, and how. */
export interface ComputedFrom<I extends Readonly<Record<string, Input>>> {
  readonly id: string
  readonly title: string
  readonly ofDesign: boolean
  /** Where it is asked for; a gap or a refusal points at the input. */
  readonly place: Place
  /** The pump or design in words, for what is missing. */
  readonly where: string
  readonly note: CalculationNote
  /** Formula lines in place of those of the note. */
  readonly formula?: readonly string[]
  /** What those lines say in other symbols than the note. */
  readonly symbols?: CalculationNote['symbols']
  /** Sources of the calculation besides those of its inputs. */
  readonly sources: readonly string[]
  readonly inputs: I
  /** Constants and table rows that the explanation shows beside the inputs. */
  readonly constants?: readonly TracedInput[]
  compute(known: QuantitiesOf<I>): Computed
}

/**
 * A value computed from inputs that may be unknown.
 *
 * With an input missing it says what is missing. An input that the calculation
 * refuses is a message at its line, and the value is unknown; the build stops.
 */
export function computedValue<I extends Readonly<Record<string, Input>>>(
  from: ComputedFrom<I>,
  files: ContentFiles,
): ComputedValue {
  const inputs: readonly Input[] = Object.values(from.inputs)
  const stated = inputs.flatMap((input) => ('datum' in input ? [input] : []))
  const earlier = inputs.flatMap((input) => ('value' in input ? [input] : []))
  const facts = {
    id: from.id,
    title: from.title,
    ofDesign: from.ofDesign,
    place: from.place,
    sources: uniqueSources([
      ...stated.flatMap(({datum}) => (datum.kind === 'known' ? [sourceUse(datum.origin)] : [])),
      ...from.sources.map((source) => ({source})),
    ]),
  }
  const calculation = (steps: readonly TracedInput[]) =>
    tracedCalculation(
      {
        ...from.note,
        formula: from.formula ?? from.note.formula,
        symbols: [...(from.symbols ?? []), ...from.note.symbols],
      },
      [...inputs.flatMap(tracedInput), ...(from.constants ?? [])],
      steps,
    )
  const missing = [
    ...missingOf(stated, from.where),
    ...earlier.flatMap(({value}) => (value.result.kind === 'not-known' ? value.result.missing : [])),
  ]
  const placeOfGap =
    placeOfMissing(stated) ?? earlier.find(({value}) => value.result.kind === 'not-known')?.value.place
  const quantities: Readonly<Record<string, unknown>> = Object.fromEntries(
    Object.entries(from.inputs).map(([name, input]) => [name, quantityIn(input)]),
  )
  if (missing.length > 0 || !holdsAll(quantities, from.inputs)) {
    return unknownValue(missing.length > 0 ? missing : [from.title], {
      ...facts,
      place: placeOfGap ?? from.place,
      calculation: calculation([]),
    })
  }
  const outcome = tried(() => from.compute(quantities))
  if ('refusal' in outcome) {
    const place = stated[0]?.datum.place ?? from.place
    addMessage(
      files,
      place,
      'no-impossible-value',
      `${outcome.refusal}, to compute \`${from.id}\` of ${from.where}`,
      {
        note: 'Read the drawing or the record again',
      },
    )
    return unknownValue([from.title], {...facts, place, calculation: calculation([])})
  }
  const {quantity, unit, decimals, steps = [], condition, rounding, text} = outcome.computed
  const said = {
    ...facts,
    calculation: calculation(steps),
    ...(condition === undefined ? {} : {condition}),
    ...(rounding === undefined ? {} : {rounding}),
  }
  return text === undefined
    ? knownValue(quantity, unit, decimals, said)
    : textValue(text, {
        ...said,
        rounding: rounding ?? `to ${decimals} decimals of ${unit}, rounded once, half to even`,
      })
}

/** A calculation refuses an input by throwing; this is where its words become a message for the author. */
function tried(compute: () => Computed): {readonly computed: Computed} | {readonly refusal: string} {
  try {
    return {computed: compute()}
  } catch (error) {
    if (error instanceof RangeError) return {refusal: error.message}
    throw error
  }
}

function tracedInput(input: Input): readonly TracedInput[] {
  if ('datum' in input) return [tracedDatum(input)]
  const quantity = quantityIn(input)
  return quantity
    ? [computedBefore(input.value.id, tracedStep(input.symbol, input.title, quantity, input.unit))]
    : []
}

function quantityIn(input: Input): AnyQuantity | undefined {
  if ('datum' in input) {
    const {datum} = input
    return datum.kind === 'known' ? anyQuantity(datum.quantity) : undefined
  }
  const {result} = input.value
  return result.kind === 'known' && result.quantity?.kind === input.kind ? result.quantity : undefined
}

function anyQuantity({kind, si}: Quantity<QuantityKind>): AnyQuantity {
  const any: {kind: QuantityKind; si: number} = quantityOf(kind, si)
  if (isAny(any)) return any
  throw new Error(`Unexpected ${kind}, expected a kind of quantity`)
}

function isAny(value: {kind: QuantityKind; si: number}): value is AnyQuantity {
  return Number.isFinite(value.si)
}

/** True when every input has its quantity; the kinds were proved when the content was checked. */
function holdsAll<I extends Readonly<Record<string, Input>>>(
  found: Readonly<Record<string, unknown>>,
  inputs: I,
): found is QuantitiesOf<I> {
  return Object.keys(inputs).every((name) => found[name] !== undefined)
}

function uniqueSources<T extends {readonly source: string}>(uses: readonly T[]): readonly T[] {
  return uses.filter((use, index) => uses.findIndex((one) => one.source === use.source) === index)
}
