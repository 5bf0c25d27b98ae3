import {all, type Change, type RuleCase} from '../check/each-rule/rule-case.ts'
import {cellFaultsOf} from './cell-fault.ts'
import {hours} from './hours-faults.ts'

/** Where the small vessel keeps the clearances of her wear rings. */
export const wearPath = 'vessels/vessel-s/wear.csv'

const units = '# unit clearance: mm diametral\n# unit least-gap: mm diametral\n'
const columns = 'day,at,head,ring,hours,phase,clearance,least-gap,renewed,instrument,note\n'
const source = '# source: demo-data\n'

/** Clearances of the small vessel: these lines. */
export function wear(...lines: readonly string[]): Change {
  return (content) =>
    content.write(wearPath, `${source}${units}${columns}${lines.map((one) => `${one}\n`).join('')}`)
}

const tools = 'inside-micrometer and outside-micrometer'

/** A line of the one ring of the small vessel. */
export function wearLine(
  day: string,
  run: number,
  phase: string,
  clearance: string,
  more = ',,',
  note = '',
): string {
  const [gap = '', renewed = ''] = more.split(',')
  return `${day},1p,H-1,lower-ring,${run},${phase},${clearance},${gap},${renewed},${tools},${note}`
}

const first = wearLine('2018-01-01', 4120, 'as-found', '0.84')

/** A line with one cell that cannot be. */
const cellFault = cellFaultsOf(wearPath, first, wear)

const hoursMend = 'Write what the head had run in all; read counter and nameplate again'

/** A clearance that does not agree with one line of the running hours. */
function hoursFault(
  what: string,
  counted: string,
  accepted: string,
  rejected: string,
  reason: string,
): RuleCase {
  return {
    rule: 'no-falling-hours',
    what,
    accepted: all(hours(counted), wear(accepted)),
    rejected: all(hours(counted), wear(rejected)),
    at: [wearPath, rejected],
    see: ['vessels/vessel-s/hours.csv', counted],
    reason,
    mend: hoursMend,
  }
}

