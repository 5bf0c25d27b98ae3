import {cpSync, mkdtempSync, readFileSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {runBuild} from '../../src/commands/build.ts'
import type {Outcome} from '../../src/commands/outcome.ts'
import type {Ledger} from '../../src/issues/ledger.ts'
import {technicalHash} from '../../src/technical-text/technical-hash.ts'
import {textsBelow} from '../publish/folders-for-tests.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {declare, issue, ledgerOf, optionsOf, program, sign} from './issues-for-tests.ts'

const friction = 'tables/friction.csv'
const numbers = ['2031-01', '2031-02', '2031-03', '2031-04'] as const
const frictionOf = ['0.10', '0.12', '0.13', '0.14'] as const

/** Content as it was committed with each issue, and the site that was issued. */
let commits: string
let sites: readonly Readonly<Record<string, string>>[]
/** Ledgers as the newest content holds them. */
let ledgers: readonly Ledger[]

beforeAll(async () => {
  commits = mkdtempSync(join(tmpdir(), 'commits-'))
  await withChangedContent(async (content) => {
    const made: Readonly<Record<string, string>>[] = []
    for (const [index, number] of numbers.entries()) {
      if (index > 0) {
        const [was = '', is = ''] = [frictionOf[index - 1], frictionOf[index]]
        content.replace(friction, `${was},${was}`, `${is},${is}`)
        declare(content, friction, `class: technical, reason: paste ${index}`)
      }
      await sign(content, `2031-0${index + 1}-02`)
      const outcome = await issue(content, number, `2031-0${index + 1}-10`)
      if (outcome.exitStatus !== 0) throw new Error(outcome.err)
      made.push(textsBelow(join(content.folder, '.site', 'vessel-s')))
      cpSync(content.folder, join(commits, number), {
        recursive: true,
        filter: (path) => !path.endsWith('.site'),
      })
    }
    sites = made
    ledgers = numbers.map((number) => ledgerOf(content, number))
  }, smallContent)
}, 60_000)

afterAll(() => rmSync(commits, {recursive: true, force: true}))

/** Builds a copy of the content of an issue after a change. */
function rebuilt<T>(
  number: string,
  run: (content: ChangedContent, outcome: Outcome) => T,
  change: (content: ChangedContent) => void = () => undefined,
  builtBy = program,
): Promise<T> {
  return withChangedContent(
    async (content) => {
      change(content)
      return run(content, await runBuild(optionsOf(content), async () => builtBy))
    },
    join(commits, number),
  )
}

describe('an issue three revisions old', () => {
  test('stands three revisions behind the newest', () => {
    const revisions = ledgers.map((one) => one.pages['vessel-s/design-s/torques']?.revision)
    expect(revisions).toEqual([1, 2, 3, 4])
  })

  test.each(numbers.map((number, index) => [number, index] as const))(
    'is built again from its content to the hashes in its ledger: %s',
    (number, index) =>
      rebuilt(number, (content, outcome) => {
        expect(outcome.out).toContain(`vessel-s: issue ${number} again, byte for byte\n`)
        const site = join(content.folder, '.site', 'vessel-s')
        const lines = readFileSync(join(site, 'manifest.txt'), 'utf8').split('\n')
        const issued = lines.filter((line) => !line.includes('  records/')).join('\n')
        expect(issued).not.toBe(lines.join('\n'))
        expect(technicalHash(issued)).toBe(ledgers[index]?.manifestHash)
        expect(textsBelow(site)).toEqual(sites[index])
        expect(ledgerOf(content, number)).toEqual(ledgers[index])
      }),
  )
})

describe('a build says that it is not the issue', () => {
  test('where another version of the program built it', () =>
    rebuilt(
      '2031-01',
      (_content, outcome) =>
        expect(outcome.out).toContain(
          'vessel-s: issue 2031-01 again, byte for byte (built by version 0.2.0, issued by version 0.1.0)\n',
        ),
      undefined,
      {...program, version: '0.2.0'},
    ))

  test('where the content was changed, and names the files', () =>
    rebuilt(
      '2031-02',
      (_content, outcome) => {
        expect(outcome.exitStatus).toBe(0)
        expect(outcome.out).toContain(
          `vessel-s: not the bytes of issue 2031-02: content differs from that of the issue: ${friction}\n`,
        )
      },
      (content) => content.replace(friction, '0.12,0.12', '0.15,0.15'),
    ))

  test('where the program gives other bytes under the same version', () =>
    rebuilt(
      '2031-03',
      (_content, outcome) =>
        expect(outcome.out).toContain(
          'vessel-s: not the bytes of issue 2031-03: content and version are those of the issue, the program itself or its ledgers are not\n',
        ),
      undefined,
      {
        ...program,
        templates: new Map([...program.templates].map(([path, text]) => [path, `${text} `])),
      },
    ))

  test('as data too', () =>
    withChangedContent(
      async (content) => {
        const {out} = await runBuild(optionsOf(content, {json: true}), async () => program)
        expect(JSON.parse(out).published[0].rebuild).toEqual({issue: '2031-04', isSame: true, reasons: []})
      },
      join(commits, '2031-04'),
    ))
})
