import {procedureText} from '../procedure-for-tests.ts'
import {type Change, type RuleCase, replaced} from './rule-case.ts'

const procedure = 'procedures/ring-check.md'
const holdPoint =
  '::hold-point{#bolts-seen title="Bolts seen" signed-by="second engineer" second-by="pumpman"}'
const card = 'procedures/card.md'
/** A card for the whole ship that says one thing more. */
const cardWith =
  (words: string): Change =>
  (content) =>
    content.write(
      card,
      procedureText(`## Act\n\n::section{#act}\n\n1. :step{#call} Call the bridge.\n\n   ${words}`, {
        id: 'card',
        front: {scope: 'vessel', activity: 'card'},
      }),
    )
const note = 'The locking plates are bent up afterwards.'

/** Rules of the procedure language. */
export const languageCases: readonly RuleCase[] = [
  {
    rule: 'no-raw-html',
    what: 'stress written in HTML',
    accepted: replaced(procedure, 'in the order of the figure', '**in the order of the figure**'),
    rejected: replaced(procedure, 'in the order of the figure', 'in the <b>order of the figure'),
    at: [procedure, '<b>'],
    reason: 'Unexpected HTML `<b>`, expected Markdown',
    mend: 'Write it in Markdown or with a directive',
  },
  {
    rule: 'no-unknown-directive',
    what: 'a mistyped directive',
    accepted: replaced(
      procedure,
      'hub bolts in the order',
      'hub bolts of the :term[gap]{ref=cofferdam} in the order',
    ),
    rejected: replaced(
      procedure,
      'hub bolts in the order',
      'hub bolts of the :trem[gap]{ref=cofferdam} in the order',
    ),
    at: [procedure, ':trem'],
    reason: 'Unexpected directive `:trem`, expected a directive such as `term`',
    mend: 'The directives written with : are step, choice, value, procedure, term, part',
  },
  {
    rule: 'no-misplaced-directive',
    what: 'a hold point inside a step',
    accepted: replaced(procedure, '## Restore the pump', `${holdPoint}\n\n## Restore the pump`),
    rejected: replaced(procedure, note, holdPoint),
    at: [procedure, '::hold-point{#bolts-seen'],
    reason: 'Unexpected `hold-point` inside a step, expected it between steps or under a heading',
    mend: 'Move it out of the list item',
  },
  {
    rule: 'no-unmarked-step',
    what: 'a step that cannot be referred to',
    accepted: replaced(procedure, ':step{#tighten-hub-bolts}', ':step{#tighten-bolts}'),
    rejected: replaced(procedure, ':step{#tighten-hub-bolts} ', ''),
    at: [procedure, '2. Tighten'],
    reason: 'Unexpected step without a mark, expected `:step{#id}` at its start',
    mend: 'Begin the list item with `:step{#id action=…}`',
  },
  {
    rule: 'no-scope-mix',
    what: 'a value of one pump in a procedure for the whole ship',
    accepted: cardWith('The gauge is read every :value{ref=house.isolation-recheck}.'),
    rejected: cardWith('The gap holds :value{ref=cofferdam.volume}.'),
    at: [card, ':value{ref=cofferdam.volume}'],
    reason:
      'Unexpected value `cofferdam.volume` in a procedure for the whole ship, expected what is the same on each of its pumps',
    mend: 'Write `scope: position`, or take it out of this procedure',
  },
  {
    rule: 'no-typed-number',
    what: 'a number typed into a sentence',
    accepted: replaced(procedure, 'the :value{ref=hub-bolts.count} hub bolts', 'the eight hub bolts'),
    rejected: replaced(procedure, 'the :value{ref=hub-bolts.count} hub bolts', 'the 8 hub bolts'),
    at: [procedure, '8 hub bolts'],
    reason: 'Unexpected number `8` typed into prose, expected a reference such as `:value{ref=…}`',
    mend: 'State the number once as a value with its source and refer to it by id; spell small counts as words',
  },
  {
    rule: 'no-bad-condition',
    what: 'a condition that cannot be parsed',
    accepted: replaced(procedure, 'backstop = fitted', 'backstop in (fitted)'),
    rejected: replaced(procedure, 'backstop = fitted', 'backstop == fitted'),
    at: [procedure, '= fitted'],
    reason: 'Unexpected `=` in the condition, expected a value of the fact',
    mend: 'Write conditions like `backstop = fitted and not cargo-seal in (single-lip, none)`',
  },
  {
    rule: 'no-unknown-fact',
    what: 'a mistyped value of a fact',
    accepted: replaced(procedure, 'backstop = fitted', 'backstop = none'),
    rejected: replaced(procedure, 'backstop = fitted', 'backstop = fited'),
    at: [procedure, 'backstop = fited'],
    reason: 'Unexpected value `fited` of fact `backstop`, expected a value such as `fitted`',
    mend: 'The values are fitted, none',
  },
]
