import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {compareTextSets, compareTexts} from '../../src/technical-text/compare-texts.ts'

const text = (...lines: readonly string[]): string => lines.map((line) => `${line}\n`).join('')
const step = (words: string): string => `tighten\tstep\t${words}`
const torque = (figure: string): string => `hub-bolts.torque\tvalue\t${figure}`

describe('two technical texts', () => {
  test('that are equal have no change', () => {
    expect(compareTexts(text(step('Go'), torque('61 N·m')), text(step('Go'), torque('61 N·m')))).toEqual([])
  })

  test('pair the old and the new figure of one value', () => {
    expect(compareTexts(text(step('Go'), torque('61 N·m')), text(step('Go'), torque('70 N·m')))).toEqual([
      {block: 'hub-bolts.torque', kind: 'value', before: '61 N·m', after: '70 N·m'},
    ])
  })

  test('tell what went and what came, in page order', () => {
    expect(
      compareTexts(
        text(step('Go'), step('Stop'), torque('61 N·m')),
        text(step('Go'), torque('61 N·m'), step('Look')),
      ),
    ).toEqual([
      {block: 'tighten', kind: 'step', before: 'Stop'},
      {block: 'tighten', kind: 'step', after: 'Look'},
    ])
  })

  test('see a change of order', () => {
    expect(compareTexts(text(step('One'), step('Two')), text(step('Two'), step('One')))).not.toEqual([])
  })

  test('give the later text when their changes are put into the earlier one, line for line', () => {
    const line = fc.record({
      block: fc.constantFrom('a', 'b'),
      kind: fc.constantFrom('value', 'step'),
      words: fc.constantFrom('x', 'y', 'z'),
    })
    const texts = fc.array(line, {maxLength: 12})
    fc.assert(
      fc.property(texts, texts, (before, after) => {
        const joined = (lines: typeof before): readonly string[] =>
          lines.map((one) => `${one.block}\t${one.kind}\t${one.words}`)
        const changes = compareTexts(text(...joined(before)), text(...joined(after)))
        const count = (lines: readonly string[]): ReadonlyMap<string, number> =>
          lines.reduce((all, one) => all.set(one, (all.get(one) ?? 0) + 1), new Map<string, number>())
        const kept = count(joined(before))
        const patched = new Map(kept)
        for (const {block, kind, before: gone, after: come} of changes) {
          if (gone !== undefined) add(patched, `${block}\t${kind}\t${gone}`, -1)
          if (come !== undefined) add(patched, `${block}\t${kind}\t${come}`, 1)
        }
        const wanted = count(joined(after))
        for (const [one, times] of patched) expect(times).toBe(wanted.get(one) ?? 0)
        for (const [one, times] of wanted) expect(patched.get(one) ?? 0).toBe(times)
      }),
    )
  })
})

function add(all: Map<string, number>, line: string, times: number): void {
  all.set(line, (all.get(line) ?? 0) + times)
}

test('two sets name pages that came, went or changed, by their ids', () => {
  const before = new Map([
    ['v/a', text(step('Go'))],
    ['v/b', text(step('Go'))],
    ['v/d', text(step('Go'))],
  ])
  const after = new Map([
    ['v/d', text(step('Go'))],
    ['v/c', text(step('Go'))],
    ['v/a', text(step('Run'))],
  ])
  expect(compareTextSets(before, after)).toEqual([
    {
      page: 'v/a',
      kind: 'changed',
      lines: [{block: 'tighten', kind: 'step', before: 'Go', after: 'Run'}],
    },
    {page: 'v/b', kind: 'removed'},
    {page: 'v/c', kind: 'added'},
  ])
})
