import {describe, expect, test} from 'vitest'
import type {Figure} from '../../src/figures/figure.ts'
import {expectRoomForTexts} from './room-for-texts.ts'
import {type Change, drawn, edges, metres, sectionsOf, unknown} from './stack-for-tests.ts'
import {textsOf} from './svg-for-tests.ts'

/** Underside of the top plate and foot of the stack in the drawing. */
const plate = 182
const foot = 1394

/** Where the drawing says a text, in its middle. */
function placesOf({svg}: Figure, words: string): readonly number[] {
  return textsOf(svg).flatMap(({text, left, right}) => (text === words ? [(left + right) / 2] : []))
}

/** How often a piece of path stands in the drawing. */
function count({svg}: Figure, piece: string): number {
  return svg.split(piece).length - 1
}

/** Thickness of the black walls above the axis along the stack, outermost first. */
function wallsOf({svg}: Figure): readonly number[] {
  const black = [...svg.matchAll(/<path class="solid" d="([^"]*)"/gu)].map(([, d]) => d).join('')
  return [...black.matchAll(/M\d+ ([\d.]+)H1394V([\d.]+)H\d+z/gu)]
    .map(([, from, to]) => Number(to) - Number(from))
    .filter((one) => one > 0)
}

const square = 'h42v42h-42z'
const flange = 'v34h-9z'
const ring = 'a7 7 0 1 1-.1 0z'
const support = 'h18v-14h-18z'
const wave = 'q20 '

describe('the lengths of a pipe stack', () => {
  test('stand to scale: sections, supports and the whole', () => {
    const perMetre = (foot - plate) / 6
    const lengths = drawn({sections: sectionsOf(metres(1.5), metres(2), metres(2.6)), whole: metres(6.1)})
    const others = (foot - plate) / 6.1
    for (const [words, middle] of [
      ['1.5 m', 0.75],
      ['2 m', 2.5],
      ['2.6 m', 4.8],
    ] as const)
      expect(Math.abs((placesOf(lengths, words)[0] ?? 0) - plate - middle * others)).toBeLessThan(1)
    for (const [words, place] of [
      ['2.5 m', 2.5],
      ['5 m', 5],
    ] as const)
      expect(Math.abs((placesOf(drawn(), words)[0] ?? 0) - plate - place * perMetre)).toBeLessThan(1)
    expect(placesOf(drawn(), '6 m')[0]).toBeCloseTo((plate + foot) / 2, 0)
  })

  test('are told with the numbers of sections, joints and supports', () => {
    const {data, alternative} = drawn()
    expect(data).toBe(
      'Sections: 1: 2 m; 2: 2 m; 3: 2 m. Joint 1 is at the top plate, each other joint above the section of its number. O-rings of each joint: outer pipe, return pipe, pressure pipe. Supports, below the top plate: 1: 2.5 m; 2: 5 m. Spaces from the middle out: oil pressure, oil return, cofferdam. Flanges, supports, top plate and motor are not to scale. Widths drawn 7 times larger than lengths.',
    )
    for (const words of [
      'pump 4S, drawn lying',
      'Whole length 6 m.',
      'outer pipe, outside Ø 168.3 mm, bore Ø 160.3 mm; return pipe, outside Ø 139.7 mm',
      'Bolts of each joint: 12 × M12.',
    ])
      expect(alternative).toContain(words)
  })

  test.each<readonly [string, Change]>([
    ['a section is split', {sections: sectionsOf(metres(2), metres(2), metres(1), metres(1))}],
    ['a length changes', {sections: sectionsOf(metres(2), metres(1.5), metres(2.5))}],
    ['a support moves', {supports: [metres(2.6), metres(5)]}],
    ['a support goes', {supports: [metres(2.5)]}],
    ['nobody knows the supports', {supports: undefined}],
    ['nobody knows a length', {sections: sectionsOf(metres(2), unknown, metres(2))}],
  ])('move drawing, words and data when %s', (_what, change) => {
    const changed = drawn(change)
    expect(changed.svg).not.toBe(drawn().svg)
    expect(changed.alternative).not.toBe(drawn().alternative)
    expect(changed.data).not.toBe(drawn().data)
  })

  test.each<readonly [string, Change]>([
    ['the whole length changes', {whole: metres(6.001)}],
    ['a pipe is wider', {diameters: edges(168.3, 160.3, 139.7, 127.1, 88.9, 60.3)}],
    ['a pipe is thinner', {diameters: edges(168.3, 160.3, 139.7, 130, 76.1, 60.3)}],
    ['a joint has no ring of one pipe', {rings: ['outer', 'return']}],
  ])('move drawing and words when %s', (_what, change) => {
    expect(drawn(change).svg).not.toBe(drawn().svg)
    expect(drawn(change).alternative).not.toBe(drawn().alternative)
  })
})

