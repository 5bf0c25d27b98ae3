import {procedureText} from '../procedure-for-tests.ts'
import {type Change, type RuleCase, replaced} from './rule-case.ts'

const procedure = 'procedures/ring-check.md'
const tighten = 'Tighten the :value{ref=hub-bolts.count} hub bolts in the order of the figure.'
const note = 'The locking plates are bent up afterwards.'
const step = ':step{#tighten-hub-bolts}'
const exception =
  (words: string): Change =>
  (content) =>
    content.write(
      'exceptions.yaml',
      `exceptions:\n  - {rule: no-hedge, file: ${procedure}, words: "${words}", reason: words of the regulation, reviewed-by: approving-superintendent}\n`,
    )

/** A card for the whole ship with so many steps. */
const cardOf =
  (steps: number): Change =>
  (content) =>
    content.write(
      'procedures/card.md',
      procedureText(
        `## Act\n\n::section{#act}\n\n${Array.from({length: steps}, (_, index) => `${index + 1}. :step{#call-${index + 1}} Call the bridge.`).join('\n\n')}`,
        {id: 'card', front: {scope: 'vessel', activity: 'card'}},
      ),
    )

const failures = (more: string): string =>
  `failures:\n  - id: plates-broken\n    part: hub-plates\n    mode: broken\n${more === '' ? '' : `    ${more}\n`}`

/** Rules of plain language, and of what a careful procedure says. */
export const plainCases: readonly RuleCase[] = [
  {
    rule: 'no-long-step',
    what: 'a step of more words than are held in mind',
    accepted: replaced(
      procedure,
      tighten,
      'Tighten the hub bolts one after the other in the order of the figure, from the first number to last.',
    ),
    rejected: replaced(
      procedure,
      tighten,
      'Tighten the hub bolts one after the other in the order of the figure, from the first number to the very last one.',
    ),
    at: [procedure, step],
    reason: 'Unexpected step of 23 words, expected at most 20',
    mend: 'Split it, or move what is information into a note',
  },
  {
    rule: 'no-second-instruction',
    what: 'two instructions in a step',
    accepted: replaced(procedure, tighten, 'Tighten the hub bolts and mark them.'),
    rejected: replaced(procedure, tighten, 'Tighten the hub bolts and then mark them.'),
    at: [procedure, step],
    reason: 'Unexpected second instruction at `and then`, expected one instruction in a step',
    mend: 'Make each instruction a step of its own',
  },
  {
    rule: 'no-verbless-step',
    what: 'a step that does not begin with a verb of the list',
    accepted: replaced(procedure, tighten, 'Do not tighten the hub bolts.'),
    rejected: replaced(procedure, tighten, 'The hub bolts are tightened.'),
    at: [procedure, step],
    reason: 'Unexpected `The` at the start of a step, expected a verb of the list',
    mend: 'Begin with what is done, such as bend, bolt, bond, call, cap, catch, check, choose; the list is in src/check/language/approved-verbs.ts',
  },
  {
    rule: 'no-late-condition',
    what: 'a condition behind the command',
    accepted: replaced(procedure, tighten, 'If the hub turns, hold the hub bolts.'),
    rejected: replaced(procedure, tighten, 'Hold the hub bolts if the hub turns.'),
    at: [procedure, step],
    reason: 'Unexpected condition `if …` behind the command, expected it before the verb',
    mend: 'Write the condition first, a comma, and what is done',
  },
  {
    rule: 'no-instruction-in-note',
    what: 'a command where nobody ticks it',
    accepted: replaced(procedure, note, 'Bent plates hold the bolts.'),
    rejected: replaced(procedure, note, 'Bend the locking plates up.'),
    at: [procedure, 'Bend the locking'],
    reason: 'Unexpected instruction `Bend the locking plates up.` in a note, expected information',
    mend: 'Make it a step: what stands in a note is not ticked and not done',
  },
  {
    rule: 'no-long-sentence',
    what: 'a description that is read twice',
    accepted: replaced(procedure, note, `All ${Array.from({length: 24}, () => 'plates').join(' ')}.`),
    rejected: replaced(procedure, note, `All ${Array.from({length: 25}, () => 'plates').join(' ')}.`),
    at: [procedure, 'All plates'],
    reason: 'Unexpected sentence of 26 words, expected at most 25',
    mend: 'Split the sentence',
  },
  {
    rule: 'no-hedge',
    what: 'a hedge in a note',
    accepted: replaced(procedure, note, 'A plate that breaks is replaced in May.'),
    rejected: replaced(procedure, note, 'A plate that may break is replaced.'),
    at: [procedure, 'A plate that may'],
    reason: 'Unexpected hedge `may`, expected a plain statement or instruction',
    mend: 'Say what is so, or what is done and when',
  },
  {
    rule: 'no-contraction',
    what: 'two words in one',
    accepted: replaced(procedure, note, 'It is the second engineer’s mark that counts.'),
    rejected: replaced(procedure, note, 'It’s the mark that counts.'),
    at: [procedure, 'It’s the mark'],
    reason: 'Unexpected contraction `It’s`, expected the words in full',
    mend: 'Write `do not` for `don’t`',
  },
  {
    rule: 'no-vague-word',
    what: 'a measure that is none',
    accepted: replaced(procedure, note, 'The plates lie flat on the bolt heads.'),
    rejected: replaced(procedure, note, 'The plates are properly bent.'),
    at: [procedure, 'The plates are'],
    reason: 'Unexpected vague words `properly`, expected a condition or a measure',
    mend: 'Say on which condition, by how much or up to which limit',
  },
  {
    rule: 'no-second-term',
    what: 'a second word for one thing',
    accepted: replaced(procedure, note, 'The cofferdam stays open.'),
    rejected: replaced(procedure, note, 'The buffer space stays open.'),
    at: [procedure, 'The buffer'],
    reason: 'Unexpected term `buffer space`, expected `cofferdam`',
    mend: 'One thing has one word: terms.yaml says which',
  },
  {
    rule: 'no-long-procedure',
    what: 'a procedure of more steps than are kept in view',
    accepted: cardOf(30),
    rejected: cardOf(31),
    at: ['procedures/card.md', ':step{#call-31}'],
    reason: 'Unexpected 31 steps in procedure `card`, expected at most 30',
    mend: 'Split it into procedures that a job joins',
  },
  {
    rule: 'no-file-reference',
    what: 'a reference by the name of a file',
    accepted: replaced(procedure, note, 'The plates are bent up by :value{ref=hub-bolts.locking}.'),
    rejected: replaced(procedure, note, 'The order stands in plates.html beside it.'),
    at: [procedure, 'The order stands'],
    reason: 'Unexpected `plates.html` in a text, expected a reference by id such as `:procedure[…]{ref=…}`',
    mend: 'Refer by id: files are renamed and pages move',
  },
  {
    rule: 'no-uncovered-failure',
    what: 'a failure that nobody has an answer for',
    accepted: (content) => content.write('failures.yaml', failures('reason: exchanged by a yard')),
    rejected: (content) => content.write('failures.yaml', failures('')),
    at: ['failures.yaml', 'id: plates-broken'],
    reason:
      'Unexpected failure `plates-broken` without a procedure, expected `procedures:` or a `reason:` why there is none',
    mend: 'Name the procedure that finds or mends it, or write why the handbook has none',
  },
  {
    rule: 'no-idle-exception',
    what: 'an exception that covers nothing',
    accepted: (content) => content.write('exceptions.yaml', 'exceptions: []\n'),
    rejected: exception('may break'),
    at: ['exceptions.yaml', '{rule'],
    reason:
      'Unexpected exception from `no-hedge` for `may break` in `procedures/ring-check.md`, expected a line of it that breaks the rule',
    mend: 'Take the exception out, or copy the words of the line again',
  },
]
