import type {z} from 'zod'
import type {Trial} from '../../handbook-model/trial-content.ts'
import {date, fields, list, reference, text} from './placed-shape.ts'

const trial: z.ZodType<Trial> = fields({
  procedure: reference,
  vessel: reference,
  position: reference.optional(),
  date,
  role: reference,
  result: text,
})

/** trials.yaml. */
export const trialsShape = fields({trials: list(trial)})
