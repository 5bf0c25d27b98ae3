import {describe, expect, test} from 'vitest'
import {boundFigure} from '../../src/compile/bound-figure.ts'
import {desksOfVessel, type PumpDesk, pumpValue} from '../../src/compile/desk.ts'
import {pictureFiles} from '../../src/compile/picture.ts'
import {pipeStackOfPump} from '../../src/compile/pipe-stack-of-pump.ts'
import {positionPage} from '../../src/compile/position-page.ts'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import {valuesShown} from '../../src/compile/values-shown.ts'
import type {Figure} from '../../src/figures/figure.ts'
import type {KnownDatum} from '../../src/handbook-model/datum.ts'
import type {ProcedurePage} from '../../src/handbook-model/pages.ts'
import type {Position} from '../../src/handbook-model/vessel-content.ts'
import {quantityOf} from '../../src/quantities/quantity.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {place} from '../compile/data-for-tests.ts'
import {demonstration} from '../content/demonstration.ts'
import {expectRoomForTexts} from './room-for-texts.ts'
import {textsOf} from './svg-for-tests.ts'

const {content, values} = await demonstration()
const all = [...content.vessels.keys()].flatMap((vessel) => desksOfVessel(content, values, vessel))
const hung = all.filter((desk) => desk.tank)

function deskOf(vessel: string, position: string): PumpDesk {
  const desk = all.find((one) => one.vessel.id === vessel && one.position.id === position)
  if (!desk) throw new Error(`Unexpected pump ${vessel}/${position}, expected one of the demonstration`)
  return desk
}

function stackOf(desk: PumpDesk): Figure {
  const figure = pipeStackOfPump(desk)
  if (!figure) throw new Error(`Unexpected pump ${desk.position.id} without a stack, expected one that hangs`)
  return figure
}

function pageOf(id: string, desk: PumpDesk): ProcedurePage {
  const procedure = content.procedures.get(id)
  if (!procedure) throw new Error(`Unexpected procedure ${id}, expected one of the demonstration`)
  return procedurePage(procedure, desk)
}

function metres(figure: string): KnownDatum<'length'> {
  const origin = {status: 'assumed', source: 'demo-data'} as const
  return {
    kind: 'known',
    quantity: quantityOf('length', Number(figure)),
    figure,
    unit: 'm',
    origin,
    place,
  }
}

function withPosition(desk: PumpDesk, change: Partial<Position>): PumpDesk {
  return {...desk, position: {...desk.position, ...change}}
}

/** A pump whose value of a length is another. */
function withValue(desk: PumpDesk, id: string, millimetres: number): PumpDesk {
  const value = pumpValue(desk, id)
  const result = {
    kind: 'known',
    quantity: quantityOf('length', millimetres / 1000),
    printed: {figure: String(millimetres), unit: 'mm'},
  } as const
  return {...desk, values: new Map([...desk.values, [id, {...value, result}]])}
}

