import {describe, expect, test} from 'vitest'
import {
  actionsAtReactiveCargo,
  hazardClassesOfActions,
} from '../../../src/check/rules/hazard-classes-of-actions.ts'
import {noUncautionedHazard} from '../../../src/check/rules/no-uncautioned-hazard.ts'
import type {Caution} from '../../../src/handbook-model/office-content.ts'
import {cautions} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {procedureText, soundProcedure, workText} from '../procedure-for-tests.ts'

const known = cautions({oil: 'H03', start: 'H04', 'second-start': 'H04', edges: 'H11', reactive: 'H24'})

function told(
  text: string,
  reactiveCargo = false,
  library: ReadonlyMap<string, Caution> = known,
): readonly string[] {
  return toldBy((files) => noUncautionedHazard(soundProcedure(text), library, reactiveCargo, files))
}

/** The message for a step `turn` in the given text. */
function missing(text: string, action: string, hazard: string, expected: string): string {
  return `${placeIn(text, ':step{#turn')} Unexpected step \`turn\` with action \`${action}\` and no caution of hazard class ${hazard}, expected ${expected} before it no-uncautioned-hazard`
}

const turn = '1. :step{#turn action="rotate-by-hand"} Turn it.'

describe('a step with a classed hazard', () => {
  test.each([
    ['cautions directly before it', workText(`::caution{ref=start}\n::caution{ref=edges}\n\n${turn}`)],
    [
      'cautions of its section',
      workText(`::caution{ref=start section}\n::caution{ref=edges section}\n\n${turn}`),
    ],
    ['one of each', workText(`::caution{ref=start section}\n\n::caution{ref=edges}\n\n${turn}`)],
    [
      'another caution of the same class',
      workText(`::caution{ref=second-start}\n::caution{ref=edges}\n\n${turn}`),
    ],
    [
      'a caution under the condition of the step',
      workText(
        `::caution{ref=start when="a = b"}\n::caution{ref=edges}\n\n1. :step{#turn action="rotate-by-hand" when="a = b"} Turn it.`,
      ),
    ],
  ])('is accepted with %s', (_what, text) => {
    expect(told(text)).toEqual([])
  })

  test('is refused for each class without a caution, and every caution that would serve is named', () => {
    const text = workText(turn)
    expect(told(text)).toEqual([
      missing(text, 'rotate-by-hand', 'H04', '`start` or `second-start`'),
      missing(text, 'rotate-by-hand', 'H11', '`edges`'),
    ])
  })

  test('is refused when no caution of the class is written yet', () => {
    const text = workText(`::caution{ref=start}\n\n${turn}`)
    expect(told(text, false, cautions({start: 'H04'}))).toEqual([
      missing(text, 'rotate-by-hand', 'H11', 'a caution of that class'),
    ])
  })

  test('is refused when its caution stands under another condition', () => {
    const text = workText(`::caution{ref=start when="a = b"}\n::caution{ref=edges}\n\n${turn}`)
    expect(told(text)).toEqual([missing(text, 'rotate-by-hand', 'H04', '`start` or `second-start`')])
  })

  test('is refused when the caution stands at the step before it', () => {
    const text = workText(
      `::caution{ref=start}\n::caution{ref=edges}\n\n1. :step{#look} Look.\n2. :step{#turn action="rotate-by-hand"} Turn it.`,
    )
    expect(told(text)).toHaveLength(2)
  })

  test('is refused when the caution is of another section', () => {
    const text = procedureText(
      `## One\n\n::section{#one}\n\n::caution{ref=start section}\n::caution{ref=edges section}\n\n1. :step{#look} Look.\n\n## Two\n\n::section{#two}\n\n${turn}`,
    )
    expect(told(text)).toHaveLength(2)
  })

  test('with two actions needs the classes of both', () => {
    const text = workText(
      '::caution{ref=start}\n\n1. :step{#turn action="rotate-by-hand restore-pressure"} Turn it.',
    )
    expect(told(text)).toEqual([
      missing(text, 'restore-pressure', 'H03', '`oil`'),
      missing(text, 'rotate-by-hand', 'H11', '`edges`'),
    ])
  })

  test('waits while a caution that it calls for is not there, which another rule tells', () => {
    expect(told(workText(`::caution{ref=strat}\n\n${turn}`))).toEqual([])
  })
})

test('a step without an action class, and a procedure without sections, need nothing', () => {
  expect(told(workText('1. :step{#look} Look.'))).toEqual([])
  expect(told(procedureText(''))).toEqual([])
})

test('an action class that is not of the table is refused with the nearest one', () => {
  const text = workText('1. :step{#turn action=lifft} Lift it.')
  expect(told(text)).toEqual([
    `${placeIn(text, ':step{#turn')} Unexpected action class \`lifft\` of step \`turn\`, expected an action class such as \`lift\` no-undefined-reference`,
  ])
})

describe('cargo that reacts with water', () => {
  const text = (refs: string): string =>
    workText(
      `::caution{ref=cargo}\n::caution{ref=fire}\n${refs}\n1. :step{#turn action="open-cargo"} Open it.`,
    )
  const library = cautions({cargo: 'H05', fire: 'H06', reactive: 'H24'})

  test('asks for its caution only where such a cargo is carried', () => {
    expect(told(text(''), false, library)).toEqual([])
    expect(told(text(''), true, library)).toEqual([missing(text(''), 'open-cargo', 'H24', '`reactive`')])
    expect(told(text('::caution{ref=reactive}\n'), true, library)).toEqual([])
  })

  test('is met by every action that opens the cargo side or purges', () => {
    expect(actionsAtReactiveCargo).toEqual(['open-cargo', 'purge'])
  })
})

describe('the table of action classes', () => {
  /** Written down a second time from the office's risk assessment, so that a row lost by a slip is seen. */
  test.each([
    ['open-cargo', 'H05 H06'],
    ['open-hydraulic', 'H03 H09 H13 H18 H21'],
    ['open-purge', 'H02 H05 H25'],
    ['open-spring', 'H29'],
    ['open-oil-side', 'H30'],
    ['enter', 'H01 H02 H08 H26 H27'],
    ['lift', 'H07 H08 H23 H27'],
    ['pressurise-gas', 'H02 H10'],
    ['pressurise-oil', 'H03'],
    ['restore-pressure', 'H03 H04'],
    ['purge', 'H02 H05 H12 H25'],
    ['start-pump', 'H04 H20 H28'],
    ['heat', 'H06 H14'],
    ['chemical', 'H15'],
    ['rotate-by-hand', 'H04 H11'],
    ['fit-seal', 'H16 H17'],
    ['fit-sleeve', 'H16 H17'],
    ['change-elastomer', 'H19'],
    ['drain', 'H09 H13 H21'],
    ['dispose', 'H21'],
    ['work-at-opening', 'H08'],
  ])('asks of `%s` the classes %s', (action, classes) => {
    expect([...(hazardClassesOfActions.get(action) ?? [])].sort().join(' ')).toBe(classes)
  })

  test('has no further row', () => {
    expect(hazardClassesOfActions.size).toBe(21)
  })
})
