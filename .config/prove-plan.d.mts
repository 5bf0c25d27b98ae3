/** A published page as planning sees it. */
export interface PlannedPage {
  readonly vessel: string
  readonly path: string
  readonly kind: string
  readonly layout: string
}

/** One part of `npm run prove`. */
export interface ProvePart {
  readonly name: string
  readonly work: string
  readonly units: readonly {readonly vessel: string; readonly path: string}[]
  /** Seconds that it is expected to take. */
  readonly estimate: number
  /** What was left out to keep within the time; blank when nothing. */
  readonly left: string
}

export const partSeconds: number
export const allSeconds: number
export const firstRates: Readonly<Record<string, number>>
export const kills: number
export const singleChecks: ReadonlyMap<string, string>
/** Same markup apart from words and figures gives the same layout class. */
export function layoutClass(html: string): string
/** What planning needs to know of a published page. */
export function describePage(vessel: string, path: string, html: string): PlannedPage
/** Parts for the pages of all vessels, with the seconds that one page of a work was seen to take. */
export function planParts(
  pages: readonly PlannedPage[],
  rates: Readonly<Record<string, number>>,
): readonly ProvePart[]
