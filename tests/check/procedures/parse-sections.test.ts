import {describe, expect, test} from 'vitest'
import {linesOf, placeIn} from '../messages-for-tests.ts'
import {nameplate, parsed, procedureText, workText} from '../procedure-for-tests.ts'

const step = '1. :step{#look} Look.'

/** One fault: what it is, the text, the words at whose start it is told, and the message behind the place. */
type Fault = readonly [what: string, text: string, at: string, message: string]

function expectOnly(text: string, at: string, message: string): void {
  expect(linesOf(parsed(text).files)).toEqual([`${placeIn(text, at)} ${message}`])
}

describe('title and states', () => {
  test.each<Fault>([
    [
      'no title',
      workText(step, {title: 'Words.', purpose: ''}),
      'Words.',
      'Unexpected procedure without a title, expected a line `# Title` below the front matter no-markdown-fault',
    ],
    [
      'a number in the title',
      workText(step, {title: '# Sample of 48 mm'}),
      '48 mm',
      'Unexpected number `48 mm` typed into prose, expected a reference such as `:value{ref=…}` no-typed-number',
    ],
    [
      'HTML in the title',
      workText(step, {title: '# Sample<br>'}),
      '<br>',
      'Unexpected HTML `<br>`, expected Markdown no-raw-html',
    ],
    [
      'HTML in the purpose',
      workText(step, {purpose: '<div>loud</div>'}),
      '<div>',
      'Unexpected HTML, expected a paragraph no-raw-html',
    ],
    [
      'a paragraph in place of the list of a state',
      workText(step, {before: '## State before\n\nWords alone.'}),
      'Words alone.',
      'Unexpected paragraph, expected a bullet list no-markdown-fault',
    ],
    [
      'a list below a bullet of a state',
      workText(step, {before: '## State before\n\n- One.\n  - Hidden.'}),
      '- Hidden.',
      'Unexpected list, expected words alone in each bullet no-markdown-fault',
    ],
    [
      'a state without a list',
      workText(step, {before: '## State before'}),
      '## State before',
      'Unexpected heading `State before` without a list, expected a bullet list below it no-missing-key',
    ],
    [
      'a box in a state, which would be lost',
      workText(step, {before: '## State before\n\n- [ ] The pump stands.'}),
      '- [ ]',
      'Unexpected box `[ ]` of a list item, expected words alone no-markdown-fault',
    ],
    [
      'a heading of the third level',
      workText(`### Part\n\n${step}`),
      '### Part',
      'Unexpected heading, expected an ordered list of steps, a paragraph or a directive no-markdown-fault',
    ],
  ])('%s is refused', (_what, text, at, message) => {
    expectOnly(text, at, message)
  })

  test.each(['before', 'after'] as const)('a missing state %s is refused', (name) => {
    expect(linesOf(parsed(workText(step, {[name]: ''})).files)).toEqual([
      `procedures/sample.md:1:1 Unexpected procedure without \`## State ${name}\`, expected the heading with a list no-missing-key`,
    ])
  })

  test('a state that stands twice is refused with the place of the first, and nothing of it is lost silently', () => {
    const text = workText(step, {after: '## State after\n\n- One.\n\n## State after\n\n- Two.'})
    const first = placeIn(text, '## State after\n\n- One.')
    const second = placeIn(text, '## State after\n\n- Two.')
    expect(linesOf(parsed(text).files)).toEqual([
      `${second} Unexpected second \`## State after\`, expected the heading once no-duplicate-id see ${first}`,
    ])
  })
})

describe('a section', () => {
  test.each<Fault>([
    [
      'a heading without `::section`',
      procedureText(`## Work\n\n${nameplate}\n\n${step}`),
      '## Work',
      'Unexpected heading `Work` without an id, expected `::section{#id}` below it no-missing-key',
    ],
    [
      'a section without an id',
      procedureText(`## Work\n\n::section\n\n${nameplate}\n\n${step}`),
      '::section',
      'Unexpected `section` without `#id`, expected it in the braces no-missing-key',
    ],
    [
      'a mistyped attribute of a section, told once',
      procedureText(`## Work\n\n::section{#work wen="a = b"}\n\n${nameplate}\n\n${step}`),
      '::section',
      'Unexpected attribute `wen` of `section`, expected an attribute such as `when` no-unknown-directive',
    ],
    [
      'a second section under one heading',
      workText(`::section{#more}\n\n${step}`),
      '::section{#more}',
      'Unexpected `section` between steps, expected it directly under a heading no-misplaced-directive',
    ],
    [
      'a number in a heading',
      procedureText(`## Tighten to 48 N·m\n\n::section{#work}\n\n${nameplate}\n\n${step}`),
      '48 N·m',
      'Unexpected number `48 N·m` typed into prose, expected a reference such as `:value{ref=…}` no-typed-number',
    ],
    [
      'a value in a heading',
      procedureText(`## Tighten to :value{ref=a}\n\n::section{#work}\n\n${nameplate}\n\n${step}`),
      '## Tighten',
      'Unexpected `:value` in a heading, expected words no-misplaced-directive',
    ],
    [
      'words after the first step',
      workText(`${step}\n\nWords too late.`),
      'Words too late.',
      'Unexpected paragraph, expected a step or a directive after the first step of a section no-markdown-fault',
    ],
    [
      'a bullet list of steps',
      workText('- :step{#look} Look.'),
      '- :step',
      'Unexpected list, expected an ordered list of steps, a paragraph or a directive no-markdown-fault',
    ],
    [
      'a quotation',
      workText(`> Words.\n\n${step}`),
      '> Words.',
      'Unexpected blockquote, expected an ordered list of steps, a paragraph or a directive no-markdown-fault',
    ],
    [
      'HTML between steps',
      workText(`<!-- words -->\n\n${step}`),
      '<!--',
      'Unexpected HTML, expected an ordered list of steps, a paragraph or a directive no-raw-html',
    ],
    [
      'an unknown directive',
      workText(`::cauton{ref=a}\n\n${step}`),
      '::cauton',
      'Unexpected directive `::cauton`, expected a directive such as `caution` no-unknown-directive',
    ],
    [
      'a word that every object has, as a directive',
      workText(`::constructor\n\n${step}`),
      '::constructor',
      'Unexpected directive `::constructor`, expected a directive no-unknown-directive',
    ],
    [
      'a section without a step, whose words no page would show',
      workText(`${step}\n\n## Later\n\n::section{#later}\n\nWords alone.`),
      '## Later',
      'Unexpected section `Later` without a step, expected a step or a hold point no-markdown-fault',
    ],
    [
      'a reading between steps',
      workText(`::tally{#rags what=rags}\n\n${step}`),
      '::tally',
      'Unexpected `tally` between steps, expected it inside a step no-misplaced-directive',
    ],
  ])('%s is refused', (_what, text, at, message) => {
    expectOnly(text, at, message)
  })
})

