import {describe, expect, test} from 'vitest'
import {boundFigure} from '../../../src/compile/bound-figure.ts'
import {desksOfVessel, type PumpDesk} from '../../../src/compile/desk.ts'
import {procedurePage} from '../../../src/compile/procedure-page.ts'
import {stationsOfPump} from '../../../src/compile/stations-figure.ts'
import {valuesShown} from '../../../src/compile/values-shown.ts'
import {serves} from '../../../src/conditions/serves.ts'
import type {Design} from '../../../src/handbook-model/design-content.ts'
import type {Procedure, StepPart} from '../../../src/handbook-model/procedure.ts'
import {valuesBehindStations, writtenStations} from '../../../src/handbook-model/station-places.ts'
import {technicalText} from '../../../src/technical-text/technical-text.ts'
import {demonstration} from '../../content/demonstration.ts'
import {expectRoomForTexts} from '../room-for-texts.ts'
import {textsOf} from '../svg-for-tests.ts'
import {distanceFromOutline, dotsOf, written} from './panels-for-tests.ts'

const {content, values} = await demonstration()
const desks = [...content.vessels.keys()].flatMap((vessel) => desksOfVessel(content, values, vessel))

/** Every figure of stations that a procedure shows, with the readings of that procedure. */
const shown = [...content.procedures.values()].flatMap((procedure) => {
  const parts = partsOf(procedure)
  const readings = new Map(
    parts.flatMap((part) => (part.kind === 'reading' ? [[part.id, part] as const] : [])),
  )
  return parts.flatMap((part) =>
    part.kind === 'figure' && part.figure.startsWith('stations:')
      ? [{procedure, name: part.figure, readings}]
      : [],
  )
})

function partsOf({sections}: Procedure): readonly StepPart[] {
  return sections.flatMap(({items}) => items.flatMap((item) => (item.kind === 'step' ? item.parts : [])))
}

function deskOf(vessel: string, position: string): PumpDesk {
  const desk = desks.find((one) => one.vessel.id === vessel && one.position.id === position)
  if (!desk) throw new Error(`Unexpected pump ${vessel}/${position}, expected one`)
  return desk
}

function procedureOf(id: string): Procedure {
  const found = content.procedures.get(id)
  if (!found) throw new Error(`Unexpected procedure ${id}, expected one`)
  return found
}

/** The pump with one length of its design changed. */
function withDesign(desk: PumpDesk, change: (design: Design) => Partial<Design>): PumpDesk {
  return {...desk, design: {...desk.design, ...change(desk.design)}}
}

function longer(desk: PumpDesk, id: string, by: number): PumpDesk {
  return withDesign(desk, ({geometry}) => ({
    geometry: geometry.map((one) =>
      one.id === id && one.value.kind === 'known'
        ? {
            ...one,
            value: {...one.value, quantity: {...one.value.quantity, si: one.value.quantity.si + by / 1000}},
          }
        : one,
    ),
  }))
}

const impeller = 'stations:lower-hub-found+upper-hub-found:eye+back'
const rings = 'stations:lower-bore-found+upper-bore-found:lower-ring+upper-ring'
const rig = 'stations:start-pressure+start-temperature:test-gauge+stack-pipe'
const pump = deskOf('vessel-a', '4s')

