import {otherStep, otherTorque, urgentText} from '../../commands/urgent-for-tests.ts'
import {all, type Change, type RuleCase, replaced} from './rule-case.ts'

const file = 'urgent/t-07.yaml'
const vessel = 'vessels/vessel-s/vessel.yaml'

function urgent(other: Readonly<Record<string, string>> = {}, path = file): Change {
  return (content) => content.write(path, urgentText(other))
}

/** The same on a pump of which nobody knows whether it has a backstop. */
function unknownBackstop(other: Readonly<Record<string, string>>): Change {
  return all(
    urgent({when: 'backstop = fitted', ...other}),
    replaced(vessel, 'facts: {backstop: fitted}', 'facts: {backstop: {value: not known, reason: no record}}'),
    replaced('procedures/ring-check.md', ' when="backstop = fitted"', ''),
  )
}

/** A design that is aboard no ship, with bolts of its own. */
const coverBolts: Change = (content) =>
  content.write(
    'designs/design-t.yaml',
    content
      .read('designs/design-s.yaml')
      .replace('id: design-s', 'id: design-t\nkept-for: a sister vessel')
      .replace('id: hub-bolts', 'id: cover-bolts'),
  )

/** Rules about urgent revisions: their numbers, days, pumps and figures. */
export const urgentCases: readonly RuleCase[] = [
  {
    rule: 'no-reused-number',
    what: 'two urgent revisions under one number',
    accepted: all(urgent(), urgent({number: 'T-08'}, 'urgent/t-08.yaml')),
    rejected: all(urgent(), urgent({}, 'urgent/t-08.yaml')),
    at: ['urgent/t-08.yaml', 'number: T-07'],
    reason: 'Unexpected second urgent revision `T-07`, expected a number that was never given',
    mend: 'Take the next number of the office, and name the file after it',
    see: [file, 'number: T-07'],
  },
  {
    rule: 'no-untimely-urgent',
    what: 'an urgent revision that ends before it begins',
    accepted: urgent({'valid-to': '2031-02-01'}),
    rejected: urgent({'valid-to': '2031-01-31'}),
    at: [file, '2031-01-31'],
    reason:
      'Unexpected last day `2031-01-31` of urgent revision `T-07` before its first one, expected `2031-02-01` or later',
    mend: 'Write the last day on which it counts',
    see: [file, '2031-02-01'],
  },
  {
    rule: 'no-untimely-urgent',
    what: 'an urgent revision that supersedes one whose file is still there',
    accepted: all(urgent({number: 'T-08', supersedes: '[T-06]'}, 'urgent/t-08.yaml'), urgent()),
    rejected: all(urgent({number: 'T-08', supersedes: '[T-07]'}, 'urgent/t-08.yaml'), urgent()),
    at: ['urgent/t-08.yaml', 'T-07]'],
    reason:
      'Unexpected `T-07` as superseded by `T-08` while it still counts, expected an earlier one that is taken out',
    mend: 'Take out the file of the superseded one',
    see: [file, 'number: T-07'],
  },
  {
    rule: 'no-untimely-urgent',
    what: 'an urgent revision that is called ended while its file is there',
    accepted: (content) =>
      content.write(
        'changes.yaml',
        'ended:\n  - {urgent: T-07, reason: new bolts, reviewed-by: safety-reviewer}\n',
      ),
    rejected: all(urgent(), (content) =>
      content.write(
        'changes.yaml',
        'ended:\n  - {urgent: T-07, reason: new bolts, reviewed-by: safety-reviewer}\n',
      ),
    ),
    at: ['changes.yaml', 'T-07'],
    reason: 'Unexpected end of urgent revision `T-07` whose file is still there, expected it to be taken out',
    mend: 'Take the file out, or the line',
    see: [file, 'number: T-07'],
  },
  {
    rule: 'no-undefined-reference',
    what: 'an end of an urgent revision that nobody of authority has seen',
    accepted: (content) =>
      content.write(
        'changes.yaml',
        'ended:\n  - {urgent: T-07, reason: new bolts, reviewed-by: safety-reviewer}\n',
      ),
    rejected: (content) =>
      content.write(
        'changes.yaml',
        'ended:\n  - {urgent: T-07, reason: new bolts, reviewed-by: pump-author}\n',
      ),
    at: ['changes.yaml', 'pump-author'],
    reason: 'Unexpected `pump-author`, expected one of `safety-reviewer`, `approving-superintendent`',
    mend: 'Write the id of a person who may review that exists, or add it',
  },
  {
    rule: 'no-idle-urgent',
    what: 'an urgent revision for a state in which no pump is',
    accepted: urgent({when: 'backstop = fitted'}),
    rejected: urgent({when: 'backstop = none'}),
    at: [file, 'number: T-07'],
    reason:
      'Unexpected urgent revision `T-07` that counts for no pump where `backstop = none`, expected one at least',
    mend: 'Correct vessels, positions or the condition: it would stand on no page',
  },
  {
    rule: 'no-idle-urgent',
    what: 'an urgent revision of a step that its pumps do not have',
    accepted: urgent(otherStep),
    rejected: all(
      urgent({
        steps:
          '[{procedure: ring-check, step: tell-backstop, instead: Tell the crew that the shaft is locked.}]',
      }),
      replaced(vessel, 'backstop: fitted', 'backstop: none'),
    ),
    at: [file, 'tell-backstop'],
    reason:
      'Unexpected step `tell-backstop` that stands on no pump of urgent revision `T-07`, expected one that is printed there',
    mend: 'Name the step of these pumps',
    see: ['procedures/ring-check.md', ':step{#tell-backstop'],
  },
  {
    rule: 'no-idle-urgent',
    what: 'an urgent revision of a figure that its pumps do not have',
    accepted: all(coverBolts, urgent(otherTorque)),
    rejected: all(
      coverBolts,
      urgent({
        values: '[{value: cover-bolts.count, instead: "6", status: assumed, source: house-rules}]',
      }),
    ),
    at: [file, 'cover-bolts.count'],
    reason:
      'Unexpected value `cover-bolts.count` that no pump of urgent revision `T-07` has, expected one that is printed there',
    mend: 'Name a value of these pumps',
  },
  {
    rule: 'no-half-replacement',
    what: 'a torque replaced without its passes',
    accepted: urgent(otherTorque),
    rejected: urgent({
      values: '[{value: hub-bolts.torque, instead: 48 N·m, status: assumed, source: house-rules}]',
    }),
    at: [file, '{value: hub-bolts.torque'],
    reason:
      'Unexpected replacement of `hub-bolts.torque` without `hub-bolts.passes` that is computed from it, expected both',
    mend: 'Add `hub-bolts.passes` to `values:` of the urgent revision',
  },
  {
    rule: 'no-half-replacement',
    what: 'a clearance replaced by a figure of another kind',
    accepted: urgent({
      values:
        '[{value: lower-ring.renewal, instead: 0.90 mm diametral, status: assumed, source: house-rules}]',
    }),
    rejected: urgent({
      values: '[{value: lower-ring.renewal, instead: 0.90 mm, status: assumed, source: house-rules}]',
    }),
    at: [file, '0.90 mm'],
    reason:
      'Unexpected unit `mm`, expected a number such as `3.5` with one of the units `mm diametral`, to replace `lower-ring.renewal`',
    mend: 'Write number, blank and unit, of the kind that the value has',
  },
  {
    rule: 'no-ending-urgent',
    what: 'an urgent revision that ends within thirty days',
    accepted: urgent({'valid-from': '2019-05-01', 'valid-to': '2019-06-14'}),
    rejected: urgent({'valid-from': '2019-05-01', 'valid-to': '2019-06-13'}),
    at: [file, '2019-06-13'],
    reason:
      'Unexpected urgent revision `T-07` that ends on 2019-06-13, 30 days after 2019-05-14, expected one that counts for more than 30 days from 2019-05-14',
    mend: 'Take it into the page and end it in changes.yaml, or let another one supersede it',
  },
  {
    rule: 'no-ending-urgent',
    what: 'an urgent revision that is over',
    accepted: urgent(),
    rejected: urgent({'valid-from': '2019-05-01', 'valid-to': '2019-05-13'}),
    at: [file, '2019-05-13'],
    reason:
      'Unexpected urgent revision `T-07` that was valid to 2019-05-13, expected one that counts for more than 30 days from 2019-05-14',
    mend: 'Take it into the page and end it in changes.yaml, or let another one supersede it',
  },
  ...(
    [
      ['vessels', '[vessel-t]', 'vessel-t', 'vessel', 'vessel-s'],
      ['positions', '[1s]', '1s', 'position', '1p'],
      ['procedures', '[ring-chek]', 'ring-chek', 'procedure', 'ring-check'],
    ] as const
  ).map(
    ([key, text, id, what, nearest]): RuleCase => ({
      rule: 'no-undefined-reference',
      what: `an urgent revision of a ${what} that is not there`,
      accepted: urgent({positions: '[1p]'}),
      rejected: urgent({[key]: text}),
      at: [file, id],
      reason: `Unexpected \`${id}\`, expected the id of a ${what} such as \`${nearest}\``,
      mend: `Write the id of a ${what} that exists, or add it`,
    }),
  ),
  {
    rule: 'no-undefined-reference',
    what: 'an urgent revision of a step that is not there',
    accepted: urgent(otherStep),
    rejected: urgent({steps: otherStep.steps.replace('tighten-hub-bolts', 'tighten-hub-bolt')}),
    at: [file, 'tighten-hub-bolt,'],
    reason:
      'Unexpected `tighten-hub-bolt`, expected the id of a step of this procedure such as `tighten-hub-bolts`',
    mend: 'Write the id of a step of this procedure that exists, or add it',
  },
  {
    rule: 'no-undefined-reference',
    what: 'an urgent revision of a value that is not there',
    accepted: urgent(otherTorque),
    rejected: urgent({values: otherTorque.values.replace('hub-bolts.torque', 'hub-bolt.torque')}),
    at: [file, 'hub-bolt.torque'],
    reason: 'Unexpected `hub-bolt.torque`, expected the id of a value such as `hub-bolts.torque`',
    mend: 'Write the id of a value that exists, or add it',
  },
  {
    rule: 'no-duplicate-id',
    what: 'two urgent revisions of one step',
    accepted: all(urgent(otherStep), urgent({number: 'T-08'}, 'urgent/t-08.yaml')),
    rejected: all(urgent(otherStep), urgent({number: 'T-08', ...otherStep}, 'urgent/t-08.yaml')),
    at: ['urgent/t-08.yaml', 'tighten-hub-bolts'],
    reason:
      'Unexpected second replacement of step `tighten-hub-bolts` of `ring-check` in `T-08`, expected one on each pump',
    mend: 'Let `T-08` supersede `T-07` and say all of it',
    see: [file, 'tighten-hub-bolts'],
  },
  {
    rule: 'no-unknown-fact',
    what: 'a step replaced on pumps of which nobody knows whether they are concerned',
    accepted: unknownBackstop({}),
    rejected: unknownBackstop(otherStep),
    at: [file, 'backstop = fitted'],
    reason:
      'Unexpected condition of urgent revision `T-07` that is not known for position `1p` of `vessel-s`, expected facts that are known where a value or a step is replaced',
    mend: 'State the fact as fitted, or warn without replacing anything',
    see: [vessel, 'id: 1p\n    tag'],
  },
  {
    rule: 'no-typed-number',
    what: 'a figure typed into an urgent revision',
    accepted: urgent({do: '[Tighten each bolt two times.]'}),
    rejected: urgent({do: '[Tighten each bolt to 48 N·m.]'}),
    at: [file, 'number: T-07'],
    reason: 'Unexpected number `48 N·m` typed into urgent revision `T-07`, expected it under `values:`',
    mend: 'State the figure in place of its value, with its source; spell small counts as words',
  },
  {
    rule: 'no-incomplete-caution',
    what: 'an urgent revision that says nothing to do',
    accepted: urgent(),
    rejected: urgent({do: '[]'}),
    at: [file, 'number: T-07'],
    reason: 'Unexpected caution `T-07` without advice, expected at least one line under `avoid`',
    mend: 'Say what the reader does to avoid the harm',
  },
]
