/** One line of a technical text: the block it belongs to, what it is, and the words as they stand on the page. */
export interface TechnicalLine {
  readonly block: string
  readonly kind: string
  readonly text: string
}
