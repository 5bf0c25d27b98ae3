/** A value that prints otherwise, on the pumps of a vessel where it does so in the same way; one side is missing where it came or went. */
export interface ValueMove {
  readonly value: string
  readonly title: string
  readonly vessel: string
  readonly positions: readonly string[]
  readonly before?: PrintedFigure
  readonly after?: PrintedFigure
}

/** A value as pages print it. */
export interface PrintedFigure {
  readonly figure: string
  readonly condition?: string
}

/** A value of one pump as pages print it. */
export interface PrintedValue {
  readonly value: string
  readonly title: string
  readonly vessel: string
  readonly position: string
  readonly printed: PrintedFigure
}

/** Values that print otherwise, each with the pumps on which it moves in the same way; in order of vessel and value. */
export function valueMoves(
  before: readonly PrintedValue[],
  after: readonly PrintedValue[],
): readonly ValueMove[] {
  const [old, now] = [before, after].map(byPump)
  const moves = new Map<string, {readonly move: ValueMove; readonly positions: string[]}>()
  for (const key of new Set([...(old?.keys() ?? []), ...(now?.keys() ?? [])])) {
    const [from, to] = [old?.get(key), now?.get(key)]
    const some = to ?? from
    const [was, is] = [from, to].map((one) => one && figureText(one.printed))
    if (!some || was === is) continue
    const {value, title, vessel, position} = some
    const group = [vessel, value, was, is].join('\n')
    const known = moves.get(group)
    if (known) known.positions.push(position)
    else {
      const positions = [position]
      const move: ValueMove = {
        value,
        title,
        vessel,
        positions,
        ...(from ? {before: from.printed} : {}),
        ...(to ? {after: to.printed} : {}),
      }
      moves.set(group, {move, positions})
    }
  }
  return [...moves.values()]
    .map(({move}) => move)
    .sort((a, b) => (`${a.vessel} ${a.value}` < `${b.vessel} ${b.value}` ? -1 : 1))
}

/** A figure with its condition in words. */
export function figureText({figure, condition}: PrintedFigure): string {
  return condition === undefined ? figure : `${figure} (${condition})`
}

function byPump(values: readonly PrintedValue[]): ReadonlyMap<string, PrintedValue> {
  return new Map(values.map((one) => [`${one.vessel} ${one.position} ${one.value}`, one]))
}

/**
 * Values as the technical texts of the explanation pages print them, for every pump that a page stands for.
 *
 * @param pumpsOf
 *   Pumps of a vessel that the second word of a page id stands for: one, or all of a design.
 */
export function valuesOfTexts(
  texts: ReadonlyMap<string, string>,
  isExplanation: (page: string) => boolean,
  pumpsOf: (vessel: string, middle: string) => readonly string[],
): readonly PrintedValue[] {
  return [...texts].flatMap(([page, text]) => {
    if (!isExplanation(page)) return []
    const [vessel = '', middle = ''] = page.split('/')
    const pumps = pumpsOf(vessel, middle)
    return explainedValues(text).flatMap((one) =>
      pumps.map((position): PrintedValue => ({...one, vessel, position})),
    )
  })
}

function explainedValues(text: string): readonly Pick<PrintedValue, 'value' | 'title' | 'printed'>[] {
  const found = new Map<string, {title: string; figures: string[]; condition?: string}>()
  for (const line of text.split('\n')) {
    const [block = '', kind = '', words = ''] = line.split('\t')
    // Ids of values have a point; identity and urgent revisions are other blocks.
    if (!block.includes('.')) continue
    if (kind === 'title') found.set(block, {title: words, figures: []})
    const value = found.get(block)
    if (kind === 'value' || kind === 'more') value?.figures.push(words)
    if (kind === 'condition' && value) value.condition = words
  }
  return [...found].map(([value, {title, figures, condition}]) => ({
    value,
    title,
    printed: {figure: figures.join(' · '), ...(condition === undefined ? {} : {condition})},
  }))
}
