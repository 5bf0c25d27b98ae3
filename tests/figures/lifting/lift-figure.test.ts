import {describe, expect, test} from 'vitest'
import {liftWordsEn} from '../../../src/compile/lifting-words-en.ts'
import type {Figure} from '../../../src/figures/figure.ts'
import {type DrawnLift, liftFigure} from '../../../src/figures/lifting/lift-figure.ts'
import {
  casingShape,
  coverShape,
  type DrawnLength,
  impellerShape,
  type LoadShape,
  portableShape,
  pumpUnitShape,
} from '../../../src/figures/lifting/load-shapes.ts'
import {motorShape, stackShape} from '../../../src/figures/lifting/motor-shapes.ts'
import {expectRoomForTexts} from '../room-for-texts.ts'
import {cornersOf, drawingOf, expectInside, pathsOf} from './room-of-drawing.ts'

const length = (title: string, mm: number): DrawnLength => ({title, mm, text: `${mm} mm`})

const unit = {
  casing: length('casing', 640),
  height: length('height of the unit', 410),
  flange: length('motor flange', 420),
  eye: length('eye', 196),
  spigotBore: length('spigot', 150),
  spigotOffset: length('axis of the spigot', 300),
}
const motor = {
  diameter: length('motor', 250),
  height: length('height of the motor', 420),
  flange: length('motor flange', 420),
  hub: length('hub', 92),
  reach: length('shaft flange below the motor', 78),
}
const portable = {diameter: length('pump', 360), length: length('length of the pump', 950)}

const shapes: Readonly<Record<string, LoadShape | undefined>> = {
  'pump unit': pumpUnitShape(unit),
  'suction cover': coverShape({register: length('groove', 435), eye: unit.eye}),
  impeller: impellerShape({
    diameter: length('impeller', 386),
    outlet: length('outlet', 24),
    eye: unit.eye,
    hub: motor.hub,
    sleeve: length('sleeve', 100),
  }),
  casing: casingShape(unit),
  motor: motorShape(motor, 2),
  'motor at one lug': motorShape(motor, 1),
  'last section': stackShape({...motor, pipe: length('pipe', 168.3)}, false),
  stack: stackShape({...motor, pipe: length('pipe', 168.3)}, true),
  'portable pump': portableShape(portable, undefined),
  'hanging pump': portableShape(portable, length('hose', 100)),
  box: undefined,
}

const lift: DrawnLift = {
  title: 'lift of the pump unit',
  load: 'pump unit, complete and drained',
  mass: '186 kg',
  legs: 2,
  angle: {degrees: 30, text: '30 °'},
  legLoad: '107 kg',
  legCondition: '2 of 2 legs count, as a mass',
  ratedLoad: '233 kg',
  gear: 'hoist, shackles, each leg and each lifting eye',
  shape: pumpUnitShape(unit),
}

function drawn(change: Partial<DrawnLift> = {}): Figure {
  return liftFigure({...lift, ...change}, liftWordsEn)
}

const at = (degrees: number): DrawnLift['angle'] => ({degrees, text: `${degrees} °`})

/** Angles of the drawn legs from the vertical, as the path of the legs has them; the hook is a path of its own. */
function anglesOf({svg}: Figure): readonly number[] {
  const legs = pathsOf(svg, 'bold').find((path) => !path.includes('c')) ?? ''
  const corners = cornersOf(legs)
  return corners.flatMap(([x, y], index) => {
    const end = corners[index + 1]
    return index % 2 === 0 && end
      ? [Math.round((Math.atan2(Math.abs(end[0] - x), Math.abs(end[1] - y)) * 1800) / Math.PI) / 10]
      : []
  })
}

