import {newestLedger} from '../issues/ledger.ts'
import {stopsTheBuild} from '../messages/add-message.ts'
import {nodeDisk} from '../publish/disk.ts'
import {completeInterruptedSwaps} from '../publish/publish-vessel.ts'
import {type CommandOptions, countWords, messagesData, messagesText, type Outcome} from './outcome.ts'
import {checkAndCompute} from './run-stages.ts'

/** `sheetanchor check`: reads, checks and computes everything and publishes nothing. */
export async function runCheck(options: CommandOptions): Promise<Outcome> {
  completeInterruptedSwaps(options.out, nodeDisk)
  const {files, content: computed, ledgers} = await checkAndCompute(options.content)
  for (const vessel of computed?.vessels.keys() ?? []) newestLedger(vessel, ledgers, files)
  const content = stopsTheBuild(files) ? undefined : computed
  const counts = countWords(files)
  const out = options.json
    ? `${JSON.stringify({passed: content !== undefined, messages: messagesData(files)}, null, 2)}\n`
    : `Checked ${options.content}: ${counts}\n`
  return {exitStatus: content ? 0 : 1, out, err: messagesText(files, options)}
}
