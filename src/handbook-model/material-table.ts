import type {SuitabilityWord} from './material-content.ts'

/** Each cargo of the vessel's list against each wetted material of a pump. */
export interface MaterialTable {
  readonly parts: readonly WettedLine[]
  readonly cargoes: readonly SuitabilityLine[]
  /** Where the words come from and how they are known; no part of what is ordered. */
  readonly source: string
}

export interface WettedLine {
  readonly id: string
  readonly title: string
  /** The material, or NOT KNOWN with the reason. */
  readonly material: string
  readonly known: boolean
}

/** A cargo against all wetted materials, and what follows from the worst of them. */
export interface SuitabilityLine {
  readonly id: string
  readonly title: string
  readonly cells: readonly SuitabilityCell[]
  readonly outcome: SuitabilityWord
  readonly result: string
}

export interface SuitabilityCell {
  readonly outcome: SuitabilityWord
  readonly text: string
  readonly note: string
}
