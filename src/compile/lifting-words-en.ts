import type {LiftWords} from '../figures/lifting/lift-figure.ts'
import type {LoweringWords} from '../figures/lifting/lowering-figure.ts'

/** English words of the figures of lifts. */
export const liftWordsEn: LiftWords & {
  readonly gear: string
  readonly groove: (ring: string) => string
} = {
  notKnown: 'NOT KNOWN',
  view: 'Seen from the side: the hook above, its legs below it, and what hangs in them.',
  mass: (mass) => `mass ${mass}`,
  legs: (legs) => (legs === 1 ? 'one leg' : `${legs} legs`),
  angle: (angle) => `${angle} from the vertical`,
  angleUnknown: 'angle NOT KNOWN',
  straight: 'straight down',
  legLoad: 'load of one leg',
  ratedLoad: (gear) => `rated load of ${gear}`,
  least: (load) => `at least ${load}`,
  empty: 'Nothing is lifted before its mass is known',
  boxed: 'Outline not to scale',
  drawnBy: (lengths) => `Drawn by: ${lengths}.`,
  restFree: 'What has no dimension here is not to scale',
  fromAbove: 'from above:',
  gear: 'each item of gear',
  groove: (ring) => `groove of the ${ring}`,
  hookAbove: 'the hook is above the drawing',
}

const moves = {
  lowering: 'Drawn let down; the arrow points down.',
  raising: 'Drawn before it is raised; the arrow points up.',
}

/** English words of the pump unit on its lowering bolts, by what is done. */
export function loweringWordsEn(work: 'lowering' | 'raising'): LoweringWords & {readonly washer: string} {
  return {
    notKnown: 'NOT KNOWN',
    view: 'Pump unit on its two lowering bolts, 1 on the left and 2 on the right: from the side below the motor flange, and the motor flange from below.',
    bolts: (thread) => `1 and 2: lowering bolts ${thread}`,
    places: (count, areOpposite) =>
      areOpposite
        ? `in 2 of ${count} bolt places, diagonally opposite`
        : `in 2 of ${count} bolt places, as far apart as the places allow`,
    boltLoad: (load) => `load of each bolt ${load}`,
    carries: (mass) => `each one alone carries the whole mass of ${mass}`,
    travel: (travel, turns) => `travel ${travel}: ${turns} turns of each nut`,
    torque: (torque) => `torque ${work} the unit: ${torque}`,
    moves: moves[work],
    washer: 'outside of the thrust washer',
    drawnBy: (lengths) => `Drawn by: ${lengths}.`,
    boxed: 'Outline not to scale',
    restFree: 'What has no dimension here is not to scale',
  }
}
