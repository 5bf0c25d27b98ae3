import type {Page} from '../../src/handbook-model/pages.ts'
import {caution, head, link, value} from './fixture-parts.ts'
import {text} from './fixture-text.ts'

const usedIn = [link('used-in', 'p/4s/wear.html', 'take-off')]

/** Pages that are not of one pump. */
export const libraryPages: readonly Page[] = [
  {
    kind: 'values',
    head: head('values.html'),
    designs: [
      {
        id: 'a',
        title: text('wall-design'),
        torques: [
          {
            id: 'hub-bolts',
            joint: text('wall-joint'),
            fastener: text('wall-fastener'),
            count: '8',
            torque: link('wall-torque', 'p/4s/values.html', 'torque'),
            lubrication: text('wall-lubrication'),
            passes: link('wall-passes', 'p/4s/values.html', 'torque'),
            order: link('wall-order', 'p/4s/values.html', 'torque'),
            wrench: text('wall-wrench'),
            locking: text('wall-locking'),
          },
        ],
        clearances: [
          {
            id: 'ring',
            ring: text('wall-ring'),
            runningDiameter: link('wall-diameter', 'p/4s/values.html', 'torque'),
            newClearance: link('wall-new', 'p/4s/values.html', 'torque'),
            minimumNew: link('wall-minimum', 'p/4s/values.html', 'torque'),
            renewal: link('wall-renewal', 'p/4s/values.html', 'torque'),
            because: text('wall-because'),
          },
        ],
        others: [value('wall-other')],
      },
    ],
  },
  {
    kind: 'cautions',
    head: head('cautions.html'),
    words: [{word: 'DANGER', meaning: text('meaning')}],
    cautions: [
      {
        caution: {...caution(3, 'NOTICE'), link: link('anchor', 'cautions.html', 'dirt')},
        residualRisk: text('left-over'),
        source: link('caution-source', 'sources.html', 'standard'),
        usedIn: [{procedure: text('caution-procedure'), places: usedIn}],
      },
    ],
  },
  {
    kind: 'tools',
    head: head('tools.html'),
    tools: [
      {
        id: 'wrench',
        title: text('tools-title'),
        size: text('tools-size'),
        instrument: text('tools-instrument'),
        usedIn,
      },
    ],
  },
  {
    kind: 'parts',
    head: head('parts.html'),
    parts: [
      {
        id: 'ring',
        title: text('parts-title'),
        size: text('parts-size'),
        class: text('parts-class'),
        balloon: text('parts-balloon'),
        usedIn: [],
      },
    ],
  },
  {
    kind: 'sources',
    head: head('sources.html'),
    sources: [
      {
        id: 'standard',
        title: text('source-title'),
        edition: text('source-edition'),
        status: text('source-state'),
        howKnown: text('source-known'),
        usedIn,
      },
    ],
  },
  {
    kind: 'words',
    head: head('words.html'),
    terms: [{id: 'hub', term: text('term'), meaning: text('term-meaning'), notUsed: [text('term-not')]}],
  },
  {
    kind: 'work',
    head: head('work.html'),
    groups: [
      {
        title: text('work-group'),
        jobs: [
          {
            id: 'service',
            title: text('work-job'),
            interval: text('work-interval'),
            reason: text('work-reason'),
            mark: text('work-mark'),
            trigger: text('work-trigger'),
            doneBy: text('work-done-by'),
            pumps: text('work-pumps'),
            onPumps: [link('work-tag', 'p/4s/job-service.html')],
          },
          {
            id: 'look',
            title: text('work-look'),
            interval: '',
            reason: text('look-reason'),
            mark: '',
            trigger: '',
            doneBy: text('look-done-by'),
            pumps: text('look-pumps'),
            onPumps: [],
          },
        ],
      },
    ],
  },
  {
    kind: 'failures',
    head: head('failures.html'),
    units: [
      {
        id: 'wet-end',
        title: text('unit-title'),
        parts: [
          {
            id: 'lower-ring',
            title: text('failing-part'),
            pumps: text('failing-pumps'),
            failures: [
              {
                mode: text('failing-mode'),
                procedures: [link('failing-procedure', 'p/4s/wear.html')],
                reason: '',
              },
              {mode: text('failing-gap'), procedures: [], reason: text('failing-reason')},
            ],
          },
          {
            id: 'casing',
            title: text('other-part'),
            pumps: '',
            failures: [{mode: text('other-mode'), procedures: [], reason: text('other-reason')}],
          },
        ],
      },
    ],
    symptoms: [link('failing-symptoms', 'p/4s/symptoms.html')],
  },
]