describe('the joints and supports of a pipe stack', () => {
  test('are drawn as many as there are, the first joint at the top plate and one to the motor', () => {
    // Above and below the axis: one flange at the top plate, two at each other joint and at the motor.
    expect(count(drawn(), flange)).toBe(1 + 2 * 3)
    expect(count(drawn(), ring)).toBe(3 * 2 * 3)
    expect(count(drawn(), support)).toBe(2)
    expect(count(drawn(), square)).toBe(2)
    expect(placesOf(drawn(), '3')).toHaveLength(2)
  })

  test('of one section are the joint at the top plate and that to the motor', () => {
    const one = drawn({sections: sectionsOf(metres(6))})
    expect(count(one, flange)).toBe(1 + 2)
    expect(one.data).toContain('Sections: 1: 6 m.')
  })

  test('keep the numbers that the data say', () => {
    const two = drawn({
      whole: metres(4),
      supports: [metres(3)],
      sections: [
        {number: 1, length: metres(2)},
        {number: 2, length: metres(2)},
      ],
    })
    expect(placesOf(two, '2')).toHaveLength(2)
    expect(placesOf(two, '3')).toEqual([])
  })

  test('stand without rings where the design states none', () => {
    const none = drawn({rings: []})
    expect(count(none, ring)).toBe(0)
    expect(none.data).toContain('O-rings of each joint: NOT KNOWN.')
  })

  test('say that there is no support, and that nobody counted them', () => {
    expect(drawn({supports: []}).data).toContain('Supports, below the top plate: none.')
    const open = drawn({supports: undefined})
    expect(open.data).toContain('Supports, below the top plate: NOT KNOWN.')
    expect(placesOf(open, 'supports: NOT KNOWN')).toHaveLength(1)
  })
})

describe('the pipes of a stack', () => {
  test('are as thick as their diameters say, three to one scale', () => {
    const walls = wallsOf(drawn())
    expect(walls).toHaveLength(3)
    const [outer = 0, returning = 0, pressure = 0] = walls
    expect(returning / outer).toBeCloseTo(6.3 / 4, 1)
    expect(pressure / outer).toBeCloseTo(7.9 / 4, 1)
  })

  test('are drawn as much wider than long as the words say', () => {
    for (const whole of [3, 6, 16.4]) {
      const figure = drawn({whole: metres(whole), sections: sectionsOf(metres(whole)), supports: []})
      const times = Number(/Widths drawn (\d+) times/u.exec(figure.data)?.[1])
      const [outer = 0] = wallsOf(figure)
      expect(outer).toBeCloseTo((4 * times * (foot - plate)) / (whole * 1000), 0)
    }
  })

  test('are told apart by pattern, letter and words', () => {
    const {svg} = drawn()
    expect(svg).toContain('stroke-dasharray="22 12"')
    expect(svg).toContain('stroke-dasharray="4 14"')
    for (const letter of ['P', 'R', 'C']) expect(placesOf(drawn(), letter)).toHaveLength(1)
    for (const words of ['P oil pressure', 'R oil return', 'C cofferdam'])
      expect(placesOf(drawn(), words)).toHaveLength(1)
  })

  test('are dashed and said to be NOT KNOWN where nobody knows an edge', () => {
    const open = drawn({diameters: edges(168.3, 160.3, undefined, 127.1, 76.1, 60.3)})
    expect(wallsOf(open)).toHaveLength(2)
    expect(open.svg).toContain('return pipe, outside Ø NOT KNOWN, bore Ø 127.1 mm')
    expect(open.data).toContain('Dashed: an edge is NOT KNOWN.')
    expect(drawn({diameters: edges()}).svg).not.toContain('NaN')
  })
})

