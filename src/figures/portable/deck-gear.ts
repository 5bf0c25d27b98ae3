import {box, curve, disc, type Point} from '../section/shape.ts'
import {deckEnd} from './hoses.ts'
import type {Piece} from './piece.ts'
import type {PortableGeometry} from './portable-geometry.ts'
import {rigPlaces} from './rig-places.ts'

/** Height of the middle of the discharge piece above the deck as it is drawn. */
const axis = 430
/** Ends of what stands on deck as it is drawn, from the chain to the right. */
export const gearPlaces = {
  piece: 2450,
  valve: 2910,
  cargoIn: 3400,
  line: 3640,
  frame: 4040,
  frameEnd: 4900,
  frameHigh: 980,
  pressure: 580,
  back: 280,
  post: 5210,
} as const
const on = gearPlaces

/** Discharge piece at its connection, control frame and outlet post, with the hoses between them broken off. */
export function deckGear(g: PortableGeometry): readonly Piece[] {
  return [...cargoSide(g), ...oilSide(g)]
}

/** Deck with the opening of the hatch, and bottom of the tank; the way between them is broken off. */
export function surroundings(g: PortableGeometry): readonly Piece[] {
  const at = rigPlaces(g)
  const half = g.hatchLeast / 2
  return [
    {
      part: 'surroundings',
      piece: 'deck',
      drawn: 'thin',
      areas: [box(-1900, -26, -half, 0), box(half, -26, 5440, 0)],
    },
    {
      part: 'surroundings',
      piece: 'tank bottom',
      drawn: 'thin',
      areas: [box(-1300, at.bottom - 26, 1250, at.bottom)],
    },
  ]
}

/** Break across the way from the deck down to the pump. */
export function depthBreak(g: PortableGeometry): readonly Piece[] {
  const {band} = rigPlaces(g)
  const [left, right] = [-640, 640]
  return [
    {
      part: 'surroundings',
      piece: 'break of the depth',
      drawn: 'blank',
      areas: [box(left, band.low, right, band.high)],
    },
    {
      part: 'surroundings',
      piece: 'lines of the break',
      drawn: 'hair',
      areas: [band.low, band.high].map((z): readonly Point[] => [
        [left, z],
        [-360, z],
        [-330, z + 70],
        [-290, z - 70],
        [-260, z],
        [right, z],
      ]),
    },
  ]
}

function cargoSide(g: PortableGeometry): readonly Piece[] {
  const pipe = g.pipeOutside / 2
  const flange = g.flangeDiameter / 2
  const from = rigPlaces(g).cargo.down + g.bendRadius + 90
  const low = g.hoseOutside / 2 + 10
  return [
    {
      part: 'cargo-hose',
      piece: 'last cargo hose',
      drawn: 'hose',
      outside: g.hoseOutside,
      areas: [
        [
          [from, low],
          ...curve([from + 90, low], [from + 220, low], [(from + 90 + on.piece) / 2, (low + axis) / 2]),
          ...curve([(from + 90 + on.piece) / 2, (low + axis) / 2], [on.piece - 130, axis], [on.piece, axis]),
        ],
      ],
    },
    ...breakOf('cargo-hose', from, low, g.hoseOutside),
    whole('surroundings', 'support of the deck line', [box(on.line - 26, 0, on.line + 26, axis)]),
    whole('surroundings', 'deck line', [disc(on.line, axis, 130, 20)]),
    whole('surroundings', 'pipe of the connection', [
      box(on.cargoIn - 110, axis - pipe, on.line - 128, axis + pipe),
    ]),
    whole('discharge-piece', 'pipe of the discharge piece', [
      box(on.piece + 30, axis - pipe, on.cargoIn - 130, axis + pipe),
    ]),
    whole('cargo-hose', 'flange of the last hose', [
      box(on.piece, axis - flange, on.piece + 26, axis + flange),
    ]),
    whole('discharge-piece', 'flanges of the discharge piece', [
      box(on.piece + 26, axis - flange, on.piece + 52, axis + flange),
      box(on.cargoIn - 166, axis - flange, on.cargoIn - 140, axis + flange),
    ]),
    whole('surroundings', 'flange of the connection', [
      box(on.cargoIn - 140, axis - flange, on.cargoIn - 114, axis + flange),
    ]),
    ...cock('discharge-piece', 'drain cock of the discharge piece', on.piece + 140, axis - pipe, -1),
    ...cock('discharge-piece', 'gauge cock', on.piece + 270, axis + pipe, 1),
    whole('discharge-piece', 'discharge gauge', [disc(on.piece + 270, axis + pipe + 190, 62, 16)]),
    ...valve('discharge-piece', 'valve of the discharge piece', on.valve - 40, axis),
    whole('discharge-piece', 'flap', [box(on.valve + 110, axis - 84, on.valve + 230, axis + 84)]),
    {
      part: 'discharge-piece',
      piece: 'plate of the flap',
      drawn: 'line',
      areas: [
        [
          [on.valve + 130, axis + 84],
          [on.valve + 210, axis - 70],
        ],
      ],
    },
    ...cock('surroundings', 'drain cock of the connection', on.cargoIn - 75, axis - pipe, -1),
    ...valve('surroundings', 'valve of the connection', on.cargoIn + 30, axis),
  ]
}

