import {describe, expect, test} from 'vitest'
import {
  date,
  fields,
  identifier,
  list,
  localised,
  oneOf,
  plainNumber,
  reference,
  text,
  wholeNumber,
  yesNo,
} from '../../../src/check/shapes/placed-shape.ts'
import {shaped} from './shape-for-tests.ts'

const idNote = 'no-bad-id | Write it like `hub-bolts`'

describe('an id', () => {
  const shape = fields({id: identifier})

  test.each(['a', 'hub-bolts', '1p', 'slop-p', 'a'.repeat(40), 'console', 'com10'])('may be `%s`', (id) => {
    expect(shaped(`id: "${id}"\n`, shape)).toMatchObject({product: {id}, messages: []})
  })

  const rest = 'expected at most 40 small letters, digits and hyphens'
  const device = 'expected a name that no operating system keeps for a device'
  test.each([
    ['a/b', rest],
    ['../noise', rest],
    ['..', rest],
    ['a.b', rest],
    ['Hub', rest],
    ['-a', rest],
    ['a b', rest],
    ['å', rest],
    ['', rest],
    ['a'.repeat(41), rest],
    ['CON', device],
    ['con', device],
    ['prn', device],
    ['aux', device],
    ['Nul', device],
    ['com1', device],
    ['LPT9', device],
  ])('may not be `%s`', (id, expected) => {
    expect(shaped(`id: "${id}"\n`, shape).messages).toEqual([
      `a.yaml:1:5 Unexpected id \`${id}\`, ${expected} ${idNote}`,
    ])
  })
})

describe('a text', () => {
  const shape = fields({a: text})

  test('is one line without blanks around it', () => {
    expect(shaped('a: >\n  two\n  lines\n\n', shape).product?.a).toBe('two lines')
  })

  test('that is blank is refused', () => {
    expect(shaped('a:\n', shape).messages).toEqual([
      'a.yaml:1:3 Unexpected blank, expected a text no-wrong-shape | Write the text, or take the key out where it may be left out',
    ])
  })

  test('is no list and no map', () => {
    const line = (what: string) =>
      `a.yaml:1:4 Unexpected ${what}, expected text no-wrong-shape | Write text here`
    expect(shaped('a: [b]\n', shape).messages).toEqual([line('list')])
    expect(shaped('a: {b: c}\n', shape).messages).toEqual([line('map')])
  })
})

describe('a text by language', () => {
  const shape = fields({a: localised})

  test('is English when it is plain, and keeps every language of a map', () => {
    expect(shaped('a: bolts\n', shape).product?.a).toEqual({en: 'bolts'})
    expect(shaped('a: {no: bolter, en: bolts}\n', shape).product?.a).toEqual({en: 'bolts', no: 'bolter'})
  })

  test.each([
    [
      'a: {no: bolter}',
      'a.yaml:1:4 Unexpected text without English, expected `en:` among the languages no-missing-key | Add `en:` with the English text',
    ],
    [
      'a: {en: bolts, title: x}',
      'a.yaml:1:16 Unexpected language `title`, expected two or three small letters no-unknown-key | Write the text behind a language such as `en`',
    ],
    [
      'a: {en: "", no: x}',
      'a.yaml:1:9 Unexpected blank, expected a text no-wrong-shape | Write the text, or take the key out where it may be left out',
    ],
    [
      'a: {en: [x]}',
      'a.yaml:1:5 Unexpected list or map, expected text no-wrong-shape | Write the text behind its language',
    ],
    ['a: [x]', 'a.yaml:1:4 Unexpected list, expected text no-wrong-shape | Write text here'],
  ])('is refused as `%s`', (yaml, line) => {
    expect(shaped(yaml, shape).messages).toEqual([line])
  })
})

describe('a date', () => {
  const shape = fields({day: date})

  test.each(['2011-02-09', '2012-02-29', '1985-12-31'])('may be %s', (day) => {
    expect(shaped(`day: ${day}\n`, shape).product?.day).toBe(day)
  })

  test.each([
    '2031-02-30',
    '2031-13-45',
    '2031-00-01',
    '2011-02-29',
    '2031-2-4',
    '09.02.2011',
    '2031-02-14T10:00',
    '',
  ])('may not be `%s`', (day) => {
    expect(shaped(`day: "${day}"\n`, shape).messages).toEqual([
      `a.yaml:1:6 Unexpected date \`${day}\`, expected a day like \`2031-02-14\` no-bad-date | Write year, month and day of a day that exists`,
    ])
  })
})

