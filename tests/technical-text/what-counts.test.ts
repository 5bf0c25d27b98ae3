import {describe, expect, test} from 'vitest'
import type {Page} from '../../src/handbook-model/pages.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {handbook} from '../compile/handbook-for-tests.ts'
import {textsIn} from '../compile/page-walker.ts'

const {pages} = handbook()

/** Fields of the head that do not count on any page: addresses, language and where a page was made from. */
const ofHead = ['id', 'language', 'madeFrom', 'path', 'shownAs'].map((one) => `head.${one}`)
/** Of a picture, what it is drawn from is a line of its own. */
function ofPicture(field: string): readonly string[] {
  return ['alternative', 'height', 'path', 'size', 'svg', 'width'].map((one) => `${field}.${one}`)
}
/** The id of a pump is an address; all that its head prints counts, and its plan repeats the tank. */
const ofPump = ['head.position.id', ...ofPicture('head.position.plan')]
/** Explanations and marks of a value; figure, unit, further figures and condition count. */
const ofValue = (field: string): readonly string[] =>
  ['basis', 'known', 'mark', 'title'].map((one) => `${field}.${one}`)
/** Of a limit, the limit itself, what follows outside it and the action count. */
const ofLimit = (field: string): readonly string[] =>
  ['because', 'known', 'title'].map((one) => `${field}.${one}`)
/** Text with marks: the words count, where a value leads does not. */
const ofText = (field: string): readonly string[] => [`${field}.known`]

/**
 * Every field of a page model that may change without a new revision, links and the kinds of unions apart.
 *
 * A field that is in no list counts, so a new field of a model fails here until it is decided.
 */
const editorial: Readonly<Record<Page['kind'], readonly string[]>> = {
  procedure: [
    ...ofHead,
    ...ofPump,
    'activity',
    'competence',
    'hours',
    'isCard',
    'isOfDesign',
    'isTried',
    ...ofText('purpose'),
    'records',
    ...ofText('before'),
    ...ofText('sections.intro'),
    ...ofText('sections.items.text'),
    ...['id', 'wide'].map((one) => `sections.items.parts.figure.${one}`),
    ...ofPicture('sections.items.parts.figure.picture'),
    ...ofValue('sections.items.parts.figure.values'),
    ...ofValue('sections.items.parts.least'),
    ...ofValue('sections.items.parts.line'),
    ...ofLimit('sections.items.parts.limits'),
    'sections.items.parts.role',
    // Said by the words of the table; where they come from is explained and not ordered.
    ...['cargoes.cells.outcome', 'cargoes.outcome', 'parts.known', 'source'].map(
      (one) => `sections.items.parts.${one}`,
    ),
    'sections.items.recalls.title',
    // Said by the lines that are there or not.
    ...['sections.cautions.again', 'sections.items.cautions.again'],
    ...['number', 'title', 'word'].map((one) => `cautionsUsed.${one}`),
    ...[...ofValue('valuesUsed'), 'valuesUsed.figure', 'valuesUsed.id', 'valuesUsed.unit'],
    ...['valuesUsed.condition', 'valuesUsed.more'],
  ],
  position: [
    ...ofHead,
    ...ofPump,
    ...['description', 'intendedUse', 'misuse'],
    ...['asFitted.known', 'asFitted.label', 'components.label'],
    ...ofValue('ratings'),
    ...ofLimit('limits'),
    ...['jobs.interval', 'jobs.purpose'],
    ...['symptoms.text', 'records.about'],
    ...['procedures.competence', 'procedures.hours', 'procedures.people'],
  ],
  job: [
    ...ofHead,
    ...ofPump,
    ...['hours', 'intervalMark', 'intervalReason', 'purpose'],
    ...['parts.aboard', 'parts.balloon', 'parts.usedIn', 'tools.aboard', 'tools.usedIn'],
    ...['procedures.competence', 'procedures.hours', 'procedures.people'],
  ],
  symptoms: [...ofHead, ...ofPump],
  explanations: [
    ...ofHead,
    ...ofPump,
    ...['basis', 'known', 'mark'].map((one) => `values.line.${one}`),
    ...['missing', 'namedIn', 'rounding', 'sources.number', 'sources.where', 'words'].map(
      (one) => `values.${one}`,
    ),
    ...['number', 'status'].map((one) => `sources.${one}`),
  ],
  values: [...ofHead, ...ofValue('designs.others'), 'designs.title', 'designs.torques.count'],
  cautions: [
    ...ofHead,
    'cautions.caution.again',
    'cautions.caution.number',
    'cautions.residualRisk',
    'words.meaning',
    'words.word',
  ],
  start: [
    ...ofHead,
    ...['plan.alternative', 'plan.svg'],
    ...['procedures.competence', 'procedures.hours', 'procedures.people'],
    ...['overviews.about', 'records.text'],
    ...['jobs.interval', 'jobs.purpose', 'jobs.title', 'locations', 'particulars.label', 'safety'],
    ...['positions.design', 'positions.notKnown', 'positions.serial'],
  ],
  tools: ofHead,
  parts: [...ofHead, 'parts.class'],
  sources: [...ofHead, 'sources.edition', 'sources.howKnown', 'sources.status'],
  words: [...ofHead, 'terms.notUsed'],
  failures: [...ofHead, 'symptoms.text', 'units.id', 'units.title'],
  work: [...ofHead, ...['doneBy', 'mark', 'reason'].map((one) => `groups.jobs.${one}`), 'groups.title'],
}

