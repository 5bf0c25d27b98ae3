import {dirname} from 'node:path'
import type {Explanation, ReadHandbook} from './printed-numbers.ts'

/** The explanations of a page and of the other pages of its folder: a design has several, and a line leads from one to the next. */
export function pagesBeside(
  path: string,
  explanations: ReadHandbook['explanations'],
): ReadonlyMap<string, Explanation> {
  const beside = [...explanations].filter(([other]) => dirname(other) === dirname(path))
  return new Map(beside.flatMap(([, page]) => [...page]))
}
