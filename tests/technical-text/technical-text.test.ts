import {describe, expect, test} from 'vitest'
import type {Page, ProcedurePage} from '../../src/handbook-model/pages.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {handbook, pageAt} from '../compile/handbook-for-tests.ts'

const {pages} = handbook()
const wear = pageAt(pages, 'procedure', 'p/4s/wear.html')

/** Lines of a page as block, kind and text. */
function linesOf(page: Page, vessel = 'Example Vessel A'): readonly (readonly string[])[] {
  return technicalText(page, vessel)
    .split('\n')
    .slice(0, -1)
    .map((line) => line.split('\t'))
}

/** The page with other words in the place of some, whatever field they stand in. */
function withWords(page: ProcedurePage, words: string, others: string): ProcedurePage {
  const changed: ProcedurePage = JSON.parse(
    JSON.stringify(page, (_key, value: unknown) => (value === words ? others : value)),
  )
  if (JSON.stringify(changed) === JSON.stringify(page))
    throw new Error(`Unexpected page without \`${words}\`, expected it there`)
  return changed
}

describe('a technical text', () => {
  test.each(pages.map((page) => [page.head.id, page] as const))(
    'of %s is lines of block, kind and words, each ended by a line feed',
    (_id, page) => {
      const text = technicalText(page, 'Example Vessel A')
      expect(text.endsWith('\n')).toBe(true)
      expect(text).not.toContain('\r')
      for (const line of text.split('\n').slice(0, -1))
        expect(line).toMatch(/^[^\t\s]+\t[^\t]+\t\S(?:[^\t]*\S)?$/u)
    },
  )

  test('begins with position, vessel, serial, design, variant, tank, stack length and title', () => {
    expect(linesOf(wear).slice(0, 10)).toEqual([
      ['identity', 'position', '4S'],
      ['identity', 'vessel', 'Example Vessel A'],
      ['identity', 'serial', 'P-4s'],
      ['identity', 'design', 'Design A'],
      ['identity', 'variant', 'A2'],
      ['identity', 'tank', '4S'],
      ['identity', 'tank-volume', '900 m³'],
      ['identity', 'stack-length', 'NOT KNOWN - MEASURE AND REPORT'],
      ['identity', 'equipment', 'critical'],
      ['identity', 'title', 'Procedure wear'],
    ])
  })

  test('of a page without a pump begins with vessel and title', () => {
    expect(linesOf(pageAt(pages, 'words', 'words.html')).slice(0, 2)).toEqual([
      ['identity', 'vessel', 'Example Vessel A'],
      ['identity', 'title', 'Words used here'],
    ])
  })

  test('differs for another vessel of the same pumps', () => {
    expect(technicalText(wear, 'Example Vessel B')).not.toBe(technicalText(wear, 'Example Vessel A'))
  })

  test('folds white space to single blanks', () => {
    const torn = withWords(wear, 'Procedure wear', '  Procedure\n\t\u00a0 wear ')
    expect(technicalText(torn, 'V')).toBe(technicalText(wear, 'V'))
  })

  test('is the same for composed and decomposed letters', () => {
    const composed = withWords(wear, 'Procedure wear', 'Prüfung')
    const decomposed = withWords(wear, 'Procedure wear', 'Pru\u0308fung')
    expect(technicalText(decomposed, 'V')).toBe(technicalText(composed, 'V'))
  })
})