describe('a step and its cautions', () => {
  test.each<Fault>([
    [
      'a list item without a mark',
      workText('1. Look.'),
      '1. Look.',
      'Unexpected step without a mark, expected `:step{#id}` at its start no-unmarked-step',
    ],
    [
      'a mark that does not stand first',
      workText('1. Then :step{#look} look.'),
      '1. Then',
      'Unexpected step without a mark, expected `:step{#id}` at its start no-unmarked-step',
    ],
    [
      'a mark without an id',
      workText('1. :step{action=lift} Lift.'),
      ':step',
      'Unexpected `step` without `#id`, expected it in the braces no-missing-key',
    ],
    [
      'a mark without words behind it',
      workText('1. :step{#look}'),
      ':step{#look}',
      'Unexpected `step` without words, expected a sentence behind the braces no-markdown-fault',
    ],
    [
      'words in the brackets of a mark',
      workText('1. :step[Look up]{#look} Look.'),
      ':step',
      'Unexpected words in the brackets of `step`, expected no brackets no-unknown-directive',
    ],
    [
      'a mistyped attribute of a step',
      workText('1. :step{#look acton=lift} Look.'),
      ':step',
      'Unexpected attribute `acton` of `step`, expected an attribute such as `action` no-unknown-directive',
    ],
    [
      'a caution after the instruction',
      workText('1. :step{#look} Look.\n\n   ::caution{ref=fall}'),
      '::caution',
      'Unexpected caution `fall` after the instruction, expected it before the step no-late-caution',
    ],
    [
      'a caution at the end of a section',
      workText(`${step}\n\n::caution{ref=fall}`),
      '::caution',
      'Unexpected caution `fall` before no step, expected a step right after it no-misplaced-directive',
    ],
    [
      'words between a caution and its step',
      workText(`::caution{ref=fall}\n\nWords between.\n\n${step}`),
      '::caution',
      'Unexpected caution `fall` before no step, expected a step right after it no-misplaced-directive',
    ],
    [
      'a box before the mark, which would be lost',
      workText('1. [x] :step{#look} Look.'),
      '1. [x]',
      'Unexpected box `[x]` of a list item, expected words alone no-markdown-fault',
    ],
    [
      'two ids, of which one would be lost',
      workText('1. :step{#look #see} Look.'),
      ':step',
      'Unexpected second attribute `id` of `step`, expected each attribute once no-duplicate-id',
    ],
    [
      'two conditions, of which one would be lost',
      workText('1. :step{#look when="a = b" when="c = d"} Look.'),
      ':step',
      'Unexpected second attribute `when` of `step`, expected each attribute once no-duplicate-id',
    ],
    [
      'a caution before a hold point',
      workText(`::caution{ref=fall}\n\n::hold-point{#seen title=Seen signed-by=a second-by=b}\n\n${step}`),
      '::caution',
      'Unexpected caution `fall` before no step, expected a step right after it no-misplaced-directive',
    ],
    [
      'a caution without a reference',
      workText(`::caution\n\n${step}`),
      '::caution',
      'Unexpected `caution` without `ref=…`, expected it in the braces no-missing-key',
    ],
    [
      'a hold point with a blank title',
      workText(`${step}\n\n::hold-point{#seen title=" " signed-by=a second-by=b}`),
      '::hold-point{#seen',
      'Unexpected `hold-point` without `title=…`, expected it in the braces no-missing-key',
    ],
    [
      'a number in the title of a hold point',
      workText(`${step}\n\n::hold-point{#seen2 title="Seen at 2 bar" signed-by=a second-by=b}`),
      '2 bar',
      'Unexpected number `2 bar` typed into prose, expected a reference such as `:value{ref=…}` no-typed-number',
    ],
  ])('%s is refused', (_what, text, at, message) => {
    expectOnly(text, at, message)
  })

  test('a caution of the whole section may stand anywhere in it and waits for no step', () => {
    const {procedure, files} = parsed(workText(`${step}\n\n::caution{ref=fall section}`))
    expect(linesOf(files)).toEqual([])
    expect(procedure?.sections[0]?.cautions.map((use) => use.caution.id)).toEqual(['fall'])
  })
})
