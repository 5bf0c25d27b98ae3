import {describe, expect, test} from 'vitest'
import {pumpOf} from '../../../src/check/pump.ts'
import {
  factValuesOf,
  noUndeclaredFact,
  noUndeclaredFactValue,
  noUnidentifiedFact,
} from '../../../src/check/rules/no-unknown-fact.ts'
import type {FactDeclaration} from '../../../src/handbook-model/office-content.ts'
import {design, type TwoPumps, vessel, vesselText} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {nameplate, procedureText, soundProcedure, workText} from '../procedure-for-tests.ts'

function declared(id: string, ...values: readonly string[]): FactDeclaration {
  return {
    id,
    title: {en: id},
    scope: 'position',
    values: values.map((value) => ({id: value, title: {en: value}})),
    place: {path: 'office.yaml', line: 1, column: 1},
  }
}

const facts = factValuesOf(
  [declared('backstop', 'fitted', 'none'), declared('cargo-seal', 'single-lip', 'double-lip')],
  ['design-a'],
  ['vessel-a'],
)

describe('a condition asks for declared facts and values alone', () => {
  const told = (text: string): readonly string[] =>
    toldBy((files) => noUndeclaredFact(soundProcedure(text), facts, files))
  const stepWhen = (condition: string): string => workText(`1. :step{#look when="${condition}"} Look.`)

  test.each([
    'backstop = fitted',
    'known backstop and cargo-seal in (single-lip, double-lip)',
    'design = design-a or vessel ≠ vessel-a',
    'not (backstop = none)',
  ])('`%s` is accepted', (condition) => {
    expect(told(stepWhen(condition))).toEqual([])
  })

  test('a procedure without conditions says nothing', () => {
    expect(told(procedureText(''))).toEqual([])
  })

  test.each<[string, string, string]>([
    ['backstopp = fitted', 'backstopp', 'Unexpected fact `backstopp`, expected a fact such as `backstop`'],
    ['known backstopp', 'known', 'Unexpected fact `backstopp`, expected a fact such as `backstop`'],
    [
      'backstop = fited',
      'backstop',
      'Unexpected value `fited` of fact `backstop`, expected a value such as `fitted`',
    ],
    [
      'backstop ≠ fited',
      'backstop',
      'Unexpected value `fited` of fact `backstop`, expected a value such as `fitted`',
    ],
    [
      'cargo-seal in (single-lip, doble-lip)',
      'cargo-seal',
      'Unexpected value `doble-lip` of fact `cargo-seal`, expected a value such as `double-lip`',
    ],
    [
      'design = design-b',
      'design =',
      'Unexpected value `design-b` of fact `design`, expected a value such as `design-a`',
    ],
    [
      'known cargo-seal and not (backstop = fited)',
      'backstop',
      'Unexpected value `fited` of fact `backstop`, expected a value such as `fitted`',
    ],
  ])('`%s` is refused at its own column', (condition, at, message) => {
    const text = stepWhen(condition)
    expect(told(text)).toEqual([`${placeIn(text, at)} ${message} no-unknown-fact`])
  })

  test.each<[string, string]>([
    ['a section', procedureText(`## Work\n\n::section{#work when="x = y"}\n\n${nameplate}`)],
    ['a caution of a section', workText('::caution{ref=a section when="x = y"}')],
    ['a caution of a step', workText('::caution{ref=a when="x = y"}\n\n1. :step{#look} Look.')],
    ['a tool', workText('1. :step{#look} Look.', {front: {tools: '[{tool: wrench, when: x = y}]'}})],
    [
      'a part',
      workText('1. :step{#look} Look.', {
        front: {parts: '[{part: ring, quantity: 1, unit: piece, when: x = y}]'},
      }),
    ],
    [
      'what stands under it alone',
      workText('1. :step{#look} Look.\n\n   :::only{when="x = y"}\n   Good.\n   :::'),
    ],
    ['a hold point', workText('::hold-point{#seen title=Seen signed-by=a second-by=b when="x = y"}')],
    ['a plate', workText('1. :step{#look} Look.\n\n   ::value{ref=a when="x = y"}')],
    [
      'a choice',
      workText(
        '1. :step{#look} Look.\n\n   :::one-of{#a}\n   - :choice{#b when="x = y"} Good.\n   - :choice{#c} Bad.\n   :::',
      ),
    ],
  ])('the condition of %s is read', (_what, text) => {
    expect(told(text)).toEqual([
      `${placeIn(text, 'x = y')} Unexpected fact \`x\`, expected one of \`backstop\`, \`cargo-seal\`, \`design\`, \`vessel\`, \`role\` no-unknown-fact`,
    ])
  })
})

describe('data states declared facts and values alone', () => {
  const path = 'vessels/vessel-a/vessel.yaml'
  const told = (vesselFacts: string): readonly string[] =>
    toldBy((files) => noUndeclaredFactValue(vessel({vesselFacts}).facts, facts, files))

  test('a declared value, and one that is not known with its reason, are accepted', () => {
    expect(told('{backstop: fitted, cargo-seal: {value: not known, reason: not opened yet}}')).toEqual([])
    expect(told('{}')).toEqual([])
  })

  test('a fact outside the list is refused', () => {
    const text = vesselText({vesselFacts: '{backstopp: fitted}'})
    expect(told('{backstopp: fitted}')).toEqual([
      `${placeIn(text, 'backstopp', path)} Unexpected fact \`backstopp\`, expected a fact such as \`backstop\` no-unknown-fact`,
    ])
  })

  test('a value outside the list is refused', () => {
    const text = vesselText({vesselFacts: '{backstop: fited}'})
    expect(told('{backstop: fited}')).toEqual([
      `${placeIn(text, 'fited', path)} Unexpected value \`fited\` of fact \`backstop\`, expected a value such as \`fitted\` no-unknown-fact`,
    ])
  })
})

