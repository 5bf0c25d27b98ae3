import {all, type Change, type RuleCase, replaced} from '../check/each-rule/rule-case.ts'

/** Where the small vessel keeps the days of calibration. */
export const calibrationsPath = 'vessels/vessel-s/calibrations.csv'

const head = '# title: Calibration\n# source: demo-data\n'
const columns = 'day,tool,number,certificate,valid-to,note\n'
const first = '2019-01-10,torque-wrench,TW-1,C 7,,'

/** Days of calibration of the small vessel: these lines. */
export function calibrations(...lines: readonly string[]): Change {
  return (content) =>
    content.write(calibrationsPath, `${head}${columns}${lines.map((one) => `${one}\n`).join('')}`)
}

/** The design asks for a calibration each so long. */
export function intervalOf(time: string): Change {
  return replaced(
    'designs/design-s.yaml',
    'settings:\n',
    `settings:\n  - {id: calibration-interval, title: longest time since a calibration, value: {value: ${time}, status: common-practice, source: common-practice}}\n`,
  )
}

/** Tools beside the wrench of the small vessel. */
export function aboard(...tools: readonly string[]): Change {
  return replaced(
    'vessels/vessel-s/vessel.yaml',
    'spares-aboard:\n',
    `${tools.map((one) => `  - {${one}, location: box}\n`).join('')}spares-aboard:\n`,
  )
}

interface CellFault extends Pick<RuleCase, 'rule' | 'what' | 'reason' | 'mend' | 'see'> {
  readonly accepted: string
  readonly rejected: string
  readonly words: string
}

/** A line with one cell that cannot be. */
function cellFault({accepted, rejected, words, ...rest}: CellFault): RuleCase {
  return {
    ...rest,
    accepted: calibrations(accepted),
    rejected: calibrations(rejected),
    at: [calibrationsPath, words],
  }
}

const numberMend =
  'Read the number on the tool again and write one; lines of a tool that has left the ship are taken out'
const pastMend =
  'Send another one, or have this one calibrated and add its line; until then nothing is judged by it'

