import {join} from 'node:path'
import {nodeDisk} from '../publish/disk.ts'
import {renderSisters} from '../render/render-sisters.ts'
import {type CommandOptions, countWords, messagesData, messagesText, type Outcome} from './outcome.ts'
import {readProgramFiles} from './program-files.ts'
import {refusedOutFolder} from './ready-out-folder.ts'
import {refusedVessel} from './refused-vessel.ts'
import {checkAndCompute} from './run-stages.ts'
import {type SistersReport, sistersReport} from './sisters-report.ts'
import {sistersView} from './sisters-view.ts'
import {writeWhole} from './write-whole.ts'

/** File of the page, beside the handbooks. */
export const sistersPage = 'sisters.html'

/**
 * `sheetanchor sisters`: what is stated otherwise of some of the pumps of one design, on whatever ship they are.
 *
 * Writes one page. Only what is stated is held against each other; what follows from a stated difference is not told again.
 */
export async function runSisters(
  options: CommandOptions,
  templatesOfProgram: () => Promise<ReadonlyMap<string, string>> = async () =>
    (await readProgramFiles()).templates,
): Promise<Outcome> {
  const unready = refusedOutFolder(options.out)
  if (unready) return unready
  options.progress('reading and checking')
  const {files, content, values} = await checkAndCompute(options.content, options.asOf)
  const refused = refusedVessel(options.vessels, content)
  if (refused) return refused
  if (!content || !values)
    return {
      exitStatus: 1,
      out: options.json
        ? `${JSON.stringify({passed: false, messages: messagesData(files)}, null, 2)}\n`
        : `Nothing to hold against each other: ${countWords(files)}\n`,
      err: messagesText(files, options),
    }
  const designs = sistersReport(content, options.vessels)
  const path = join(options.out, sistersPage)
  writeWhole(path, renderSisters(sistersView(designs, content, values), await templatesOfProgram()), nodeDisk)
  return {
    exitStatus: 0,
    out: options.json
      ? `${JSON.stringify({passed: true, page: path, designs, messages: messagesData(files)}, null, 2)}\n`
      : [...designs.map(sistersText), `On one page: open ${path}\n`].join('\n'),
    err: messagesText(files, options),
  }
}

function sistersText({
  title,
  vessels,
  pumps,
  compared,
  stackLengths: lengths,
  differences,
}: SistersReport): string {
  const head = `${title}: ${pumps} ${pumps === 1 ? 'pump' : 'pumps'} on ${vessels.join(', ')}`
  if (pumps === 1) return `${head}, nothing to hold it against\n`
  return [
    head,
    ...(lengths.length > 1
      ? [`  stack lengths: ${lengths.map(({text, on}) => `${text} (${on})`).join('; ')}`]
      : []),
    `  ${differences.length} of ${compared} things differ`,
    ...differences.flatMap(({item, sides}) => [
      `  ${item}`,
      ...sides.flatMap(({text, usual, on, at, pumps: count, reasons, unexplained}) => [
        `    ${usual ? 'usual  ' : 'differs'} ${text} (${count}: ${on})`,
        `            ${at}`,
        ...reasons.map((one) => `            because: ${one.reason} (${one.on})`),
        ...(unexplained === '' ? [] : [`            unexplained: ${unexplained}`]),
      ]),
    ]),
    '',
  ].join('\n')
}
