import type {z} from 'zod'
import {
  type Approval,
  type DeclaredChange,
  type EndedUrgent,
  signatureRoles,
  type Withdrawal,
} from '../../handbook-model/approval-content.ts'
import {date, fields, leaf, list, oneOf, reference, refuse, text} from './placed-shape.ts'

/** SHA-256 as the tool writes it. */
const hash = leaf.transform((scalar, context) =>
  /^[0-9a-f]{64}$/u.test(scalar.text)
    ? scalar.text
    : refuse(context, `Unexpected \`${scalar.text}\`, expected a hash of 64 digits and letters a to f`, {
        ruleId: 'no-wrong-shape',
        place: scalar.place,
        note: 'Let `sheetanchor approve` write it, or copy it from what `check` says',
      }),
)

const approval: z.ZodType<Approval> = fields({
  file: text,
  hash,
  signatures: list(fields({role: oneOf(signatureRoles), by: reference, date, statement: text})),
})

/** approvals.yaml. */
export const approvalsShape = fields({approvals: list(approval)})

const change: z.ZodType<DeclaredChange> = fields({
  file: text,
  hash,
  class: oneOf(['technical', 'editorial']),
  reason: text,
  'reviewed-by': reference.optional(),
})

const withdrawal: z.ZodType<Withdrawal> = fields({
  page: text,
  reason: text,
  'replaced-by': reference.optional(),
})

const ended: z.ZodType<EndedUrgent> = fields({urgent: reference, reason: text, 'reviewed-by': reference})

/** changes.yaml. */
export const changesShape = fields({
  changes: list(change).optional(),
  withdrawn: list(withdrawal).optional(),
  ended: list(ended).optional(),
}).transform((all) => ({
  changes: all.changes ?? [],
  withdrawn: all.withdrawn ?? [],
  ended: all.ended ?? [],
}))
