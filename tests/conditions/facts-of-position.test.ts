import {describe, expect, test} from 'vitest'
import {contentOf, deskOf} from '../compile/content-for-tests.ts'
import {fact} from '../compile/data-for-tests.ts'
import {designA, positionOf, vesselA} from '../compile/vessel-for-tests.ts'

describe('facts of a pump', () => {
  test('name the vessel and the design without being declared', () => {
    const {facts} = deskOf(contentOf({}), '4p')
    expect(facts.get('vessel')).toBe('vessel-a')
    expect(facts.get('design')).toBe('design-a')
  })

  test('come from vessel, design and position', () => {
    const {facts} = deskOf(contentOf({}), '4s')
    expect(facts.get('nitrogen-supply')).toBe('plant')
    expect(facts.get('stack-layout')).toBe('concentric')
    expect(facts.get('cargo-seal')).toBe('single-lip')
  })

  test('stay unknown where the position says that nobody knows', () => {
    expect(deskOf(contentOf({}), '4s').facts.get('backstop')).toBeUndefined()
  })

  test('of a position are never taken from the design, known or unknown there', () => {
    const design = {...designA, facts: [...designA.facts, fact('cargo-seal', 'double-lip')]}
    const vessel = {
      ...vesselA,
      positions: [positionOf('4p', []), positionOf('4s', [fact('cargo-seal', 'single-lip')])],
    }
    const content = contentOf({
      designs: new Map([['design-a', design]]),
      vessels: new Map([['vessel-a', vessel]]),
    })
    expect(deskOf(content, '4p').facts.get('cargo-seal')).toBeUndefined()
    expect(deskOf(content, '4s').facts.get('cargo-seal')).toBe('single-lip')
  })
})
