import {describe, expect, test} from 'vitest'
import {balloonsOf} from '../../../src/figures/portable/labels.ts'
import {type Piece, paintPieces} from '../../../src/figures/portable/piece.ts'
import {undrawnArrangement} from '../../../src/figures/portable/portable-arrangement.ts'
import {
  misfitOf,
  type PortableGeometry,
  portableParts,
} from '../../../src/figures/portable/portable-geometry.ts'
import {arrangementPieces, arrangementViews} from '../../../src/figures/portable/views.ts'
import {boundsOf, box, isInside} from '../../../src/figures/section/shape.ts'
import {expectRoomForTexts} from '../room-for-texts.ts'
import {textsOf, viewOf} from '../svg-for-tests.ts'
import {arrangement, geometry, movedBy, outlinesOf} from './portable-for-tests.ts'

/** Pumps of other proportions: small and slim, large, and under a tripod that is low or high. */
const others: readonly (readonly [string, Partial<PortableGeometry>])[] = [
  ['as it is', {}],
  ['a shorter pump', {pumpLength: 880}],
  ['a longer pump', {pumpLength: 1250, motorHeight: 560}],
  ['a wider pump', {pumpDiameter: 420, hatchLeast: 520}],
  ['a low tripod', {headHeight: 2700}],
  ['a high tripod', {headHeight: 3900, footCircle: 3000}],
  ['a tight bend', {bendRadius: 450}],
  ['a wide hatch', {hatchLeast: 600, hatchMost: 900}],
]

describe('a larger outside of the pump', () => {
  test('moves at least six outlines of the larger view and of the pump in the tank', () => {
    const moved = movedBy({pumpDiameter: 380})
    expect(moved.filter((one) => one.startsWith('larger: ')).length).toBeGreaterThanOrEqual(6)
    expect(moved.filter((one) => one.startsWith('in tank: ')).length).toBeGreaterThanOrEqual(6)
    expect(moved).toEqual(
      expect.arrayContaining([
        'larger: casing, seen',
        'larger: casing floor and right wall',
        'larger: inner wall of the discharge pipe',
        'in tank: casing',
        'in tank: discharge flange',
        'rig: cargo hose',
      ]),
    )
  })

  test('leaves shaft, impeller and motor as they are', () => {
    const moved = movedBy({pumpDiameter: 380})
    for (const one of ['shaft', 'back shroud and hub', 'block of pistons', 'motor, seen'])
      expect(moved).not.toContain(`larger: ${one}`)
  })
})

test.each(lengths(geometry))('%s moves something', (length) => {
  expect(movedBy({[length]: geometry[length] * 1.03}).length).toBeGreaterThan(0)
})

test.each<[keyof PortableGeometry, string]>([
  ['impellerDiameter', 'larger: back shroud and hub'],
  ['impellerOutlet', 'larger: vane'],
  ['eyeDiameter', 'larger: front shroud'],
  ['strainerHeight', 'larger: strainer, seen'],
  ['motorHeight', 'larger: body'],
  ['motorDiameter', 'in tank: motor'],
  ['chamberHeight', 'larger: wall of the leak chamber'],
  ['hoseBore', 'larger: bore of the discharge pipe'],
  ['bendRadius', 'rig: troughs of the saddle'],
  ['headHeight', 'rig: left leg'],
  ['footCircle', 'rig: foot of the right leg'],
  ['hatchLeast', 'rig: coaming'],
  ['hatchMost', 'rig: left half of the split cover'],
  ['footDistance', 'rig: tank bottom'],
])('%s moves %s', (length, outline) => {
  expect(movedBy({[length]: geometry[length] * 1.03})).toContain(outline)
})

describe('what is drawn is true to its lengths', () => {
  const {inTank, rig, pump} = arrangementPieces(geometry)
  const all = boundsOf(inTank.flatMap(({areas}) => areas.flat()))

  test('the pump is as wide and as long as it is', () => {
    expect(all.right - all.left).toBeCloseTo(geometry.pumpDiameter, 6)
    expect(all.high - all.low).toBeCloseTo(geometry.pumpLength, 6)
  })

  test.each<[string, readonly Piece[], string, 'across' | 'up', number]>([
    ['the casing', inTank, 'casing', 'up', geometry.casingHeight],
    ['the motor', inTank, 'motor', 'across', geometry.motorDiameter],
    ['the flange', inTank, 'discharge flange', 'across', geometry.flangeDiameter],
    ['half of the impeller behind the shaft', pump, 'back shroud and hub', 'across', 116 - 20],
    ['the opening with its coaming', rig, 'coaming', 'across', geometry.hatchLeast + 48],
  ])('%s', (_, pieces, name, way, length) => {
    const bounds = boundsOf(pieces.find(({piece}) => piece === name)?.areas.flat() ?? [])
    expect(way === 'up' ? bounds.high - bounds.low : bounds.right - bounds.left).toBeCloseTo(length, 6)
  })

  test('the pump in the tank stands above the bottom by its distance, its eye below the chain', () => {
    const views = arrangementViews(geometry)
    const bottom = boundsOf(rig.find(({piece}) => piece === 'tank bottom')?.areas.flat() ?? []).high
    const foot = (views.rig.y - views.inTank.y) / views.rig.scale
    expect(foot - bottom).toBeCloseTo(geometry.footDistance, 6)
    const eye = boundsOf(inTank.find(({piece}) => piece === 'hole of the lifting eye')?.areas.flat() ?? [])
    expect(views.inTank.x + ((eye.left + eye.right) / 2) * views.inTank.scale).toBeCloseTo(views.rig.x, 6)
  })

  test('each piece has a name of its own', () => {
    const {length} = [...rig, ...inTank, ...pump]
    expect(outlinesOf(geometry).size).toBe(length)
  })
})