describe('the lines of a procedure', () => {
  test('give its purpose first, with the figures that stand in it', () => {
    const purpose = [
      [
        {kind: 'text', text: 'Holds '} as const,
        {kind: 'value', text: '62 N·m', path: 'a', known: true} as const,
      ],
    ]
    const lines = linesOf({...wear, purpose})
    expect(lines[lines.findIndex(([, kind]) => kind === 'title') + 1]).toEqual([
      'purpose',
      'purpose',
      'Holds 62 N·m',
    ])
  })

  const at = (block: string): readonly (readonly string[])[] => linesOf(wear).filter(([one]) => one === block)

  test('give a value as figure with unit, further figures, then condition', () => {
    const values = ['torques', 'passes'].flatMap((page) =>
      linesOf(pageAt(pages, 'explanations', `designs/design-a/${page}.html`)),
    )
    expect(values.filter(([block]) => block === 'hub-bolts.passes').map(([, ...rest]) => rest)).toEqual([
      ['title', 'value hub-bolts.passes'],
      ['value', '62 N·m'],
      ['more', '19'],
      ['more', '37'],
      ['more', '62'],
    ])
    expect(values.filter(([block]) => block === 'hub-bolts.torque').map(([, ...rest]) => rest)).toEqual([
      ['title', 'value hub-bolts.torque'],
      ['value', '62 N·m'],
      ['condition', 'threads and head with assembly paste'],
    ])
  })

  test('give a caution as word with number, title, hazard, consequence, advice and protection', () => {
    const [first] = wear.sections.flatMap((section) => section.cautions)
    if (!first) throw new Error('Unexpected page without a caution, expected one')
    expect(
      at(`caution-${first.id}`)
        .slice(0, 6)
        .map(([, ...rest]) => rest),
    ).toEqual([
      ['word', 'DANGER 1'],
      ['title', 'title of gas'],
      ['hazard', 'hazard of gas'],
      ['consequence', 'consequence of gas'],
      ['avoid', 'Avoid gas.'],
      ['protection', 'gloves for gas'],
    ])
  })

  test('give cautions before the number and the instruction of their step', () => {
    const kinds = linesOf(wear).map(([block = '', kind = '']) => `${block} ${kind}`)
    const [step] = wear.sections
      .flatMap((section) => section.items)
      .flatMap((item) => (item.kind === 'step' && item.cautions.length > 1 ? [item] : []))
    if (!step) throw new Error('Unexpected page without a step of two cautions, expected one')
    const places = [
      ...step.cautions.map((one) => kinds.indexOf(`caution-${one.id} word`)),
      kinds.indexOf(`${step.id} number`),
      kinds.indexOf(`${step.id} step`),
    ]
    expect(places).not.toContain(-1)
    expect(places).toEqual([...places].sort((a, b) => a - b))
  })

  test('follow steps and hold points in their order', () => {
    const items = wear.sections.flatMap((section) => section.items)
    const order = linesOf(wear).flatMap(([block, kind]) =>
      kind === 'step' || (kind === 'hold' && items.some((item) => item.id === block)) ? [block] : [],
    )
    expect([...new Set(order)]).toEqual(items.map((item) => item.id))
    const turned = {...wear, sections: [...wear.sections].reverse()}
    expect(technicalText(turned, 'V')).not.toBe(technicalText(wear, 'V'))
  })

  test('tell an isolation from a restoration of the same point', () => {
    const turned = withWords(wear, 'isolate', 'restore')
    expect(technicalText(turned, 'V')).not.toBe(technicalText(wear, 'V'))
    const kinds = linesOf(wear)
      .filter(([, , words]) => words === 'HP 4S')
      .map(([, kind]) => kind)
    expect(kinds).toEqual(['isolate valve'])
  })

  test('hold the data behind a figure, not its drawing', () => {
    const kinds = linesOf(wear).filter(([, kind]) => kind === 'figure' || kind === 'caption')
    expect(kinds.map(([, ...rest]) => rest)).toEqual([
      ['figure', 'hub bolts: 4; order 1 3 2 4'],
      ['caption', 'Order'],
    ])
  })
})

describe('the wall sheet', () => {
  test('tells the joints of two designs apart when their ids are the same', () => {
    const wall = pageAt(pages, 'values', 'values.html')
    const [design] = wall.designs
    if (!design) throw new Error('Unexpected wall sheet without a design, expected one')
    const two = {...wall, designs: [design, {...design, id: 'design-b'}]}
    const blocks = linesOf(two).flatMap(([block, , words]) => (words === '62 N·m' ? [block] : []))
    expect(new Set(blocks)).toEqual(new Set(['design-a.hub-bolts', 'design-b.hub-bolts']))
  })
})
