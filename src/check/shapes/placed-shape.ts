import {z} from 'zod'
import {isDay} from '../../handbook-model/comparison-date.ts'
import {
  type Datum,
  type KnownDatum,
  type Localised,
  type Origin,
  type Reference,
  valueStatuses,
} from '../../handbook-model/datum.ts'
import type {Place} from '../../messages/place.ts'
import type {RuleId} from '../../messages/severities.ts'
import {parseQuantity} from '../../quantities/parse-quantity.ts'
import type {QuantityKind} from '../../quantities/quantity.ts'
import {expectedWord} from '../nearest-word.ts'
import {
  isPlainMap,
  isPlainScalar,
  type PlainMap,
  type PlainScalar,
  type PlainTree,
  placeKey,
  placeOfPlain,
} from './plain-tree.ts'

/** What a shape adds to an issue of its own, so that the message gets the right rule, place and remedy. */
export interface IssueFacts {
  readonly ruleId: RuleId
  readonly place: Place
  readonly note?: string
}

type Context = z.core.$RefinementCtx

/** Reports a mistake at a leaf and yields the value that stops the shape. */
export function refuse(context: Context, reason: string, facts: IssueFacts): never {
  context.issues.push({
    code: 'custom',
    message: reason,
    params: {...facts},
    input: undefined,
    continue: false,
  })
  return z.NEVER
}

/** A leaf of the tree, place kept. */
export const leaf = z.custom<PlainScalar>(isPlainScalar, {error: 'text'})

/** A text that is not blank. */
export const text = leaf.transform((scalar, context) =>
  scalar.text.trim() === ''
    ? refuse(context, 'Unexpected blank, expected a text', {
        ruleId: 'no-wrong-shape',
        place: scalar.place,
        note: 'Write the text, or take the key out where it may be left out',
      })
    : scalar.text.trim().replace(/\s+/gu, ' '),
)

const deviceNames = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])$/u

/** A reason why the text is no id, or undefined when it is one. */
export function faultOfId(id: string): string | undefined {
  if (deviceNames.test(id.toLowerCase()))
    return `Unexpected id \`${id}\`, expected a name that no operating system keeps for a device`
  if (!/^[a-z][a-z0-9-]{0,39}$|^[0-9][a-z0-9-]{0,39}$/u.test(id)) {
    return `Unexpected id \`${id}\`, expected at most 40 small letters, digits and hyphens`
  }
  return undefined
}

/** An id: it becomes file names and addresses, so it holds small letters, digits and hyphens only. */
export const identifier = leaf.transform((scalar, context) => {
  const fault = faultOfId(scalar.text)
  return fault
    ? refuse(context, fault, {ruleId: 'no-bad-id', place: scalar.place, note: 'Write it like `hub-bolts`'})
    : scalar.text
})

/** An id that refers to something elsewhere; the place is kept for the message when it leads nowhere. */
export const reference = leaf.transform(
  (scalar): Reference => ({id: scalar.text.trim(), place: scalar.place}),
)

/** A text by language: a plain text is English; a map names the languages, English always among them. */
export const localised = z
  .custom<PlainScalar | PlainMap>((value) => isPlainScalar(value) || isPlainMap(value), {error: 'text'})
  .transform((value, context): Localised => {
    const written = isPlainScalar(value) ? {en: value} : value
    const words = Object.entries(written).map(([language, leafOrMore]) => {
      const parsed = text.safeParse(leafOrMore)
      const place = isPlainMap(value) ? value[placeKey].keys.get(language) : undefined
      if (place && !/^[a-z]{2,3}$/u.test(language))
        refuse(context, `Unexpected language \`${language}\`, expected two or three small letters`, {
          ruleId: 'no-unknown-key',
          place,
          note: 'Write the text behind a language such as `en`',
        })
      for (const issue of parsed.error?.issues ?? [])
        refuse(
          context,
          issue.code === 'custom' && factsOfIssue(issue)
            ? issue.message
            : 'Unexpected list or map, expected text',
          factsOfIssue(issue) ?? {
            ruleId: 'no-wrong-shape',
            place: place ?? {path: '', line: 1, column: 1},
            note: 'Write the text behind its language',
          },
        )
      return [language, parsed.data ?? ''] as const
    })
    if (!('en' in written) && isPlainMap(value))
      return refuse(context, 'Unexpected text without English, expected `en:` among the languages', {
        ruleId: 'no-missing-key',
        place: value[placeKey].map,
        note: 'Add `en:` with the English text',
      })
    return {en: '', ...Object.fromEntries(words)}
  })

