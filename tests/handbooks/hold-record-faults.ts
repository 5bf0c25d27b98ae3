import type {Change, RuleCase} from '../check/each-rule/rule-case.ts'
import {cellFaultsOf} from './cell-fault.ts'

/** Where the small vessel keeps her pressure holds. */
export const holdsPath = 'vessels/vessel-s/tightness.csv'

const head =
  '# source: demo-data\n# unit minute: min\n# unit pressure: bar(g)\n# unit temperature: °C\n# unit barometer: mbar(a)\n'
const columns = 'day,at,test,minute,pressure,temperature,barometer,note\n'

/** Pressure holds of the small vessel: these lines. */
export function holds(...lines: readonly string[]): Change {
  return (content) => content.write(holdsPath, `${head}${columns}${lines.map((one) => `${one}\n`).join('')}`)
}

const first = '2018-01-01,1p,1,0,2.90,20.0,1012,'

/** A line with one cell that cannot be. */
const cellFault = cellFaultsOf(holdsPath, first, holds)

/** Faults in the record of pressure holds. */
export const holdRecordFaults: readonly RuleCase[] = [
  cellFault({
    rule: 'no-undefined-reference',
    what: 'a pressure hold of a pump that the vessel has not',
    rejected: first.replace('1p', '1s'),
    words: '1s',
    reason: 'Unexpected `1s`, expected the id of a pump of this vessel such as `1p`',
    mend: 'Write the id of a pump of this vessel that exists, or add it',
  }),
  cellFault({
    rule: 'no-bad-date',
    what: 'a pressure hold of a day that does not exist',
    rejected: first.replace('2018-01-01', '2018-02-29'),
    words: '2018-02-29',
    reason: 'Unexpected date `2018-02-29`, expected a day like `2031-02-14`',
    mend: 'Write year, month and day of a day that exists',
  }),
  cellFault({
    rule: 'no-bad-quantity',
    what: 'a pressure hold with a pressure that is no number',
    rejected: first.replace('2.90', 'full'),
    words: 'full',
    reason:
      'Unexpected `full bar(g)`, expected a number such as `3.5` with one of the units `Pa(g)`, `bar(g)`, `mbar(g)`, `psi(g)`',
    mend: 'Write the number of `pressure` in bar(g), without the unit',
  }),
  cellFault({
    rule: 'no-bad-quantity',
    what: 'a temperature below absolute zero',
    accepted: first.replace('20.0', '-20.0'),
    rejected: first.replace('20.0', '-300'),
    words: '-300',
    reason: 'Unexpected `-300 °C` below absolute zero, expected a temperature above it',
    mend: 'Write the number of `temperature` in °C, without the unit',
  }),
  {
    rule: 'no-duplicate-id',
    what: 'two readings of one minute of a pressure hold',
    accepted: holds(first, first.replace(',1,0,', ',2,0,')),
    rejected: holds(first, `${first}again`),
    at: [holdsPath, `${first}again`],
    see: [holdsPath, `${first}\n`],
    reason:
      'Unexpected second reading of one minute of hold `1` of `1p` on 2018-01-01, expected one a minute',
    mend: 'Keep the line that is right; a second hold of a day has another number under `test`',
  },
  {
    rule: 'no-bad-quantity',
    what: 'a barometer above the air',
    accepted: holds(first),
    rejected: (content) =>
      content.write(holdsPath, `${head.replace('mbar(a)', 'mbar(g)')}${columns}${first}\n`),
    at: [holdsPath, '# unit barometer'],
    reason:
      'Unexpected unit `mbar(g)`, expected a number such as `3.5` with one of the units `Pa(a)`, `bar(a)`, `mbar(a)`',
    mend: 'Name the unit of each column of numbers above the header',
  },
  {
    rule: 'no-missing-key',
    what: 'pressure holds from no log',
    accepted: holds(first),
    rejected: (content) =>
      content.write(holdsPath, `${head.replace('# source: demo-data\n', '')}${columns}${first}\n`),
    at: [holdsPath, 'day,at'],
    reason: 'Unexpected tightness without a line `# source: …`, expected it above the header',
    mend: 'Add `# source: …` on top of the file with the id of the log that they were read from',
  },
]
