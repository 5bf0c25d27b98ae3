import type {Point} from '../section/shape.ts'
import {textWidth} from '../svg-text.ts'
import {gearPlaces} from './deck-gear.ts'
import type {Callout} from './marks.ts'
import {placed} from './piece.ts'
import {type PortableGeometry, type PortablePart, placesOf} from './portable-geometry.ts'
import {impellerHeights} from './pump-cut.ts'
import {rigPlaces} from './rig-places.ts'
import {arrangementViews, chain, larger, margin} from './views.ts'

/** Words of the arrangement in one language. */
export interface PortableWords {
  readonly view: string
  readonly order: string
  readonly title: string
  readonly names: Readonly<
    Record<
      | 'winch'
      | 'claw'
      | 'saddle'
      | 'cover'
      | 'strap'
      | 'bottom'
      | 'cargoIn'
      | 'pressureOut'
      | 'returnOut'
      | 'pressureBleed'
      | 'returnBleed'
      | 'leakChamber'
      | 'flange',
      string
    >
  >
  readonly hatch: (least: string, most: string) => string
  readonly depth: (most: string) => string
  readonly oilHoses: (length: string) => string
  readonly cargoHoses: (length: string) => string
}

/** Lengths as the page prints them where they stand in the drawing. */
export interface PortableFigures {
  readonly headHeight: string
  readonly hatchLeast: string
  readonly hatchMost: string
  readonly depthMost: string
  readonly footDistance: string
  readonly oilHoseLength: string
  readonly hoseSetLength: string
  readonly pumpLength: string
  readonly pumpDiameter: string
}

/** A numbered balloon: its middle, and the place in its part where its leader ends. */
export interface ArrangementBalloon {
  readonly part: PortablePart
  readonly at: Point
  readonly anchor: Point
}

/** Balloons: parts of the pump about the larger view, the others about the rig. */
export function balloonsOf(g: PortableGeometry): readonly ArrangementBalloon[] {
  const views = arrangementViews(g)
  const rig = rigPlaces(g)
  const pump = placesOf(g)
  const gear = gearPlaces
  const motor = g.motorDiameter / 2
  const {back} = impellerHeights(g)
  const bore = g.hoseBore / 2
  const [left, right] = [larger - 240, larger + 250]
  const onPump = (x: number, z: number): Point => placed([x, z], views.pump)
  const onRig = (x: number, z: number): Point => placed([x, z], views.rig)
  const beside = (part: PortablePart, side: number, down: number, anchor: Point): ArrangementBalloon => ({
    part,
    at: [side, anchor[1] + down],
    anchor,
  })
  const away = (part: PortablePart, by: Point, anchor: Point): ArrangementBalloon => ({
    part,
    at: [anchor[0] + by[0], anchor[1] + by[1]],
    anchor,
  })
  const deck = views.rig.y
  const [saddleX, saddleZ] = rig.saddle
  const reach = saddleX - (rig.oil[0]?.up ?? 0)
  // A place on the way over the saddle.
  const oil = onRig(saddleX + reach * 0.5, saddleZ + reach * Math.sqrt(0.75))
  const frame = onRig(gear.frame + 610, gear.frameHigh - 50)
  const hose = onRig(rig.cargo.down + bore * 0.2, saddleZ)
  const flap = onRig(gear.valve + 170, 480)
  return [
    beside('strainer', left, -20, onPump(pump.axis - g.strainerDiameter * 0.42, g.strainerHeight * 0.62)),
    beside('impeller', right, 90, onPump(pump.axis + g.impellerDiameter * 0.4, back + 3)),
    beside('seals', right, 14, onPump(pump.axis + g.shaftDiameter / 2 + 9, pump.casingHigh + 9)),
    beside(
      'leak-plug',
      left,
      -10,
      onPump(pump.axis - g.motorDiameter * 0.43 - 3, pump.casingHigh + g.chamberHeight * 0.24),
    ),
    beside('motor', left, 0, onPump(pump.axis - motor * 0.6, pump.motorLow + g.motorHeight * 0.6)),
    beside(
      'couplings',
      left,
      20,
      onPump(
        pump.returnCoupling - g.returnBore * 0.5,
        pump.headHigh + (pump.flangeHigh - pump.headHigh) * 0.5,
      ),
    ),
    {
      part: 'oil-hoses',
      at: [Math.max(oil[0] + 120, saddleWords(g)[0] + saddleRoom), deck - 440],
      anchor: oil,
    },
    {part: 'frame', at: [frame[0] - 40, deck - 306], anchor: frame},
    {part: 'cargo-hose', at: [hose[0] + 134, deck - 280], anchor: hose},
    {part: 'discharge-piece', at: [flap[0] - 30, deck - 206], anchor: flap},
    away('leg-bolts', [-150, 50], onRig(-110, g.headHeight - 85)),
    away('chain', [-95, 10], onRig(0, -560)),
  ]
}