/** Faults in the record of clearances. */
export const wearFaults: readonly RuleCase[] = [
  cellFault({
    rule: 'no-undefined-reference',
    what: 'a clearance in a pump that the vessel has not',
    rejected: first.replace('1p', '1s'),
    words: '1s',
    reason: 'Unexpected `1s`, expected the id of a pump of this vessel such as `1p`',
    mend: 'Write the id of a pump of this vessel that exists, or add it',
  }),
  cellFault({
    rule: 'no-undefined-reference',
    what: 'a clearance of a head that no pump has',
    rejected: first.replace('H-1', 'H-11'),
    words: 'H-11',
    reason: 'Unexpected head `H-11`, expected the serial of a head of `vessel-s` such as `H-1`',
    mend: 'Read the nameplate again; what is fitted nowhere any more stands in hours.csv: `# removed: motor M-7`',
  }),
  cellFault({
    rule: 'no-undefined-reference',
    what: 'a clearance of a ring that the design has not',
    rejected: first.replace('lower-ring', 'upper-ring'),
    words: 'upper-ring',
    reason: 'Unexpected `upper-ring`, expected the id of a wear ring of this pump such as `lower-ring`',
    mend: 'Write the id of a wear ring of this pump that exists, or add it',
  }),
  {
    ...cellFault({
      rule: 'no-undefined-reference',
      what: 'a clearance measured with a spanner',
      rejected: first.replace(tools, 'inside-micrometer and ring-spanner'),
      words: 'inside-micrometer and ring-spanner',
      reason:
        'Unexpected `ring-spanner` that does not measure a length, expected one of `inside-micrometer`, `outside-micrometer`',
      mend: 'Name the tool that it was measured with, or leave the cell blank where nobody wrote it',
    }),
    see: ['tools.yaml', '{id: ring-spanner'],
  },
  cellFault({
    rule: 'no-bad-quantity',
    what: 'a clearance below zero',
    rejected: first.replace('0.84', '-0.84'),
    words: '-0.84',
    reason: 'Unexpected negative value `-0.84 mm diametral`, expected zero or more',
    mend: 'Write the number of `clearance` in mm diametral, without the unit',
  }),
  cellFault({
    rule: 'no-impossible-value',
    what: 'a clearance of nothing',
    rejected: first.replace('0.84', '0'),
    words: '0,,,',
    reason: 'Unexpected clearance of `0`, expected more than zero',
    mend: 'Read the source of the table again',
  }),
  cellFault({
    rule: 'no-impossible-value',
    what: 'a least gap above the mean of the gaps',
    accepted: wearLine('2018-01-01', 4120, 'as-found', '0.84', '0.84,'),
    rejected: wearLine('2018-01-01', 4120, 'as-found', '0.84', '0.85,'),
    words: '0.85',
    reason:
      'Unexpected least gap `0.85` above the clearance `0.84`, expected the smallest of the gaps whose mean the clearance is',
    mend: 'Read both on the sheet again',
  }),
  cellFault({
    rule: 'no-wrong-shape',
    what: 'a clearance that was read neither before nor after the work',
    rejected: first.replace('as-found', 'found'),
    words: 'found,0.84',
    reason: 'Unexpected `found`, expected one of `as-found`, `as-left`',
    mend: 'Write one of as-found, as-left',
  }),
  cellFault({
    rule: 'no-bad-date',
    what: 'a clearance of a day that does not exist',
    rejected: first.replace('2018-01-01', '2018-02-29'),
    words: '2018-02-29',
    reason: 'Unexpected date `2018-02-29`, expected a day like `2031-02-14`',
    mend: 'Write year, month and day of a day that exists',
  }),
  {
    rule: 'no-unmeasured-renewal',
    what: 'a ring renewed without its reading as found',
    accepted: wear(first, wearLine('2018-01-01', 4120, 'as-left', '0.60', '0.56,yes')),
    rejected: wear(first, wearLine('2018-06-01', 4520, 'as-left', '0.60', '0.56,yes')),
    at: [wearPath, wearLine('2018-06-01', 4520, 'as-left', '0.60', '0.56,yes')],
    reason:
      'Unexpected renewal of `lower-ring` of head `H-1` on 2018-06-01 without its reading as found, expected one of that day',
    mend: 'Add the clearance that the old ring was found with; where nobody read it, leave the renewal to the note',
  },
  cellFault({
    rule: 'no-unmeasured-renewal',
    what: 'a renewal at the reading as found',
    accepted: wearLine('2018-01-01', 4120, 'as-found', '0.84', ',no'),
    rejected: wearLine('2018-01-01', 4120, 'as-found', '0.84', ',yes'),
    words: wearLine('2018-01-01', 4120, 'as-found', '0.84', ',yes'),
    reason:
      'Unexpected renewal of `lower-ring` of head `H-1` at its reading as found, expected it at the reading as left',
    mend: 'Write `yes` at the reading as left of that day',
  }),
  {
    rule: 'no-duplicate-id',
    what: 'one clearance of one day in two lines',
    accepted: wear(first, first.replace('as-found', 'as-left')),
    rejected: wear(first, first.replace('0.84', '0.85')),
    at: [wearPath, first.replace('0.84', '0.85')],
    see: [wearPath, first],
    reason: 'Unexpected second line of `lower-ring` of head `H-1` as-found on 2018-01-01, expected one a day',
    mend: 'Keep the line that is right',
  },
  {
    rule: 'no-falling-hours',
    what: 'hours of a head that fall from one clearance to the next',
    accepted: wear(first, wearLine('2018-06-01', 4120, 'as-found', '0.85')),
    rejected: wear(first, wearLine('2018-06-01', 4119, 'as-found', '0.85')),
    at: [wearPath, wearLine('2018-06-01', 4119, 'as-found', '0.85')],
    see: [wearPath, first],
    reason:
      'Unexpected `4119` hours of head `H-1` on 2018-06-01 beside `4120` on 2018-01-01, expected hours that never fall',
    mend: hoursMend,
  },
  hoursFault(
    'a clearance at fewer hours than the counter showed before',
    '2017-12-01,head,H-1,1p,4120,meter,,',
    first,
    first.replace('4120', '4119.9'),
    'Unexpected `4119.9` hours of head `H-1` on 2018-01-01 beside `4120` on 2017-12-01, expected hours that never fall',
  ),
  hoursFault(
    'a clearance at more hours than the counter showed on that day',
    '2018-01-01,head,H-1,1p,4120,meter,,',
    first,
    first.replace('4120', '4121'),
    'Unexpected `4121` hours of head `H-1` on 2018-01-01 beside `4120` on 2018-01-01, expected hours that never fall',
  ),
  {
    rule: 'no-missing-key',
    what: 'clearances without a unit',
    accepted: wear(first),
    rejected: (content) => content.write(wearPath, `${source}${columns}${first}\n`),
    at: [wearPath, 'day,at'],
    reason: 'Unexpected table without a line `# unit clearance: …`, expected the unit of the column',
    mend: 'Name the unit of each column of numbers above the header',
  },
  {
    rule: 'no-bad-quantity',
    what: 'clearances in millimetres of no side',
    accepted: wear(first),
    rejected: (content) => content.write(wearPath, `${source}# unit clearance: mm\n${columns}${first}\n`),
    at: [wearPath, '# unit clearance'],
    reason: 'Unexpected unit `mm`, expected a number such as `3.5` with one of the units `mm diametral`',
    mend: 'Name the unit of each column of numbers above the header',
  },
  {
    rule: 'no-missing-key',
    what: 'clearances from no log',
    accepted: wear(first),
    rejected: (content) => content.write(wearPath, `${units}${columns}${first}\n`),
    at: [wearPath, 'day,at'],
    reason: 'Unexpected wear without a line `# source: …`, expected it above the header',
    mend: 'Add `# source: …` on top of the file with the id of the log that they were read from',
  },
  {
    rule: 'no-stray-file',
    what: 'clearances of a vessel that there is not',
    accepted: wear(first),
    rejected: (content) =>
      content.write('vessels/vessel-t/wear.csv', `${source}${units}${columns}${first}\n`),
    at: ['vessels/vessel-t/wear.csv'],
    reason: 'Unexpected wear of `vessel-t`, expected a vessel beside them',
    mend: 'Move the file to the folder of its vessel',
  },
]
