import {describe, expect, test} from 'vitest'
import {
  bar,
  cubicCentimetresPerRevolution,
  degrees,
  kilograms,
  litres,
  litresPerMinute,
  metres,
  millimetres,
  percent,
  revolutionsPerMinute,
} from '../../src/quantities/named-units.ts'
import {english, to} from '../compile/data-for-tests.ts'
import {vesselA} from '../compile/vessel-for-tests.ts'
import {atLine, type Changes, computed, figureOf, notKnown, stated, valueIn} from './content-for-tests.ts'

const place = atLine(60)
const millimetre = (value: number): ReturnType<typeof stated<'length'>> =>
  stated(millimetres(value), String(value), 'mm')

const whole: Changes = {
  design: {
    masses: [{id: 'unit', title: english('unit'), value: stated(kilograms(186), '186', 'kg'), place}],
    lifts: [
      {
        id: 'unit-lift',
        title: english('lift of the unit'),
        mass: to('unit'),
        legs: 2,
        angle: stated(degrees(30), '30', '°'),
        place,
      },
      {
        id: 'straight',
        title: english('straight lift'),
        mass: to('unit'),
        legs: 1,
        angle: stated(degrees(0), '0', '°'),
        place,
      },
    ],
    lowering: {
      mass: to('unit'),
      thread: to('M12'),
      lubrication: to('friction-0.1'),
      washerOutside: millimetre(24),
      washerInside: millimetre(13),
      travel: millimetre(400),
      place,
    },
    seals: [
      {
        id: 'cargo-seal',
        title: english('cargo seal'),
        part: to('ring'),
        runningDiameter: millimetre(100),
        seatDepth: millimetre(24),
        between: 'cargo-cofferdam',
        lips: [
          {id: 'wet', title: english('wet lip'), faces: 'cargo', place},
          {id: 'dry', title: english('dry lip'), faces: 'cofferdam', place},
        ],
        place,
      },
    ],
    oRings: [
      {
        id: 'sleeve-ring',
        title: english('ring of the sleeve'),
        part: to('ring'),
        section: millimetre(3.53),
        sectionTolerance: millimetre(0.1),
        insideDiameter: millimetre(24.99),
        grooveDiameter: millimetre(25.7),
        grooveDepth: millimetre(2.9),
        depthTolerance: millimetre(0.05),
        place,
      },
    ],
    oil: {
      pressurePipeBore: millimetre(50),
      pressurePipeOutside: millimetre(60),
      returnPipeBore: millimetre(100),
      motorCasing: stated(litres(4), '4', 'l'),
      controlValve: stated(litres(1), '1', 'l'),
      place,
    },
    motor: {
      displacement: stated(cubicCentimetresPerRevolution(160), '160', 'cm³/rev'),
      volumetricEfficiency: stated(percent(95), '95', '%'),
      mechanicalEfficiency: stated(percent(92), '92', '%'),
      place,
    },
    curve: {
      speed: stated(revolutionsPerMinute(2400), '2400', 'rpm'),
      shutOffHead: stated(metres(148), '148', 'm'),
      flow: stated(litresPerMinute(5000), '300', 'm³/h'),
      head: stated(metres(120), '120', 'm'),
      efficiency: stated(percent(70), '70', '%'),
      place,
    },
  },
}

const {values, said} = computed(whole)
const pump = vesselA.positions[1]
const tank = vesselA.tanks[1]
const si = (datum: {readonly kind: string; readonly quantity?: {readonly si: number}} | undefined): number =>
  datum?.quantity?.si ?? Number.NaN
const length = si(pump?.stackLength)
const g = 9.80665

