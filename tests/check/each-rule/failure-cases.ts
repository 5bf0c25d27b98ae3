import {procedureText} from '../procedure-for-tests.ts'
import {all, type Change, type RuleCase, replaced} from './rule-case.ts'

const parts = 'parts.yaml'
const design = 'designs/design-s.yaml'
const plates = '{id: plates-broken, part: hub-plates, mode: broken, procedures: [ring-check]}'
const fitted = (part: string): Change => replaced(parts, 'parts:\n', `parts:\n  - {${part}}\n`)
const ring = 'id: lip, title: lip seal, class: spare, size: 100 mm'

const rows =
  (...written: readonly string[]): Change =>
  (content) =>
    content.write('failures.yaml', `failures:\n${written.map((one) => `  - ${one}\n`).join('')}`)

/** A procedure for portable pumps, of which the small content has none. */
const forPortable: Change = (content) =>
  content.write(
    'procedures/card.md',
    procedureText('## Act\n\n::section{#act}\n\n1. :step{#call} Call the bridge.', {
      id: 'card',
      front: {scope: 'vessel', activity: 'card', when: 'role = portable'},
    }),
  )

const groove: Change = all(
  replaced(
    'sources.yaml',
    'sources:\n',
    'sources:\n  - {id: iso-3601, title: ISO 3601, edition: recalled from memory, kind: standard, status: current, how-known: memory}\n',
  ),
  replaced(
    design,
    'masses:\n',
    'o-rings:\n  - id: lip\n    title: O-ring\n    part: lip\n    section: 3.53 mm\n    section-tolerance: 0.10 mm\n    inside-diameter: 85.32 mm\n    groove-diameter: 86.5 mm\n    groove-depth: 2.85 mm\n    depth-tolerance: 0.05 mm\nmasses:\n',
  ),
)

const rowMend = 'Add a row to failures.yaml'
const withoutRow =
  'Unexpected fitted part `lip` that failures.yaml does not know, expected a row for each way in which it fails'

/** Failures of parts, held against the pumps that have them. */
export const failureCases: readonly RuleCase[] = [
  {
    rule: 'no-uncovered-failure',
    what: 'a fitted part that the matrix does not know',
    accepted: all(rows(plates), fitted(ring)),
    rejected: all(rows(plates), fitted(`${ring}, balloon: "2"`)),
    at: [parts, '{id: lip'],
    reason: withoutRow,
    mend: rowMend,
  },
  {
    rule: 'no-uncovered-failure',
    what: 'a part of an O-ring groove of a design that the matrix does not know',
    accepted: all(
      rows(plates, '{id: lip-worn, part: lip, mode: worn, procedures: [ring-check]}'),
      fitted(ring),
      groove,
    ),
    rejected: all(rows(plates), fitted(ring), groove),
    at: [parts, '{id: lip'],
    reason: withoutRow,
    mend: rowMend,
  },
  {
    rule: 'no-uncovered-failure',
    what: 'a failure whose procedures are for pumps without the part',
    accepted: all(
      forPortable,
      rows('{id: plates-broken, part: hub-plates, mode: broken, procedures: [card, ring-check]}'),
    ),
    rejected: all(
      forPortable,
      rows('{id: plates-broken, part: hub-plates, mode: broken, procedures: [card]}'),
    ),
    at: ['failures.yaml', '{id: plates-broken'],
    reason:
      'Unexpected failure `plates-broken` on pump `vessel-s/1p` whose procedures are for other pumps, expected one for it or a `reason:` why there is none',
    mend: 'Name a procedure that is for this pump, write the reason, or say by `when:` of the part which pumps have it',
  },
  {
    rule: 'no-unknown-fact',
    what: 'a part that asks for a value that a fact does not have',
    accepted: replaced(parts, 'balloon: "1"', 'balloon: "1", when: design = design-s'),
    rejected: replaced(parts, 'balloon: "1"', 'balloon: "1", when: design = design-t'),
    at: [parts, 'design = design-t'],
    reason: 'Unexpected value `design-t` of fact `design`, expected a value such as `design-s`',
    mend: 'The values are design-s',
  },
]
