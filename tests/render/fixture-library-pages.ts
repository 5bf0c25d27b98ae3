import type {Page} from '../../src/handbook-model/pages.ts'
import {caution, head, link, text, value} from './fixture-parts.ts'

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
            torque: text('wall-torque'),
            lubrication: text('wall-lubrication'),
            passes: text('wall-passes'),
            order: text('wall-order'),
            wrench: text('wall-wrench'),
            locking: text('wall-locking'),
          },
        ],
        clearances: [
          {
            id: 'ring',
            ring: text('wall-ring'),
            runningDiameter: text('wall-diameter'),
            newClearance: text('wall-new'),
            minimumNew: text('wall-minimum'),
            renewal: text('wall-renewal'),
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
        usedIn,
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
]