describe('words and numbers', () => {
  const shape = fields({
    critical: yesNo.optional(),
    role: oneOf(['main', 'stripping', 'portable']).optional(),
    count: wholeNumber(1, 64).optional(),
    side: plainNumber(-1, 1).optional(),
    tank: reference.optional(),
  })

  test('are taken as written', () => {
    expect(
      shaped('critical: yes\nrole: portable\ncount: 64\nside: -0.62\ntank: 4s\n', shape).product,
    ).toMatchObject({
      critical: true,
      role: 'portable',
      count: 64,
      side: -0.62,
      tank: {id: '4s', place: {line: 5, column: 7}},
    })
  })

  test.each([
    ['critical: true', '11 Unexpected `true`, expected `yes` or `no` no-wrong-shape | Write `yes` or `no`'],
    [
      'role: mian',
      '7 Unexpected `mian`, expected a word such as `main` no-wrong-shape | Write one of main, stripping, portable',
    ],
    [
      'role: spare',
      '7 Unexpected `spare`, expected one of `main`, `stripping`, `portable` no-wrong-shape | Write one of main, stripping, portable',
    ],
    ...['0', '65', '8.0', '-1', '1e1', '0x8', 'NaN', 'eight'].map((count) => [
      `count: ${count}`,
      `8 Unexpected \`${count}\`, expected a whole number from 1 to 64 no-wrong-shape | Write the number in digits, without a unit`,
    ]),
    ...['1.01', '-2', 'NaN', '1e999', 'Infinity', '.5'].map((side) => [
      `side: ${side}`,
      `7 Unexpected \`${side}\`, expected a number from -1 to 1 no-wrong-shape | Write the number in digits, without a unit`,
    ]),
  ])('are refused as `%s`', (yaml, line) => {
    expect(shaped(yaml ?? '', shape).messages).toEqual([`a.yaml:1:${line}`])
  })
})

describe('a map of fields', () => {
  const point = fields({'first-name': text, note: text.optional()})
  const shape = fields({title: text, points: list(point), deep: point.optional()})

  test('yields camel case, its own place, and leaves out what is absent', () => {
    expect(shaped('title: t\npoints:\n  - first-name: a\n', shape)).toEqual({
      messages: [],
      product: {
        title: 't',
        points: [{firstName: 'a', place: expect.objectContaining({line: 3, column: 5})}],
        place: expect.objectContaining({line: 1, column: 1}),
      },
    })
  })

  test('names the nearest key at an unknown key, deep in lists too', () => {
    expect(shaped('title: t\npoints:\n  - first-name: a\n    ntoe: b\n', shape).messages).toEqual([
      'a.yaml:4:5 Unexpected key `ntoe`, expected a key such as `note` no-unknown-key | The keys here are first-name, note',
    ])
  })

  test('points at the map from which a key is missing', () => {
    expect(shaped('title: t\npoints:\n  - first-name: a\n  - note: b\n', shape).messages).toEqual([
      'a.yaml:4:5 Unexpected map without `first-name`, expected `first-name:` with text no-missing-key | Add `first-name:`',
    ])
    expect(shaped('title: t\n', shape).messages).toEqual([
      'a.yaml:1:1 Unexpected map without `points`, expected `points:` with a list no-missing-key | Add `points:`',
    ])
  })

  test('is told apart from texts and lists', () => {
    expect(shaped('title: t\npoints: x\ndeep: [y]\n', shape).messages).toEqual([
      'a.yaml:2:9 Unexpected text `x`, expected a list no-wrong-shape | Write a list here',
      'a.yaml:3:7 Unexpected list, expected a map no-wrong-shape | Write a map here',
    ])
    const note = 'Write the fields of this kind of file, each as `key: value`'
    expect(shaped('- a\n', shape).messages).toEqual([
      `a.yaml:1:1 Unexpected list, expected a map no-wrong-shape | ${note}`,
    ])
    expect(shaped('a\n', shape).messages).toEqual([
      `a.yaml:1:1 Unexpected text \`a\`, expected a map no-wrong-shape | ${note}`,
    ])
  })

  test('points at a list where it stands, deep in a long list too', () => {
    expect(shaped('title: t\npoints:\n  - first-name: a\n  - - b\n  - [c]\n', shape).messages).toEqual([
      'a.yaml:4:5 Unexpected list, expected a map no-wrong-shape | Write a map here',
      'a.yaml:5:5 Unexpected list, expected a map no-wrong-shape | Write a map here',
    ])
  })

  test.each(['', '# only a comment\n', '{}\n'])('that is empty is one message: %j', (yaml) => {
    expect(shaped(yaml, fields({a: text, b: text})).messages).toEqual([
      'a.yaml:1:1 Unexpected map without a key, expected its fields no-missing-key | Write the fields of this kind of file, or take the file out',
    ])
  })

  test('refuses a key written twice and names the first place', () => {
    expect(shaped('title: t\npoints: []\ntitle: u\n', shape)).toEqual({
      product: undefined,
      messages: [
        'a.yaml:3:1 Unexpected second key `title`, expected each key once no-duplicate-id | Remove one of the two | see a.yaml:1:1',
      ],
    })
  })

  test('knows no key of the language that the program is written in', () => {
    expect(
      shaped('title: t\npoints: []\n__proto__: {a: b}\nconstructor: c\n', shape).messages.map(
        (line) => line.split(',')[0],
      ),
    ).toEqual(['a.yaml:3:1 Unexpected key `__proto__`', 'a.yaml:4:1 Unexpected key `constructor`'])
  })

  test('tells every mistake at once', () => {
    expect(shaped('titel: t\npoints:\n  - first-name:\n  - {}\n', shape).messages).toHaveLength(4)
  })

  test('stays quick with many thousand keys', () => {
    const keys = Array.from({length: 20_000}, (_, index) => `k${index}: v\n`).join('')
    expect(shaped(keys, fields({a: text})).messages.length).toBeGreaterThanOrEqual(20_000)
  }, 20_000)
})
