import {describe, expect, test} from 'vitest'
import {checkAfter, type Texts} from '../texts-for-tests.ts'

const threads = 'tables/threads.csv'
const mend = 'Name the unit of each column of numbers above the header'

describe('the tables', () => {
  test('yield typed rows with the origin of their head', () => {
    const {tables} = checkAfter(() => undefined).data
    expect(tables.threads).toMatchObject({
      origin: {status: 'assumed', source: 'rules', where: 'one'},
      rows: [
        {size: 'M10', diameter: {kind: 'length', si: 0.01}, pitch: {si: 0.0015}, place: {line: 8}},
        {size: 'M12', place: {path: threads, line: 9, column: 1}},
      ],
    })
    expect(tables.boltHeads.rows.map((row) => [row.size, row.head])).toEqual([
      ['M12', 'hexagon'],
      ['M12', 'socket'],
    ])
    expect(tables.propertyClasses.rows).toMatchObject([
      {id: 'A4-80', aboveDiameter: {si: 0}, yieldStress: {kind: 'stress', si: 600e6}},
    ])
    expect(tables.friction.rows).toMatchObject([
      {id: 'paste', frictionClass: 'B', threadFriction: {kind: 'ratio', si: 0.1}, headFriction: {si: 0.12}},
    ])
    expect(tables.runningClearances.rows).toMatchObject([
      {clearance: {kind: 'diametral-clearance', si: expect.closeTo(0.00045, 12)}},
    ])
    expect(tables.cargoes.rows).toMatchObject([
      {id: 'gas-oil', flammable: true, waterReactive: false, word: 'WARNING', density: {figure: '840'}},
    ])
  })

  test('are the same with a byte-order mark and CRLF line ends', () => {
    const whole = checkAfter(() => undefined)
    const {data, messages} = checkAfter((texts) =>
      texts.write(threads, `\uFEFF${texts.read(threads).replaceAll('\n', '\r\n')}`),
    )
    expect(messages).toEqual([])
    expect(data.tables.threads).toEqual(whole.data.tables.threads)
  })

  test('may have their columns in another order', () => {
    const {data, messages} = checkAfter((texts) =>
      texts.replace(threads, /size,diameter[\s\S]*/u, 'pitch,size,diameter\n1.75,M12,12\n'),
    )
    expect(messages).toEqual([])
    expect(data.tables.threads.rows).toMatchObject([{size: 'M12', pitch: {si: 0.00175}}])
  })
})

