import {type DefaultTreeAdapterTypes, parse} from 'parse5'

/** A procedure page as its file says it, to be held against what was printed. */
export interface TaskPage {
  /** Tag of the pump, or the words that say that the page holds for the whole ship. */
  readonly tag: string
  /** Tag of the tank that the plan in the head marks; blank where there is no plan. */
  readonly markedTank: string
  readonly vessel: string
  /** Serial number of the pump; blank on a page for the whole ship. */
  readonly serial: string
  readonly title: string
  readonly pageId: string
  /** Revision with date and check code, or the words of a draft, as they stand in the table head. */
  readonly state: string
  /** Check code of the title block; undefined on a draft. */
  readonly code: string | undefined
  /** Words at the foot of each laid-out sheet, behind its blanks. */
  readonly foot: string
  readonly units: readonly TaskUnit[]
}

/** What never splits on paper, a row of the task table: a heading with its cautions, a hold point, a step with its cautions, or further parts of one. */
export interface TaskUnit {
  /** Id of the step or hold point, or the first words. */
  readonly name: string
  /** True for further parts of the step before. */
  readonly continues: boolean
  readonly texts: readonly TaskText[]
}

/** A text that is printed in one run. */
export interface TaskText {
  readonly kind: 'caution' | 'recall' | 'instruction' | 'other'
  readonly text: string
}

type Node = DefaultTreeAdapterTypes.ChildNode | DefaultTreeAdapterTypes.Document
type Element = DefaultTreeAdapterTypes.Element

/**
 * Reads a procedure page from its HTML.
 *
 * @throws {Error}
 *   When the page holds no task table with its repeating head.
 */
export function readTaskPage(html: string): TaskPage {
  const page = parse(html)
  const running = first(page, (one) => hasClass(one, 'running'))
  const task = first(page, (one) => one.tagName === 'table' && hasClass(one, 'task'))
  if (!running || !task)
    throw new Error('Unexpected page without `table.task` and its head, expected a procedure page')
  const [vessel = '', title = '', pageId = '', state = ''] = all(
    running,
    (one) => one.tagName === 'span',
  ).map(words)
  const safety = words(first(page, (one) => hasClass(one, 'foot'))?.childNodes[0])
  const demonstration = words(first(page, (one) => hasClass(one, 'demonstration')))
  const code = words(first(page, (one) => one.tagName === 'dd' && hasClass(one, 'code')))
  return {
    tag: words(first(running, (one) => hasClass(one, 'running-tag'))),
    markedTank:
      all(running, (one) => one.tagName === 'img').length > 0
        ? (factOf(page, 'Tank').split(',')[0] ?? '')
        : '',
    vessel,
    serial: factOf(page, 'Serial number'),
    title,
    pageId,
    state,
    code: code === 'none' || code === '' ? undefined : code,
    foot: demonstration === '' ? safety : `${demonstration}. ${safety}`,
    units: all(task, (one) => one.tagName === 'tbody' && hasClass(one, 'unit')).flatMap((unit) =>
      unit.childNodes.flatMap((row) => (row.nodeName === 'tr' && 'attrs' in row ? [unitOf(row)] : [])),
    ),
  }
}

function unitOf(unit: Element): TaskUnit {
  const texts = textsOf(unit)
  const named = first(unit, (one) => hasClass(one, 'step') || hasClass(one, 'hold'))
  const id = named?.attrs.find((one) => one.name === 'id')?.value
  return {
    name: id ?? (texts[0]?.text ?? '').slice(0, 60),
    continues: first(unit, (one) => hasClass(one, 'step-again')) !== undefined,
    texts,
  }
}

/** Classes whose words are printed in one run, however they are marked inside. */
const wholeRuns = [
  ['caution-word', 'caution'],
  ['recalls', 'recall'],
  ['instruction', 'instruction'],
] as const

function textsOf(node: Node): readonly TaskText[] {
  if (node.nodeName === '#text') {
    const text = words(node)
    return text === '' ? [] : [{kind: 'other', text}]
  }
  // A drawing carries no instruction, paper shows no bracket of a balloon; the other two are hidden where they are not needed.
  if (node.nodeName === 'svg' || node.nodeName === 'i') return []
  if ('attrs' in node && (hasClass(node, 'step-again') || hasClass(node, 'paper-foot'))) return []
  for (const [name, kind] of wholeRuns)
    if ('attrs' in node && hasClass(node, name)) return [{kind, text: words(node)}]
  return 'childNodes' in node ? node.childNodes.flatMap(textsOf) : []
}

function factOf(page: Node, label: string): string {
  const facts = all(page, (one) => one.tagName === 'div').filter((one) => one.childNodes.length === 2)
  return words(facts.find((one) => words(one.childNodes[0]) === label)?.childNodes[1])
}

function words(node: Node | undefined): string {
  // Brackets of a balloon are read out and copied; paper shows the circle.
  if (!node || node.nodeName === 'svg' || node.nodeName === 'i') return ''
  if (node.nodeName === '#text' && 'value' in node) return node.value.replace(/\s+/gu, ' ').trim()
  return 'childNodes' in node
    ? node.childNodes
        .map(words)
        .filter((one) => one !== '')
        .join(' ')
    : ''
}

function first(node: Node, fits: (element: Element) => boolean): Element | undefined {
  return all(node, fits)[0]
}

function all(node: Node, fits: (element: Element) => boolean): readonly Element[] {
  const own = 'attrs' in node && fits(node) ? [node] : []
  return 'childNodes' in node ? [...own, ...node.childNodes.flatMap((child) => all(child, fits))] : own
}

function hasClass(element: Element, name: string): boolean {
  const names = element.attrs.find((one) => one.name === 'class')?.value.split(' ') ?? []
  return names.includes(name)
}
