import type {HandbookPages} from '../../src/handbook-model/handbook-pages.ts'
import type {Page, VesselHead} from '../../src/handbook-model/pages.ts'
import {libraryPages} from './fixture-library-pages.ts'
import {
  bound,
  caution,
  cautionLine,
  everyPart,
  head,
  limit,
  link,
  unknownValue,
  value,
} from './fixture-parts.ts'
import {picture, pictures, touchedParts} from './fixture-picture.ts'
import {points} from './fixture-points.ts'
import {text} from './fixture-text.ts'

const vessel: VesselHead = {
  id: 'vessel-a',
  name: text('vessel-name'),
  hullNumber: '0937241',
  issuer: text('issuer'),
  contact: [text('contact-a'), text('contact-b')],
  owner: text('owner'),
  approvedBy: text('approver'),
  demonstration: true,
  language: 'en',
}

const danger = caution(1, 'DANGER')
const warning = caution(2, 'WARNING')
const dirt = caution(3, 'NOTICE')
const procedureLine = {
  link: link('to-procedure', 'p/4s/wear.html', 'take-off'),
  people: text('line-people'),
  hours: text('line-hours'),
  competence: text('line-competence'),
}
const toolLine = {
  id: 'wrench',
  title: text('tool-title'),
  size: text('tool-size'),
  note: text('tool-note'),
  link: link('to-tool', 'tools.html', 'wrench'),
}
const partLine = {
  id: 'ring',
  title: text('part-title'),
  size: text('part-size'),
  quantity: text('part-quantity'),
  note: text('part-note'),
  balloon: text('balloon'),
  link: link('to-part', 'parts.html', 'ring'),
}
const usedIn = [link('used-in', 'p/4s/wear.html', 'take-off')]

const procedure: Page = {
  kind: 'procedure',
  head: head('p/4s/wear.html'),
  activity: text('activity'),
  isCard: false,
  isOfDesign: false,
  isTried: true,
  performedBy: text('performed-by'),
  supervisedBy: text('supervised-by'),
  competence: text('competence'),
  people: text('people'),
  hours: text('hours'),
  clearHeight: text('clear-height'),
  weather: text('weather'),
  permits: [text('permit')],
  purpose: [bound('purpose')],
  before: [bound('before')],
  after: [bound('after')],
  tools: [toolLine],
  parts: [partLine],
  touched: touchedParts,
  records: [text('record')],
  sections: [
    {
      id: 'enter',
      title: text('section-enter'),
      intro: [bound('intro')],
      cautions: [danger, warning],
      items: [
        {
          kind: 'hold',
          id: 'nameplate',
          variant: text('hold-variant'),
          title: text('hold-title'),
          text: [bound('hold-text')],
          signedBy: text('signed-by'),
          secondBy: text('second-by'),
        },
      ],
    },
    {
      id: 'take-off',
      title: text('section-take-off'),
      intro: [],
      cautions: [],
      items: [
        {
          kind: 'step',
          id: 'loosen',
          number: 1,
          variant: text('step-variant'),
          cautions: [dirt],
          recalls: [cautionLine(danger), cautionLine(warning)],
          instruction: bound('instruction'),
          parts: everyPart,
        },
        {
          kind: 'step',
          id: 'wipe',
          number: 2,
          cautions: [],
          recalls: [],
          instruction: bound('last-step'),
          parts: [],
        },
      ],
    },
  ],
  cautionsUsed: [danger, warning, dirt].map(cautionLine),
  valuesUsed: [value('used')],
}

const job: Page = {
  kind: 'job',
  head: head('p/4s/job-service.html'),
  purpose: text('job-purpose'),
  interval: text('job-interval'),
  intervalReason: text('job-reason'),
  intervalMark: text('job-mark'),
  procedures: [procedureLine],
  hours: text('job-hours'),
  tools: [{...toolLine, aboard: text('tool-aboard'), usedIn: text('tool-used-in')}],
  parts: [{...partLine, aboard: text('part-aboard'), usedIn: text('part-used-in')}],
  asFound: [text('as-found')],
  asLeft: [text('as-left')],
  isolation: points('job'),
  cautions: [cautionLine(danger)],
}

