import type {PrintedSheet} from './printed-sheets.ts'
import type {TaskPage, TaskText, TaskUnit} from './task-page.ts'

/** What is wrong with a printed procedure, and what cannot be helped. */
export interface SheetFindings {
  readonly faults: readonly string[]
  /** Units that outgrow a sheet by themselves, by name. */
  readonly tall: readonly string[]
  /** Long steps, of which a further part stands on a further sheet. */
  readonly goOn: readonly string[]
}

/** Share of the fullest sheet from which a unit counts as taller than one: texts leave out the borders at the break. */
const nearlyAll = 0.97

/** Share of the fullest sheet below which a step has no reason to go over to a further one, even with a drawing at the break. */
const easilyFits = 0.75

/** Shorter texts may be met in a drawing or a count before their own place, so they do not tell on which sheet a unit stands. */
const tellingLength = 4

/** One letter on paper. Blanks are left out, so that it does not matter where a line breaks. */
interface Letter {
  readonly letter: string
  readonly sheet: number
  readonly top: number
  readonly bottom: number
}

/** Where a text stands. */
interface Run {
  readonly text: TaskText
  readonly letters: readonly Letter[]
}

/** What is left of a sheet without head and foot, and the end of its room where a foot stands. */
interface SheetBody {
  readonly letters: readonly Letter[]
  readonly footTop: number
  readonly faults: readonly string[]
}

/**
 * Holds printed sheets against their page.
 *
 * Every sheet names vessel, position, page and state (laid out by the page's
 * script: with sheet n of N; without scripts: in the repeating table head with
 * blanks to fill in). Every text of the task is on paper, in the order of the
 * page. What stays together (a step with its cautions) stands on one sheet,
 * the cautions above the instruction; what outgrows a sheet is named.
 */
export function sheetFindings(
  page: TaskPage,
  sheets: readonly PrintedSheet[],
  scripts: boolean,
): SheetFindings {
  const mark = page.code ?? 'DRAFT, NOT ISSUED'
  const bodies = sheets.map((sheet, index) =>
    scripts ? laidOutBody(page, sheet, index, sheets.length) : tableBody(page, sheet, index),
  )
  const printed = bodies.flatMap((one) => one.letters)
  const faults = [
    ...(sheets.length === 0 ? ['no sheet was printed'] : []),
    ...(page.units.length === 0 ? ['the page has no unit'] : []),
    ...(page.state.includes(mark) ? [] : [`the head says \`${page.state}\`, expected \`${mark}\` in it`]),
    ...bodies.flatMap((one) => one.faults),
  ]
  const tall: string[] = []
  const places = placesOf(page.units, printed)
  const room = roomOf(places)
  for (const {unit, runs, lost} of places) {
    faults.push(...lost.map((text) => `${unit.name}: not on paper after what stands before it: ${text}`))
    const cutOff = runs.filter(({letters}) =>
      letters.some((one) => one.bottom > (bodies[one.sheet]?.footTop ?? 0) + 1),
    )
    faults.push(
      ...cutOff.map(({text}) => `${unit.name}: cut off at the foot of its sheet: ${short(text.text)}`),
    )
    const sheetsOfUnit = sheetsOf(runs)
    if (sheetsOfUnit.length <= 1) faults.push(...turnedRound(runs).map((one) => `${unit.name}: ${one}`))
    else if (heightOf(runs) >= room * nearlyAll) tall.push(`${page.pageId} ${unit.name}`)
    else faults.push(`${unit.name}: parted, on sheets ${sheetsOfUnit.map((one) => one + 1).join(' and ')}`)
  }
  const goOn = stepsThatGoOn(places)
  faults.push(
    ...goOn
      .filter(({runs}) => heightOf(runs, topsOf(printed)) < room * easilyFits)
      .map(({name}) => `${name}: goes over to a further sheet, although it fits one`),
  )
  return {faults, tall, goOn: goOn.map(({name}) => `${page.pageId} ${name}`)}
}

/** A sheet laid out by the script: head with sheet n of N, body, foot. */
function laidOutBody(page: TaskPage, sheet: PrintedSheet, index: number, count: number): SheetBody {
  const letters = lettersOf(sheet, index)
  const text = textOf(letters)
  const serial = page.serial === '' ? '' : `· serial ${page.serial}`
  const head = squeezed(
    `${page.tag} ${page.markedTank} ${page.vessel} ${serial} ${page.title} ${page.pageId} Sheet ${index + 1} of ${count} ${page.state}`,
  )
  const foot = squeezed(`stopped at step time name ${page.foot}`)
  const headed = text.startsWith(head)
  const footed = text.endsWith(foot)
  const from = headed ? head.length : 0
  const to = letters.length - (footed ? foot.length : 0)
  return {
    letters: letters.slice(from, to),
    footTop: footed ? (letters[to]?.top ?? 0) : Number.POSITIVE_INFINITY,
    faults: [
      ...(headed
        ? []
        : [`sheet ${index + 1} begins with \`${text.slice(0, head.length)}\`, expected \`${head}\``]),
      ...(footed
        ? []
        : [`sheet ${index + 1} ends with \`${text.slice(-foot.length)}\`, expected \`${foot}\``]),
    ],
  }
}