describe('legs', () => {
  test.each([10, 20, 30, 45, 60])('stand at %d degrees where the data say so', (degrees) => {
    for (const shape of Object.values(shapes)) {
      if (shape?.eye.reach === 0) continue
      for (const found of anglesOf(drawn({angle: at(degrees), shape})))
        expect(Math.abs(found - degrees)).toBeLessThan(0.3)
    }
    expect(anglesOf(drawn({angle: at(degrees)}))).toHaveLength(2)
  })

  test.each([0, 5, 9])('of %d degrees are broken off below a hook that is not drawn', (degrees) => {
    const figure = drawn({angle: at(degrees)})
    for (const found of anglesOf(figure)) expect(Math.abs(found - degrees)).toBeLessThan(0.3)
    expect(figure.svg).toContain('the hook is above the drawing')
    expect(figure.svg).not.toContain('<ellipse')
    expect(drawn().svg).toContain('<ellipse')
  })

  test('meet in one place at the hook and end in eyes at one height', () => {
    const corners = cornersOf(pathsOf(drawn().svg, 'bold').at(-1) ?? '')
    expect(corners[0]).toEqual(corners[2])
    expect(corners[1]?.[1]).toBe(corners[3]?.[1])
    const eyes = [...drawn().svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="11"/gu)]
    expect(eyes.map(([, x, y]) => [Number(x), Number(y)])).toEqual([corners[1], corners[3]])
  })

  test('a single one hangs straight, without an angle', () => {
    const one = drawn({legs: 1, angle: at(0), legCondition: 'one leg, as a mass', shape: shapes['impeller']})
    expect(pathsOf(one.svg, 'bold').at(-1)).toMatch(/^M340 [\d.]+L340 [\d.]+$/u)
    expect(one.data).toContain('one leg, straight down; load of one leg 107 kg (one leg, as a mass)')
    expect(one.svg).not.toContain('°')
  })

  test.each([
    [3, 1],
    [4, 2],
  ])('%d of them show how many count, one at its true angle and all from above', (legs, inPlane) => {
    const figure = drawn({legs, legCondition: `2 of ${legs} legs count, as a mass`})
    const found = anglesOf(figure)
    expect(found.filter((one) => Math.abs(one - 30) < 0.3).length).toBeGreaterThanOrEqual(inPlane)
    for (const text of [figure.svg, figure.data, figure.alternative])
      expect(text).toContain(`2 of ${legs} legs count`)
    expect(figure.data).toContain(`${legs} legs, 30 ° from the vertical`)
    expect(pathsOf(figure.svg, 'bold').at(-1)?.match(/L/gu)).toHaveLength(legs)
    expect(figure.svg).toContain('from above:')
    expect(drawn().svg).not.toContain('from above:')
  })

  test('whose angle nobody knows are not drawn', () => {
    const figure = drawn({angle: undefined, legLoad: undefined, legCondition: ''})
    expect(pathsOf(figure.svg, 'bold')).toHaveLength(1)
    expect(figure.svg).toContain('>angle NOT KNOWN<')
    expect(figure.data).toContain('2 legs, angle NOT KNOWN; load of one leg NOT KNOWN;')
  })
})

