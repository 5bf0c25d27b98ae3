import {describe, expect, test} from 'vitest'
import {stopsTheBuild} from '../../../src/messages/add-message.ts'
import {checkAfter} from '../texts-for-tests.ts'

const design = 'designs/design-a.yaml'
const table = 'tables/running-clearances.csv'

/** What is said of a ring of 214 mm with these clearances, where the table prints 0.45 mm below 250 mm. */
function changed(minimum: string, asNew: string, more = ''): ReturnType<typeof checkAfter> {
  return checkAfter((texts) =>
    texts.replace(
      design,
      /new: 0\.55 mm diametral\n {4}minimum-new: 0\.50 mm diametral\n/u,
      `new: ${asNew}\n    minimum-new: ${minimum}\n${more}`,
    ),
  )
}

const told = (minimum: string, asNew: string, more = ''): readonly string[] =>
  changed(minimum, asNew, more).messages

const mend = 'Read drawing and table again: one of the two is wrong; or write `below-table:` with the reason'
const unknown = '{value: not known, reason: no drawing}'

describe('a new clearance and the table of running clearances', () => {
  test.each([
    ['the figure of the table itself', '0.45 mm diametral', '0.45 mm diametral'],
    ['the same on the radius', '0.225 mm radial', '0.30 mm radial'],
    ['more than it', '0.46 mm diametral', '0.55 mm diametral'],
    ['what nobody knows', unknown, unknown],
  ])('agree on %s', (_what, minimum, asNew) => {
    expect(told(minimum, asNew)).toEqual([])
  })

  test.each([
    ['0.44 mm diametral', '0.55 mm diametral', '30:18', 'least new clearance of `0.44 mm diametral`'],
    ['0.22 mm radial', '0.55 mm diametral', '30:18', 'least new clearance of `0.22 mm radial`'],
    [unknown, '0.44 mm diametral', '29:10', 'new clearance of `0.44 mm diametral`'],
    ['0.45 mm diametral', '0.44 mm diametral', '29:10', 'new clearance of `0.44 mm diametral`'],
    ['0.43 mm diametral', '0.44 mm diametral', '30:18', 'least new clearance of `0.43 mm diametral`'],
  ])(
    'contradict each other at %s and %s, which is told once with both sources',
    (minimum, asNew, at, what) => {
      const {messages, files} = changed(minimum, asNew)
      expect(messages).toEqual([
        `${design}:${at} Unexpected ${what} of \`lower-ring\` at a running diameter of \`214 mm\` by \`drawing\`, expected at least the \`0.45 mm diametral\` of ${table} by \`rules\` no-contradicting-clearance | ${mend} | see ${table}:9:1`,
      ])
      expect(stopsTheBuild(files)).toBe(false)
      expect(files.get(design)?.messages.map((one) => one.fatal)).toEqual([false])
    },
  )

  test('may differ for a reason: the message stays as information', () => {
    const {files} = changed(
      '0.30 mm diametral',
      '0.35 mm diametral',
      '    below-table: carbon fibre in resin\n',
    )
    expect(files.get(design)?.messages.map(({fatal, note}) => ({fatal, note}))).toEqual([
      {fatal: undefined, note: 'Accepted: carbon fibre in resin'},
    ])
  })

  test('do not differ where a reason says that they do', () => {
    expect(
      told('0.45 mm diametral', '0.55 mm diametral', '    below-table: carbon fibre in resin\n'),
    ).toEqual([
      `${design}:25:5 Unexpected \`below-table\` of \`lower-ring\`, expected it on a ring whose new clearance lies below the table no-contradicting-clearance | Take the reason out: it would hide the next contradiction | see ${table}:9:1`,
    ])
    expect(told(unknown, unknown, '    below-table: carbon fibre in resin\n')).toEqual([])
  })

  test('are not compared beyond the ends of the table', () => {
    const {messages} = checkAfter((texts) => {
      texts.replace(design, 'running-diameter: 214 mm', 'running-diameter: 250 mm')
      texts.replace(design, 'minimum-new: 0.50', 'minimum-new: 0.20')
    })
    expect(messages).toEqual([])
  })
})
