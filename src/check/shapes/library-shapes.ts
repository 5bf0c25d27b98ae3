import type {z} from 'zod'
import {
  type Caution,
  type MachineUnit,
  rubbers,
  type Source,
  type Term,
  type Tool,
} from '../../handbook-model/office-content.ts'
import {reviewableRules} from '../../messages/severities.ts'
import {fields, identifier, list, localised, oneOf, quantity, reference, text} from './placed-shape.ts'

const source: z.ZodType<Source> = fields({
  id: identifier,
  title: localised,
  edition: text,
  kind: oneOf(['standard', 'regulation', 'book', 'drawing', 'record', 'practice']),
  status: oneOf(['current', 'superseded', 'unknown']),
  'superseded-by': reference.optional(),
  'how-known': oneOf(['read', 'reprint', 'memory', 'common-practice', 'demonstration']),
  'kept-for': localised.optional(),
})

/** sources.yaml. */
export const sourcesShape = fields({sources: list(source)})

const term: z.ZodType<Term> = fields({
  id: identifier,
  term: localised,
  meaning: localised,
  'not-used': list(text),
})

/** terms.yaml. */
export const termsShape = fields({terms: list(term)})

const instrument = fields({
  graduation: quantity(
    'length',
    'gauge-pressure',
    'temperature-difference',
    'time',
    'torque',
    'ratio',
    'concentration',
    'volume',
    'mass',
    'pressure-difference',
    'speed',
    'rotational-speed',
    'angle',
  ),
  uncertainty: quantity(
    'length',
    'pressure-difference',
    'temperature-difference',
    'time',
    'torque',
    'ratio',
    'concentration',
    'volume',
    'mass',
    'speed',
    'rotational-speed',
    'angle',
  ),
})

const tool: z.ZodType<Tool> = fields({
  id: identifier,
  title: localised,
  size: localised,
  'torque-range': fields({least: quantity('torque'), most: quantity('torque')}).optional(),
  instrument: instrument.optional(),
})

/** tools.yaml. */
export const toolsShape = fields({tools: list(tool)})

const part = fields({
  id: identifier,
  title: localised,
  class: oneOf(['spare', 'consumable', 'insurance-spare']),
  size: localised,
  rubber: oneOf(rubbers).optional(),
  balloon: text.optional(),
  when: reference.optional(),
})

const unit: z.ZodType<MachineUnit> = fields({id: identifier, title: localised, balloons: list(text)})

/** parts.yaml; `when` is still a text with its place. */
export const partsShape = fields({units: list(unit).optional(), parts: list(part)})

/** cautions/<id>.yaml. */
export const cautionShape: z.ZodType<Caution> = fields({
  id: identifier,
  'hazard-class': text,
  word: oneOf(['DANGER', 'WARNING', 'CAUTION', 'NOTICE']),
  'worst-harm': oneOf(['death-or-serious-injury', 'minor-or-moderate-injury', 'damage']),
  likelihood: oneOf(['will', 'could']),
  title: localised,
  hazard: localised,
  consequence: localised,
  avoid: list(localised),
  sign: text.optional(),
  protection: list(localised),
  'residual-risk': localised,
  source: reference,
})

const cause = fields({
  cause: localised,
  check: localised,
  procedures: list(reference).optional(),
  advice: localised.optional(),
}).transform(({procedures, ...rest}) => ({...rest, procedures: procedures ?? []}))

/** symptoms.yaml; `when` is still a text with its place. */
export const symptomsShape = fields({
  symptoms: list(fields({id: identifier, title: localised, when: reference.optional(), causes: list(cause)})),
})

/** failures.yaml. */
export const failuresShape = fields({
  failures: list(
    fields({
      id: identifier,
      part: reference,
      mode: localised,
      procedures: list(reference).optional(),
      reason: localised.optional(),
    }).transform(({procedures, ...rest}) => ({...rest, procedures: procedures ?? []})),
  ),
})

/** exceptions.yaml. */
export const exceptionsShape = fields({
  exceptions: list(
    fields({rule: oneOf(reviewableRules), file: text, words: text, reason: text, 'reviewed-by': reference}),
  ),
})
