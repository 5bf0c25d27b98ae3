import type {ExplanationsPage, Page, PartFailures, PositionPage, ValuesPage} from '../handbook-model/pages.ts'
import {cautionLines, isolationLines, limitLines, valueLines} from './block-lines.ts'
import {procedureLines} from './procedure-lines.ts'
import type {TechnicalLine} from './technical-line.ts'

/** Lines of a page below its identity, in page order. */
export function bodyLines(page: Page): readonly TechnicalLine[] {
  switch (page.kind) {
    case 'procedure':
      return procedureLines(page)
    case 'position':
      return positionLines(page)
    case 'job':
      return [
        {block: 'interval', kind: 'interval', text: page.interval},
        ...page.procedures.map((one) => ({block: 'procedures', kind: 'procedure', text: one.link.text})),
        ...page.isolation.flatMap((one) => isolationLines(one)),
        ...page.cautions.flatMap((one) => [
          {block: 'cautions', kind: 'caution', text: `${one.word} ${one.number}`},
          {block: 'cautions', kind: 'title', text: one.title},
        ]),
        ...page.tools.flatMap((one) => [
          {block: `tool-${one.id}`, kind: 'tool', text: one.title},
          {block: `tool-${one.id}`, kind: 'size', text: one.size},
          {block: `tool-${one.id}`, kind: 'note', text: one.note},
        ]),
        ...page.parts.flatMap((one) => [
          {block: `part-${one.id}`, kind: 'part', text: one.title},
          {block: `part-${one.id}`, kind: 'quantity', text: one.quantity},
          {block: `part-${one.id}`, kind: 'size', text: one.size},
          {block: `part-${one.id}`, kind: 'note', text: one.note},
        ]),
        ...page.asFound.map((text) => ({block: 'as-found', kind: 'measured', text})),
        ...page.asLeft.map((text) => ({block: 'as-left', kind: 'measured', text})),
      ]
    case 'symptoms':
      return page.symptoms.flatMap((one) => [
        {block: one.id, kind: 'symptom', text: one.title},
        {block: one.id, kind: 'variant', text: one.variant ?? ''},
        ...one.causes.flatMap((cause) => [
          {block: one.id, kind: 'cause', text: cause.cause},
          {block: one.id, kind: 'check', text: cause.check},
          ...cause.procedures.map(({text}) => ({block: one.id, kind: 'procedure', text})),
          {block: one.id, kind: 'advice', text: cause.advice},
        ]),
      ])
    case 'explanations':
      return explainedLines(page)
    case 'values':
      return wallLines(page)
    case 'cautions':
      return page.cautions.flatMap(({caution}) => cautionLines(caution, caution.word))
    case 'start':
      return [
        ...page.urgent.flatMap((one) => [
          {block: one.block, kind: 'urgent', text: one.number},
          {block: one.block, kind: 'title', text: one.title},
          {block: one.block, kind: 'valid-to', text: one.to},
        ]),
        ...page.particulars.map((one) => ({block: 'particulars', kind: 'particular', text: one.text})),
        ...page.positions.map((one) => ({block: 'positions', kind: 'position', text: one.link.text})),
      ]
    case 'tools':
      return page.tools.flatMap((one) => [
        {block: one.id, kind: 'tool', text: one.title},
        {block: one.id, kind: 'size', text: one.size},
        {block: one.id, kind: 'instrument', text: one.instrument},
      ])
    case 'parts':
      return page.parts.flatMap((one) => [
        {block: one.id, kind: 'part', text: one.title},
        {block: one.id, kind: 'size', text: one.size},
        {block: one.id, kind: 'balloon', text: one.balloon},
      ])
    case 'sources':
      return page.sources.map((one) => ({block: one.id, kind: 'source', text: one.title}))
    case 'words':
      return page.terms.flatMap((one) => [
        {block: one.id, kind: 'term', text: one.term},
        {block: one.id, kind: 'meaning', text: one.meaning},
      ])
    case 'work':
      return page.groups.flatMap(({jobs}) =>
        jobs.flatMap((one) => [
          {block: one.id, kind: 'job', text: one.title},
          {block: one.id, kind: 'interval', text: one.interval},
          {block: one.id, kind: 'interval', text: one.trigger},
          {block: one.id, kind: 'pumps', text: one.pumps},
          {block: one.id, kind: 'pumps', text: one.onPumps.map(({text}) => text).join(' ')},
        ]),
      )
    case 'failures':
      return page.units.flatMap(({parts}) => parts.flatMap(failureLines))
    default:
      return neverReached(page)
  }
}

