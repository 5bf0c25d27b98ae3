import {parseArgs} from 'node:util'
import {nearestWord} from './check/nearest-word.ts'
import {runApprove} from './commands/approve.ts'
import {runBuild} from './commands/build.ts'
import {runCalculate} from './commands/calculate.ts'
import {runCheck} from './commands/check.ts'
import {explainRule} from './commands/explain-rule.ts'
import {runIssue} from './commands/issue.ts'
import type {CommandOptions, Outcome} from './commands/outcome.ts'
import {runPreview} from './commands/preview.ts'
import {runSisters} from './commands/sisters.ts'
import {isDay} from './handbook-model/comparison-date.ts'

const commands = ['check', 'build', 'preview', 'sisters', 'approve', 'issue', 'calculate'] as const

const help = `sheetanchor COMMAND [options]

  check       read the content, check and compute everything, publish nothing
  build       publish the handbook of every vessel
  preview     what an edit moves, before its approval: pages, values, steps, cautions, and a page for the reviewer
  sisters     what is stated otherwise of some pumps of one design, on all vessels: both figures and their lines
  approve     sign sources as they read now: approve SOURCE… --as ROLE --by ID --date DAY --statement TEXT
  issue       number a vessel's pages and publish them: issue --vessel ID --number 2031-03 --date DAY --by ID --as-of DAY
  calculate   run one calculation of the library, or list them

  --content DIR   folder of the content (content)
  --out DIR       folder of the published handbooks (site)
  --vessel ID     only this vessel; may be given again
  --explain RULE  with check: why a rule exists, accepted, rejected, how to mend; "all" lists every rule
  --against DIR   earlier content: check and preview list what moved, old and new
  --as-of DAY     day that dates are compared with (the newest one in the content)
  --as ROLE       with approve: author, reviewer or approver
  --by ID         with approve and issue: the person of the office who signs or publishes
  --date DAY      with approve and issue: the day of the signature or of the issue
  --statement TEXT  with approve: what was done before signing
  --number N      with issue: year and running number of the vessel
  --with-places   with build: a copy for the office, its explanations name file and line of each input
  --json          results for machines
  --help          this text

Exit status: 0 done, 1 the content has errors, 2 used wrongly, 3 a fault of the program or the machine
`

async function run(words: readonly string[]): Promise<Outcome> {
  const [command, ...rest] = words
  if (command === undefined || command === '--help' || command === 'help')
    return {
      exitStatus: command === undefined ? 2 : 0,
      out: command === undefined ? '' : help,
      err: command === undefined ? help : '',
    }
  if (command === 'calculate')
    return runCalculate(
      rest.filter((word) => word !== '--json'),
      rest.includes('--json'),
    )
  const known = commands.find((one) => one === command)
  if (!known)
    return used(
      `Unexpected command \`${command}\`, expected \`${nearestWord(command, commands)}\` or another of ${commands.join(', ')}`,
    )
  let parsed: ReturnType<typeof readOptions>
  try {
    parsed = readOptions(rest, known === 'approve')
  } catch (error) {
    return used(`${error instanceof Error ? error.message : String(error)}; see \`sheetanchor --help\``)
  }
  if (parsed.help) return {exitStatus: 0, out: help, err: ''}
  if (parsed.explain !== undefined) return explainRule(parsed.explain)
  if (known === 'approve')
    return runApprove({...parsed.words, role: parsed.words.as, sources: parsed.sources}, parsed.options)
  if (known === 'issue') return runIssue(parsed.words, parsed.options)
  if (known === 'preview') return runPreview(parsed.options)
  if (known === 'sisters') return runSisters(parsed.options)
  return known === 'check' ? runCheck(parsed.options) : runBuild(parsed.options)
}

/** Words of signatures and issues; empty where none is given, which the command refuses. */
interface SigningWords {
  readonly as: string
  readonly by: string
  readonly date: string
  readonly statement: string
  readonly number: string
}

function readOptions(
  words: readonly string[],
  allowPositionals: boolean,
): {
  readonly help: boolean
  readonly sources: readonly string[]
  readonly words: SigningWords
  readonly explain: string | undefined
  readonly options: CommandOptions
} {
  const {values, positionals} = parseArgs({
    args: [...words],
    allowPositionals,
    options: {
      content: {type: 'string', default: 'content'},
      out: {type: 'string', default: 'site'},
      vessel: {type: 'string', multiple: true, default: []},
      against: {type: 'string'},
      explain: {type: 'string'},
      'as-of': {type: 'string'},
      as: {type: 'string', default: ''},
      by: {type: 'string', default: ''},
      date: {type: 'string', default: ''},
      statement: {type: 'string', default: ''},
      number: {type: 'string', default: ''},
      'with-places': {type: 'boolean', default: false},
      json: {type: 'boolean', default: false},
      help: {type: 'boolean', default: false},
    },
  })
  const asOf = values['as-of']
  if (asOf !== undefined && !isDay(asOf))
    throw new Error(`Unexpected day \`${asOf}\` of --as-of, expected a day like \`2031-02-14\``)
  if (values.date !== '' && !isDay(values.date))
    throw new Error(`Unexpected day \`${values.date}\` of --date, expected a day like \`2031-02-14\``)
  const started = performance.now()
  const progress = (line: string): void => {
    if (process.stderr.isTTY && performance.now() - started > 1000) process.stderr.write(`${line}\n`)
  }
  return {
    help: values.help,
    explain: values.explain,
    sources: positionals,
    words: {
      as: values.as,
      by: values.by,
      date: values.date,
      statement: values.statement.trim(),
      number: values.number,
    },
    options: {
      content: values.content,
      out: values.out,
      vessels: values.vessel,
      json: values.json,
      ...(values['with-places'] ? {withPlaces: true} : {}),
      ...(values.against === undefined ? {} : {against: values.against}),
      ...(asOf ? {asOf} : {}),
      progress,
    },
  }
}

function used(reason: string): Outcome {
  return {exitStatus: 2, out: '', err: `${reason}\n`}
}

try {
  const outcome = await run(process.argv.slice(2))
  process.stderr.write(outcome.err)
  process.stdout.write(outcome.out)
  process.exitCode = outcome.exitStatus
} catch (error) {
  const machine = error instanceof Error && 'code' in error
  const reason =
    error instanceof Error ? (machine ? error.message : (error.stack ?? error.message)) : String(error)
  process.stderr.write(
    machine
      ? `Unexpected fault of the machine: ${reason}; expected a disk and folder that can be written. Nothing was replaced\n`
      : `Fault of the program: ${reason}\n`,
  )
  process.exitCode = 3
}
