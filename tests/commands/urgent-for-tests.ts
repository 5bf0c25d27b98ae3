/** Lines of an urgent revision of the small vessel, by key. */
const sound = {
  number: 'T-07',
  title: 'Hub bolts of a bad batch',
  reason: 'Two hub bolts of one batch broke on a sister ship.',
  'valid-from': '2031-02-01',
  'valid-to': '2031-05-31',
  vessels: '[vessel-s]',
  procedures: '[ring-check]',
  word: 'WARNING',
  'worst-harm': 'death-or-serious-injury',
  likelihood: 'could',
  hazard: 'A hub bolt breaks while it is tightened.',
  consequence: 'The wrench slips and the hand hits the hub.',
  do: '[Stand clear of the wrench.]',
  'cancelled-by': 'new bolts aboard',
}

/** The text of an urgent revision of the small vessel; keys may get other texts, or further ones. */
export function urgentText(other: Readonly<Record<string, string>> = {}): string {
  return Object.entries({...sound, ...other})
    .map(([key, text]) => `${key}: ${text}\n`)
    .join('')
}

/** Another torque of the hub bolts, with the passes that are computed from it. */
export const otherTorque = {
  values:
    '[{value: hub-bolts.torque, instead: 48 N·m, status: assumed, source: house-rules}, {value: hub-bolts.passes, instead: 24 · 48 N·m, status: assumed, source: house-rules}]',
}

/** Another instruction in place of the step that tightens the hub bolts. */
export const otherStep = {
  steps:
    '[{procedure: ring-check, step: tighten-hub-bolts, instead: Tighten the hub bolts by the short wrench.}]',
}
