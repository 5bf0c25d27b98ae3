/**
 * Which pump of the demonstration has what, written by hand from the papers of the three vessels.
 *
 * Nothing here is read from the content: where content and table differ, one of the two is wrong.
 * The one pump that hangs in no tank has a table of its own.
 */
export interface PumpRow {
  readonly pump: string
  /** The newer design A, large; or the older design B, small, with a motor without flushing bore. */
  readonly motor: 'newer' | 'older'
  readonly backstop: 'fitted' | 'none' | 'open'
  readonly lips: 'double' | 'single'
  readonly rings: 'screwed' | 'pressed' | 'open'
  readonly surface: 'bare' | 'coated'
}

/** Rows of one vessel that are alike: ids of positions with blanks between. */
function rows(vessel: string, positions: string, row: Omit<PumpRow, 'pump'>): readonly PumpRow[] {
  return positions.split(' ').map((position) => ({pump: `${vessel}/${position}`, ...row}))
}

const newer = {motor: 'newer', lips: 'double', rings: 'screwed'} as const
const older = {motor: 'older', lips: 'double', rings: 'pressed', surface: 'coated'} as const

/** Every pump of the fleet. */
export const pumps: readonly PumpRow[] = [
  ...rows('vessel-a', '1p 1s', {...newer, backstop: 'none', surface: 'bare'}),
  ...rows('vessel-a', '2p 2s 3p 3s 4p 4s 5s 6p 6s 7p 7s 8p 8s 9p 9s', {
    ...newer,
    backstop: 'fitted',
    surface: 'bare',
  }),
  ...rows('vessel-a', '5p', {...newer, backstop: 'open', surface: 'bare'}),
  ...rows('vessel-a', 'slop-p slop-s', {...newer, backstop: 'none', surface: 'coated'}),

  ...rows('vessel-b', '1p 2s slop-s', {...older, backstop: 'none'}),
  ...rows('vessel-b', '1s', {...older, backstop: 'fitted'}),
  ...rows('vessel-b', 'slop-p', {...older, backstop: 'open'}),
  ...rows('vessel-b', '3p 3s 4p 5p 5s 6p 6s', {...newer, backstop: 'fitted', surface: 'coated'}),
  ...rows('vessel-b', '2p', {...newer, rings: 'open', backstop: 'fitted', surface: 'coated'}),
  ...rows('vessel-b', '4s', {...newer, rings: 'pressed', backstop: 'fitted', surface: 'coated'}),

  ...rows('vessel-c', '1p 1s', {...newer, backstop: 'none', surface: 'coated'}),
  ...rows('vessel-c', '2p 2s 3p 3s 4p 4s 5p 5s 6p 7p 7s 8p 8s 9p 9s 10p 10s 11p 11s', {
    ...newer,
    backstop: 'fitted',
    surface: 'coated',
  }),
  ...rows('vessel-c', '6s', {...newer, backstop: 'open', surface: 'coated'}),
  ...rows('vessel-c', 'slop-p slop-s', {...newer, lips: 'single', backstop: 'none', surface: 'bare'}),
]

/** Procedures that some pumps alone have, by what the pump has. */
export const proceduresOf = {
  motor: {
    newer: [
      'control-valve',
      'control-valve-setting',
      'motor-exchange',
      'purge-line',
      'stack',
      'stack-closing',
    ],
    older: [],
  },
  backstop: {fitted: [], none: []},
  lips: {double: [], single: []},
  rings: {screwed: [], pressed: []},
  surface: {bare: [], coated: []},
} as const

/** Steps that stand on some pumps alone, by what the pump has, in procedures that all pumps have. */
export const stepsOf = {
  motor: {
    newer: [
      'oil-draining--connect-drum',
      'oil-draining--let-run-down',
      'oil-filling--connect-cart',
      'oil-filling--fill-pressure-pipe',
    ],
    older: [
      'oil-draining--connect-drum-to-pipe',
      'oil-draining--move-hose',
      'oil-draining--press-return',
      'oil-draining--let-walls-run-down',
      'oil-filling--connect-cart-to-pipe',
      'oil-filling--open-pipe-drain',
      'oil-filling--fill-pipe',
      'oil-filling--move-cart',
      'oil-filling--let-gas-rise',
    ],
  },
  backstop: {
    fitted: ['pump-unit-removal--loosen-one-way'],
    none: ['pump-unit-removal--loosen-both-ways'],
  },
  lips: {
    double: ['cargo-seal--press-second-lip', 'cargo-seal--press-wet-lip'],
    single: ['cargo-seal--press-lone-lip'],
  },
  rings: {
    screwed: [
      'wear-rings--free-ring-screws',
      'wear-rings--take-ring-out',
      'wear-rings--fit-ring',
      'wear-rings--tighten-ring-screws',
      'wear-rings--lock-ring-screws',
    ],
    pressed: ['wear-rings--draw-ring-out', 'wear-rings--measure-press-fit', 'wear-rings--press-ring'],
  },
  surface: {
    bare: ['pump-unit-removal--lay-strips'],
    coated: ['pump-unit-removal--lay-strips-and-mats'],
  },
} as const

