import {type DefaultTreeAdapterTypes, parse} from 'parse5'
import {describe, expect, test} from 'vitest'
import type {BoundSection, Page} from '../../src/handbook-model/pages.ts'
import {fixture} from './fixture-pages.ts'
import {text} from './fixture-text.ts'
import {fileAt, inputOf, textsOf} from './rendered.ts'

type Element = DefaultTreeAdapterTypes.Element

const html = fileAt(textsOf(inputOf()), 'p/4s/wear.html')

/** Every element below a node, in document order. */
function elementsIn(node: DefaultTreeAdapterTypes.Node): readonly Element[] {
  if (!('childNodes' in node)) return []
  return node.childNodes.flatMap((child) => ('attrs' in child ? [child, ...elementsIn(child)] : []))
}

const classesOf = (element: Element): readonly string[] =>
  element.attrs.find(({name}) => name === 'class')?.value.split(' ') ?? []

const withClass = (node: DefaultTreeAdapterTypes.Node, name: string): readonly Element[] =>
  elementsIn(node).filter((one) => classesOf(one).includes(name))

function words(node: DefaultTreeAdapterTypes.Node): string {
  if ('value' in node) return node.value
  return 'childNodes' in node ? node.childNodes.map(words).join('') : ''
}

const document = parse(html)
const [task] = withClass(document, 'task')
if (!task) throw new Error('Unexpected page without a task table, expected one')
const units = elementsIn(task).filter((one) => one.tagName === 'tbody' && classesOf(one).includes('unit'))
const unitWith = (what: string): Element => {
  const found = units.find((one) => words(one).includes(what))
  if (!found) throw new Error(`Unexpected gap: no unit holds ${what}`)
  return found
}

describe('a unit that never splits over sheets', () => {
  test('holds a step with its number, its caution, its recalled cautions and its first part', () => {
    const unit = words(unitWith(text('instruction')))
    const order = ['NOTICE 3', text('hazard-3'), 'DANGER 1', 'WARNING 2', text('instruction'), text('note')]
    let from = 0
    for (const one of order) {
      const at = unit.indexOf(one, from)
      expect(at, one).toBeGreaterThan(-1)
      from = at
    }
  })

  test('holds the heading of a section together with its first step', () => {
    expect(words(unitWith(text('instruction')))).toContain(text('section-take-off'))
  })

  test('holds the heading, the words before and the first caution of a section that has cautions', () => {
    const unit = words(unitWith(text('section-enter')))
    expect(unit).toContain(text('intro'))
    expect(unit).toContain('These hold for the whole section:')
    expect(unit).toContain(text('hazard-1'))
    expect(words(unitWith(text('hazard-2')))).not.toContain('These hold')
  })

  test('holds one reading whole: title, stations, limits', () => {
    const unit = words(unitWith(text('reading-title')))
    for (const one of ['station-a', 'station-b', 'instrument', 'renewal-limit', 'renewal-action'])
      expect(unit).toContain(text(one))
  })

  test('names the step again where its further parts go on', () => {
    for (const one of ['reading-title', 'missed', 'caption', 'fact'])
      expect(words(unitWith(text(one)))).toContain('step 1')
  })
})

describe('things to write into', () => {
  test('are a box for each station, one for a computed reading, and out and in for each thing of a tally', () => {
    const boxes = (what: string): number =>
      withClass(
        withClass(document, 'boxes').find((one) => words(one).includes(what)) ??
          withClass(document, 'tally').find((one) => words(one).includes(what)) ??
          document,
        'box',
      ).length
    expect(boxes(text('station-a'))).toBe(2)
    expect(boxes(text('rags'))).toBe(4)
    expect(boxes('computed')).toBe(1)
  })

  test('are a box for each line and column of a write-in, and one wide box where it has no columns', () => {
    const [air, told] = withClass(document, 'write-in')
    expect(withClass(air ?? document, 'box')).toHaveLength(4)
    expect(withClass(told ?? document, 'wide')).toHaveLength(1)
  })

  test('are as many ticks as a repeated step may take, and one for each choice', () => {
    const ticksOf = (name: string): number =>
      withClass(withClass(document, name)[0] ?? document, 'tick').length
    expect(ticksOf('repeat')).toBe(4)
    expect(ticksOf('alternatives')).toBe(2)
    expect(ticksOf('identify')).toBe(2)
  })

  test('are two signatures at a hold point, which says that both must sign', () => {
    const [hold] = withClass(document, 'hold')
    expect(withClass(hold ?? document, 'sign-line')).toHaveLength(2)
    expect(words(hold ?? document)).toContain('Do not go on before both have signed.')
  })

  test('are a box for each isolation point, none for a role without a point', () => {
    const tables = withClass(document, 'points')
    expect(tables.map((one) => withClass(one, 'box').length)).toEqual([1, 1])
    expect(tables.map((one) => words(one).includes('Restored: state, by, time'))).toEqual([false, true])
    for (const one of tables) expect(words(one)).toContain('none on this pump: ')
  })
})

