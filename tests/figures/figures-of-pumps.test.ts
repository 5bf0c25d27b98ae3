import {describe, expect, test} from 'vitest'
import {boundFigure} from '../../src/compile/bound-figure.ts'
import {desksOfVessel, type PumpDesk} from '../../src/compile/desk.ts'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import {valuesShown} from '../../src/compile/values-shown.ts'
import type {BoundFigure, ProcedurePage} from '../../src/handbook-model/pages.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {place} from '../compile/data-for-tests.ts'
import {procedure, section, step} from '../compile/procedures-for-tests.ts'
import {demonstration} from '../content/demonstration.ts'

const {content, values} = await demonstration()
const desks = [...content.vessels.keys()].flatMap((vessel) =>
  desksOfVessel(content, values, vessel).filter((desk) => desk.tank),
)

function deskOf(vessel: string, position: string): PumpDesk {
  const desk = desks.find((one) => one.vessel.id === vessel && one.position.id === position)
  if (!desk) throw new Error(`Unexpected pump ${vessel}/${position}, expected one in a tank`)
  return desk
}

function pageOf(id: string, desk: PumpDesk): ProcedurePage {
  const procedure = content.procedures.get(id)
  if (!procedure) throw new Error(`Unexpected procedure ${id}, expected one of the demonstration`)
  return procedurePage(procedure, desk)
}

function figuresOf(page: ProcedurePage): readonly {readonly step: string; readonly figure: BoundFigure}[] {
  return page.sections.flatMap(({items}) =>
    items.flatMap((item) =>
      item.kind === 'step'
        ? item.parts.flatMap((part) => (part.kind === 'figure' ? [{step: item.id, figure: part.figure}] : []))
        : [],
    ),
  )
}

describe('the seals of a pump', () => {
  const shown = (desk: PumpDesk): readonly string[] =>
    figuresOf(pageOf('cargo-seal', desk)).flatMap(({step, figure: {id}}) =>
      id.includes('seal-orientation') ? [`${step} ${id}`] : [],
    )

  test('are drawn at the steps that press them, one lip where the pump has one', () => {
    const holder = 'cargo-seal--press-holder-lip cargo-seal--seal-orientation-single-lip'
    expect(shown(deskOf('vessel-c', '2p'))).toEqual([
      'cargo-seal--press-second-lip cargo-seal--seal-orientation-cargo-seal',
      holder,
    ])
    expect(shown(deskOf('vessel-c', 'slop-p'))).toEqual([
      'cargo-seal--press-lone-lip cargo-seal--seal-orientation-cargo-seal-single',
      holder,
    ])
  })

  test('are technical text: a lip that is turned in the data moves the text of the page', () => {
    const desk = deskOf('vessel-a', '4s')
    const turned = {
      ...desk,
      design: {
        ...desk.design,
        seals: desk.design.seals.map((seal) => ({
          ...seal,
          lips: seal.lips.map((lip) =>
            lip.id === 'cofferdam-lip' ? {...lip, faces: 'cargo' as const} : lip,
          ),
        })),
      },
    }
    const [before, after] = [desk, turned].map((one) =>
      technicalText(pageOf('cargo-seal', one), one.vessel.name.en),
    )
    expect(before).toContain('2 second lip: open edge up, looks at the cofferdam')
    expect(after).toContain('2 second lip: open edge down, looks at the cargo')
    const [drawn, drawnTurned] = [desk, turned].map(
      (one) => boundFigure('a', 'seal-orientation:cargo-seal', 'Seal', one).svg,
    )
    expect(drawn).not.toBe(drawnTurned)
  })

  test('count as shown values with the directions of their lips', () => {
    const figure = {kind: 'figure' as const, figure: 'seal-orientation:single-lip', caption: 'Lip', place}
    const made = procedure('lips', [section('one', [step('a', {parts: [figure]})])])
    expect(valuesShown(made, deskOf('vessel-a', '4s')).map(({value}) => value)).toEqual(['single-lip.lips'])
  })

  test.each([
    ['large', 'vessel-a', '4s', 1],
    ['small', 'vessel-b', '1p', 0.75],
  ])('of a %s pump are drawn by their depth in the seat', (_, vessel, position, share) => {
    const {svg} = boundFigure('a', 'seal-orientation:cargo-seal', 'Seal', deskOf(vessel, position))
    expect(svg).toContain(`viewBox="0 0 1200 ${240 + 480 * share}"`)
  })
})