describe('what nobody knows of a stack', () => {
  test('is a break in the words NOT KNOWN, and supports keep what is known', () => {
    const open = drawn({whole: unknown, sections: [], supports: [metres(3), metres(6), unknown]})
    expect(count(open, wave)).toBe(1)
    expect(open.data).toContain(
      'Sections: NOT KNOWN. Joint 1 is at the top plate, the other joints are NOT KNOWN.',
    )
    expect(open.data).toContain('1: 3 m; 2: 6 m; 3: NOT KNOWN.')
    expect(placesOf(open, 'NOT KNOWN')).toHaveLength(2)
    expect(placesOf(open, 'sections: NOT KNOWN')).toHaveLength(1)
    expect(count(open, support)).toBe(3)
    const [first = 0] = placesOf(open, '3 m')
    const [second = 0] = placesOf(open, '6 m')
    expect(second - plate).toBeCloseTo(2 * (first - plate), -1)
    expect(count(drawn(), wave)).toBe(0)
  })

  test('is broken in its section alone where one length of several is not known', () => {
    const open = drawn({sections: sectionsOf(metres(2), unknown, metres(2))})
    expect(count(open, wave)).toBe(1)
    expect(placesOf(open, '6 m')).toHaveLength(1)
    expect(placesOf(open, 'NOT KNOWN')[0]).toBeCloseTo((plate + foot) / 2, -0.5)
  })

  test('is broken behind the last section where the whole length alone is not known', () => {
    const open = drawn({whole: unknown})
    expect(count(open, wave)).toBe(1)
    const [last = 0] = placesOf(open, '2 m').slice(-1)
    expect(last).toBeLessThan(foot - 150)
  })
})

describe('texts of a pipe stack', () => {
  test.each<readonly [string, Change]>([
    ['three sections', {}],
    [
      'nine sections, the last two short',
      {
        whole: metres(16.2),
        sections: sectionsOf(...Array.from({length: 7}, () => metres(2)), metres(1.1), metres(1.1)),
        supports: [3.1, 6.2, 9.3, 12.4, 15.5].map(metres),
      },
    ],
    [
      'twelve short sections',
      {
        whole: metres(9.6),
        sections: sectionsOf(...Array.from({length: 12}, () => metres(0.8))),
        supports: [metres(3.1), metres(6.1)],
      },
    ],
    [
      'a very short section',
      {
        whole: metres(14.3),
        sections: sectionsOf(...Array.from({length: 7}, () => metres(2)), metres(0.3)),
        supports: [metres(3.1), metres(6.1)],
      },
    ],
    [
      'sections and supports too near to each other for a leader',
      {
        whole: metres(12),
        sections: sectionsOf(metres(9.6), ...Array.from({length: 8}, () => metres(0.3))),
        supports: [1, 1.2, 1.4, 1.6, 1.8].map(metres),
      },
    ],
    ['supports close to each other', {supports: [2.3, 2.6, 2.9, 3.2, 5].map(metres)}],
    ['nothing known', {whole: unknown, sections: [], supports: [unknown], diameters: edges()}],
  ])('have room and size in print: %s', (_what, change) => {
    expectRoomForTexts(drawn(change))
    expect(drawn(change).height).toBeLessThan(2000)
  })

  test('of a section that is too narrow for its number have it beside the length', () => {
    const narrow = drawn({
      whole: metres(14.3),
      sections: sectionsOf(...Array.from({length: 7}, () => metres(2)), metres(0.3)),
    })
    expect(placesOf(narrow, '8: 0.3 m')).toHaveLength(1)
  })

  test('of supports that are near to each other have their numbers beside their distances', () => {
    const near = drawn({supports: [2.5, 2.6, 5].map(metres)})
    expect(placesOf(near, '2.5 m')).toHaveLength(1)
    expect(placesOf(near, '2: 2.6 m')).toHaveLength(1)
    expect(count(near, square)).toBe(2)
    expect(count(near, support)).toBe(3)
  })

  test('are escaped', () => {
    expect(drawn({sections: sectionsOf({metres: 6, text: '<6> m'})}).svg).toContain('&lt;6&gt; m')
  })
})
