import type {Inputs, PocketCalculation} from './pocket-calculation.ts'

const cos30 = Math.cos(Math.PI / 6)
const height = (of: Inputs): number => (of('P') * Math.sqrt(3)) / 2

/* Tightening torque. */
const pitchDiameter = (of: Inputs): number => of('d') - (3 / 4) * height(of)
const stressDiameter = (of: Inputs): number => {
  const minor = of('d') - (5 / 4) * height(of)
  const core = minor - height(of) / 6
  return (pitchDiameter(of) + core) / 2
}
const stressArea = (of: Inputs): number => (Math.PI / 4) * stressDiameter(of) ** 2
const wedge = (of: Inputs): number =>
  Math.tan(Math.atan(of('P') / (Math.PI * pitchDiameter(of))) + Math.atan(of('µG') / cos30))
const preload = (of: Inputs): number =>
  (stressArea(of) * of('ν') * of('Rp0.2')) /
  Math.sqrt(1 + 3 * ((3 / 2) * (pitchDiameter(of) / stressDiameter(of)) * wedge(of)) ** 2)
const headDiameter = (of: Inputs): number => (of('dw') + of('dh')) / 2
const tightening = (of: Inputs): number =>
  preload(of) * ((pitchDiameter(of) / 2) * wedge(of) + (of('µK') * headDiameter(of)) / 2)

/* Lowering bolts. */
const load = (of: Inputs): number => of('m') * of('g')
const screwDiameter = (of: Inputs): number => of('dn') - (3 / 4) * height(of)
const collarDiameter = (of: Inputs): number => (of('D') + of('d')) / 2
const collar = (of: Inputs): number => (load(of) * of('µc') * collarDiameter(of)) / 2
const loweringSteps = {F: load, d2: screwDiameter, dc: collarDiameter}
const loweringLines = ['F = m·g', 'H = P·√3/2', 'd2 = dn − 3/4·H', 'dc = (D + d)/2']

/* Motor. */
const shaftPower = (of: Inputs): number => (of('ρ') * of('g') * of('Qp') * of('H')) / of('ηp')
const drop = (of: Inputs): number => shaftPower(of) / (of('D') * of('n') * of('ηm'))
const motorSteps = {P: shaftPower, Δp: drop}
const pressureLines = ['P = ρ·g·Qp·H/ηp', 'Δp = P/(D·n·ηm)']

/* Sling: of three or four legs two count, as the words above the formula say. */
const legsThatCount = (of: Inputs): number => Math.min(of('legs'), 2)
const tension = (of: Inputs): number => (of('m') * of('g')) / (legsThatCount(of) * Math.cos(of('β')))

/* Wear ring: a clearance that is stated on the radius is doubled. */
const renewalLine = 'c renewal = min(c design, c house)'
const houseLine = 'c house = 2·c house radial'
const designLine = 'c design = 2·c design radial'
const houseDoubled = (of: Inputs): number => 2 * of('c house radial')
const designDoubled = (of: Inputs): number => 2 * of('c design radial')

const headShare: PocketCalculation = {
  formula: ['H least = share·H curve'],
  result: (of) => [of('share') * of('H curve')],
}

