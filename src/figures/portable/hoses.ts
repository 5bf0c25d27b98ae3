import {box, type Point} from '../section/shape.ts'
import {line, type Piece, whole} from './piece.ts'
import {type PortableGeometry, placesOf} from './portable-geometry.ts'
import {rigPlaces} from './rig-places.ts'

/** Saddle low between two legs: a trough for the cargo hose and one for the oil hoses, held by struts. */
export function saddle(g: PortableGeometry): readonly Piece[] {
  const at = rigPlaces(g)
  const [x, z] = at.saddle
  const inner = g.bendRadius - g.hoseOutside / 2
  const outer = x - Math.max(...at.oil.map(({up, outside}) => up + outside / 2)) - 8
  const strut = (angle: number, from: number): readonly Point[] => [
    round(x, z, from, angle),
    round(x, z, outer - 30, angle),
  ]
  const onLeg = (foot: number): number => 70 + (foot - 70) * (1 - z / g.headHeight)
  return [
    line('surroundings', 'bar of the saddle', 'line', [
      [onLeg(at.right * 0.22), z],
      [onLeg(at.right), z],
      [x, z],
    ]),
    {
      part: 'surroundings',
      piece: 'struts of the saddle',
      drawn: 'line',
      areas: [25, 65, 115, 155].map((angle) => strut(angle, 0)),
    },
    {
      part: 'surroundings',
      piece: 'troughs of the saddle',
      drawn: 'thin',
      areas: [inner, outer].map((radius) => [
        ...arc(x, z, radius, 165, 15),
        ...arc(x, z, radius - 30, 15, 165),
      ]),
    },
  ]
}

/** Hoses from the pump up, over the saddle and down to the deck. */
export function hosesUp(g: PortableGeometry): readonly Piece[] {
  const at = rigPlaces(g)
  const [x, z] = at.saddle
  const pump = placesOf(g)
  const bend = g.bendRadius
  const low = at.foot
  return [
    ...at.oil.map(
      ({up, down, outside}, index): Piece => ({
        part: 'oil-hoses',
        piece: `${index === 0 ? 'return' : 'pressure'} hose at the pump`,
        drawn: 'hose',
        outside,
        areas: [
          [
            [up, low + pump.flangeHigh],
            ...arc(x, z, x - up, 180, 0),
            ...arc(down + bend, bend + 45 + index * 60, bend, 180, 270),
            [deckEnd, 45 + index * 60],
          ],
        ],
      }),
    ),
    {
      part: 'cargo-hose',
      piece: 'cargo hose',
      drawn: 'hose',
      outside: g.hoseOutside,
      areas: [
        [
          [at.cargo.up, low + pump.flangeHigh + 40],
          ...arc(x, z, bend, 180, 0),
          ...arc(at.cargo.down + bend, bend + g.hoseOutside / 2 + 10, bend, 180, 270),
          [at.cargo.down + bend + 130, g.hoseOutside / 2 + 10],
        ],
      ],
    },
    whole(
      'cargo-hose',
      'flange of the cargo hose at the pump',
      box(
        at.cargo.up - g.flangeDiameter / 2,
        low + pump.flangeHigh,
        at.cargo.up + g.flangeDiameter / 2,
        low + pump.flangeHigh + 26,
      ),
    ),
  ]
}

/** How far to the right the oil hoses are drawn on deck before their break. */
export const deckEnd = 3820

/** A place on a circle, its angle in degrees from the right upwards. */
function round(x: number, z: number, radius: number, angle: number): Point {
  const turn = (angle * Math.PI) / 180
  return [x + radius * Math.cos(turn), z + radius * Math.sin(turn)]
}

/** Places along a circle. */
function arc(x: number, z: number, radius: number, from: number, to: number): readonly Point[] {
  const steps = Math.ceil(Math.abs(to - from) / 7.5)
  return Array.from({length: steps + 1}, (_, index) =>
    round(x, z, radius, from + ((to - from) * index) / steps),
  )
}
