import type {IsolationWords} from '../figures/isolation-diagram.ts'
import type {SealWords} from '../figures/seal-orientation-figure.ts'
import type {PlanWords} from '../figures/tank-plan.ts'
import type {TighteningWords} from '../figures/tightening-order-figure.ts'

/** English words of the order of tightening. */
export const tighteningWordsEn: TighteningWords = {
  bolt: 'number on the head: the bolt',
  turn: 'number beside it: its turn',
  view: (bolts, title) =>
    `Bolt circle of ${bolts} bolts, ${title}, seen from the heads and numbered clockwise from the top.`,
  order: (order) => `Tighten in the order ${order}.`,
  passes: (passes) => `in passes: ${passes}`,
}

/** English words of the tank plan. */
export const planWordsEn: PlanWords = {
  view: 'Tank plan, bow to the left, port side below',
  marked: (tag) => (tag === undefined ? 'no tank is marked' : `tank ${tag} is marked`),
  tanks: (tags) => `with the tanks ${tags}`,
  pump: (tag) => `Pump ${tag}`,
}

/** English words of a seal and its lips. */
export const sealWordsEn: SealWords = {
  sides: {cargo: 'cargo side', cofferdam: 'cofferdam side', oil: 'oil side'},
  spaces: {cargo: 'cargo', cofferdam: 'cofferdam', oil: 'oil'},
  asItStands: 'as it stands in the pump',
  looksAt: (space) => `open edge looks at the ${space}`,
  view: (title, below, above) =>
    `Half section of the ${title} as it stands in the pump: ${above} above, ${below} below. From the wet end up:`,
  data: (below, above) => `In the pump ${below} below, ${above} above`,
}

/** English words of the lines of an isolation list. */
export const isolationWordsEn: IsolationWords = {
  pump: (tag, phase) => `pump ${tag} · ${phase}`,
  view: (tag, phase) => `Isolation lines of pump ${tag}, ${phase}.`,
  none: 'none',
  noneOnPump: 'none on this pump',
  stays: (words) => `stays: ${words}`,
  secured: {locked: 'locked', sealed: 'sealed', tagged: 'tagged'},
  spaces: {'oil side': 'oil side', cofferdam: 'cofferdam', 'cargo side': 'cargo side', tank: 'tank'},
  lock: 'lock',
  sealOrTag: 'seal or tag',
  meanings: {
    valve: {passes: 'valve open', shut: 'valve closed', either: 'valve, see its words'},
    blind: {passes: 'no blind', shut: 'blind in', either: 'blind, see its words'},
    fuse: {passes: 'fuse in', shut: 'fuse drawn', either: 'fuse, see its words'},
    'relief-valve': {
      passes: 'relief valve fitted',
      shut: 'relief valve off',
      either: 'relief valve, see its words',
    },
    plug: {passes: 'no plug', shut: 'plug in', either: 'plug, see its words'},
    'transport-bolt': {passes: 'no bolt', shut: 'bolt in', either: 'bolt, see its words'},
  },
}
