/** A file made ready by `render`, path below the vessel folder. */
export interface RenderedFile {
  readonly path: string
  readonly bytes: Uint8Array
}
