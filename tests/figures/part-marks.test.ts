import {createHash} from 'node:crypto'
import {describe, expect, test} from 'vitest'
import {desksOfVessel, type PumpDesk} from '../../src/compile/desk.ts'
import {pictureFiles} from '../../src/compile/picture.ts'
import {positionPage} from '../../src/compile/position-page.ts'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import {sectionFiles, sharedSection} from '../../src/compile/section-figure.ts'
import {sectionOfPump} from '../../src/compile/section-of-pump.ts'
import {proceduresOf} from '../../src/compile/used-in.ts'
import {hasPart} from '../../src/conditions/has-part.ts'
import {placed} from '../../src/figures/section/paint.ts'
import type {Part} from '../../src/handbook-model/office-content.ts'
import type {BoundText, ProcedurePage} from '../../src/handbook-model/pages.ts'
import type {Procedure, RichText} from '../../src/handbook-model/procedure.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {to} from '../compile/data-for-tests.ts'
import {equals, hold, procedure, section, step} from '../compile/procedures-for-tests.ts'
import {demonstration} from '../content/demonstration.ts'

const {content, values} = await demonstration()
const vessels = [...content.vessels.keys()]
const desks = vessels.flatMap((vessel) => desksOfVessel(content, values, vessel))

function deskOf(vessel: string, position: string): PumpDesk {
  const desk = desks.find((one) => one.vessel.id === vessel && one.position.id === position)
  if (!desk) throw new Error(`Unexpected pump ${vessel}/${position}, expected one of the demonstration`)
  return desk
}

/** Balloons in any text of a page model, wherever it stands. */
function balloonsIn(model: unknown): readonly string[] {
  if (Array.isArray(model)) return model.flatMap(balloonsIn)
  if (typeof model !== 'object' || model === null) return []
  if ('kind' in model && model.kind === 'part' && 'balloon' in model) return [String(model.balloon)]
  return Object.values(model).flatMap(balloonsIn)
}

function ringsIn(svg: string): readonly string[] {
  return [...svg.matchAll(/<circle cx="([\d.-]+)" cy="([\d.-]+)"/gu)].map(([, x, y]) => `${x} ${y}`)
}

/** Where the section of a pump draws the balloons with these numbers. */
function placesOf(desk: PumpDesk, numbers: readonly string[]): readonly string[] {
  const drawn = sharedSection(desk)
  return (drawn?.balloons ?? []).flatMap(({number, at}) =>
    drawn && numbers.includes(number) ? [placed(at, drawn.frame).map(Math.round).join(' ')] : [],
  )
}