/** An ISO date that exists. */
export const date = leaf.transform((scalar, context) => {
  return isDay(scalar.text)
    ? scalar.text
    : refuse(context, `Unexpected date \`${scalar.text}\`, expected a day like \`2031-02-14\``, {
        ruleId: 'no-bad-date',
        place: scalar.place,
        note: 'Write year, month and day of a day that exists',
      })
})

/** `yes` or `no`. */
export const yesNo = leaf.transform((scalar, context) =>
  scalar.text === 'yes'
    ? true
    : scalar.text === 'no'
      ? false
      : refuse(context, `Unexpected \`${scalar.text}\`, expected \`yes\` or \`no\``, {
          ruleId: 'no-wrong-shape',
          place: scalar.place,
          note: 'Write `yes` or `no`',
        }),
)

/** A whole number within bounds. */
export function wholeNumber(least: number, most: number) {
  return leaf.transform((scalar, context) => {
    const value = /^\d{1,6}$/u.test(scalar.text) ? Number(scalar.text) : Number.NaN
    return value >= least && value <= most
      ? value
      : refuse(context, `Unexpected \`${scalar.text}\`, expected a whole number from ${least} to ${most}`, {
          ruleId: 'no-wrong-shape',
          place: scalar.place,
          note: 'Write the number in digits, without a unit',
        })
  })
}

/** A plain decimal number within bounds, for amounts without a unit of the unit table. */
export function plainNumber(least: number, most: number) {
  return leaf.transform((scalar, context) => {
    const value = /^-?\d{1,6}(\.\d{1,6})?$/u.test(scalar.text) ? Number(scalar.text) : Number.NaN
    return value >= least && value <= most
      ? value
      : refuse(context, `Unexpected \`${scalar.text}\`, expected a number from ${least} to ${most}`, {
          ruleId: 'no-wrong-shape',
          place: scalar.place,
          note: 'Write the number in digits, without a unit',
        })
  })
}

/** One of a closed set of words; the nearest is named. */
export function oneOf<const W extends string>(words: readonly W[]) {
  return leaf.transform((scalar, context): W => {
    const found = words.find((word) => word === scalar.text)
    return (
      found ??
      refuse(context, `Unexpected \`${scalar.text}\`, ${expectedWord(scalar.text, words, 'a word')}`, {
        ruleId: 'no-wrong-shape',
        place: scalar.place,
        note: `Write one of ${words.join(', ')}`,
      })
    )
  })
}

/** A list; a missing or blank one is a mistake unless the field is optional. */
export function list<T extends z.ZodType>(item: T) {
  return z.array(item, {error: 'a list'})
}

const originKeys = ['status', 'source', 'where', 'date']

/** The `origin:` of a file or section: exactly these keys. */
export const originShape = strictMap({
  status: oneOf(valueStatuses),
  source: text,
  where: text.optional(),
  date: date.optional(),
}).transform(
  ({status, source, where, date: day}): Origin => ({
    status,
    source,
    ...(where ? {where} : {}),
    ...(day ? {date: day} : {}),
  }),
)

/**
 * A value with its unit: a text that takes the nearest origin above it, a map that says its own, or `not known` with a reason.
 */
export function quantity<K extends QuantityKind>(...kinds: readonly K[]) {
  return z
    .custom<unknown>((value) => isPlainScalar(value) || isPlainMap(value), {error: 'a value with its unit'})
    .transform((value, context): Datum<K> => {
      const scalar = isPlainScalar(value) ? value : isPlainMap(value) ? value['value'] : undefined
      if (!isPlainScalar(scalar)) {
        const place = isPlainMap(value) ? value[placeKey].map : {path: '', line: 1, column: 1}
        return refuse(
          context,
          'Unexpected map without `value`, expected `value:` with a number and its unit',
          {ruleId: 'no-missing-key', place, note: 'Add `value:`'},
        )
      }
      if (isPlainMap(value)) refuseStrangeKeys(value, context)
      if (scalar.text === 'not known') return notKnown(value, scalar, context)
      refuseReason(value, context)
      return known(value, scalar, kinds, context)
    })
}

