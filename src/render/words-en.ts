/** English words of the interface: labels and short statements. Another language is another file of this shape. */
export const interfaceWords = {
  skip: 'Skip to the page',
  unpack: 'Some handbook files are missing. Copy the WHOLE folder to the PC, then open index.html again.',
  noScripts:
    'Scripts are off: colours follow the PC, and sheet numbers are left to write by hand. Everything else is complete.',
  demonstration: 'Demonstration data, not for service',
  draft: 'DRAFT, NOT ISSUED',
  untried: 'not yet tried on board',
  revision: 'revision',
  phases: {'as-found': 'AS FOUND', 'as-left': 'AS LEFT', during: 'DURING THE WORK'},
  palettes: {day: 'Day', dusk: 'Dusk', night: 'Night'},
  navigation: {
    start: 'Start',
    values: 'Values',
    cautions: 'Cautions',
    tools: 'Tools',
    parts: 'Spare parts',
    sources: 'Sources',
    words: 'Words',
  },
  footer:
    'Supports trained people; replaces no permit, class, flag, port or local rule. The stricter rule wins.',
  urgent: {
    word: 'URGENT REVISION',
    short: 'urgent',
    /** A hint from the clock of the computer, which nobody trusts. */
    over: 'The day to which it is valid is over: the clock of this computer says',
    ask: 'Ask the office what counts now, before you go on.',
    list: 'Urgent revisions in force',
    listHint: 'Each stands above the pages that are named, until its day or until the office ends it.',
    none: 'None in this folder.',
  },
  tryReading: {
    head: 'Try a reading',
    hint: 'It is drawn and judged here and kept nowhere: no record changes.',
    draw: 'Draw it',
    away: 'Take it away',
    readings: 'All readings',
    fitted: 'What is fitted, with its running hours',
  },
  record: 'This page is a record: it has no revision, no approval and no check code.',
  recordHints: {
    hours: 'Hours belong to the component and go with it from pump to pump.',
    'pump-record':
      'Wear belongs to the head and goes with it from pump to pump. Shown are the readings of what is fitted now.',
    calibrations: 'The label on the tool is read before each job: it counts where it says an earlier day.',
  },
  update: {
    head: (revision: string): string => `Reason for update, revision ${revision}`,
    bars: 'A bar in the outside margin stands beside each block that changed or is new.',
    removed: (what: string, id: string, afterStep: string): string =>
      `Deleted: ${what} “${id}”${afterStep === '' ? '' : `, stood after step ${afterStep}`}`,
  },
  removedKinds: {
    step: 'step',
    hold: 'hold point',
    urgent: 'urgent revision',
    caution: 'caution',
    value: 'value',
    limit: 'limit',
    isolation: 'isolation point',
    reading: 'reading',
    tool: 'tool',
    part: 'part',
    line: 'lines of',
  },
  effective: {
    same: 'as in the issue before',
    new: 'new',
    changed: 'changed',
    wording: 'wording changed',
    draft: 'DRAFT, NOT ISSUED',
    withdrawn: 'WITHDRAWN',
    gone: 'not in this draft',
    publication: 'about the issue, no revision',
  },
  changeDone: {added: 'added', changed: 'changed', removed: 'removed'},
  cautionAgain: 'in full further up',
  wholeShip: 'whole ship',
  wholeDesign: 'design',
  handBlank: 'sheet ____ of ____',
} as const

/** Spoken words of the letters and digits of a check code. Source: ICAO spelling alphabet as in the Standard Marine Communication Phrases; from memory. */
const spoken: Readonly<Record<string, string>> = {
  '0': 'Zero',
  '1': 'One',
  '2': 'Two',
  '3': 'Three',
  '4': 'Four',
  '5': 'Five',
  '6': 'Six',
  '7': 'Seven',
  '8': 'Eight',
  '9': 'Nine',
  A: 'Alfa',
  B: 'Bravo',
  C: 'Charlie',
  D: 'Delta',
  E: 'Echo',
  F: 'Foxtrot',
  G: 'Golf',
  H: 'Hotel',
  J: 'Juliett',
  K: 'Kilo',
  M: 'Mike',
  N: 'November',
  P: 'Papa',
  Q: 'Quebec',
  R: 'Romeo',
  S: 'Sierra',
  T: 'Tango',
  V: 'Victor',
  W: 'Whiskey',
  X: 'X-ray',
  Y: 'Yankee',
  Z: 'Zulu',
}

/** A check code as it is read over the radio. */
export function spokenCode(code: string): string {
  return code
    .split('-')
    .map((group) => [...group].map((letter) => spoken[letter] ?? letter).join(' '))
    .join(', ')
}
