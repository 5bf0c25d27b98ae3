import {rounded} from '../svg-text.ts'
import {type PipeStack, pipeEdges, type StackPipe, stackPipes} from './stack-data.ts'

/** A pipe of the stack by its radii, in millimetres; a wall with an edge that nobody knows is drawn dashed. */
export interface PipeWall {
  readonly pipe: StackPipe
  readonly outside: number
  readonly bore: number
  readonly known: boolean
}

/** Shares of the outermost diameter that the edges take where nobody knows them. */
const usual = [1, 0.95, 0.84, 0.77, 0.45, 0.36]

/** The three walls from outside in; an edge that nobody knows is drawn where its neighbours leave it room. */
export function wallsOf({diameters}: Pick<PipeStack, 'diameters'>): readonly PipeWall[] {
  const stated = pipeEdges.map((edge) => diameters[edge].metres)
  const largest = Math.max(
    ...stated.map((one, index) => (one === undefined ? 0 : one / (usual[index] ?? 1))),
    0.001,
  )
  const radii = stated.map((one, index) => {
    if (one !== undefined) return one * 500
    const outer = stated.slice(0, index).findLast((other) => other !== undefined) ?? largest
    const inner = stated.slice(index + 1).find((other) => other !== undefined) ?? 0
    return Math.max(Math.min((usual[index] ?? 1) * largest, outer * 0.97), inner * 1.03) * 500
  })
  return stackPipes.map((pipe, index) => ({
    pipe,
    outside: radii[index * 2] ?? 0,
    bore: radii[index * 2 + 1] ?? 0,
    known: stated[index * 2] !== undefined && stated[index * 2 + 1] !== undefined,
  }))
}

/** A circle as a piece of a path, so that rings are one path. */
export function circlePath(x: number, y: number, radius: number): string {
  const r = rounded(radius)
  return `M${rounded(x)} ${rounded(y - radius)}a${r} ${r} 0 1 1-.1 0z`
}
