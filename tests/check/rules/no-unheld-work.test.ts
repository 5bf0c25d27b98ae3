import {describe, expect, test} from 'vitest'
import {pumpOf} from '../../../src/check/pump.ts'
import {noUnheldWork} from '../../../src/check/rules/no-unheld-work.ts'
import {designShape} from '../../../src/check/shapes/design-shape.ts'
import type {Design} from '../../../src/handbook-model/design-content.ts'
import {design, designText, job, shaped, vessel} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {soundProcedures, workText} from '../procedure-for-tests.ts'

function hold(kind: string, more = ''): string {
  return `::hold-point{#held-${kind} title="Held" kind=${kind} signed-by="mate" second-by="master"${more}}`
}

function step(id: string, more: string, below = ''): string {
  return `1. :step{#${id} ${more}} Do it.${below === '' ? '' : `\n\n   ${below}`}`
}

/** A procedure with these blocks, an overhaul of a pump unless said otherwise. */
function procedure(
  id: string,
  blocks: readonly string[],
  front: Readonly<Record<string, string>> = {},
): string {
  return workText(blocks.join('\n\n'), {id, front: {activity: 'overhaul', ...front}})
}

function told(texts: readonly string[], designs: readonly Design[] = [design()]): readonly string[] {
  const procedures = soundProcedures(...texts)
  return toldBy((files) =>
    noUnheldWork([job('service', [...procedures.keys()])], procedures, [], designs, files),
  )
}

