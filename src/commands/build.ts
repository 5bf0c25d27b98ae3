import {newestLedger} from '../issues/history.ts'
import {type Rebuild, rebuildOf, rebuildText} from '../issues/rebuild.ts'
import {stopsTheBuild} from '../messages/add-message.ts'
import {checkFiles} from '../publish/check-files.ts'
import {nodeDisk} from '../publish/disk.ts'
import {issuedLines} from '../publish/manifest.ts'
import {publishVessel} from '../publish/publish-vessel.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'
import {handbookFiles} from './handbook-files.ts'
import {type CommandOptions, countWords, messagesData, messagesText, type Outcome} from './outcome.ts'
import {type ProgramWithVersion, readProgramWithVersion} from './program-files.ts'
import {refusedOutFolder} from './ready-out-folder.ts'
import {refusedVessel} from './refused-vessel.ts'
import {checkAndCompute, stateVessel} from './run-stages.ts'
import {supersededPagesText, supersededSources} from './superseded-sources.ts'

/** A vessel's handbook as it was published. */
interface Published {
  readonly vessel: string
  readonly name: string
  readonly open: string
  readonly pages: number
  readonly bytes: number
  /** How it stands against the newest issue; none where the vessel has none, or in a copy that names places. */
  readonly rebuild?: Rebuild
}

/**
 * `sheetanchor build`: publishes the handbook of every vessel, or of those named, and lists the pages
 * of each that stand on a superseded source. A vessel that was issued is told whether this is the issue again, byte
 * for byte, and if not, why.
 */
export async function runBuild(
  options: CommandOptions,
  programFiles: () => Promise<ProgramWithVersion> = readProgramWithVersion,
): Promise<Outcome> {
  const unready = refusedOutFolder(options.out)
  if (unready) return unready
  options.progress('reading and checking')
  const {files, content, values, hashes, history, asOf} = await checkAndCompute(options.content, options.asOf)
  const refused = refusedVessel(options.vessels, content)
  if (refused) return refused
  const published: Published[] = []
  if (content && values) {
    const program = await programFiles()
    for (const id of options.vessels.length > 0 ? options.vessels : content.vessels.keys()) {
      options.progress(`building ${id}`)
      const stated = stateVessel(content, values, id, history, options.withPlaces)
      const rendered = handbookFiles(stated, program, history, files)
      checkFiles(id, rendered, files)
      if (stopsTheBuild(files)) break
      publishVessel({vesselId: id, files: rendered, siteFolder: options.out, disk: nodeDisk})
      const ledger = options.withPlaces ? undefined : newestLedger(history, id)
      const manifestHash = technicalHash(issuedLines(rendered))
      published.push({
        vessel: id,
        name: stated.pages.vessel.name,
        open: `${options.out}/${id}/index.html`,
        pages: stated.pages.pages.length,
        bytes: rendered.reduce((sum, file) => sum + file.bytes.length, 0),
        ...(ledger ? {rebuild: rebuildOf(ledger, {toolVersion: program.version, hashes, manifestHash})} : {}),
      })
    }
  }
  const passed = content !== undefined && !stopsTheBuild(files)
  const lines = published.flatMap((one) => [
    `Handbook of ${one.name}: open ${one.open} (${one.pages} pages, ${(one.bytes / 1e6).toFixed(1)} MB)\n`,
    ...(one.rebuild ? [`${rebuildText(one.vessel, one.rebuild)}\n`] : []),
  ])
  const builtVessels = published.map(({vessel}) => vessel)
  const superseded = content && values ? supersededSources(content, values, builtVessels) : []
  const words = passed
    ? `${lines.join('')}${[...supersededPagesText(superseded), countWords(files)].join('\n')}\n`
    : `${lines.join('')}${published.length === 0 ? 'Nothing' : 'Nothing further'} published: ${countWords(files)}\n`
  const out = options.json
    ? `${JSON.stringify({passed, asOf, published, superseded, messages: messagesData(files)}, null, 2)}\n`
    : words
  return {exitStatus: passed ? 0 : 1, out, err: messagesText(files, options)}
}
