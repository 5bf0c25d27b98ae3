import type {Page, VesselHead} from './pages.ts'
import type {RecordPage} from './publication.ts'

/** Product of `compile`: all pages of one vessel as plain data. Strings are ready to print; nothing is HTML yet. */
export interface HandbookPages {
  readonly vessel: VesselHead
  readonly pages: readonly Page[]
  /** Drawings that pages share, as files below the vessel's folder. */
  readonly figures: readonly {readonly path: string; readonly svg: string}[]
  /** Records of the vessel: they are no pages of the handbook and have no technical text. */
  readonly records: readonly RecordPage[]
}
