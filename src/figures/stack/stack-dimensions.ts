import {escaped, rounded, textWidth} from '../svg-text.ts'
import type {PipeStack, StackWords} from './stack-data.ts'
import {arrowhead, type Label, letter, type PlacedLabel, placedLabels, row, rowsOf} from './stack-labels.ts'
import {hasNumber, placeOf, type StackFrame, standOut} from './stack-length.ts'
import type {StackStations} from './stack-stations.ts'

/** Where the head of a row begins: letters lean out a little. */
export const margin = 4

/** Where the head of a row ends: the deck stands right of it. */
export const rowHead = 150

/** The number of the joint at the top plate stands right of the deck. */
const besideDeck = 34

/** A drawn piece with the height that it ends at. */
export interface Drawn {
  readonly svg: string
  readonly bottom: number
}

/** Supports from the top plate on one line with its zero there: a number in a square at each, its distance at its arrow. */
export function supportRow(
  stack: PipeStack,
  stations: StackStations,
  words: StackWords,
  frame: Pick<StackFrame, 'left' | 'right' | 'along'>,
  top: number,
): Drawn {
  const {left, right} = frame
  const supports = apart(stations.supports.map((one) => ({...one, x: placeOf(frame, one.at)})))
  const head = (y: number): string => text(words.rows.supports, margin, y)
  if (supports.length === 0) {
    const said = stack.supports ? words.none : words.notListed(words.rows.supports)
    return {svg: `${head(top + 34)}${text(said, left + 20, top + 34)}`, bottom: top + 60}
  }
  const placed = placedLabels(supports, left, right + 90)
  const squared = supports.filter((one) => one.hasSquare)
  const line = top + rowsOf(placed) * row + 4
  const squares = line + 14
  const strokes = supports.map(({x}, index) => {
    const {level = 0, hasLeader} = placed[index] ?? {}
    const up = level > 0 && hasLeader ? line - level * row - 4 : line
    return `M${x} ${up}V${squares + 54}`
  })
  return {
    svg: [
      head(squares + 34),
      `<path class="hair" d="M${left} ${line + 8}V${line - 12}M${left} ${line}H${supports.at(-1)?.x ?? left}${strokes.join('')}"/>`,
      `<circle class="part" cx="${left}" cy="${line}" r="6"/>`,
      `<path class="solid" d="${supports.map(({x}) => arrowhead(x, line, 'right')).join('')}"/>`,
      ...placed.map((one) => text(one.text, one.left, line - 10 - one.level * row)),
      `<path class="part" d="${squared.map(({x}) => `M${x - 21} ${squares}h42v42h-42z`).join('')}"/>`,
      ...squared.map(({number, x}) => text(String(number), x, squares + 34, 'mid')),
    ].join(''),
    bottom: squares + 54,
  }
}

type SupportPlace = StackStations['supports'][number] & {readonly x: number}

/** Supports that are near to each other have their numbers beside their distances; where squares would meet the upper one alone has it. */
function apart(supports: readonly SupportPlace[]): readonly (SupportPlace & {readonly hasSquare: boolean})[] {
  let square = Number.NEGATIVE_INFINITY
  return supports.map((one, index) => {
    const isNear = one.x - (supports[index - 1]?.x ?? Number.NEGATIVE_INFINITY) < 72
    const hasSquare = one.x - square >= 46
    if (hasSquare) square = one.x
    return {...one, hasSquare, text: isNear ? `${one.number}: ${one.text}` : one.text}
  })
}

