import {beforeAll, describe, expect, test} from 'vitest'
import type {Ledger} from '../../src/issues/ledger.ts'
import {smallContent, withChangedContent} from '../commands/changed-content.ts'
import {declareAll, issue, ledgerOf, sign, siteOf} from '../commands/issues-for-tests.ts'
import {visibleText} from '../offline/visible-text.ts'
import {barsOf} from './bars-of-page.ts'

const procedure = 'procedures/ring-check.md'
const page = 'p/1p/ring-check.html'
const id = 'vessel-s/1p/ring-check'

interface Told {
  readonly sites: readonly Readonly<Record<string, string>>[]
  readonly ledgers: readonly Ledger[]
}

let told: Told

beforeAll(async () => {
  told = await withChangedContent(async (content) => {
    const sites: Readonly<Record<string, string>>[] = []
    const ledgers: Ledger[] = []
    let month = 0
    const next = async (reasons: Readonly<Record<string, string>>): Promise<void> => {
      month += 1
      declareAll(content, reasons)
      await sign(content, `2031-0${month}-02`)
      const outcome = await issue(content, `2031-0${month}`, `2031-0${month}-10`)
      if (outcome.exitStatus !== 0) throw new Error(outcome.err)
      sites.push(siteOf(content))
      ledgers.push(ledgerOf(content, `2031-0${month}`))
    }
    await next({})
    content.replace(
      procedure,
      /2\. :step\{#tell-backstop[^\n]*\n/u,
      '2. :step{#look-at-lock} Look at the lock.\n\n3. :step{#tell-backstop when="backstop = fitted"} Tell the crew that the shaft turns one way only.\n',
    )
    content.replace(procedure, '::value{ref=hub-bolts.torque}\n\n', '')
    content.replace(procedure, '2. :step{#tighten', '::caution{ref=oil-under-pressure}\n\n2. :step{#tighten')
    await next({[procedure]: 'class: technical, reason: the lock is looked at'})
    content.replace(procedure, 'Look at the lock.', 'Look at this lock.')
    await next({[procedure]: 'class: editorial, reason: plainer, reviewed-by: safety-reviewer'})
    content.replace('tables/friction.csv', /^assembly-paste,.*$/mu, (row) => row.replaceAll('0.10', '0.14'))
    content.replace('designs/design-s.yaml', /renewal: [\d.]+ mm/u, 'renewal: 0.83 mm')
    await next({
      'tables/friction.csv': 'class: technical, reason: another paste',
      'designs/design-s.yaml': 'class: technical, reason: the ring wears faster',
    })
    return {sites, ledgers}
  }, smallContent)
}, 60_000)

const htmlOf = (index: number, path = page): string => told.sites[index]?.[path] ?? ''

/** The new step, the new caution, and the same one further down, which is short now. */
const secondBars = ['step ring-check--look-at-lock', 'caution WARNING', 'caution WARNING']

describe('bars of a page', () => {
  test('are on no page of a first issue', () => {
    const [first = {}] = told.sites
    for (const [path, text] of Object.entries(first)) expect(barsOf(text), path).toEqual([])
    expect(htmlOf(0)).not.toContain('Reason for update')
  })

  test('stand beside a new step, not beside the ones that are numbered anew', () => {
    expect(barsOf(htmlOf(1))).toEqual(secondBars)
  })

  test('come with the reason, and with what was deleted and where, without its old words', () => {
    const visible = visibleText(htmlOf(1))
    expect(visible).toContain('Reason for update, revision 2 the lock is looked at')
    expect(visible).toContain('Deleted: value “hub-bolts.torque”, stood after step 5')
  })

  test('stay under a letter, which brings none of its own', () => {
    expect(told.ledgers[2]?.pages[id]).toMatchObject({revision: 2, suffix: 'a'})
    expect(barsOf(htmlOf(2))).toEqual(secondBars)
    expect(visibleText(htmlOf(2))).toContain('Reason for update, revision 2a the lock is looked at')
  })

  test('go with the next revision, which has its own', () => {
    expect(told.ledgers[3]?.pages[id]).toMatchObject({revision: 3})
    expect(barsOf(htmlOf(3))).toEqual(['limit', 'limit'])
    expect(visibleText(htmlOf(3))).not.toContain('the lock is looked at')
  })

  test('stand beside moved figures on pages of values, row by row', () => {
    const barsOfDesign = ['torques', 'preloads', 'passes'].map((page) =>
      barsOf(htmlOf(3, `designs/design-s/${page}.html`)),
    )
    expect(barsOfDesign).toEqual([
      ['explained value--hub-bolts--torque'],
      ['explained value--hub-bolts--preload'],
      ['explained value--hub-bolts--passes'],
    ])
    expect(barsOf(htmlOf(3, 'values.html')).length).toBe(2)
    expect(barsOf(htmlOf(3, 'words.html'))).toEqual([])
  })
})
