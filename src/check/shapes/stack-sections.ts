import {z} from 'zod'
import type {StackSection} from '../../handbook-model/vessel-content.ts'
import {factsOfIssue, fields, list, quantity, refuse, wholeNumber} from './placed-shape.ts'
import {isPlainMap, isPlainScalar, placeOfPlain} from './plain-tree.ts'

const length = quantity('length')
const numbered = fields({number: wholeNumber(1, 99), length})

/** A length alone takes its number from the order; a map says it. */
const section = z
  .custom<unknown>((value) => isPlainScalar(value) || isPlainMap(value), {error: 'a length'})
  .transform((value, context): Omit<StackSection, 'number'> & {readonly number?: number} => {
    const place = placeOfPlain(value) ?? {path: '', line: 1, column: 1}
    const saysNumber = isPlainMap(value) && ('number' in value || 'length' in value)
    const parsed = saysNumber ? numbered.safeParse(value) : length.safeParse(value)
    if (!parsed.success) {
      for (const issue of parsed.error.issues)
        refuse(
          context,
          issue.message,
          factsOfIssue(issue) ?? {ruleId: 'no-wrong-shape', place, note: 'Write the length with its unit'},
        )
      return z.NEVER
    }
    return 'number' in parsed.data ? parsed.data : {length: parsed.data, place}
  })

/** `stack-sections: [2.000 m, 1.400 m]`, or each as `{number: 1, length: 2.000 m}`: from deck down. */
export const stackSections = list(section).transform((sections): readonly StackSection[] =>
  sections.map((one, index) => ({...one, number: one.number ?? index + 1})),
)
