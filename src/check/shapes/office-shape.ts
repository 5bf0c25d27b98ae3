import type {z} from 'zod'
import type {Office} from '../../handbook-model/office-content.ts'
import {conditionWords} from '../conditions/parse-condition.ts'
import {
  faultOfId,
  fields,
  identifier,
  leaf,
  list,
  localised,
  oneOf,
  quantity,
  refuse,
  text,
  yesNo,
} from './placed-shape.ts'

const person = fields({
  id: identifier,
  role: localised,
  may: list(oneOf(['write', 'review', 'approve', 'publish'])),
})

const entryLimit = fields({
  id: identifier,
  gas: localised,
  side: oneOf(['not-above', 'not-below']),
  limit: quantity('ratio', 'concentration'),
})

const house = fields({
  'wear-ring-renewal': quantity('radial-clearance', 'diametral-clearance'),
  'entry-limits': list(entryLimit),
  'tightness-test-pressure': quantity('gauge-pressure'),
  'tightness-stabilise': quantity('time'),
  'tightness-hold-least': quantity('time'),
  'purge-lift-margin': quantity('pressure-difference'),
  'isolation-proof': quantity('time'),
  'isolation-recheck': quantity('time'),
  'tightening-passes': list(quantity('ratio')),
  'purge-changes': quantity('count'),
  'purge-least': quantity('time'),
  'entry-air-changes': quantity('count'),
  'entry-retest': quantity('time'),
  'lifting-reserve': quantity('ratio'),
  'test-run-watch': quantity('ratio'),
  'test-run-act': quantity('ratio'),
  'oil-tolerance': quantity('ratio'),
  'flush-changes': quantity('count'),
  'portable-rig-time': quantity('time'),
  'rubber-life': quantity('time'),
  'store-warmest': quantity('temperature'),
})

/** What a condition reads as a word of its own, and the facts that every pump has. */
const keptWords: readonly string[] = [...conditionWords, 'design', 'vessel', 'role']

const factName = leaf.transform((scalar, context) => {
  const fault = keptWords.includes(scalar.text)
    ? `Unexpected fact \`${scalar.text}\`, expected a name that is no word of conditions`
    : faultOfId(scalar.text)
  const note = keptWords.includes(scalar.text) ? 'Choose another name' : 'Write it like `backstop`'
  return fault ? refuse(context, fault, {ruleId: 'no-bad-id', place: scalar.place, note}) : scalar.text
})

const language = leaf.transform((scalar, context) =>
  /^[a-z]{2,3}$/u.test(scalar.text)
    ? scalar.text
    : refuse(context, `Unexpected language \`${scalar.text}\`, expected two or three small letters`, {
        ruleId: 'no-bad-id',
        place: scalar.place,
        note: 'Write it like `en`',
      }),
)

const fact = fields({
  id: factName,
  title: localised,
  scope: oneOf(['vessel', 'design', 'position']),
  values: list(fields({id: identifier, title: localised})),
})

/** office.yaml. */
export const officeShape: z.ZodType<Office> = fields({
  issuer: localised,
  contact: list(text),
  languages: list(language),
  demonstration: yesNo,
  protections: list(text).optional(),
  'approver-role': localised,
  'owner-role': localised,
  people: list(person),
  house,
  facts: list(fact),
})
