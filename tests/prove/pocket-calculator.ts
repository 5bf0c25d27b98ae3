/**
 * What a reader with a pocket calculator makes of an explanation: the formula as it is printed, over the figures as they
 * are printed. Nothing of the library is used here.
 */

/** Units as pages print them, in the base units of the SI; pressures that are gauge count from the atmosphere. */
const units: Readonly<Record<string, number>> = {
  '': 1,
  '%': 0.01,
  m: 1,
  mm: 0.001,
  'mm diametral': 0.001,
  'mm radial': 0.001,
  'm³': 1,
  l: 0.001,
  kg: 1,
  'kg/m³': 1,
  N: 1,
  kN: 1000,
  N·m: 1,
  'N/mm²': 1e6,
  'mm²': 1e-6,
  'bar(g)': 1e5,
  'bar(a)': 1e5,
  bar: 1e5,
  mbar: 100,
  K: 1,
  '1/K': 1,
  s: 1,
  min: 60,
  h: 3600,
  'l/min': 1 / 60_000,
  'ml/min': 1e-6 / 60,
  'm³/h': 1 / 3600,
  'cm³/rev': 1e-6,
  rpm: 1 / 60,
  'm/s': 1,
  'm/s²': 1,
  kW: 1000,
  '°': Math.PI / 180,
}

