import {describe, expect, test} from 'vitest'
import {boundCautions, cautionNumbers} from '../../src/compile/caution-numbers.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {equals, uses, usesWhen} from './procedures-for-tests.ts'

const desk = deskOf(contentOf({}), '4s')

describe('cautions of a step', () => {
  test('stand highest word first, whatever order the author wrote', () => {
    const bound = boundCautions(uses('dirt', 'spare', 'oil', 'gas'), desk, cautionNumbers(desk))
    expect(bound.map((one) => `${one.number} ${one.word} ${one.id}`)).toEqual([
      '1 DANGER gas',
      '2 WARNING oil',
      '3 CAUTION spare',
      '4 NOTICE dirt',
    ])
  })

  test('keep their number wherever they come again on the page', () => {
    const numbers = cautionNumbers(desk)
    boundCautions(uses('oil'), desk, numbers)
    const again = boundCautions(uses('dirt', 'oil', 'gas'), desk, numbers)
    expect(again.map((one) => `${one.number} ${one.id}`)).toEqual(['2 gas', '1 oil', '3 dirt'])
    expect(numbers.used().map((one) => `${one.number} ${one.word} ${one.title}`)).toEqual([
      '1 WARNING title of oil',
      '2 DANGER title of gas',
      '3 NOTICE title of dirt',
    ])
  })

  test('say word, title and advice alone when they come again on the page', () => {
    const numbers = cautionNumbers(desk)
    boundCautions(uses('oil'), desk, numbers)
    expect(boundCautions(uses('oil', 'gas'), desk, numbers)).toMatchObject([
      {id: 'gas', again: false, hazard: 'hazard of gas', protection: ['gloves for gas']},
      {id: 'oil', again: true, title: 'title of oil', hazard: '', consequence: '', protection: []},
    ])
    expect(boundCautions(uses('oil'), desk, numbers)[0]?.avoid).toEqual(['Avoid oil.'])
  })

  test('are gone when their condition is false and take no number', () => {
    const numbers = cautionNumbers(desk)
    const bound = boundCautions(
      [usesWhen('gas', equals('cargo-seal', 'double-lip')), ...uses('oil')],
      desk,
      numbers,
    )
    expect(bound.map((one) => `${one.number} ${one.id}`)).toEqual(['1 oil'])
  })

  test('stand when nobody knows whether they apply', () => {
    const bound = boundCautions([usesWhen('gas', equals('backstop', 'fitted'))], desk, cautionNumbers(desk))
    expect(bound.map((one) => one.id)).toEqual(['gas'])
  })

  test('of one panel stand once, though two conditions call for the same one', () => {
    const twice = [usesWhen('gas', equals('backstop', 'fitted')), usesWhen('gas', equals('backstop', 'none'))]
    expect(boundCautions(twice, desk, cautionNumbers(desk)).map((one) => one.id)).toEqual(['gas'])
  })

  test('carry hazard, consequence, how to avoid it, protection and the way to their entry', () => {
    expect(boundCautions(uses('gas'), desk, cautionNumbers(desk))).toEqual([
      {
        id: 'gas',
        number: 1,
        again: false,
        word: 'DANGER',
        title: 'title of gas',
        hazard: 'hazard of gas',
        consequence: 'consequence of gas',
        avoid: ['Avoid gas.'],
        protection: ['gloves for gas'],
        link: {text: 'title of gas', path: 'cautions.html', fragment: 'caution--gas'},
      },
    ])
  })
})