/** A sheet of the table that the browser breaks by itself: its head is repeated, with blanks for the count. */
function tableBody(page: TaskPage, sheet: PrintedSheet, index: number): SheetBody {
  const letters = lettersOf(sheet, index)
  const head = squeezed(
    `${page.tag} ${page.vessel} ${page.title} ${page.pageId} ${page.state} sheet ____ of ____`,
  )
  const at = textOf(letters).indexOf(head)
  if (at === -1)
    return {
      letters,
      footTop: Number.POSITIVE_INFINITY,
      faults: [`sheet ${index + 1} is without its head \`${head}\``],
    }
  return {
    letters: [...letters.slice(0, at), ...letters.slice(at + head.length)],
    footTop: Number.POSITIVE_INFINITY,
    faults: [],
  }
}

function lettersOf({words}: PrintedSheet, sheet: number): readonly Letter[] {
  return words.flatMap(({text, top, bottom}) =>
    squeezed(text)
      .split('')
      .map((letter) => ({letter, sheet, top, bottom})),
  )
}

function textOf(letters: readonly Letter[]): string {
  return letters.map((one) => one.letter).join('')
}

/** A text without its blanks, ligatures and small figures as their letters, as UTF-16 units that can be counted. */
function squeezed(text: string): string {
  return text.normalize('NFKC').replace(/\s+/gu, '')
}

/** Finds the texts of the units one after the other; each behind the one before it. */
function placesOf(
  units: readonly TaskUnit[],
  printed: readonly Letter[],
): readonly {readonly unit: TaskUnit; readonly runs: readonly Run[]; readonly lost: readonly string[]}[] {
  const stream = textOf(printed)
  let from = 0
  return units.map((unit) => {
    const runs: Run[] = []
    const lost: string[] = []
    for (const text of unit.texts) {
      const wanted = squeezed(text.text)
      const at = stream.indexOf(wanted, from)
      if (at === -1) {
        lost.push(short(text.text))
        continue
      }
      from = at + wanted.length
      runs.push({text, letters: printed.slice(at, from)})
    }
    return {unit, runs, lost}
  })
}

/** Cautions that do not stand above the instruction. */
function turnedRound(runs: readonly Run[]): readonly string[] {
  const instruction = runs.find(({text}) => text.kind === 'instruction')
  const top = Math.min(...(instruction?.letters ?? []).map((one) => one.top))
  return runs
    .filter(({text}) => text.kind === 'caution' || text.kind === 'recall')
    .filter(({letters}) => letters.some((one) => one.top >= top))
    .map(({text}) => `not above its instruction: ${short(text.text)}`)
}

function sheetsOf(runs: readonly Run[]): readonly number[] {
  const telling = runs.filter(({letters}) => letters.length >= tellingLength)
  return [...new Set(telling.flatMap(({letters}) => letters.map((one) => one.sheet)))].sort((a, b) => a - b)
}

/** Height that texts take together, summed over the sheets they stand on; in points. */
function heightOf(runs: readonly Run[], tops: ReadonlyMap<number, number> = new Map()): number {
  const letters = runs.flatMap((one) => one.letters)
  return sheetsOf(runs)
    .map((sheet, index) => {
      const own = letters.filter((one) => one.sheet === sheet)
      const top = Math.min(...own.map((one) => one.top))
      // On a further sheet it begins at the top, where a drawing may stand before its first word.
      return Math.max(...own.map((one) => one.bottom)) - (index > 0 ? (tops.get(sheet) ?? top) : top)
    })
    .reduce((sum, one) => sum + one, 0)
}

/** The highest letter of each sheet below its head, those of drawings too. */
function topsOf(
  letters: readonly {readonly sheet: number; readonly top: number}[],
): ReadonlyMap<number, number> {
  const tops = new Map<number, number>()
  for (const {sheet, top} of letters) tops.set(sheet, Math.min(top, tops.get(sheet) ?? top))
  return tops
}

/** Height of the fullest sheet, in points: what a unit may take at most. */
function roomOf(places: readonly {readonly runs: readonly Run[]}[]): number {
  const tops = new Map<number, number>()
  const bottoms = new Map<number, number>()
  for (const {sheet, top, bottom} of places.flatMap(({runs}) => runs.flatMap((one) => one.letters))) {
    tops.set(sheet, Math.min(top, tops.get(sheet) ?? top))
    bottoms.set(sheet, Math.max(bottom, bottoms.get(sheet) ?? bottom))
  }
  return Math.max(0, ...[...tops].map(([sheet, top]) => (bottoms.get(sheet) ?? top) - top))
}

function stepsThatGoOn(
  places: readonly {readonly unit: TaskUnit; readonly runs: readonly Run[]}[],
): readonly {readonly name: string; readonly runs: readonly Run[]}[] {
  const steps: {name: string; runs: readonly Run[]}[] = []
  for (const {unit, runs} of places) {
    const last = steps[steps.length - 1]
    if (unit.continues && last) last.runs = [...last.runs, ...runs]
    else steps.push({name: unit.name, runs})
  }
  return steps.filter(({runs}) => sheetsOf(runs).length > 1)
}

function short(text: string): string {
  return text.length > 90 ? `${text.slice(0, 90)}…` : text
}