/** A figure with its unit, in base units; `293.15 K (20 °C)` counts as its first part. */
export function figureOf(printed: string): number {
  const [, sign = '', digits = '', unit = ''] =
    /^([−-]?)(\d[\d.]*)\s*([^\s(]*(?:\([ga]\))?(?: (?:diametral|radial))?)/u.exec(printed) ?? []
  const scale = units[unit]
  if (digits === '' || scale === undefined)
    throw new Error(`Unexpected figure \`${printed}\`, expected one that a pocket calculator takes`)
  return (sign === '' ? 1 : -1) * Number(digits) * scale
}

/** The figures of an explanation by their symbol. */
export type Inputs = (symbol: string) => number

const atmosphere = 101_325
const gravity = 9.80665

function torqueOf(of: Inputs): {readonly preload: number; readonly torque: number} {
  const [d, p] = [of('d'), of('P')]
  const height = (p * Math.sqrt(3)) / 2
  const d2 = d - 0.75 * height
  const d3 = d - 1.25 * height - height / 6
  const d0 = (d2 + d3) / 2
  const area = (Math.PI / 4) * d0 ** 2
  const wedge = Math.tan(Math.atan(p / (Math.PI * d2)) + Math.atan(of('µG') / Math.cos(Math.PI / 6)))
  const preload = (area * of('ν') * of('Rp0.2')) / Math.sqrt(1 + 3 * (1.5 * (d2 / d0) * wedge) ** 2)
  const head = (of('dw') + of('dh')) / 2
  return {preload, torque: preload * ((d2 / 2) * wedge + (of('µK') * head) / 2)}
}

function screw(of: Inputs): {readonly force: number; readonly raise: number; readonly lower: number} {
  const force = of('m') * gravity
  const [p, friction] = [of('P'), of('µ') / Math.cos(Math.PI / 6)]
  // Flank diameter of a metric thread M16, by ISO 724: 16 mm less 0.6495 times the pitch.
  const d2 = 0.016 - 0.75 * ((p * Math.sqrt(3)) / 2)
  const collar = (force * of('µc') * (of('D') + of('d'))) / 4
  const turn = Math.PI * d2
  return {
    force,
    raise: ((force * d2) / 2) * ((p + friction * turn) / (turn - friction * p)) + collar,
    lower: ((force * d2) / 2) * ((friction * turn - p) / (turn + friction * p)) + collar,
  }
}

/** The result of an explanation by the last word of its value; several figures where several are printed. */
export const pocketCalculations: Readonly<Record<string, (of: Inputs) => readonly number[]>> = {
  'cofferdam.volume': (of) => [(Math.PI / 4) * (of('D') ** 2 - of('d') ** 2) * of('L') + of('V head')],
  'cofferdam.upper-bound': (of) => [
    Math.min(of('p rating'), of('p lip') + of('p tank lowest'), of('p regulator')),
  ],
  'cofferdam.test-pressure': (of) => [Math.min(of('p house'), of('p upper'))],
  'cofferdam.hold-time': (of) => [
    Math.max(
      of('t least'),
      (of('V') * (of('gauge step') + ((of('p test') + atmosphere) / of('T')) * of('uT'))) /
        (atmosphere * of('q allowed')),
    ),
  ],
  'cofferdam.smallest-leak': (of) => [
    (of('V') * (of('gauge step') + ((of('p test') + atmosphere) / of('T')) * of('uT'))) /
      (atmosphere * of('t')),
  ],
  'cofferdam.allowed-drop': (of) => [(of('q allowed') * atmosphere * of('t')) / of('V')],
  'cofferdam.pressure-per-kelvin': (of) => [(of('p test') + atmosphere) / of('T1')],
  'purge.lower-bound': (of) => [of('ρ') * gravity * of('L') + of('margin')],
  'purge.free-gas': (of) => [(of('n') * of('V') * (of('p') + atmosphere)) / of('p ref')],
  'purge.time': (of) => [Math.max(of('t least'), of('V free') / of('q'))],
  'purge.per-bottle': (of) => [
    Math.floor(
      (of('V bottle') * ((of('p full') + atmosphere) / of('Z') - (of('p least') + atmosphere))) /
        of('p ref') /
        of('V purge'),
    ),
  ],
  '*.pressure': (of) => [of('ρ') * gravity * of('h') + of('p tank') - of('p cofferdam')],
  'oil.volume': (of) => [
    (Math.PI / 4) * of('d') ** 2 * of('L') +
      (Math.PI / 4) * (of('D') ** 2 - of('do') ** 2) * of('L') +
      of('V motor') +
      of('V valve'),
  ],
  'oil.least': (of) => [of('V') * (1 - of('tolerance'))],
  'oil.most': (of) => [of('V') * (1 + of('tolerance'))],
  'oil.drums': (of) => [Math.ceil(of('V') / of('V drum'))],
  'oil.flush-time': (of) => [(of('n') * of('V')) / of('Q')],
  'oil.trapped-pressure': (of) => [of('K') * of('α') * of('ΔT')],
  'tank.ventilation-time': (of) => [(of('N') * of('V')) / (of('k') * of('Q'))],
  '*.torque': (of) => [torqueOf(of).torque],
  '*.preload': (of) => [
    (of('As') * of('ν') * of('Rp0.2')) /
      Math.sqrt(1 + 3 * (1.5 * (of('d2') / of('d0')) * of('tan(φ + ρ′)')) ** 2),
  ],
  '*.passes': (of) => ['share 1', 'share 2', 'share 3'].map((share) => of(share) * of('MA')),
  'motor.torque': (of) => [(of('D') * drop(of) * of('ηm')) / (2 * Math.PI)],
  'motor.oil-flow': (of) => [(of('D') * of('n')) / of('ηv')],
  'motor.pressure-difference': (of) => [drop(of)],
  '*.renewal': (of) => [Math.min(of('c design'), of('c house'))],
  '*.leg-load': (of) => [of('m') / (of('n') * Math.cos(of('β')))],
  '*.rated-load': (of) => [of('r') * Math.max(of('m'), of('m leg'))],
  'lowering.bolt-load': (of) => [screw(of).force],
  'lowering.turns': (of) => [of('s') / of('P')],
  'lowering.raising-torque': (of) => [screw(of).raise],
  'lowering.lowering-torque': (of) => [screw(of).lower],
  '*.squeeze': (of) => {
    const [section, depth, t, u] = [of('CS'), of('h'), of('t'), of('u')]
    return [(section - t - depth - u) / (section - t), (section + t - depth + u) / (section + t)]
  },
  '*.stretch': (of) => [(of('dg') - of('ID')) / of('ID')],
  '*.lip-speed': (of) => [Math.PI * of('d') * of('n')],
  'curve.watch-head': (of) => [of('share') * of('H curve')],
  'curve.act-head': (of) => [of('share') * of('H curve')],
}

/** Pressure over the motor by its shaft power and speed. */
function drop(of: Inputs): number {
  const power = (of('ρ') * gravity * of('Qp') * of('H')) / of('ηp')
  return power / (of('D') * of('n') * of('ηm'))
}

/** How a value is recomputed: by its own id, else by the last word of it. */
export function calculationOf(id: string): ((of: Inputs) => readonly number[]) | undefined {
  if (id.startsWith('purge.least-')) return pocketCalculations['purge.lower-bound']
  return pocketCalculations[id] ?? pocketCalculations[`*.${id.slice(id.lastIndexOf('.') + 1)}`]
}

/** Order of bolts, by the printed rule: an even count is that of its half with the opposite bolt after each. */
export function orderOf(bolts: number): readonly number[] {
  if (bolts % 2 === 1) {
    const step = Math.max(1, (bolts - 1) / 2)
    return Array.from({length: bolts}, (_, index) => ((index * step) % bolts) + 1)
  }
  return orderOf(bolts / 2).flatMap((bolt) => [bolt, bolt + bolts / 2])
}
