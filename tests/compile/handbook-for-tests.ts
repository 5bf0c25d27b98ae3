import {compilePages} from '../../src/compile/compile-pages.ts'
import type {Content} from '../../src/handbook-model/content.ts'
import type {HandbookPages} from '../../src/handbook-model/handbook-pages.ts'
import type {Page} from '../../src/handbook-model/pages.ts'
import {contentOf, valuesFor} from './content-for-tests.ts'
import {at, english, job, place, to, unknownValue} from './data-for-tests.ts'
import {
  choice,
  derived,
  equals,
  hold,
  procedure,
  reading,
  section,
  sentence,
  step,
  uses,
  valuePlate,
} from './procedures-for-tests.ts'

/** A procedure that uses every part of the procedure language. */
export const wear = procedure(
  'wear',
  [
    section('enter', [hold('nameplate'), step('climb', {actions: ['enter']})], {
      cautions: uses('gas'),
      intro: [sentence('It weighs {mass.head}.')],
    }),
    section('open', [
      step('find', {parts: [{kind: 'identify', fact: to('backstop'), place}]}),
      hold('found', {text: [sentence('Found, at {hub-bolts.torque}.')]}),
      step('one-way', {when: equals('backstop', 'fitted'), cautions: uses('dirt', 'oil')}),
      step('both-ways', {when: equals('backstop', 'none')}),
      step('measure', {
        parts: [
          reading('bore'),
          reading('hub'),
          derived('gap', 'clearance', ['bore', 'hub'], {
            limits: [to('lower-ring-renewal'), to('lower-ring-minimum')],
          }),
          {kind: 'wait', id: 'settle', least: to('house.stabilise'), missed: 'start again', place},
          {kind: 'repeat', until: 'clean', times: 3, place},
          {
            kind: 'alternatives',
            id: 'which',
            items: [choice('single', equals('cargo-seal', 'single-lip')), choice('any')],
            place,
          },
          {kind: 'second-person', id: 'seen', what: 'read back', place},
          {kind: 'figure', figure: 'tightening-order:hub-bolts', caption: 'Order', place},
          {kind: 'isolate', role: 'pressure', place},
          {kind: 'restore', role: 'heating', place},
          {kind: 'tally', id: 'things', what: ['rags'], place},
          {kind: 'cargo-table', place},
          {kind: 'material-table', place},
          {kind: 'entry-limits', place},
          valuePlate('hub-bolts.passes', equals('backstop', 'fitted')),
          {
            kind: 'note',
            text: [
              {kind: 'term', term: to('hub'), label: ''},
              {kind: 'procedure', procedure: to('test'), label: ''},
            ],
            place,
          },
        ],
      }),
    ]),
  ],
  {
    tools: [{tool: to('wrench')}, {tool: to('micrometer')}],
    parts: [{part: to('ring'), quantity: 1, unit: 'piece'}],
    before: [sentence('{setting.lift}')],
  },
)
export const tightness = procedure('test', [
  section('fill', [hold('nameplate'), step('press', {cautions: uses('gas')})]),
])
export const card = procedure('card', [section('act', [step('call')])], {scope: 'vessel', activity: 'card'})
const sharedByDesign = procedure('keep', [section('store', [step('cap')])], {scope: 'design'})
export const content = contentOf({
  list: [wear, tightness, card, sharedByDesign],
  jobs: new Map([['service', job('service', ['wear', 'test'])]]),
  symptoms: [
    {
      id: 'drips',
      title: english('it drips'),
      causes: [
        {cause: english('worn'), check: english('measure'), procedures: [to('wear'), to('card')], place},
        {
          cause: english('weather'),
          check: english('look up'),
          procedures: [],
          advice: english('wait'),
          place,
        },
      ],
      place: at('symptoms.yaml'),
    },
    {
      id: 'turns',
      title: english('it turns back'),
      when: equals('backstop', 'fitted'),
      causes: [{cause: english('broken'), check: english('turn'), procedures: [to('wear')], place}],
      place: at('symptoms.yaml'),
    },
    {
      id: 'never',
      title: english('not on this pump'),
      when: equals('cargo-seal', 'none'),
      causes: [],
      place: at('symptoms.yaml'),
    },
  ],
})

/** The handbook, on pump 4S without a renewal clearance and a stack length. */
export function handbook(from: Content = content): HandbookPages {
  return compilePages(
    from,
    valuesFor(from, {
      '4s': [
        unknownValue('lower-ring.renewal', ['no drawing']),
        {...unknownValue('cofferdam.stack-length', ['not measured']), ofDesign: false},
      ],
    }),
    'vessel-a',
  )
}

/** The page of a kind at a path. */
export function pageAt<K extends Page['kind']>(
  pages: readonly Page[],
  kind: K,
  path: string,
): Extract<Page, {kind: K}> {
  const isIt = (one: Page): one is Extract<Page, {kind: K}> => one.kind === kind && one.head.path === path
  const found = pages.find(isIt)
  if (!found) throw new Error(`Unexpected gap at ${path}, expected a page`)
  return found
}
