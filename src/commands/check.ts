import {nodeDisk} from '../publish/disk.ts'
import {completeInterruptedSwaps} from '../publish/publish-vessel.ts'
import {compareContents, movesText} from './compare-contents.ts'
import {contentReport, reportText} from './content-report.ts'
import {earlierContent} from './earlier-content.ts'
import {type CommandOptions, countWords, messagesData, messagesText, type Outcome} from './outcome.ts'
import {checkAndCompute} from './run-stages.ts'

/**
 * `sheetanchor check`: reads, checks and computes everything and publishes nothing.
 *
 * With an earlier content to hold it against, it lists every value and page that moved, old and new.
 */
export async function runCheck(options: CommandOptions): Promise<Outcome> {
  completeInterruptedSwaps(options.out, nodeDisk)
  const checked = await checkAndCompute(options.content, options.asOf)
  const {files, content, asOf} = checked
  const earlier = content && (await earlierContent(options, files))
  const passed = content !== undefined && (earlier === undefined || earlier.content !== undefined)
  const report =
    checked.content && checked.values
      ? contentReport(checked.content, checked.values, checked.hashes)
      : undefined
  const moves = passed && earlier ? compareContents(earlier, checked) : undefined
  const out = options.json
    ? `${JSON.stringify({passed, asOf, messages: messagesData(files), ...(report ? {report} : {}), ...(moves ? {moves} : {})}, null, 2)}\n`
    : `Checked ${options.content}: ${countWords(files)}\n${report ? reportText(report) : ''}${moves ? movesText(moves) : ''}`
  return {exitStatus: passed ? 0 : 1, out, err: messagesText(files, options)}
}
