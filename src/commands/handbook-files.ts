import type {RenderedFile} from '../handbook-model/files.ts'
import {checkDataFile, checkDataOf} from '../issues/check-data.ts'
import type {Ledger} from '../issues/ledger.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {renderHandbook} from '../render/render-handbook.ts'
import type {ProgramFiles} from './program-files.ts'
import type {StatedPages} from './run-stages.ts'

/** What a vessel's folder is made from besides its stated pages. */
export interface HandbookInput {
  readonly program: ProgramFiles
  /** All ledgers of the vessel, oldest first. */
  readonly ledgers: readonly Ledger[]
  /** Technical texts of issues by their hash. */
  readonly texts: ReadonlyMap<string, string>
}

/** All files of a vessel's folder but its manifest: pages, and the check data of its last three issues. */
export function handbookFiles(
  stated: StatedPages,
  {program, ledgers, texts}: HandbookInput,
  files: ContentFiles,
): readonly RenderedFile[] {
  const {vessel, pages} = stated.pages
  const tags = Object.fromEntries(
    pages.flatMap(({head: {position}}) => (position ? [[position.id, position.tag]] : [])),
  )
  return [
    ...renderHandbook({...stated, ...program}),
    checkDataFile(checkDataOf({vessel: vessel.id, tags, ledgers, texts}, files)),
  ]
}
