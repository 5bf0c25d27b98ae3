import {isDay} from '../../handbook-model/comparison-date.ts'
import {type Reference, valueStatuses} from '../../handbook-model/datum.ts'
import {fields, leaf, list, localised, oneOf, reference, refuse, text} from './placed-shape.ts'

/** `T-07`. */
const number = leaf.transform((scalar, context) =>
  /^T-\d{2,4}$/u.test(scalar.text)
    ? scalar.text
    : refuse(context, `Unexpected number \`${scalar.text}\`, expected one like \`T-07\``, {
        ruleId: 'no-bad-id',
        place: scalar.place,
        note: 'Take the next number that the office has never given',
      }),
)

/** A day that keeps its place. */
const placedDay = leaf.transform((scalar, context): Reference => {
  const day = {id: scalar.text, place: scalar.place}
  return isDay(scalar.text)
    ? day
    : refuse(context, `Unexpected date \`${scalar.text}\`, expected a day like \`2031-02-14\``, {
        ruleId: 'no-bad-date',
        place: scalar.place,
        note: 'Write year, month and day of a day that exists',
      })
})

const replacedValue = fields({
  value: reference,
  instead: reference,
  condition: localised.optional(),
  status: oneOf(valueStatuses),
  source: text,
  where: text.optional(),
})

const replacedStep = fields({procedure: reference, step: reference, instead: localised})

/** urgent/<number>.yaml; `when` is still a text with its place. */
export const urgentShape = fields({
  number,
  title: localised,
  reason: localised,
  'valid-from': placedDay,
  'valid-to': placedDay,
  vessels: list(reference),
  positions: list(reference).optional(),
  procedures: list(reference).optional(),
  when: reference.optional(),
  word: oneOf(['DANGER', 'WARNING', 'CAUTION', 'NOTICE']),
  'worst-harm': oneOf(['death-or-serious-injury', 'minor-or-moderate-injury', 'damage']),
  likelihood: oneOf(['will', 'could']),
  hazard: localised,
  consequence: localised,
  do: list(localised),
  values: list(replacedValue).optional(),
  steps: list(replacedStep).optional(),
  supersedes: list(reference).optional(),
  'cancelled-by': localised,
})
