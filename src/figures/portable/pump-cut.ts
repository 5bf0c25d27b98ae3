import {box, type Point} from '../section/shape.ts'
import type {Hatch, Piece} from './piece.ts'
import {type PortableGeometry, placesOf} from './portable-geometry.ts'

const wall = 10

/** What a cut through the axis shows on the right of it, from the strainer up to the head. */
export function rightHalf(g: PortableGeometry): readonly Piece[] {
  return [
    ...strainerCut(g),
    ...casingCut(g),
    ...impellerCut(g),
    ...motorCut(g),
    ...shaftCut(g),
    ...sealsCut(g),
  ].map((one) => ({...one, seam: placesOf(g).axis}))
}

/** Bottom with the middle hole for the key to the shaft, and side, each cut through its holes. */
function strainerCut(g: PortableGeometry): readonly Piece[] {
  const {axis, casingLow} = placesOf(g)
  const edge = axis + g.strainerDiameter / 2
  const pitch = 24
  const bottom = Array.from(
    {length: Math.max(1, Math.floor((g.strainerDiameter / 2 - 15) / pitch))},
    (_, index) => box(axis + 15 + index * pitch, 0, Math.min(axis + 29 + index * pitch, edge), 5),
  )
  const side = Array.from({length: Math.max(1, Math.floor(casingLow / pitch))}, (_, index) =>
    box(edge - 5, index * pitch, edge, Math.min(index * pitch + 14, casingLow)),
  )
  return [
    piece('strainer', 'wall behind the cut', 'hair', [
      [
        [axis, 5],
        [edge - 5, 5],
        [edge - 5, casingLow],
      ],
    ]),
    piece('strainer', 'bottom and side', 'thin', [...bottom, ...side]),
  ]
}

function casingCut(g: PortableGeometry): readonly Piece[] {
  const at = placesOf(g)
  const bore = g.hoseBore / 2
  const outside = g.pipeOutside / 2
  const flange = g.flangeDiameter / 2
  const inlet = at.axis + g.eyeDiameter / 2
  const edge = Math.min(24, g.casingHeight / 4)
  return [
    piece('surroundings', 'volute', 'whole', [
      box(at.axis, at.casingLow + wall, at.pipe + bore, at.casingHigh - wall),
    ]),
    piece('surroundings', 'bore of the discharge pipe', 'blank', [
      [
        [at.pipe - bore, at.casingHigh - wall - 20],
        [at.pipe + bore, at.casingHigh - wall - 20],
        [at.pipe + bore, at.headHigh],
        [at.flange + bore, at.flangeLow],
        [at.flange + bore, at.flangeHigh],
        [at.flange - bore, at.flangeHigh],
        [at.flange - bore, at.flangeLow],
        [at.pipe - bore, at.headHigh],
      ],
    ]),
    cut('surroundings', 'casing floor and right wall', 'down', [
      [inlet, at.casingLow],
      [at.right - edge, at.casingLow],
      [at.right, at.casingLow + edge],
      [at.right, at.headHigh],
      [at.flange + outside, at.flangeLow],
      [at.flange + flange, at.flangeLow],
      [at.flange + flange, at.flangeHigh],
      [at.flange + bore, at.flangeHigh],
      [at.flange + bore, at.flangeLow],
      [at.pipe + bore, at.headHigh],
      [at.pipe + bore, at.casingLow + edge + 4],
      [at.pipe + bore - edge, at.casingLow + wall],
      [inlet, at.casingLow + wall],
    ]),
    cut('surroundings', 'inner wall of the discharge pipe', 'down', [
      [at.pipe - outside, at.casingHigh],
      [at.pipe - outside, at.headHigh],
      [at.flange - outside, at.flangeLow],
      [Math.max(at.axis, at.flange - flange), at.flangeLow],
      [Math.max(at.axis, at.flange - flange), at.flangeHigh],
      [at.flange - bore, at.flangeHigh],
      [at.flange - bore, at.flangeLow],
      [at.pipe - bore, at.headHigh],
      [at.pipe - bore, at.casingHigh - wall],
      [at.axis + g.shaftDiameter / 2 + 4, at.casingHigh - wall],
      [at.axis + g.shaftDiameter / 2 + 4, at.casingHigh],
    ]),
  ]
}

/** Heights of the impeller between its shrouds. */
export function impellerHeights(g: PortableGeometry): {
  readonly back: number
  readonly front: number
  readonly low: number
} {
  const {casingHigh, casingLow} = placesOf(g)
  const back = casingHigh - wall - 14
  return {back, front: back - g.impellerOutlet, low: casingLow + 3}
}

function impellerCut(g: PortableGeometry): readonly Piece[] {
  const {axis} = placesOf(g)
  const {back, front, low} = impellerHeights(g)
  const rim = axis + g.impellerDiameter / 2
  const eye = axis + g.eyeDiameter / 2
  const shaft = axis + g.shaftDiameter / 2
  const hub = shaft + 9
  const middle = (eye + rim) / 2
  return [
    piece('impeller', 'vane', 'whole', [
      [
        [hub, back - 8],
        [rim, back],
        [rim, front],
        [middle, front - 4],
        [eye - 6, front - 20],
        [hub, front - 34],
      ],
    ]),
    cut('impeller', 'back shroud and hub', 'fine', [
      [shaft, back + 7],
      [rim, back + 7],
      [rim, back],
      [hub + 14, back - 3],
      [hub, back - 16],
      [hub, front - 42],
      [shaft, front - 42],
    ]),
    cut('impeller', 'front shroud', 'fine', [
      [rim, front],
      [rim, front - 7],
      [middle + 4, front - 11],
      [eye - 1, front - 28],
      [eye - 1, low],
      [eye - 8, low],
      [eye - 8, front - 22],
      [middle, front - 4],
    ]),
  ]
}

