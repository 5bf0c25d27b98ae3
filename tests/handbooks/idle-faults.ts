import {all, type Change, type RuleCase, replaced} from '../check/each-rule/rule-case.ts'

const sources = 'sources.yaml'
const design = 'designs/design-s.yaml'
const orphan = 'designs/design-o.yaml'
const vessel = 'vessels/vessel-s/vessel.yaml'
const mend = 'Take it out, name it where it belongs, or write why it is kept under `kept-for`'
const staleMend = 'Take `kept-for` out: it would hide the day on which nothing uses it any more'

/** A further source of the small content, of a status, with more keys where there are any. */
export function withOldBook(status: string, more = ''): Change {
  return (content) =>
    content.write(
      sources,
      `${content.read(sources)}  - {id: old-data, title: "Older pump data book, invented", edition: demonstration, kind: record, status: ${status}, how-known: demonstration${more}}\n`,
    )
}

/** A second data sheet, like the first but in its id, with more lines on top. */
function secondSheet(more = ''): Change {
  return (content) =>
    content.write(orphan, `${more}${content.read(design).replace('id: design-s', 'id: design-o')}`)
}

/** A second pump, of the second sheet. */
const secondPump = replaced(
  vessel,
  'tools-aboard:',
  '  - id: 1s\n    tag: 1S\n    tank: 1p\n    design: design-o\n    serial: S-2\n    role: main\n    critical: no\n    installed: 2011-02-09\n    stack-length: 9.2 m\n    components: {head: H-2, motor: M-2, sleeve: C-2, stack: T-2}\n    facts: {backstop: fitted}\ntools-aboard:',
)

/** Sheets and papers that belong to nothing. */
export const idleFaults: readonly RuleCase[] = [
  {
    rule: 'no-idle-design',
    what: 'a data sheet of no pump',
    accepted: all(secondSheet(), secondPump),
    rejected: secondSheet(),
    at: [orphan],
    reason: 'Unexpected design `design-o` without a pump of that design, expected it to be in use',
    mend,
  },
  {
    rule: 'no-idle-design',
    what: 'a reason to keep the data sheet of a pump',
    accepted: secondSheet('kept-for: pumps of a sister vessel\n'),
    rejected: replaced(design, 'id: design-s\n', 'id: design-s\nkept-for: pumps of a sister vessel\n'),
    at: [design],
    reason: 'Unexpected reason to keep design `design-s`, expected none: it is in use',
    mend: staleMend,
  },
  {
    rule: 'no-idle-source',
    what: 'a paper on which nothing stands',
    accepted: all(
      withOldBook('current'),
      replaced(design, 'value: 186 kg', 'value: {value: 187 kg, status: as-built, source: old-data}'),
    ),
    rejected: withOldBook('current'),
    at: [sources, '{id: old-data'],
    reason:
      'Unexpected source `old-data` without a value, caution, table or record that stands on it, expected it to be in use',
    mend,
  },
  {
    rule: 'no-idle-source',
    what: 'a paper that another one superseded and on which nothing stands',
    accepted: withOldBook('superseded, superseded-by: demo-data', ', kept-for: repairs of 2004'),
    rejected: withOldBook('superseded, superseded-by: demo-data'),
    at: [sources, '{id: old-data'],
    reason:
      'Unexpected source `old-data` without a value, caution, table or record that stands on it, expected it to be in use',
    mend,
  },
  {
    rule: 'no-idle-source',
    what: 'a reason to keep a paper on which a value stands',
    accepted: withOldBook('current', ', kept-for: repairs of 2004'),
    rejected: all(
      withOldBook('current', ', kept-for: repairs of 2004'),
      replaced(design, 'value: 186 kg', 'value: {value: 187 kg, status: as-built, source: old-data}'),
    ),
    at: [sources, '{id: old-data'],
    reason: 'Unexpected reason to keep source `old-data`, expected none: it is in use',
    mend: staleMend,
  },
]
