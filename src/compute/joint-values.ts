import {threadGeometryNote} from '../calculations/bolted-joints/thread-geometry.ts'
import {tighteningOrder, tighteningOrderNote} from '../calculations/bolted-joints/tightening-order.ts'
import {tighteningPasses, tighteningPassesNote} from '../calculations/bolted-joints/tightening-passes.ts'
import {
  type TighteningResult,
  tighteningTorque,
  tighteningTorqueNote,
} from '../calculations/bolted-joints/tightening-torque.ts'
import type {CalculationNote} from '../calculations/calculation-note.ts'
import type {CalculationTrace, ComputedValue, SourceUse, TracedInput} from '../handbook-model/computed.ts'
import type {
  BoltHeadRow,
  ClearanceHoleRow,
  Content,
  FrictionRow,
  PropertyClassRow,
  ThreadRow,
} from '../handbook-model/content.ts'
import type {KnownDatum, Origin} from '../handbook-model/datum.ts'
import type {Design, Joint} from '../handbook-model/design-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {printedText, printQuantity} from '../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../quantities/quantity.ts'
import {calculationSources} from './calculation-sources.ts'
import {refuseOverstressedBolt} from './refuse-overstressed-bolt.ts'
import {
  computedBefore,
  knownValue,
  missingOf,
  placeOfMissing,
  sourceUse,
  textValue,
  tracedCalculation,
  tracedDatum,
  tracedNumber,
  tracedOrigin,
  tracedStep,
  unknownValue,
  type ValueFacts,
  writtenText,
} from './value-builder.ts'

/** What a joint takes from the tables. */
interface JointRows {
  readonly thread: ThreadRow
  readonly head: BoltHeadRow
  readonly hole: ClearanceHoleRow
  readonly propertyClass: PropertyClassRow
  readonly friction: FrictionRow
}

/** Every value of a bolted joint: torque with its lubrication state, preload, passes, order and what the fastener is. */
export function jointValues(
  joint: Joint,
  design: Design,
  content: Content,
  files: ContentFiles,
): readonly ComputedValue[] {
  const rows = rowsOf(joint, content, files)
  if (!rows) return []
  const own = joint.length.kind === 'known' ? [sourceUse(joint.length.origin)] : []
  const facts = (name: string, title: string): ValueFacts => ({
    id: `${joint.id}.${name}`,
    title: `${title} of the ${joint.title.en}`,
    ofDesign: true,
    place: joint.place,
    sources: own,
  })
  const size = `${rows.thread.size} class ${rows.propertyClass.id}`
  const length = joint.length.kind === 'known' ? ` × ${writtenText(joint.length)}` : ''
  return [
    ...torqueValues(joint, rows, design, content, facts, files),
    textValue(orderText(joint.count), {
      ...facts('order', 'tightening order'),
      sources: calculationSources['tightening-order'].map((source) => ({source})),
      calculation: tracedCalculation(
        tighteningOrderNote,
        [{symbol: 'n', title: 'bolts', printed: String(joint.count), origin: 'design', place: joint.place}],
        [],
      ),
    }),
    knownValue(quantityOf('count', joint.count), '', 0, {...facts('count', 'number'), rounding: 'a count'}),
    textValue(`${joint.count} × ${size}${length}`, facts('fastener', 'fastener')),
    textValue(printedText(printQuantity(rows.head.wrench, 'mm', 0)), {
      ...facts('wrench', rows.head.head === 'hexagon' ? 'width across flats' : 'hexagon key'),
      sources: [{source: content.tables.boltHeads.origin.source}],
    }),
    textValue(rows.friction.title, {
      ...facts('lubrication', 'lubrication state'),
      sources: [{source: rows.friction.source}],
    }),
    textValue(joint.locking.en, facts('locking', 'locking')),
  ]
}

function orderText(bolts: number): string {
  return tighteningOrder(bolts).join(' ')
}

