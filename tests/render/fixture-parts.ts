import type {
  BoundCaution,
  BoundPart,
  BoundText,
  CautionLine,
  FigureCell,
  LimitLine,
  PageHead,
  PageLink,
  UrgentNotice,
  ValueLine,
} from '../../src/handbook-model/pages.ts'
import {picture} from './fixture-picture.ts'
import {points} from './fixture-points.ts'
import {text} from './fixture-text.ts'

/** A text of one inline. */
export const bound = (name: string): BoundText => [{kind: 'text', text: text(name)}]

/** A link to an element of a page that the fixture has. */
export const link = (name: string, path: string, fragment?: string): PageLink => ({
  text: text(name),
  path,
  ...(fragment === undefined ? {} : {fragment}),
})

/** A value that is known. */
export const value = (id: string, more: Partial<ValueLine> = {}): ValueLine => ({
  id,
  title: text(`${id}-title`),
  figure: '48',
  unit: 'N·m',
  known: true,
  more: [text(`${id}-more`)],
  condition: text(`${id}-condition`),
  basis: text(`${id}-basis`),
  mark: text(`${id}-mark`),
  link: link(`${id}-link`, 'p/4s/values.html', 'torque'),
  ...more,
})

/** A value that nobody knows. */
export const unknownValue = (id: string): ValueLine =>
  value(id, {
    figure: 'NOT KNOWN',
    unit: '',
    known: false,
    more: [],
    condition: text(`${id}-missing`),
    mark: '',
  })

/** A caution under a number of the page. */
export const caution = (number: number, word: BoundCaution['word']): BoundCaution => ({
  id: `caution-${number}`,
  number,
  again: false,
  word,
  title: text(`caution-${number}-title`),
  hazard: text(`hazard-${number}`),
  consequence: text(`consequence-${number}`),
  avoid: [text(`avoid-${number}-a`), text(`avoid-${number}-b`)],
  protection: [text(`protection-${number}`)],
  link: link(`caution-${number}-link`, 'cautions.html', 'dirt'),
})

/** A caution as one line. */
export const cautionLine = ({number, word, title, link: to}: BoundCaution): CautionLine => ({
  number,
  word,
  title,
  link: to,
})

/** An urgent revision with every field filled. */
const urgentNotice: UrgentNotice = {
  block: 'urgent-t-07',
  number: 'T-07',
  title: text('urgent-title'),
  validFrom: '2032-02-14',
  validTo: '2032-05-14',
  variant: text('urgent-variant'),
  from: text('urgent-from'),
  to: text('urgent-to'),
  pumps: text('urgent-pumps'),
  reason: text('urgent-reason'),
  word: 'WARNING',
  hazard: text('urgent-hazard'),
  consequence: text('urgent-consequence'),
  actions: [text('urgent-do')],
  instead: [{what: text('urgent-what'), text: text('urgent-instead')}],
  supersedes: text('urgent-supersedes'),
  cancelledBy: text('urgent-cancelled'),
}

/** A limit with its action. */
export const limit = (id: string): LimitLine => ({
  id,
  title: text(`${id}-title`),
  limit: text(`${id}-limit`),
  known: true,
  outside: 'RENEW',
  action: text(`${id}-action`),
  because: text(`${id}-because`),
})

const cell = (id: string): FigureCell => ({
  text: text(`${id}-text`),
  because: text(`${id}-because`),
  link: link(`${id}-text`, 'p/4s/values.html', 'torque'),
})

