/** What a message does to a build. `stops-the-build` cannot be switched off. */
export type Severity = 'stops-the-build' | 'warns' | 'informs'

/** Every rule there is, with its severity. Ids never change; each has a paragraph in DEVELOPERS.md (a test compares). */
export const severities = {
  // reading
  'no-missing-content': 'stops-the-build',
  'no-unreadable-file': 'stops-the-build',
  'no-foreign-encoding': 'stops-the-build',
  'no-oversized-file': 'stops-the-build',
  'no-yaml-fault': 'stops-the-build',
  'no-yaml-alias': 'stops-the-build',
  'no-csv-fault': 'stops-the-build',
  'no-markdown-fault': 'stops-the-build',
  'no-stray-file': 'stops-the-build',
  // shapes
  'no-unknown-key': 'stops-the-build',
  'no-missing-key': 'stops-the-build',
  'no-wrong-shape': 'stops-the-build',
  'no-bad-quantity': 'stops-the-build',
  'no-bad-id': 'stops-the-build',
  'no-bad-date': 'stops-the-build',
  // references and identity
  'no-duplicate-id': 'stops-the-build',
  'no-second-serial': 'stops-the-build',
  'no-retired-id': 'stops-the-build',
  'no-undefined-reference': 'stops-the-build',
  'no-unlisted-protection': 'stops-the-build',
  'no-reference-loop': 'stops-the-build',
  'no-empty-vessel': 'stops-the-build',
  'no-impossible-value': 'stops-the-build',
  'no-implausible-value': 'warns',
  'no-contradicting-clearance': 'warns',
  'no-broken-stack': 'stops-the-build',
  'no-damaged-ledger': 'stops-the-build',
  // approvals and issues
  'no-unauthorised-signature': 'stops-the-build',
  'no-own-approval': 'stops-the-build',
  'no-unapproved-source': 'stops-the-build',
  'no-unexplained-change': 'stops-the-build',
  'no-disguised-change': 'stops-the-build',
  'no-lost-text': 'stops-the-build',
  // procedure language
  'no-raw-html': 'stops-the-build',
  'no-scope-mix': 'stops-the-build',
  'no-unknown-directive': 'stops-the-build',
  'no-misplaced-directive': 'stops-the-build',
  'no-unmarked-step': 'stops-the-build',
  'no-typed-number': 'stops-the-build',
  'no-bad-condition': 'stops-the-build',
  'no-unknown-fact': 'stops-the-build',
  // gates
  'no-uncautioned-hazard': 'stops-the-build',
  'no-late-caution': 'stops-the-build',
  'no-incomplete-caution': 'stops-the-build',
  'no-unrestored-isolation': 'stops-the-build',
  'no-unmatched-restoration': 'stops-the-build',
  'no-missing-isolation-point': 'stops-the-build',
  'no-unlimited-reading': 'stops-the-build',
  'no-unread-instrument': 'stops-the-build',
  'no-unwitnessed-hold': 'stops-the-build',
  'no-as-left-alone': 'stops-the-build',
  'no-unit-mix': 'stops-the-build',
  'no-undisposed-drain': 'stops-the-build',
  'no-massless-lift': 'stops-the-build',
  'no-file-reference': 'stops-the-build',
  'no-long-procedure': 'stops-the-build',
  'no-uncovered-failure': 'stops-the-build',
  // plain language
  'no-long-step': 'stops-the-build',
  'no-second-instruction': 'stops-the-build',
  'no-verbless-step': 'stops-the-build',
  'no-late-condition': 'stops-the-build',
  'no-instruction-in-note': 'stops-the-build',
  'no-long-sentence': 'stops-the-build',
  'no-hedge': 'stops-the-build',
  'no-contraction': 'stops-the-build',
  'no-vague-word': 'stops-the-build',
  'no-second-term': 'stops-the-build',
  'no-idle-exception': 'stops-the-build',
  // computing
  'no-dry-torque': 'stops-the-build',
  'no-missing-table-row': 'stops-the-build',
  'no-overstressed-bolt': 'stops-the-build',
  'no-uncomputable-value': 'informs',
  'no-superseded-source': 'warns',
  'no-wrench-aboard': 'warns',
  'no-aged-rubber': 'warns',
  // publishing
  'no-name-clash': 'stops-the-build',
  'no-long-path': 'stops-the-build',
  'no-heavy-page': 'stops-the-build',
} as const satisfies Record<string, Severity>

export type RuleId = keyof typeof severities

/** Rules of language: one line may be excepted with a reviewed reason. No other rule may. */
export const reviewableRules = [
  'no-long-step',
  'no-second-instruction',
  'no-verbless-step',
  'no-late-condition',
  'no-instruction-in-note',
  'no-long-sentence',
  'no-hedge',
  'no-contraction',
  'no-vague-word',
  'no-second-term',
] as const satisfies readonly RuleId[]
