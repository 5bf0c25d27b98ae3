import type {Change, RuleCase} from '../check/each-rule/rule-case.ts'

/** Where the small vessel keeps her running hours. */
export const hoursPath = 'vessels/vessel-s/hours.csv'

const head = '# title: Running hours\n# source: demo-data\n'
const columns = 'day,component,serial,at,hours,counted,new-counter-from,note\n'
const first = '2018-01-01,motor,M-1,1p,4120,meter,,\n'

/** Running hours of the small vessel: these lines. */
export function hours(...lines: readonly string[]): Change {
  return (content) => content.write(hoursPath, `${head}${columns}${lines.map((one) => `${one}\n`).join('')}`)
}

function second(line: string): Change {
  return hours(first.trim(), line)
}

interface StepFault {
  readonly what: string
  readonly rule: RuleCase['rule']
  readonly accepted: string
  readonly rejected: string
  readonly reason: string
  readonly mend: string
}

/** A second line that does not follow from the first one. */
function stepFault({accepted, rejected, ...words}: StepFault): RuleCase {
  return {
    ...words,
    accepted: second(accepted),
    rejected: second(rejected),
    at: [hoursPath, rejected],
    see: [hoursPath, first.trim()],
  }
}

interface CellFault {
  readonly what: string
  readonly rule: RuleCase['rule']
  readonly accepted: string
  readonly rejected: string
  readonly words: string
  readonly reason: string
  readonly mend: string
}

/** A line with one cell that cannot be. */
function cellFault({accepted, rejected, words, ...rest}: CellFault): RuleCase {
  return {...rest, accepted: hours(accepted), rejected: hours(rejected), at: [hoursPath, words]}
}

const counterMend =
  'Read counter and nameplate again; where the counter was exchanged, write what the new one began with under `new-counter-from`'
const twiceMend = 'Read both days and both counters again'

/** Faults in the record of running hours. */
export const hoursFaults: readonly RuleCase[] = [
  stepFault({
    rule: 'no-falling-hours',
    what: 'running hours that step back',
    accepted: '2018-01-31,motor,M-1,1p,4120,log,,',
    rejected: '2018-01-31,motor,M-1,1p,4119.9,log,,',
    reason: 'Unexpected fall from `4120` to `4119.9` hours of motor `M-1`, expected hours that never fall',
    mend: counterMend,
  }),
  stepFault({
    rule: 'no-falling-hours',
    what: 'a new counter that shows less than it began with',
    accepted: '2018-01-31,motor,M-1,1p,12,meter,12,',
    rejected: '2018-01-31,motor,M-1,1p,11.9,meter,12,',
    reason:
      'Unexpected fall from `12` of the new counter to `11.9` hours of motor `M-1`, expected hours that never fall',
    mend: counterMend,
  }),
  stepFault({
    rule: 'no-impossible-value',
    what: 'more running hours than the calendar has',
    accepted: '2018-01-31,head,H-1,1p,4864.1,meter,,',
    rejected: '2018-01-31,motor,M-1,1p,4864.1,meter,,',
    reason:
      'Unexpected `744.1` hours of motor `M-1` in 30 days, expected at most the `744` of both days and those between',
    mend: twiceMend,
  }),
  stepFault({
    rule: 'no-implausible-value',
    what: 'more running hours than a cargo pump has',
    accepted: '2018-01-31,motor,M-1,1p,4372,meter,,',
    rejected: '2018-01-31,motor,M-1,1p,4372.1,meter,,',
    reason:
      'Unexpected `252.1` hours of motor `M-1` in 30 days, expected at most `252`: 0.35 of the calendar',
    mend: twiceMend,
  }),
  stepFault({
    rule: 'no-duplicate-id',
    what: 'running hours of one component on one day in two lines',
    accepted: '2018-01-02,motor,M-1,1p,4121,log,,',
    rejected: '2018-01-01,motor,M-1,1p,4121,log,,',
    reason: 'Unexpected second line of motor `M-1` on 2018-01-01, expected one a day',
    mend: 'Keep the line that is right',
  }),
  cellFault({
    rule: 'no-undefined-reference',
    what: 'running hours of a motor that no pump has',
    accepted: '2018-01-01,motor,M-1,1p,4120,meter,,',
    rejected: '2018-01-01,motor,M-11,1p,4120,meter,,',
    words: 'M-11',
    reason: 'Unexpected motor `M-11`, expected the serial of a motor of `vessel-s` such as `M-1`',
    mend: 'Read the nameplate again; what is fitted nowhere any more stands above the header: `# removed: motor M-7`',
  }),
  cellFault({
    rule: 'no-undefined-reference',
    what: 'running hours in a pump that the vessel has not',
    accepted: '2018-01-01,motor,M-1,,4120,meter,,',
    rejected: '2018-01-01,motor,M-1,1s,4120,meter,,',
    words: '1s',
    reason: 'Unexpected `1s`, expected the id of a pump of this vessel such as `1p`',
    mend: 'Write the id of a pump of this vessel that exists, or add it',
  }),
  cellFault({
    rule: 'no-bad-date',
    what: 'running hours of a day that does not exist',
    accepted: '2018-02-28,motor,M-1,1p,4120,meter,,',
    rejected: '2018-02-29,motor,M-1,1p,4120,meter,,',
    words: '2018-02-29',
    reason: 'Unexpected date `2018-02-29`, expected a day like `2031-02-14`',
    mend: 'Write year, month and day of a day that exists',
  }),
  cellFault({
    rule: 'no-bad-quantity',
    what: 'running hours below zero',
    accepted: '2018-01-01,motor,M-1,1p,0,meter,,',
    rejected: '2018-01-01,motor,M-1,1p,-1,meter,,',
    words: '-1,meter',
    reason: 'Unexpected hours `-1`, expected a number such as `4120` or `4120.5`',
    mend: 'Write the hours in digits, without a unit; leave the line out where nobody read them',
  }),
  cellFault({
    rule: 'no-wrong-shape',
    what: 'running hours that nobody says how they were counted',
    accepted: '2018-01-01,motor,M-1,1p,4120,estimate,,',
    rejected: '2018-01-01,motor,M-1,1p,4120,estimat,,',
    words: 'estimat',
    reason: 'Unexpected `estimat`, expected a word such as `estimate`',
    mend: 'Write one of meter, log, estimate',
  }),
  {
    rule: 'no-missing-key',
    what: 'running hours from no log',
    accepted: hours(first.trim()),
    rejected: (content) => content.write(hoursPath, `# title: Running hours\n${columns}${first}`),
    at: [hoursPath, 'day,component'],
    reason: 'Unexpected hours without a line `# source: …`, expected it above the header',
    mend: 'Add `# source: …` on top of the file with the id of the log that they were read from',
  },
  {
    rule: 'no-stray-file',
    what: 'running hours of a vessel that there is not',
    accepted: hours(first.trim()),
    rejected: (content) => content.write('vessels/vessel-t/hours.csv', `${head}${columns}${first}`),
    at: ['vessels/vessel-t/hours.csv'],
    reason: 'Unexpected hours of `vessel-t`, expected a vessel beside them',
    mend: 'Move the file to the folder of its vessel',
  },
]
