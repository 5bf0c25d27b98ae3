import type {Place} from '../messages/place.ts'
import type {Localised, Reference} from './datum.ts'

/** How a material stands up to a cargo, from good to bad; what nobody knows is the last word, and never a good one. */
export const suitabilityWords = ['suitable', 'limited', 'not-suitable', 'unknown'] as const

export type SuitabilityWord = (typeof suitabilityWords)[number]

/** A row of tables/materials.csv. */
export interface Material {
  readonly id: string
  readonly title: string
  readonly place: Place
}

/** A row of tables/suitability.csv: one material in one cargo. */
export interface Suitability {
  readonly material: Reference
  readonly cargo: Reference
  readonly word: SuitabilityWord
  /** Up to which limit, or why. */
  readonly note: string
  readonly place: Place
}

/** Parts of a design that the cargo wets, of one material: the design states it, or each pump does as fitted. */
export interface WettedParts {
  readonly id: string
  readonly title: Localised
  /** Undefined where it is a matter of what was fitted last. */
  readonly material?: Reference
  readonly place: Place
}

/** The material of wetted parts as fitted in one pump. `material` undefined is "not known", with the reason. */
export interface FittedMaterial {
  readonly parts: Reference
  readonly material: Reference | undefined
  readonly reason?: string
}
