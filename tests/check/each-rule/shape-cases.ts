import {type RuleCase, replaced} from './rule-case.ts'

const parts = 'parts.yaml'
const design = 'designs/design-s.yaml'
const vessel = 'vessels/vessel-s/vessel.yaml'

/** Rules of shapes: which fields a file has and what may stand in them. */
export const shapeCases: readonly RuleCase[] = [
  {
    rule: 'no-unknown-key',
    what: 'a mistyped key that may be left out',
    accepted: replaced(parts, 'balloon: "1"', 'balloon: "2"'),
    rejected: replaced(parts, 'balloon: "1"', 'baloon: "1"'),
    at: [parts, 'baloon'],
    reason: 'Unexpected key `baloon`, expected a key such as `balloon`',
    mend: 'The keys here are id, title, class, size, rubber, balloon, when',
  },
  {
    rule: 'no-missing-key',
    what: 'a field left out',
    accepted: replaced(parts, ', balloon: "1"', ''),
    rejected: replaced(parts, ', size: one plate for two bolts', ''),
    at: [parts, '{id: hub-plates'],
    reason: 'Unexpected map without `size`, expected `size:` with text',
    mend: 'Add `size:`',
  },
  {
    rule: 'no-wrong-shape',
    what: 'a count with a unit',
    accepted: replaced(design, 'count: 8', 'count: 12'),
    rejected: replaced(design, 'count: 8', 'count: 8 pieces'),
    at: [design, '8 pieces'],
    reason: 'Unexpected `8 pieces`, expected a whole number from 1 to 64',
    mend: 'Write the number in digits, without a unit',
  },
  {
    rule: 'no-bad-quantity',
    what: 'a clearance that does not say how it is measured',
    accepted: replaced(design, 'minimum-new: 0.52 mm diametral', 'minimum-new: 0.26 mm radial'),
    rejected: replaced(design, 'minimum-new: 0.52 mm diametral', 'minimum-new: 0.52 mm'),
    at: [design, '0.52 mm'],
    reason:
      'Unexpected unit `mm`, expected a number such as `3.5` with one of the units `mm radial`, `mm diametral`',
    mend: 'Write a number, a blank and the unit; write `not known` with a reason where nobody knows',
  },
  {
    rule: 'no-bad-id',
    what: 'an id that Windows keeps for a device',
    accepted: replaced(vessel, '  - id: 1p', '  - id: con-1'),
    rejected: replaced(vessel, '  - id: 1p', '  - id: CON'),
    at: [vessel, 'CON'],
    reason: 'Unexpected id `CON`, expected a name that no operating system keeps for a device',
    mend: 'Write it like `hub-bolts`',
  },
  {
    rule: 'no-bad-date',
    what: 'the twenty-ninth of February',
    accepted: replaced(vessel, 'installed: 2011-02-09', 'installed: 2012-02-29'),
    rejected: replaced(vessel, 'installed: 2011-02-09', 'installed: 2011-02-29'),
    at: [vessel, '2011-02-29'],
    reason: 'Unexpected date `2011-02-29`, expected a day like `2031-02-14`',
    mend: 'Write year, month and day of a day that exists',
  },
]
