/** A length as it is written, with its size where it is known. */
export interface StackLength {
  /** In metres. */
  readonly metres?: number
  /** As written: `2.000 m`; the words for not known otherwise. */
  readonly text: string
}

/** Edges of the three pipes, from outside in. */
export const pipeEdges = [
  'outer-outside',
  'outer-bore',
  'return-outside',
  'return-bore',
  'pressure-outside',
  'pressure-bore',
] as const

export type PipeEdge = (typeof pipeEdges)[number]

/** The pipes, from outside in. */
export const stackPipes = ['outer', 'return', 'pressure'] as const

export type StackPipe = (typeof stackPipes)[number]

/** A pipe stack as data: everything that the figure is drawn from. */
export interface PipeStack {
  /** Tag of the pump. */
  readonly pump: string
  readonly whole: StackLength
  /** From deck down; none where they are not listed. */
  readonly sections: readonly {readonly number: number; readonly length: StackLength}[]
  /** Distance of each from the underside of the top plate; absent where they are not listed. */
  readonly supports?: readonly StackLength[]
  readonly diameters: Readonly<Record<PipeEdge, StackLength>>
  /** Bolts of one joint in words: `12 × M12 × 50 mm`. */
  readonly bolts: string
  /** Pipes that have an O-ring in each joint, as the design states them. */
  readonly rings: readonly StackPipe[]
}

/** Words of the figure that no author wrote. */
export interface StackWords {
  readonly title: string
  readonly onDeck: string
  readonly inTank: string
  readonly motor: string
  /** What each row of the figure shows, at its left end. */
  readonly rows: Readonly<Record<'supports' | 'sections' | 'joints' | 'lengths' | 'whole', string>>
  readonly notKnown: string
  readonly none: string
  readonly notListed: (what: string) => string
  readonly pipes: Readonly<Record<StackPipe, string>>
  readonly pipe: (name: string, outside: string, bore: string) => string
  readonly spaces: Readonly<
    Record<'pressure' | 'return' | 'cofferdam', {readonly letter: string; readonly title: string}>
  >
  /** Letter of the section across the stack. */
  readonly across: string
  readonly scale: (times: number) => string
  readonly dashed: string
  readonly signs: string
  readonly text: {
    readonly view: (pump: string) => string
    readonly whole: (length: string) => string
    readonly sections: (list: string) => string
    /** Where the joints are, of a stack whose sections are listed and of one whose sections nobody knows. */
    readonly joints: string
    readonly joint: string
    readonly supports: (list: string) => string
    readonly bolts: (bolts: string) => string
    readonly rings: (list: string) => string
    readonly pipes: (list: string) => string
    readonly spaces: (list: string) => string
  }
}
