/** Value that states each edge of the pipes of a stack, from outside in. */
export const stackPipeValues = {
  'outer-outside': 'geometry.stack-diameter',
  'outer-bore': 'cofferdam.outer-pipe-bore',
  'return-outside': 'cofferdam.inner-pipe-outside',
  'return-bore': 'oil.return-pipe-bore',
  'pressure-outside': 'oil.pressure-pipe-outside',
  'pressure-bore': 'oil.pressure-pipe-bore',
} as const

/** Bolts of one joint of a stack. */
export const stackBolts = 'stack-joint-bolts.fastener'

/** Values without which a figure of a pump cannot be drawn, by its name in procedures. */
export const drawnFigures = {
  'pipe-stack': ['cofferdam.stack-length', ...Object.values(stackPipeValues), stackBolts],
} as const satisfies Readonly<Record<string, readonly string[]>>
