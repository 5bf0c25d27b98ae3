import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import type {RenderedFile} from '../../src/handbook-model/files.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {checkFiles} from '../../src/publish/check-files.ts'
import {renderHandbook} from '../../src/render/render-handbook.ts'
import {templates} from '../render/templates-on-disk.ts'

/** What comes of a content folder before anything is written. */
export interface RenderedContent {
  readonly files: ContentFiles
  /** Files of each vessel; none where a message stops the build earlier. */
  readonly vessels: ReadonlyMap<string, readonly RenderedFile[]>
}

/** Reads, checks, computes, compiles and renders a content folder, and checks the files as a build does. */
export async function renderedContent(folder: string): Promise<RenderedContent> {
  const {files, content, values, history} = await checkAndCompute(folder)
  const vessels = new Map<string, readonly RenderedFile[]>()
  if (content && values) {
    for (const vessel of content.vessels.keys()) {
      const stated = stateVessel(content, values, vessel, history)
      const rendered = renderHandbook({
        ...stated,
        templates,
        runtime: {head: '', page: '', hub: '', charts: ''},
      })
      checkFiles(vessel, rendered, files)
      vessels.set(vessel, rendered)
    }
  }
  return {files, vessels}
}
