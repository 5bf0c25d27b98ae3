import {describe, expect, test} from 'vitest'
import type {ContentFiles} from '../../../src/messages/add-message.ts'
import {printMessages} from '../../../src/messages/print-messages.ts'
import {severities} from '../../../src/messages/severities.ts'
import {plantedFaults} from '../../handbooks/planted-faults.ts'
import {approvalCases} from './approval-cases.ts'
import {directCases} from './direct-cases.ts'
import {expectTwins} from './expect-twins.ts'
import {failureCases} from './failure-cases.ts'
import {gateCases} from './gate-cases.ts'
import {languageCases} from './language-cases.ts'
import {laterCases} from './later-cases.ts'
import {plainCases} from './plain-cases.ts'
import {readingCases} from './reading-cases.ts'
import {referenceCases} from './reference-cases.ts'
import {toldAfter, unchanged} from './rule-case.ts'
import {shapeCases} from './shape-cases.ts'
import {trialCases} from './trial-cases.ts'
import {urgentCases} from './urgent-cases.ts'

const cases = [
  ...approvalCases,
  ...trialCases,
  ...urgentCases,
  ...readingCases,
  ...shapeCases,
  ...referenceCases,
  ...languageCases,
  ...gateCases,
  ...plainCases,
  ...failureCases,
  ...laterCases,
]

test('the small content is without a fault', async () => {
  expect(await toldAfter(unchanged)).toEqual({stops: false, said: '', places: []})
})

test('every rule that there is has its two twins here', () => {
  const told = new Set(
    [...cases, ...directCases, ...plantedFaults.map((one) => one.twins)].map((one) => one.rule),
  )
  expect([...told].sort()).toEqual(Object.keys(severities).sort())
})

describe('of two twins of the small content, one is accepted and one is told', () => {
  const planted = new Set(plantedFaults.map((one) => one.twins))
  const others = cases.filter((one) => !planted.has(one))
  test.each(others.map((one) => [one.rule, one.what, one] as const))('%s: %s', async (_rule, _what, one) => {
    await expectTwins(one)
  })
})

describe('of two twins that a rule is asked about, one is accepted and one is told', () => {
  test.each(directCases.map((one) => [one.rule, one.what, one] as const))('%s: %s', (_rule, _what, one) => {
    const saidOf = (ask: (files: ContentFiles) => void): string => {
      const files: ContentFiles = new Map()
      ask(files)
      return printMessages(files, 'content')
    }
    expect(saidOf(one.accepted)).toBe('')
    expect(saidOf(one.rejected)).toBe(one.said)
  })
})
