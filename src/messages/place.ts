/** A stretch of a content file: path below the content folder, lines and columns from 1. */
export interface Place {
  readonly path: string
  readonly line: number
  readonly column: number
  readonly endLine?: number
  readonly endColumn?: number
}
