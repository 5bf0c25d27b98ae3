/** One line of a technical text: the block it belongs to, what it is, and the words as they stand on the page. */
export interface TechnicalLine {
  readonly block: string
  readonly kind: string
  readonly text: string
  /** The section, step or hold point that it stands in; a value stands in several. It is no part of the text. */
  readonly within?: string
}
