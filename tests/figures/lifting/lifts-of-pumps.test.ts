import {describe, expect, test} from 'vitest'
import type {PumpDesk} from '../../../src/compile/desk.ts'
import {procedurePage} from '../../../src/compile/procedure-page.ts'
import {serves} from '../../../src/conditions/serves.ts'
import type {BoundFigure, ProcedurePage} from '../../../src/handbook-model/pages.ts'
import {expectRoomForTexts} from '../room-for-texts.ts'
import {content, deskOf, figureOf, firsts, found, ofVessels} from './lifts-for-tests.ts'
import {expectInside} from './room-of-drawing.ts'

function pageOf(id: string, desk: PumpDesk): ProcedurePage {
  return procedurePage(found(content.procedures.get(id), id), desk)
}

interface ShownFigure {
  readonly step: string
  readonly figure: BoundFigure
}

/** The figures of lifts and of lowering bolts on a page. */
function figuresOf(page: ProcedurePage): readonly ShownFigure[] {
  return page.sections.flatMap(({items}) =>
    items.flatMap((item) =>
      item.kind === 'step'
        ? item.parts.flatMap((part) =>
            part.kind === 'figure' && /--(?:lift-|lowering$|raising$)/u.test(part.figure.id)
              ? [{step: item.id, figure: part.figure}]
              : [],
          )
        : [],
    ),
  )
}

/** Figures with their units that stand as plates on a page, with the words of their conditions. */
function platesOf(page: ProcedurePage): ReadonlySet<string> {
  return new Set(
    page.sections.flatMap(({items}) =>
      items.flatMap((item) =>
        item.kind === 'step'
          ? item.parts.flatMap((part) =>
              part.kind === 'value' ? [`${part.line.figure} ${part.line.unit}`.trim()] : [],
            )
          : [],
      ),
    ),
  )
}

/** What the demonstration lifts, by page. */
const shown = [
  ['cargo-seal', 'design-a', ['screw-casing-eyes lift-casing-lift']],
  ['dismantling', 'design-a', ['fit-cover-eyes lift-cover-lift', 'hook-impeller lift-impeller-lift']],
  ['motor-exchange', 'design-a', ['hang-hoists lift-motor-hoist-lift', 'lift-old-motor lift-motor-lift']],
  ['motor-opening', 'design-a', ['lower-in lift-motor-lift']],
  ['portable-drill', 'design-p', ['lift-pump lift-pump-lift']],
  ['portable-recovery', 'design-p', ['take-load lift-chain-lift']],
  ['portable-rigging', 'design-p', ['lower-pump lift-winch-lift', 'hook-chain lift-chain-lift']],
  ['pump-unit-removal', 'design-a', ['fit-lowering-bolts lowering', 'try-lift lift-unit-lift']],
  ['pump-unit-removal', 'design-b', ['fit-lowering-bolts lowering', 'try-lift lift-unit-lift']],
  [
    'reassembly',
    'design-a',
    [
      'lower-impeller lift-impeller-lift',
      'lower-suction-cover lift-cover-lift',
      'lift-out lift-unit-lift',
      'hang-unit raising',
    ],
  ],
  ['spare-unit-care', 'design-a', ['lift-unit lift-unit-lift']],
  ['stack', 'design-a', ['set-gantry lift-stack-lift', 'fit-lifting-cap lift-section-lift']],
  ['stack-closing', 'design-a', ['hang-motor lift-section-lift', 'lower-through lift-stack-lift']],
] as const

describe('lifts of the demonstration', () => {
  test.each(shown)(
    'of %s on a pump of %s stand at the steps that begin them, each once',
    (id, design, at) => {
      expect(
        figuresOf(pageOf(id, deskOf(design))).map(({step: one, figure}) =>
          `${one} ${figure.id}`.replaceAll(`${id}--`, ''),
        ),
      ).toEqual(at)
    },
  )

  test('have each lift of each design on some page', () => {
    for (const desk of firsts) {
      const drawn = new Set(
        [...content.procedures.values()]
          .filter((one) => serves(one, desk.facts))
          .flatMap((one) => figuresOf(procedurePage(one, desk)).map(({figure}) => figure.id.split('--')[1])),
      )
      for (const lift of desk.design.lifts) expect(drawn, desk.design.id).toContain(`lift-${lift.id}`)
      if (desk.design.lowering)
        for (const work of ['lowering', 'raising']) expect(drawn, desk.design.id).toContain(work)
    }
  })

  test('print the figures of the plates of their pages, on each vessel', () => {
    const told: string[] = []
    for (const desk of ofVessels)
      for (const [id, design] of shown) {
        if (design !== desk.design.id) continue
        const page = pageOf(id, desk)
        const plates = platesOf(page)
        for (const {figure} of figuresOf(page)) {
          const loads = figure.data.split('. Drawn')[0]?.match(/\d[\d.]* (?:kg|kN|N·m|mm)/gu) ?? []
          expect(loads.length, figure.data).toBeGreaterThanOrEqual(3)
          for (const load of loads) expect([...plates], `${id}: ${figure.data}`).toContain(load)
          for (const load of loads) expect(figure.picture.svg.match(/>[^<]*</gu)?.join('')).toContain(load)
          told.push(figure.id)
        }
      }
    expect(new Set(told).size).toBeGreaterThanOrEqual(18)
    expect(told.length).toBeGreaterThan(new Set(told).size)
  })

  test('have room for every text, are small, and draw each load by its lengths', () => {
    for (const desk of firsts) {
      const names = [
        ...desk.design.lifts.map(({id}) => `lift:${id}`),
        ...(desk.design.lowering ? ['lowering', 'raising'] : []),
      ]
      for (const name of names) {
        const {picture, data} = figureOf(name, desk)
        const {svg} = picture
        expectRoomForTexts(picture)
        expectInside(svg)
        expect(svg).not.toMatch(/NaN|undefined/u)
        expect(svg.length).toBeLessThan(7000)
        expect(data, `${desk.design.id} ${name}`).toContain('has no dimension here is not to scale')
      }
    }
  })
})
