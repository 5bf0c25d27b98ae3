import type {PageHead} from '../../src/handbook-model/pages.ts'
import type {PublicationPage} from '../../src/handbook-model/publication.ts'

function head(id: string, path: string): PageHead {
  return {id: `vessel-a/${id}`, shownAs: id, path, title: `Title of ${id}`, language: 'en', madeFrom: []}
}

const one = {id: 'vessel-a/words', title: 'Words <b>', path: 'words.html', revision: '2a'}
const alike = {title: one.title, revision: one.revision, reason: '', pages: [{id: one.id, path: one.path}]}
const line = {done: 'changed', block: 'hub-bolts.torque', kind: 'value', before: '61 <b>', after: ''} as const

const listed = {
  number: 'T-07',
  title: 'Bolts <b>',
  validTo: '2031-06-14',
  from: 'valid from 2031-03-14',
  to: 'valid to 2031-06-14',
  pages: [alike],
}

const hours = {
  component: 'sleeve <b>',
  read: true,
  known: true,
  hours: '4120 <b>',
  day: '2031-02-14 <b>',
  counted: 'meter <b>',
  since: '12 <b>',
  sinceKnown: true,
  notes: ['landed <b>', 'seen <b>'],
}

const calibration = {
  tool: 'gauge <b>',
  size: '6 bar <b>',
  number: 'PG <b>',
  read: true,
  day: '2031-02-14 <b>',
  certificate: 'C <b>',
  certificateKnown: true,
  validTo: '2032-02-14 <b>',
  validToKnown: true,
  basis: 'calibration <b>',
  mark: 'practice <b>',
  note: 'after repair <b>',
}

const typed = {label: 'Hours <b>', type: 'text', value: '1 <b>', options: []} as const

/** One page of each kind about an issue and of records, with every list filled. */
export const publication: readonly PublicationPage[] = [
  {
    kind: 'effective',
    head: head('effective', 'effective.html'),
    issue: '2031-03 of 2031-03-14',
    parts: [{number: 1, path: 'effective.html'}],
    first: true,
    urgent: [listed],
    count: 1,
    lines: [{...one, date: '2031-03-14', code: 'ABCD-EFGH-J', status: 'changed'}],
  },
  {
    kind: 'changed',
    head: head('changed', 'changed.html'),
    issue: '2031-03 of 2031-03-14',
    against: '2031-02 of 2031-02-14',
    parts: [{number: 1, path: 'changed.html'}],
    first: true,
    urgent: [listed],
    changes: [{reasons: ['why <b>'], pages: [alike], steps: [line], cautions: [line], values: [line]}],
    added: [alike],
    wording: [alike],
    withdrawn: [{...alike, reason: 'gone'}],
  },
  {
    kind: 'withdrawn',
    head: head('4s/old', 'p/4s/old.html'),
    revision: '2',
    code: 'ABCD-EFGH-J',
    date: '2031-02-14',
    reason: 'gone',
    replacedBy: one,
  },
  {
    kind: 'hours',
    head: head('hours', 'records/hours.html'),
    upTo: 'Records up to <b>.',
    source: 'Source: <b>.',
    pumps: [
      {
        link: {text: '4S', path: 'p/4s/index.html'},
        lines: [hours, {...hours, component: 'head <b>', read: false, known: false}],
      },
    ],
    removed: [{...hours, component: 'motor <b>', sinceKnown: false}],
  },
  {
    kind: 'pump-record',
    head: head('4s/records', 'records/pump-4s.html'),
    upTo: 'Records up to <b>.',
    source: 'Source: <b>.',
    charts: [
      {
        id: 'wear-lower-ring',
        kind: 'wear',
        title: 'Wear <b>',
        figure: {svg: '<svg class="chart" viewBox="0 0 9 9" role="img" aria-label="wear"></svg>'},
        statements: ['Due <b>.'],
        json: '{"what":"\\u003cb>"}',
        columns: ['Day <b>', 'Clearance <b>'],
        rows: [{head: '2031-02-14 <b>', cells: ['0.84 <b>']}],
        form: [
          {legend: '', fields: [{...typed, id: 'f-1', name: 'hours'}]},
          {
            legend: 'start <b>',
            fields: [{...typed, id: 'f-2', name: 'phase', options: [{value: 'found', label: 'found <b>'}]}],
          },
        ],
      },
    ],
    fitted: [hours],
  },
  {
    kind: 'calibrations',
    head: head('calibrations', 'records/calibrations.html'),
    upTo: 'Records up to <b>.',
    source: 'Source: <b>.',
    places: [
      {
        location: 'cabinet <b>',
        lines: [
          calibration,
          {...calibration, certificate: 'none <b>', certificateKnown: false, validToKnown: false},
          {...calibration, read: false, day: 'never <b>', validTo: 'no line <b>'},
        ],
      },
    ],
  },
]
