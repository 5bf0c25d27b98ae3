import type {NotedSource} from '../calculation-note.ts'

/** Ideal gas law, as used by the pressure-change technique of leak testing. */
export const idealGasLaw: NotedSource = {
  title: 'ideal gas law, pressure-change technique of EN 1779',
  edition: '1999',
  howKnown: 'memory',
  status: 'unknown',
}

/** Ideal gas law where no standard stands behind it. */
export const textbookGasLaw: NotedSource = {
  title: 'ideal gas law',
  edition: 'textbook',
  howKnown: 'memory',
  status: 'current',
}

/** Balance of one gas in a space whose air is mixed at every moment. */
export const wellMixedBalance: NotedSource = {
  title: 'balance of one gas in a well mixed space',
  edition: 'textbook',
  howKnown: 'computed',
  status: 'current',
}

/** Weight of a column of liquid. */
export const hydrostatics: NotedSource = {
  title: 'hydrostatics, standard gravity of ISO 80000-3',
  edition: 'textbook',
  howKnown: 'memory',
  status: 'current',
}

/** What the trade does without a paper that says so. */
export const commonPractice: NotedSource = {
  title: 'common practice of the trade, no source',
  edition: 'none',
  howKnown: 'common-practice',
  status: 'unknown',
}
