import {
  fields,
  identifier,
  list,
  localised,
  oneOf,
  plainNumber,
  reference,
  text,
  wholeNumber,
} from '../shapes/placed-shape.ts'

/** Front matter of a procedure; each `when` is still a text with its place. */
export const frontMatterShape = fields({
  id: identifier,
  activity: oneOf([
    'inspection',
    'test',
    'overhaul',
    'repair',
    'isolation',
    'restoration',
    'preparation',
    'card',
  ]),
  maintenance: oneOf(['predetermined', 'condition-based', 'corrective', 'all']),
  scope: oneOf(['vessel', 'design', 'position']),
  when: reference.optional(),
  'performed-by': localised,
  'supervised-by': localised,
  competence: oneOf(['crew', 'heavy-maintenance']),
  people: wholeNumber(1, 20),
  hours: plainNumber(0.1, 200),
  'clear-height': localised,
  weather: localised,
  permits: list(localised),
  tools: list(fields({tool: reference, note: localised.optional(), when: reference.optional()})),
  parts: list(
    fields({
      part: reference,
      quantity: plainNumber(0.01, 1000),
      unit: text,
      note: localised.optional(),
      when: reference.optional(),
    }),
  ),
  records: list(localised),
  'retired-ids': list(text).optional(),
})
