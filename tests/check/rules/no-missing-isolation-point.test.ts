import {describe, expect, test} from 'vitest'
import {noMissingIsolationPoint} from '../../../src/check/rules/no-missing-isolation-point.ts'
import {isolationPoint, type TwoPumps, vessel, vesselText} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {soundProcedure, workText} from '../procedure-for-tests.ts'

const isolates = workText('1. :step{#close} Close it.\n\n   ::isolate{role=pressure}')

function told(pumps: TwoPumps, text = isolates): readonly string[] {
  return toldBy((files) => noMissingIsolationPoint(soundProcedure(text), vessel(pumps).positions, files))
}

const points = `{pressure: ${isolationPoint}}`
const none = '{pressure: {none: no oil line to this pump}}'

describe('a role that a procedure isolates', () => {
  test('is accepted with a point or a written reason on every pump', () => {
    expect(told({isolation: points, secondIsolation: none})).toEqual([])
  })

  test.each<[string, TwoPumps]>([
    ['that is not mentioned', {isolation: points}],
    ['with an empty list of points', {isolation: points, secondIsolation: '{pressure: []}'}],
    ['whose neighbour alone is given', {isolation: points, secondIsolation: `{return: ${isolationPoint}}`}],
  ])('%s is refused for the pump that lacks it', (_what, pumps) => {
    expect(told(pumps)).toEqual([
      `${placeIn(vesselText(pumps), '{id: 1s', 'vessels/vessel-a/vessel.yaml')} Unexpected position \`1s\` without isolation point for \`pressure\`, expected a point or \`{none: reason}\` as procedure \`sample\` isolates it no-missing-isolation-point`,
    ])
  })

  test('is asked for by a restoration too', () => {
    const restores = workText('1. :step{#open} Open it.\n\n   ::restore{role=pressure}')
    expect(told({isolation: points}, restores)).toHaveLength(1)
  })
})

test('a procedure that isolates nothing asks for nothing', () => {
  expect(told({}, workText('1. :step{#look} Look.'))).toEqual([])
})
