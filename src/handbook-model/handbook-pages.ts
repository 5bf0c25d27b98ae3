import type {Page, VesselHead} from './pages.ts'
import type {RecordPage} from './publication.ts'

/** Product of `compile`: all pages of one vessel as plain data. Strings are ready to print; nothing is HTML yet. */
export interface HandbookPages {
  readonly vessel: VesselHead
  readonly pages: readonly Page[]
  /** Records of the vessel: they are no pages of the handbook and have no technical text. */
  readonly records: readonly RecordPage[]
}
