import type {RenderedFile} from '../handbook-model/files.ts'
import {checkDataFile, checkDataOf} from '../issues/check-data.ts'
import type {IssueHistory} from '../issues/history.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {renderHandbook} from '../render/render-handbook.ts'
import type {ProgramFiles} from './program-files.ts'
import type {StatedPages} from './run-stages.ts'

/** All files of a vessel's folder but its manifest: pages, and the check data of its last three issues. */
export function handbookFiles(
  stated: StatedPages,
  program: ProgramFiles,
  history: IssueHistory,
  files: ContentFiles,
): readonly RenderedFile[] {
  const {vessel, pages} = stated.pages
  const tags = Object.fromEntries(
    pages.flatMap(({head: {position}}) => (position ? [[position.id, position.tag]] : [])),
  )
  return [
    ...renderHandbook({...stated, ...program}),
    checkDataFile(
      checkDataOf(
        {vessel: vessel.id, tags, ledgers: history.ledgers.get(vessel.id) ?? [], texts: history.texts},
        files,
      ),
    ),
  ]
}