/** Shaft with the hexagon socket in its end. */
function shaftCut(g: PortableGeometry): readonly Piece[] {
  const at = placesOf(g)
  const {axis} = at
  const {front} = impellerHeights(g)
  const shaft = axis + g.shaftDiameter / 2
  return [
    piece('motor', 'shaft', 'whole', [box(axis, front - 50, shaft, at.motorLow + g.motorHeight * 0.42)]),
    piece('motor', 'hexagon socket', 'hair', [
      [
        [axis + 5, front - 50],
        [axis + 5, front - 24],
        [axis, front - 21],
      ],
    ]),
  ]
}

/** Face seal below the motor, lip seal above the impeller, leak chamber between the two. */
function sealsCut(g: PortableGeometry): readonly Piece[] {
  const at = placesOf(g)
  const shaft = at.axis + g.shaftDiameter / 2
  const outside = at.axis + g.motorDiameter * 0.43
  const high = at.motorLow
  const each = Math.min(16, g.chamberHeight / 6)
  const low = at.casingHigh
  return [
    cut('seals', 'wall of the leak chamber', 'up', [...box(outside - wall, low, outside, high)]),
    cut('seals', 'lip seal carrier', 'up', [
      [shaft + 14, low],
      [shaft + 32, low],
      [shaft + 32, low + each * 1.4],
      [shaft + 14, low + each * 1.4],
    ]),
    piece('seals', 'lip seal', 'thin', [
      [
        [shaft + 14, low + 2],
        [shaft + 14, low + each * 1.2],
        [shaft + 5, low + each * 1.2],
        [shaft, low],
        [shaft + 3, low],
        [shaft + 9, low + each * 0.8],
        [shaft + 10, low + 2],
      ],
    ]),
    cut('seals', 'rotating face', 'fine', box(shaft, high - each * 3.4, shaft + 18, high - each * 1.7)),
    piece('seals', 'spring', 'hair', [
      [
        [shaft + 4, high - each * 3.4],
        [shaft + 14, high - each * 3.7],
        [shaft + 4, high - each * 4],
        [shaft + 14, high - each * 4.3],
      ],
    ]),
    piece('seals', 'collar of the spring', 'thin', [
      box(shaft, high - each * 4.7, shaft + 18, high - each * 4.3),
    ]),
    piece('seals', 'standing face', 'thin', [box(shaft + 4, high - each * 1.7, shaft + 22, high)]),
  ]
}

function motorCut(g: PortableGeometry): readonly Piece[] {
  const at = placesOf(g)
  const shaft = at.axis + g.shaftDiameter / 2
  const outside = at.axis + g.motorDiameter / 2
  const inside = outside - 14
  const low = at.motorLow
  const high = at.headLow
  const block = low + g.motorHeight * 0.42
  const roof = low + g.motorHeight * 0.84
  const bearing = low + g.motorHeight * 0.14
  const ball = Math.min(16, (inside - shaft) / 2)
  return [
    piece('motor', 'space of the motor', 'whole', [box(at.axis, low + 8, inside, roof)]),
    piece('motor', 'block of pistons', 'whole', [box(at.axis, block, inside - 10, roof - 12)]),
    piece('motor', 'pistons', 'whole', [
      box(shaft + 8, block - 26, shaft + 8 + (inside - shaft - 18) * 0.5, roof - 28),
    ]),
    piece('motor', 'swash plate', 'whole', [
      [
        [shaft + 2, block - 44],
        [inside - 4, block - 32],
        [inside - 4, block - 20],
        [shaft + 2, block - 30],
      ],
    ]),
    cut('motor', 'body', 'down', [
      [shaft + 4, low],
      [outside, low],
      [outside, high],
      [at.axis, high],
      [at.axis, roof],
      [inside, roof],
      [inside, low + 14],
      [shaft + 4, low + 14],
    ]),
    piece('motor', 'bearing', 'whole', [
      box(shaft, bearing - ball, Math.min(shaft + ball * 2, inside), bearing + ball),
    ]),
    piece('motor', 'ball', 'hair', [cross(shaft + ball, bearing, ball)]),
    cut('surroundings', 'head, cut', 'up', box(at.axis, high, outside, at.headHigh)),
  ]
}

function cross(x: number, z: number, half: number): readonly Point[] {
  return [
    [x - half, z - half],
    [x + half, z + half],
    [x, z],
    [x + half, z - half],
    [x - half, z + half],
  ]
}

function piece(part: Piece['part'], name: string, drawn: Piece['drawn'], areas: Piece['areas']): Piece {
  return {part, piece: name, drawn, areas}
}

function cut(part: Piece['part'], name: string, hatch: Hatch, area: readonly Point[]): Piece {
  return {part, piece: name, drawn: 'cut', areas: [area], hatch}
}
