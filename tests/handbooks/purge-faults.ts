import {all, type Change, type RuleCase, replaced} from '../check/each-rule/rule-case.ts'
import {cellFaultsOf} from './cell-fault.ts'

/** Where the small vessel keeps her purges. */
export const purgesPath = 'vessels/vessel-s/purges.csv'

const head = '# source: demo-data\n# unit volume: ml\n'
const columns = 'day,at,hours,gas,volume,liquid,instrument,note\n'

/** What volumes are measured with; the small office has no such tool. */
const cylinder: Change = replaced(
  'tools.yaml',
  'tools:\n',
  'tools:\n  - {id: cylinder, title: measuring cylinder, size: 1 l, instrument: {graduation: 10 ml, uncertainty: 10 ml}}\n',
)

/** Purges of the small vessel: these lines. */
export function purgeLines(...lines: readonly string[]): Change {
  return (content) => content.write(purgesPath, `${head}${columns}${lines.map((one) => `${one}\n`).join('')}`)
}

/** The same, and a cylinder to measure them. */
export function purges(...lines: readonly string[]): Change {
  return all(cylinder, purgeLines(...lines))
}

const first = '2018-01-01,1p,12.5,yes,20,cargo,cylinder,'

/** A line with one cell that cannot be. */
const cellFault = cellFaultsOf(purgesPath, first, purges)

const dryMend = 'Write what came and how much; a dry purge is `0` and `none`'

/** Faults in the record of purges. */
export const purgeFaults: readonly RuleCase[] = [
  cellFault({
    rule: 'no-undefined-reference',
    what: 'a purge of a pump that the vessel has not',
    rejected: first.replace('1p', '1s'),
    words: '1s',
    reason: 'Unexpected `1s`, expected the id of a pump of this vessel such as `1p`',
    mend: 'Write the id of a pump of this vessel that exists, or add it',
  }),
  cellFault({
    rule: 'no-bad-quantity',
    what: 'a purge after hours below zero',
    accepted: first.replace('12.5', '0'),
    rejected: first.replace('12.5', '-1'),
    words: '-1,yes',
    reason: 'Unexpected hours `-1`, expected a number such as `4120` or `4120.5`',
    mend: 'Write the hours in digits, without a unit; leave the line out where nobody read them',
  }),
  cellFault({
    rule: 'no-wrong-shape',
    what: 'a purge of which nobody says whether gas flowed',
    accepted: '2018-01-01,1p,12.5,no,0,none,,',
    rejected: '2018-01-01,1p,12.5,,0,none,,',
    words: ',0,none',
    reason: 'Unexpected ``, expected a word such as `no`',
    mend: 'Write one of yes, no',
  }),
  cellFault({
    rule: 'no-wrong-shape',
    what: 'a liquid that nobody can name',
    accepted: first.replace('cargo', 'mixture'),
    rejected: first.replace('cargo', 'emulsion'),
    words: 'emulsion',
    reason: 'Unexpected `emulsion`, expected one of `oil`, `cargo`, `water`, `mixture`, `none`',
    mend: 'Write one of oil, cargo, water, mixture, none',
  }),
  cellFault({
    rule: 'no-impossible-value',
    what: 'a dry purge with a volume',
    rejected: first.replace('cargo', 'none'),
    words: '20,none',
    reason: 'Unexpected volume `20` of no liquid, expected `0`',
    mend: dryMend,
  }),
  cellFault({
    rule: 'no-impossible-value',
    what: 'a liquid of no volume',
    rejected: first.replace(',20,', ',0,'),
    words: '0,cargo',
    reason: 'Unexpected volume `0` of cargo, expected more than zero',
    mend: dryMend,
  }),
  cellFault({
    rule: 'no-bad-quantity',
    what: 'a volume below zero',
    rejected: first.replace(',20,', ',-20,'),
    words: '-20',
    reason: 'Unexpected negative value `-20 ml`, expected zero or more',
    mend: 'Write the number of `volume` in ml, without the unit',
  }),
  {
    ...cellFault({
      rule: 'no-undefined-reference',
      what: 'a volume measured with a micrometer',
      rejected: first.replace('cylinder', 'inside-micrometer'),
      words: 'inside-micrometer',
      reason: 'Unexpected `inside-micrometer` that does not measure a volume, expected one of `cylinder`',
      mend: 'Name the tool that it was measured with, or leave the cell blank where nobody wrote it',
    }),
    see: ['tools.yaml', '{id: inside-micrometer'],
  },
  cellFault({
    rule: 'no-bad-date',
    what: 'a purge of a day that does not exist',
    rejected: first.replace('2018-01-01', '2018-02-29'),
    words: '2018-02-29',
    reason: 'Unexpected date `2018-02-29`, expected a day like `2031-02-14`',
    mend: 'Write year, month and day of a day that exists',
  }),
  {
    rule: 'no-impossible-value',
    what: 'more running hours between two purges than the calendar has',
    accepted: purges(first, '2018-01-02,1p,48,yes,0,none,,'),
    rejected: purges(first, '2018-01-02,1p,48.1,yes,0,none,,'),
    at: [purgesPath, '2018-01-02'],
    see: [purgesPath, first],
    reason:
      'Unexpected `48.1` running hours since the purge of 2018-01-01, expected at most the `48` of both days and those between',
    mend: 'Read both days and the hour counter again',
  },
  {
    rule: 'no-missing-key',
    what: 'purges without a unit',
    accepted: purges(first),
    rejected: all(cylinder, (content) =>
      content.write(purgesPath, `# source: demo-data\n${columns}${first}\n`),
    ),
    at: [purgesPath, 'day,at'],
    reason: 'Unexpected table without a line `# unit volume: …`, expected the unit of the column',
    mend: 'Name the unit of each column of numbers above the header',
  },
  {
    rule: 'no-missing-key',
    what: 'purges from no log',
    accepted: purges(first),
    rejected: all(cylinder, (content) =>
      content.write(purgesPath, `# unit volume: ml\n${columns}${first}\n`),
    ),
    at: [purgesPath, 'day,at'],
    reason: 'Unexpected purges without a line `# source: …`, expected it above the header',
    mend: 'Add `# source: …` on top of the file with the id of the log that they were read from',
  },
]
