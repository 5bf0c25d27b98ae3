/** What the two signatures of a hold point stand for, where it is one of the ten that the work itself demands. */
export const holdKinds = [
  'isolation',
  'entry',
  'lift-plan',
  'as-found',
  'lip-orientation',
  'setting-length',
  'impeller-lock',
  'tightness',
  'tally',
  'first-start',
] as const

export type HoldKind = (typeof holdKinds)[number]
