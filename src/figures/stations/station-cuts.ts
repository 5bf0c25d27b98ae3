import {levelsOf} from '../section/levels.ts'
import {sectionOutlines} from '../section/outlines.ts'
import type {SectionGeometry, SectionVariant} from '../section/section-geometry.ts'
import type {CutDesk, StationCut} from './cut.ts'
import {motorCuts} from './motor-cuts.ts'
import {wetCuts} from './wet-cuts.ts'

const cuts = {...wetCuts, ...motorCuts}

/** A place of the pump whose section and view are drawn from its geometry. */
export type CutPlace = keyof typeof cuts

/** What the cuts of pumps alike are made from. */
export function cutDesk(geometry: SectionGeometry, variant: SectionVariant): CutDesk {
  return {g: geometry, at: levelsOf(geometry), outlines: sectionOutlines(geometry, variant)}
}

/** The part of a pump at which the stations of a place lie. */
export function stationCut(place: CutPlace, desk: CutDesk): StationCut {
  return cuts[place](desk)
}
