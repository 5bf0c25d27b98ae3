import {describe, expect, test} from 'vitest'
import {boundFigure} from '../../src/compile/bound-figure.ts'
import {desksOfVessel, type PumpDesk} from '../../src/compile/desk.ts'
import {jobPage} from '../../src/compile/job-page.ts'
import {positionPage} from '../../src/compile/position-page.ts'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import {valuesShown} from '../../src/compile/values-shown.ts'
import type {BoundFigure, IsolationLine, ProcedurePage} from '../../src/handbook-model/pages.ts'
import type {Procedure} from '../../src/handbook-model/procedure.ts'
import type {IsolationRole} from '../../src/handbook-model/vessel-content.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {place} from '../compile/data-for-tests.ts'
import {procedure, section, step} from '../compile/procedures-for-tests.ts'
import {demonstration} from '../content/demonstration.ts'
import {expectRoomForTexts} from './room-for-texts.ts'

const {content, values} = await demonstration()
const desks = [...content.vessels.keys()].flatMap((vessel) =>
  desksOfVessel(content, values, vessel).filter((desk) => desk.tank),
)

function deskOf(vessel: string, position: string): PumpDesk {
  const desk = desks.find((one) => one.vessel.id === vessel && one.position.id === position)
  if (!desk) throw new Error(`Unexpected pump ${vessel}/${position}, expected one in a tank`)
  return desk
}

function procedureOf(id: string): Procedure {
  const found = content.procedures.get(id)
  if (!found) throw new Error(`Unexpected procedure ${id}, expected one of the demonstration`)
  return found
}

function pageOf(id: string, desk: PumpDesk): ProcedurePage {
  return procedurePage(procedureOf(id), desk)
}

