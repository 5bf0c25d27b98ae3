import type {z} from 'zod'
import type {Office} from '../../handbook-model/office-content.ts'
import {fields, identifier, list, localised, oneOf, quantity, text, yesNo} from './placed-shape.ts'

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
})

const fact = fields({
  id: identifier,
  title: localised,
  scope: oneOf(['vessel', 'design', 'position']),
  values: list(fields({id: identifier, title: localised})),
})

/** office.yaml. */
export const officeShape: z.ZodType<Office> = fields({
  issuer: localised,
  contact: list(text),
  languages: list(identifier),
  demonstration: yesNo,
  'approver-role': localised,
  'owner-role': localised,
  people: list(person),
  house,
  facts: list(fact),
})
