import {
  type Approval,
  authorityOfRole,
  type DeclaredChange,
  type EndedUrgent,
} from '../../handbook-model/approval-content.ts'
import type {Office} from '../../handbook-model/office-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {refersTo} from '../identity.ts'

/**
 * A signature is by a person of the office with the authority for it, and each source has as many people as signatures.
 *
 * Accepted: `role: approver` by a person who may `approve` and has signed nothing else of this source.
 * Rejected: the same by its author.
 */
export function noUnfitSignature(
  signed: {
    readonly approvals: readonly Approval[]
    readonly changes: readonly DeclaredChange[]
    readonly ended: readonly EndedUrgent[]
  },
  office: Office,
  files: ContentFiles,
): void {
  for (const approval of signed.approvals) noUnfitApproval(approval, office, files)
  const reviewers = new Set(office.people.flatMap(({id, may}) => (may.includes('review') ? [id] : [])))
  for (const {reviewedBy} of signed.ended) refersTo(reviewedBy, reviewers, 'person who may review', files)
  for (const change of signed.changes) {
    if (change.class === 'technical') continue
    if (change.reviewedBy) refersTo(change.reviewedBy, reviewers, 'person who may review', files)
    else
      addMessage(
        files,
        change.place,
        'no-disguised-change',
        `Unexpected editorial change of \`${change.file}\` without a reviewer, expected \`reviewed-by:\``,
        {note: 'Let a person who may review confirm that wording alone changed'},
      )
  }
}

function noUnfitApproval({file, signatures}: Approval, office: Office, files: ContentFiles): void {
  const people = new Map(office.people.map((person) => [person.id, person]))
  const known = {has: (id: string) => people.has(id), keys: () => people.keys()}
  for (const [index, signature] of signatures.entries()) {
    if (!refersTo(signature.by, known, 'person', files)) continue
    const before = signatures.slice(0, index)
    const own = before.find(({by}) => by.id === signature.by.id)
    const twice = before.find((one) => one.role === signature.role)
    if (own ?? twice) {
      addMessage(
        files,
        signature.by.place,
        'no-own-approval',
        own
          ? `Unexpected \`${signature.by.id}\` as ${signature.role} of \`${file}\` and as its ${own.role}, expected another person`
          : `Unexpected second ${signature.role} of \`${file}\`, expected one`,
        {
          note: own ? 'Let another person sign' : 'Take one of the two signatures out',
          cause: (own ?? signature).place,
        },
      )
    }
    const authority = authorityOfRole[signature.role]
    if (people.get(signature.by.id)?.may.includes(authority)) continue
    addMessage(
      files,
      signature.by.place,
      'no-unauthorised-signature',
      `Unexpected \`${signature.by.id}\` as ${signature.role} of \`${file}\`, expected a person who may \`${authority}\``,
      {
        note: 'Let a person with the authority sign, or give it in office.yaml',
        ...(people.get(signature.by.id)
          ? {cause: people.get(signature.by.id)?.place ?? signature.place}
          : {}),
      },
    )
  }
}
