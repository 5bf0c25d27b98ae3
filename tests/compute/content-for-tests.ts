import {computeValues} from '../../src/compute/compute-values.ts'
import type {ComputedValue, KnownResult, PositionValues} from '../../src/handbook-model/computed.ts'
import type {Content} from '../../src/handbook-model/content.ts'
import type {KnownDatum, UnknownDatum} from '../../src/handbook-model/datum.ts'
import type {Cofferdam, Design, Joint, WearRing} from '../../src/handbook-model/design-content.ts'
import type {HouseLimits, Source, Tool} from '../../src/handbook-model/office-content.ts'
import type {Vessel} from '../../src/handbook-model/vessel-content.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import type {Place} from '../../src/messages/place.ts'
import {printMessages} from '../../src/messages/print-messages.ts'
import {
  bar,
  barGauge,
  kelvinDifference,
  millilitresPerMinute,
  percent,
} from '../../src/quantities/named-units.ts'
import type {Quantity, QuantityKind} from '../../src/quantities/quantity.ts'
import {byId, contentOf as plainContent} from '../compile/content-for-tests.ts'
import {english, tool} from '../compile/data-for-tests.ts'
import {designA, vesselA} from '../compile/vessel-for-tests.ts'
import {tablesOf} from './tables-for-tests.ts'

/** A line of the design file. */
export function atLine(line: number): Place {
  return {path: 'designs/design-a.yaml', line, column: 1}
}

export function stated<K extends QuantityKind>(
  quantity: Quantity<K>,
  figure: string,
  unit: string,
  more: Partial<KnownDatum<K>> = {},
): KnownDatum<K> {
  return {
    kind: 'known',
    quantity,
    figure,
    unit,
    origin: {status: 'as-built', source: 'drawing', where: 'sheet 12'},
    place: atLine(1),
    ...more,
  }
}

export function notKnown(reason: string, line = 1): UnknownDatum {
  return {kind: 'not-known', reason, place: atLine(line)}
}

/** Class 8.8, M12, at 90 % of the yield stress, with friction of 0.10: a row of the published torque table. */
export const hubBolts: Joint = {
  id: 'hub-bolts',
  title: english('hub bolts'),
  thread: {id: 'M12', place: atLine(11)},
  propertyClass: {id: '8.8', place: atLine(12)},
  head: 'hexagon',
  hole: 'medium',
  count: 8,
  length: stated({kind: 'length', si: 0.045}, '45', 'mm'),
  utilisation: stated(percent(90), '90', '%', {place: atLine(13)}),
  lubrication: {id: 'friction-0.1', place: atLine(14)},
  locking: english('locking plates, new at every assembly'),
  pattern: 'crosswise',
  place: atLine(10),
}

/** What a test changes of the content. */
export interface Changes {
  readonly joint?: Partial<Joint>
  readonly ring?: Partial<WearRing>
  readonly cofferdam?: Partial<Cofferdam>
  readonly house?: Partial<HouseLimits>
  readonly design?: Partial<Design>
  readonly vessel?: Partial<Vessel>
  readonly sources?: Readonly<Record<string, Partial<Source> | undefined>>
  readonly content?: Partial<Content>
}

