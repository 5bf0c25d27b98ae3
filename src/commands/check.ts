import {nodeDisk} from '../publish/disk.ts'
import {completeInterruptedSwaps} from '../publish/publish-vessel.ts'
import {type CommandOptions, countWords, messagesData, messagesText, type Outcome} from './outcome.ts'
import {checkAndCompute} from './run-stages.ts'

/** `sheetanchor check`: reads, checks and computes everything and publishes nothing. */
export async function runCheck(options: CommandOptions): Promise<Outcome> {
  completeInterruptedSwaps(options.out, nodeDisk)
  const {files, content, asOf} = await checkAndCompute(options.content, options.asOf)
  const counts = countWords(files)
  const passed = content !== undefined
  const out = options.json
    ? `${JSON.stringify({passed, asOf, messages: messagesData(files)}, null, 2)}\n`
    : `Checked ${options.content}: ${counts}\n`
  return {exitStatus: passed ? 0 : 1, out, err: messagesText(files, options)}
}