function sourcesOf(joint: Joint, content: Content): readonly SourceUse[] {
  const own = [joint.length, joint.utilisation].flatMap((datum) =>
    datum.kind === 'known' ? [sourceUse(datum.origin)] : [],
  )
  const tables = [content.tables.threads, content.tables.propertyClasses].map((table) => ({
    source: table.origin.source,
  }))
  return unique([...own, ...tables])
}

function unique(uses: readonly SourceUse[]): readonly SourceUse[] {
  const seen = new Map(uses.map((use) => [use.source, use]))
  return [...seen.values()]
}

function torqueValues(
  joint: Joint,
  rows: JointRows,
  design: Design,
  content: Content,
  facts: (name: string, title: string) => ValueFacts,
  files: ContentFiles,
): readonly ComputedValue[] {
  const {utilisation} = joint
  const condition = rows.friction.title
  if (utilisation.kind === 'not-known') {
    const missing = [`utilisation of the ${joint.title.en} (${utilisation.reason})`]
    const calculation = tracedCalculation(torqueNote, inputsOf(joint, rows, content), [])
    const titles = [
      ['torque', 'tightening torque'],
      ['preload', 'preload'],
      ['passes', 'tightening passes'],
    ] as const
    return titles.map(([name, title]) =>
      unknownValue(missing, {...facts(name, title), place: utilisation.place, calculation}),
    )
  }
  const result = compute(joint, rows, utilisation.quantity)
  refuseOverstressedBolt(joint, design, utilisation, result.combinedUtilisation, files)
  const sources = unique([
    ...calculationSources['tightening-torque'].map((source) => ({source})),
    ...sourcesOf(joint, content),
    {source: content.tables.boltHeads.origin.source},
    {source: content.tables.clearanceHoles.origin.source},
    {source: rows.friction.source},
  ])
  const calculation = tracedCalculation(torqueNote, inputsOf(joint, rows, content), stepsOf(result))
  const torque = printTorque(result.torque)
  return [
    {
      ...facts('torque', 'tightening torque'),
      result: {kind: 'known', quantity: result.torque, printed: torque},
      condition,
      calculation,
      sources,
      rounding: torqueRounding,
    },
    knownValue(result.preload, 'kN', 1, {
      ...facts('preload', 'preload'),
      condition,
      calculation: preloadTrace(result, `${joint.id}.torque`, rows, utilisation),
      sources,
    }),
    passesValue(
      result.torque,
      `${joint.id}.torque`,
      condition,
      content,
      facts('passes', 'tightening passes'),
    ),
  ]
}

/** Passes up to the full torque; not known where the share of one is not. */
function passesValue(
  torque: Quantity<'torque'>,
  torqueId: string,
  condition: string,
  content: Content,
  own: ValueFacts,
): ComputedValue {
  const shares = content.office.house.tighteningPasses.map((datum, index) => ({
    symbol: `share ${index + 1}`,
    title: 'share of the full torque',
    datum,
  }))
  const facts: ValueFacts = {
    ...own,
    condition,
    rounding: `each ${torqueRounding}`,
    sources: calculationSources['tightening-passes'].map((source) => ({source})),
    calculation: tracedCalculation(
      tighteningPassesNote,
      shares.map((share) => tracedDatum(share)),
      [computedBefore(torqueId, tracedStep('MA', 'tightening torque', torque, 'N·m'))],
    ),
  }
  const missing = missingOf(shares, 'the house rules')
  if (missing.length > 0) {
    return unknownValue(missing, {...facts, place: placeOfMissing(shares) ?? facts.place})
  }
  const known = shares.flatMap(({datum}) => (datum.kind === 'known' ? [datum.quantity] : []))
  const passes = tighteningPasses(torque, known).map((one) => printTorque(one).figure)
  return textValue(`${passes.join(' · ')} N·m`, facts)
}

