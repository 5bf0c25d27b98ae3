import {describe, expect, test} from 'vitest'
import {heldElastomers} from '../../src/calculations/seals/elastomer-shelf-life.ts'
import {noAgedRubber} from '../../src/compute/no-aged-rubber.ts'
import {type Part, rubbers} from '../../src/handbook-model/office-content.ts'
import type {SpareAboard} from '../../src/handbook-model/vessel-content.ts'
import {toldBy} from '../check/messages-for-tests.ts'
import {byId, contentOf} from '../compile/content-for-tests.ts'
import {english} from '../compile/data-for-tests.ts'
import {vesselA} from '../compile/vessel-for-tests.ts'

const place = {path: 'vessels/vessel-a/vessel.yaml', line: 40, column: 5}

/** What is said of one spare aboard on a day. */
function told(
  day: string | undefined,
  spare: Partial<Pick<SpareAboard, 'quantity'>> = {},
  rubber: Pick<Part, 'rubber'> = {rubber: 'FKM'},
): readonly string[] {
  const part: Part = {
    id: 'flange-ring',
    title: english('O-ring'),
    class: 'consumable',
    size: english('160 mm'),
    place: {path: 'parts.yaml', line: 2, column: 5},
    ...rubber,
  }
  const aboard = {
    part: {id: part.id, place},
    quantity: 2,
    cured: '2012-02-29',
    location: english('store'),
    place,
    ...spare,
  }
  const content = contentOf({
    parts: byId([part]),
    vessels: byId([{...vesselA, sparesAboard: [aboard]}]),
  })
  return toldBy((files) => noAgedRubber(content, day, files))
}

const line = (words: string): string =>
  `vessels/vessel-a/vessel.yaml:40:5 ${words} no-aged-rubber see parts.yaml:2:5`

describe('rubber aboard', () => {
  test.each<[string, readonly string[]]>([
    ['on the last day of its first period', told('2022-02-28')],
    ['before it was cured, which is no age', told('2010-01-01')],
    ['where no day is known', told(undefined)],
    ['of which there is none', told('2050-01-01', {quantity: 0})],
  ])('passes %s', (_what, lines) => {
    expect(lines).toEqual([])
  })

  test.each([
    ['2022-03-01', '2022-02-28', 'FKM'],
    ['2019-03-01', '2019-02-28', 'NBR'],
    ['2017-03-01', '2017-02-28', 'NR'],
  ] as const)('is told from %s on, with the day up to which it is valid', (day, validTo, rubber) => {
    expect(told(day, {}, {rubber})).toEqual([
      line(
        `Unexpected \`flange-ring\` aboard \`vessel-a\`, cured 2012-02-29 and valid to ${validTo}, expected rubber that is valid on ${day}`,
      ),
    ])
  })

  test('is no rubber that nobody stated', () => {
    expect(told('2012-03-01', {}, {})).toEqual([
      line('Unexpected cure date of `flange-ring`, expected it on a part whose rubber is stated'),
    ])
  })

  test('is never called expired or overdue', () => {
    expect(told('2050-01-01').join()).not.toMatch(/expired|overdue/iu)
  })
})

test('a part states each rubber whose storage period is known, and no other', () => {
  expect(rubbers).toEqual(heldElastomers)
})