describe('balloon numbers in figure, parts list and steps agree', () => {
  const pages = desks.flatMap((desk) =>
    proceduresOf([desk]).map((one) => ({desk, page: procedurePage(one, desk), procedure: one})),
  )

  test('for every design and procedure', {timeout: 30_000}, () => {
    expect(desks.filter(({tank}) => tank)).toHaveLength(58)
    for (const desk of desks) {
      const ofPump = pages.filter((one) => one.desk === desk)
      const listed = new Set(
        [...content.parts.values()].flatMap((part) =>
          part.balloon !== undefined && hasPart(part, desk, content) ? [part.balloon] : [],
        ),
      )
      const {section: shown} = positionPage(desk)
      const onSection = new Map(shown?.numbers.map(({balloon, title}) => [balloon, title]))
      for (const {page, procedure: of} of ofPump) {
        const where = `${desk.vessel.id} ${desk.position.id} ${of.id}`
        for (const balloon of balloonsIn(page)) expect(listed.has(balloon), `${where} ${balloon}`).toBe(true)
        const touched = [
          ...balloonsIn(page.sections.map(({items}) => items)),
          ...page.parts.flatMap(({balloon}) => (balloon === '' ? [] : [balloon])),
        ]
        const drawn = touched.filter((one) => onSection.has(one))
        if (drawn.length === 0 || of.scope === 'vessel') {
          expect(page.touched, where).toBeUndefined()
          continue
        }
        const numbers = page.touched?.numbers ?? []
        expect(new Set(numbers.map(({balloon}) => balloon)), where).toEqual(new Set(drawn))
        for (const {balloon, title} of numbers) expect(title, where).toBe(onSection.get(balloon))
        expect(new Set(page.touched?.others.map(({balloon}) => balloon)), where).toEqual(
          new Set(touched.filter((one) => !onSection.has(one))),
        )
        expect(page.touched?.path, where).toBe(shown?.path)
        expect(new Set(ringsIn(page.touched?.marks.svg ?? '')), where).toEqual(new Set(placesOf(desk, drawn)))
        for (const {balloon, title} of numbers)
          expect(page.touched?.alternative, where).toContain(`${balloon} ${title}`)
      }
    }
  })

  test('on many pages, and on none of a portable pump', () => {
    const touching = pages.filter(({page}) => page.touched)
    expect(new Set(touching.map(({procedure: {id}}) => id)).size).toBeGreaterThan(12)
    expect(pages.flatMap(({page}) => balloonsIn(page.sections)).length).toBeGreaterThan(5000)
    expect(new Set(touching.map(({desk}) => desk.position.design.id)).size).toBe(2)
    const portable = pages.filter(({desk}) => desk.position.role === 'portable')
    expect(portable.length).toBeGreaterThan(4)
    expect(portable.filter(({page}) => page.touched)).toEqual([])
  })
})

function pointing(...ids: readonly string[]): RichText {
  return ids.map((id) => ({kind: 'part', part: to(id), label: `words for ${id}`}))
}

const one = (more: Partial<Procedure>, instruction = pointing('lower-ring')): Procedure =>
  procedure('look', [section('a', [step('see', {instruction})])], more)
const numbersOf = (page: ProcedurePage): readonly string[] =>
  page.touched?.numbers.map(({balloon}) => balloon) ?? []
const textOf = (page: ProcedurePage): string => technicalText(page, 'Vessel')

describe('the marks of a procedure', () => {
  const desk = deskOf('vessel-a', '4s')
  const before = procedurePage(one({}), desk)

  test('change with its steps and hold points', () => {
    const steps = procedurePage(one({}, pointing('lower-ring', 'impeller')), desk)
    const withHold = procedurePage(
      procedure('look', [
        section('a', [
          step('see', {instruction: pointing('lower-ring')}),
          hold('h', {text: [pointing('motor')]}),
        ]),
      ]),
      desk,
    )
    expect([before, steps, withHold].map(numbersOf)).toEqual([['4'], ['4', '6'], ['4', '20']])
    expect(new Set([before, steps, withHold].map(({touched}) => touched?.marks.path)).size).toBe(3)
    expect(new Set([before, steps, withHold].map(textOf)).size).toBe(3)
    expect(steps.touched?.path).toBe(before.touched?.path)
  })

  test('change with its parts list, where the line is for this pump', () => {
    const line = {part: to('suction-cover-ring'), quantity: 1, unit: 'piece'}
    const listed = procedurePage(one({parts: [line]}), desk)
    const elsewhere = procedurePage(one({parts: [{...line, when: equals('pump-size', 'small')}]}), desk)
    expect(numbersOf(listed)).toEqual(['3', '4'])
    expect(listed.touched?.marks.svg).not.toBe(before.touched?.marks.svg)
    expect(elsewhere.touched).toEqual(before.touched)
  })

  test('say what lies outside of the section, by the parts list of the pump', () => {
    const small = deskOf('vessel-b', '1p')
    const valve = pointing('lower-ring', 'control-valve')
    expect(procedurePage(one({}, valve), desk).touched?.others).toEqual([
      {balloon: '27', title: 'local control valve'},
    ])
    expect(procedurePage(one({}, valve), small).touched?.others).toEqual([
      {balloon: '27', title: 'local control valve of the small pump'},
    ])
    expect(procedurePage(one({}, pointing('control-valve')), desk).touched).toBeUndefined()
  })

  test('do not stand on a page of the ship, and name their pump on one of a design', () => {
    expect(procedurePage(one({scope: 'vessel'}), desk).touched).toBeUndefined()
    const shared = procedurePage(one({scope: 'design'}), desk)
    expect(shared.touched?.drawnAs).toBe('Drawn with the wear rings and the cargo seal of 4S.')
    expect(textOf(shared)).toContain('touched\tfigure\tDrawn with the wear rings and the cargo seal of 4S.\n')
  })

  test('make the parts list a file that the page is made from', () => {
    expect(before.head.madeFrom).toContain('parts.yaml')
  })
})

