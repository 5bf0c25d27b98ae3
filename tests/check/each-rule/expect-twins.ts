import {expect} from 'vitest'
import {severities} from '../../../src/messages/severities.ts'
import {type RuleCase, toldAfter} from './rule-case.ts'

const words = {'stops-the-build': 'error', warns: 'warning', informs: 'information'} as const

/** Nothing is said about the clean twin, and one message about the other: its place, weight, words, rule and remedy. */
export async function expectTwins(one: RuleCase): Promise<void> {
  const {rule, accepted, rejected, reason, mend} = one
  expect((await toldAfter(accepted)).said).toBe('')
  const {stops, said, places} = await toldAfter(rejected, one.see ? [one.at, one.see] : [one.at])
  const [at, see] = places
  expect(said).toBe(
    [
      `${at} ${words[severities[rule]]} ${reason} ${rule}\n`,
      `    mend: ${mend}\n`,
      ...(see ? [`    see: ${see}\n`] : []),
    ].join(''),
  )
  expect(stops).toBe(severities[rule] === 'stops-the-build')
}