/** Values of those procedures that stand on some pumps alone, by what the pump has; those of cargoes follow the list of the vessel. */
export const valuesOf = {
  motor: {newer: [], older: []},
  backstop: {fitted: [], none: []},
  lips: {
    double: [
      'cargo-seal.running-diameter',
      'cargo-seal.pressure',
      'cargo-seal.lip-speed',
      'cargo-seal.seat-depth',
      'cargo-seal.lips',
      'setting.cargo-seat-least',
    ],
    single: [
      'cargo-seal-single.running-diameter',
      'cargo-seal-single.pressure',
      'cargo-seal-single.lip-speed',
      'cargo-seal-single.seat-depth',
      'cargo-seal-single.lips',
      'setting.cargo-single-seat-least',
    ],
  },
  rings: {
    screwed: [
      'lower-ring-screws.count',
      'lower-ring-screws.fastener',
      'lower-ring-screws.torque',
      'lower-ring-screws.passes',
      'lower-ring-screws.order',
      'lower-ring-screws.locking',
      'upper-ring-screws.count',
      'upper-ring-screws.fastener',
      'upper-ring-screws.torque',
      'upper-ring-screws.passes',
    ],
    pressed: ['setting.ring-press-least', 'setting.ring-press-most'],
  },
  surface: {bare: [], coated: []},
} as const

/** Figures that tell the two designs apart: id, on the newer, on the older. */
export const figures: readonly (readonly [id: string, newer: string, older: string])[] = [
  ['suction-cover-bolts.fastener', '16 × M12 class A4-70 × 40 mm', '12 × M10 class A4-70 × 35 mm'],
  ['suction-cover-bolts.torque', '43 N·m', '23 N·m'],
  ['suction-cover-bolts.order', '1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16', '1 7 4 10 2 8 5 11 3 9 6 12'],
  ['seal-housing-bolts.fastener', '12 × M10 class A4-70 × 35 mm', '9 × M8 class A4-70 × 30 mm'],
  ['seal-housing-bolts.order', '1 7 4 10 2 8 5 11 3 9 6 12', '1 5 9 4 8 3 7 2 6'],
  ['sleeve-screws.count', '4', '6'],
  ['hub-bolts.count', '8', '10'],
  ['hub-bolts.wrench', '18 mm', '16 mm'],
  ['hub-bolts.torque', '61 N·m', '33 N·m'],
  ['hub-bolts.order', '1 5 3 7 2 6 4 8', '1 6 3 8 5 10 2 7 4 9'],
  ['hand-hole-bolts.fastener', '6 × M8 class A4-70 × 25 mm', '5 × M10 class A4-70 × 30 mm'],
  ['lip-holder-bolts.order', '1 4 2 5 3 6', '1 3 5 2 4'],
  ['head-flange-bolts.fastener', '12 × M16 class A4-80 × 60 mm', '14 × M12 class A4-80 × 50 mm'],
  ['head-flange-bolts.torque', '141 N·m', '54 N·m'],
  ['lower-ring.renewal', '1.20 mm diametral', '1.00 mm diametral'],
  ['upper-ring.minimum-new', '0.50 mm diametral', '0.46 mm diametral'],
  ['cofferdam.upper-bound', '3.46 bar(g)', '3.26 bar(g)'],
  ['cofferdam.allowed-leak', '20 ml/min', '15 ml/min'],
  ['setting.oil-press-out', '2.5 bar(g)', '2.2 bar(g)'],
  ['setting.oil-drain-wait', '30 min', '15 min'],
  ['setting.oil-seal-length-least', '61.80 mm', '54.30 mm'],
  ['setting.oil-seal-length-most', '62.20 mm', '54.70 mm'],
  ['setting.set-screw-torque', '5 N·m', '3.5 N·m'],
  ['oil.motor-casing', '4.2 l', '2.6 l'],
  ['motor.pressure-difference', '238 bar', '192 bar'],
  ['rating.speed', '2400 rpm', '2900 rpm'],
  ['rating.dry-run-limit', '30 s', '15 s'],
  ['curve.act-head', '133.2 m', '120.6 m'],
  ['mass.impeller', '27 kg', '16 kg'],
  ['unit-lift.mass', '186 kg', '118 kg'],
  ['lowering.travel', '35 mm', '28 mm'],
  ['single-lip.running-diameter', '100 mm', '80 mm'],
  ['suction-cover-ring.size', '430.66 × 5.33 mm', '329.57 × 5.33 mm'],
  ['oil-seal-shaft-ring.size', '69.44 × 3.53 mm', '53.57 × 3.53 mm'],
]

/** Words of one design that a page of the other never holds. */
export const ownWords = {
  newer: ['through the flushing bore', 'M16 x 60', '186 kg', 'outside diameter 386 mm', 'bore 92 mm'],
  older: ['PIPE DRAIN', 'vane 6', 'tungsten carbide on carbon', '118 kg', 'of the small pump'],
} as const

/** Procedures of every pump that hangs in a tank. */
export const procedures: readonly string[] = [
  'cargo-change',
  'cargo-seal',
  'cofferdam-cleaning',
  'contaminated-oil',
  'discharge-valve',
  'dismantling',
  'idle-rotation',
  'isolation',
  'job-preparation',
  'lay-up',
  'oil-draining',
  'oil-filling',
  'oil-flushing',
  'oil-sampling',
  'oil-seal',
  'oil-side-test',
  'pump-unit-removal',
  'purge-result',
  'purging',
  'reassembly',
  'residue-collection',
  'restoration',
  'sleeve',
  'stripping-check',
  'tank-entry',
  'test-run',
  'tightness-test',
  'wear-rings',
]