test('a part that is renumbered in the parts list moves figure, list and steps together', () => {
  const renumbered = (part: Part): Part => (part.balloon === '4' ? {...part, balloon: '44'} : part)
  const parts = new Map([...content.parts].map(([id, part]) => [id, renumbered(part)]))
  const old = deskOf('vessel-a', '4s')
  const desk = {...old, content: {...content, parts}}
  const seen = (of: PumpDesk): readonly string[] => {
    const page = procedurePage(one({parts: [{part: to('lower-ring'), quantity: 1, unit: 'piece'}]}), of)
    const {sections, touched, parts: lines} = page
    const texts: readonly BoundText[] = sections.flatMap(({items}) =>
      items.flatMap((item) => (item.kind === 'step' ? [item.instruction] : [])),
    )
    return [
      ...balloonsIn(texts),
      ...numbersOf(page),
      ...lines.map(({balloon}) => balloon),
      touched?.alternative ?? '',
    ]
  }
  const alternative = (number: number): string =>
    `Section of the pump. Marked are, from the wet end up: ${number} lower wear ring.`
  expect(seen(old)).toEqual(['4', '4', '4', alternative(4)])
  expect(seen(desk)).toEqual(['44', '44', '44', alternative(44)])
  expect(sectionOfPump(desk)?.svg).toContain('>44</text>')
  expect(positionPage(desk).section?.path).not.toBe(positionPage(old).section?.path)
  for (const page of [positionPage, (of: PumpDesk) => procedurePage(one({}), of)] as const) {
    expect(technicalText(page(old), 'Vessel')).not.toBe(technicalText(page(desk), 'Vessel'))
  }
})

describe.each(vessels)('the drawings of %s', (vessel) => {
  const ofVessel = desks.filter((desk) => desk.vessel.id === vessel)
  const pages = ofVessel.flatMap((desk) => proceduresOf([desk]).map((of) => procedurePage(of, desk)))
  const files = [...sectionFiles(ofVessel), ...pictureFiles(pages)].filter(({path}) =>
    /section|marks/u.test(path),
  )

  test('are named by what they hold', () => {
    expect(new Set(files.map(({path}) => path)).size).toBe(files.length)
    for (const {path, svg} of files) {
      const hash = createHash('sha256').update(svg).digest('hex').slice(0, 8)
      expect(path).toMatch(new RegExp(`^figures/(?:section|marks)-${hash}\\.svg$`, 'u'))
    }
  })

  test('are every one that a page shows, marks below 3 kB each and all of them below 250 kB', () => {
    const sizes = files.map(({svg}) => new TextEncoder().encode(svg).length)
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(250_000)
    for (const [index, {path}] of files.entries())
      expect(sizes[index], path).toBeLessThan(path.includes('marks') ? 3000 : 40_000)
    const shown = pages.flatMap(({touched}) => (touched ? [touched.path, touched.marks.path] : []))
    expect(shown.length).toBeGreaterThan(20)
    for (const path of shown) expect(files.some((file) => file.path === path)).toBe(true)
  })
})
