import type {CountedBy} from '../handbook-model/hours-content.ts'
import type {SuitabilityWord} from '../handbook-model/material-content.ts'
import type {SignalWord} from '../handbook-model/office-content.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import type {IsolationPoint, IsolationRoleName} from '../handbook-model/vessel-content.ts'
import {units} from '../quantities/units.ts'

/** English words of the page models; another language is another file of this shape. */
export const wordsEn = {
  roles: {
    pressure: 'hydraulic pressure',
    return: 'hydraulic return',
    pilot: 'pilot line',
    discharge: 'cargo discharge',
    stripping: 'stripping gas',
    'purge-supply': 'purge supply',
    'purge-outlet': 'purge outlet',
    heating: 'heating',
    'tank-cleaning': 'tank cleaning',
    'cofferdam-relief': 'cofferdam relief valve',
    'cofferdam-vent': 'cofferdam vent line',
    'temporary-plugs': 'temporary plugs and caps',
    'transport-bolts': 'transport bolts',
  } satisfies Record<IsolationRoleName, string>,
  pointKinds: {
    valve: 'valve',
    blind: 'blind',
    fuse: 'fuse',
    'relief-valve': 'relief valve',
    plug: 'plug',
    'transport-bolt': 'transport bolt',
  } satisfies Record<IsolationPoint['kind'], string>,
  phases: {isolated: 'isolated', restored: 'restored'},
  activities: {
    inspection: 'inspection',
    test: 'test',
    overhaul: 'overhaul',
    repair: 'repair',
    isolation: 'isolation',
    restoration: 'restoration',
    preparation: 'preparation',
    card: 'card',
  } satisfies Record<Procedure['activity'], string>,
  competence: {crew: 'crew', 'heavy-maintenance': 'heavy maintenance'} satisfies Record<
    Procedure['competence'],
    string
  >,
  titles: {
    start: (vessel: string): string => `Pump handbook of ${vessel}`,
    position: (tag: string): string => `Pump ${tag}`,
    positionValues: (tag: string): string => `Values of pump ${tag}`,
    symptoms: (tag: string): string => `Symptoms of pump ${tag}`,
    values: 'Torques and clearances',
    cautions: 'Cautions and signal words',
    tools: 'Tools and instruments',
    parts: 'Spare parts and consumables',
    sources: 'Sources',
    words: 'Words used here',
    work: 'Work by interval',
    failures: 'Failures by part',
  },
  designPages: {
    values: (design: string): string => `Values of ${design}`,
    settings: (design: string): string => `Settings of ${design}`,
    torques: (design: string): string => `Torques of ${design}`,
    preloads: (design: string): string => `Preloads of ${design}`,
    passes: (design: string): string => `Passes and order of tightening of ${design}`,
    fasteners: (design: string): string => `Fasteners of ${design}`,
    'o-rings': (design: string): string => `O-rings of ${design}`,
  },
  particulars: {
    hullNumber: 'Hull number',
    shipType: 'Type',
    built: 'Built',
    deadweight: 'Deadweight',
    tanks: 'Cargo tanks',
    pumps: 'Cargo pumps',
  },
  interval: {
    hours: (least: string, most: string): string =>
      `${grouped(least)}${most === '' ? '' : ` to ${grouped(most)}`} running hours`,
    /** A time of the calendar: "daily", "60 months". */
    calendar: (figure: string, unit: string): string =>
      usualTimes[`${figure} ${unit}`] ?? `${figure} ${unit === 'd' ? 'days' : unit}`,
    withNote: (time: string, note: string): string => `${time}, ${note}`,
    first: (hours: string, time: string): string => `${hours} or ${time}, whichever is first`,
    joined: (parts: readonly string[]): string => parts.join('; '),
    sooner: (clause: string): string => `sooner when ${clause}`,
    also: (clause: string): string => `also when ${clause}`,
    only: (clause: string): string => `only when ${clause}`,
  },
  work: {
    groups: {
      time: 'By calendar and running hours',
      event: 'With an event',
      condition: 'Only on a condition',
    },
    about: 'every job, most often first, with the reason of its interval',
    pumps: (some: number, all: number): string =>
      some === all ? `all ${all} pumps:` : `${some} of ${all} pumps:`,
    doneBy: (competence: string, roles: readonly string[]): string => `${competence}: ${roles.join(', ')}`,
  },
  failures: {
    about: 'every part, how it fails, and what finds or mends it',
    otherParts: 'Other parts',
    pumps: (some: number, all: number): string => `on ${some} of ${all} pumps`,
    pumpsOpen: (some: number, open: number, all: number): string =>
      `${some === 0 ? '' : `on ${some}, `}NOT KNOWN on ${open} of ${all} pumps`,
  },
  touched: {
    alternative: (parts: readonly string[]): string =>
      `Section of the pump. Marked are, from the wet end up: ${parts.join(', ')}.`,
    drawnAs: (tag: string): string => `Drawn with the wear rings and the cargo seal of ${tag}.`,
  },
  estimate: 'estimate',
  stated: 'stated',
  fromTo: (least: string, most: string): string => `${least} to ${most}`,
  instrument: (graduation: string, uncertainty: string): string => `reads to ${graduation}, ± ${uncertainty}`,
  supersededBy: (source: string): string => `superseded by ${source}`,
  clearance: ([ring = '', hub = '']: readonly string[]): string => `mean of ${ring} − mean of ${hub}`,
  smallestGap: ([ring = '', hub = '']: readonly string[]): string => `least ${ring} − greatest ${hub}`,
  spread: ([reading = '']: readonly string[]): string => `greatest − least of ${reading}`,
  sum: ([reading = '']: readonly string[]): string => `sum of all places of ${reading}`,
  hourlyRate: ([volume = '', time = '']: readonly string[]): string =>
    `${volume} divided by ${time} in hours`,
  dailyRate: ([volume = '', time = '']: readonly string[]): string =>
    `${volume} divided by ${time} in days (hours divided by 24)`,
  curveShare: ([gauge = '', tank = '', height = '', speed = '']: readonly string[]): string =>
    `H = (${gauge} − ${tank}) · 10.20 m per bar + ${height}; share = 100 · H · (speed of the curve / ${speed})² / head of the curve with the discharge valve closed; fresh water, no flow`,
  correctedDrop: ([p1 = '', p2 = '', t1 = '', t2 = '', b1 = '', b2 = '']: readonly string[]): string =>
    `drop = P1 − P2 · T1 / T2 with P1 = ${p1} + ${b1}, P2 = ${p2} + ${b2}, both in bar absolute; T1 = mean of ${t1}, T2 = mean of ${t2}, both in kelvin (°C + 273.15)`,
  sides: {'not-above': 'not above', 'not-below': 'not below'},
  signalWords: [
    {word: 'DANGER', meaning: 'The hazard will kill or seriously injure when it is not avoided.'},
    {word: 'WARNING', meaning: 'The hazard could kill or seriously injure when it is not avoided.'},
    {word: 'CAUTION', meaning: 'The hazard could injure slightly or moderately when it is not avoided.'},
    {word: 'NOTICE', meaning: 'No person is hurt: the pump, the ship or the sea could be damaged.'},
  ] satisfies readonly {word: SignalWord; meaning: string}[],
  howKnown: {
    read: 'read',
    reprint: 'read in a reprint',
    memory: 'from memory, to be read',
    'common-practice': 'common practice, no source',
    demonstration: 'demonstration data',
  },
  sourceStatus: {current: 'current', superseded: 'superseded', unknown: 'status unknown'},
  partClasses: {spare: 'spare part', consumable: 'consumable', 'insurance-spare': 'insurance spare'},
  safety: [
    'This handbook supports licensed and trained people. It replaces no permit, no class rule, no requirement of flag or port and no instruction of an equipment maker. Where a rule is stricter, the rule wins.',
    'Entry into enclosed spaces, hot work, lifting and pressure tests need the permit of this ship before the work starts. The permit decides, not this handbook.',
    'Read the cautions page before the first job on this pump. Each caution stands again before the step it guards.',
    'A value that nobody knows prints as NOT KNOWN - MEASURE AND REPORT. Do not guess it.',
  ],
  nameplate: (serial: string): string =>
    `Read the nameplate: ________ = ${serial}? If not: STOP. This sheet is not for this pump.`,
  onlyIf: (condition: string): string => `only if ${condition}`,
  factIs: (fact: string, values: readonly string[]): string => `${fact} is ${values.join(' or ')}`,
  factIsNot: (fact: string, values: readonly string[]): string =>
    `${fact} is ${values.length > 1 ? `none of: ${values.join(', ')}` : `not ${values.join('')}`}`,
  factIsKnown: (fact: string): string => `${fact} is known`,
  notSo: (condition: string): string => `it is not so that ${condition}`,
  joints: {and: ' and ', or: ' or '},
  /** In a narrow cell; the whole words stand below the table. */
  notKnownCell: 'NOT KNOWN',
  noSafeWindow: 'NO SAFE WINDOW: do not lift by pressure, ask the office',
  cargoHazards: {flammable: 'flammable', waterReactive: 'reacts with water', toxic: 'toxic'},
  suitability: {
    suitable: 'suitable',
    limited: 'limited',
    'not-suitable': 'NOT SUITABLE',
    unknown: 'NOT KNOWN: ask office',
  } satisfies Record<SuitabilityWord, string>,
  /** What follows for the loading from the worst word of a row. */
  suitabilityResults: {
    suitable: 'every material suitable',
    limited: 'LIMITED: within this row only',
    'not-suitable': 'DO NOT LOAD',
    unknown: 'ASK OFFICE BEFORE LOADING',
  } satisfies Record<SuitabilityWord, string>,
  materialOf: (parts: string): string => `material of the ${parts}`,
  materialNotKnown: (reason: string): string => `NOT KNOWN (${reason})`,
  notStated: 'the vessel file does not say',
  noSuitabilityRow: 'no row in the table of the office',
  missing: (what: readonly string[]): string => `missing: ${what.join('; ')}`,
  step: (number: number): string => `step ${number}`,
  section: (title: string): string => `section ${title.toLowerCase()}`,
  atStep: (procedure: string, number: number): string => `${procedure} · step ${number}`,
  atSection: (procedure: string, section: string): string =>
    `${procedure} · section ${section.toLowerCase()}`,
  atHold: (procedure: string, hold: string): string => `${procedure} · hold point ${hold.toLowerCase()}`,
  valuesOnPage: (page: string, count: number): string =>
    `${page}: ${count} ${count === 1 ? 'value' : 'values'}`,
  onPumps: (place: string, pumps: number, all: number): string =>
    pumps === all ? place : `${place} (${pumps} of ${all} pumps)`,
  urgent: {
    from: (day: string): string => `valid from ${day}`,
    to: (day: string): string => `valid to ${day}`,
    pumps: (tags: readonly string[]): string => `On this page it counts for pump ${tags.join(', ')}`,
    instead: (what: string): string => `In place of: ${what}`,
    reason: (reason: string): string => `Reason: ${reason}`,
    supersedes: (numbers: readonly string[]): string => `Supersedes ${numbers.join(', ')}`,
    cancelledBy: (what: string): string => `Ends with: ${what}`,
  },
  inPlaceOfStep: (number: string, validTo: string): string =>
    `In place of this step, by urgent revision ${number}, valid to ${validTo}`,
  nounOf,
  amount: (quantity: number, unit: string): string =>
    `${quantity} ${quantity === 1 || isMeasure(unit) ? nounOf(unit) : `${nounOf(unit)}s`}`,
  people: (count: number): string => (count === 1 ? '1 person' : `${count} persons`),
  hours: (hours: number): string => `${hours} h (est)`,
  aboard: (quantity: number, place: string): string => `${quantity} aboard (${place})`,
  orderBelow: (aboard: string, least: number): string => `${aboard}, order below ${least}`,
  noneAboard: 'none aboard: bring from shore',
  notListed: 'NOT KNOWN: not on the list of what is aboard',
  records: {
    titles: {
      hours: 'Running hours',
      calibrations: 'Calibration of measuring tools',
    },
    upTo: (day: string): string => `Records up to ${day}.`,
    noRecords: 'No records aboard.',
    source: (title: string): string => `Source: ${title}.`,
  },
  calibrations: {
    noLine: 'no line in the record',
    noInterval: 'the certificate names no day and the design no interval',
    byCertificate: 'day of the certificate',
    byInterval: (interval: string): string => `calibration and ${interval}`,
  },
  runningHours: {
    component: (kind: string, serial: string): string => `${kind} ${serial}`,
    hours: (hours: string): string => `${hours} h`,
    atLeast: (hours: string): string => `NOT KNOWN, at least ${hours} h`,
    noComponents: 'no serial numbers listed',
    neverRead: 'no reading',
    firstReading: 'first reading',
    since: (hours: string, days: number): string => `${hours} h in ${days} ${days === 1 ? 'day' : 'days'}`,
    counted: {meter: 'meter', log: 'log', estimate: 'estimate'} satisfies Record<CountedBy, string>,
    ranAt: (tag: string, day: string): string => `in pump ${tag} when read on ${day}`,
    newCounter: (hours: string, day: string, shown: string): string =>
      `counter exchanged before ${day}: the new one began at ${hours} h and shows ${shown} h`,
  },
  numbered: (numbers: readonly string[], place: string): string => `${numbers.join(', ')} (${place})`,
} as const

/** Times that have a word of their own. */
const usualTimes: Readonly<Record<string, string>> = {
  '1 d': 'daily',
  '7 d': 'weekly',
  '1 months': 'monthly',
}

/** Digits in threes, held together: `10 000`. */
function grouped(figure: string): string {
  return figure.replace(/\B(?=(?:\d{3})+$)/gu, '\u00a0')
}

/** Unit of a quantity of parts in its singular: `pieces` and `piece` are one unit, `kg` stays. */
function nounOf(unit: string): string {
  return isMeasure(unit) ? unit : unit.replace(/s$/u, '')
}

function isMeasure(unit: string): boolean {
  return units.some((one) => one.symbol === unit)
}