/** Faults in the record of calibrations. */
export const calibrationFaults: readonly RuleCase[] = [
  cellFault({
    rule: 'no-undefined-reference',
    what: 'a calibration of a tool that there is not',
    accepted: first,
    rejected: '2019-01-10,torque-wranch,TW-1,C 7,,',
    words: 'torque-wranch',
    reason: 'Unexpected `torque-wranch`, expected the id of a tool such as `torque-wrench`',
    mend: 'Write the id of a tool that exists, or add it',
  }),
  {
    rule: 'no-undefined-reference',
    what: 'a calibration of a spanner',
    accepted: all(aboard('tool: ring-spanner, number: RS-1'), calibrations(first)),
    rejected: all(
      aboard('tool: ring-spanner, number: RS-1'),
      calibrations('2019-01-10,ring-spanner,RS-1,C 7,,'),
    ),
    at: [calibrationsPath, 'ring-spanner'],
    reason:
      'Unexpected `ring-spanner` that measures nothing, expected one of `inside-micrometer`, `outside-micrometer`, `test-gauge`, `thermometer`, `torque-wrench`',
    mend: 'Name the tool that was calibrated, or state its class in tools.yaml',
    see: ['tools.yaml', '{id: ring-spanner'],
  },
  cellFault({
    rule: 'no-undefined-reference',
    what: 'a calibration under a number that is not aboard',
    accepted: first,
    rejected: '2019-01-10,torque-wrench,TW-2,C 7,,',
    words: 'TW-2',
    reason: 'Unexpected number `TW-2`, expected a number of `torque-wrench` aboard `vessel-s` such as `TW-1`',
    mend: numberMend,
  }),
  cellFault({
    rule: 'no-bad-date',
    what: 'a calibration on a day that does not exist',
    accepted: '2019-02-28,torque-wrench,TW-1,C 7,,',
    rejected: '2019-02-29,torque-wrench,TW-1,C 7,,',
    words: '2019-02-29',
    reason: 'Unexpected date `2019-02-29`, expected a day like `2031-02-14`',
    mend: 'Write year, month and day of a day that exists',
  }),
  cellFault({
    rule: 'no-bad-date',
    what: 'a certificate to a day that does not exist',
    accepted: '2019-01-10,torque-wrench,TW-1,C 7,2020-02-29,',
    rejected: '2019-01-10,torque-wrench,TW-1,C 7,2021-02-29,',
    words: '2021-02-29',
    reason: 'Unexpected date `2021-02-29`, expected a day like `2031-02-14`',
    mend: 'Write year, month and day of a day that exists',
  }),
  cellFault({
    rule: 'no-impossible-value',
    what: 'a certificate that ends before the calibration',
    accepted: '2019-05-14,torque-wrench,TW-1,C 7,2019-05-14,',
    rejected: '2019-05-14,torque-wrench,TW-1,C 7,2019-05-13,',
    words: '2019-05-13',
    reason: 'Unexpected `2019-05-13` before the calibration on 2019-05-14, expected a later day',
    mend: 'Read both days of the certificate again',
  }),
  {
    rule: 'no-duplicate-id',
    what: 'two calibrations of one tool on one day',
    accepted: calibrations(first, '2019-01-11,torque-wrench,TW-1,C 8,,'),
    rejected: calibrations(first, '2019-01-10,torque-wrench,TW-1,C 8,,'),
    at: [calibrationsPath, '2019-01-10,torque-wrench,TW-1,C 8'],
    see: [calibrationsPath, first],
    reason: 'Unexpected second line of `torque-wrench` `TW-1` on 2019-01-10, expected one a day',
    mend: 'Keep the line that is right',
  },
  {
    rule: 'no-missing-key',
    what: 'calibrations from no paper',
    accepted: calibrations(first),
    rejected: (content) => content.write(calibrationsPath, `# title: Calibration\n${columns}${first}\n`),
    at: [calibrationsPath, 'day,tool'],
    reason: 'Unexpected calibrations without a line `# source: …`, expected it above the header',
    mend: 'Add `# source: …` on top of the file with the id of the paper that they were read from',
  },
  {
    rule: 'no-stray-file',
    what: 'calibrations of a vessel that there is not',
    accepted: calibrations(first),
    rejected: (content) => content.write('vessels/vessel-t/calibrations.csv', `${head}${columns}${first}\n`),
    at: ['vessels/vessel-t/calibrations.csv'],
    reason: 'Unexpected calibrations of `vessel-t`, expected a vessel beside them',
    mend: 'Move the file to the folder of its vessel',
  },
  {
    rule: 'no-past-calibration',
    what: 'a wrench whose interval of calibration is over',
    accepted: all(intervalOf('12 months'), calibrations('2018-05-14,torque-wrench,TW-1,C 7,,')),
    rejected: all(intervalOf('12 months'), calibrations('2018-05-13,torque-wrench,TW-1,C 7,,')),
    at: [calibrationsPath, '2018-05-13'],
    reason:
      'Unexpected `torque-wrench` `TW-1` aboard `vessel-s`, calibrated 2018-05-13 and valid to 2019-05-13, expected a calibration that is valid on 2019-05-14',
    mend: pastMend,
    see: ['designs/design-s.yaml', '12 months, status'],
  },
  {
    rule: 'no-past-calibration',
    what: 'a certificate that is over before its interval',
    accepted: all(
      intervalOf('12 months'),
      calibrations('2019-01-10,torque-wrench,TW-1,C 7,2019-05-13,', '2019-05-01,torque-wrench,TW-1,C 8,,'),
    ),
    rejected: all(intervalOf('12 months'), calibrations('2019-01-10,torque-wrench,TW-1,C 7,2019-05-13,')),
    at: [calibrationsPath, '2019-01-10'],
    reason:
      'Unexpected `torque-wrench` `TW-1` aboard `vessel-s`, calibrated 2019-01-10 and valid to 2019-05-13, expected a calibration that is valid on 2019-05-14',
    mend: pastMend,
  },
]
