import {describe, expect, test} from 'vitest'
import {noUnwitnessedHold} from '../../../src/check/rules/no-unwitnessed-hold.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {nameplate, procedureText, soundProcedure, workText} from '../procedure-for-tests.ts'

function told(text: string): readonly string[] {
  return toldBy((files) => noUnwitnessedHold(soundProcedure(text), files))
}

const step = '1. :step{#look} Look.'
const hold = (signatures: string): string =>
  workText(`${step}\n\n::hold-point{#seen title=Seen ${signatures}}`)

describe('a hold point', () => {
  test('with two roles is accepted', () => {
    expect(told(hold('signed-by="second engineer" second-by="chief engineer"'))).toEqual([])
  })

  test.each([
    ['signed-by="second engineer"', 'without `second-by`, expected two signatures'],
    ['second-by="second engineer"', 'without `signed-by`, expected two signatures'],
    ['signed-by="second engineer" second-by=" "', 'without `second-by`, expected two signatures'],
    [
      'signed-by="second engineer" second-by="second engineer"',
      'signed twice by `second engineer`, expected two roles',
    ],
    [
      'signed-by="second engineer" second-by="Second engineer "',
      'signed twice by `second engineer`, expected two roles',
    ],
  ])('with %s is refused', (signatures, message) => {
    const text = hold(signatures)
    expect(told(text)).toEqual([
      `${placeIn(text, '::hold-point{#seen')} Unexpected hold point \`seen\` ${message} no-unwitnessed-hold`,
    ])
  })
})

describe('a procedure on a pump begins with the nameplate', () => {
  const work = (...blocks: readonly string[]): string =>
    ['## Work', '::section{#work}', ...blocks].join('\n\n')
  const start =
    'Unexpected first item of procedure `sample`, expected `::hold-point{#nameplate …}` no-unwitnessed-hold'
  const condition =
    'Unexpected condition on the nameplate hold point of procedure `sample`, expected it to stand on every pump no-unwitnessed-hold'

  test('and is accepted so', () => {
    expect(told(procedureText(work(nameplate, step)))).toEqual([])
  })

  test.each<[string, string, string]>([
    ['with a step first', work(step, nameplate), ':step'],
    [
      'with another hold point first',
      work('::hold-point{#seen title=Seen signed-by=a second-by=b}', nameplate, step),
      '::hold-point{#seen',
    ],
    ['with a step named nameplate', work('1. :step{#nameplate} Read the nameplate.'), ':step'],
  ])('%s it is refused', (_what, sections, at) => {
    const text = procedureText(sections)
    expect(told(text)).toEqual([`${placeIn(text, at)} ${start}`])
  })

  test('without any section it is refused at its first line', () => {
    expect(told(procedureText(''))).toEqual([`procedures/sample.md:1:1 ${start}`])
  })

  test.each<[string, string]>([
    ['of its own', work(nameplate.replace('#nameplate', '#nameplate when="a = b"'), step)],
    ['of its section', work(nameplate, step).replace('{#work}', '{#work when="a = b"}')],
  ])('under a condition %s the nameplate is refused', (_what, sections) => {
    const text = procedureText(sections)
    expect(told(text)).toEqual([`${placeIn(text, '::hold-point')} ${condition}`])
  })

  test.each(['vessel', 'design'])('a procedure of a %s needs no nameplate', (scope) => {
    expect(told(procedureText(work(step), {front: {scope}}))).toEqual([])
  })
})