/** Two pumps, `4p` and `4s`, of one design with one joint, one ring and a cofferdam. */
export function contentWith(changes: Changes): Content {
  const base = plainContent({})
  const [ring] = designA.rings
  if (!ring) throw new Error('Unexpected design without a ring, expected one')
  const design: Design = {
    ...designA,
    joints: [{...hubBolts, ...changes.joint}],
    rings: [{...ring, ...changes.ring}],
    cofferdam: {
      ...designA.cofferdam,
      lipReverseLimit: stated(bar(3.5), '3.5', 'bar'),
      allowedLeak: stated(millilitresPerMinute(20), '20', 'ml/min'),
      ...changes.cofferdam,
    },
    ...changes.design,
  }
  const gauge = {
    graduation: stated(bar(0.01), '0.01', 'bar'),
    uncertainty: stated(bar(0.02), '0.02', 'bar'),
  }
  const thermometer = {
    graduation: stated(kelvinDifference(0.1), '0.1', 'K'),
    uncertainty: stated(kelvinDifference(0.5), '0.5', 'K'),
  }
  const passes = [30, 60, 100].map((share) => stated(percent(share), String(share), '%'))
  return {
    ...base,
    office: {
      ...base.office,
      house: {
        ...base.office.house,
        tightnessTestPressure: stated(barGauge(3), '3.0', 'bar(g)'),
        tighteningPasses: passes,
        ...changes.house,
      },
    },
    sources: sourcesWith(changes.sources ?? {}),
    designs: byId([design]),
    vessels: byId([{...vesselA, ...changes.vessel}]),
    tools: byId([tool('test-gauge', gauge), tool('thermometer', thermometer)]),
    ...changes.content,
    tables: {...(changes.content?.tables ?? tablesOf()), cargoes: base.tables.cargoes},
  }
}

/** Every source that the fixtures and the calculations rest on, each current; `undefined` takes one away. */
function sourcesWith(changes: Readonly<Record<string, Partial<Source> | undefined>>): Content['sources'] {
  const ids = [
    ...['drawing', 'vdi-2230', 'iso-261', 'iso-724', 'iso-273', 'iso-4014', 'iso-898-1'],
    ...['common-practice', 'house-rules', 'geometry', 'ideal-gas', 'paste-sheet'],
    ...['hydrostatics', 'ventilation', 'sling-statics', 'power-screws', 'iso-3601', 'oil-properties'],
    ...['pump-laws', 'motor-symbols', 'standard'],
  ]
  return byId(
    ids.flatMap((id, index): Source[] => {
      const change = changes[id]
      if (id in changes && change === undefined) return []
      return [
        {
          id,
          title: english(`source ${id}`),
          edition: '2001',
          kind: 'standard',
          status: 'current',
          howKnown: 'reprint',
          place: {path: 'sources.yaml', line: index + 2, column: 5},
          ...change,
        },
      ]
    }),
  )
}

/** Values of pump 4S of the changed content, the values of 4P, and what was said. */
export function computed(changes: Changes = {}): {
  readonly values: PositionValues
  readonly others: PositionValues
  readonly said: string
} {
  const files: ContentFiles = new Map()
  const vessel = computeValues(contentWith(changes), files).vessels.get('vessel-a')
  const values = vessel?.get('4s')
  const others = vessel?.get('4p')
  if (!values || !others) throw new Error('Unexpected gap, expected values of both pumps')
  return {values, others, said: printMessages(files, 'content')}
}

/** The value of an id; a value that is not there fails the test. */
export function valueIn(values: PositionValues, id: string): ComputedValue {
  const value = values.get(id)
  if (!value) throw new Error(`Unexpected gap at \`${id}\`, expected a value`)
  return value
}

/** Its result, which must be known. */
export function knownIn(values: PositionValues, id: string): KnownResult {
  const {result} = valueIn(values, id)
  if (result.kind !== 'known') throw new Error(`Unexpected \`${id}\` that is not known: ${result.missing}`)
  return result
}

/** Ids of the values that are not known, sorted. */
export function unknownIn(values: PositionValues): readonly string[] {
  return [...values.values()]
    .filter((value) => value.result.kind === 'not-known')
    .map((value) => value.id)
    .sort()
}

/** Figure and unit as one text. */
export function figureOf(values: PositionValues, id: string): string {
  const {figure, unit} = knownIn(values, id).printed
  return `${figure} ${unit}`.trim()
}

/** Tools by id, as the content holds them. */
export function byIdOfTools(tools: readonly Tool[]): Content['tools'] {
  return byId(tools)
}
