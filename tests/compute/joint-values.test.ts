import {describe, expect, test} from 'vitest'
import {tighteningOrder} from '../../src/calculations/bolted-joints/tightening-order.ts'
import {jointValueNames} from '../../src/handbook-model/computed.ts'
import {percent} from '../../src/quantities/named-units.ts'
import {coarseRows} from '../published-values/vdi-2230-tables.ts'
import {
  atLine,
  type Changes,
  computed,
  figureOf,
  hubBolts,
  knownIn,
  notKnown,
  stated,
  unknownIn,
  valueIn,
} from './content-for-tests.ts'
import {tablesOf} from './tables-for-tests.ts'

const {values, others, said} = computed()

/** Digits of a printed text as a number: `84.2665 mm²`, `75 %`. */
function number(printed: string): number {
  return Number.parseFloat(printed.replace('−', '-')) / (printed.endsWith('%') ? 100 : 1)
}

/** Inputs and steps of an explanation by symbol, as a reader with a pocket calculator types them. */
function explained(id: string): (symbol: string) => number {
  const {calculation} = valueIn(values, id)
  const all = [...(calculation?.inputs ?? []), ...(calculation?.steps ?? [])]
  return (symbol) => {
    const found = all.find((one) => one.symbol === symbol)
    if (!found) throw new Error(`Unexpected gap at \`${symbol}\` in the explanation of \`${id}\``)
    return number(found.printed)
  }
}

describe('the values of a joint', () => {
  test('are those that a procedure may refer to, and no other', () => {
    const ids = [...values.keys()].filter((id) => id.startsWith('hub-bolts.'))
    expect(ids.sort()).toEqual(jointValueNames.map((name) => `hub-bolts.${name}`).sort())
    expect(said).toBe('')
  })

  test('are computed once for a design and shared by its pumps', () => {
    for (const name of jointValueNames) {
      const id = `hub-bolts.${name}`
      expect(valueIn(others, id), id).toBe(valueIn(values, id))
      expect(valueIn(values, id).ofDesign, id).toBe(true)
    }
  })

  test.each(coarseRows.filter((row) => row.thread === 'M12' && row.propertyClass === '8.8'))(
    'give $torque N·m and $preload kN for $thread class $propertyClass at a friction of $friction, as published',
    ({friction, torque, preload}) => {
      const {values: ofRow} = computed({
        joint: {lubrication: {id: `friction-${friction}`, place: atLine(14)}},
      })
      expect(figureOf(ofRow, 'hub-bolts.torque')).toBe(`${torque} N·m`)
      expect(figureOf(ofRow, 'hub-bolts.preload')).toBe(`${preload} kN`)
    },
  )

  test('take the strength of the row whose range holds the diameter', () => {
    const row = coarseRows.find(
      (one) => one.thread === 'M20' && one.propertyClass === '8.8' && one.friction === 0.1,
    )
    const {values: large} = computed({joint: {thread: {id: 'M20', place: atLine(11)}}})
    expect(figureOf(large, 'hub-bolts.torque')).toBe(`${row?.torque} N·m`)
    const {values: edge} = computed({joint: {thread: {id: 'M16', place: atLine(11)}}})
    expect(figureOf(edge, 'hub-bolts.torque')).toBe('180 N·m')
  })

  test('print a torque below ten with one decimal', () => {
    const small = computed({
      joint: {
        thread: {id: 'M6', place: atLine(11)},
        propertyClass: {id: 'A4-70', place: atLine(12)},
      },
    })
    // Stainless table for M6, class 70, friction 0.1: 6.3 N·m at 90 % of the yield stress, read in a reprint.
    expect(figureOf(small.values, 'hub-bolts.torque')).toBe('6.3 N·m')
    expect(figureOf(values, 'hub-bolts.torque')).toBe('73 N·m')
  })

  test('carry the words of the friction row beside torque, preload and passes', () => {
    for (const name of ['torque', 'preload', 'passes'])
      expect(valueIn(values, `hub-bolts.${name}`).condition, name).toBe('threads and head with paste of 0.1')
    expect(figureOf(values, 'hub-bolts.lubrication')).toBe('threads and head with paste of 0.1')
  })

  test('print the passes as shares of the full torque, the last one whole', () => {
    const {quantity} = knownIn(values, 'hub-bolts.torque')
    const full = quantity?.si ?? Number.NaN
    expect(figureOf(values, 'hub-bolts.passes')).toBe(
      `${Math.round(0.3 * full)} · ${Math.round(0.6 * full)} · 73 N·m`,
    )
  })

  test('say what the fastener is', () => {
    expect(figureOf(values, 'hub-bolts.order')).toBe(tighteningOrder(8).join(' '))
    expect(figureOf(values, 'hub-bolts.count')).toBe('8')
    expect(figureOf(values, 'hub-bolts.fastener')).toBe('8 × M12 class 8.8 × 45 mm')
    expect(figureOf(values, 'hub-bolts.wrench')).toBe('18 mm')
    expect(figureOf(values, 'hub-bolts.locking')).toBe('locking plates, new at every assembly')
  })

  test('name the sources of torque, strength, friction, head and hole', () => {
    expect(
      valueIn(values, 'hub-bolts.torque')
        .sources.map(({source}) => source)
        .sort(),
    ).toEqual(
      ['drawing', 'iso-261', 'iso-273', 'iso-4014', 'iso-724', 'iso-898-1', 'paste-sheet', 'vdi-2230'].sort(),
    )
  })
})

