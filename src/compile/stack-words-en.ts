import type {StackWords} from '../figures/stack/stack-data.ts'

/** English words of the figure of the pipe stack. */
export const stackWordsEn: StackWords = {
  title: 'pipe stack, drawn lying, deck at the left',
  onDeck: 'on deck',
  inTank: 'in the tank, its liquid around the stack',
  motor: 'motor',
  rows: {supports: 'supports', sections: 'sections', joints: 'joints', lengths: 'lengths', whole: 'whole'},
  notKnown: 'NOT KNOWN',
  none: 'none',
  notListed: (what) => `${what}: NOT KNOWN`,
  pipes: {outer: 'outer pipe', return: 'return pipe', pressure: 'pressure pipe'},
  pipe: (name, outside, bore) => `${name}, outside Ø ${outside}, bore Ø ${bore}`,
  spaces: {
    pressure: {letter: 'P', title: 'oil pressure'},
    return: {letter: 'R', title: 'oil return'},
    cofferdam: {letter: 'C', title: 'cofferdam'},
  },
  across: 'A',
  scale: (times) =>
    times === 1 ? 'Lengths and widths to one scale.' : `Widths drawn ${times} times larger than lengths.`,
  dashed: 'Dashed: an edge is NOT KNOWN.',
  signs: 'Flanges, supports, top plate and motor are not to scale.',
  text: {
    view: (pump) =>
      `Longitudinal section of the pipe stack of pump ${pump}, drawn lying, from the top plate at deck on the left to the motor on the right, with the tank liquid outside, and section A–A across it. Walls are black; oil under pressure is dashed, returning oil dotted, the cofferdam blank. Supports have their numbers in squares, sections in circles.`,
    whole: (length) => `Whole length ${length}.`,
    sections: (list) => `Sections: ${list}.`,
    joints: 'Joint 1 is at the top plate, each other joint above the section of its number.',
    joint: 'Joint 1 is at the top plate, the other joints are NOT KNOWN.',
    supports: (list) => `Supports, below the top plate: ${list}.`,
    bolts: (bolts) => `Bolts of each joint: ${bolts}.`,
    rings: (list) => `O-rings of each joint: ${list}.`,
    pipes: (list) => `Pipes from outside in: ${list}.`,
    spaces: (list) => `Spaces from the middle out: ${list}.`,
  },
}

/** What stands below the figure on the page of its pump. */
export const stackCaptionEn = 'Pipe stack of this pump with its sections, joints and supports'
