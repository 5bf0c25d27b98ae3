import {type FigureSize, figureStyles} from './figure-styles.ts'

/** A figure: a drawing as a file of its own, what it tells in words, and the data it was drawn from. */
export interface Figure {
  readonly svg: string
  /** Words of one pump alone, in the same view box: laid over the drawing, which pumps alike share. */
  readonly own?: string
  readonly width: number
  readonly height: number
  readonly size: FigureSize
  readonly alternative: string
  readonly data: string
}

/**
 * A drawing, black on white, with the styles that it uses: shown by an image it takes none of its page.
 *
 * @param drawn
 *   Elements with classes of `figure-styles.ts`, in units of the view box.
 */
export function figureOf({
  drawn,
  own = '',
  ...figure
}: Omit<Figure, 'svg' | 'own'> & {
  readonly drawn: string
  readonly own?: string
}): Figure {
  return {
    ...figure,
    svg: drawingOf(drawn, figure),
    ...(own === '' ? {} : {own: drawingOf(own, figure)}),
  }
}

/** The text of a drawing: a root without words, for whoever shows it says them, and its styles. */
export function drawingOf(
  drawn: string,
  {width, height, size}: Pick<Figure, 'width' | 'height' | 'size'>,
): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><style>${figureStyles(drawn, size)}</style>${withGroupedTexts(drawn)}</svg>`
}

/** Texts above everything else, those of one class together, so that a drawing of many labels stays small. */
function withGroupedTexts(drawn: string): string {
  const groups = new Map<string, string[]>()
  const rest = drawn.replace(
    /<text(?: class="([^"]*)")?((?: [^>]*)?>[^<]*<\/text>)/gu,
    (_, names: string | undefined, text: string) => {
      groups.set(names ?? '', [...(groups.get(names ?? '') ?? []), `<text${text}`])
      return ''
    },
  )
  return `${rest}${[...groups]
    .map(([names, texts]) =>
      names === '' || texts.length < 2
        ? texts.join('').replace(/^<text/u, names === '' ? '<text' : `<text class="${names}"`)
        : `<g class="${names}">${texts.join('')}</g>`,
    )
    .join('')}`
}
