import {describe, expect, test} from 'vitest'
import {noScopeMix} from '../../../src/check/rules/no-scope-mix.ts'
import {toldBy} from '../messages-for-tests.ts'
import {soundProcedure, workText} from '../procedure-for-tests.ts'

function told(scope: string, part: string): readonly string[] {
  const text = workText(`1. :step{#look} Look.\n\n   ${part}`).replace('scope: position', `scope: ${scope}`)
  return toldBy((files) => noScopeMix(soundProcedure(text), files)).map((one) => one.replace(/^\S+ /u, ''))
}

const reading =
  '::reading{#gap title=gap quantity=length unit=mm stations="a" instrument=micrometer phase=during limits=least}'

describe('a procedure that stands once for several pumps', () => {
  test.each([
    ['position', '::value{ref=cofferdam.volume}'],
    ['position', '::isolate{role=pressure}'],
    ['position', '::figure{name=pipe-stack caption=Stack}'],
    ['vessel', '::value{ref=house.isolation-recheck}'],
    ['vessel', '::value{ref=supply.drum-volume}'],
    ['vessel', '::value{ref=hydraulics.system-pressure}'],
    ['vessel', 'See :value{ref=house.isolation-proof}.'],
    ['design', '::value{ref=hub-bolts.torque}'],
    ['design', reading],
  ])('with scope %s may hold %s', (scope, part) => {
    expect(told(scope, part)).toEqual([])
  })

  test.each([
    ['vessel', '::value{ref=cofferdam.volume}', 'value `cofferdam.volume` in a procedure for the whole ship'],
    [
      'vessel',
      'See :value{ref=hub-bolts.torque}.',
      'value `hub-bolts.torque` in a procedure for the whole ship',
    ],
    ['vessel', 'See **:value{ref=tank.volume}**.', 'value `tank.volume` in a procedure for the whole ship'],
    ['vessel', '::wait{#cool least=setting.cool missed="wait on"}', 'value `setting.cool`'],
    ['vessel', '::isolate{role=pressure}', 'isolation role `pressure`'],
    ['vessel', '::restore{role=pressure}', 'isolation role `pressure`'],
    ['vessel', '::identify{fact=backstop}', '`identify` of `backstop`'],
    ['vessel', '::cargo-table', 'table of cargoes'],
    ['vessel', '::material-table', 'table of the materials of one pump'],
    ['design', '::material-table', 'table of the materials of one pump'],
    ['vessel', reading, 'reading `gap` against a limit of one design'],
    [
      'design',
      '::value{ref=cofferdam.volume}',
      'value `cofferdam.volume` in a procedure for all pumps of a design',
    ],
    ['design', '::value{ref=purge.time}', 'value `purge.time`'],
    ['design', '::value{ref=oil.volume}', 'value `oil.volume`'],
    ['design', '::isolate{role=pressure}', 'isolation role `pressure`'],
    ['vessel', '::figure{name=pipe-stack caption=Stack}', 'figure `pipe-stack` of one pump'],
    ['design', '::figure{name=pipe-stack caption=Stack}', 'figure `pipe-stack` of one pump'],
  ])('with scope %s may not hold %s', (scope, part, what) => {
    const [message, ...others] = told(scope, part)
    expect(others).toEqual([])
    expect(message).toContain(`Unexpected ${what}`)
    expect(message).toContain('expected what is the same on each of its pumps no-scope-mix')
  })
})