describe('a condition on a fact that nobody knows', () => {
  const unknown = '{backstop: {value: not known, reason: no record}}'
  const known: TwoPumps = {facts: '{backstop: fitted}', secondFacts: '{backstop: none}'}
  const half: TwoPumps = {facts: '{backstop: fitted}', secondFacts: unknown}

  function told(
    text: string,
    pumps: TwoPumps,
    asFitted: readonly string[] = ['backstop'],
  ): readonly string[] {
    const ship = vessel(pumps)
    return toldBy((files) => {
      for (const position of ship.positions)
        noUnidentifiedFact(
          soundProcedure(text),
          pumpOf(
            ship,
            position,
            design(),
            asFitted.map((fact) => declared(fact, 'fitted', 'none')),
          ),
          facts,
          files,
        )
    })
  }

  const asks = '1. :step{#look when="backstop = fitted"} Look.'
  const find = '1. :step{#find} Turn the shaft by hand.\n\n   ::identify{fact=backstop}'
  const hold = '::hold-point{#found title=Found signed-by=a second-by=b}'
  const refusal = (text: string, pumps: TwoPumps, at = 'backstop = fitted'): string =>
    `${placeIn(text, at)} Unexpected condition on fact \`backstop\` that is not known for position \`1s\`, expected an \`::identify{fact=backstop}\` step and a hold point before it in \`sample\` no-unknown-fact see ${placeIn(vesselText(pumps), '{id: 1s', 'vessels/vessel-a/vessel.yaml')}`

  test('is refused for the pump where nobody knows it, and for no other', () => {
    const text = workText(asks)
    expect(told(text, known)).toEqual([])
    expect(told(text, half)).toEqual([refusal(text, half)])
  })

  test('is refused where the pump is silent', () => {
    const silent: TwoPumps = {facts: '{backstop: fitted}'}
    expect(told(workText(asks), silent)).toEqual([refusal(workText(asks), silent)])
  })

  test('is accepted behind a step that finds it out and a hold point', () => {
    expect(told(workText(`${find}\n\n${hold}\n\n${asks}`), half)).toEqual([])
  })

  test.each<[string, string]>([
    ['without the hold point', workText(`${find}\n\n${asks}`)],
    ['with the hold point before the step', workText(`${hold}\n\n${find}\n\n${asks}`)],
    ['behind the condition', workText(`${asks}\n\n${find}\n\n${hold}`)],
    [
      'of another fact',
      workText(`${find.replace('fact=backstop', 'fact=cargo-seal')}\n\n${hold}\n\n${asks}`),
    ],
  ])('is refused with a step that finds it out %s', (_what, text) => {
    expect(told(text, half)).toEqual([refusal(text, half)])
  })

  test.each<[string, string]>([
    [
      'a section',
      workText(`${find}\n\n## More\n\n::section{#more when="backstop = fitted"}\n\n1. :step{#look} Look.`),
    ],
    [
      'a caution of a section',
      workText('::caution{ref=a section when="backstop = fitted"}\n\n1. :step{#look} Look.'),
    ],
    ['a caution of a step', workText('::caution{ref=a when="backstop = fitted"}\n\n1. :step{#look} Look.')],
    ['a plate', workText('1. :step{#look} Look.\n\n   ::value{ref=a when="backstop = fitted"}')],
    [
      'a part of a larger condition',
      workText('1. :step{#look when="not (design = design-a and backstop = fitted)"} Look.'),
    ],
  ])('is refused on %s', (_what, text) => {
    expect(told(text, half).map((line) => line.replace(/^\S+ /u, ''))).toEqual([
      refusal(text, half).replace(/^\S+ /u, ''),
    ])
  })

  test.each([
    'design = design-b and backstop = fitted',
    'backstop = fitted or vessel = vessel-a',
    'not (design = design-a or backstop = fitted)',
  ])('is settled by what is known: `%s`', (condition) => {
    expect(told(workText(`1. :step{#look when="${condition}"} Look.`), half)).toEqual([])
  })

  test('is settled by its section, which does not stand on this pump', () => {
    const text = procedureText(
      `## Work\n\n::section{#work}\n\n${nameplate}\n\n## More\n\n::section{#more when="design = design-b"}\n\n${asks}`,
    )
    expect(told(text, half)).toEqual([])
  })

  test.each<[string, string]>([
    ['step', workText(`${find.replace('#find', '#find when="design = design-b"')}\n\n${hold}\n\n${asks}`)],
    [
      'hold point',
      workText(`${find}\n\n${hold.replace('#found', '#found when="design = design-b"')}\n\n${asks}`),
    ],
  ])('is not found out by a %s that does not stand on this pump', (_what, text) => {
    expect(told(text, half)).toEqual([refusal(text, half)])
  })

  test('may ask whether it is known', () => {
    expect(told(workText('1. :step{#look when="not known backstop"} Look.'), half)).toEqual([])
  })

  test('of the pump is not known from what the vessel states, other facts are', () => {
    const stated: TwoPumps = {vesselFacts: '{backstop: fitted}'}
    expect(told(workText(asks), stated)).toHaveLength(2)
    expect(told(workText(asks), stated, [])).toEqual([])
  })

  test('never is the design or the vessel', () => {
    expect(
      told(workText('1. :step{#look when="design = design-a and vessel = vessel-a"} Look.'), {}),
    ).toEqual([])
  })
})
