import {diametralFromRadial} from '../calculations/clearances/clearance-sides.ts'
import type {ComputedValue, TracedInput} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {ClearanceKind, Datum, KnownDatum} from '../handbook-model/datum.ts'
import type {WearRing} from '../handbook-model/design-content.ts'
import type {Quantity} from '../quantities/quantity.ts'
import {
  knownValue,
  originWords,
  sourceUse,
  statedValue,
  tracedCalculation,
  tracedDatum,
  tracedStep,
  unknownValue,
  type ValueFacts,
  writtenText,
} from './value-builder.ts'

/** Values of a wear ring. Renewal is the smaller of design and house rule, and says which governs. */
export function wearRingValues(ring: WearRing, content: Content): readonly ComputedValue[] {
  const facts = (name: string, title: string): Omit<ValueFacts, 'sources' | 'place'> => ({
    id: `${ring.id}.${name}`,
    title: `${title} of the ${ring.title.en}`,
    ofDesign: true,
  })
  const stated = (
    name: string,
    title: string,
    datum: typeof ring.newClearance | typeof ring.runningDiameter,
  ): ComputedValue => statedValue(datum, facts(name, title), `${title} of the ${ring.title.en}`)
  return [
    stated('running-diameter', 'running diameter', ring.runningDiameter),
    stated('new', 'new clearance', ring.newClearance),
    stated('minimum-new', 'minimum new clearance', ring.minimumNew),
    renewalValue(ring, content),
  ]
}

function renewalValue(ring: WearRing, content: Content): ComputedValue {
  const house = content.office.house.wearRingRenewal
  const title = `renewal clearance of the ${ring.title.en}`
  const facts: ValueFacts = {
    id: `${ring.id}.renewal`,
    title,
    ofDesign: true,
    place: ring.renewal.place,
    sources: [],
  }
  const sides = [
    clearanceSide('c design', 'renewal clearance of the design', ring.renewal),
    clearanceSide('c house', 'house rule', house),
  ]
  const calculation = tracedCalculation(
    {
      name: 'wear-ring-renewal',
      words: 'design and house rule are both brought to the diameter; the smaller governs',
      formula: [...sides.flatMap(({doubled}) => doubled), 'c renewal = min(c design, c house)'],
      symbols: [
        {symbol: 'c design', meaning: 'renewal clearance of the design, on the diameter'},
        {symbol: 'c house', meaning: 'house rule, on the diameter'},
        {symbol: 'c renewal', meaning: 'clearance at which the ring is renewed, on the diameter'},
      ],
    },
    sides.map(({input}) => input),
    sides.flatMap(({steps}) => steps),
  )
  if (ring.renewal.kind === 'not-known' || house.kind === 'not-known') {
    const missing = [
      ...(ring.renewal.kind === 'not-known' ? [`${title} (${ring.renewal.reason})`] : []),
      ...(house.kind === 'not-known' ? [`house rule for the renewal clearance (${house.reason})`] : []),
    ]
    const place = ring.renewal.kind === 'not-known' ? ring.renewal.place : house.place
    return unknownValue(missing, {...facts, place, calculation})
  }
  const design = onDiameter(ring.renewal.quantity)
  const designGoverns = design.si <= onDiameter(house.quantity).si
  const other = (datum: KnownDatum<ClearanceKind>): string =>
    `${writtenText(datum)}, ${originWords(datum.origin, content.sources)}`
  return knownValue(designGoverns ? design : onDiameter(house.quantity), 'mm diametral', 2, {
    ...facts,
    calculation,
    sources: [sourceUse(ring.renewal.origin), sourceUse(house.origin)],
    condition: designGoverns
      ? `the design governs; house rule ${other(house)}`
      : `the house rule governs; design ${other(ring.renewal)}`,
  })
}

/** A clearance as it is stated; where that is on the radius, with the line that brings it to the diameter. */
function clearanceSide(
  symbol: string,
  title: string,
  datum: Datum<ClearanceKind>,
): {
  readonly input: TracedInput
  readonly doubled: readonly string[]
  readonly steps: readonly TracedInput[]
} {
  if (datum.kind === 'not-known' || datum.quantity.kind === 'diametral-clearance')
    return {input: tracedDatum({symbol, title, datum}), doubled: [], steps: []}
  const radial = `${symbol} radial`
  return {
    input: tracedDatum({symbol: radial, title, datum}),
    doubled: [`${symbol} = 2·${radial}`],
    steps: [tracedStep(symbol, `${title}, on the diameter`, onDiameter(datum.quantity), 'mm diametral', 3)],
  }
}

function onDiameter(
  clearance: Quantity<'radial-clearance'> | Quantity<'diametral-clearance'>,
): Quantity<'diametral-clearance'> {
  return clearance.kind === 'radial-clearance' ? diametralFromRadial(clearance) : clearance
}