function figureOf(name: string, id: string, desk: PumpDesk): BoundFigure {
  return boundFigure('a', name, 'Figure', desk, procedureOf(id))
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

  test('stand between their own two spaces, the single lip looking down at the cofferdam', () => {
    const told = ['cargo-seal', 'cargo-seal-single', 'single-lip'].map(
      (seal) => figureOf(`seal-orientation:${seal}`, 'cargo-seal', deskOf('vessel-a', '4s')).data,
    )
    expect(told).toEqual([
      'In the pump cargo below, cofferdam above; 1 lip at the wet end: open edge looks at the cargo; 2 second lip: open edge looks at the cofferdam.',
      'In the pump cargo below, cofferdam above; 1 lip at the wet end: open edge looks at the cargo.',
      'In the pump cofferdam below, oil above; 1 lip above the cofferdam: open edge looks at the cofferdam.',
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
    expect(before).toContain('2 second lip: open edge looks at the cofferdam')
    expect(after).toContain('2 second lip: open edge looks at the cargo')
    const [drawn, drawnTurned] = [desk, turned].map(
      (one) => figureOf('seal-orientation:cargo-seal', 'cargo-seal', one).picture.svg,
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
    const {picture} = figureOf('seal-orientation:cargo-seal', 'cargo-seal', deskOf(vessel, position))
    expect(picture.svg).toContain(`viewBox="0 0 1200 ${240 + 480 * share}"`)
  })
})

/** Number and tag of each point, as a drawing tells them. */
function drawnPoints({picture}: BoundFigure): readonly string[] {
  return [
    ...picture.alternative.matchAll(/(\d+) ([^,;:()]+) \((?:valve|blind|fuse|relief valve|plug), /gu),
  ].map(([, number, tag]) => `${number} ${tag}`)
}

/** Number and tag of each point, as a list prints them. */
function listed(lines: readonly IsolationLine[]): readonly string[] {
  return lines.flatMap(({number, tag}) => (tag === '' ? [] : [`${number} ${tag}`]))
}

const isolated = (desk: PumpDesk): BoundFigure => figureOf('isolation-lines:isolated', 'isolation', desk)
const restored = (desk: PumpDesk): BoundFigure => figureOf('isolation-lines:restored', 'restoration', desk)

/** A pump whose points of one role are others. */
function withRole(desk: PumpDesk, role: string, change: (one: IsolationRole) => IsolationRole): PumpDesk {
  const isolation = desk.position.isolation.map((one) => (one.role === role ? change(one) : one))
  return {...desk, position: {...desk.position, isolation}}
}

describe('the isolation lines of each pump', () => {
  test('carry the numbers of the printed lists: of the pump, of its jobs, at the steps of the procedure', () => {
    expect(desks).toHaveLength(58)
    for (const desk of desks) {
      const pump = `${desk.vessel.id} ${desk.position.id}`
      const whole = positionPage(desk).isolation
      const lines = whole.filter(({role}) => !/^temporary|^transport/u.test(role))
      const points = drawnPoints(isolated(desk))
      expect(points, pump).toEqual(listed(lines))
      expect(drawnPoints(restored(desk)), pump).toEqual(points)
      expect(listed(whole).map((one) => Number.parseInt(one, 10))).toEqual(
        listed(whole).map((_, index) => index + 1),
      )
      for (const job of content.jobs.values())
        for (const one of listed(jobPage(job, desk).isolation)) expect(listed(whole), pump).toContain(one)
      const steps = pageOf('isolation', desk).sections.flatMap(({items}) =>
        items.flatMap((item) => (item.kind === 'step' ? item.parts : [])),
      )
      const atSteps = steps.flatMap((part) => (part.kind === 'isolate' ? listed(part.points) : []))
      expect(atSteps.length).toBeGreaterThanOrEqual(8)
      for (const one of atSteps) expect(points, pump).toContain(one)
    }
  }, 60_000)

  test('have room for every text, are small, and leave no state of a point open', () => {
    for (const desk of desks)
      for (const {picture, data} of [isolated(desk), restored(desk)]) {
        expectRoomForTexts(picture)
        expect(picture.svg.length).toBeLessThan(8_000)
        expect(data).not.toContain('see its words')
      }
  })

  test('stand on the pages of isolation and restoration, each in its own state', () => {
    const desk = deskOf('vessel-c', '2p')
    const shown = ['isolation', 'restoration'].flatMap((id) =>
      figuresOf(pageOf(id, desk)).map(({step, figure}) => [step, figure.data]),
    )
    expect(shown).toEqual([
      ['isolation--find-points', isolated(desk).data],
      ['restoration--read-drawing', restored(desk).data],
    ])
    expect(isolated(desk).data).toContain('isolated: 1 P1 2P valve closed; 2 R1 2P valve closed;')
    expect(isolated(desk).data).toContain('4 F 2P fuse drawn;')
    expect(restored(desk).data).toContain('restored: 1 P1 2P valve open; 2 R1 2P valve open;')
    expect(restored(desk).data).toContain('4 F 2P fuse in; 5 D 2P valve closed;')
    for (const figure of [isolated(desk), restored(desk)])
      expect(figure.picture.alternative).toContain('15 G3 2P (relief valve, stays: fitted, seal wire whole)')
    expect(isolated(desk).picture.alternative).toContain(
      '8 G1 2P (valve, closed, hose taken off and cap fitted, locked)',
    )
    expect(restored(desk).picture.alternative).toContain(
      '8 G1 2P (valve, left closed, cap off, hose on, lock off)',
    )
  })

  test('say why a role has no point, and what seals a blind', () => {
    expect(isolated(deskOf('vessel-b', 'slop-p')).picture.alternative).toContain(
      'heating: none on this pump, The slop tanks have no coils; tank cleaning: none on this pump, No fixed',
    )
    expect(isolated(deskOf('vessel-b', '5p')).picture.alternative).toContain(
      'WB 5P (blind, blind flange bolted on, sealed)',
    )
  })

  test('move text and drawing when a second valve, another tag or kind comes, or a point goes', () => {
    const desk = deskOf('vessel-c', '2p')
    const changes: Readonly<Record<string, PumpDesk>> = {
      'a second valve': withRole(desk, 'pressure', (role) => ({
        ...role,
        points: role.points.flatMap((one) => [one, {...one, id: 'second', tag: 'P9'}]),
      })),
      'another tag': withRole(desk, 'pressure', (role) => ({
        ...role,
        points: role.points.map((one) => ({...one, tag: 'P8'})),
      })),
      'another kind': withRole(desk, 'cofferdam-vent', (role) => ({
        ...role,
        points: role.points.map((one) => ({...one, kind: 'valve' as const})),
      })),
      'a point less': withRole(desk, 'pilot', (role) => ({...role, points: role.points.slice(0, 1)})),
    }
    const text = (one: PumpDesk): string => technicalText(pageOf('isolation', one), 'Vessel')
    for (const [what, changed] of Object.entries(changes)) {
      expect(text(changed), what).not.toBe(text(desk))
      expect(isolated(changed).data, what).not.toBe(isolated(desk).data)
      expect(drawing(isolated(changed)), what).not.toBe(drawing(isolated(desk)))
    }
    expect(isolated(changes['a point less'] ?? desk).data).toContain(
      '3 X1 2P valve closed; 4 D 2P valve closed;',
    )
  })
})

function drawing({picture}: BoundFigure): string {
  return `${picture.svg}${picture.own?.svg}`
}