describe('a table is refused with', () => {
  const columns = 'The columns are size,diameter,pitch'
  test.each<[string, (texts: Texts) => void, string]>([
    [
      'a missing column',
      (texts) => texts.replace(threads, /size,diameter[\s\S]*/u, 'size,diameter\nM12,12\n'),
      `${threads}:7:1 Unexpected header without column \`pitch\`, expected the columns \`size,diameter,pitch\` no-missing-key | Add the column \`pitch\``,
    ],
    [
      'an extra column',
      (texts) =>
        texts.replace(threads, /size,diameter[\s\S]*/u, 'size,diameter,pitch,colour\nM12,12,1.75,red\n'),
      `${threads}:7:21 Unexpected column \`colour\`, expected one of \`size\`, \`diameter\`, \`pitch\` no-unknown-key | ${columns}`,
    ],
    [
      'a column twice',
      (texts) =>
        texts.replace(threads, /size,diameter[\s\S]*/u, 'size,diameter,pitch,pitch\nM12,12,1.75,1.5\n'),
      `${threads}:7:21 Unexpected second column \`pitch\`, expected each column once no-duplicate-id | Take one of the two out`,
    ],
    [
      'a row twice',
      (texts) => texts.write(threads, `${texts.read(threads)}M10,10,1.25\n`),
      `${threads}:10:1 Unexpected second row \`M10\`, expected each row once no-duplicate-id | Keep the row that the source prints | see ${threads}:8:1`,
    ],
    [
      'a blank cell',
      (texts) => texts.replace(threads, 'M10,10,1.5', 'M10,,1.5'),
      `${threads}:8:5 Unexpected blank in column \`diameter\`, expected a value no-wrong-shape | Fill the cell, or take the row out`,
    ],
    [
      'a line of its head missing',
      (texts) => texts.replace(threads, '# edition: one\n', ''),
      `${threads}:6:1 Unexpected table without a line \`# edition: …\`, expected it above the header no-missing-key | Add \`# edition: …\` on top of the file`,
    ],
    [
      'a mistyped status',
      (texts) => texts.replace(threads, 'status: assumed', 'status: asumed'),
      `${threads}:4:1 Unexpected status \`asumed\`, expected a word such as \`assumed\` no-wrong-shape | Write one of as-built, measured, calculated, published, assumed, common-practice`,
    ],
    [
      'a unit missing, told once and not for each row',
      (texts) => texts.replace(threads, '# unit pitch: mm\n', ''),
      `${threads}:6:1 Unexpected table without a line \`# unit pitch: …\`, expected the unit of the column no-missing-key | ${mend}`,
    ],
    [
      'a unit of another kind, told once where it stands',
      (texts) => texts.replace(threads, 'unit pitch: mm', 'unit pitch: kg'),
      `${threads}:6:1 Unexpected unit \`kg\`, expected a number such as \`3.5\` with one of the units \`m\`, \`mm\`, \`µm\`, \`cm\`, \`in\` no-bad-quantity | ${mend}`,
    ],
    [
      'a number that is none',
      (texts) => texts.replace(threads, 'M10,10,1.5', 'M10,10,NaN'),
      `${threads}:8:8 Unexpected \`NaN mm\`, expected a number such as \`3.5\` with one of the units \`m\`, \`mm\`, \`µm\`, \`cm\`, \`in\` no-bad-quantity | Write the number of \`pitch\` in mm, without the unit`,
    ],
    [
      'a number below zero',
      (texts) => texts.replace(threads, 'M10,10,1.5', 'M10,10,-1.5'),
      `${threads}:8:8 Unexpected negative value \`-1.5 mm\`, expected zero or more no-bad-quantity | Write the number of \`pitch\` in mm, without the unit`,
    ],
    [
      'a number of nothing',
      (texts) => texts.replace(threads, 'M10,10,1.5', 'M10,10,0'),
      `${threads}:8:8 Unexpected pitch of \`0\`, expected more than zero no-impossible-value | Read the source of the table again`,
    ],
    [
      'a density of nothing',
      (texts) => texts.replace('tables/cargoes.csv', ',840,', ',0,'),
      'tables/cargoes.csv:7:17 Unexpected density of `0`, expected more than zero no-impossible-value | Read the source of the table again',
    ],
    [
      'a friction of nothing',
      (texts) => texts.replace('tables/friction.csv', ',0.10,', ',0,'),
      'tables/friction.csv:8:20 Unexpected thread-friction of `0`, expected more than zero no-impossible-value | Read the source of the table again',
    ],
    [
      'a range that ends before it begins',
      (texts) => texts.replace('tables/running-clearances.csv', '0,250,0.45', '250,250,0.45'),
      'tables/running-clearances.csv:9:1 Unexpected range from `250 mm` to `250 mm`, expected one that ends above its beginning no-impossible-value | Read the source of the table again',
    ],
    [
      'ranges that overlap, of which a reader could take either',
      (texts) =>
        texts.write(
          'tables/running-clearances.csv',
          `${texts.read('tables/running-clearances.csv')}200,300,0.5\n`,
        ),
      'tables/running-clearances.csv:10:1 Unexpected range from `200 mm` to `300 mm` with `0.50 mm diametral` that overlaps the one from `0 mm` to `250 mm` with `0.45 mm diametral`, expected each diameter in one row no-impossible-value | Read the source of the table again | see tables/running-clearances.csv:9:1',
    ],
    [
      'overlapping strengths of one class',
      (texts) =>
        texts.write(
          'tables/property-classes.csv',
          `${texts.read('tables/property-classes.csv')}A4-80,0.0,16,500,700\n8.8,0,16,640,800\n`,
        ),
      'tables/property-classes.csv:11:1 Unexpected range from `0 mm` to `16 mm` with `500 N/mm²` that overlaps the one from `0 mm` to `20 mm` with `600 N/mm²`, expected each diameter in one row no-impossible-value | Read the source of the table again | see tables/property-classes.csv:10:1',
    ],
    [
      'an id that is none',
      (texts) =>
        texts.replace(
          'tables/friction.csv',
          'paste,with paste',
          'paste,with paste,B,0.10,0.12,rules\nPaste/2,with more',
        ),
      'tables/friction.csv:9:1 Unexpected id `Paste/2`, expected at most 40 small letters, digits and hyphens no-bad-id | Write it like `assembly-paste`',
    ],
    [
      'a head that is neither hexagon nor socket',
      (texts) => texts.replace('tables/bolt-heads.csv', 'M12,hexagon', 'M12,hexgon'),
      'tables/bolt-heads.csv:8:5 Unexpected `hexgon`, expected a word such as `hexagon` no-wrong-shape | Write one of hexagon, socket',
    ],
    [
      'a signal word that is none, which could take the danger out of a cargo',
      (texts) => texts.replace('tables/cargoes.csv', ',WARNING,', ',DANGRE,'),
      'tables/cargoes.csv:7:40 Unexpected `DANGRE`, expected a word such as `DANGER` no-wrong-shape | Write one of DANGER, WARNING',
    ],
    [
      'a property that is neither yes nor no',
      (texts) => texts.replace('tables/cargoes.csv', ',yes,no,no,', ',maybe,no,no,'),
      'tables/cargoes.csv:7:21 Unexpected `maybe`, expected one of `yes`, `no` no-wrong-shape | Write one of yes, no',
    ],
  ])('%s', (_what, spoil, line) => {
    expect(checkAfter(spoil).messages).toEqual([line])
  })
})
