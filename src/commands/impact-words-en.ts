import type {DifferenceArea} from '../issues/page-differences.ts'
import type {PreviewBase} from './preview-bases.ts'

/** What became of a thing, in one word. */
export const changeWords = {
  added: 'new',
  changed: 'changed',
  removed: 'gone',
  moved: 'moved',
  renumbered: 'renumbered',
} as const

/** English words of the reviewer's page. */
export const impactWords = {
  demonstration: 'Demonstration data, not for service',
  page: {
    title: 'What this edit moves',
    lead: 'Read each difference on both sides and tick it. What is not listed reads as before.',
    nothing: 'Nothing moves: every page and value reads as before.',
    against: 'held against',
    counts: 'What moves',
    before: 'before',
    after: 'after',
    absent: 'not there',
    pages: 'Every page that moves',
    pagesHint: 'Beside each page the revision of its newest issue.',
    columns: {
      page: 'page id',
      pump: 'pump',
      title: 'title',
      revision: 'issued as',
      change: 'what',
    },
    sign: 'Review',
    ticked: 'ticked',
    open: 'Boxes are still open.',
    complete: 'Every box is ticked.',
    role: 'Reviewer, role',
    day: 'Day',
    name: 'Signature',
    statement:
      'Ticks are not kept: print the page or save it as PDF. The approval itself is written by the command approve.',
    palettes: {pc: 'As the PC', day: 'Day', dusk: 'Dusk', night: 'Night'},
    palette: 'Colours',
  },
  areas: {
    values: {title: 'Values', hint: 'Figure and condition, on every pump where they move in the same way.'},
    limits: {title: 'Limits', hint: 'What a reading is judged by, and what is done outside it.'},
    steps: {title: 'Steps, holds and notes', hint: ''},
    cautions: {title: 'Cautions and urgent revisions', hint: ''},
    isolation: {title: 'Isolation and restoration', hint: ''},
    other: {title: 'Other text', hint: ''},
    numbers: {title: 'Numbers that moved on', hint: 'Steps and cautions behind one that came or went.'},
  } satisfies Record<DifferenceArea, {title: string; hint: string}>,
  whole: {title: 'Pages that came or went', hint: 'A new page is read whole, in a draft built with build.'},
  pageNew: 'the whole page',
  pageGone: 'the whole page',
  pumps: 'pumps',
  pages: 'pages',
  noPage: 'no page shows it',
  noRevision: 'never',
  renumbered: 'numbers',
  counts: {
    values: 'values',
    pumps: 'pumps with moved values',
    steps: 'steps, holds, notes',
    cautions: 'cautions, urgent revisions',
    pages: 'pages',
    vessels: 'vessels',
  },
  total: (count: number): string => (count === 1 ? 'of 1 difference' : `of ${count} differences`),
  lines: (count: number): string => (count === 1 ? '1 line' : `${count} lines`),
  base: ({issue, date, pages, values, pageCount}: PreviewBase): string => {
    if (pages === 'none') return `never issued: all ${pageCount} pages would be new`
    const side = (one: PreviewBase['pages']): string =>
      one === 'issue' ? `issue ${issue} of ${date}` : 'an earlier content'
    return pages === values ? side(pages) : `${side(pages)}; values: ${side(values)}`
  },
} as const
