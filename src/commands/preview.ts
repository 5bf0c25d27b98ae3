import {join} from 'node:path'
import {newestLedger} from '../issues/history.ts'
import {type Impact, impactOf} from '../issues/impact.ts'
import {stopsTheBuild} from '../messages/add-message.ts'
import {nodeDisk} from '../publish/disk.ts'
import {renderImpact} from '../render/render-impact.ts'
import {compareTextSets, type PageChange} from '../technical-text/compare-texts.ts'
import {valueMoves} from '../technical-text/value-moves.ts'
import {movesText} from './compare-contents.ts'
import {earlierContent} from './earlier-content.ts'
import {impactView, placesOf} from './impact-view.ts'
import {type CommandOptions, countWords, messagesData, messagesText, type Outcome} from './outcome.ts'
import {type PreviewBase, previewSides} from './preview-bases.ts'
import {readProgramFiles} from './program-files.ts'
import {refusedOutFolder} from './ready-out-folder.ts'
import {refusedVessel} from './refused-vessel.ts'
import {checkAndCompute} from './run-stages.ts'
import {writeWhole} from './write-whole.ts'

/** File of the reviewer's page, beside the handbooks. */
export const impactPage = 'impact.html'

/**
 * `sheetanchor preview`: what the content as it reads now would move, against the newest issue of each vessel or an
 * earlier content, before anybody approves it. Writes one page for the reviewer.
 */
export async function runPreview(
  options: CommandOptions,
  templatesOfProgram: () => Promise<ReadonlyMap<string, string>> = async () =>
    (await readProgramFiles()).templates,
): Promise<Outcome> {
  const unready = refusedOutFolder(options.out)
  if (unready) return unready
  options.progress('reading and checking')
  const checked = await checkAndCompute(options.content, options.asOf)
  const {files, content} = checked
  const known = [...(content?.vessels.keys() ?? [])]
  const refused = refusedVessel(options.vessels, content)
  if (refused) return refused
  const earlier = content && (await earlierContent(options, files))
  const sides =
    content && !stopsTheBuild(files)
      ? previewSides(checked, content, earlier, options.vessels.length > 0 ? options.vessels : known)
      : undefined
  if (!content || !sides || stopsTheBuild(files))
    return {
      exitStatus: 1,
      out: options.json
        ? `${JSON.stringify({passed: false, messages: messagesData(files)}, null, 2)}\n`
        : `Nothing to preview: ${countWords(files)}\n`,
      err: messagesText(files, options),
    }
  const pumps = new Set(
    [...content.vessels.values()].flatMap(({id, positions}) => positions.map((one) => `${id}/${one.id}`)),
  )
  const revisionOf = (page: string): string | undefined => {
    const entry = newestLedger(checked.history, page.split('/')[0] ?? '')?.pages[page]
    return entry && `${entry.revision}${entry.suffix ?? ''}`
  }
  const {texts, values} = sides
  const pages = compareTextSets(texts.before, texts.after)
  const impact = impactOf({
    ...texts,
    pages,
    values: valueMoves(values.before, values.after),
    pumps,
    revisionOf,
  })
  const path = join(options.out, impactPage)
  writeWhole(
    path,
    renderImpact(impactView(impact, sides.bases, content), await templatesOfProgram()),
    nodeDisk,
  )
  return {
    exitStatus: 0,
    out: options.json
      ? `${JSON.stringify({passed: true, page: path, bases: sides.bases, ...impact, messages: messagesData(files)}, null, 2)}\n`
      : impactText(impact, pages, sides.bases, path),
    err: messagesText(files, options),
  }
}

function impactText(
  impact: Impact,
  pages: readonly PageChange[],
  bases: readonly PreviewBase[],
  path: string,
): string {
  const moves = movesText({values: impact.values, pages})
  const differences = impact.differences.flatMap(({change, block, before, after, pages}) => [
    `  ${change} ${block}: ${placesOf(pages)}`,
    ...before.map((text) => `    - ${text}`),
    ...after.map((text) => `    + ${text}`),
  ])
  return [
    ...bases.map(baseText),
    moves.trimEnd(),
    `${impact.differences.length} other differences`,
    ...differences,
    `For the reviewer: open ${path}`,
    '',
  ].join('\n')
}

/** What a vessel is held against, in words. */
function baseText({vessel, issue, date, pages, values, pageCount}: PreviewBase): string {
  if (pages === 'none')
    return `${vessel}: never issued and no earlier content named; all ${pageCount} pages would be new`
  const words = (side: PreviewBase['pages']): string =>
    side === 'issue' ? `issue ${issue} of ${date}` : 'the earlier content'
  return pages === values
    ? `${vessel}: against ${words(pages)}`
    : `${vessel}: pages against ${words(pages)}, values against ${words(values)}`
}
