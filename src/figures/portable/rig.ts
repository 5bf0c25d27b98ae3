import {box, disc} from '../section/shape.ts'
import {hosesUp, saddle} from './hoses.ts'
import {line, type Piece, whole} from './piece.ts'
import type {PortableGeometry} from './portable-geometry.ts'
import {coaming, rigPlaces} from './rig-places.ts'

/** Tripod with winch, claw and saddle over the hatch, the split cover, and what hangs through it. */
export function rigPieces(g: PortableGeometry): readonly Piece[] {
  const at = rigPlaces(g)
  return [
    ...legs(g, [at.right * 0.22]),
    line('surroundings', 'leg chain', 'chain', [
      [at.left * 0.94, 190],
      [at.right * 0.94, 190],
    ]),
    ...hatch(g),
    line('chain', 'holding chain', 'chain', [at.claw, [0, at.foot + g.pumpLength - 40]]),
    line('surroundings', 'wire of the winch', 'hair', [
      [at.winch[0] + 80, at.winch[1] + 70],
      [-150, g.headHeight - 190],
      [-84, g.headHeight - 195],
      [-84, at.foot + g.pumpLength + 120],
      [-6, at.foot + g.pumpLength - 30],
    ]),
    ...legs(g, [at.left, at.right]),
    ...saddle(g),
    ...hosesUp(g),
    ...cover(g),
    ...head(g),
    ...winch(g),
    ...straps(g),
  ]
}

function legs(g: PortableGeometry, feet: readonly number[]): readonly Piece[] {
  const half = g.legDiameter / 2
  const top = g.headHeight - 120
  return feet.flatMap((x, index): readonly Piece[] => {
    const side = Math.sign(x) * 70
    const name = `${feet.length === 1 ? 'rear' : (['left', 'right'][index] ?? '')} leg`
    return [
      whole('surroundings', name, [
        [side - half, top],
        [side + half, top],
        [x + half, 40],
        [x - half, 40],
      ]),
      whole('surroundings', `foot of the ${name}`, box(x - 130, 0, x + 130, 40)),
    ]
  })
}

function head(g: PortableGeometry): readonly Piece[] {
  const top = g.headHeight
  return [
    whole('surroundings', 'chain claw', [
      [-50, top - 250],
      [-50, top - 335],
      [0, top - 390],
      [50, top - 335],
      [50, top - 150],
      [22, top - 150],
      [22, top - 322],
      [0, top - 346],
      [-22, top - 322],
      [-22, top - 250],
    ]),
    whole('surroundings', 'head', [
      [-190, top - 160],
      [190, top - 160],
      [120, top],
      [-120, top],
    ]),
    {
      part: 'leg-bolts',
      piece: 'leg bolts',
      drawn: 'thin',
      areas: [-110, 0, 110].map((x) => disc(x, top - 85, 28, 6)),
    },
    whole('surroundings', 'sheave', disc(-118, top - 195, 36)),
  ]
}

function winch(g: PortableGeometry): readonly Piece[] {
  const {winch: at} = rigPlaces(g)
  const [x, z] = at
  return [
    whole('surroundings', 'winch', box(x - 90, z - 130, x + 90, z + 130)),
    whole('surroundings', 'drum of the winch', disc(x, z, 78, 16)),
    line('surroundings', 'crank', 'line', [
      [x, z],
      [x - 190, z - 110],
      [x - 190, z - 200],
    ]),
  ]
}

/** Coaming around the opening, cut. */
function hatch(g: PortableGeometry): readonly Piece[] {
  const half = g.hatchLeast / 2
  return [
    // The far side of the coaming hides what stands behind it.
    {
      part: 'surroundings',
      piece: 'inside of the coaming',
      drawn: 'blank',
      areas: [box(-half, -26, half, coaming)],
    },
    {
      part: 'surroundings',
      piece: 'coaming',
      drawn: 'thin',
      areas: [-1, 1].map((side) =>
        box(Math.min(side * half, side * (half + 24)), 0, Math.max(side * half, side * (half + 24)), coaming),
      ),
    },
  ]
}

/** Both halves of the cover, with the opening for chain and hoses between them. */
function cover(g: PortableGeometry): readonly Piece[] {
  const edge = g.hatchMost / 2 + 40
  const at = rigPlaces(g)
  const from = Math.min(...at.oil.map(({up, outside}) => up - outside / 2)) - 16
  const to = at.cargo.up + g.hoseOutside / 2 + 16
  return [
    whole('surroundings', 'left half of the split cover', box(-edge, coaming, from, coaming + 34)),
    whole('surroundings', 'right half of the split cover', box(to, coaming, edge, coaming + 34)),
    {
      part: 'surroundings',
      piece: 'lock pins of the split cover',
      drawn: 'thin',
      areas: [-1, 1].map((side) =>
        box(side * (edge - 60) - 10, coaming - 40, side * (edge - 60) + 10, coaming + 70),
      ),
    },
  ]
}

/** Straps around chain and hoses, below the hatch and above the pump. */
function straps(g: PortableGeometry): readonly Piece[] {
  const at = rigPlaces(g)
  const from = Math.min(...at.oil.map(({up, outside}) => up - outside / 2)) - 12
  const to = at.cargo.up + g.hoseOutside / 2 + 12
  return [
    {
      part: 'surroundings',
      piece: 'straps',
      drawn: 'thin',
      areas: [at.band.high + 420, at.band.low - 380].map((z) => box(from, z, to, z + 34)),
    },
  ]
}