describe('the explanation of a torque', () => {
  const of = explained('hub-bolts.torque')

  test('gives the printed preload and torque on a pocket calculator', () => {
    const wedge = of('tan(φ + ρ′)')
    const tension = (of('ν') * of('Rp0.2')) / Math.sqrt(1 + 3 * (1.5 * (of('d2') / of('d0')) * wedge) ** 2)
    const preload = (of('As') * tension) / 1000
    const torque = preload * ((of('d2') / 2) * wedge + (of('µK') * of('DKm')) / 2)
    expect(preload.toFixed(1)).toBe('44.1')
    expect(torque.toFixed(0)).toBe('73')
    expect(Math.abs(of('FM') - preload)).toBeLessThan(0.005)
    expect(Math.abs(of('MA') - torque)).toBeLessThan(0.05)
  })

  test('gives the intermediate results from the inputs', () => {
    const pitchDiameter = of('d') - 0.75 * Math.sqrt(0.75) * of('P')
    const lead = Math.atan(of('P') / (Math.PI * pitchDiameter))
    const friction = Math.atan(of('µG') / Math.cos(Math.PI / 6))
    expect(of('d2')).toBeCloseTo(pitchDiameter, 3)
    expect(of('tan(φ + ρ′)')).toBeCloseTo(Math.tan(lead + friction), 5)
    expect(of('DKm')).toBeCloseTo((of('dw') + of('dh')) / 2, 3)
    expect(of('As')).toBeCloseTo((Math.PI / 4) * of('d0') ** 2, 2)
  })

  test('says of each input where it came from and at which line it stands', () => {
    const inputs = valueIn(values, 'hub-bolts.torque').calculation?.inputs ?? []
    expect(inputs.map(({symbol}) => symbol)).toEqual(['d', 'P', 'dw', 'dh', 'Rp0.2', 'ν', 'µG', 'µK'])
    for (const {symbol, source, place} of inputs) {
      expect(source, symbol).toMatch(/^(iso|paste|drawing)/u)
      expect(place, symbol).toBeDefined()
    }
  })

  test('gives the preload from the line of its own', () => {
    const preload = explained('hub-bolts.preload')
    const torsion = 1.5 * (preload('d2') / preload('d0')) * preload('tan(φ + ρ′)')
    const force = (preload('As') * preload('ν') * preload('Rp0.2')) / Math.sqrt(1 + 3 * torsion ** 2)
    expect((force / 1000).toFixed(1)).toBe('44.1')
  })
})

describe('a joint that cannot be computed', () => {
  test('without a lubrication state stops the build at the joint and has no torque at all', () => {
    const {lubrication: _gone, ...dry} = hubBolts
    const {values: none, said: words} = computed({design: {joints: [dry]}})
    expect([...none.keys()].filter((id) => id.startsWith('hub-bolts.'))).toEqual([])
    expect(words.split('\n')[0]).toBe(
      'content/designs/design-a.yaml:10:1 error Unexpected joint `hub-bolts` without a lubrication state, expected `lubrication:` with the id of a row of tables/friction.csv no-dry-torque',
    )
  })

  test.each<[string, Changes['joint'], number, string]>([
    ['a thread', {thread: {id: 'M13', place: atLine(11)}}, 11, 'thread `M13` that tables/threads.csv'],
    ['a head', {head: 'socket'}, 11, 'socket head of `M12` that tables/bolt-heads.csv'],
    [
      'a class',
      {propertyClass: {id: '9.8', place: atLine(12)}},
      12,
      'class `9.8` at `M12` that tables/property-classes.csv',
    ],
    [
      'a class of that diameter',
      {thread: {id: 'M20', place: atLine(11)}, propertyClass: {id: 'A4-70', place: atLine(12)}},
      12,
      'class `A4-70` at `M20` that tables/property-classes.csv',
    ],
    [
      'a lubrication state',
      {lubrication: {id: 'soap', place: atLine(14)}},
      14,
      'lubrication state `soap` that tables/friction.csv',
    ],
  ])('for lack of %s stops the build and is never guessed', (_what, joint, line, words) => {
    const {values: none, said: all} = computed({joint: joint ?? {}})
    expect([...none.keys()].filter((id) => id.startsWith('hub-bolts.'))).toEqual([])
    expect(all).toContain(
      `content/designs/design-a.yaml:${line}:1 error Unexpected ${words} does not hold, expected a row for it no-missing-table-row\n`,
    )
  })

  test('for lack of a hole stops the build', () => {
    const tables = tablesOf()
    const holes = tables.clearanceHoles.rows.filter((row) => row.size !== 'M12')
    const {said: words} = computed({
      content: {tables: {...tables, clearanceHoles: {...tables.clearanceHoles, rows: holes}}},
    })
    expect(words).toContain('hole for `M12` that tables/clearance-holes.csv does not hold')
  })

  test('because its utilisation is not known lacks exactly torque, preload and passes', () => {
    const {values: partly} = computed({joint: {utilisation: notKnown('no drawing', 13)}})
    expect(unknownIn(partly)).toEqual(['hub-bolts.passes', 'hub-bolts.preload', 'hub-bolts.torque'])
    expect(valueIn(partly, 'hub-bolts.torque').result).toEqual({
      kind: 'not-known',
      missing: ['utilisation of the hub bolts (no drawing)'],
    })
  })

  test('is not refused at exactly the utilisation that it states', () => {
    for (const share of [60, 75, 90, 100])
      expect(computed({joint: {utilisation: stated(percent(share), String(share), '%')}}).said).toBe('')
  })
})
