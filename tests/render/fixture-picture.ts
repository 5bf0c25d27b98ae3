import type {Picture} from '../../src/handbook-model/pages.ts'
import {text} from './fixture-text.ts'

/** A drawing as a file below `figures/`. */
export const picture = (name: string, size: Picture['size']): Picture => ({
  path: `figures/${name}.svg`,
  svg: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"></svg>',
  width: 9,
  height: 9,
  size,
  alternative: text(`${name}-alternative`),
})