function refuseStrangeKeys(value: Parameters<typeof isPlainMap>[0], context: Context): void {
  if (!isPlainMap(value)) return
  const known = ['value', 'reason', ...originKeys]
  for (const [key, place] of value[placeKey].keys) {
    if (!known.includes(key))
      refuse(context, `Unexpected key \`${key}\`, ${expectedWord(key, known, 'a key')}`, {
        ruleId: 'no-unknown-key',
        place,
        note: `The keys here are ${known.join(', ')}`,
      })
  }
}

/** Words beside a known value that no page would print. */
function refuseReason(value: unknown, context: Context): void {
  const place = isPlainMap(value) ? value[placeKey].keys.get('reason') : undefined
  if (place)
    refuse(
      context,
      'Unexpected `reason` beside a value that is known, expected it beside `not known` alone',
      {ruleId: 'no-unknown-key', place, note: 'Take the reason out, or put it into `where`'},
    )
}

function notKnown<K extends QuantityKind>(value: unknown, scalar: PlainScalar, context: Context): Datum<K> {
  const reason = isPlainMap(value) ? value['reason'] : undefined
  if (!isPlainScalar(reason) || reason.text.trim() === '') {
    return refuse(
      context,
      'Unexpected `not known` without a reason, expected `{value: not known, reason: …}`',
      {
        ruleId: 'no-missing-key',
        place: scalar.place,
        note: 'Say why nobody knows it and how it will be found out',
      },
    )
  }
  return {kind: 'not-known', reason: reason.text, place: scalar.place}
}

function known<K extends QuantityKind>(
  value: unknown,
  scalar: PlainScalar,
  kinds: readonly K[],
  context: Context,
): Datum<K> {
  const parsed = parseQuantity(scalar.text, kinds)
  if (!parsed.ok)
    return refuse(context, parsed.reason, {
      ruleId: 'no-bad-quantity',
      place: scalar.place,
      note: 'Write a number, a blank and the unit; write `not known` with a reason where nobody knows',
    })
  const origin = originOf(value, scalar, context)
  if (!origin) return z.NEVER
  const {written} = parsed
  const datum: KnownDatum<K> = {
    kind: 'known',
    quantity: written.quantity,
    figure: written.figure,
    unit: written.unit,
    origin,
    place: scalar.place,
  }
  return datum
}

/** The value's own origin, else the nearest above it; an inherited one that does not fit is reported where it stands. */
function originOf(value: unknown, scalar: PlainScalar, context: Context): Origin | undefined {
  const own = isPlainMap(value) ? ownOrigin(value, scalar.origin) : undefined
  const origin = originShape.safeParse(own ?? scalar.origin)
  if (origin.success) return origin.data
  if (own) {
    for (const issue of origin.error.issues) {
      const facts = factsOfIssue(issue)
      if (facts) refuse(context, issue.message, facts)
    }
  } else if (!scalar.origin) {
    refuse(
      context,
      `Unexpected value \`${scalar.text}\` of unknown origin, expected \`origin: {status: …, source: …}\` above it or \`status\` and \`source\` beside it`,
      {
        ruleId: 'no-missing-key',
        place: scalar.place,
        note: `Name one of ${valueStatuses.join(', ')} and the id of a source`,
      },
    )
  }
  return undefined
}

/** What a value says of its own origin; a place or a day alone adds to the origin above it. */
function ownOrigin(value: PlainMap, above: PlainTree | undefined): PlainTree | undefined {
  const named = Object.entries(value).filter(([key]) => originKeys.includes(key))
  const own = {...Object.fromEntries(named), [placeKey]: value[placeKey]}
  if (named.some(([key]) => key === 'status' || key === 'source')) return own
  return named.length > 0 && isPlainMap(above) ? {...above, ...own} : undefined
}

type Camel<S extends string> = S extends `${infer A}-${infer B}` ? `${A}${Capitalize<Camel<B>>}` : S

/** What `fields` yields: keys in camel case, optional fields left out when absent, and the map's own place. */
export type FieldsOf<S extends z.ZodRawShape> = {
  readonly [K in keyof S & string as undefined extends z.output<S[K]> ? never : Camel<K>]: z.output<S[K]>
} & {
  readonly [K in keyof S & string as undefined extends z.output<S[K]> ? Camel<K> : never]?: Exclude<
    z.output<S[K]>,
    undefined
  >
} & {readonly place: Place}

