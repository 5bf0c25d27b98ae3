import {describe, expect, test} from 'vitest'
import {hasPart, isFitted, partsOfDesign} from '../../src/conditions/has-part.ts'
import type {Part} from '../../src/handbook-model/office-content.ts'
import type {Procedure} from '../../src/handbook-model/procedure.ts'
import {millimetres} from '../../src/quantities/named-units.ts'
import {contentOf, deskOf} from '../compile/content-for-tests.ts'
import {datum, english, part, place, to} from '../compile/data-for-tests.ts'
import {equals, procedure, section, step} from '../compile/procedures-for-tests.ts'
import {designA} from '../compile/vessel-for-tests.ts'

const double = equals('cargo-seal', 'double-lip')
const single = equals('cargo-seal', 'single-lip')
const steps = [section('one', [step('a')])]

const listing = (id: string, more: Partial<Procedure> = {}): Procedure =>
  procedure(id, steps, {parts: [{part: to('ring'), quantity: 1, unit: 'piece'}], ...more})

/** Whether the pump in 4P, with double lips, and the one in 4S, with a single one, have it. */
function pumpsWith(one: Part, list: readonly Procedure[] = []): readonly boolean[] {
  const content = contentOf({list})
  return ['4p', '4s'].map((id) => hasPart(one, deskOf(content, id), content))
}

const design = {
  ...designA,
  seals: [
    {
      id: 'lip',
      title: english('lip'),
      part: to('ring'),
      runningDiameter: datum(millimetres(100), '100', 'mm'),
      seatDepth: datum(millimetres(10), '10', 'mm'),
      between: 'cargo-cofferdam' as const,
      lips: [],
      place,
    },
  ],
}

describe('a part', () => {
  test('is fitted where its own condition says so, whatever procedures list', () => {
    expect(pumpsWith({...part('ring'), when: double}, [listing('renew', {when: single})])).toEqual([
      true,
      false,
    ])
  })

  test('counts as fitted where a fact of its condition is open', () => {
    expect(pumpsWith({...part('ring'), when: equals('backstop', 'fitted')})[1]).toBe(true)
  })

  test('is fitted to the pumps for which a procedure lists it', () => {
    expect(pumpsWith(part('ring'), [listing('renew', {when: single})])).toEqual([false, true])
  })

  test('is not fitted where the line of the procedure is for other pumps', () => {
    const parts = [{part: to('ring'), quantity: 1, unit: 'piece', when: double}]
    expect(pumpsWith(part('ring'), [listing('renew', {parts})])).toEqual([true, false])
  })

  test('is fitted to all pumps where no design names it and no procedure lists it', () => {
    expect(pumpsWith(part('ring'))).toEqual([true, true])
  })

  test('that the design names too is fitted where the procedures for the pump say so', () => {
    const parts = [{part: to('ring'), quantity: 1, unit: 'piece', when: single}]
    const content = contentOf({
      designs: new Map([['design-a', design]]),
      list: [listing('renew', {parts})],
    })
    const fitted = ['4p', '4s'].map((id) => isFitted(part('ring'), deskOf(content, id), content))
    expect(fitted).toEqual(['false', 'true'])
  })

  test('is not known to be fitted where the line of the procedure asks for an open fact', () => {
    const parts = [{part: to('ring'), quantity: 1, unit: 'piece', when: equals('backstop', 'fitted')}]
    const content = contentOf({list: [listing('renew', {parts})]})
    expect(isFitted(part('ring'), deskOf(content, '4s'), content)).toBe('unknown')
  })

  test('that a design names for a seal is fitted to its pumps alone', () => {
    const content = contentOf({designs: new Map([['design-a', design]])})
    const pump = deskOf(content, '4p')
    const stranger = {...pump, design: designA}
    expect(partsOfDesign(design)).toEqual(['ring'])
    expect(hasPart(part('ring'), pump, content)).toBe(true)
    expect(hasPart(part('ring'), stranger, content)).toBe(false)
  })
})
