import type {Inputs, PocketCalculation} from './pocket-calculation.ts'

/* Tightness test. */
const hidden = (of: Inputs): number => ((of('p test') + of('p atm')) / of('T')) * of('uT')
const hiddenLine = 'Δp T = (p test + p atm)/T·uT'
const shown = (of: Inputs): number => (of('V') * (of('gauge step') + hidden(of))) / of('p atm')

/* Bottle and pipes. */
const bottle = (of: Inputs): number =>
  (of('V bottle') * ((of('p full') + of('p ref')) / of('Z') - (of('p least') + of('p ref')))) / of('p ref')
const pressurePipe = (of: Inputs): number => (Math.PI / 4) * of('d') ** 2 * of('L')
const returnPipe = (of: Inputs): number => (Math.PI / 4) * (of('D') ** 2 - of('do') ** 2) * of('L')
const annulus = (of: Inputs): number => (Math.PI / 4) * (of('D') ** 2 - of('d') ** 2) * of('L')

const riserHeight = (of: Inputs): number => of('L') + of('h foot') + of('h top')

/** What differs from pump to pump, by the id of the value or by its last word. */
export const calculationsOfPumps: Readonly<Record<string, readonly PocketCalculation[]>> = {
  'cofferdam.volume': [
    {
      formula: ['V = π/4·(D² − d²)·L', 'V cofferdam = V + V head'],
      result: (of) => [annulus(of) + of('V head')],
      steps: {V: annulus},
    },
  ],
  'cofferdam.upper-bound': [
    {
      formula: ['p upper = min(p rating, p lip + p tank lowest, p regulator)'],
      result: (of) => [Math.min(of('p rating'), of('p lip') + of('p tank lowest'), of('p regulator'))],
    },
  ],
  'cofferdam.test-pressure': [
    {formula: ['p test = min(p house, p upper)'], result: (of) => [Math.min(of('p house'), of('p upper'))]},
  ],
  'cofferdam.hold-time': [
    {
      formula: [hiddenLine, 't = V·(gauge step + Δp T)/(p atm·q allowed), at least the house rule'],
      result: (of) => [Math.max(of('t least'), shown(of) / of('q allowed'))],
      steps: {'Δp T': hidden},
    },
  ],
  'cofferdam.smallest-leak': [
    {
      formula: [hiddenLine, 'q smallest = V·(gauge step + Δp T)/(p atm·t)'],
      result: (of) => [shown(of) / of('t')],
      steps: {'Δp T': hidden},
    },
  ],
  'cofferdam.allowed-drop': [
    {
      formula: ['Δp = q allowed·p atm·t/V'],
      result: (of) => [(of('q allowed') * of('p atm') * of('t')) / of('V')],
      steps: {'Δp T': hidden},
    },
  ],
  'cofferdam.pressure-per-kelvin': [
    {
      formula: ['p1 abs = p test + p atm', 'Δp per kelvin = p1 abs/T1'],
      result: (of) => [(of('p test') + of('p atm')) / of('T1')],
    },
  ],
  'purge.lower-bound': [
    {
      formula: ['p lower = ρ·g·L + margin'],
      result: (of) => [of('ρ') * of('g') * of('L') + of('margin')],
    },
  ],
  'purge.free-gas': [
    {
      formula: ['V free = n·V·(p + p ref)/p ref'],
      result: (of) => [(of('n') * of('V') * (of('p') + of('p ref'))) / of('p ref')],
    },
  ],
  'purge.time': [
    {
      formula: ['t = max(V free/q, t least)'],
      result: (of) => [Math.max(of('V free') / of('q'), of('t least'))],
    },
  ],
  'purge.per-bottle': [
    {
      formula: [
        'V free = V bottle·((p full + p ref)/Z − (p least + p ref))/p ref',
        'purges = V free/V purge, whole ones',
      ],
      result: (of) => [bottle(of) / of('V purge')],
      steps: {'V free': bottle},
    },
  ],
  '*.pressure': [
    {
      formula: ['Δp = ρ·g·h + p tank − p cofferdam'],
      result: (of) => [of('ρ') * of('g') * of('h') + of('p tank') - of('p cofferdam')],
    },
  ],
  'oil.volume': [
    {
      formula: [
        'V pressure = π/4·d²·L',
        'V return = π/4·(D² − do²)·L',
        'V = V pressure + V return + V motor + V valve',
      ],
      result: (of) => [pressurePipe(of) + returnPipe(of) + of('V motor') + of('V valve')],
      steps: {'V pressure': pressurePipe, 'V return': returnPipe},
    },
  ],
  'oil.least': [
    {formula: ['V least = V·(1 − tolerance)'], result: (of) => [of('V') * (1 - of('tolerance'))]},
  ],
  'oil.most': [{formula: ['V most = V·(1 + tolerance)'], result: (of) => [of('V') * (1 + of('tolerance'))]}],
  'oil.drums': [
    {
      formula: ['fills = V/V drum', 'drums = fills rounded up to a whole number'],
      result: (of) => [of('V') / of('V drum')],
    },
  ],
  'oil.flush-time': [{formula: ['t = n·V/Q'], result: (of) => [(of('n') * of('V')) / of('Q')]}],
  'oil.trapped-pressure': [{formula: ['Δp = K·α·ΔT'], result: (of) => [of('K') * of('α') * of('ΔT')]}],
  'stripping.ceiling': [{formula: ['V ceiling = V tier'], result: (of) => [of('V tier')]}],
  'stripping.gas-pressure': [
    {
      formula: ['H = L + h foot + h top', 'p = ρ·g·H + p back'],
      result: (of) => [of('ρ') * of('g') * riserHeight(of) + of('p back')],
      steps: {H: riserHeight},
    },
  ],
  'tank.ventilation-time': [
    {formula: ['t = N·V/(k·Q)'], result: (of) => [(of('N') * of('V')) / (of('k') * of('Q'))]},
  ],
}