/** The preload line of the torque calculation, from intermediate results that the torque explains. */
function preloadTrace(
  result: TighteningResult,
  torqueId: string,
  rows: JointRows,
  utilisation: KnownDatum<'ratio'>,
): CalculationTrace {
  const explained = `explained at ${torqueId}`
  const from = (traced: TracedInput): TracedInput => ({...traced, origin: explained})
  return tracedCalculation(
    {
      ...tighteningTorqueNote,
      words: 'the preload at which tension and torsion together use the stated share of the yield stress',
      formula: tighteningTorqueNote.formula.slice(2, 3),
    },
    [
      from(tracedStep('As', 'stress area', result.geometry.stressArea, 'mm²', 6)),
      {
        symbol: 'ν',
        title: 'utilisation of the yield stress',
        printed: writtenText(utilisation),
        origin: explained,
      },
      from(tracedStep('Rp0.2', 'yield stress', rows.propertyClass.yieldStress, 'N/mm²')),
      from(tracedStep('d2', 'pitch diameter', result.geometry.pitchDiameter, 'mm', 6)),
      from(tracedStep('d0', 'stress diameter', result.geometry.stressDiameter, 'mm', 6)),
      from(
        tracedNumber(
          'tan(φ + ρ′)',
          'wedge of lead and friction',
          Math.tan(result.leadAngle.si + result.frictionAngle.si),
        ),
      ),
    ],
    [],
  )
}

function compute(joint: Joint, rows: JointRows, utilisation: Quantity<'ratio'>): TighteningResult {
  return tighteningTorque({
    thread: {nominalDiameter: rows.thread.diameter, pitch: rows.thread.pitch},
    bearingDiameter: rows.head.bearingDiameter,
    holeDiameter: rows.hole[joint.hole],
    yieldStress: rows.propertyClass.yieldStress,
    utilisation,
    threadFriction: rows.friction.threadFriction,
    headFriction: rows.friction.headFriction,
    edition: '2003',
  })
}

const torqueRounding = 'to a whole N·m from 10 N·m up, to 0.1 N·m below, rounded once, half to even'

/** The torque with the diameters of the thread that it needs. */
const torqueNote: CalculationNote = {
  ...tighteningTorqueNote,
  formula: [...threadGeometryNote.formula, ...tighteningTorqueNote.formula],
  symbols: [...threadGeometryNote.symbols, ...tighteningTorqueNote.symbols],
}

function printTorque(torque: Quantity<'torque'>): {figure: string; unit: string} {
  return printQuantity(torque, 'N·m', torque.si < 10 ? 1 : 0)
}

function inputsOf(joint: Joint, rows: JointRows, content: Content): readonly TracedInput[] {
  const {tables} = content
  const fromTable = (
    symbol: string,
    title: string,
    quantity: Quantity<'length'> | Quantity<'stress'> | Quantity<'ratio'>,
    unit: string,
    decimals: number,
    origin: Origin,
    place: Place,
  ): TracedInput => ({
    symbol,
    title,
    printed: printedText(printQuantity(quantity, unit, decimals)),
    ...tracedOrigin(origin),
    place,
  })
  const threads = tables.threads.origin
  const heads = tables.boltHeads.origin
  const holes = tables.clearanceHoles.origin
  const classes = tables.propertyClasses.origin
  const friction: Origin = {
    ...tables.friction.origin,
    source: rows.friction.source,
    where: `class ${rows.friction.frictionClass}`,
  }
  return [
    {
      ...tracedStep('d', 'nominal diameter', rows.thread.diameter, 'mm', 3),
      ...tracedOrigin(threads),
      place: joint.thread.place,
    },
    fromTable('P', 'pitch', rows.thread.pitch, 'mm', 2, threads, rows.thread.place),
    fromTable(
      'dw',
      `bearing diameter of the ${joint.head} head`,
      rows.head.bearingDiameter,
      'mm',
      2,
      heads,
      rows.head.place,
    ),
    fromTable(
      'dh',
      `hole diameter, ${joint.hole} series`,
      rows.hole[joint.hole],
      'mm',
      1,
      holes,
      rows.hole.place,
    ),
    fromTable(
      'Rp0.2',
      `yield stress of class ${rows.propertyClass.id}`,
      rows.propertyClass.yieldStress,
      'N/mm²',
      0,
      classes,
      rows.propertyClass.place,
    ),
    tracedDatum({symbol: 'ν', title: 'utilisation of the yield stress', datum: joint.utilisation}),
    fromTable(
      'µG',
      `thread friction, ${rows.friction.title}`,
      rows.friction.threadFriction,
      '1',
      2,
      friction,
      rows.friction.place,
    ),
    fromTable(
      'µK',
      `head friction, ${rows.friction.title}`,
      rows.friction.headFriction,
      '1',
      2,
      friction,
      rows.friction.place,
    ),
  ]
}

