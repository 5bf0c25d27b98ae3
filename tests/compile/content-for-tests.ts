import {type PumpDesk, pumpDesk} from '../../src/compile/desk.ts'
import type {ComputedValue, ComputedValues} from '../../src/handbook-model/computed.ts'
import type {Content} from '../../src/handbook-model/content.ts'
import type {Suitability} from '../../src/handbook-model/material-content.ts'
import type {Office, Source} from '../../src/handbook-model/office-content.ts'
import type {Procedure} from '../../src/handbook-model/procedure.ts'
import {
  bar,
  barGauge,
  count,
  degreesCelsius,
  diametralMillimetres,
  hours,
  kilogramsPerCubicMetre,
  millimetres,
  minutes,
  percent,
} from '../../src/quantities/named-units.ts'
import {at, caution, datum, english, knownValue, part, place, to, tool} from './data-for-tests.ts'
import {designA, vesselA} from './vessel-for-tests.ts'

function source(id: string, howKnown: Source['howKnown'], more: Partial<Source> = {}): Source {
  return {
    id,
    title: english(`source ${id}`),
    edition: '2001',
    kind: 'standard',
    status: 'current',
    howKnown,
    place: at('sources.yaml'),
    ...more,
  }
}

const office: Office = {
  issuer: english('Example Office (invented)'),
  contact: ['Technical office'],
  languages: ['en'],
  demonstration: true,
  approverRole: english('superintendent'),
  ownerRole: english('technical office'),
  people: [],
  house: {
    wearRingRenewal: datum(diametralMillimetres(2), '2.0', 'mm diametral'),
    entryLimits: [],
    tightnessTestPressure: datum(barGauge(3), '3', 'bar(g)'),
    tightnessStabilise: datum(minutes(10), '10', 'min'),
    tightnessHoldLeast: datum(minutes(30), '30', 'min'),
    purgeLiftMargin: datum(bar(0.5), '0.5', 'bar'),
    isolationProof: datum(minutes(10), '10', 'min'),
    isolationRecheck: datum(minutes(30), '30', 'min'),
    tighteningPasses: [datum(percent(100), '100', '%')],
    purgeChanges: datum(count(5), '5', ''),
    purgeLeast: datum(minutes(5), '5', 'min'),
    entryAirChanges: datum(count(20), '20', ''),
    entryRetest: datum(minutes(30), '30', 'min'),
    liftingReserve: datum(percent(125), '125', '%'),
    testRunWatch: datum(percent(95), '95', '%'),
    testRunAct: datum(percent(90), '90', '%'),
    oilTolerance: datum(percent(10), '10', '%'),
    flushChanges: datum(count(10), '10', ''),
    portableRigTime: datum(minutes(90), '90', 'min'),
    rubberLife: datum(hours(61_362), '84', 'months'),
    storeWarmest: datum(degreesCelsius(25), '25', '°C'),
  },
  facts: [
    {
      id: 'backstop',
      title: english('backstop of the shaft'),
      scope: 'position',
      values: [
        {id: 'fitted', title: english('fitted')},
        {id: 'none', title: english('none')},
      ],
      place,
    },
    {
      id: 'cargo-seal',
      title: english('cargo seal'),
      scope: 'position',
      values: [
        {id: 'double-lip', title: english('double lip seal')},
        {id: 'single-lip', title: english('single lip seal')},
      ],
      place,
    },
    {
      id: 'stack-layout',
      title: english('layout of the stack'),
      scope: 'design',
      values: [
        {id: 'concentric', title: english('concentric')},
        {id: 'separate', title: english('separate')},
      ],
      place,
    },
    {
      id: 'nitrogen-supply',
      title: english('nitrogen supply'),
      scope: 'vessel',
      values: [
        {id: 'plant', title: english('plant')},
        {id: 'bottles', title: english('bottles')},
      ],
      place,
    },
  ],
  place,
}

/** Steel stands up to the oil of the list; what the oil does to FKM nobody has written. */
const suitability: readonly Suitability[] = [
  {
    material: to('steel'),
    cargo: to('oil'),
    word: 'suitable',
    note: 'at every temperature',
    place: at('tables/suitability.csv'),
  },
]

