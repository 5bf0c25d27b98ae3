import {describe, expect, test} from 'vitest'
import {parseCondition} from '../../../src/check/conditions/parse-condition.ts'
import {pumpOf} from '../../../src/check/pump.ts'
import {noUnnumberedPart} from '../../../src/check/rules/no-unnumbered-part.ts'
import type {Part} from '../../../src/handbook-model/office-content.ts'
import {at, part, place} from '../../compile/data-for-tests.ts'
import {design, vessel} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {soundProcedure, workText} from '../procedure-for-tests.ts'

const ship = vessel()

/** Two pumps of one ship; the second one has what `backstop` says. */
const pumps = ship.positions.slice(0, 2).map((position, index) => ({
  ...pumpOf(ship, position, design(), []),
  facts: new Map<string, string | undefined>([['rings', index === 0 ? 'screwed' : 'pressed']]),
}))

function numbered(id: string, balloon: string, when?: string): Part {
  const condition = when === undefined ? undefined : parseCondition(when, place, new Map())
  return {...part(id), balloon, place: at('parts.yaml'), ...(condition ? {when: condition} : {})}
}

const {balloon: _balloon, ...cloth} = part('cloth')
const list: readonly Part[] = [
  {...cloth, place: at('parts.yaml')},
  numbered('ring', '4'),
  numbered('screws', '5', 'rings = screwed'),
  numbered('cover', '1', 'rings = screwed'),
  numbered('cover-b', '1', 'rings = pressed'),
]

function told(words: string, when = ''): readonly string[] {
  const text = step(words, when)
  return toldBy((files) =>
    noUnnumberedPart(
      [soundProcedure(text)],
      {parts: new Map(list.map((one) => [one.id, one])), procedures: new Map(), designs: new Map(), pumps},
      files,
    ),
  )
}

const step = (words: string, when = ''): string =>
  workText(`1. :step{#look${when && ` when="${when}"`}} ${words}`)

describe('a part that a text points at', () => {
  test('is accepted with a balloon that every pump has, as part of another design too', () => {
    expect(told('Take the :part[ring]{ref=ring} and the :part[cover]{ref=cover} out.')).toEqual([])
  })

  test('is refused where no drawing numbers it', () => {
    const words = 'Wipe it with a :part[cloth]{ref=cloth}.'
    expect(told(words)).toEqual([
      `${placeIn(step(words), ':part')} Unexpected part \`cloth\` without a balloon, expected one that the drawing numbers no-undefined-reference see parts.yaml:1:1`,
    ])
  })

  test('is refused where the parts list of a pump has no such balloon, with the pump', () => {
    const words = 'Take the :part[screws]{ref=screws} out.'
    const [, second] = ship.positions
    expect(told(words)).toEqual([
      `${placeIn(step(words), ':part')} Unexpected part \`screws\` on position \`${second?.id}\` of \`vessel-a\`, whose parts list has no balloon 5, expected a part of every pump of this procedure no-undefined-reference see parts.yaml:1:1`,
    ])
  })

  test('is accepted under the condition of the pumps that have it', () => {
    expect(told('Take the :part[screws]{ref=screws} out.', 'rings = screwed')).toEqual([])
    expect(told('Take the :part[screws]{ref=screws} out.', 'rings ≠ screwed')).toHaveLength(1)
  })

  test('is left to another rule where no part has the id', () => {
    expect(told('Take the :part[valve]{ref=valve} out.')).toEqual([])
  })
})