describe('the pipe stack of each pump', () => {
  test('is drawn for the pumps that hang in tanks, with room for every text, and small', () => {
    expect(hung).toHaveLength(58)
    for (const desk of hung) {
      const figure = stackOf(desk)
      expectRoomForTexts(figure)
      expect(figure.svg.length, desk.position.id).toBeLessThan(10_000)
      // On paper: 150 mm wide and not much higher than half of a sheet.
      expect(figure.height, desk.position.id).toBeLessThan(1200)
    }
    for (const desk of all.filter((one) => !one.tank)) expect(pipeStackOfPump(desk)).toBeUndefined()
  })

  test('is left out where the design does not state one of its pipes', () => {
    const desk = deskOf('vessel-a', '4s')
    const stated = new Map([...desk.values].filter(([id]) => id !== 'geometry.stack-diameter'))
    const geometry = desk.design.geometry.filter(({id}) => id !== 'stack-diameter')
    expect(positionPage({...desk, values: stated, design: {...desk.design, geometry}}).stack).toBeUndefined()
  })

  test('has every section, joint and support of the vessel file by its number, with its length', () => {
    for (const desk of hung) {
      const {stackSections, stackSupports = [], stackLength} = desk.position
      const {svg, data, alternative} = stackOf(desk)
      const texts = textsOf(svg).map(({text}) => text)
      const lengths = (list: readonly {readonly kind: string}[]): readonly string[] =>
        list.map((one) => ('figure' in one ? `${String(one.figure)} m` : 'NOT KNOWN'))
      const sections = lengths(stackSections.map(({length}) => length))
      const supports = lengths(stackSupports)
      expect(supports.length, desk.position.id).toBeGreaterThan(1)
      expect(supports.length, desk.position.id).toBeLessThan(6)
      const numbered = (list: readonly string[]): string =>
        list.map((text, index) => `${index + 1}: ${text}`).join('; ')
      expect(data).toContain(`Sections: ${sections.length > 0 ? numbered(sections) : 'NOT KNOWN'}.`)
      expect(data).toContain(`Supports, below the top plate: ${numbered(supports)}.`)
      const [whole = ''] = lengths([stackLength ?? {kind: 'not-known'}])
      expect(alternative).toContain(`Whole length ${whole}.`)
      for (const text of new Set([...sections, ...supports, whole]))
        expect(texts.filter((one) => one === text).length).toBe(
          [...sections, ...supports, whole].filter((one) => one === text).length,
        )
      for (let number = 1; number <= Math.max(1, sections.length); number += 1)
        expect(texts.filter((one) => one === String(number)).length, `${desk.position.id} ${number}`).toBe(
          (number <= sections.length ? 1 : 0) + 1 + (number <= supports.length ? 1 : 0),
        )
    }
  })

  test('is one file for pumps whose stacks are alike', () => {
    const [port, starboard] = ['6p', '6s'].map((id) => positionPage(deskOf('vessel-a', id)))
    if (!port || !starboard) throw new Error('Unexpected gap, expected two pages')
    expect(port.stack?.picture.path).toBe(starboard.stack?.picture.path)
    expect(port.stack?.picture.alternative).not.toBe(starboard.stack?.picture.alternative)
    expect(pictureFiles([port, starboard]).filter(({path}) => path.includes('pipe-stack'))).toHaveLength(1)
  })

  test('stands on its page and at the steps that speak of sections and supports by number', () => {
    const desk = deskOf('vessel-a', '4s')
    expect(positionPage(desk).stack?.data).toBe(stackOf(desk).data)
    expect(positionPage(deskOf('vessel-c', 'portable-1')).stack).toBeUndefined()
    const steps = ['stack', 'stack-closing'].flatMap((id) =>
      pageOf(id, desk).sections.flatMap(({items}) =>
        items.flatMap((item) =>
          item.kind === 'step' &&
          item.parts.some((part) => part.kind === 'figure' && part.figure.data === stackOf(desk).data)
            ? [item.id]
            : [],
        ),
      ),
    )
    expect(steps).toEqual(['stack--count-supports', 'stack--mark-joint', 'stack-closing--hang-section'])
  })

  test('counts its length, pipes and bolts as shown values', () => {
    const procedure = content.procedures.get('stack')
    if (!procedure) throw new Error('Unexpected gap, expected the procedure')
    const shown = valuesShown(procedure, deskOf('vessel-a', '4s')).map(({value}) => value)
    for (const id of [
      'cofferdam.stack-length',
      'geometry.stack-diameter',
      'oil.pressure-pipe-bore',
      'stack-joint-bolts.fastener',
    ])
      expect(shown).toContain(id)
  })

  test('moves drawing, words and the technical text of both pages with its data', () => {
    const desk = deskOf('vessel-a', '4s')
    const sections = desk.position.stackSections
    const changes: Readonly<Record<string, PumpDesk>> = {
      'a section is split': withPosition(desk, {
        stackSections: [
          ...sections.slice(0, 6),
          {number: 7, length: metres('0.900'), place},
          {number: 8, length: metres('1.100'), place},
        ],
      }),
      'a length changes': withPosition(desk, {
        stackSections: sections.map((one) => (one.number === 3 ? {...one, length: metres('1.900')} : one)),
      }),
      'a support moves': withPosition(desk, {
        stackSupports: (desk.position.stackSupports ?? []).map((one, index) =>
          index === 1 ? metres('6.50') : one,
        ),
      }),
      'a support goes': withPosition(desk, {
        stackSupports: (desk.position.stackSupports ?? []).slice(0, 3),
      }),
      'the whole length is another': withValue(desk, 'cofferdam.stack-length', 14_010),
      'the outer pipe is wider': withValue(desk, 'geometry.stack-diameter', 170),
      'the pressure pipe is narrower': withValue(desk, 'oil.pressure-pipe-bore', 58),
      'a joint has no ring of the return pipe': {
        ...desk,
        design: {...desk.design, oRings: desk.design.oRings.filter(({id}) => id !== 'joint-return-ring')},
      },
    }
    const text = (one: PumpDesk): readonly string[] => [
      technicalText(positionPage(one), 'Vessel'),
      technicalText(pageOf('stack', one), 'Vessel'),
    ]
    const [page, sheet] = text(desk)
    for (const [what, changed] of Object.entries(changes)) {
      expect(stackOf(changed).svg, what).not.toBe(stackOf(desk).svg)
      expect(stackOf(changed).alternative, what).not.toBe(stackOf(desk).alternative)
      const [pageThen, sheetThen] = text(changed)
      expect(pageThen, what).not.toBe(page)
      expect(sheetThen, what).not.toBe(sheet)
    }
  })

  test('is refused for a pump without one, which the check has told', () => {
    const desk = deskOf('vessel-c', 'portable-1')
    const procedure = content.procedures.get('stack')
    if (!procedure) throw new Error('Unexpected gap, expected the procedure')
    expect(() => boundFigure('a', 'pipe-stack', 'Stack', desk, procedure)).toThrow(
      'Unexpected gap for what a pipe stack is drawn from',
    )
  })
})
