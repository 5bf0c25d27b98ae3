import {readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {explainRule} from '../../src/commands/explain-rule.ts'
import {ruleReasons} from '../../src/messages/rule-reasons.ts'
import {severities} from '../../src/messages/severities.ts'

const guide = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8')

describe('every rule', () => {
  test.each(Object.entries(ruleReasons))('%s says in the guide what the program says', (id, reason) => {
    const paragraph = new RegExp(`### ${id}\\n\\n([^\\n]+)\\n`, 'u').exec(guide)?.[1]
    expect(paragraph).toBe(
      `${reason.why} Accepted: ${reason.accepted}. Rejected: ${reason.rejected}. Mend: ${reason.mend}.`,
    )
  })

  test.each(Object.entries(ruleReasons))(
    '%s has words for why, accepted, rejected and mend',
    (_id, reason) => {
      for (const words of Object.values(reason)) expect(words.length).toBeGreaterThan(3)
      expect(reason.accepted).not.toBe(reason.rejected)
    },
  )
})

describe('check --explain', () => {
  test('prints one rule', () => {
    expect(explainRule('no-dry-torque')).toEqual({
      exitStatus: 0,
      out: `no-dry-torque (stops the build)\n  ${ruleReasons['no-dry-torque'].why}\n  accepted: \`lubrication: assembly-paste\`\n  rejected: ${ruleReasons['no-dry-torque'].rejected}\n  mend: ${ruleReasons['no-dry-torque'].mend}\n`,
      err: '',
    })
  })

  test('prints every rule once for `all`', () => {
    const {out} = explainRule('all')
    for (const id of Object.keys(severities)) expect(out.split(`${id} (`).length, id).toBe(2)
  })

  test('names the nearest rule for one that is not there', () => {
    expect(explainRule('no-dry-torqe')).toMatchObject({exitStatus: 2, out: ''})
    expect(explainRule('no-dry-torqe').err).toContain('expected `no-dry-torque` or another')
  })
})