describe('values of a whole pump', () => {
  test('raise no message', () => {
    expect(said).toBe('')
  })

  /** Each figure worked out here by the textbook formula, apart from the library. */
  test.each<[string, string]>([
    ['unit-lift.leg-load', `${Math.round(186 / (2 * Math.cos(Math.PI / 6)))} kg`],
    ['unit-lift.rated-load', `${Math.ceil(186 * 1.25)} kg`],
    ['straight.leg-load', '186 kg'],
    ['lowering.bolt-load', `${((186 * g) / 1000).toFixed(2)} kN`],
    ['lowering.turns', `${Math.round(400 / 1.75)}`],
    ['cargo-seal.lip-speed', `${((Math.PI * 0.1 * 2400) / 60).toFixed(1)} m/s`],
    ['cargo-seal.lips', 'wet lip faces the cargo; dry lip faces the cofferdam'],
    [
      'cargo-seal.pressure',
      `${((840 * g * si(tank?.height) + si(tank?.pressureValveSetting)) / 1e5).toFixed(2)} bar`,
    ],
    ['sleeve-ring.size', '24.99 × 3.53 mm'],
    ['sleeve-ring.stretch', `${(((25.7 - 24.99) / 24.99) * 100).toFixed(1)} %`],
    [
      'sleeve-ring.squeeze',
      `${(((3.43 - 2.95) / 3.43) * 100).toFixed(1)} to ${(((3.63 - 2.85) / 3.63) * 100).toFixed(1)} %`,
    ],
    ['hydraulics.oil', 'oil'],
    ['oil.volume', `${Math.round(oilLitres())} l`],
    ['oil.least', `${Math.ceil(oilLitres() * 0.9)} l`],
    ['oil.most', `${Math.floor(oilLitres() * 1.1)} l`],
    ['oil.drums', `${Math.ceil(oilLitres() / 200)}`],
    ['oil.flush-time', `${Math.ceil((10 * oilLitres()) / 40)} min`],
    ['oil.trapped-pressure', '10.5 bar'],
    ['curve.watch-head', '140.6 m'],
    ['curve.act-head', '133.2 m'],
    ['motor.oil-flow', `${Math.round((0.16 * 2400) / 0.95)} l/min`],
    ['motor.torque', `${Math.round(shaftPower() / ((2 * Math.PI * 2400) / 60))} N·m`],
    ['motor.pressure-difference', `${Math.round(shaftPower() / (160e-6 * 40 * 0.92) / 1e5)} bar`],
    ['purge.lower-bound', `${(Math.ceil((840 * g * length) / 1e3 + 50) / 100).toFixed(2)} bar(g)`],
    ['tank.ventilation-time', `${(Math.ceil((20 * si(tank?.volume) * 10) / 6000) / 10).toFixed(1)} h`],
  ])('%s is %s', (id, figure) => {
    expect(figureOf(values, id)).toBe(figure)
  })

  test('the free gas of a purge, its time and the purges from a bottle follow from volume and upper bound', () => {
    const volume = figureIn('cofferdam.volume')
    const absolute = (figureIn('cofferdam.upper-bound') * 1e5 + 101_325) / 101_325
    const free = 5 * volume * absolute
    expect(Math.abs(figureIn('purge.free-gas') - free)).toBeLessThanOrEqual(1 + free * 1e-3)
    expect(figureIn('purge.time')).toBe(Math.max(5, Math.ceil(figureIn('purge.free-gas') / 60)))
    const bottle = (50 * ((150e5 + 101_325) / 1.05 - absolute * 101_325)) / 101_325
    expect(figureIn('purge.per-bottle')).toBe(Math.floor(bottle / figureIn('purge.free-gas')))
  })

  test('the nut needs more torque to raise than to lower, by the pitch alone', () => {
    const raising = figureIn('lowering.raising-torque')
    const lowering = figureIn('lowering.lowering-torque')
    const byPitch = (186 * g * 0.00175) / (2 * Math.PI)
    expect(Math.abs(raising - lowering - 2 * byPitch)).toBeLessThanOrEqual(1.1)
  })

  test('each names its inputs, and earlier values by their id', () => {
    const inputs = valueIn(values, 'purge.free-gas').calculation?.inputs.map((one) => one.origin) ?? []
    expect(inputs).toContain('computed: cofferdam.volume')
    expect(inputs).toContain('computed: cofferdam.upper-bound')
  })
})

describe('a gap or an impossible value', () => {
  test('leaves the load of a lift not known where nobody weighed it', () => {
    const mass = {id: 'unit', title: english('unit'), value: notKnown('never weighed', 61), place}
    const gap = computed({design: {...whole.design, masses: [mass]}})
    expect(valueIn(gap.values, 'unit-lift.leg-load').result).toEqual({
      kind: 'not-known',
      missing: ['mass, lift of the unit of Design A (never weighed)'],
    })
    expect(valueIn(gap.values, 'lowering.bolt-load').result.kind).toBe('not-known')
    expect(figureOf(gap.values, 'curve.act-head')).toBe('133.2 m')
  })

  test('that a calculation refuses is told at the line of its first input and stops the build', () => {
    const oil = whole.design?.oil
    if (!oil) throw new Error('Unexpected design without oil spaces, expected them')
    const thick = {...oil, pressurePipeOutside: millimetre(120)}
    const wrong = computed({design: {...whole.design, oil: thick}})
    expect(wrong.said).toContain('error Unexpected')
    expect(wrong.said).toContain('to compute `oil.volume` of 4S no-impossible-value')
    expect(valueIn(wrong.values, 'oil.volume').result.kind).toBe('not-known')
  })

  test('of a stiffer oil traps more pressure', () => {
    const supplies = {...vesselA.supplies, oilBulkModulus: stated(bar(20_000), '20000', 'bar')}
    expect(figureOf(computed({...whole, vessel: {supplies}}).values, 'oil.trapped-pressure')).toBe('14.0 bar')
  })
})

function oilLitres(): number {
  const area = (diameter: number): number => (Math.PI / 4) * diameter ** 2
  return (area(0.05) + area(0.1) - area(0.06)) * length * 1000 + 5
}

function shaftPower(): number {
  return (1000 * g * (300 / 3600) * 120) / 0.7
}

function figureIn(id: string): number {
  return Number.parseFloat(figureOf(values, id))
}