/** A union's own name, or a link; a point of isolation has a kind that is read, a head a path of its own. */
function leadsElsewhere(where: string): boolean {
  if (/(?:points|isolation)\.kind$/u.test(where)) return false
  return (
    /\.kind$|\.(?:link|usedIn|source|valuesPages)\./u.test(`.${where}`) ||
    (/(?:path|fragment)$/u.test(where) && !where.startsWith('head.')) ||
    /^(?:jobs|positions|procedures)\.link\./u.test(where)
  )
}

/** Fields that count and fields that do not, found by changing each leaf of a page by itself. */
function judged(page: Page): {readonly counted: ReadonlySet<string>; readonly ignored: ReadonlySet<string>} {
  const before = technicalText(page, 'V')
  const counted = new Set<string>()
  const ignored = new Set<string>()
  for (const [index, leaf] of textsIn(page).entries()) {
    const field = leaf.where.replace(/\[\d+\]/gu, '').replace(/^\./u, '')
    if (leadsElsewhere(field)) continue
    const counts = technicalText(withLeafChanged(page, index), 'V') !== before
    ;(counts ? counted : ignored).add(field)
  }
  return {counted, ignored}
}

/** A copy of the page in which the leaf of this number is another. */
function withLeafChanged(page: Page, index: number): Page {
  let seen = -1
  const copy: Page = JSON.parse(
    JSON.stringify(page, (_key, value: unknown) => {
      if (typeof value === 'object' || value === undefined) return value
      seen += 1
      if (seen !== index) return value
      return typeof value === 'number'
        ? value + 1
        : typeof value === 'boolean'
          ? !value
          : `${String(value)} anew`
    }),
  )
  return copy
}

describe('a change of a field gives another technical text', () => {
  const kinds = [...new Set(pages.map((page) => page.kind))]

  test.each(kinds)('on a page of the kind `%s`, unless the field is listed as not technical', (kind) => {
    const all = pages.filter((page) => page.kind === kind).map(judged)
    const counted = new Set(all.flatMap((one) => [...one.counted]))
    const ignored = new Set(all.flatMap((one) => [...one.ignored]).filter((field) => !counted.has(field)))
    const listed = new Set(editorial[kind])
    expect([...ignored].filter((field) => !listed.has(field)).sort()).toEqual([])
    expect([...counted].filter((field) => listed.has(field)).sort()).toEqual([])
  })
})

test('of a marked section the numbers, the titles and the pump that it is drawn of count, not its files', () => {
  const page = pages.find((one) => one.kind === 'procedure')
  if (page?.kind !== 'procedure') throw new Error('Unexpected handbook without a procedure, expected one')
  const [drawn, outside] = [
    {balloon: '4', title: 'ring'},
    {balloon: '27', title: 'valve'},
  ]
  const touched = {
    path: 'figures/section-0.svg',
    width: 90,
    height: 150,
    marks: {path: 'figures/marks-0.svg', svg: '<svg/>'},
    alternative: 'Marked is 4 ring.',
    numbers: [drawn],
    others: [outside],
    drawnAs: 'Drawn as 4S.',
  }
  const {counted, ignored} = judged({...page, touched})
  const ofMarks = (fields: ReadonlySet<string>): readonly string[] =>
    [...fields].filter((field) => field.startsWith('touched.')).sort()
  expect(ofMarks(counted)).toEqual(
    ['drawnAs', 'numbers.balloon', 'numbers.title', 'others.balloon', 'others.title'].map(
      (one) => `touched.${one}`,
    ),
  )
  expect(ofMarks(ignored)).toEqual(
    ['alternative', 'height', 'marks.svg', 'width'].map((one) => `touched.${one}`),
  )
})
