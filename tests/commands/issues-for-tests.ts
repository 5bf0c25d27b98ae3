import {join} from 'node:path'
import {expect} from 'vitest'
import {runApprove} from '../../src/commands/approve.ts'
import {handbookFiles} from '../../src/commands/handbook-files.ts'
import {runIssue} from '../../src/commands/issue.ts'
import type {CommandOptions, Outcome} from '../../src/commands/outcome.ts'
import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import {newestLedger} from '../../src/issues/history.ts'
import {type Ledger, readLedger} from '../../src/issues/ledger.ts'
import {type Disk, nodeDisk} from '../../src/publish/disk.ts'
import {issuedLines} from '../../src/publish/manifest.ts'
import {technicalHash} from '../../src/technical-text/technical-hash.ts'
import {textsBelow} from '../publish/folders-for-tests.ts'
import {countingDisk, type Moment, stoppingDisk, stopWords} from '../publish/stopping-disk.ts'
import {templates} from '../render/templates-on-disk.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'

/** What rendering needs besides pages; the runtime does not matter here. */
export const program = {version: '0.1.0', templates, runtime: {head: '', page: '', hub: '', charts: ''}}

/** Options of a command on a copied content. */
export function optionsOf(content: ChangedContent, more: Partial<CommandOptions> = {}): CommandOptions {
  return {
    content: content.folder,
    out: join(content.folder, '.site'),
    vessels: ['vessel-s'],
    json: false,
    progress: () => undefined,
    ...more,
  }
}

/** Signs sources in all three roles by three people. */
export async function sign(
  content: ChangedContent,
  date: string,
  sources: readonly string[] = ['.'],
): Promise<void> {
  for (const [role, by] of [
    ['author', 'pump-author'],
    ['reviewer', 'safety-reviewer'],
    ['approver', 'approving-superintendent'],
  ] as const) {
    const outcome = await runApprove({sources, role, by, date, statement: 'read'}, optionsOf(content))
    if (outcome.exitStatus !== 0) throw new Error(outcome.err)
  }
}

/** Issues the small vessel. */
export function issue(
  content: ChangedContent,
  number: string,
  date: string,
  disk: Disk = nodeDisk,
): Promise<Outcome> {
  const words = {number, date, by: 'document-controller'}
  return runIssue(words, optionsOf(content, {asOf: date}), disk, async () => program)
}

/** The ledger of an issue as it was written. */
export function ledgerOf(content: ChangedContent, number: string): Ledger {
  const path = `issues/vessel-s/${number}.json`
  const ledger = readLedger(path, content.read(path), new Map())
  if (!ledger) throw new Error(`Unexpected damage of ${path}, expected a ledger`)
  return ledger
}

/** Says why a file changed, as it reads now. */
export function declare(content: ChangedContent, file: string, rest: string): void {
  const hash = technicalHash(content.read(file))
  content.write('changes.yaml', `changes:\n  - {file: ${file}, hash: ${hash}, ${rest}}\n`)
}

/** Says of several files why they changed, as they read now: class, reason and reviewer of each. */
export function declareAll(content: ChangedContent, rest: Readonly<Record<string, string>>): void {
  const lines = Object.entries(rest).map(
    ([file, words]) => `  - {file: ${file}, hash: ${technicalHash(content.read(file))}, ${words}}\n`,
  )
  content.write('changes.yaml', lines.length === 0 ? 'changes: []\n' : `changes:\n${lines.join('')}`)
}

/** Texts of the published files of the small vessel by path. */
export function siteOf(content: ChangedContent): Readonly<Record<string, string>> {
  return textsBelow(join(content.folder, '.site', 'vessel-s'))
}

/** Hash of the list of files that a build of the content gives. */
export async function builtManifest(folder: string): Promise<string> {
  const {content, values, history, files} = await checkAndCompute(folder)
  if (!content || !values) throw new Error('Unexpected errors in the content, expected none')
  const stated = stateVessel(content, values, 'vessel-s', history)
  return technicalHash(issuedLines(handbookFiles(stated, program, history, files)))
}

/**
 * Stops the second issue of the small vessel at calls of the disk and looks at what is left.
 *
 * It is the issue before or this one, without a fault, and whole again after the next command.
 *
 * @param chosen
 *   Whether it is stopped at a call, by its number and the number of the call that puts the ledger in its place.
 * @returns
 *   The newest issues that were found after a stop, and how many stops there were.
 */
export function stopIssues(
  chosen: (call: number, ledgerAt: number) => boolean,
): Promise<{readonly found: readonly string[]; readonly stops: number}> {
  const procedure = 'procedures/ring-check.md'
  return withChangedContent(async (content) => {
    await sign(content, '2031-01-02')
    await issue(content, '2031-01', '2031-01-10')
    content.replace(procedure, 'lock it.', 'lock it up.')
    declare(content, procedure, 'class: technical, reason: plainer')
    await sign(content, '2031-02-02')
    const calls = await withChangedContent(async (copy) => {
      const disk = countingDisk(nodeDisk)
      await issue(copy, '2031-02', '2031-02-10', disk)
      return disk.calls
    }, content.folder)
    const ledgerAt = calls.indexOf('claim') - 2
    const found = new Set<string>()
    let stops = 0
    for (const stopAt of calls.keys()) {
      if (!chosen(stopAt, ledgerAt)) continue
      for (const moment of momentsOf(calls[stopAt])) {
        stops += 1
        await withChangedContent(async (copy) => {
          const stopping = issue(copy, '2031-02', '2031-02-10', stoppingDisk(nodeDisk, stopAt, moment))
          await expect(stopping).rejects.toThrow(stopWords)
          const {files, history} = await checkAndCompute(copy.folder)
          expect([...files.values()].flatMap((file) => file.messages)).toEqual([])
          const number = newestLedger(history, 'vessel-s')?.issue ?? 'none'
          found.add(number)
          if (number === '2031-01') expect((await issue(copy, '2031-02', '2031-02-10')).exitStatus).toBe(0)
          expect(await builtManifest(copy.folder)).toBe(ledgerOf(copy, '2031-02').manifestHash)
        }, content.folder)
      }
    }
    return {found: [...found].sort(), stops}
  }, smallContent)
}

function momentsOf(call: string | undefined): readonly Moment[] {
  return call === 'write' ? ['before', 'half', 'after'] : ['before', 'after']
}
