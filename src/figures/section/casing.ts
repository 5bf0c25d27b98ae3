import {type Levels, ringSeat, waveOf} from './levels.ts'
import type {SectionGeometry} from './section-geometry.ts'
import {box, curve, disc, type Outline, type Point} from './shape.ts'

/** Casing with the discharge branch on the right, and the lower end of the discharge pipe in its spigot. */
export function casing(g: SectionGeometry, at: Levels): readonly Outline[] {
  const {wall} = at
  const upper = ringSeat(g.upperRing, at)
  const inner = at.impeller + wall * 0.7
  const hatch = {way: 'up', spacing: 12} as const
  const roof = at.casingWall
  const boss = at.chamber + wall * 2.9
  const bottom = at.coverJoint - wall * 0.4
  const outside = at.casing
  const lip: readonly Point[] = [
    [at.coverRegister, at.coverJoint],
    [at.coverRegister, at.rim],
    [at.coverRegister + wall * 2.1, at.rim],
  ]
  const seat: readonly Point[] = [
    [inner, roof],
    [upper.outside, roof],
    [upper.outside, at.collarTop],
    [at.housingSpigot, at.collarTop],
    [at.housingSpigot, at.housingFace],
    [boss, at.housingFace],
  ]
  const plain: readonly Point[] = [
    ...lip,
    ...curve(
      [at.coverRegister + wall * 2.1, at.rim],
      [outside - wall, bottom + wall],
      [outside - wall, (at.outlet + at.backLow) / 2],
      7,
    ),
    ...curve(
      [outside - wall, (at.outlet + at.backLow) / 2],
      [outside - wall, roof + wall * 1.6],
      [inner + wall, roof + wall * 0.4],
      7,
    ),
    ...seat,
    ...curve(
      [boss + wall * 0.3, roof + wall * 1.6],
      [outside, roof + wall * 3.2],
      [outside, (at.outlet + at.backLow) / 2],
      8,
    ),
    ...curve(
      [outside, (at.outlet + at.backLow) / 2],
      [outside, bottom - wall * 0.2],
      [at.coverFlange, bottom],
      8,
    ),
    [at.coverFlange, at.coverJoint],
  ]
  const bore = g.spigotBore / 2
  const spigot = g.rings['spigot-ring'].groove / 2 + g.rings['spigot-ring'].section * 0.82
  const low = at.housingFlange + wall * 2
  const high = low + g.spigotBore * 0.42
  const left = g.spigotOffset - bore
  const right = g.spigotOffset + bore
  const branch: readonly Point[] = [
    ...lip,
    ...curve(
      [at.coverRegister + wall * 2.1, at.rim],
      [right, bottom + wall * 0.6],
      [right, at.housingFace],
      10,
    ),
    [right, low],
    [g.spigotOffset + spigot, low],
    [g.spigotOffset + spigot, high],
    [g.spigotOffset + spigot + wall, high],
    [g.spigotOffset + spigot + wall, low - wall],
    [right + wall, low - wall * 1.6],
    ...curve(
      [right + wall, at.housingFace],
      [right + wall, bottom - wall * 0.4],
      [at.coverFlange, bottom],
      10,
    ),
    [at.coverFlange, at.coverJoint],
  ]
  const inside: readonly Point[] = [
    ...seat,
    [boss, at.housingFace - wall * 0.5],
    [left - wall, at.housingFace - wall * 0.2],
    [left - wall, low - wall * 1.6],
    [g.spigotOffset - spigot - wall, low - wall],
    [g.spigotOffset - spigot - wall, high],
    [g.spigotOffset - spigot, high],
    [g.spigotOffset - spigot, low],
    [left, low],
    [left, at.housingFace + wall * 0.4],
    ...curve([left, at.housingFace + wall * 0.4], [left, roof + wall * 0.4], [inner, roof], 5),
  ]
  const ring = g.rings['spigot-ring']
  const ringAt = (side: 1 | -1): readonly Point[] =>
    disc(
      g.spigotOffset + side * (ring.groove / 2 + ring.section / 2),
      (low + high) / 2 + wall * 0.4,
      ring.section * 0.62,
    )
  const pipe = (side: 1 | -1): readonly Point[] =>
    box(
      g.spigotOffset + side * bore,
      low + 3,
      g.spigotOffset + side * spigot,
      at.pipeTop + waveOf(g.spigotBore * 1.5),
    )
  return [
    {part: 'casing', piece: 'volute', drawn: 'cut', points: plain.map(([r, z]): Point => [-r, z]), hatch},
    {part: 'casing', piece: 'branch', drawn: 'cut', points: branch, hatch},
    {part: 'casing', piece: 'wall beside the branch', drawn: 'cut', points: inside, hatch},
    {
      part: 'surroundings',
      piece: 'discharge pipe',
      drawn: 'cut',
      points: pipe(-1),
      hatch: {way: 'down', spacing: 9},
    },
    {
      part: 'surroundings',
      piece: 'discharge pipe right',
      drawn: 'cut',
      points: pipe(1),
      hatch: {way: 'down', spacing: 9},
    },
    {part: 'spigot-ring', piece: 'ring', drawn: 'thin', points: ringAt(1)},
    {part: 'spigot-ring', piece: 'ring left', drawn: 'thin', points: ringAt(-1)},
  ]
}