describe('what hangs', () => {
  test('is told with its figures, in the drawing, the alternative and the data', () => {
    const told =
      'lift of the pump unit: pump unit, complete and drained, mass 186 kg; 2 legs, 30 ° from the vertical; load of one leg 107 kg (2 of 2 legs count, as a mass); rated load of hoist, shackles, each leg and each lifting eye at least 233 kg. Drawn by: casing 640 mm; height of the unit 410 mm; motor flange 420 mm; eye 196 mm; spigot 150 mm; axis of the spigot 300 mm. What has no dimension here is not to scale.'
    expect(drawn().data).toBe(told)
    expect(drawn().alternative).toBe(`${liftWordsEn.view} ${told}`)
    for (const text of ['mass 186 kg', '107 kg', 'at least 233 kg', '30 °', '640 mm', '410 mm'])
      expect(drawn().svg).toContain(`>${text}<`)
  })

  test.each([
    ['mass', {mass: '190 kg'}],
    ['load of a leg', {legLoad: '110 kg'}],
    ['rated load', {ratedLoad: '240 kg'}],
    ['load', {load: 'another one'}],
  ])('another %s is another figure and another text', (_, change) => {
    const [before, after] = [drawn(), drawn(change)]
    expect(after.data).not.toBe(before.data)
    expect(after.alternative).not.toBe(before.alternative)
    expect(after.svg).not.toBe(before.svg)
  })

  test('another angle moves the drawing and its text', () => {
    const after = drawn({angle: at(45)})
    expect(drawingOf(after.svg)).not.toBe(drawingOf(drawn().svg))
    expect(after.svg).toContain('>45 °<')
    expect(after.data).toContain('2 legs, 45 ° from the vertical')
  })

  test.each(Object.keys(unit))('%s moves the outline and its text', (name) => {
    const other = pumpUnitShape({...unit, [name]: length('changed', 123)})
    const after = drawn({shape: other})
    expect(drawingOf(after.svg)).not.toBe(drawingOf(drawn().svg))
    expect(after.data).toContain('changed 123 mm')
  })

  test('tells a length that a value prints in the alternative alone', () => {
    const shape = pumpUnitShape({...unit, casing: {...unit.casing, value: 'geometry.casing'}})
    expect(drawn({shape}).data).toContain('Drawn by: height of the unit 410 mm; motor flange')
    expect(drawn({shape}).alternative).toContain('Drawn by: casing 640 mm; height of the unit 410 mm;')
  })

  test.each([420, 300])('is drawn to the scale of its own lengths, its eyes on a flange of %d mm', (mm) => {
    const {svg} = drawn({shape: pumpUnitShape({...unit, flange: length('motor flange', mm)})})
    const [, from, across] = [...svg.matchAll(/<path d="M([\d.]+) [\d.]+h([\d.]+)v/gu)].at(-1) ?? []
    const dimension = /M([\d.]+) ([\d.]+)V[\d.]+M([\d.]+) \2V/u.exec(svg) ?? []
    const casing = Number(dimension[3]) - Number(dimension[1])
    expect(Number(across) / casing).toBeCloseTo(mm / 640, 2)
    const eyes = [...svg.matchAll(/<circle cx="([\d.]+)" cy="[\d.]+" r="11"/gu)].map(([, x]) => Number(x))
    expect(eyes).toHaveLength(2)
    for (const eye of eyes) {
      expect(eye).toBeGreaterThan(Number(from))
      expect(eye).toBeLessThan(Number(from) + Number(across))
    }
  })

  test('is a plain box with words where the lengths are not stated', () => {
    const box = drawn({shape: undefined})
    expect(box.svg).toContain('>Outline not to scale<')
    expect(box.data).toContain('at least 233 kg. Outline not to scale.')
    expect(box.svg).not.toContain(' mm<')
    expect([...box.svg.matchAll(/<path d=/gu)]).toHaveLength(1)
  })

  test('is not drawn while nobody knows its mass', () => {
    const figure = drawn({mass: undefined, legLoad: undefined, legCondition: '', ratedLoad: undefined})
    expect(figure.svg).not.toContain('<path d=')
    expect(figure.svg).toContain('>mass NOT KNOWN<')
    expect(figure.data).toBe(
      'lift of the pump unit: pump unit, complete and drained, mass NOT KNOWN; 2 legs, 30 ° from the vertical; load of one leg NOT KNOWN; rated load of hoist, shackles, each leg and each lifting eye NOT KNOWN. Nothing is lifted before its mass is known.',
    )
    expectRoomForTexts(figure)
  })

  test('a hose that hangs beside is broken off with its chain', () => {
    const [plain, hanging] = [shapes['portable pump'], shapes['hanging pump']].map((shape) =>
      drawn({legs: 1, angle: at(0), shape}),
    )
    expect(hanging?.data).toContain('hose 100 mm')
    expect(pathsOf(plain?.svg ?? '', 'bold').at(-1)).not.toMatch(/V.*M/u)
    expect(pathsOf(hanging?.svg ?? '', 'bold').at(-1)).toMatch(/^M340 [\d.]+V[\d.]+M340 [\d.]+V/u)
  })
})

describe('every shape', () => {
  const cases = Object.entries(shapes).flatMap(([name, shape]) =>
    [1, 2, 3, 4].flatMap((legs) => {
      if (legs > 1 && shape?.eye.reach === 0) return []
      return (legs === 1 ? [0] : [0, 5, 10, 30, 45, 60]).map((degrees) => ({name, shape, legs, degrees}))
    }),
  )

  test.each(cases)(
    '$name on $legs legs at $degrees degrees has room for its texts and stays small',
    (one) => {
      const figure = drawn({
        shape: one.shape,
        legs: one.legs,
        angle: at(one.degrees),
        legCondition: `2 of ${one.legs} legs count, as a mass`,
      })
      const {svg} = figure
      expectRoomForTexts(figure)
      expectInside(svg)
      expect(figure.height).toBeLessThan(one.legs > 2 ? 1100 : 900)
      expect(svg).not.toMatch(/NaN|undefined|Infinity/u)
      expect(svg.length).toBeLessThan(5000)
    },
  )

  test('texts of an author are escaped', () => {
    expect(drawn({load: 'pump & <hose>'}).svg).toContain('pump &amp; &lt;hose&gt;')
  })
})
