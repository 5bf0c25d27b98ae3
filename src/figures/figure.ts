/** A figure: SVG text, what it tells in words, and the data it was drawn from. */
export interface Figure {
  readonly svg: string
  readonly alternative: string
  readonly data: string
}
