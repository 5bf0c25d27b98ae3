import type {Place} from '../messages/place.ts'
import type {Reference} from './datum.ts'

/** trials.yaml: that a procedure was tried on board, where, when, and by which role; never by whom. */
export interface Trial {
  readonly procedure: Reference
  readonly vessel: Reference
  /** Pump on which it was tried; left out where the procedure serves the whole ship. */
  readonly position?: Reference
  readonly date: string
  readonly role: Reference
  /** What came of it. */
  readonly result: string
  readonly place: Place
}
