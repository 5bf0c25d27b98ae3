import {describe, expect, test} from 'vitest'
import {linesOf, placeIn} from '../messages-for-tests.ts'
import {parsed, workText} from '../procedure-for-tests.ts'

const typed = (number: string): string =>
  `Unexpected number \`${number}\` typed into prose, expected a reference such as \`:value{ref=…}\` no-typed-number`

const inStep = (words: string): string => workText(`1. :step{#look} ${words}`)

describe('a number typed into prose is refused at its place', () => {
  test.each<[string, string, string]>([
    ['in an instruction', inStep('Tighten to 48 N·m now.'), '48 N·m'],
    ['without a unit', inStep('Turn it 3 times.'), '3'],
    ['with decimals', inStep('Leave a gap of 0.3 mm.'), '0.3 mm'],
    ['inside a word', inStep('Take the M12 bolts off.'), '12'],
    ['as a fraction', inStep('Turn it by ½ turn.'), '½'],
    ['in bold words', inStep('Tighten **to 48 N·m**.'), '48 N·m'],
    ['in a wrapped line', inStep('Tighten the bolts\n   to 48 N·m.'), '48 N·m'],
    ['in a note', inStep('Look.\n\n   The gap is about 7 mm.'), '7 mm'],
    ['in an introduction', workText('The tank is 14 m deep.\n\n1. :step{#look} Look.'), '14 m'],
    [
      'in a state',
      workText('1. :step{#look} Look.', {before: '## State before\n\n- Cooled to 40 °C.'}),
      '40 °C',
    ],
    ['in the purpose', workText('1. :step{#look} Look.', {purpose: 'Done every 60 months.'}), '60 m'],
    [
      'in a choice',
      inStep('Look.\n\n   :::one-of{#a}\n   - :choice{#b} Below 9 bar.\n   - :choice{#c} Above.\n   :::'),
      '9 bar',
    ],
    ['in the end of a repeat', inStep('Look.\n\n   ::repeat{until="dry for 5 min"}'), '5 min'],
    [
      'in what a second person sees',
      inStep('Look.\n\n   ::second-person{#a2 what="the 3 locks"}'),
      '3 locks',
    ],
    ['in a caption', inStep('Look.\n\n   ::figure{name=tank-plan caption="Frame 9"}'), '9'],
    ['in the words of a link', inStep('Go on with :procedure[the 3 bolts]{ref=bolts}.'), '3'],
    ['in digits of another script', inStep('Turn it ٤ times.'), '٤'],
    ['as a Roman numeral', inStep('Open valve Ⅷ.'), 'Ⅷ'],
    [
      'in an attribute behind an id with the same digit',
      inStep('Look.\n\n   ::wait{#proof4 least=a missed="4"}'),
      '4',
    ],
    [
      'in the title of a reading',
      inStep(
        'Look.\n\n   ::reading{#a title="gap at 6 mm" quantity=length unit=mm stations=a instrument=gauge phase=during}',
      ),
      '6 mm',
    ],
  ])('%s', (_what, text, number) => {
    const [told, ...more] = linesOf(parsed(text).files)
    expect(more).toEqual([])
    const shown = /`([^`]+)`/u.exec(told ?? '')?.[1] ?? ''
    expect(number.startsWith(shown) && shown !== '').toBe(true)
    expect(told).toBe(`${placeOfLast(text, number)} ${typed(shown)}`)
  })

  test('each number of a sentence is told', () => {
    const text = inStep('Tighten to 48 N·m\n   and leave 3 mm, again 3 mm.')
    expect(linesOf(parsed(text).files)).toEqual([
      `${placeIn(text, '48')} ${typed('48 N·m')}`,
      `${placeIn(text, '3 mm,')} ${typed('3 mm')}`,
      `${placeIn(text, '3 mm.')} ${typed('3 mm')}`,
    ])
  })

  test.each<[string, string]>([
    ['words for small counts', inStep('Turn it two turns, three times.')],
    ['ids and references', inStep('Read :value{ref=setting.gap-2}.')],
    ['names of procedures', inStep('Go on with :procedure[part two]{ref=part-2}.')],
    [
      'stations and units of readings',
      inStep(
        'Look.\n\n   ::reading{#a title=gap quantity=length unit=mm stations="0°, 90°" instrument=gauge phase=during}',
      ),
    ],
    ['subscripts of a gas', inStep('Test for CO₂.')],
    ['powers of a unit', inStep('Read the volume in m³.')],
  ])('%s are accepted', (_what, text) => {
    expect(linesOf(parsed(text).files)).toEqual([])
  })
})

describe('what is no prose is refused at its place', () => {
  test.each<[string, string, string, string]>([
    ['HTML', 'Look <b>now</b>.', '<b>', 'Unexpected HTML `<b>`, expected Markdown no-raw-html'],
    [
      'a link',
      'Look [there](there.html).',
      '[there]',
      'Unexpected link, expected words, emphasis or a directive no-markdown-fault',
    ],
    [
      'a picture',
      'Look ![a](a.png).',
      '![a]',
      'Unexpected image, expected words, emphasis or a directive no-markdown-fault',
    ],
    [
      'code',
      'Look `now`.',
      '`now`',
      'Unexpected inlineCode, expected words, emphasis or a directive no-markdown-fault',
    ],
    [
      'a plate in a sentence',
      'Look :reading{#a}.',
      ':reading',
      'Unexpected directive `:reading`, expected one of `step`, `choice`, `value`, `procedure`, `term`, `part` no-unknown-directive',
    ],
    [
      'a mark in a sentence',
      'Look :choice{#a} twice.',
      ':choice',
      'Unexpected `:choice` inside a sentence, expected it at the start of a list item no-misplaced-directive',
    ],
    [
      'a value without a reference',
      'Tighten to :value.',
      ':value',
      'Unexpected `value` without `ref=…`, expected it in the braces no-missing-key',
    ],
    [
      'a letter that does not print, written as an entity',
      'Turn &#x202E; it.',
      ' Turn &#x',
      'Unexpected letter U+202E that does not print, expected letters that the reader sees no-foreign-encoding',
    ],
    [
      'one in an attribute',
      'Look.\n\n   ::repeat{until="dry &#0;"}',
      '::repeat',
      'Unexpected letter U+FFFD that does not print, expected letters that the reader sees no-foreign-encoding',
    ],
    [
      'a directive whose brace does not close',
      'Look.\n\n   ::value{ref=a',
      '::value',
      'Unexpected `::` among words, expected a directive in a line of its own with closed braces no-unknown-directive',
    ],
    [
      'a directive with words behind it',
      'Look.\n\n   ::value{ref=a} here.',
      '::value',
      'Unexpected `::` among words, expected a directive in a line of its own with closed braces no-unknown-directive',
    ],
    [
      'bold words of a link, which would be lost',
      'Go on with :procedure[**this**]{ref=a}.',
      '**this**',
      'Unexpected strong in the brackets of `procedure`, expected plain words no-markdown-fault',
    ],
    [
      'HTML in the words of a link',
      'Go on with :term[a <b>ring</b>]{ref=a}.',
      '<b>',
      'Unexpected html in the brackets of `term`, expected plain words no-markdown-fault',
    ],
    [
      'a balloon that says nothing',
      'Take the :part[ ]{ref=a} out.',
      ':part',
      'Unexpected `part` without words, expected what the part is called in the brackets no-markdown-fault',
    ],
    ['a number in the words of a part', 'Take :part[ring 4]{ref=a} out.', '4]', typed('4')],
    [
      'an attribute that stands twice, of which one would be lost',
      'Look at :value{ref=a ref=b}.',
      ':value',
      'Unexpected second attribute `ref` of `value`, expected each attribute once no-duplicate-id',
    ],
    [
      'a value with words of its own',
      'Tighten to :value[much]{ref=a}.',
      ':value',
      'Unexpected words in the brackets of `value`, expected no brackets no-unknown-directive',
    ],
  ])('%s', (_what, words, at, message) => {
    const text = inStep(words)
    expect(linesOf(parsed(text).files)[0]).toBe(`${placeIn(text, at)} ${message}`)
  })
})

/** The place of the last occurrence: front matter and ids hold digits too. */
function placeOfLast(text: string, words: string): string {
  const lines = text.slice(0, text.lastIndexOf(words)).split('\n')
  return `procedures/sample.md:${lines.length}:${(lines.at(-1) ?? '').length + 1}`
}