/** What the pumps of a design share, by the id of the value or by its last word; several where the lines differ with what is given. */
export const calculationsOfDesigns: Readonly<Record<string, readonly PocketCalculation[]>> = {
  '*.torque': [
    {
      formula: [
        'H = P·√3/2',
        'd2 = d − 3/4·H',
        'd1 = d − 5/4·H',
        'd3 = d1 − H/6',
        'd0 = (d2 + d3)/2',
        'As = π/4·d0²',
        'tan φ = P/(π·d2)',
        'ρ′ = atan(µG/cos 30°)',
        'FM = As·ν·Rp0.2/√(1 + 3·[3/2·(d2/d0)·tan(φ + ρ′)]²)',
        'DKm = (dw + dh)/2',
        'MA = FM·[d2/2·tan(φ + ρ′) + µK·DKm/2]',
      ],
      result: (of) => [tightening(of)],
      steps: {
        d2: pitchDiameter,
        d0: stressDiameter,
        As: stressArea,
        'tan(φ + ρ′)': wedge,
        FM: preload,
        DKm: headDiameter,
        MA: tightening,
      },
    },
  ],
  '*.preload': [
    {
      formula: ['FM = As·ν·Rp0.2/√(1 + 3·[3/2·(d2/d0)·tan(φ + ρ′)]²)'],
      result: (of) => [
        (of('As') * of('ν') * of('Rp0.2')) /
          Math.sqrt(1 + 3 * ((3 / 2) * (of('d2') / of('d0')) * of('tan(φ + ρ′)')) ** 2),
      ],
    },
  ],
  '*.passes': [
    {
      formula: ['M of a pass = share · MA'],
      result: (of) => ['share 1', 'share 2', 'share 3'].map((share) => of(share) * of('MA')),
    },
  ],
  '*.order': [
    {
      formula: [
        'the order is that of n/2 with n/2 added after each',
        'even n: k, then k + n/2; where four divides n: k, k + n/2, k + n/4, k + 3·n/4',
        'odd n: step (n − 1)/2 around the circle',
      ],
      result: (of) => orderOf(of('n')),
    },
  ],
  '*.renewal': [
    {formula: [renewalLine], result: (of) => [Math.min(of('c design'), of('c house'))]},
    {
      formula: [houseLine, renewalLine],
      result: (of) => [Math.min(of('c design'), houseDoubled(of))],
      steps: {'c house': houseDoubled},
    },
    {
      formula: [designLine, renewalLine],
      result: (of) => [Math.min(designDoubled(of), of('c house'))],
      steps: {'c design': designDoubled},
    },
    {
      formula: [designLine, houseLine, renewalLine],
      result: (of) => [Math.min(designDoubled(of), houseDoubled(of))],
      steps: {'c design': designDoubled, 'c house': houseDoubled},
    },
  ],
  'motor.oil-flow': [
    {formula: ['Q = D·n/ηv'], result: (of) => [(of('D') * of('n')) / of('ηv')], steps: motorSteps},
  ],
  'motor.torque': [
    {
      formula: [...pressureLines, 'T = D·Δp·ηm/(2π)'],
      result: (of) => [(of('D') * drop(of) * of('ηm')) / (2 * Math.PI)],
      steps: motorSteps,
    },
  ],
  'motor.pressure-difference': [{formula: pressureLines, result: (of) => [drop(of)], steps: motorSteps}],
  'curve.watch-head': [headShare],
  'curve.act-head': [headShare],
  '*.leg-load': [
    {
      formula: ['W = m·g', 'T = W/(n·cos β)', 'm leg = T/g'],
      result: (of) => [tension(of) / of('g')],
      steps: {n: legsThatCount, T: tension},
    },
  ],
  '*.rated-load': [
    {
      formula: ['SWL required = r·max(m, m leg)'],
      result: (of) => [of('r') * Math.max(of('m'), of('m leg'))],
    },
  ],
  'lowering.bolt-load': [{formula: ['F = m·g'], result: (of) => [load(of)], steps: loweringSteps}],
  'lowering.turns': [{formula: ['z = s/P'], result: (of) => [of('s') / of('P')], steps: loweringSteps}],
  'lowering.raising-torque': [
    {
      formula: [...loweringLines, 'TR = F·d2/2·(P + π·µ·d2/cos 30°)/(π·d2 − µ·P/cos 30°) + F·µc·dc/2'],
      result: (of) => {
        const [pitch, d2, friction] = [of('P'), screwDiameter(of), of('µ') / cos30]
        const thread = (pitch + Math.PI * friction * d2) / (Math.PI * d2 - friction * pitch)
        return [((load(of) * d2) / 2) * thread + collar(of)]
      },
      steps: loweringSteps,
    },
  ],
  'lowering.lowering-torque': [
    {
      formula: [...loweringLines, 'TL = F·d2/2·(π·µ·d2/cos 30° − P)/(π·d2 + µ·P/cos 30°) + F·µc·dc/2'],
      result: (of) => {
        const [pitch, d2, friction] = [of('P'), screwDiameter(of), of('µ') / cos30]
        const thread = (Math.PI * friction * d2 - pitch) / (Math.PI * d2 + friction * pitch)
        return [((load(of) * d2) / 2) * thread + collar(of)]
      },
      steps: loweringSteps,
    },
  ],
  '*.squeeze': [
    {
      formula: [
        'squeeze = (CS − h)/CS',
        'least = (CS − t − h − u)/(CS − t), greatest = (CS + t − h + u)/(CS + t)',
      ],
      result: (of) => {
        const [section, depth, t, u] = [of('CS'), of('h'), of('t'), of('u')]
        return [(section - t - depth - u) / (section - t), (section + t - depth + u) / (section + t)]
      },
    },
  ],
  '*.stretch': [{formula: ['stretch = (dg − ID)/ID'], result: (of) => [(of('dg') - of('ID')) / of('ID')]}],
  '*.lip-speed': [{formula: ['v = π·d·n'], result: (of) => [Math.PI * of('d') * of('n')]}],
}

/** Order of bolts, by the printed rule: an even count is that of its half with the opposite bolt after each. */
function orderOf(bolts: number): readonly number[] {
  if (bolts % 2 === 1) {
    const step = Math.max(1, (bolts - 1) / 2)
    return Array.from({length: bolts}, (_, index) => ((index * step) % bolts) + 1)
  }
  return orderOf(bolts / 2).flatMap((bolt) => [bolt, bolt + bolts / 2])
}