/** Joints by their numbers, below them the length of each section and of the whole stack. */
export function lengthRows(
  stack: PipeStack,
  stations: StackStations,
  words: StackWords,
  frame: StackFrame,
  bottom: number,
): Drawn {
  const {left, right} = frame
  const place = (at: number): number => placeOf(frame, at)
  const {joints, sections} = stations
  const edge = bottom + standOut
  const numbers = placedLabels(
    joints.map(
      ({number, at}, index): Label => ({text: String(number), x: place(at) + (index === 0 ? besideDeck : 0)}),
    ),
    0,
    right + 90,
  )
  const joint = edge + 40
  const start = joint + (rowsOf(numbers) - 1) * row + 10
  const line = start + 50
  const strokes: string[] = []
  for (const [index, {at}] of joints.entries()) {
    const {level = 0, hasLeader} = numbers[index] ?? {}
    const x = rounded(place(at))
    if (index === 0) continue
    if (level > 0 && hasLeader)
      strokes.push(`M${x} ${rounded(edge + 6)}V${rounded(joint + level * row - 32)}`)
    strokes.push(`M${x} ${rounded(joint + level * row + 10)}V${rounded(line + 10)}`)
  }
  const rows = sectionLengths(sections, place, right - 6)
  const listed = sections.length > 0
  const whole = line + rows.levels * row + 54
  strokes.push(
    `M${left} ${rounded(edge + 40)}V${rounded(whole + 10)}M${right} ${rounded(edge + 6)}V${rounded(whole + 10)}`,
  )
  if (listed) strokes.push(`M${left} ${rounded(line)}H${rounded(place(sections.at(-1)?.to ?? 0))}`)
  strokes.push(`M${left} ${rounded(whole)}H${right}`)
  strokes.push(...rows.leaders.map((one) => one(line)))
  const heads = [
    ...(listed
      ? sections.flatMap(({from, to}) => [
          arrowhead(place(from), line, 'left'),
          arrowhead(place(to), line, 'right'),
        ])
      : []),
    arrowhead(left, whole, 'left'),
    arrowhead(right, whole, 'right'),
  ]
  return {
    svg: [
      text(words.rows.joints, margin, joint),
      ...(listed ? [text(words.rows.lengths, margin, line + 12)] : []),
      text(words.rows.whole, margin, whole + 12),
      ...numbers.map((one) => text(one.text, one.left, joint + one.level * row)),
      `<path class="hair" d="${strokes.join('')}"/>`,
      `<path class="solid" d="${heads.join('')}"/>`,
      ...rows.texts.map((one) => one(line)),
      ...(listed ? [] : [text(words.notListed(words.rows.sections), (left + right) / 2, start + 38, 'mid')]),
      text(stack.whole.text, (left + right) / 2, whole - 10, 'mid strong'),
    ].join(''),
    bottom: whole + 14,
  }
}

/** Lengths above their line where they have the room, else below it with a leader. */
function sectionLengths(
  sections: StackStations['sections'],
  place: (at: number) => number,
  most: number,
): {
  readonly levels: number
  readonly texts: readonly ((line: number) => string)[]
  readonly leaders: readonly ((line: number) => string)[]
} {
  const wide = ({from, to}: StackStations['sections'][number]): number => place(to) - place(from)
  const labels = sections.map((one) => ({
    ...one,
    x: (place(one.from) + place(one.to)) / 2,
    text: hasNumber(wide(one)) ? one.text : `${one.number}: ${one.text}`,
    fits: hasNumber(wide(one)) && textWidth(one.text, letter) + 8 <= wide(one),
  }))
  const above = labels.filter(({fits}) => fits)
  const below: readonly PlacedLabel[] = placedLabels(
    labels.filter(({fits}) => !fits),
    rowHead,
    most,
  )
  return {
    levels: rowsOf(below),
    texts: [
      ...above.map((one) => (line: number) => text(one.text, one.x, line - 10, 'mid')),
      ...below.map((one) => (line: number) => text(one.text, one.left, line + 42 + one.level * row)),
    ],
    leaders: below.map(
      ({x, level, hasLeader}) =>
        (line: number) =>
          hasLeader ? `M${rounded(x)} ${rounded(line)}V${rounded(line + 12 + level * row)}` : '',
    ),
  }
}

/** A text of the figure at a place. */
export function text(words: string, x: number, y: number, classes = ''): string {
  return `<text${classes === '' ? '' : ` class="${classes}"`} x="${rounded(x)}" y="${rounded(y)}">${escaped(words)}</text>`
}
