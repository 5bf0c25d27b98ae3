import {describe, expect, test} from 'vitest'
import {pointState, restoredState, securedBy} from '../../src/compile/point-state.ts'
import type {IsolationPoint} from '../../src/handbook-model/vessel-content.ts'
import {english, place} from './data-for-tests.ts'

test.each<[IsolationPoint['kind'], string, string]>([
  ['valve', 'open', 'passes'],
  ['valve', 'closed, hose taken off and cap fitted', 'shut'],
  ['valve', 'closed unless the cargo is heated', 'either'],
  ['valve', 'as the cargo needs', 'either'],
  ['valve', 'not closed', 'either'],
  ['valve', 'opened by a spring', 'either'],
  ['blind', 'no blind, line to the purge outlet valve open', 'passes'],
  ['blind', 'blind flange bolted on, no hose', 'shut'],
  ['blind', 'turned', 'either'],
  ['fuse', 'in its holder', 'passes'],
  ['fuse', 'drawn, holder empty', 'shut'],
  ['relief-valve', 'fitted, seal wire whole', 'passes'],
  ['relief-valve', 'taken off, test rig in its place', 'shut'],
  ['plug', 'no plug', 'passes'],
  ['plug', 'plug screwed in', 'shut'],
  ['transport-bolt', 'no bolt', 'passes'],
  ['transport-bolt', 'bolts fitted', 'shut'],
])('a %s that is "%s": %s', (kind, words, state) => {
  expect(pointState(kind, words)).toBe(state)
})

describe('a restored point', () => {
  const point = (kind: IsolationPoint['kind'], normal: string, restoredWith: string): IsolationPoint => ({
    id: 'point',
    tag: 'V1',
    medium: english('oil'),
    kind,
    normal: english(normal),
    isolated: english('closed'),
    where: english('deck'),
    lock: english('lock'),
    proof: english('dry'),
    restoredWith: english(restoredWith),
    place,
  })

  test.each<[string, IsolationPoint, string]>([
    [
      'is open when it is opened',
      point('valve', 'as the cargo needs', 'V1 opened slowly, lock off'),
      'passes',
    ],
    [
      'is shut when it is left closed',
      point('valve', 'as the cargo needs', 'V1 left closed, lock off'),
      'shut',
    ],
    ['is as in normal use when its words say neither', point('valve', 'open', 'lock off'), 'passes'],
    ['of another kind is as in normal use', point('blind', 'no blind', 'drain left closed'), 'passes'],
  ])('%s', (_, one, state) => {
    expect(restoredState(one)).toBe(state)
  })
})

test.each([
  ['hasp and lock through the hand wheel', 'locked'],
  ['locker shut with a bolt', undefined],
  ['wire seal through two bolts of the blind', 'sealed'],
  ['red tag at the handle', 'tagged'],
])('what is held by "%s" is %s', (lock, secured) => {
  expect(securedBy(lock)).toBe(secured)
})
