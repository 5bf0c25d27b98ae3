import {stationsWordsEn} from '../../../src/compile/stations-words-en.ts'
import type {SectionGeometry} from '../../../src/figures/section/section-geometry.ts'
import {type CutPlace, cutDesk, stationCut} from '../../../src/figures/stations/station-cuts.ts'
import {type StationPanel, stationsFigure} from '../../../src/figures/stations/stations-figure.ts'
import type {StationsFigure} from '../../../src/figures/stations/view.ts'
import {type Station, stationOf, stationPlaces} from '../../../src/handbook-model/station-places.ts'
import {doubleLip, geometry} from '../section/section-for-tests.ts'

export const ringStations = ['a 0°', 'a 60°', 'a 120°', 'b 0°', 'b 60°', 'b 120°'] as const

/** A reading of these stations at a place of the invented pump. */
export function panel(
  place: CutPlace,
  names: readonly string[],
  more: {readonly geometry?: SectionGeometry; readonly title?: string; readonly unknown?: true} = {},
): StationPanel {
  const stations = names.map(stationOf).filter((one): one is Station => one !== undefined)
  const cut = stationCut(place, cutDesk(more.geometry ?? geometry, doubleLip))
  const {kind} = stationPlaces[place]
  return {
    view: {kind, title: more.title ?? 'bore of the ring', stations, notes: ['inside micrometer']},
    planes: kind === 'dial' ? [] : [...new Set(stations.map(({plane}) => plane))],
    cut: more.unknown ? undefined : cut,
    seenFrom: cut.seenFrom,
    part: stationsWordsEn.parts[place],
    dimension: 'Ø 210 mm',
    told: `${names.length} stations`,
    alternative: stationsWordsEn.stations(names),
  }
}

export function drawn(...panels: readonly StationPanel[]): StationsFigure {
  return stationsFigure(panels, stationsWordsEn.drawing)
}

/** How far a station lies from the outline that it belongs to. */
export function distanceFromOutline({at, outline}: StationsFigure['placed'][number][number]): number {
  if ('x' in outline) return Math.abs(at[0] - outline.x)
  return Math.abs(Math.hypot(at[0] - outline.middle[0], at[1] - outline.middle[1]) - outline.radius)
}

/** Places of the solid dots of a drawing. */
export function dotsOf({svg}: Pick<StationsFigure, 'svg'>): readonly string[] {
  return [...svg.matchAll(/<circle class="solid" cx="([\d.]+)" cy="([\d.]+)" r="8"/gu)].map(
    ([, x, y]) => `${x} ${y}`,
  )
}

/** A place as the drawing writes it. */
export function written([x, y]: readonly [number, number]): string {
  return [x, y].map((one) => String(Math.round(one * 10) / 10)).join(' ')
}

/** Radii of the circles of a kind. */
export function radiiOf({svg}: Pick<StationsFigure, 'svg'>, kind: string): readonly number[] {
  return [
    ...svg.matchAll(new RegExp(`<circle class="${kind}" cx="[\\d.]+" cy="[\\d.]+" r="([\\d.]+)"`, 'gu')),
  ].map(([, r]) => Number(r))
}
