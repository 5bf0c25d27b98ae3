import type {Picture, TouchedParts} from '../../src/handbook-model/pages.ts'
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

/** A section of a pump with one part marked and one outside of it. */
export const touchedParts: TouchedParts = {
  path: 'figures/design-a.svg',
  width: 900,
  height: 1500,
  marks: {path: 'figures/marks-a.svg', svg: '<svg/>'},
  alternative: text('touched-alternative'),
  numbers: [{balloon: '4', title: text('touched-ring')}],
  others: [{balloon: '27', title: text('touched-valve')}],
  drawnAs: text('touched-pump'),
}

/** Every picture of the fixture. */
export const pictures: readonly Picture[] = [
  picture('plan', 'small'),
  picture('order', 'small'),
  picture('lines', 'wide'),
  picture('arrangement', 'wide'),
]
