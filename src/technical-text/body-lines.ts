import type {BoundCaution, IsolationLine, LimitLine, Page, PositionPage, PositionValuesPage, ValueLine, ValuesPage} from '../handbook-model/pages.ts'
import {procedureLines} from './procedure-lines.ts'
import type {TechnicalLine} from './technical-text.ts'

/** Lines of a page below its identity, in page order. */
export function bodyLines(page: Page): readonly TechnicalLine[] {
  switch (page.kind) {
    case 'procedure':
      return procedureLines(page)
    case 'position':
      return positionLines(page)
    case 'job':
      return [
        ...page.procedures.map((one) => ({block: 'procedures', kind: 'procedure', text: one.link.text})),
        ...page.isolation.flatMap(isolationLines),
        ...page.cautions.map((one) => ({block: 'cautions', kind: 'caution', text: `${one.word} ${one.number}`})),
        ...page.tools.map((one) => ({block: `tool-${one.id}`, kind: 'tool', text: one.title})),
        ...page.parts.flatMap((one) => [
          {block: `part-${one.id}`, kind: 'part', text: one.title},
          {block: `part-${one.id}`, kind: 'quantity', text: one.quantity},
        ]),
        ...page.asFound.map((text) => ({block: 'as-found', kind: 'measured', text})),
        ...page.asLeft.map((text) => ({block: 'as-left', kind: 'measured', text})),
      ]
    case 'position-values':
      return explainedLines(page)
    case 'values':
      return wallLines(page)
    case 'cautions':
      return page.cautions.flatMap(({caution}) => cautionLines(caution))
    case 'start':
      return [
        ...page.particulars.map((one) => ({block: 'particulars', kind: 'particular', text: one.text})),
        ...page.positions.map((one) => ({block: 'positions', kind: 'position', text: one.link.text})),
      ]
    case 'tools':
      return page.tools.flatMap((one) => [
        {block: one.id, kind: 'tool', text: one.title},
        {block: one.id, kind: 'size', text: one.size},
      ])
    case 'parts':
      return page.parts.flatMap((one) => [
        {block: one.id, kind: 'part', text: one.title},
        {block: one.id, kind: 'size', text: one.size},
      ])
    case 'sources':
      return page.sources.map((one) => ({block: one.id, kind: 'source', text: one.title}))
    case 'words':
      return page.terms.flatMap((one) => [
        {block: one.id, kind: 'term', text: one.term},
        {block: one.id, kind: 'meaning', text: one.meaning},
      ])
    default:
      return neverReached(page)
  }
}

function positionLines(page: PositionPage): readonly TechnicalLine[] {
  return [
    ...page.asFitted.map((one) => ({block: 'as-fitted', kind: 'fact', text: one.text})),
    ...page.components.map((one) => ({block: 'components', kind: 'serial', text: one.text})),
    ...page.ratings.flatMap(valueLines),
    ...page.limits.flatMap(limitLines),
    ...page.isolation.flatMap(isolationLines),
  ]
}

function explainedLines(page: PositionValuesPage): readonly TechnicalLine[] {
  return page.values.flatMap(({line}) => [{block: line.id, kind: 'title', text: line.title}, ...valueLines(line)])
}

function wallLines(page: ValuesPage): readonly TechnicalLine[] {
  return page.designs.flatMap((design) => [
    ...design.torques.flatMap((one) =>
      [one.joint, one.fastener, one.torque, one.lubrication, one.passes, one.order, one.wrench, one.locking].map((text) => ({block: one.id, kind: 'torque', text})),
    ),
    ...design.clearances.flatMap((one) =>
      [one.ring, one.runningDiameter, one.newClearance, one.minimumNew, one.renewal, one.because].map((text) => ({block: one.id, kind: 'clearance', text})),
    ),
    ...design.others.flatMap(valueLines),
  ])
}

/** A value: figure with unit, each further figure, condition. */
export function valueLines(line: ValueLine): readonly TechnicalLine[] {
  return [
    {block: line.id, kind: 'value', text: line.unit === '' ? line.figure : `${line.figure} ${line.unit}`},
    ...line.more.map((text) => ({block: line.id, kind: 'more', text})),
    {block: line.id, kind: 'condition', text: line.condition},
  ]
}

/** A limit: the limit, what is done outside it, and the action in words. */
export function limitLines(line: LimitLine): readonly TechnicalLine[] {
  return [
    {block: line.id, kind: 'limit', text: line.limit},
    {block: line.id, kind: 'outside', text: line.outside},
    {block: line.id, kind: 'action', text: line.action},
  ]
}

/** A caution: word with its number, title, hazard, consequence, advice, protection. */
export function cautionLines(caution: BoundCaution): readonly TechnicalLine[] {
  const block = `caution-${caution.id}`
  return [
    {block, kind: 'word', text: `${caution.word} ${caution.number}`},
    {block, kind: 'title', text: caution.title},
    {block, kind: 'hazard', text: caution.hazard},
    {block, kind: 'consequence', text: caution.consequence},
    ...caution.avoid.map((text) => ({block, kind: 'avoid', text})),
    ...caution.protection.map((text) => ({block, kind: 'protection', text})),
  ]
}

/** An isolation point, or the reason why there is none. */
export function isolationLines(line: IsolationLine): readonly TechnicalLine[] {
  const texts = line.noneBecause === '' ? [line.role, line.tag, line.medium, line.where, line.normal, line.isolated, line.lock, line.proof, line.restoredWith] : [line.role, line.noneBecause]
  return texts.map((text) => ({block: line.id, kind: 'isolation', text}))
}

function neverReached(value: never): never {
  throw new Error(`Unexpected page ${JSON.stringify(value)}`)
}