function stepsOf(result: TighteningResult): readonly TracedInput[] {
  const {geometry} = result
  return [
    tracedStep('d2', 'pitch diameter', geometry.pitchDiameter, 'mm', 6),
    tracedStep('d0', 'stress diameter', geometry.stressDiameter, 'mm', 6),
    tracedStep('As', 'stress area', geometry.stressArea, 'mm²', 6),
    tracedNumber(
      'tan(φ + ρ′)',
      'wedge of lead and friction',
      Math.tan(result.leadAngle.si + result.frictionAngle.si),
    ),
    tracedStep('DKm', 'mean head diameter', result.meanHeadDiameter, 'mm'),
    tracedStep('FM', 'preload', result.preload, 'kN'),
    tracedStep('MA', 'tightening torque', result.torque, 'N·m'),
  ]
}

function rowsOf(joint: Joint, content: Content, files: ContentFiles): JointRows | undefined {
  const {tables} = content
  const {lubrication} = joint
  if (!lubrication) {
    addMessage(
      files,
      joint.place,
      'no-dry-torque',
      `Unexpected joint \`${joint.id}\` without a lubrication state, expected \`lubrication:\` with the id of a row of tables/friction.csv`,
      {note: 'Say how threads and head are lubricated: the torque for a dry bolt breaks a lubricated one'},
    )
    return undefined
  }
  const size = joint.thread.id
  const thread = need(
    tables.threads.rows.find((row) => row.size === size),
    joint.thread.place,
    `thread \`${size}\``,
    'threads',
    files,
  )
  const head = need(
    tables.boltHeads.rows.find((row) => row.size === size && row.head === joint.head),
    joint.thread.place,
    `${joint.head} head of \`${size}\``,
    'bolt-heads',
    files,
  )
  const hole = need(
    tables.clearanceHoles.rows.find((row) => row.size === size),
    joint.thread.place,
    `hole for \`${size}\``,
    'clearance-holes',
    files,
  )
  const friction = need(
    tables.friction.rows.find((row) => row.id === lubrication.id),
    lubrication.place,
    `lubrication state \`${lubrication.id}\``,
    'friction',
    files,
  )
  const diameter = thread?.diameter.si ?? 0
  const propertyClass = need(
    tables.propertyClasses.rows.find(
      (row) =>
        row.id === joint.propertyClass.id &&
        diameter > row.aboveDiameter.si &&
        diameter <= row.upToDiameter.si,
    ),
    joint.propertyClass.place,
    `class \`${joint.propertyClass.id}\` at \`${size}\``,
    'property-classes',
    files,
  )
  return thread && head && hole && friction && propertyClass && {thread, head, hole, friction, propertyClass}
}

function need<Row>(
  row: Row | undefined,
  place: Place,
  what: string,
  table: string,
  files: ContentFiles,
): Row | undefined {
  if (row === undefined) {
    addMessage(
      files,
      place,
      'no-missing-table-row',
      `Unexpected ${what} that tables/${table}.csv does not hold, expected a row for it`,
      {
        note: `Add the row with its source to tables/${table}.csv, or choose another fastener; nothing is read beyond the table`,
      },
    )
  }
  return row
}
