import {describe, expect, test} from 'vitest'
import {failuresPage} from '../../src/compile/failures-page.ts'
import type {FailureRow, MachineUnit, Part} from '../../src/handbook-model/office-content.ts'
import type {FailuresPage} from '../../src/handbook-model/pages.ts'
import type {Procedure} from '../../src/handbook-model/procedure.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {at, english, part, place, to} from './data-for-tests.ts'
import {equals, procedure, section, step} from './procedures-for-tests.ts'

const steps = [section('one', [step('a')])]
const single = equals('cargo-seal', 'single-lip')
const none = equals('cargo-seal', 'none')

const row = (id: string, of: string, procedures: readonly string[], reason?: string): FailureRow => ({
  id,
  part: to(of),
  mode: english(`mode ${id}`),
  procedures: procedures.map(to),
  ...(reason === undefined ? {} : {reason: english(reason)}),
  place: at('failures.yaml'),
})

const unit = (id: string, ...balloons: readonly string[]): MachineUnit => ({
  id,
  title: english(`unit ${id}`),
  balloons,
  place,
})

function pageOf(
  failures: readonly FailureRow[],
  parts: readonly Part[],
  units: readonly MachineUnit[] = [],
  list: readonly Procedure[] = [procedure('renew', steps), procedure('look', steps, {when: single})],
): FailuresPage {
  const content = contentOf({list, failures, units, parts: new Map(parts.map((one) => [one.id, one]))})
  return failuresPage([deskOf(content, '4p'), deskOf(content, '4s')])
}

const fitted = (id: string, balloon: string, more: Partial<Part> = {}): Part => ({
  ...part(id),
  balloon,
  ...more,
})

describe('failures by part', () => {
  test('stand by unit, from the wet end up, and what is in no unit behind all of them', () => {
    const {units} = pageOf(
      ['bolt', 'ring', 'cover', 'hose'].map((id) => row(id, id, ['renew'])),
      [fitted('bolt', '2'), fitted('hose', '9'), fitted('ring', '3'), fitted('cover', '1')],
      [unit('wet', '1', '2'), unit('dry', '3'), unit('empty', '4')],
    )
    expect(units.map(({title, parts}) => [title, ...parts.map(({id}) => id)])).toEqual([
      ['unit wet', 'cover', 'bolt'],
      ['unit dry', 'ring'],
      ['Other parts', 'hose'],
    ])
  })

  test('name the parts alone that a pump of the ship has, and on how many where not on all', () => {
    const {units} = pageOf(
      ['ring', 'lip', 'strange'].map((id) => row(id, id, ['renew'])),
      [fitted('ring', '1'), fitted('lip', '1', {when: single}), fitted('strange', '1', {when: none})],
    )
    expect(units[0]?.parts.map(({id, pumps}) => [id, pumps])).toEqual([
      ['ring', ''],
      ['lip', 'on 1 of 2 pumps'],
    ])
  })

  test('say on how many pumps nobody knows whether they have it', () => {
    const {units} = pageOf(
      ['stop', 'free'].map((id) => row(id, id, ['renew'])),
      [
        fitted('stop', '1', {when: equals('backstop', 'fitted')}),
        fitted('free', '1', {when: equals('backstop', 'none')}),
      ],
    )
    expect(units[0]?.parts.map(({pumps}) => pumps)).toEqual([
      'on 1, NOT KNOWN on 1 of 2 pumps',
      'NOT KNOWN on 1 of 2 pumps',
    ])
  })

  test('lead from each way of failing to its procedures, on the first pump with the part that they are for', () => {
    const page = pageOf(
      [row('worn', 'ring', ['look', 'renew']), row('lost', 'ring', ['renew'])],
      [fitted('ring', '1')],
    )
    expect(page.units[0]?.parts[0]?.failures).toEqual([
      {
        mode: 'mode worn',
        procedures: [
          {text: 'Procedure look', path: 'p/4s/look.html'},
          {text: 'Procedure renew', path: 'p/4p/renew.html'},
        ],
        reason: '',
      },
      {mode: 'mode lost', procedures: [{text: 'Procedure renew', path: 'p/4p/renew.html'}], reason: ''},
    ])
  })

  test('leave out a procedure that is for no pump with the part, and print the written reason', () => {
    const page = pageOf(
      [row('worn', 'lip', ['look'], 'a yard does it')],
      [fitted('lip', '1', {when: equals('cargo-seal', 'double-lip')})],
    )
    expect(page.units[0]?.parts[0]?.failures).toEqual([
      {mode: 'mode worn', procedures: [], reason: 'a yard does it'},
    ])
  })

  test('lead to the symptoms of each pump, where the office has some', () => {
    expect(pageOf([row('worn', 'ring', ['renew'])], [fitted('ring', '1')]).symptoms).toEqual([])
    const symptom = {id: 'noise', title: english('noise'), causes: [], place: at('symptoms.yaml')}
    const content = contentOf({
      failures: [row('worn', 'ring', ['renew'])],
      symptoms: [symptom],
      list: [procedure('renew', steps)],
    })
    expect(failuresPage([deskOf(content, '4s')]).symptoms).toEqual([{text: '4S', path: 'p/4s/symptoms.html'}])
  })

  test('rest on rows, parts, procedures and designs', () => {
    expect(pageOf([row('worn', 'ring', ['renew'])], [fitted('ring', '1')]).head).toMatchObject({
      id: 'vessel-a/failures',
      path: 'failures.html',
      madeFrom: expect.arrayContaining([
        'failures.yaml',
        'parts.yaml',
        'procedures/renew.md',
        'designs/design-a.yaml',
        'vessels/vessel-a/vessel.yaml',
      ]),
    })
  })
})
