import {type PipeStack, type StackWords, stackPipes} from './stack-data.ts'

/** What the figure is drawn from beside values that are told by themselves: sections, joints with their rings, supports, spaces and scale. */
export function stackData(
  {sections, supports, rings}: PipeStack,
  words: StackWords,
  scale: readonly string[],
): readonly string[] {
  const {text, spaces} = words
  const listed = (entries: readonly string[] | undefined): string => {
    if (entries === undefined) return words.notKnown
    return entries.length === 0 ? words.none : entries.join('; ')
  }
  const lengths = sections.map(({number, length}) => `${number}: ${length.text}`)
  return [
    text.sections(listed(lengths.length > 0 ? lengths : undefined)),
    lengths.length > 0 ? text.joints : text.joint,
    text.rings(rings.length > 0 ? rings.map((pipe) => words.pipes[pipe]).join(', ') : words.notKnown),
    text.supports(listed(supports?.map((one, index) => `${index + 1}: ${one.text}`))),
    text.spaces(
      (['pressure', 'return', 'cofferdam'] as const).map((space) => spaces[space].title).join(', '),
    ),
    words.signs,
    ...scale,
  ]
}

/** Everything that the figure tells, in words. */
export function stackTold(stack: PipeStack, words: StackWords, scale: readonly string[]): readonly string[] {
  const {whole, diameters, bolts} = stack
  const pipes = stackPipes.map((pipe) =>
    words.pipe(words.pipes[pipe], diameters[`${pipe}-outside`].text, diameters[`${pipe}-bore`].text),
  )
  return [
    words.text.whole(whole.text),
    ...stackData(stack, words, scale),
    words.text.pipes(pipes.join('; ')),
    words.text.bolts(bolts),
  ]
}