const position: Page = {
  kind: 'position',
  head: head('p/4s/index.html'),
  description: text('description'),
  intendedUse: text('intended-use'),
  misuse: text('misuse'),
  asFitted: [
    {label: text('fitted-label'), text: text('fitted-text'), known: true},
    {label: text('gap-label'), text: 'NOT KNOWN', known: false},
  ],
  components: [{label: text('component-label'), text: text('component-text')}],
  ratings: [value('rating'), unknownValue('rating-gap')],
  limits: [limit('position-limit')],
  isolation: points('position'),
  section: {
    path: 'figures/design-a.svg',
    width: 900,
    height: 1500,
    alternative: text('section-alternative'),
    numbers: [
      {balloon: '4', title: text('section-ring')},
      {balloon: '6', title: text('section-impeller')},
    ],
    variant: [text('section-fit'), text('section-lip')],
    sizes: [value('section-size'), unknownValue('section-size-gap')],
    smallParts: [{label: text('small-label'), text: text('small-text')}],
  },
  arrangement: {
    picture: picture('arrangement', 'wide'),
    lengths: text('arrangement-lengths'),
    values: [value('arrangement-length')],
    numbers: [{balloon: 'P1', title: text('arrangement-strainer')}],
  },
  jobs: [
    {
      link: link('to-job', 'p/4s/job-service.html'),
      purpose: text('to-job-purpose'),
      interval: text('to-job-interval'),
    },
  ],
  procedures: [procedureLine],
  symptoms: link('to-symptoms', 'p/4s/symptoms.html'),
  valuesPages: [link('to-values', 'p/4s/values.html')],
  records: {link: link('to-records', 'records/pump-4s.html'), about: text('records-about')},
}

const explained: Page = {
  kind: 'explanations',
  head: head('p/4s/values.html'),
  values: [
    {
      line: value('torque'),
      words: text('words'),
      formula: [text('formula')],
      symbols: [{symbol: text('symbol'), meaning: text('meaning')}],
      inputs: [
        {
          symbol: text('input-symbol'),
          title: text('input-title'),
          printed: text('input-printed'),
          origin: text('input-origin'),
          way: link('to-other-value', 'p/4s/wear.html', 'take-off'),
          source: 1,
          writtenAt: text('input-place'),
        },
      ],
      steps: [
        {
          symbol: text('step-symbol'),
          title: text('step-title'),
          printed: text('step-printed'),
          origin: text('step-origin'),
          source: 0,
          writtenAt: '',
        },
      ],
      missing: [],
      rounding: text('rounding'),
      sources: [{number: 1, where: text('source-where')}],
      usedIn,
      namedIn: [text('named-in')],
    },
  ],
  sources: [
    {number: 1, link: link('source-link', 'sources.html', 'standard'), status: text('source-status')},
  ],
}

const symptoms: Page = {
  kind: 'symptoms',
  head: head('p/4s/symptoms.html'),
  symptoms: [
    {
      id: 'drips',
      title: text('symptom-title'),
      variant: text('symptom-variant'),
      causes: [
        {
          cause: text('symptom-cause'),
          check: text('symptom-check'),
          procedures: [link('symptom-way', 'p/4s/wear.html')],
          advice: text('symptom-advice'),
        },
      ],
    },
  ],
}

const start: Page = {
  kind: 'start',
  plan: {svg: '<svg class="plan"></svg>', alternative: 'plan'},
  procedures: [{...procedureLine, link: link('to-ship', 'ship/card.html')}],
  head: head('index.html'),
  positions: [
    {
      link: link('to-pump', 'p/4s/index.html'),
      serial: text('start-serial'),
      design: text('start-design'),
      notKnown: 3,
    },
  ],
  records: [link('to-records-of-pump', 'records/pump-4s.html')],
  portable: [{link: link('to-portable', 'p/4s/index.html'), keptAt: text('start-kept-at')}],
  overviews: [{link: link('to-overview', 'work.html'), about: text('overview-about')}],
  jobs: [{title: text('start-job'), purpose: text('start-purpose'), interval: text('start-interval')}],
  urgent: [
    {
      block: 'urgent-t-07',
      number: 'T-07',
      title: text('urgent-started'),
      validTo: '2032-05-14',
      to: text('urgent-start-to'),
    },
  ],
  safety: [text('safety')],
  particulars: [{label: text('particular-label'), text: text('particular-text')}],
  locations: [text('location')],
}

const {position: _pump, ...headOfShip} = head('ship/card.html')
const shipCard: Page = {...procedure, head: headOfShip}

/** A handbook of one pump with one page of each kind, every field filled with a text of its own. */
export const fixture: HandbookPages = {
  vessel,
  pages: [start, position, procedure, shipCard, job, symptoms, explained, ...libraryPages],
  figures: [
    {path: 'figures/design-a.svg', svg: '<svg xmlns="http://www.w3.org/2000/svg"></svg>'},
    touchedParts.marks,
    ...pictures,
  ],
  records: [],
}
