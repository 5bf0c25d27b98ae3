/** Version of what built pages and the page runtime agree on; a runtime that meets another version leaves the page alone. */
export const contractVersion = 1

/** The three palettes by the value of `?p=` and `data-palette`. */
export const palettes = ['day', 'dusk', 'night'] as const
export type Palette = (typeof palettes)[number]

/** Query key by which the palette travels in every internal link. */
export const paletteQuery = 'p'

/**
 * Key of a remembered thing. One browser gives one store to every handbook on the PC, so the key names the vessel.
 *
 * @param rest
 *   For a draft of readings: position, job and start id; never a revision or a path.
 */
export function storageKey(vessel: string, kind: 'palette' | 'draft', ...rest: readonly string[]): string {
  return ['sheetanchor', vessel, kind, ...rest].join('|')
}

/** What a page asks of the hidden memory frame, and what it answers. */
export type HubRequest =
  | {readonly version: 1; readonly id: number; readonly ask: 'read'; readonly key: string}
  | {
      readonly version: 1
      readonly id: number
      readonly ask: 'write'
      readonly key: string
      readonly value: string
    }
/** What the hidden memory frame answers. */
export interface HubAnswer {
  readonly version: 1
  readonly id: number
  /** Undefined where storage is blocked or holds nothing. */
  readonly value: string | undefined
  readonly kept: boolean
}
