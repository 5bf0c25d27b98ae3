import {box, disc, type Point} from '../section/shape.ts'
import {leftOf, type Piece, whole} from './piece.ts'
import {type PortableGeometry, placesOf} from './portable-geometry.ts'

/** Outside of a portable pump, seen with the discharge pipe on the right. */
export function pumpOutside(g: PortableGeometry): readonly Piece[] {
  const at = placesOf(g)
  const strainer = g.strainerDiameter / 2
  const motor = g.motorDiameter / 2
  const chamber = motor * 0.86
  const pipe = g.pipeOutside / 2
  const flange = g.flangeDiameter / 2
  return [
    whole('strainer', 'strainer', box(at.axis - strainer, 0, at.axis + strainer, at.casingLow)),
    {part: 'strainer', piece: 'holes', drawn: 'holes', outside: 10, areas: holesOf(g)},
    whole('surroundings', 'discharge pipe', [
      [at.pipe - pipe, at.casingHigh],
      [at.right, at.casingHigh],
      [at.right, at.headHigh],
      [at.flange + pipe, at.flangeLow],
      [at.flange - pipe, at.flangeLow],
      [at.pipe - pipe, at.headHigh],
    ]),
    whole('surroundings', 'casing', casingOutline(g)),
    whole('seals', 'leak chamber', box(at.axis - chamber, at.casingHigh, at.axis + chamber, at.motorLow)),
    ...plugOf(g),
    whole('motor', 'motor', box(at.axis - motor, at.motorLow, at.axis + motor, at.headLow)),
    {
      part: 'motor',
      piece: 'joints of the motor',
      drawn: 'hair',
      areas: [0.12, 0.88].map((share) =>
        across(at.axis - motor, at.axis + motor, at.motorLow + g.motorHeight * share),
      ),
    },
    ...headOf(g),
    whole(
      'surroundings',
      'discharge flange',
      box(at.flange - flange, at.flangeLow, at.flange + flange, at.flangeHigh),
    ),
  ]
}

/** The half of the outside on the left of the axis of the shaft, open towards it. */
export function leftHalf(g: PortableGeometry): readonly Piece[] {
  const {axis} = placesOf(g)
  return pumpOutside(g).flatMap((one) => {
    const piece = `${one.piece}, seen`
    // The eye stands clear above the head on both sides of the cut.
    if (one.piece.includes('lifting eye')) return [{...one, piece}]
    const areas = one.areas
      .map((area) => leftOf(area, axis))
      .filter((area) => area.length > 2 || one.drawn !== 'whole')
      .filter((area) => area.length > 0)
    return areas.length === 0 ? [] : [{...one, piece, areas, seam: axis}]
  })
}

function casingOutline(g: PortableGeometry): readonly Point[] {
  const at = placesOf(g)
  const edge = Math.min(24, g.casingHeight / 4)
  return [
    [-at.right + edge, at.casingLow],
    [at.right - edge, at.casingLow],
    [at.right, at.casingLow + edge],
    [at.right, at.casingHigh],
    [-at.right + edge, at.casingHigh],
    [-at.right, at.casingHigh - edge],
    [-at.right, at.casingLow + edge],
  ]
}

/** Rows of holes around the strainer. */
function holesOf(g: PortableGeometry): readonly (readonly Point[])[] {
  const {axis} = placesOf(g)
  const pitch = 26
  const columns = Math.max(2, Math.floor((g.strainerDiameter - 16) / pitch))
  const rows = Math.max(1, Math.floor((g.strainerHeight - 12) / pitch))
  return Array.from({length: rows * columns}, (_, index) => [
    [
      axis + ((index % columns) - (columns - 1) / 2) * pitch,
      g.strainerHeight / 2 + (Math.floor(index / columns) - (rows - 1) / 2) * pitch,
    ],
  ])
}

/** Plug at the foot of the leak chamber, on the far side from the discharge pipe, with its sealing ring. */
function plugOf(g: PortableGeometry): readonly Piece[] {
  const at = placesOf(g)
  const edge = at.axis - g.motorDiameter * 0.43
  const low = at.casingHigh + g.chamberHeight * 0.2
  return [
    {part: 'leak-plug', piece: 'ring', drawn: 'thin', areas: [box(edge - 5, low - 1, edge, low + 19)]},
    whole('leak-plug', 'plug', box(edge - 21, low, edge - 5, low + 18)),
  ]
}

/** Head with couplings, lifting eye and earth bolt. */
function headOf(g: PortableGeometry): readonly Piece[] {
  const at = placesOf(g)
  const high = at.flangeHigh - at.headHigh
  const left = at.returnCoupling - g.returnBore + 2
  const eye = Math.min(34, (at.top - at.headHigh) / 3)
  return [
    whole('couplings', 'pressure coupling', coupling(at.pressureCoupling, at.headHigh, g.pressureBore, high)),
    whole(
      'couplings',
      'return coupling',
      coupling(at.returnCoupling, at.headHigh, g.returnBore, high * 0.78),
    ),
    {
      part: 'couplings',
      piece: 'red rings',
      drawn: 'thin',
      areas: [
        box(
          at.returnCoupling - g.returnBore * 0.7,
          at.headHigh + 4,
          at.returnCoupling + g.returnBore * 0.7,
          at.headHigh + 11,
        ),
      ],
    },
    whole('surroundings', 'lifting eye', [
      [at.eye - 34, at.headHigh],
      [at.eye + 6, at.headHigh],
      [at.eye + eye, at.top - eye * 1.3],
      ...disc(at.eye, at.top - eye, eye, 12).slice(0, 7),
      [at.eye - eye, at.top - eye * 1.3],
    ]),
    whole('surroundings', 'hole of the lifting eye', disc(at.eye, at.top - eye, eye * 0.5, 12)),
    whole('surroundings', 'head', box(left, at.headLow, at.axis + g.motorDiameter / 2, at.headHigh)),
    whole('surroundings', 'earth bolt', box(left + 2, at.headLow - 14, left + 16, at.headLow)),
  ]
}

/** A screw coupling: neck below, nut above. */
function coupling(x: number, low: number, bore: number, high: number): readonly Point[] {
  const neck = bore * 0.62
  const nut = bore
  const shoulder = low + high * 0.3
  return [
    [x - neck, low],
    [x + neck, low],
    [x + neck, shoulder],
    [x + nut, shoulder],
    [x + nut, low + high],
    [x - nut, low + high],
    [x - nut, shoulder],
    [x - neck, shoulder],
  ]
}

function across(from: number, to: number, z: number): readonly Point[] {
  return [
    [from, z],
    [to, z],
  ]
}
