import {nearestWord} from '../check/nearest-word.ts'
import {ruleReasons} from '../messages/rule-reasons.ts'
import {type RuleId, severities} from '../messages/severities.ts'
import type {Outcome} from './outcome.ts'

const ids: readonly string[] = Object.keys(severities)

/** `sheetanchor check --explain RULE`: why the rule exists, what it accepts and rejects, how to mend; `all` for every rule. */
export function explainRule(rule: string): Outcome {
  if (rule === 'all')
    return {exitStatus: 0, out: ids.flatMap((id) => (isRule(id) ? [textOf(id)] : [])).join('\n'), err: ''}
  if (isRule(rule)) return {exitStatus: 0, out: textOf(rule), err: ''}
  return {
    exitStatus: 2,
    out: '',
    err: `Unexpected rule \`${rule}\`, expected \`${nearestWord(rule, ids)}\` or another that a message ends with; \`--explain all\` lists them\n`,
  }
}

const weights = {
  'stops-the-build': 'stops the build',
  warns: 'warns',
  informs: 'informs',
} as const

function textOf(id: RuleId): string {
  const {why, accepted, rejected, mend} = ruleReasons[id]
  return `${id} (${weights[severities[id]]})\n  ${why}\n  accepted: ${accepted}\n  rejected: ${rejected}\n  mend: ${mend}\n`
}

function isRule(id: string): id is RuleId {
  return ids.includes(id)
}
