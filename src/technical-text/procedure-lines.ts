import type {
  BoundItem,
  BoundPart,
  BoundReading,
  BoundSection,
  BoundStep,
  ProcedurePage,
} from '../handbook-model/pages.ts'
import {cautionLines, isolationLines, limitLines, valueLines} from './block-lines.ts'
import {wordsOf} from './plain-text.ts'
import type {TechnicalLine} from './technical-line.ts'

/** Lines of a procedure on a pump: its purpose, who does it, states, tools and parts, then section by section. */
export function procedureLines(page: ProcedurePage): readonly TechnicalLine[] {
  const people = [
    page.performedBy,
    page.supervisedBy,
    page.people,
    page.clearHeight,
    page.weather,
    ...page.permits,
  ]
  return [
    ...page.purpose.map((text) => ({block: 'purpose', kind: 'purpose', text: wordsOf(text)})),
    ...people.map((text) => ({block: 'people', kind: 'people', text})),
    ...page.before.map((text) => ({block: 'before', kind: 'state', text: wordsOf(text)})),
    ...page.tools.flatMap((one) =>
      [one.title, one.size, one.note].map((text) => ({block: `tool-${one.id}`, kind: 'tool', text})),
    ),
    ...page.parts.flatMap((one) =>
      [one.title, one.balloon, one.size, one.quantity, one.note].map((text) => ({
        block: `part-${one.id}`,
        kind: 'part',
        text,
      })),
    ),
    ...touchedLines(page),
    ...page.sections.flatMap(sectionLines),
    ...page.after.map((text) => ({block: 'after', kind: 'state', text: wordsOf(text)})),
  ]
}

/** What the marked section tells: of which pump it is drawn, its marked parts, and touched parts outside of it. */
function touchedLines({touched}: ProcedurePage): readonly TechnicalLine[] {
  if (!touched) return []
  const line = (kind: string, text: string): TechnicalLine => ({block: 'touched', kind, text})
  return [
    line('figure', touched.drawnAs),
    ...touched.numbers.flatMap(({balloon, title}) => [line('balloon', balloon), line('part', title)]),
    ...touched.others.flatMap(({balloon, title}) => [
      line('balloon outside', balloon),
      line('part outside', title),
    ]),
  ]
}

function sectionLines(section: BoundSection): readonly TechnicalLine[] {
  const head = [
    {block: section.id, kind: 'section', text: section.title},
    ...section.intro.map((text) => ({block: section.id, kind: 'intro', text: wordsOf(text)})),
    ...section.cautions.flatMap((caution) => cautionLines(caution)),
  ]
  return [
    ...head.map((line) => ({...line, within: section.id})),
    ...section.items.flatMap((item) => itemLines(item).map((line) => ({...line, within: item.id}))),
  ]
}

function itemLines(item: BoundItem): readonly TechnicalLine[] {
  if (item.kind === 'step') return stepLines(item)
  return [
    {block: item.id, kind: 'variant', text: item.variant ?? ''},
    {block: item.id, kind: 'hold', text: item.title},
    ...item.text.map((text) => ({block: item.id, kind: 'hold', text: wordsOf(text)})),
    {block: item.id, kind: 'signed-by', text: item.signedBy},
    {block: item.id, kind: 'second-by', text: item.secondBy},
  ]
}

function stepLines(step: BoundStep): readonly TechnicalLine[] {
  return [
    {block: step.id, kind: 'variant', text: step.variant ?? ''},
    ...step.cautions.flatMap((caution) => cautionLines(caution)),
    ...step.recalls.map((one) => ({block: step.id, kind: 'recall', text: `${one.word} ${one.number}`})),
    {block: step.id, kind: 'number', text: String(step.number)},
    {block: step.id, kind: 'urgent', text: step.urgent ?? ''},
    {block: step.id, kind: 'step', text: wordsOf(step.instruction)},
    ...step.parts.flatMap((part) => partLines(part, step.id)),
  ]
}

function partLines(part: BoundPart, step: string): readonly TechnicalLine[] {
  const line = (kind: string, text: string, block = step): TechnicalLine => ({block, kind, text})
  switch (part.kind) {
    case 'note':
      return [line('note', wordsOf(part.text))]
    case 'value':
      return [line('variant', part.variant ?? ''), ...valueLines(part.line)]
    case 'reading':
      return readingLines(part)
    case 'wait':
      return [...valueLines(part.least), line('missed', part.missed, part.id)]
    case 'repeat':
      return [line(`repeat ${part.boxes}`, part.until)]
    case 'alternatives':
      return part.items.flatMap((item) => [
        line('variant', item.variant ?? '', item.id),
        line('choice', wordsOf(item.text), item.id),
      ])
    case 'second-person':
      return [line('second-person', part.what, part.id)]
    case 'figure':
      return [
        line('variant', part.variant ?? ''),
        line('figure', part.figure.data),
        ...part.figure.values.flatMap(valueLines),
        line('caption', part.figure.caption),
      ]
    case 'isolate':
    case 'restore':
      return part.points.flatMap((point) => isolationLines(point, part.kind))
    case 'identify':
      return [line('identify', part.fact), ...part.choices.map((text) => line('choice', text))]
    case 'cargo-table':
      return [
        ...part.cargoes.flatMap((cargo) => [
          line('cargo', cargo.title, cargo.id),
          line('word', cargo.word, cargo.id),
          ...cargo.hazards.map((text) => line('hazard', text, cargo.id)),
          line('density', cargo.density, cargo.id),
          ...[cargo.least, cargo.most].flatMap((cell) => [
            line('pressure', cell.text, cargo.id),
            line('because', cell.because, cargo.id),
          ]),
          line('no-window', cargo.noWindow, cargo.id),
          line('purge-medium', cargo.purgeMedium, cargo.id),
          line('protection', cargo.protection, cargo.id),
        ]),
        line('missing', part.missing),
      ]
    case 'material-table':
      return [
        ...part.parts.flatMap((one) => [
          line('wetted', one.title, one.id),
          line('material', one.material, one.id),
        ]),
        ...part.cargoes.flatMap((cargo) => [
          line('cargo', cargo.title, cargo.id),
          ...cargo.cells.flatMap((cell) => [
            line('suitability', cell.text, cargo.id),
            line('because', cell.note, cargo.id),
          ]),
          line('result', cargo.result, cargo.id),
        ]),
      ]
    case 'entry-limits':
      return part.limits.flatMap((limit) => [
        line('gas', limit.gas, limit.id),
        line('limit', limit.limit, limit.id),
      ])
    case 'tally':
      return part.what.map((text) => line('tally', text, part.id))
    case 'write-in':
      return [
        ...part.columns.map((text) => line('column', text, part.id)),
        ...part.what.map((text) => line('write-in', text, part.id)),
      ]
    default:
      return neverReached(part)
  }
}

function readingLines(reading: BoundReading): readonly TechnicalLine[] {
  const line = (kind: string, text: string): TechnicalLine => ({block: reading.id, kind, text})
  return [
    line('variant', reading.variant ?? ''),
    line(`reading ${reading.phase}`, reading.title),
    line('unit', reading.unit),
    line('instrument', reading.instrument),
    line('formula', reading.formula),
    ...reading.stations.map((text) => line('station', text)),
    ...reading.limits.flatMap(limitLines),
  ]
}

function neverReached(value: never): never {
  throw new Error(`Unexpected part ${JSON.stringify(value)}`)
}