/** Values of a pump of design A; the renewal clearance names the rule that governs. */
export const values: readonly ComputedValue[] = [
  knownValue('hub-bolts.torque', '62', 'N·m', {
    condition: 'threads and head with assembly paste',
    sources: [{source: 'standard', where: 'table 3'}],
  }),
  knownValue('hub-bolts.order', '1 3 2 4', '', {sources: [{source: 'practice'}]}),
  knownValue('hub-bolts.count', '4', ''),
  knownValue('hub-bolts.passes', '19 · 37 · 62 N·m', '', {
    result: {kind: 'known', printed: {figure: '62', unit: 'N·m'}, more: ['19', '37', '62']},
  }),
  ...['fastener', 'wrench', 'lubrication', 'locking'].map((one) =>
    knownValue(`hub-bolts.${one}`, `${one} of the hub bolts`, ''),
  ),
  knownValue('lower-ring.running-diameter', '250', 'mm'),
  knownValue('lower-ring.new', '0.50', 'mm diametral'),
  knownValue('lower-ring.minimum-new', '0.40', 'mm diametral'),
  knownValue('lower-ring.renewal', '1.20', 'mm diametral', {
    condition: 'the design governs',
    sources: [{source: 'drawing'}, {source: 'practice'}],
  }),
  knownValue('cofferdam.stack-length', '12', 'm', {ofDesign: false}),
  knownValue('house.stabilise', '10', 'min', {ofDesign: false, sources: [{source: 'practice'}]}),
  knownValue('cofferdam.upper-bound', '3.46', 'bar(g)', {ofDesign: false}),
  knownValue('purge.least-oil', '1.6', 'bar(g)', {ofDesign: false}),
  knownValue('tank.volume', '900', 'm³', {ofDesign: false}),
  knownValue('rating.flow', '300', 'm³/h'),
  knownValue('mass.head', '186', 'kg'),
  knownValue('setting.lift', '0.65', '1'),
]

/** The content with these procedures and cautions; a vessel of two pumps, `4p` and `4s`. */
export function contentOf(more: Partial<Content> & {readonly list?: readonly Procedure[]}): Content {
  const {list = [], ...rest} = more
  const table = {origin: {status: 'as-built' as const, source: 'standard'}, rows: []}
  return {
    office,
    sources: byId([
      source('drawing', 'demonstration'),
      source('practice', 'common-practice'),
      source('standard', 'read'),
      source('old', 'memory', {status: 'superseded', supersededBy: to('standard')}),
    ]),
    vessels: byId([vesselA]),
    designs: byId([designA]),
    cautions: byId([
      caution('gas', 'DANGER'),
      caution('oil', 'WARNING'),
      caution('dirt', 'NOTICE'),
      caution('spare', 'CAUTION'),
    ]),
    procedures: byId(list),
    jobs: new Map(),
    symptoms: [],
    exceptions: [],
    approvals: [],
    changes: [],
    withdrawals: [],
    trials: [],
    hours: new Map(),
    calibrations: new Map(),
    wear: new Map(),
    purges: new Map(),
    tightness: new Map(),
    namedSources: new Set(),
    ended: [],
    urgent: [],
    failures: [],
    units: [],
    tools: byId([
      tool('wrench'),
      tool('detector'),
      tool('hoist'),
      tool('micrometer', {
        graduation: datum(millimetres(0.01), '0.01', 'mm'),
        uncertainty: datum(millimetres(0.02), '0.02', 'mm'),
      }),
    ]),
    parts: byId([part('ring'), part('washer'), part('grease')]),
    terms: byId([
      {
        id: 'hub',
        term: english('hub'),
        meaning: english('what holds the impeller'),
        notUsed: ['boss'],
        place: at('terms.yaml'),
      },
    ]),
    tables: {
      threads: table,
      boltHeads: table,
      clearanceHoles: table,
      propertyClasses: table,
      friction: table,
      runningClearances: table,
      materials: {
        ...table,
        rows: [
          {id: 'steel', title: 'stainless steel', place: at('tables/materials.csv')},
          {id: 'fkm', title: 'FKM', place: at('tables/materials.csv')},
        ],
      },
      suitability: {origin: {status: 'assumed', source: 'practice', where: 'edition'}, rows: suitability},
      cargoes: {
        ...table,
        rows: [
          {
            id: 'oil',
            title: 'Oil',
            density: datum(kilogramsPerCubicMetre(840), '840', 'kg/m³'),
            flammable: true,
            waterReactive: false,
            toxic: true,
            purgeMedium: 'nitrogen',
            word: 'WARNING',
            protection: 'gloves',
            place: at('tables/cargoes.csv'),
          },
        ],
      },
    },
    ...rest,
  }
}

/** The same values for each pump of the vessels, with replacements by position id. */
export function valuesFor(
  content: Content,
  replaced: Readonly<Record<string, readonly ComputedValue[]>> = {},
): ComputedValues {
  return {
    vessels: new Map(
      [...content.vessels.values()].map((vessel) => [
        vessel.id,
        new Map(
          vessel.positions.map(({id}) => [
            id,
            new Map([...values, ...(replaced[id] ?? [])].map((one) => [one.id, one])),
          ]),
        ),
      ]),
    ),
  }
}

/** Things by their ids. */
export function byId<T extends {readonly id: string}>(list: readonly T[]): ReadonlyMap<string, T> {
  return new Map(list.map((one) => [one.id, one]))
}

/** One pump of the first vessel, with its values. */
export function deskOf(
  content: Content,
  position: string,
  replaced: readonly ComputedValue[] = [],
): PumpDesk {
  const [vessel] = content.vessels.values()
  const found = vessel?.positions.find((one) => one.id === position)
  if (!vessel || !found) throw new Error(`Unexpected position \`${position}\`, expected one of the vessel`)
  return pumpDesk(content, vessel, found, byId([...values, ...replaced]))
}