/** Where the words of the saddle begin, and the room to the right that they take with the next balloon. */
function saddleWords(g: PortableGeometry): Point {
  const {rig} = arrangementViews(g)
  return [placed([rigPlaces(g).saddle[0], 0], rig)[0] - 10, rig.y - 468]
}
const saddleRoom = 250

/** Words with a leader to what they name. */
export function calloutsOf(
  g: PortableGeometry,
  figures: PortableFigures,
  words: PortableWords,
): readonly Callout[] {
  const views = arrangementViews(g)
  const rig = rigPlaces(g)
  const pump = placesOf(g)
  const gear = gearPlaces
  const {names} = words
  const on = (x: number, z: number): Point => placed([x, z], views.rig)
  const onPump = (x: number, z: number): Point => placed([x, z], views.pump)
  const deck = views.rig.y
  const [saddleX, saddleZ] = rig.saddle
  const oilBalloon = balloonsOf(g).find(({part}) => part === 'oil-hoses')?.at ?? [0, 0]
  const hoseBalloon = balloonsOf(g).find(({part}) => part === 'cargo-hose')?.at ?? [0, 0]
  const chamber = onPump(pump.axis + g.motorDiameter * 0.3, pump.motorLow - g.chamberHeight * 0.3)
  const flange = onPump(pump.right, (pump.flangeLow + pump.flangeHigh) / 2)
  return [
    {text: names.claw, at: [chain + 130, margin + 36], to: on(36, g.headHeight - 280), from: 'left'},
    {text: names.winch, at: [86, deck - 380], to: on(rig.winch[0] - 40, rig.winch[1] + 110), from: 'below'},
    {
      text: names.saddle,
      at: saddleWords(g),
      to: on(saddleX, saddleZ + g.bendRadius + g.hoseOutside / 2 + 60),
      from: 'below',
    },
    {text: names.cover, at: [20, deck + 62], to: on(-g.hatchMost / 2, rig.coaming + 14), from: 'right'},
    {text: words.hatch(figures.hatchLeast, figures.hatchMost), at: [chain + 84, deck + 56]},
    {
      text: names.strap,
      at: [chain + 130, on(0, rig.band.high + 440)[1] + 10],
      to: on(200, rig.band.high + 437),
      from: 'left',
    },
    {text: names.bottom, at: [150, on(0, rig.bottom)[1] + 52]},
    {
      text: `${figures.footDistance}`,
      at: [chain + 130, on(0, rig.bottom)[1] - 20],
      to: on(200, rig.bottom + g.footDistance / 2),
      from: 'left',
    },
    {text: words.oilHoses(figures.oilHoseLength), at: [oilBalloon[0] + 56, oilBalloon[1] + 12]},
    {text: words.cargoHoses(figures.hoseSetLength), at: [hoseBalloon[0] + 56, hoseBalloon[1] + 12]},
    {
      text: names.cargoIn,
      at: [on(gear.cargoIn, 0)[0] - 30, deck - 216],
      to: on(gear.cargoIn + 30, 620),
      from: 'below',
    },
    {text: names.pressureBleed, at: on(gear.frameEnd - 190, gear.pressure + 40)},
    {text: names.returnBleed, at: on(gear.frameEnd - 190, gear.back + 40)},
    {
      text: names.pressureOut,
      at: [1484 - textWidth(names.pressureOut, 36), deck - 250],
      to: on(gear.post + 10, 690),
      from: 'below',
    },
    {
      text: names.returnOut,
      at: [1484 - textWidth(names.returnOut, 36), deck + 60],
      to: on(gear.post - 10, 300),
      from: 'above',
    },
    {text: words.title, at: [960, deck + 56], isStrong: true},
    {text: names.leakChamber, at: [larger + 186, chamber[1] - 60], room: 150, to: chamber, from: 'left'},
    {text: names.flange, at: [larger + 186, flange[1] + 24], room: 190, to: flange, from: 'left'},
  ]
}
