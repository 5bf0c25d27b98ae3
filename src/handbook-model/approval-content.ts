import type {Place} from '../messages/place.ts'
import type {Reference} from './datum.ts'

/** What a person signs a source as. */
export const signatureRoles = ['author', 'reviewer', 'approver'] as const

export type SignatureRole = (typeof signatureRoles)[number]

/** What a person of the office must be allowed to do to sign in a role. */
export const authorityOfRole = {author: 'write', reviewer: 'review', approver: 'approve'} as const

/** One person's word on a source. */
export interface Signature {
  readonly role: SignatureRole
  readonly by: Reference
  /** The day of the signature, named by the one who signs. */
  readonly date: string
  readonly statement: string
  readonly place: Place
}

/** approvals.yaml: who answers for a source as it reads now; bound to its hash, so that one changed letter ends it. */
export interface Approval {
  /** Path below the content folder. */
  readonly file: string
  /** SHA-256 of the text of the source with line feeds and without a byte-order mark. */
  readonly hash: string
  readonly signatures: readonly Signature[]
  readonly place: Place
}

/** changes.yaml: why a source changed since the last issue, and whether only its wording did; bound to its hash. */
export interface DeclaredChange {
  readonly file: string
  readonly hash: string
  readonly class: 'technical' | 'editorial'
  readonly reason: string
  /** Who has seen that nothing but wording changed; asked for with `editorial`. */
  readonly reviewedBy?: Reference
  readonly place: Place
}

/** changes.yaml: pages that are taken out of the handbooks, and what to use instead. */
export interface Withdrawal {
  /** A word of the page id behind its vessel: a procedure, or a pump whose pages all go. */
  readonly page: string
  readonly reason: string
  /** Procedure whose page stands in its place. */
  readonly replacedBy?: Reference
  readonly place: Place
}

/** changes.yaml: an urgent revision whose file is taken out, before its day or behind it. */
export interface EndedUrgent {
  /** `T-07`. */
  readonly urgent: Reference
  readonly reason: string
  /** Who has seen that the page may be read without it. */
  readonly reviewedBy: Reference
  readonly place: Place
}