function failureLines({id, title, pumps, failures}: PartFailures): readonly TechnicalLine[] {
  return [
    {block: id, kind: 'part', text: title},
    {block: id, kind: 'pumps', text: pumps},
    ...failures.flatMap(({mode, procedures, reason}) => [
      {block: id, kind: 'mode', text: mode},
      ...procedures.map(({text}) => ({block: id, kind: 'procedure', text})),
      {block: id, kind: 'reason', text: reason},
    ]),
  ]
}

function positionLines(page: PositionPage): readonly TechnicalLine[] {
  return [
    ...page.asFitted.map((one) => ({block: 'as-fitted', kind: 'fact', text: one.text})),
    ...page.components.map((one) => ({block: 'components', kind: 'serial', text: one.text})),
    ...sectionLines(page),
    ...arrangementLines(page),
    ...stackLines(page),
    ...page.ratings.flatMap(valueLines),
    ...page.limits.flatMap(limitLines),
    ...page.isolation.flatMap((one) => isolationLines(one)),
  ]
}

/** What a drawing tells: its numbers with their parts, how rings are held, which way lips look, and the sizes that it is drawn from. */
function sectionLines({section}: PositionPage): readonly TechnicalLine[] {
  if (!section) return []
  return [
    ...section.variant.map((text) => ({block: 'section', kind: 'figure', text})),
    ...section.numbers.flatMap(({balloon, title}) => [
      {block: 'section', kind: 'balloon', text: balloon},
      {block: 'section', kind: 'part', text: title},
    ]),
    ...section.sizes.flatMap(valueLines),
    ...section.smallParts.map(({text}) => ({block: 'section', kind: 'figure', text})),
  ]
}

/** What a portable pump is drawn from, and its numbers with their parts. */
function arrangementLines({arrangement}: PositionPage): readonly TechnicalLine[] {
  if (!arrangement) return []
  return [
    {block: 'arrangement', kind: 'figure', text: arrangement.lengths},
    ...arrangement.values.flatMap(valueLines),
    ...arrangement.numbers.flatMap(({balloon, title}) => [
      {block: 'arrangement', kind: 'balloon', text: balloon},
      {block: 'arrangement', kind: 'part', text: title},
    ]),
  ]
}

/** The pipe stack: what it is drawn from, as it stands below the figure. */
function stackLines({stack}: PositionPage): readonly TechnicalLine[] {
  if (!stack) return []
  const line = (kind: string, text: string): TechnicalLine => ({block: stack.id, kind, text})
  return [line('figure', stack.data), ...stack.values.flatMap(valueLines), line('caption', stack.caption)]
}

function explainedLines(page: ExplanationsPage): readonly TechnicalLine[] {
  return page.values.flatMap(({line}) => [
    {block: line.id, kind: 'title', text: line.title},
    ...valueLines(line),
  ])
}

/** Two designs may have a joint of the same id: the block names the design too. */
function wallLines(page: ValuesPage): readonly TechnicalLine[] {
  return page.designs.flatMap((design) => {
    const block = (id: string): string => `${design.id}.${id}`
    return [
      ...design.torques.flatMap((one) =>
        [
          one.joint,
          one.fastener,
          one.torque.text,
          one.lubrication,
          one.passes.text,
          one.order.text,
          one.wrench,
          one.locking,
        ].map((text) => ({block: block(one.id), kind: 'torque', text})),
      ),
      ...design.clearances.flatMap((one) =>
        [
          one.ring,
          one.runningDiameter.text,
          one.newClearance.text,
          one.minimumNew.text,
          one.renewal.text,
          one.because,
        ].map((text) => ({block: block(one.id), kind: 'clearance', text})),
      ),
      ...design.others.flatMap((one) => valueLines({...one, id: block(one.id)})),
    ]
  })
}

function neverReached(value: never): never {
  throw new Error(`Unexpected page ${JSON.stringify(value)}`)
}
