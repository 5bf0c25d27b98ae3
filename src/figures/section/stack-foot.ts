import {type Levels, waveOf} from './levels.ts'
import type {SectionGeometry} from './section-geometry.ts'
import {boltAlong, both, curve, type Outline, type Point} from './shape.ts'

/** Steps on top of the motor that slide into the foot of the stack. */
export function stepsOf(
  g: SectionGeometry,
  at: Levels,
): {
  readonly inner: number
  readonly middle: number
  readonly outer: number
  readonly lengths: readonly [inner: number, middle: number, outer: number]
} {
  const {stack} = g
  const unit = stack.outside * 0.11
  return {
    inner: stack.pressureOutside / 2,
    middle: stack.returnOutside / 2,
    outer: stack.outside / 2 + at.wall * 0.3,
    lengths: [unit * 3.4, unit * 2.2, unit],
  }
}

/** Foot of the pipe stack with the lower ends of its three pipes, and the bolts that hold the motor to it. */
export function stackFoot(g: SectionGeometry, at: Levels): readonly Outline[] {
  const {stack} = g
  const {wall, foot, top} = at
  const end = top + waveOf(stack.outside * 1.3)
  const steps = stepsOf(g, at)
  const [innerLength, middleLength, outerLength] = steps.lengths
  const outside = g.motorDiameter / 2 - wall * 0.2
  const thick = stack.outside * 0.17
  const pipe = (
    radius: number,
    bore: number,
    socket: number,
    low: number,
    high: number,
  ): readonly Point[] => [
    [socket, low],
    [socket + wall * 0.55, low],
    [socket + wall * 0.55, high],
    [radius, high + wall * 0.6],
    [radius, end],
    [bore, end],
    [bore, high],
    [socket, high],
  ]
  const outer: readonly Point[] = [
    [steps.outer, foot],
    [outside, foot],
    [outside, foot + thick],
    [stack.outside / 2 + wall * 0.9, foot + thick],
    [stack.outside / 2, foot + thick * 1.9],
    [stack.outside / 2, end],
    [stack.bore / 2, end],
    [stack.bore / 2, foot + outerLength + 2],
    [steps.outer, foot + outerLength + 2],
  ]
  const bolt = {thread: 12 * (stack.outside / 168), length: thick + wall * 1.6}
  const hatch = {way: 'up', spacing: 6} as const
  return [
    ...both({part: 'stack', piece: 'outer pipe', drawn: 'cut', points: outer, hatch}),
    ...both({
      part: 'stack',
      piece: 'return pipe',
      drawn: 'cut',
      points: pipe(
        stack.returnOutside / 2,
        stack.returnBore / 2,
        steps.middle,
        foot + outerLength + 4,
        foot + middleLength + 2,
      ),
      hatch,
    }),
    ...both({
      part: 'stack',
      piece: 'pressure pipe',
      drawn: 'cut',
      points: pipe(
        stack.pressureOutside / 2,
        stack.pressureBore / 2,
        steps.inner,
        foot + middleLength + 4,
        foot + innerLength + 2,
      ),
      hatch,
    }),
    ...both({
      part: 'motor',
      piece: 'bolt to the stack',
      drawn: 'whole',
      points: boltAlong((steps.outer + outside) / 2 + wall * 0.3, foot + thick, bolt, 'down'),
    }),
    ...breakLine(-stack.outside * 0.65, stack.outside * 0.65, top, 'break of the stack'),
    ...breakLine(
      g.spigotOffset - g.spigotBore * 0.75,
      g.spigotOffset + g.spigotBore * 0.75,
      at.pipeTop,
      'break of the discharge pipe',
    ),
  ]
}

/** Wavy line where the drawing ends and the pipe goes on. */
function breakLine(from: number, to: number, z: number, piece: string): readonly Outline[] {
  const middle = (from + to) / 2
  const wave = waveOf(to - from)
  const line: readonly Point[] = [
    ...curve([from, z], [(from + middle) / 2, z + 2 * wave], [middle, z]),
    ...curve([middle, z], [(to + middle) / 2, z - 2 * wave], [to, z]).slice(1),
  ]
  const behind: readonly Point[] = [...line, [to, z + wave * 2], [from, z + wave * 2]]
  return [
    {part: 'surroundings', piece: `${piece}, left out`, drawn: 'blank', points: behind},
    {part: 'surroundings', piece, drawn: 'hidden', isOpen: true, points: line},
  ]
}