/** One part of a step of every kind. */
export const everyPart: readonly BoundPart[] = [
  {kind: 'note', text: bound('note')},
  {kind: 'value', variant: text('value-variant'), line: value('plate')},
  {kind: 'value', line: unknownValue('unknown-plate')},
  {
    kind: 'reading',
    id: 'ring-bore',
    variant: text('reading-variant'),
    title: text('reading-title'),
    phase: 'as-found',
    unit: 'mm diametral',
    stations: [text('station-a'), text('station-b')],
    instrument: text('instrument'),
    formula: '',
    limits: [limit('renewal')],
  },
  {
    kind: 'reading',
    id: 'ring-gap',
    title: text('derived-title'),
    phase: 'as-left',
    unit: 'mm diametral',
    stations: [],
    instrument: '',
    formula: text('derived-formula'),
    limits: [limit('minimum')],
  },
  {kind: 'wait', id: 'settle', least: value('least'), missed: text('missed')},
  {kind: 'repeat', until: text('until'), boxes: 4},
  {
    kind: 'alternatives',
    id: 'which',
    items: [
      {id: 'which-a', variant: text('choice-variant'), text: bound('choice-a')},
      {id: 'which-b', text: bound('choice-b')},
    ],
  },
  {kind: 'second-person', id: 'seen', what: text('seen')},
  {
    kind: 'figure',
    variant: text('figure-variant'),
    figure: {
      id: 'order',
      picture: picture('order', 'small'),
      caption: text('caption'),
      data: text('figure-data'),
      values: [value('figure-value')],
    },
  },
  {
    kind: 'figure',
    figure: {
      id: 'lines',
      picture: picture('lines', 'wide'),
      caption: text('wide-caption'),
      wide: true,
      data: text('wide-data'),
      values: [],
    },
  },
  {kind: 'isolate', role: 'pressure', points: points('isolate')},
  {kind: 'restore', role: 'pressure', points: points('restore')},
  {kind: 'identify', fact: text('fact'), choices: [text('fact-a'), text('fact-b')]},
  {kind: 'tally', id: 'things', what: [text('rags'), text('spanners')]},
  {
    kind: 'write-in',
    id: 'air',
    what: [text('level-top'), text('level-bottom')],
    columns: [text('oxygen'), text('hour')],
  },
  {kind: 'write-in', id: 'told', what: [text('name-told')], columns: []},
  {
    kind: 'cargo-table',
    missing: text('cargo-missing'),
    cargoes: [
      {
        id: 'cargo',
        title: text('cargo-title'),
        word: 'DANGER',
        density: text('density'),
        hazards: [text('hazard-a'), text('hazard-b')],
        purgeMedium: text('purge-medium'),
        least: cell('least-pressure'),
        most: cell('most-pressure'),
        noWindow: text('no-window'),
        protection: text('cargo-protection'),
      },
    ],
  },
  {
    kind: 'material-table',
    parts: [
      {id: 'steel-parts', title: text('wetted-steel'), material: text('material-steel'), known: true},
      {id: 'cargo-rings', title: text('wetted-rings'), material: text('material-unknown'), known: false},
    ],
    cargoes: [
      {
        id: 'cargo',
        title: text('wetting-cargo'),
        cells: [
          {outcome: 'suitable', text: text('word-suitable'), note: text('note-suitable')},
          {outcome: 'unknown', text: text('word-unknown'), note: text('note-unknown')},
        ],
        outcome: 'unknown',
        result: text('loading-result'),
      },
    ],
    source: text('material-source'),
  },
  {
    kind: 'entry-limits',
    limits: [{id: 'oxygen', gas: text('gas'), limit: text('gas-limit'), source: text('gas-source')}],
  },
]

/** Head of a page at a path; below `p/4s/` it names the pump. */
export function head(path: string, more: Partial<PageHead> = {}): PageHead {
  const name = path.replace(/\.html$/u, '')
  return {
    id: `vessel-a/${name}`,
    shownAs: name,
    path,
    title: text(`title-of-${name.replaceAll('/', '-')}`),
    language: 'en',
    madeFrom: [],
    ...(path.startsWith('p/4s/')
      ? {
          urgent: [urgentNotice],
          position: {
            id: '4s',
            tag: '4S',
            tankTag: text('tank-tag'),
            serial: text('serial'),
            design: text('design'),
            variant: text('variant'),
            keptAt: '',
            stackLength: text('stack-length'),
            tankVolume: text('tank-volume'),
            critical: true,
            plan: picture('plan', 'small'),
          },
        }
      : {}),
    ...more,
  }
}
