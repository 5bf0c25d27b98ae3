import {describe, expect, test} from 'vitest'
import {workPage} from '../../src/compile/work-page.ts'
import type {JobInterval} from '../../src/handbook-model/job-interval.ts'
import type {Job} from '../../src/handbook-model/office-content.ts'
import type {WorkLine, WorkPage} from '../../src/handbook-model/pages.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {english, interval, job, writtenTime} from './data-for-tests.ts'
import {equals, procedure, section, step} from './procedures-for-tests.ts'

const steps = [section('one', [step('a')])]
const list = [
  procedure('purge', steps, {performedBy: english('pumpman')}),
  procedure('renew', steps, {performedBy: english('second engineer')}),
  procedure('yard', steps, {
    performedBy: english('second engineer'),
    competence: 'heavy-maintenance',
    when: equals('backstop', 'fitted'),
  }),
]

const every = (...times: readonly string[]): Partial<JobInterval> => ({
  calendar: times.map((one) => ({every: writtenTime(one)})),
})

function pageOf(jobs: readonly Job[]): WorkPage {
  const content = contentOf({list, jobs: new Map(jobs.map((one) => [one.id, one]))})
  return workPage([deskOf(content, '4p'), deskOf(content, '4s')])
}

const timed = (id: string, more: Partial<JobInterval>, rest: Partial<Job> = {}): Job =>
  job(id, ['purge', 'renew'], {interval: interval(more), ...rest})

function lineOf(one: Job): WorkLine | undefined {
  return pageOf([one]).groups[0]?.jobs[0]
}

describe('the work by interval', () => {
  test('stands by time, with an event and on a condition, each job once and the most frequent first', () => {
    const {groups} = pageOf([
      timed('ring', {hours: writtenTime('5000 h'), ...every('60 months')}),
      timed('seal', {hours: writtenTime('4000 h'), ...every('60 months')}),
      timed('free', {trigger: english('it is blocked')}),
      timed('hours', {hours: writtenTime('10 h')}),
      timed('survey', {events: [english('at survey')], trigger: english('it leaks')}),
      timed('round', {...every('30 months', '7 d'), events: [english('before loading')]}),
      timed('month', every('1 month')),
    ])
    expect(groups.map(({title, jobs}) => [title, ...jobs.map(({id}) => id)])).toEqual([
      ['By calendar and running hours', 'round', 'month', 'seal', 'ring', 'hours'],
      ['With an event', 'survey'],
      ['Only on a condition', 'free'],
    ])
  })

  test('leaves a group without jobs out', () => {
    expect(pageOf([timed('round', every('7 d'))]).groups).toHaveLength(1)
  })

  test('says interval and condition apart, the reason, and what both stand on', () => {
    expect(lineOf(timed('round', {...every('7 d'), trigger: english('it leaks')}))).toMatchObject({
      title: 'Job round',
      interval: 'weekly',
      trigger: 'sooner when it leaks',
      reason: 'it wears',
      mark: 'common practice, no source',
    })
  })

  test('opens the job on each pump that it is for, and counts them', () => {
    expect(lineOf(timed('all', every('7 d')))).toMatchObject({
      pumps: 'all 2 pumps:',
      onPumps: [
        {text: '4P', path: 'p/4p/job-all.html'},
        {text: '4S', path: 'p/4s/job-all.html'},
      ],
    })
    expect(lineOf(timed('some', every('7 d'), {when: equals('cargo-seal', 'single-lip')}))).toMatchObject({
      pumps: '1 of 2 pumps:',
      onPumps: [{text: '4S'}],
    })
  })

  test('names each rating once, and heavy maintenance where one procedure for these pumps asks for it', () => {
    expect(lineOf(timed('light', every('7 d')))?.doneBy).toBe('crew: pumpman, second engineer')
    const heavy = job('heavy', ['purge', 'renew', 'yard'], {interval: interval(every('7 d'))})
    expect(lineOf(heavy)?.doneBy).toBe('heavy maintenance: pumpman, second engineer')
  })

  test('counts the procedures alone that are for one of its pumps', () => {
    const content = contentOf({
      list: [
        ...list,
        procedure('other', steps, {performedBy: english('fitter'), when: equals('design', 'x')}),
      ],
      jobs: new Map([['all', job('all', ['purge', 'other'])]]),
    })
    expect(workPage([deskOf(content, '4p')]).groups[0]?.jobs[0]?.doneBy).toBe('crew: pumpman')
  })

  test('rests on its jobs, their procedures and the source of each interval', () => {
    expect(pageOf([timed('round', every('7 d'))]).head).toMatchObject({
      id: 'vessel-a/work',
      path: 'work.html',
      title: 'Work by interval',
      madeFrom: expect.arrayContaining([
        'jobs/round.yaml',
        'procedures/purge.md',
        'sources.yaml',
        'vessels/vessel-a/vessel.yaml',
        'designs/design-a.yaml',
      ]),
    })
  })
})