function oilSide(g: PortableGeometry): readonly Piece[] {
  const runs = [
    {name: 'return', outside: g.returnBore * 1.5, low: 45, high: on.back, post: 330},
    {name: 'pressure', outside: g.pressureBore * 1.5, low: 105, high: on.pressure, post: 660},
  ]
  return [
    ...runs.map(
      ({name, outside, low, high}): Piece => ({
        part: 'oil-hoses',
        piece: `${name} hose from the break to the frame`,
        drawn: 'hose',
        outside,
        areas: [
          [
            [deckEnd, low],
            ...curve([deckEnd + 40, low], [on.frame - 60, low], [on.frame - 60, (low + high) / 2]),
            ...curve([on.frame - 60, (low + high) / 2], [on.frame - 60, high], [on.frame, high]),
          ],
        ],
      }),
    ),
    ...breakOf('oil-hoses', deckEnd - 40, 75, 130),
    whole('frame', 'control frame', [box(on.frame, 0, on.frameEnd, on.frameHigh)]),
    line('frame', 'lines of the control frame', [
      [
        [on.frame, on.pressure],
        [on.frameEnd, on.pressure],
      ],
      [
        [on.frame, on.back],
        [on.frameEnd, on.back],
      ],
      [
        [on.frame, 110],
        [on.frameEnd, 110],
      ],
      // At stop the valve joins the pump side with the return.
      [
        [on.frame + 400, on.pressure],
        [on.frame + 400, on.back],
      ],
    ]),
    ...valve('frame', 'local control valve', on.frame + 400, on.pressure),
    ...[
      {name: 'pressure gauge', x: on.frame + 160, z: on.pressure},
      {name: 'return gauge', x: on.frame + 160, z: on.back},
    ].flatMap(({name, x, z}): readonly Piece[] => [
      line('frame', `way to the ${name}`, [
        [
          [x, z],
          [x, z + 60],
        ],
      ]),
      whole('frame', name, [disc(x, z + 122, 62, 16)]),
    ]),
    ...cock('frame', 'bleed cock P', on.frameEnd - 240, on.pressure, 1),
    ...cock('frame', 'bleed cock R', on.frameEnd - 240, on.back, 1),
    ...runs.map(
      ({name, outside, high, post}): Piece => ({
        part: 'oil-hoses',
        piece: `${name} hose from the frame to the post`,
        drawn: 'hose',
        outside,
        areas: [curve([on.frameEnd, high], [on.frameEnd + 120, high], [on.post - 40, post])],
      }),
    ),
    ...runs.flatMap(({name, high, post}) =>
      breakOf('oil-hoses', on.frameEnd + 100, high + (post - high) * 0.16, 66, `${name} hose at the post`),
    ),
    whole('surroundings', 'outlet post', [box(on.post, 0, on.post + 70, 900)]),
    ...runs.flatMap(({name, post}) =>
      bowTie('surroundings', `valve ${name === 'pressure' ? 'HP OUT' : 'RT OUT'}`, on.post - 10, post, 56),
    ),
  ]
}

/** Two strokes across a hose that goes on behind what the sheet shows. */
function breakOf(
  part: Piece['part'],
  x: number,
  z: number,
  outside: number,
  name = 'hose',
): readonly Piece[] {
  const half = outside / 2 + 24
  const gap = 26
  const stroke = (side: number): readonly Point[] => [
    [x + side * gap - 22, z - half],
    [x + side * gap + 22, z + half],
  ]
  const [from, to] = [stroke(-1), stroke(1)]
  return [
    {
      part,
      piece: `break of the ${name} at ${Math.round(x)}`,
      drawn: 'blank',
      areas: [[...from, ...to.toReversed()]],
    },
    {part, piece: `strokes of the break at ${Math.round(x)} ${name}`, drawn: 'hair', areas: [from, to]},
  ]
}

/** A valve in its pipe with a hand wheel above. */
function valve(part: Piece['part'], name: string, x: number, z: number): readonly Piece[] {
  return [
    line(part, `spindle and hand wheel of the ${name}`, [
      [
        [x, z],
        [x, z + 190],
      ],
      [
        [x - 90, z + 190],
        [x + 90, z + 190],
      ],
    ]),
    ...bowTie(part, name, x, z, 80),
  ]
}

function bowTie(part: Piece['part'], name: string, x: number, z: number, half: number): readonly Piece[] {
  const high = half * 0.8
  return [
    whole(part, name, [
      [
        [x - half, z - high],
        [x, z],
        [x + half, z - high],
        [x + half, z + high],
        [x, z],
        [x - half, z + high],
      ],
    ]),
  ]
}

/** A small cock on a stub. */
function cock(part: Piece['part'], name: string, x: number, z: number, way: 1 | -1): readonly Piece[] {
  return [
    line(part, `stub of the ${name}`, [
      [
        [x, z],
        [x, z + way * 130],
      ],
    ]),
    whole(part, name, [
      [
        [x - 34, z + way * 30],
        [x + 34, z + way * 30],
        [x, z + way * 70],
        [x + 34, z + way * 110],
        [x - 34, z + way * 110],
        [x, z + way * 70],
      ],
    ]),
  ]
}

function whole(part: Piece['part'], piece: string, areas: Piece['areas']): Piece {
  return {part, piece, drawn: 'whole', areas}
}

function line(part: Piece['part'], piece: string, areas: Piece['areas']): Piece {
  return {part, piece, drawn: 'line', areas}
}