describe('the head of the printed table', () => {
  test('repeats position, vessel, title, page, state and leaves the sheet number to the hand', () => {
    const [running] = withClass(document, 'running')
    const said = words(running ?? document)
    for (const one of [
      '4S',
      text('vessel-name'),
      text('title-of-p-4s-wear'),
      'vessel-a/p/4s/wear',
      'DRAFT, NOT ISSUED',
      'sheet ____ of ____',
    ])
      expect(said).toContain(one)
  })
})

/** The section with steps that are repeated until something is so, however often. */
const withOpenRepeat = (section: BoundSection): BoundSection => ({
  ...section,
  items: section.items.map((item) =>
    item.kind === 'step' ? {...item, parts: [{kind: 'repeat', until: 'clean', boxes: 0}]} : item,
  ),
})

test('a step that is repeated without a number of times has a box for the count', () => {
  const pages = fixture.pages.map(
    (page): Page =>
      page.kind === 'procedure' ? {...page, sections: page.sections.map(withOpenRepeat)} : page,
  )
  const page = parse(fileAt(textsOf(inputOf({pages: {...fixture, pages}})), 'p/4s/wear.html'))
  const [repeat] = withClass(page, 'repeat')
  expect(words(repeat ?? page)).toContain('Repeat until: clean. Times done:')
  expect(withClass(repeat ?? page, 'box-inline')).toHaveLength(1)
  expect(withClass(repeat ?? page, 'tick')).toHaveLength(0)
})

test('a figure that is not known is marked as such, and a known one is not', () => {
  const plates = withClass(document, 'plate')
  const unknown = plates.filter((one) => classesOf(one).includes('plate-unknown'))
  expect(unknown.map((one) => words(one).includes('NOT KNOWN'))).toEqual([true])
  expect(plates).toHaveLength(3)
})

test('a sheet without a pump names the whole ship, or all pumps of one design', () => {
  const tagOf = (isOfDesign: boolean): string => {
    const pages = fixture.pages.map((page): Page => {
      if (page.kind !== 'procedure') return page
      const {position: _, ...head} = page.head
      return {...page, head, isOfDesign}
    })
    const text = fileAt(textsOf(inputOf({pages: {...fixture, pages}})), 'p/4s/wear.html')
    return /class="?running-tag"?>([^<]*)</u.exec(text)?.[1] ?? ''
  }
  expect([tagOf(false), tagOf(true)]).toEqual(['whole ship', 'design'])
})

test('a card without tools does not send its reader to other pages first', () => {
  const readFirst = 'Read the cautions page first.'
  const pages = fixture.pages.map(
    (page): Page => (page.kind === 'procedure' ? {...page, isCard: true, tools: []} : page),
  )
  const cardHtml = fileAt(textsOf(inputOf({pages: {...fixture, pages}})), 'p/4s/wear.html')
  expect(html).toContain(readFirst)
  expect(html).not.toContain('data-card')
  expect(cardHtml).not.toContain(readFirst)
  expect(cardHtml).toContain(' data-card')
  expect(html).toContain('<h2>Tools</h2>')
  expect(cardHtml).not.toContain('<h2>Tools</h2>')
})

test('a wide figure stands in a named region that a key reaches, a small one does not', () => {
  const inRegion = withClass(document, 'picture')
    .slice(-2)
    .map(({parentNode}) =>
      parentNode && 'attrs' in parentNode && classesOf(parentNode).includes('scroller')
        ? Object.fromEntries(parentNode.attrs.map(({name, value}) => [name, value]))
        : undefined,
    )
  expect(inRegion).toEqual([
    undefined,
    {class: 'scroller', tabindex: '0', role: 'group', 'aria-label': text('wide-caption')},
  ])
})
