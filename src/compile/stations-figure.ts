import type {CutDesk} from '../figures/stations/cut.ts'
import {cutDesk, stationCut} from '../figures/stations/station-cuts.ts'
import {type StationPanel, stationsFigure} from '../figures/stations/stations-figure.ts'
import type {StationsFigure} from '../figures/stations/view.ts'
import type {Design} from '../handbook-model/design-content.ts'
import {onceForEach} from '../handbook-model/once-for-each.ts'
import type {Procedure, Reading} from '../handbook-model/procedure.ts'
import {
  isStationPlace,
  type Station,
  type StationPlace,
  stationOf,
  stationPlaces,
  writtenStations,
} from '../handbook-model/station-places.ts'
import {found, type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {boundRig, isRigPlace, type RigPlace} from './rig-figure.ts'
import {sectionBasis} from './section-of-pump.ts'
import {stationsWordsEn as words} from './stations-words-en.ts'

/** The figure of stations that a procedure names, drawn for this pump. */
export function stationsOfPump(name: string, procedure: Procedure, desk: PumpDesk): StationsFigure {
  const written = writtenStations(name)
  if (written.some(({place}) => isRigPlace(place)))
    return boundRig(
      written.map(({reading, place}) => ({reading: readingOf(reading, procedure), place})),
      desk,
    )
  const panels = written.map(({reading, place}) =>
    panelOf(readingOf(reading, procedure), partPlace(place), desk),
  )
  const cuts = cutsOf(desk)
  const drawn = cuts && figuresOfCuts(cuts)
  const told = panels.map(({alternative}) => alternative).join('. ')
  const before = drawn?.get(told)
  if (before) return before
  const figure = stationsFigure(panels, words.drawing)
  drawn?.set(told, figure)
  return figure
}

/** Outlines that were computed, by design and what is fitted: pumps alike share them. */
const cutsOfDesign = onceForEach((_: Design) => new Map<string, CutDesk | undefined>())

/** Figures that were drawn, by all that they tell: pumps alike share them. */
const figuresOfCuts = onceForEach((_: CutDesk) => new Map<string, StationsFigure>())

function cutsOf(desk: PumpDesk): CutDesk | undefined {
  const known = cutsOfDesign(desk.design)
  const fitted = `${desk.facts.get('wear-ring-fit')} ${desk.facts.get('cargo-seal')}`
  if (!known.has(fitted)) {
    const basis = sectionBasis(desk)
    known.set(fitted, basis && cutDesk(basis.geometry, basis.variant))
  }
  return known.get(fitted)
}

function readingOf(id: string, {sections}: Procedure): Reading {
  const readings = sections.flatMap(({items}) =>
    items.flatMap((item) =>
      item.kind === 'step' ? item.parts.flatMap((part) => (part.kind === 'reading' ? [part] : [])) : [],
    ),
  )
  return found(
    readings.find((one) => one.id === id),
    `reading ${id}`,
  )
}

type PartPlace = Exclude<StationPlace, RigPlace>

function partPlace(word: string): PartPlace {
  return found(isStationPlace(word) && !isRigPlace(word) ? word : undefined, `place ${word}`)
}

function panelOf(reading: Reading, place: PartPlace, desk: PumpDesk): StationPanel {
  const {kind, values} = stationPlaces[place]
  const cuts = cutsOf(desk)
  const cut = cuts && stationCut(place, cuts)
  const seenFrom = cut?.seenFrom ?? 'suction'
  const stations = reading.stations.map((name): Station => found(stationOf(name), `station ${name}`))
  const planes = [...new Set(stations.map(({plane}) => plane))]
  const directions = [
    ...new Set(stations.flatMap(({direction}) => (direction === undefined ? [] : [`${direction}°`]))),
  ]
  const instrument = found(desk.content.tools.get(reading.instrument.id), `tool ${reading.instrument.id}`)
    .title.en
  const counts = words.counts[seenFrom === 'suction' ? 1 : -1]
  const dimension = `Ø ${printedValue(pumpValue(desk, values[0]))}`
  const facts = {
    title: reading.title,
    part: words.parts[place],
    kind,
    count: stations.length,
    planes: kind === 'dial' ? [] : planes,
    directions,
    seenFrom: words.seenFrom[seenFrom],
    counts,
    instrument,
  }
  const told = words.told(facts)
  return {
    view: {
      kind,
      title: reading.title,
      stations,
      notes: [instrument, words.seenFrom[seenFrom], ...(directions.length > 1 ? [counts] : [])],
    },
    planes: facts.planes,
    cut,
    seenFrom,
    part: words.parts[place],
    dimension,
    told,
    alternative: `${told}; ${dimension}; ${words.stations(reading.stations)}`,
  }
}
