import type {Change, RuleCase} from '../check/each-rule/rule-case.ts'

const design = 'designs/design-s.yaml'

/** The small content with a second paper that speaks of the renewal clearance of 1.20 mm. */
function secondPaper(says: string, more = ''): Change {
  return (content) =>
    content.write(
      design,
      `${content.read(design)}also-stated: [{value: lower-ring.renewal, says: {value: ${says}, status: as-built, source: demo-data, where: sheet 9}${more}}]\n`,
    )
}

/** Faults of papers that speak of one thing twice. */
export const paperFaults: readonly RuleCase[] = [
  {
    rule: 'no-contradicting-source',
    what: 'two papers that contradict each other',
    accepted: secondPaper('1.26 mm diametral'),
    rejected: secondPaper('1.27 mm diametral'),
    at: [design, '1.27 mm'],
    reason:
      'Unexpected `1.27 mm diametral` for `lower-ring.renewal` of `design-s` by `demo-data`, expected at most 5 % from the `1.20 mm diametral` by `demo-data`, `house-rules`, which governs',
    mend: 'Read both papers again: one of the two is wrong; or write `reason:` beside it',
    see: [design, '1.20 mm diametral'],
  },
  {
    rule: 'no-contradicting-source',
    what: 'two papers that contradict each other on the radius',
    accepted: secondPaper('0.57 mm radial'),
    rejected: secondPaper('0.56 mm radial'),
    at: [design, '0.56 mm radial'],
    reason:
      'Unexpected `0.56 mm radial` for `lower-ring.renewal` of `design-s` by `demo-data`, expected at most 5 % from the `1.20 mm diametral` by `demo-data`, `house-rules`, which governs',
    mend: 'Read both papers again: one of the two is wrong; or write `reason:` beside it',
    see: [design, '1.20 mm diametral'],
  },
  {
    rule: 'no-contradicting-source',
    what: 'a paper that speaks of another kind of quantity',
    accepted: secondPaper('1.20 mm diametral'),
    rejected: secondPaper('1.20 mm'),
    at: [design, '1.20 mm,'],
    reason:
      'Unexpected `1.20 mm` for `lower-ring.renewal` of `design-s` by `demo-data`, expected at most 5 % from the `1.20 mm diametral` by `demo-data`, `house-rules`, which governs',
    mend: 'Read both papers again: one of the two is wrong; or write `reason:` beside it',
    see: [design, '1.20 mm diametral'],
  },
  {
    rule: 'no-contradicting-source',
    what: 'a reason why two papers disagree that agree',
    accepted: secondPaper('1.26 mm diametral'),
    rejected: secondPaper('1.26 mm diametral', ', reason: older drawing'),
    at: [design, '{value: lower-ring.renewal'],
    reason:
      'Unexpected `reason` beside `lower-ring.renewal` of `design-s`, expected it where two papers disagree',
    mend: 'Take the reason out: it would hide the next contradiction',
  },
]
