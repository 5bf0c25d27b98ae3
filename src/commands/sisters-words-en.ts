/** English words of the page of sister pumps. */
export const sistersWords = {
  demonstration: 'Demonstration data, not for service',
  page: {
    title: 'Sister pumps',
    lead: 'What is stated otherwise of some pumps of one design, on all vessels.',
    hint: 'Only what the content states is held against each other. Serial numbers, tags, tank volumes and what follows from a stack length are no difference.',
    lengths: 'Stack lengths',
    same: 'Nothing differs.',
    usual: 'usual',
    differs: 'differs',
    because: 'because',
    unexplained: 'unexplained',
    columns: {
      item: 'what',
      side: 'which',
      figure: 'stated',
      pumps: 'pumps',
      reason: 'reason',
      at: 'file and lines',
    },
    palettes: {pc: 'As the PC', day: 'Day', dusk: 'Dusk', night: 'Night'},
    palette: 'Colours',
  },
  lead: (pumps: number, vessels: readonly string[], differ: number, compared: number): string =>
    `${pumps} pumps on ${vessels.join(', ')}: ${differ} of ${compared} things differ`,
  alone: (vessels: readonly string[]): string =>
    `One pump, on ${vessels.join(', ')}: there is nothing to hold it against.`,
  pumps: (count: number): string => (count === 1 ? '1 pump' : `${count} pumps`),
} as const

/** Names of things that have no title in the content. */
export const itemWords: ReadonlyMap<string, string> = new Map([
  ['role', 'what the pump is for'],
  ['critical', 'critical equipment'],
  ['stack-sections', 'sections of stacks of one length'],
  ['stack-supports', 'supports of stacks of one length in one ship'],
  ['component.head', 'pump head'],
  ['component.motor', 'motor'],
  ['component.sleeve', 'sleeve'],
  ['component.stack', 'stack'],
  ['supply.oil-bulk-modulus', 'bulk modulus of the oil'],
  ['supply.oil-expansion', 'expansion of the oil'],
  ['normal', 'normal state'],
  ['isolated', 'isolated state'],
  ['where', 'place'],
  ['lock', 'lock fitting'],
  ['proof', 'proof of zero'],
  ['restored-with', 'restored with'],
])
