import {describe, expect, test} from 'vitest'
import {noJoblessIsolation, noUnrestoredIsolation} from '../../../src/check/rules/no-unrestored-isolation.ts'
import {job} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {soundProcedures, workText} from '../procedure-for-tests.ts'

/** A procedure whose steps isolate and restore in order: `isolate pressure`, `restore pressure`. */
function moves(id: string, ...lines: readonly string[]): string {
  const steps = lines.map((line, index) => {
    const [kind = '', role = '', ...when] = line.split(' ')
    const condition = when.length > 0 ? ` when="${when.join(' ')}"` : ''
    return `${index + 1}. :step{#${kind}-${role}-${index + 1}${condition}} Do it.\n\n   ::${kind}{role=${role}}`
  })
  return workText(steps.join('\n\n'), {id})
}

function told(...texts: readonly string[]): readonly string[] {
  const procedures = soundProcedures(...texts)
  return toldBy((files) => noUnrestoredIsolation(job('service', [...procedures.keys()]), procedures, files))
}

const close = moves('close', 'isolate pressure', 'isolate return')
const open = moves('open', 'restore return', 'restore pressure')

describe('a job whose isolations all come back is accepted', () => {
  test.each<[string, readonly string[]]>([
    ['in another procedure', [close, open]],
    ['in the same procedure', [moves('both', 'isolate pressure', 'restore pressure')]],
    [
      'twice over',
      [moves('both', 'isolate pressure', 'restore pressure', 'isolate pressure', 'restore pressure')],
    ],
    ['under one condition', [moves('close', 'isolate pilot a = b'), moves('open', 'restore pilot a = b')]],
    ['without isolations at all', [workText('1. :step{#look} Look.')]],
    ['without procedures', []],
  ])('%s', (_what, texts) => {
    expect(told(...texts)).toEqual([])
  })
})

describe('a job is refused', () => {
  const never = (role: string, step: string, procedure: string, text: string): string =>
    `${placeIn(text, `::isolate{role=${role}}`, `procedures/${procedure}.md`)} Unexpected isolation of \`${role}\` in step \`${step}\` that job \`service\` never restores, expected \`::restore{role=${role}}\` in a later step no-unrestored-isolation see jobs/service.yaml:1:1`
  const unmatched = (role: string, step: string, procedure: string, text: string): string =>
    `${placeIn(text, `::restore{role=${role}}`, `procedures/${procedure}.md`)} Unexpected restoration of \`${role}\` in step \`${step}\`, expected an isolation of it earlier in job \`service\` no-unmatched-restoration`

  test('when one role never comes back', () => {
    expect(told(close, moves('open', 'restore return'))).toEqual([
      never('pressure', 'isolate-pressure-1', 'close', close),
    ])
  })

  test('when the procedure that restores is not part of it', () => {
    expect(told(close)).toEqual([
      never('pressure', 'isolate-pressure-1', 'close', close),
      never('return', 'isolate-return-2', 'close', close),
    ])
  })

  test('when something is restored that it never isolated', () => {
    const more = moves('open', 'restore pressure', 'restore return', 'restore heating')
    expect(told(close, more)).toEqual([unmatched('heating', 'restore-heating-3', 'open', more)])
  })

  test('when its procedures stand in the wrong order', () => {
    expect(told(open, close)).toEqual([
      never('pressure', 'isolate-pressure-1', 'close', close),
      never('return', 'isolate-return-2', 'close', close),
      unmatched('return', 'restore-return-1', 'open', open),
      unmatched('pressure', 'restore-pressure-2', 'open', open),
    ])
  })

  test('when an isolation after the restoration stays', () => {
    const again = moves('both', 'isolate pilot', 'restore pilot', 'isolate pressure')
    expect(told(again)).toEqual([never('pressure', 'isolate-pressure-3', 'both', again)])
  })

  test.each<[string, string, string, string]>([
    [
      'only the restoration has a condition',
      'isolate pilot',
      'restore pilot a = b',
      'under `a = b`, expected it without a condition',
    ],
    [
      'only the isolation has a condition',
      'isolate pilot a = b',
      'restore pilot',
      'without a condition, expected it under `a = b`',
    ],
    [
      'the conditions differ',
      'isolate pilot a = b',
      'restore pilot a = c',
      'under `a = c`, expected it under `a = b`',
    ],
  ])('when %s: some pump would print one without the other', (_what, first, second, message) => {
    const closing = moves('close', first)
    const opening = moves('open', second)
    expect(told(closing, opening)).toEqual([
      `${placeIn(opening, '::restore', 'procedures/open.md')} Unexpected restoration of \`pilot\` in step \`restore-pilot-1\` ${message} as its isolation in step \`isolate-pilot-1\` no-unrestored-isolation see ${placeIn(closing, '::isolate', 'procedures/close.md')}`,
    ])
  })
})

describe('a procedure that isolates stands in a job', () => {
  const jobless = (jobs: readonly string[]): readonly string[] =>
    toldBy((files) =>
      noJoblessIsolation(soundProcedures(close), new Map([['service', job('service', jobs)]]), files),
    )

  test('and is accepted so', () => {
    expect(jobless(['close'])).toEqual([])
  })

  test('or is refused at its first isolation', () => {
    expect(jobless(['other'])).toEqual([
      `${placeIn(close, '::isolate{role=pressure}', 'procedures/close.md')} Unexpected isolation in procedure \`close\` that no job holds, expected a job with its restoration no-unrestored-isolation`,
    ])
  })

  test('and one that isolates nothing needs no job', () => {
    const procedures = soundProcedures(workText('1. :step{#look} Look.'))
    expect(toldBy((files) => noJoblessIsolation(procedures, new Map(), files))).toEqual([])
    expect(toldBy((files) => noJoblessIsolation(new Map(), new Map(), files))).toEqual([])
  })
})