describe('every figure of stations on every pump', () => {
  test('there are some on at least nine procedures, the wear rings among them', () => {
    const procedures = new Set(shown.map(({procedure}) => procedure.id))
    expect(procedures.size).toBeGreaterThanOrEqual(9)
    expect(procedures).toContain('wear-rings')
    expect(procedures).toContain('tightness-test')
  })

  test('draws each station of its readings once, under the name of its box, on the outline', () => {
    let drawn = 0
    for (const {procedure, name, readings} of shown)
      for (const desk of desks.filter(({facts}) => serves(procedure, facts))) {
        const figure = stationsOfPump(name, procedure, desk)
        const what = `${procedure.id} ${name} ${desk.vessel.id}/${desk.position.id}`
        const stations = writtenStations(name).map(({reading}) => readings.get(reading)?.stations ?? [])
        const placed = figure.placed.flat()
        expect(
          placed.map((one) => one.name),
          what,
        ).toEqual(stations.flat())
        for (const one of placed) expect(distanceFromOutline(one), `${what} ${one.name}`).toBeLessThan(0.5)
        const dots = dotsOf(figure)
        expect(new Set(dots), what).toEqual(new Set(placed.map(({at}) => written(at))))
        for (const names of stations)
          for (const [index, station] of names.entries())
            expect(figure.alternative, `${what} ${index}`).toMatch(
              new RegExp(`\\d ${station}(?:[,;.]|$)`, 'u'),
            )
        drawn += 1
      }
    expect(drawn).toBeGreaterThan(500)
  })

  test('has room for its texts, is small, and its numbers and names are all there', () => {
    const seen = new Set<string>()
    for (const {procedure, name, readings} of shown)
      for (const desk of desks.filter(({facts}) => serves(procedure, facts))) {
        const figure = stationsOfPump(name, procedure, desk)
        if (seen.has(figure.svg)) continue
        seen.add(figure.svg)
        expectRoomForTexts(figure)
        expect(figure.svg.length, name).toBeLessThan(8_000)
        expect(figure.svg, name).not.toMatch(/NaN|undefined/u)
        const texts = textsOf(figure.svg).map(({text}) => text)
        const stations = writtenStations(name).flatMap(({reading}) => readings.get(reading)?.stations ?? [])
        for (const station of stations) {
          const long = texts.includes(station) ? [station] : [...station.split(/ (?=\d+°$)/u)]
          for (const word of long) expect(texts, `${name} ${station}`).toContain(word)
        }
      }
    expect(seen.size).toBeGreaterThan(30)
  })

  test('names its readings, planes, directions, way, side and instrument in its data', () => {
    expect(stationsOfPump(rings, procedureOf('wear-rings'), pump).data).toBe(
      'bore of the lower ring (suction cover, ring side up): 6 stations; planes a, b from the suction side on; diameters at 0°, 60°, 120°; degrees against the clock, seen from the motor side; inside micrometer with rods. bore of the upper ring (casing, suction side up): 6 stations; planes a, b from the suction side on; diameters at 0°, 60°, 120°; degrees with the clock, seen from the suction side; inside micrometer with rods.',
    )
    expect(stationsOfPump(impeller, procedureOf('wear-rings'), pump).alternative).toContain(
      'Ø 210 mm; stations in the order of the boxes 1 a 0°, 2 a 60°, 3 a 120°, 4 b 0°, 5 b 60°, 6 b 120°',
    )
  })

  test('counts its values as shown, each once', () => {
    const ids = valuesShown(procedureOf('wear-rings'), pump).map(({value}) => value)
    expect(ids).toEqual(expect.arrayContaining([...valuesBehindStations(impeller)]))
    expect(valuesBehindStations(impeller)).toEqual([
      'lower-ring.running-diameter',
      'geometry.impeller-diameter',
      'upper-ring.running-diameter',
    ])
    const bound = boundFigure('a', impeller, 'Impeller', pump, procedureOf('wear-rings'))
    expect(bound.values.map(({figure}) => figure)).toEqual(['210', '386', '190'])
  })
})