function message(text: string, id: string, reason: string): string {
  const path = `procedures/${/^id: (.+)$/mu.exec(text)?.[1]}.md`
  return `${placeIn(text, `:step{#${id}`, path)} Unexpected step \`${id}\` with ${reason} no-unheld-work${reason.includes('job `service`') ? ' see jobs/service.yaml:1:1' : ''}`
}

const zero = procedure('zero', [hold('isolation')], {activity: 'isolation'})
const open = procedure('open', [step('open', 'action=open-hydraulic')])

describe('work behind its hold point is accepted', () => {
  test.each<[string, readonly string[]]>([
    ['in an earlier procedure of the job', [zero, open]],
    ['in the procedure itself', [procedure('open', [hold('isolation'), step('open', 'action=open-cargo')])]],
    [
      'under a condition that both have',
      [
        procedure('open', [
          hold('isolation', ' when="a = b"'),
          step('open', 'action=open-cargo when="a = b"'),
        ]),
      ],
    ],
    [
      'where a test opens its cock',
      [procedure('open', [step('open', 'action=open-hydraulic')], {activity: 'test'})],
    ],
    [
      'where the part hangs in no line',
      [
        procedure('open', [step('open', 'action=open-hydraulic')], {scope: 'design'}).replace(
          /^::hold.*$/mu,
          '',
        ),
      ],
    ],
    [
      'where a line of the hand lowers it',
      [procedure('low', [step('low', 'action=lift')], {activity: 'test'})],
    ],
    [
      'where the words lead to the procedure that has it',
      [
        procedure('look', [
          hold('isolation'),
          step('look', 'action=enter', 'By :procedure[entry]{ref=way}.'),
        ]),
        procedure('way', [hold('entry')]),
      ],
    ],
    [
      'where the isolation tries to start it',
      [procedure('zero', [hold('isolation'), step('try', 'action=start-pump')], {activity: 'isolation'})],
    ],
    [
      'where nothing was isolated',
      [procedure('turn', [step('turn', 'action=start-pump')], {activity: 'test'})],
    ],
  ])('%s', (_what, texts) => {
    expect(told(texts)).toEqual([])
  })
})

describe('work without its hold point is refused', () => {
  test('where the hold stands behind the work', () => {
    expect(told([open, zero])).toEqual([
      message(
        open,
        'open',
        '`action=open-hydraulic`, expected a hold point with `kind=isolation` before it in job `service`',
      ),
    ])
  })

  test('where the hold stands under a condition that the work has not', () => {
    const text = procedure('open', [hold('isolation', ' when="a = b"'), step('open', 'action=open-cargo')])
    expect(told([text])).toEqual([
      message(
        text,
        'open',
        '`action=open-cargo`, expected a hold point with `kind=isolation` before it in job `service`',
      ),
    ])
  })

  test('where a procedure stands in no job', () => {
    const procedures = soundProcedures(open)
    expect(toldBy((files) => noUnheldWork([], procedures, [], [], files))).toEqual([
      message(
        open,
        'open',
        '`action=open-hydraulic`, expected a hold point with `kind=isolation` before it in procedure `open`',
      ),
    ])
  })

  test('once, where two jobs have it', () => {
    const procedures = soundProcedures(open)
    const jobs = [job('service', ['open']), job('other', ['open'])]
    expect(toldBy((files) => noUnheldWork(jobs, procedures, [], [], files))).toHaveLength(1)
  })

  test('where the step shows what its gear must carry, in no overhaul', () => {
    const text = procedure('lift', [step('lift', 'action=lift', '::value{ref=unit-lift.rated-load}')], {
      activity: 'test',
    })
    expect(told([text])).toEqual([
      message(
        text,
        'lift',
        '`action=lift`, expected a hold point with `kind=lift-plan` before it in job `service`',
      ),
    ])
  })

  test('where the release of a start stood before the isolation', () => {
    const text = procedure('run', [hold('first-start'), hold('isolation'), step('run', 'action=start-pump')])
    expect(told([text])).toEqual([
      message(
        text,
        'run',
        '`action=start-pump` behind an isolation, expected a hold point with `kind=first-start` before it in job `service`',
      ),
    ])
  })
})

const heldText = designText
  .replace('pattern: crosswise', 'pattern: crosswise, held: impeller-lock')
  .replace('action: Fit it again.', 'action: Fit it again., held: setting-length')
  .replace(
    'masses:',
    'seals:\n  - {id: seal, title: seal, part: lip-set, running-diameter: 90 mm, seat-depth: 20 mm, between: cargo-cofferdam, lips: [{id: lip, title: lip, faces: cargo}]}\nmasses:',
  )
const held = shaped('designs/design-a.yaml', heldText, designShape)

/** What stands behind the work in one procedure: its kind, the step and what the message calls it. */
const behind: readonly (readonly [string, string, string, Readonly<Record<string, string>>])[] = [
  [
    'lip-orientation',
    step('press', 'action="change-elastomer fit-seal"'),
    '`action=fit-seal` of part `lip-set`',
    {parts: '[{part: lip-set, quantity: 1, unit: set}]'},
  ],
  [
    'setting-length',
    step(
      'press',
      '',
      '::reading{#left title=length quantity=length unit=mm stations=one instrument=gauge phase=as-left limits=run-out-most}',
    ),
    'limit `run-out-most`',
    {},
  ],
  ['impeller-lock', step('press', '', '::value{ref=hub-bolts.torque}'), 'value `hub-bolts.torque`', {}],
  [
    'tightness',
    step(
      'press',
      '',
      '::derived{#drop title=drop unit=bar calculation=corrected-drop from="a b c d e f" phase=during limits=drop-most}',
    ),
    '`calculation=corrected-drop`',
    {},
  ],
]

describe('what is proved stands under two signatures', () => {
  test.each(behind)('%s', (kind, work, reason, front) => {
    const text = procedure('press', [work], front)
    expect(told([procedure('press', [work, hold(kind)], front)], [held])).toEqual([])
    expect(told([text], [held])).toEqual([
      message(
        text,
        'press',
        `${reason}, expected a hold point with \`kind=${kind}\` behind it in the procedure`,
      ),
    ])
    const late = procedure('press', [hold(kind), work], front)
    expect(told([late], [held])).toHaveLength(1)
  })

  test('O-rings behind the lips demand no second look at the lips', () => {
    const front = {parts: '[{part: lip-set, quantity: 1, unit: set}]'}
    const lips = step('press', 'action="change-elastomer fit-seal"')
    const ring = step('ring', 'action="change-elastomer fit-seal"')
    expect(told([procedure('press', [lips, hold('lip-orientation'), ring], front)], [held])).toEqual([])
  })
})

describe('a job of which pumps have different procedures', () => {
  const pumps = vessel().positions.map((position) =>
    pumpOf(vessel(), {...position, role: position.id === '1s' ? 'stripping' : 'main'}, design(), []),
  )

  test('is walked for each list: a hold in a procedure that a pump has not counts for the other alone', () => {
    const mains = procedure('zero', [hold('isolation')], {activity: 'isolation', when: 'role = main'})
    const procedures = soundProcedures(mains, open)
    const lines = (some: typeof pumps): readonly string[] =>
      toldBy((files) => noUnheldWork([job('service', ['zero', 'open'])], procedures, some, [design()], files))
    expect(lines(pumps.slice(0, 1))).toEqual([])
    expect(lines(pumps)).toHaveLength(1)
  })
})
