import {diametralFromRadial} from '../calculations/clearances/clearance-sides.ts'
import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {ClearanceKind, KnownDatum} from '../handbook-model/datum.ts'
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
  const calculation = tracedCalculation(
    {
      name: 'wear-ring-renewal',
      words: 'design and house rule are both brought to the diameter; the smaller governs',
      formula: ['c diametral = 2·c radial', 'c renewal = min(c design, c house)'],
      symbols: [
        {symbol: 'c diametral', meaning: 'clearance on the diameter'},
        {symbol: 'c radial', meaning: 'clearance on one side'},
        {symbol: 'c renewal', meaning: 'clearance at which the ring is renewed, on the diameter'},
      ],
    },
    [
      tracedDatum({symbol: 'c design', title: 'renewal clearance of the design', datum: ring.renewal}),
      tracedDatum({symbol: 'c house', title: 'house rule', datum: house}),
    ],
    house.kind === 'known'
      ? [tracedStep('c house', 'house rule on the diameter', onDiameter(house.quantity), 'mm diametral', 3)]
      : [],
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

function onDiameter(
  clearance: Quantity<'radial-clearance'> | Quantity<'diametral-clearance'>,
): Quantity<'diametral-clearance'> {
  return clearance.kind === 'radial-clearance' ? diametralFromRadial(clearance) : clearance
}
