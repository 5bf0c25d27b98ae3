import type {HungDesign} from '../../src/handbook-model/design-content.ts'
import type {
  FactValue,
  IsolationRole,
  Position,
  Tank,
  Vessel,
} from '../../src/handbook-model/vessel-content.ts'
import {
  bar,
  barGauge,
  cubicMetres,
  diametralMillimetres,
  kilograms,
  litres,
  litresPerMinute,
  metres,
  millilitresPerMinute,
  millimetres,
  percent,
  perKelvin,
} from '../../src/quantities/named-units.ts'
import {at, datum, english, fact, place, to} from './data-for-tests.ts'

const named = {id: 'flow', title: english('rated flow'), value: datum(cubicMetres(1), '300', 'm³'), place}

export const designA: HungDesign = {
  id: 'design-a',
  title: english('Design A'),
  variant: english('A2'),
  description: english('what it is'),
  intendedUse: english('what it is for'),
  misuse: english('what it is not for'),
  ratings: [named],
  facts: [fact('stack-layout', 'concentric')],
  joints: [
    {
      id: 'hub-bolts',
      title: english('hub bolts'),
      thread: to('M12'),
      propertyClass: to('A4-80'),
      head: 'hexagon',
      hole: 'medium',
      count: 4,
      length: datum(millimetres(45), '45', 'mm'),
      utilisation: datum(percent(80), '80', '%'),
      lubrication: to('assembly-paste'),
      locking: english('locking plates'),
      pattern: 'crosswise',
      place,
    },
  ],
  rings: [
    {
      id: 'lower-ring',
      title: english('lower ring'),
      runningDiameter: datum(millimetres(250), '250', 'mm'),
      material: english('bronze'),
      newClearance: datum(diametralMillimetres(0.5), '0.50', 'mm diametral'),
      minimumNew: datum(diametralMillimetres(0.4), '0.40', 'mm diametral'),
      renewal: datum(diametralMillimetres(1.2), '1.20', 'mm diametral'),
      place,
    },
  ],
  cofferdam: {
    outerPipeBore: datum(millimetres(200), '200', 'mm'),
    innerPipeOutside: datum(millimetres(150), '150', 'mm'),
    headVolume: datum(litres(3), '3', 'l'),
    rating: datum(barGauge(5), '5', 'bar(g)'),
    lipReverseLimit: datum(bar(1), '1', 'bar'),
    allowedLeak: datum(millilitresPerMinute(10), '10', 'ml/min'),
    reliefValveSetting: datum(barGauge(4), '4', 'bar(g)'),
    place,
  },
  lifts: [],
  seals: [],
  oRings: [],
  wetted: [
    {id: 'casing', title: english('casing'), material: to('steel'), place},
    {id: 'rings', title: english('O-rings'), place},
  ],
  masses: [{id: 'head', title: english('head'), value: datum(kilograms(186), '186', 'kg'), place}],
  settings: [],
  limits: [
    {
      id: 'lower-ring-renewal',
      title: english('clearance of the lower ring'),
      side: 'not-above',
      value: to('lower-ring.renewal'),
      outside: 'RENEW',
      action: english('Renew the ring.'),
      place,
    },
    {
      id: 'lower-ring-minimum',
      title: english('smallest gap'),
      side: 'not-below',
      value: to('lower-ring.minimum-new'),
      outside: 'STOP',
      action: english('Call the office.'),
      place,
    },
  ],
  geometry: [],
  place: at('designs/design-a.yaml'),
}

export function isolation(tag: string): readonly IsolationRole[] {
  return [
    {
      role: 'pressure',
      points: [
        {
          id: `${tag.toLowerCase()}-pressure`,
          tag: `HP ${tag}`,
          medium: english('hydraulic oil'),
          kind: 'valve',
          normal: english('open'),
          isolated: english('closed'),
          where: english('deck'),
          lock: english('hasp'),
          proof: english('gauge TP1'),
          restoredWith: english('opened slowly'),
          place,
        },
      ],
      place,
    },
    {role: 'heating', points: [], noneBecause: english('no heating coils in this tank'), place},
  ]
}

export function tankOf(id: string, side: 'port' | 'starboard'): Tank {
  const plan =
    side === 'port'
      ? {fromFrame: 10, toFrame: 20, fromSide: -1, toSide: 0}
      : {fromFrame: 20, toFrame: 30, fromSide: 0, toSide: 1}
  return {
    id,
    tag: id.toUpperCase(),
    volume: datum(cubicMetres(900), '900', 'm³'),
    height: datum(metres(12), '12', 'm'),
    vacuumValveSetting: datum(barGauge(-0.035), '−0.035', 'bar(g)'),
    pressureValveSetting: datum(barGauge(0.2), '0.20', 'bar(g)'),
    plan,
    place,
  }
}

export function positionOf(id: string, facts: readonly FactValue[], serial = `P-${id}`): Position {
  const tag = id.toUpperCase()
  return {
    id,
    tag,
    tank: to(id),
    design: to('design-a'),
    serial,
    role: 'main',
    critical: true,
    installed: '2011-06-30',
    stackSections: [],
    stackLength: datum(metres(12), '12', 'm'),
    components: [
      {kind: 'head', serial: `H-${id}`, place},
      {kind: 'motor', serial: `M-${id}`, place},
    ],
    facts,
    materials: [{parts: to('rings'), material: to('fkm')}],
    isolation: isolation(tag),
    place: at('vessels/vessel-a/vessel.yaml'),
  }
}

export const vesselA: Vessel = {
  id: 'vessel-a',
  name: english('Example Vessel A'),
  hullNumber: '0937241',
  built: '2011',
  shipType: english('chemical tanker'),
  deadweight: datum(kilograms(1), '17600', 't'),
  locations: [english('cargo control room')],
  tanks: [tankOf('4p', 'port'), tankOf('4s', 'starboard')],
  positions: [
    positionOf('4p', [fact('backstop', 'fitted'), fact('cargo-seal', 'double-lip')]),
    positionOf('4s', [fact('backstop', undefined, 'opened by nobody yet'), fact('cargo-seal', 'single-lip')]),
  ],
  cargoes: [to('oil')],
  hydraulics: {
    systemPressure: datum(barGauge(240), '240', 'bar(g)'),
    returnPressure: datum(barGauge(6), '6', 'bar(g)'),
    purgeRegulatorMaximum: datum(barGauge(4), '4', 'bar(g)'),
    oil: english('oil'),
  },
  supplies: {
    purgeGasFlow: datum(litresPerMinute(60), '60', 'l/min'),
    bottleVolume: datum(litres(50), '50', 'l'),
    bottlePressure: datum(barGauge(150), '150', 'bar(g)'),
    flushFlow: datum(litresPerMinute(40), '40', 'l/min'),
    oilBulkModulus: datum(bar(15_000), '15000', 'bar'),
    oilExpansion: datum(perKelvin(0.0007), '0.0007', '1/K'),
    drumVolume: datum(litres(200), '200', 'l'),
    ventilatorFlow: datum(litresPerMinute(100_000), '6000', 'm³/h'),
  },
  facts: [fact('nitrogen-supply', 'plant')],
  toolsAboard: [
    {tool: to('wrench'), number: 'TW 1', location: english('drawer 2')},
    {tool: to('detector'), number: 'PD 1 to PD 6', location: english('control room')},
  ],
  sparesAboard: [
    {part: to('ring'), quantity: 2, location: english('box 3'), place},
    {part: to('washer'), quantity: 0, location: english('box 4'), place},
  ],
  place: at('vessels/vessel-a/vessel.yaml'),
}
