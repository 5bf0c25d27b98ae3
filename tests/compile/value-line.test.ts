import {describe, expect, test} from 'vitest'
import {limitLines, valueLine} from '../../src/compile/value-line.ts'
import type {ComputedValue} from '../../src/handbook-model/computed.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {knownValue, unknownValue} from './data-for-tests.ts'

const content = contentOf({})
const calculation: ComputedValue['calculation'] = {
  name: 'tightening-torque',
  words: '',
  formula: [],
  symbols: [],
  inputs: [],
  steps: [],
}

describe('a value as one line', () => {
  test('has figure, unit, further figures, condition and the way to its explanation', () => {
    const value = knownValue('hub-bolts.passes', '62', 'N·m', {
      condition: 'with assembly paste',
      calculation,
      result: {kind: 'known', printed: {figure: '62', unit: 'N·m'}, more: ['19', '37', '62']},
    })
    expect(valueLine(value, deskOf(content, '4s'))).toEqual({
      id: 'hub-bolts.passes',
      title: 'value hub-bolts.passes',
      figure: '62',
      unit: 'N·m',
      known: true,
      more: ['19', '37', '62'],
      condition: 'with assembly paste',
      basis: 'tightening torque',
      mark: 'demonstration data',
      link: {
        text: 'value hub-bolts.passes',
        path: 'designs/design-a/passes.html',
        fragment: 'value--hub-bolts--passes',
      },
    })
  })

  test('that nobody knows says so in place of the figure, without a unit, and names what is missing', () => {
    const line = valueLine(
      unknownValue('cofferdam.volume', ['stack length of 4S (not on the drawing)', 'head volume']),
      deskOf(content, '4s'),
    )
    expect(line).toMatchObject({figure: 'NOT KNOWN - MEASURE AND REPORT', unit: '', known: false, more: []})
    expect(line.condition).toBe('missing: stack length of 4S (not on the drawing); head volume')
  })

  test.each([
    {sources: ['standard'], mark: ''},
    {sources: ['standard', 'drawing'], mark: 'demonstration data'},
    {sources: ['drawing', 'practice'], mark: 'common practice, no source'},
  ])('from $sources is marked "$mark"', ({sources, mark}) => {
    const value = knownValue('mass.head', '186', 'kg', {sources: sources.map((source) => ({source}))})
    expect(valueLine(value, deskOf(content, '4s')).mark).toBe(mark)
  })

  test('does not print the unit of a ratio', () => {
    expect(valueLine(knownValue('setting.lift', '0.65', '1'), deskOf(content, '4s')).unit).toBe('')
  })
})

describe('a limit', () => {
  test('says its side, figure and unit, what is done outside it and which rule governs', () => {
    expect(limitLines(['lower-ring-renewal', 'lower-ring-minimum'], deskOf(content, '4s'))).toEqual([
      {
        id: 'lower-ring-renewal',
        title: 'clearance of the lower ring',
        limit: 'not above 1.20 mm diametral',
        known: true,
        outside: 'RENEW',
        action: 'Renew the ring.',
        because: 'the design governs',
      },
      {
        id: 'lower-ring-minimum',
        title: 'smallest gap',
        limit: 'not below 0.40 mm diametral',
        known: true,
        outside: 'STOP',
        action: 'Call the office.',
        because: '',
      },
    ])
  })

  test('that nobody knows prints NOT KNOWN - MEASURE AND REPORT with what is missing, and no figure', () => {
    const desk = deskOf(content, '4s', [
      unknownValue('lower-ring.renewal', ['renewal clearance of the lower ring (no drawing)']),
    ])
    const [line] = limitLines(['lower-ring-renewal'], desk)
    expect(line).toMatchObject({known: false, limit: 'not above: NOT KNOWN - MEASURE AND REPORT'})
    expect(line?.because).toBe('missing: renewal clearance of the lower ring (no drawing)')
  })
})
