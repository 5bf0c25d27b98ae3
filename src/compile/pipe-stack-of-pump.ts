import type {Figure} from '../figures/figure.ts'
import {pipeStackFigure} from '../figures/pipe-stack.ts'
import {type PipeEdge, type StackLength, type StackPipe, stackPipes} from '../figures/stack/stack-data.ts'
import type {Datum} from '../handbook-model/datum.ts'
import {drawnFigures, stackBolts, stackPipeValues} from '../handbook-model/drawn-figures.ts'
import {type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {stackWordsEn} from './stack-words-en.ts'

/** The O-ring of each pipe in a joint of the stack. */
const ringOfPipe: Readonly<Record<StackPipe, string>> = {
  outer: 'joint-outer-ring',
  return: 'joint-return-ring',
  pressure: 'joint-pressure-ring',
}

/** Values that stand in the pipe stack of a pump. */
export const valuesOfStack: readonly string[] = drawnFigures['pipe-stack']

/** The pipe stack of a pump, or nothing where it has none or its design does not state what it is drawn from. */
export function pipeStackOfPump(desk: PumpDesk): Figure | undefined {
  const {position} = desk
  if (!valuesOfStack.every((id) => desk.values.has(id))) return undefined
  const edge = (id: PipeEdge): StackLength => valueLength(desk, stackPipeValues[id])
  const hasRing = (pipe: StackPipe): boolean => desk.design.oRings.some(({id}) => id === ringOfPipe[pipe])
  return pipeStackFigure(
    {
      pump: position.tag,
      whole: valueLength(desk, 'cofferdam.stack-length'),
      sections: position.stackSections.map(({number, length}) => ({number, length: statedLength(length)})),
      ...(position.stackSupports ? {supports: position.stackSupports.map(statedLength)} : {}),
      diameters: {
        'outer-outside': edge('outer-outside'),
        'outer-bore': edge('outer-bore'),
        'return-outside': edge('return-outside'),
        'return-bore': edge('return-bore'),
        'pressure-outside': edge('pressure-outside'),
        'pressure-bore': edge('pressure-bore'),
      },
      bolts: printedValue(pumpValue(desk, stackBolts)),
      rings: stackPipes.filter(hasRing),
    },
    stackWordsEn,
  )
}

function valueLength(desk: PumpDesk, id: string): StackLength {
  const value = pumpValue(desk, id)
  const {result} = value
  if (result.kind === 'not-known' || result.quantity?.kind !== 'length') return {text: stackWordsEn.notKnown}
  return {metres: result.quantity.si, text: printedValue(value)}
}

function statedLength(datum: Datum<'length'>): StackLength {
  return datum.kind === 'known'
    ? {metres: datum.quantity.si, text: `${datum.figure} ${datum.unit}`}
    : {text: stackWordsEn.notKnown}
}
