import {type RigPoint, type RigStation, rigFigure} from '../figures/stations/rig-figure.ts'
import type {StationsFigure} from '../figures/stations/view.ts'
import type {Datum} from '../handbook-model/datum.ts'
import type {Reading} from '../handbook-model/procedure.ts'
import {stationOf} from '../handbook-model/station-places.ts'
import type {IsolationRoleName} from '../handbook-model/vessel-content.ts'
import {valueIn} from '../quantities/print-quantity.ts'
import {found, type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {pointState, securedBy} from './point-state.ts'
import {stationsWordsEn as words} from './stations-words-en.ts'

/** Places of the drawing of the test rig. */
export type RigPlace = 'test-gauge' | 'stack-pipe'

/** Whether a place belongs to the drawing of the test rig. */
export function isRigPlace(word: string): word is RigPlace {
  return word === 'test-gauge' || word === 'stack-pipe'
}

/** The test rig on the top plate of this pump, with the stations of its readings and its isolation points by tag. */
export function boundRig(
  readings: readonly {readonly reading: Reading; readonly place: string}[],
  desk: PumpDesk,
): StationsFigure {
  const points = {
    supply: pointOf('purge-supply', desk),
    relief: pointOf('cofferdam-relief', desk),
    vent: pointOf('cofferdam-vent', desk),
    outlet: pointOf('purge-outlet', desk),
  }
  const stations = readings
    .flatMap(({reading, place}) => reading.stations.map((name) => ({name, at: sideOf(name, place)})))
    .map((one, index): RigStation => ({...one, number: index + 1}))
  const told = words.rigTold({
    points: {
      supply: toldPoint(points.supply),
      relief: toldPoint(points.relief),
      vent: toldPoint(points.vent),
      outlet: toldPoint(points.outlet),
    },
    stations: stations.map(({name}) => name),
    instruments: [
      ...new Set(
        readings.map(
          ({reading}) =>
            found(desk.content.tools.get(reading.instrument.id), `tool ${reading.instrument.id}`).title.en,
        ),
      ),
    ],
  })
  return rigFigure({
    points,
    stations,
    pressure: printedValue(pumpValue(desk, 'cofferdam.test-pressure')),
    pipes: pipesOf(desk),
    words: words.rig,
    alternative: `${words.rigView}. ${told}.`,
    data: `${told}.`,
  })
}

function sideOf(name: string, place: string): RigStation['at'] {
  return place === 'test-gauge' ? 'gauge' : stationOf(name)?.side === 'port' ? 'port' : 'starboard'
}

function toldPoint({tag, words: state}: RigPoint): string {
  return tag === '' ? state : `${tag} (${state})`
}

/** The first point of a role in its isolated state; what has none says so. */
function pointOf(role: IsolationRoleName, {position}: PumpDesk): RigPoint {
  const point = position.isolation.find((one) => one.role === role)?.points[0]
  if (!point) return {tag: '', kind: 'valve', state: 'either', locked: false, words: words.noPoint}
  return {
    tag: point.tag,
    kind: point.kind,
    state: pointState(point.kind, point.isolated.en),
    locked: securedBy(point.lock.en) === 'locked',
    words: point.isolated.en,
  }
}

/** Pipes of the stack in millimetres, or nothing where one of them is not known. */
function pipesOf({design}: PumpDesk): Parameters<typeof rigFigure>[0]['pipes'] {
  const {cofferdam} = design
  const stack = design.geometry.find(({id}) => id === 'stack-diameter')?.value
  const outside =
    stack?.kind === 'known' && stack.quantity.kind === 'length' ? valueIn(stack.quantity, 'mm') : undefined
  const bore = millimetres(cofferdam?.outerPipeBore)
  const inner = millimetres(cofferdam?.innerPipeOutside)
  return outside === undefined || bore === undefined || inner === undefined
    ? undefined
    : {outside, bore, inner}
}

function millimetres(datum: Datum<'length'> | undefined): number | undefined {
  return datum?.kind === 'known' ? valueIn(datum.quantity, 'mm') : undefined
}
