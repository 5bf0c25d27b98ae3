import type {IsolationLine} from '../../src/handbook-model/pages.ts'
import {text} from './fixture-text.ts'

/** A point to isolate, and a role without a point. */
export const points = (name: string): readonly IsolationLine[] => {
  const point: IsolationLine = {
    id: `${name}-point`,
    number: text(`${name}-number`),
    role: text(`${name}-role`),
    tag: text(`${name}-tag`),
    medium: text(`${name}-medium`),
    kind: 'valve',
    normal: text(`${name}-normal`),
    isolated: text(`${name}-isolated`),
    where: text(`${name}-where`),
    lock: text(`${name}-lock`),
    proof: text(`${name}-proof`),
    restoredWith: text(`${name}-restored`),
    noneBecause: '',
  }
  const blank = {
    number: '',
    tag: '',
    medium: '',
    kind: '',
    normal: '',
    isolated: '',
    where: '',
    lock: '',
    proof: '',
  }
  return [
    point,
    {
      ...blank,
      id: `${name}-none`,
      role: text(`${name}-none-role`),
      restoredWith: '',
      noneBecause: text(`${name}-none-because`),
    },
  ]
}
