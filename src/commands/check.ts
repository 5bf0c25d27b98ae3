import {nodeDisk} from '../publish/disk.ts'
import {completeInterruptedSwaps} from '../publish/publish-vessel.ts'
import {type CommandOptions, countWords, messagesData, messagesText, type Outcome} from './outcome.ts'
import {checkAndCompute} from './run-stages.ts'

/** `sheetanchor check`: reads, checks and computes everything and publishes nothing. */
export async function runCheck(options: CommandOptions): Promise<Outcome> {
  completeInterruptedSwaps(options.out, nodeDisk)
  const {files, content} = await checkAndCompute(options.content)
  const counts = countWords(files)
  const out = options.json
    ? `${JSON.stringify({passed: content !== undefined, messages: messagesData(files)}, null, 2)}\n`
    : `Checked ${options.content}: ${counts}\n`
  return {exitStatus: content ? 0 : 1, out, err: messagesText(files, options)}
}