describe('the half that is cut and the half that is seen', () => {
  const {pump} = arrangementPieces(geometry)

  test('part at the axis of the shaft, and no edge is drawn along it', () => {
    for (const {piece, areas, seam, drawn} of pump) {
      if (piece.includes('lifting eye')) continue
      const {left, right} = boundsOf(areas.flat())
      expect(seam, piece).toBe(-geometry.shaftOffset)
      expect(piece.endsWith(', seen') ? right : -left, piece).toBeLessThanOrEqual(
        piece.endsWith(', seen') ? -geometry.shaftOffset : geometry.shaftOffset,
      )
      if (drawn === 'cut') expect(piece.endsWith(', seen')).toBe(false)
    }
  })

  test('an edge along the axis stays open', () => {
    const half: Piece = {part: 'motor', piece: 'half', drawn: 'whole', areas: [box(0, 0, 10, 20)], seam: 0}
    expect(paintPieces([half], {x: 0, y: 0, scale: 1})).toBe(
      '<path fill="#fff" d="M0 0h10v-20h-10z"/><path class="line" d="M0 0h10v-20h-10"/>',
    )
    expect(paintPieces([{...half, seam: 10}], {x: 0, y: 0, scale: 1})).toContain(
      'class="line" d="M0 0h10M10 -20h-10v20"',
    )
  })
})

describe('the numbers of the arrangement', () => {
  test.each(others)('stand apart, inside, clear of every text: %s', (_, changes) => {
    const figure = arrangement(changes)
    expectRoomForTexts(figure)
    const {width, height} = viewOf(figure.svg)
    const balloons = balloonsOf({...geometry, ...changes})
    const words = textsOf(figure.svg).filter(({text}) => !/^P\d+$/u.test(text))
    for (const [index, {at, part}] of balloons.entries()) {
      const [x, y] = at
      expect(Math.min(x, y, width - x, height - y), part).toBeGreaterThan(44)
      for (const other of balloons.slice(index + 1))
        expect(Math.hypot(x - other.at[0], y - other.at[1]), `${part} ${other.part}`).toBeGreaterThan(86)
      for (const {left, right, top, bottom, text} of words) {
        const away = Math.hypot(
          x - Math.min(Math.max(x, left), right),
          y - Math.min(Math.max(y, top), bottom),
        )
        expect(away, `${part} / ${text}`).toBeGreaterThan(42)
      }
    }
  })

  test.each(others)(
    'end their leaders in what they name, in the larger view and in the tank: %s',
    (_, changes) => {
      const one = {...geometry, ...changes}
      const pieces = arrangementPieces(one)
      const views = arrangementViews(one)
      for (const {part, anchor} of balloonsOf(one)) {
        const isHit = [
          {view: views.pump, of: pieces.pump},
          {view: views.rig, of: pieces.rig},
        ].some(({view, of}) =>
          of
            .filter((piece) => piece.part === part)
            .some(({areas, outside = 0, drawn}) => {
              const place = [(anchor[0] - view.x) / view.scale, (view.y - anchor[1]) / view.scale] as const
              const {left, right, low, high} = boundsOf(areas.flat())
              const room = Math.max(outside / 2, 25)
              return drawn === 'hose' || drawn === 'chain' || drawn === 'line'
                ? place[0] > left - room &&
                    place[0] < right + room &&
                    place[1] > low - room &&
                    place[1] < high + room
                : areas.some((area) => isInside(place, area)) || near(place, areas.flat())
            }),
        )
        expect(isHit, part).toBe(true)
      }
    },
  )

  test('are told from the pump up, each with its part', () => {
    const {alternative, data} = arrangement()
    const told = portableParts.map((part, index) => `P${index + 1} the ${part}`).join('; ')
    expect(alternative).toContain(told)
    expect(data).toBe(`${told}. Drawn from what is told.`)
  })
})

describe('lengths that cannot stand together', () => {
  test.each<[string, Partial<PortableGeometry>]>([
    ['heights', {pumpLength: 800}],
    ['casing', {impellerDiameter: 300}],
    ['pipe', {motorDiameter: 220}],
    ['pipe', {hoseBore: 116}],
  ])('%s are refused', (misfit, changes) => {
    expect(misfitOf({...geometry, ...changes})).toBe(misfit)
    expect(() => arrangement(changes)).toThrow(
      `Unexpected lengths of a pump (${misfit}), expected such as fit into each other`,
    )
  })

  test('others fit', () => {
    for (const [, changes] of others) expect(misfitOf({...geometry, ...changes})).toBeUndefined()
  })
})

test('where there is no drawing, words say why', () => {
  const figure = undrawnArrangement({
    reason:
      'Not drawn. NOT KNOWN: circle of the feet, outside of the motor, height of the leak chamber and bend.',
    parts: {strainer: {balloon: 'P1', title: 'strainer'}},
    lengths: 'Drawn from nothing.',
  })
  expectRoomForTexts(figure)
  expect(figure.svg.match(/<path/gu)).toHaveLength(1)
  expect(figure.alternative).toContain('NOT KNOWN: circle of the feet')
  expect(figure.data).toContain('NOT KNOWN: circle of the feet')
})

function near([x, z]: readonly [number, number], points: readonly (readonly [number, number])[]): boolean {
  return points.some((one) => Math.hypot(one[0] - x, one[1] - z) < 30)
}

function lengths(one: PortableGeometry): readonly (keyof PortableGeometry)[] {
  return Object.keys(one).flatMap((key) => (isLength(key) ? [key] : []))
}

function isLength(key: string): key is keyof PortableGeometry {
  return key in geometry
}
