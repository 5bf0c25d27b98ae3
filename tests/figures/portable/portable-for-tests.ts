import {portableWordsEn} from '../../../src/compile/portable-words-en.ts'
import type {Figure} from '../../../src/figures/figure.ts'
import type {PortableFigures} from '../../../src/figures/portable/labels.ts'
import type {Piece} from '../../../src/figures/portable/piece.ts'
import {portableArrangement} from '../../../src/figures/portable/portable-arrangement.ts'
import {type PortableGeometry, portableParts} from '../../../src/figures/portable/portable-geometry.ts'
import {arrangementPieces} from '../../../src/figures/portable/views.ts'

/** An invented portable pump of usual proportions. */
export const geometry: PortableGeometry = {
  pumpDiameter: 360,
  pumpLength: 950,
  strainerDiameter: 260,
  strainerHeight: 110,
  impellerDiameter: 232,
  impellerOutlet: 22,
  eyeDiameter: 120,
  casingHeight: 170,
  chamberHeight: 120,
  motorDiameter: 190,
  motorHeight: 330,
  shaftDiameter: 40,
  shaftOffset: 40,
  pipeOutside: 114.3,
  flangeDiameter: 220,
  hoseBore: 100,
  hoseOutside: 130,
  pressureBore: 25,
  returnBore: 32,
  bendRadius: 600,
  hatchLeast: 450,
  hatchMost: 700,
  headHeight: 3200,
  footCircle: 2400,
  legDiameter: 76,
  footDistance: 100,
}

const figures: PortableFigures = {
  headHeight: '3.2 m',
  hatchLeast: '450 mm',
  hatchMost: '700 mm',
  depthMost: '18 m',
  footDistance: '0.10 m',
  oilHoseLength: '25 m',
  hoseSetLength: '40 m',
  pumpLength: '950 mm',
  pumpDiameter: '360 mm',
}

/** The arrangement of that pump with some lengths changed. */
export function arrangement(changes: Partial<PortableGeometry> = {}): Figure {
  return portableArrangement({
    geometry: {...geometry, ...changes},
    figures,
    parts: Object.fromEntries(
      portableParts.map((part, index) => [part, {balloon: `P${index + 1}`, title: `the ${part}`}]),
    ),
    words: portableWordsEn,
    lengths: 'Drawn from what is told.',
  })
}

/** Names of the pieces that differ between two geometries, with the view that they stand in. */
export function movedBy(changes: Partial<PortableGeometry>): readonly string[] {
  const [before, after] = [geometry, {...geometry, ...changes}].map(outlinesOf)
  if (!before || !after) return []
  return [...before].flatMap(([name, outline]) => (after.get(name) === outline ? [] : [name]))
}

/** Each piece by view and name, its outline as text. */
export function outlinesOf(one: PortableGeometry): ReadonlyMap<string, string> {
  const {rig, inTank, pump} = arrangementPieces(one)
  const named = (view: string, pieces: readonly Piece[]): readonly (readonly [string, string])[] =>
    pieces.map(({piece, areas}) => [`${view}: ${piece}`, JSON.stringify(areas)])
  return new Map([...named('rig', rig), ...named('in tank', inTank), ...named('larger', pump)])
}
