import {stackWordsEn} from '../../src/compile/stack-words-en.ts'
import type {Figure} from '../../src/figures/figure.ts'
import {pipeStackFigure} from '../../src/figures/pipe-stack.ts'
import type {PipeEdge, PipeStack, StackLength} from '../../src/figures/stack/stack-data.ts'

/** A length of a stack. */
export const metres = (value: number): StackLength => ({metres: value, text: `${value} m`})
/** A length that nobody knows. */
export const unknown: StackLength = {text: stackWordsEn.notKnown}

/** Diameters from outside in, in millimetres. */
export function edges(
  ...millimetres: readonly (number | undefined)[]
): Readonly<Record<PipeEdge, StackLength>> {
  const edge = (index: number): StackLength => {
    const one = millimetres[index]
    return one === undefined ? unknown : {metres: one / 1000, text: `${one} mm`}
  }
  return {
    'outer-outside': edge(0),
    'outer-bore': edge(1),
    'return-outside': edge(2),
    'return-bore': edge(3),
    'pressure-outside': edge(4),
    'pressure-bore': edge(5),
  }
}

/** Sections from deck down. */
export function sectionsOf(...lengths: readonly StackLength[]): PipeStack['sections'] {
  return lengths.map((length, index) => ({number: index + 1, length}))
}

/** A stack of three sections and two supports. */
const stack: PipeStack = {
  pump: '4S',
  whole: metres(6),
  sections: sectionsOf(metres(2), metres(2), metres(2)),
  supports: [metres(2.5), metres(5)],
  diameters: edges(168.3, 160.3, 139.7, 127.1, 76.1, 60.3),
  bolts: '12 × M12',
  rings: ['outer', 'return', 'pressure'],
}

/** What is stated otherwise; supports that nobody counted are left out. */
export type Change = Partial<Omit<PipeStack, 'supports'>> & {
  readonly supports?: PipeStack['supports'] | undefined
}

/** The figure of the stack, stated otherwise. */
export function drawn(change: Change = {}): Figure {
  const {supports, ...rest} = {...stack, ...change}
  return pipeStackFigure({...rest, ...(supports ? {supports} : {})}, stackWordsEn)
}
