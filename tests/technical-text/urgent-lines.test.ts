import {describe, expect, test} from 'vitest'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {fixture} from '../render/fixture-pages.ts'

const page = fixture.pages.find(({head}) => head.path === 'p/4s/wear.html')

describe('the technical text of a page under an urgent revision', () => {
  const lines = page ? technicalText(page, 'Vessel').split('\n') : []
  const own = lines.filter((line) => line.startsWith('urgent-t-07\t'))

  test('holds it behind the title, before everything else of the page', () => {
    const first = lines.findIndex((line) => line.startsWith('urgent-t-07\t'))
    expect(lines[first - 1]).toMatch(/^identity\ttitle\t/u)
    expect(lines.slice(first, first + own.length)).toEqual(own)
    expect(lines[first + own.length]).toMatch(/^purpose\t/u)
  })

  test('holds number, days, condition, pumps, word and harm, what is done, what is replaced, why, and what ends it', () => {
    expect(own.map((line) => line.split('\t')[1])).toEqual([
      'urgent',
      'title',
      'valid-from',
      'valid-to',
      'variant',
      'pumps',
      'word',
      'hazard',
      'consequence',
      'do',
      'replaced',
      'instead',
      'reason',
      'supersedes',
      'cancelled-by',
    ])
  })

  test('reads otherwise when its last day moves', () => {
    if (!page) throw new Error('Unexpected fixture without the page, expected it')
    const later = {
      ...page,
      head: {
        ...page.head,
        urgent: page.head.urgent?.map((one) => ({...one, to: 'valid to 2033-01-01'})) ?? [],
      },
    }
    expect(technicalText(later, 'Vessel')).not.toBe(technicalText(page, 'Vessel'))
  })
})