describe('a change of the design', () => {
  const placesOf = (name: string, procedure: string, desk: PumpDesk): readonly string[] =>
    stationsOfPump(name, procedureOf(procedure), desk)
      .placed.flat()
      .map(({at}) => written(at))

  test('of the impeller diameter moves every station on the impeller that is not on the axis of its view', () => {
    const before = placesOf(impeller, 'wear-rings', pump)
    const after = placesOf(impeller, 'wear-rings', longer(pump, 'impeller-diameter', 40))
    expect(after.map((one, index) => one === before[index])).toEqual(before.map(() => false))
  })

  test('of the sleeve, the flange or the shaft moves its drawing', () => {
    const cases = [
      ['stations:sleeve-place-found:sleeve-end', 'sleeve', 'hub-diameter'],
      ['stations:hub-gap:hub', 'pump-unit-removal', 'shaft-diameter'],
      ['stations:lower-gap:head-flange', 'pump-unit-removal', 'motor-flange-diameter'],
      ['stations:length-found:oil-seal-length', 'oil-seal', 'shaft-diameter'],
      [rig, 'tightness-test', 'stack-diameter'],
    ] as const
    for (const [name, id, length] of cases) {
      const draw = (desk: PumpDesk): string => stationsOfPump(name, procedureOf(id), desk).svg
      expect(draw(longer(pump, length, 6)), name).not.toBe(draw(pump))
    }
  })

  test('of a value that the drawing shows is a change of the page and of the drawing', () => {
    const text = (desk: PumpDesk): string =>
      technicalText(procedurePage(procedureOf('wear-rings'), desk), 'Vessel')
    const ring = pump.values.get('lower-ring.running-diameter')
    if (ring?.result.kind !== 'known') throw new Error('Unexpected ring without a diameter, expected one')
    const other = {...ring, result: {...ring.result, printed: {...ring.result.printed, figure: '214'}}}
    const changed = {...pump, values: new Map([...pump.values, [ring.id, other]])}
    expect(text(pump)).not.toContain('214 mm')
    expect(text(changed)).toContain('214 mm')
    expect(stationsOfPump(impeller, procedureOf('wear-rings'), changed).svg).toContain('>Ø 214 mm<')
  })

  test('that takes a length away leaves the view, and says that the section is not known', () => {
    const without = withDesign(pump, ({geometry}) => ({
      geometry: geometry.filter(({id}) => id !== 'impeller-outlet'),
    }))
    const figure = stationsOfPump(impeller, procedureOf('wear-rings'), without)
    expect(
      textsOf(figure.svg)
        .map(({text}) => text)
        .join(' '),
    ).toContain('Section NOT KNOWN')
    expectRoomForTexts(figure)
    const noPipes = withDesign(pump, () => ({geometry: []}))
    const lines = textsOf(stationsOfPump(rig, procedureOf('tightness-test'), noPipes).svg)
    expect(lines.map(({text}) => text)).toContain('cofferdam: NOT KNOWN')
  })
})

describe('the test rig', () => {
  const figure = stationsOfPump(rig, procedureOf('tightness-test'), pump)

  test('names the points of this pump by their tags, in the state that the list gives', () => {
    expect(figure.data).toContain('Test rig on the flange of RV 4S (taken off, test rig in its place)')
    expect(figure.data).toContain('vent line VB 4S (blind with red handle fitted), behind it PO 4S (closed)')
    const texts = textsOf(figure.own ?? '').map(({text}) => text)
    expect(texts).toEqual(expect.arrayContaining(['RV 4S', 'VB 4S', 'PO 4S', 'PS 4S']))
    expect(stationsOfPump(rig, procedureOf('tightness-test'), deskOf('vessel-c', '2p')).data).toContain(
      'Test rig on the flange of G3 2P',
    )
  })

  test('has the gauge on the pump side of the shut-off valve, and thermometers on both walls of the stack', () => {
    const [gauge, port, starboard] = figure.placed.flat()
    expect(figure.placed.flat().map(({name}) => name)).toEqual(['test gauge', 'port side', 'starboard side'])
    const shutOff = textsOf(figure.svg).find(({text}) => text.startsWith('shut-off valve'))
    expect(gauge?.at[0]).toBeLessThan(shutOff?.left ?? 0)
    expect(port?.at[0]).toBeLessThan(starboard?.at[0] ?? 0)
    expect(figure.svg).toContain('>3.00 bar(g)<')
  })

  test('draws the blind as it is told: a vent that stays open is another drawing', () => {
    const open = {
      ...pump,
      position: {
        ...pump.position,
        isolation: pump.position.isolation.map((role) =>
          role.role === 'cofferdam-vent'
            ? {...role, points: role.points.map((point) => ({...point, isolated: point.normal}))}
            : role,
        ),
      },
    }
    const other = stationsOfPump(rig, procedureOf('tightness-test'), open)
    const lines = (svg: string): string => svg.replaceAll(/<text.*?<\/text>/gu, '')
    expect(lines(other.svg)).not.toBe(lines(figure.svg))
    expect(other.data).toContain('VB 4S (no blind, line to the purge outlet valve open)')
  })
})
