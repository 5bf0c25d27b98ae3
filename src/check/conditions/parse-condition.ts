import type {Condition, WrittenCondition} from '../../handbook-model/condition.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'

interface Token {
  readonly text: string
  readonly at: number
}

/** Longer than anybody reads; it also bounds how deep parentheses nest. */
const longest = 500

interface Reader {
  readonly tokens: readonly Token[]
  readonly end: number
  next: number
}

/**
 * Parses `fact = value`, `fact ≠ value`, `fact in (a, b)`, `known fact`, `not`, `and`, `or` and parentheses.
 *
 * @param place
 *   Where the condition text begins in its file; the column of a fault is counted from there.
 */
export function parseCondition(
  text: string,
  place: Place,
  files: ContentFiles,
): WrittenCondition | undefined {
  if (text.length > longest) {
    addMessage(
      files,
      place,
      'no-bad-condition',
      `Unexpected condition of ${text.length} letters, expected at most ${longest}`,
      {note: 'Declare a fact that says in one word what the condition asks for'},
    )
    return undefined
  }
  const reader: Reader = {tokens: tokensOf(text), end: text.length, next: 0}
  const placeAt = (at: number): Place => placeInText(text, at, place)
  const condition = parseOr(reader, placeAt)
  const rest = reader.tokens[reader.next]
  if (condition && !('fault' in condition) && !rest)
    return {condition, text: text.trim().replace(/\s+/gu, ' ')}
  const fault =
    condition && 'fault' in condition
      ? condition
      : {
          fault: rest ? `\`${rest.text}\`` : 'end',
          at: rest?.at ?? text.length,
          expected: '`and`, `or` or the end',
        }
  addMessage(
    files,
    placeAt(fault.at),
    'no-bad-condition',
    `Unexpected ${fault.fault} in the condition, expected ${fault.expected}`,
    {
      note: 'Write conditions like `backstop = fitted and not cargo-seal in (single-lip, none)`',
    },
  )
  return undefined
}

/** A place in a condition that may be wrapped over lines. */
function placeInText(text: string, at: number, {path, line, column}: Place): Place {
  const lines = text.slice(0, at).split('\n')
  const last = (lines.at(-1) ?? '').length
  return lines.length === 1
    ? {path, line, column: column + last}
    : {path, line: line + lines.length - 1, column: last + 1}
}

interface Fault {
  readonly fault: string
  readonly at: number
  readonly expected: string
}

type Parsed = Condition | Fault
type PlaceAt = (at: number) => Place

function tokensOf(text: string): readonly Token[] {
  return [...text.matchAll(/[a-z0-9][a-z0-9-]*|!=|≠|[=(),]|\S/giu)].map((match) => ({
    text: match[0],
    at: match.index,
  }))
}

function parseOr(reader: Reader, placeAt: PlaceAt): Parsed {
  return parseChain(reader, placeAt, 'or', parseAnd)
}

function parseAnd(reader: Reader, placeAt: PlaceAt): Parsed {
  return parseChain(reader, placeAt, 'and', parseNot)
}

function parseChain(
  reader: Reader,
  placeAt: PlaceAt,
  kind: 'and' | 'or',
  operand: (reader: Reader, placeAt: PlaceAt) => Parsed,
): Parsed {
  const start = reader.tokens[reader.next]?.at ?? reader.end
  const operands: Condition[] = []
  for (;;) {
    const one = operand(reader, placeAt)
    if ('fault' in one) return one
    operands.push(one)
    if (reader.tokens[reader.next]?.text !== kind) break
    reader.next += 1
  }
  const [only] = operands
  return operands.length === 1 && only ? only : {kind, operands, place: placeAt(start)}
}

function parseNot(reader: Reader, placeAt: PlaceAt): Parsed {
  const token = reader.tokens[reader.next]
  if (token?.text === 'not') {
    reader.next += 1
    const operand = parseNot(reader, placeAt)
    return 'fault' in operand ? operand : {kind: 'not', operand, place: placeAt(token.at)}
  }
  if (token?.text === '(') {
    reader.next += 1
    const inner = parseOr(reader, placeAt)
    if ('fault' in inner) return inner
    return take(reader, ')') ?? inner
  }
  return parseComparison(reader, placeAt)
}

function parseComparison(reader: Reader, placeAt: PlaceAt): Parsed {
  const first = word(reader, 'the name of a fact')
  if ('fault' in first) return first
  if (first.text === 'known') {
    const fact = word(reader, 'the name of a fact')
    return 'fault' in fact ? fact : {kind: 'known', fact: fact.text, place: placeAt(first.at)}
  }
  const sign = reader.tokens[reader.next]
  reader.next += 1
  if (sign?.text === '=' || sign?.text === '≠' || sign?.text === '!=') {
    const value = word(reader, 'a value of the fact')
    if ('fault' in value) return value
    return {
      kind: sign.text === '=' ? 'equals' : 'differs',
      fact: first.text,
      value: value.text,
      place: placeAt(first.at),
    }
  }
  if (sign?.text === 'in') return parseValues(reader, placeAt, first)
  return {
    fault: sign ? `\`${sign.text}\`` : 'end',
    at: sign?.at ?? reader.end,
    expected: '`=`, `≠` or `in` after the fact',
  }
}

function parseValues(reader: Reader, placeAt: PlaceAt, fact: Token): Parsed {
  const open = take(reader, '(')
  if (open) return open
  const values: string[] = []
  for (;;) {
    const value = word(reader, 'a value of the fact')
    if ('fault' in value) return value
    values.push(value.text)
    if (reader.tokens[reader.next]?.text !== ',') break
    reader.next += 1
  }
  return take(reader, ')') ?? {kind: 'in', fact: fact.text, values, place: placeAt(fact.at)}
}

const joints: readonly string[] = ['and', 'or', 'not', 'in']

/** Words that a condition reads as its own: no fact may be named so. */
export const conditionWords: readonly string[] = [...joints, 'known']

function word(reader: Reader, expected: string): Token | Fault {
  const token = reader.tokens[reader.next]
  if (token && /^[a-z0-9]/iu.test(token.text) && !joints.includes(token.text)) {
    reader.next += 1
    return token
  }
  return {fault: token ? `\`${token.text}\`` : 'end', at: token?.at ?? reader.end, expected}
}

function take(reader: Reader, text: string): Fault | undefined {
  const token = reader.tokens[reader.next]
  if (token?.text === text) {
    reader.next += 1
    return undefined
  }
  return {fault: token ? `\`${token.text}\`` : 'end', at: token?.at ?? reader.end, expected: `\`${text}\``}
}
