import {describe, expect, test} from 'vitest'
import {computeValues} from '../../src/compute/compute-values.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {printMessages} from '../../src/messages/print-messages.ts'
import {
  bar,
  barGauge,
  millilitresPerMinute,
  millimetres,
  percent,
  ratio,
} from '../../src/quantities/named-units.ts'
import {atLine, type Changes, contentWith, hubBolts, notKnown, stated} from './content-for-tests.ts'
import {tablesOf} from './tables-for-tests.ts'

function outcome(changes: Changes): {readonly vessels: number; readonly said: readonly string[]} {
  const files: ContentFiles = new Map()
  const {vessels} = computeValues(contentWith(changes), files)
  const said = printMessages(files, 'content').split('\n')
  return {vessels: vessels.size, said: said.filter((line) => / error /u.test(line))}
}

function passes(...shares: readonly number[]): Changes {
  const list = shares.map((share, index) =>
    stated(percent(share), String(share), '%', {place: atLine(60 + index)}),
  )
  return {house: {tighteningPasses: list}}
}

function share(value: number): Changes {
  return {joint: {utilisation: stated(percent(value), String(value), '%', {place: atLine(13)})}}
}

function friction(value: number): Changes {
  const tables = tablesOf()
  const rows = tables.friction.rows.map((row) => ({...row, headFriction: ratio(value)}))
  return {content: {tables: {...tables, friction: {...tables.friction, rows: rows.slice(0, 2)}}}}
}

function mediumHole(value: number): Changes {
  const tables = tablesOf()
  const rows = tables.clearanceHoles.rows.map((row) => ({...row, medium: millimetres(value)}))
  return {content: {tables: {...tables, clearanceHoles: {...tables.clearanceHoles, rows}}}}
}

describe('a stated value that no calculation accepts is told to the author', () => {
  const design = 'content/designs/design-a.yaml'
  const table = 'content/tables/table.csv:2:1'

  test.each<[string, Changes, string]>([
    [
      'a utilisation above the yield stress',
      share(150),
      `${design}:13:1 error Unexpected utilisation in joint \`hub-bolts\` of \`150 %\`, expected above \`0 %\` and at most \`100 %\``,
    ],
    [
      'a utilisation of nothing',
      share(0),
      `${design}:13:1 error Unexpected utilisation in joint \`hub-bolts\` of \`0 %\`, expected above \`0 %\` and at most \`100 %\``,
    ],
    [
      'more bolts than the order is proved for',
      {joint: {count: 49}},
      `${design}:10:1 error Unexpected count of \`49\` bolts in joint \`hub-bolts\`, expected at most \`48\`, up to which the tightening order is proved`,
    ],
    [
      'a hole as large as the head',
      mediumHole(16.63),
      `${table} error Unexpected medium hole of \`M12\` as large as the bearing face of its hexagon head, expected a smaller hole`,
    ],
    [
      'an allowed leak of nothing',
      {cofferdam: {allowedLeak: stated(millilitresPerMinute(0), '0', 'ml/min', {place: atLine(31)})}},
      `${design}:31:1 error Unexpected allowed leak of \`0 ml/min\`, expected a flow above nothing, or \`not known\` with a reason`,
    ],
    [
      'a rating of nothing',
      {cofferdam: {rating: stated(barGauge(0), '0', 'bar(g)', {place: atLine(33)})}},
      `${design}:33:1 error Unexpected rating of the cofferdam of \`0 bar(g)\`, expected a pressure above nothing`,
    ],
    [
      'passes that fall',
      passes(60, 30, 100),
      `${design}:61:1 error Unexpected tightening pass of \`30 %\`, expected a larger share than that of the pass before`,
    ],
    [
      'passes that stop short',
      passes(30, 60),
      `${design}:61:1 error Unexpected last tightening pass of \`60 %\`, expected \`100 %\``,
    ],
    [
      'no pass at all',
      passes(),
      'content/office.yaml:1:1 error Unexpected house rules without a tightening pass, expected `tightening-passes:` that end at `100 %`',
    ],
  ])('%s', (_what, changes, line) => {
    expect(outcome(changes)).toEqual({vessels: 0, said: [`${line} no-impossible-value`]})
  })

  test('friction above what the formula was made for, at each row', () => {
    const {vessels, said} = outcome(friction(0.61))
    expect(vessels).toBe(0)
    expect(said).toEqual([
      `${table} error Unexpected friction of \`0.61\` in row \`friction-0.08\`, expected \`0.02\` to \`0.60\` no-impossible-value`,
      `${table} error Unexpected friction of \`0.61\` in row \`friction-0.1\`, expected \`0.02\` to \`0.60\` no-impossible-value`,
    ])
    expect(outcome(friction(0.01)).said).toHaveLength(2)
  })

  test('a seal lip that the vacuum of the tank lifts, at each pump', () => {
    const lip = stated(bar(0.035), '0.035', 'bar', {place: atLine(34)})
    expect(outcome({cofferdam: {lipReverseLimit: lip}}).said).toEqual(
      ['4P', '4S'].map(
        (tag) =>
          `${design}:34:1 error Unexpected seal lip limit at \`${tag}\` of \`0.035 bar\`, expected more than the vacuum that its tank may have no-impossible-value`,
      ),
    )
  })
})

describe('a value at the end of its range', () => {
  test.each<[string, Changes]>([
    ['a utilisation of the whole yield stress', share(100)],
    ['48 bolts', {joint: {count: 48}}],
    ['friction at both ends', friction(0.6)],
    ['friction at the lower end', friction(0.02)],
    ['a hole just smaller than the head', {...mediumHole(8.87), joint: hubBolts}],
    ['one pass at the full torque', passes(100)],
    [
      'a lip that holds a little more than the vacuum',
      {cofferdam: {lipReverseLimit: stated(bar(0.036), '0.036', 'bar')}},
    ],
    ['a share that nobody knows', {house: {tighteningPasses: [notKnown('not decided')]}}],
    ['a utilisation that nobody knows', {joint: {utilisation: notKnown('no drawing')}}],
  ])('is computed: %s', (_what, changes) => {
    expect(outcome(changes)).toEqual({vessels: 1, said: []})
  })
})