/** A map with exactly these keys and, where it states values, an origin. Unknown keys are refused with the nearest known one; a missing key points at the map it is missing from. */
export function fields<S extends z.ZodRawShape>(shape: S) {
  return strictMap(shape, {origin: originShape.optional()})
}

function strictMap<S extends z.ZodRawShape>(shape: S, extra: z.ZodRawShape = {}) {
  const known = Object.keys(shape)
  const strict = z.strictObject({...extra, ...shape})
  return z.custom<PlainMap>(isPlainMap, {error: 'a map'}).transform((map, context): FieldsOf<S> => {
    const parsed = strict.safeParse(map)
    if (!parsed.success) {
      for (const issue of parsed.error.issues) context.issues.push(...locatedIssues(issue, map, known))
      return z.NEVER
    }
    const product: unknown = camelFields(parsed.data, map[placeKey].map, 'origin' in shape)
    return isProductOf<S>(product) ? product : z.NEVER
  })
}

function locatedIssues(
  issue: z.core.$ZodIssue,
  map: PlainMap,
  known: readonly string[],
): z.core.$ZodRawIssue[] {
  const custom = (message: string, facts: IssueFacts): z.core.$ZodRawIssue => ({
    code: 'custom',
    message,
    params: {...facts},
    input: undefined,
    path: [...issue.path],
  })
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) =>
      custom(`Unexpected key \`${key}\`, ${expectedWord(key, known, 'a key')}`, {
        ruleId: 'no-unknown-key',
        place: map[placeKey].keys.get(key) ?? map[placeKey].map,
        note: `The keys here are ${known.join(', ')}`,
      }),
    )
  }
  const facts = factsOfIssue(issue)
  if (facts) return [custom(issue.message, facts)]
  return [misfit(issue.path, map, issue.message, custom)]
}

function misfit(
  path: readonly PropertyKey[],
  map: PlainMap,
  expected: string,
  custom: (message: string, facts: IssueFacts) => z.core.$ZodRawIssue,
): z.core.$ZodRawIssue {
  let node: unknown = map
  let place = map[placeKey].map
  for (const key of path) {
    if (isPlainMap(node) && typeof key === 'string') {
      if (!(key in node)) {
        return custom(`Unexpected map without \`${key}\`, expected \`${key}:\` with ${expected}`, {
          ruleId: 'no-missing-key',
          place,
          note: `Add \`${key}:\``,
        })
      }
      place = node[placeKey].keys.get(key) ?? place
      node = node[key]
    } else if (Array.isArray(node) && typeof key === 'number') {
      node = node[key]
    }
    place = placeOfPlain(node) ?? place
  }
  const what = isPlainScalar(node) ? `text \`${node.text}\`` : Array.isArray(node) ? 'list' : 'map'
  return custom(`Unexpected ${what}, expected ${expected}`, {
    ruleId: 'no-wrong-shape',
    place,
    note: `Write ${expected} here`,
  })
}

/** The facts that a shape of ours attached to its issue. */
export function factsOfIssue(issue: z.core.$ZodIssue): IssueFacts | undefined {
  const params: unknown = issue.code === 'custom' ? issue.params : undefined
  return isIssueFacts(params) ? params : undefined
}

function isIssueFacts(value: unknown): value is IssueFacts {
  return typeof value === 'object' && value !== null && 'ruleId' in value && 'place' in value
}

function camelFields(value: object, place: Place, withOrigin: boolean): Record<string, unknown> {
  const entries = Object.entries(value).filter(
    ([key, field]) => field !== undefined && (withOrigin || key !== 'origin'),
  )
  const camel = entries.map(([key, field]) => [
    key.replace(/-([a-z0-9])/gu, (_all, letter: string) => letter.toUpperCase()),
    field,
  ])
  return {...Object.fromEntries(camel), place}
}

/** The compiler cannot follow a rename of keys; the strict object above has just proved the fields. */
function isProductOf<S extends z.ZodRawShape>(value: unknown): value is FieldsOf<S> {
  return typeof value === 'object' && value !== null
}
