import {existsSync, readdirSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {type Disk, nodeDisk} from '../../src/publish/disk.ts'
import {completeInterruptedSwaps, publishVessel} from '../../src/publish/publish-vessel.ts'
import {handbook, textsBelow, withFolder} from './folders-for-tests.ts'
import {countingDisk, type Moment, stoppingDisk, stopWords} from './stopping-disk.ts'

type Texts = Readonly<Record<string, string>>

const oldTexts: Texts = {'index.html': 'start', 'p/4s/rings.html': 'rings', 'p/4s/seals.html': 'seals'}
const newTexts: Texts = {
  'index.html': 'start again',
  'p/4s/rings.html': 'rings',
  'p/5s/rings.html': 'more rings',
}
const moments: readonly Moment[] = ['before', 'half', 'after']
const noLinks: Disk = {...nodeDisk, link: () => false}

function publish(siteFolder: string, texts: Texts, disk: Disk): void {
  publishVessel({vesselId: 'vessel-a', files: handbook(texts), siteFolder, disk})
}

/** Whole state of the vessel's folder: both manifests belong to it. */
function wholeOf(texts: Texts): Texts {
  return withFolder((site) => {
    publish(site, texts, nodeDisk)
    return textsBelow(join(site, 'vessel-a'))
  })
}

const oldWhole = wholeOf(oldTexts)
const newWhole = wholeOf(newTexts)

/** Runs until it is stopped; true when it was. Anything but the stop itself is a fault. */
function isStopped(run: () => void): boolean {
  try {
    run()
    return false
  } catch (error) {
    if (error instanceof Error && error.message === stopWords) return true
    throw error
  }
}

/** Puts a site where a vessel stands (or not), runs, and hands over the site folder. */
function callsOf(
  before: Texts | undefined,
  run: (site: string, disk: Disk) => void,
  base: Disk,
): readonly string[] {
  return withFolder((site) => {
    if (before) publish(site, before, nodeDisk)
    const disk = countingDisk(base)
    run(site, disk)
    return disk.calls
  })
}

/** What stands in the vessel's folder, by name of the state. */
function stateOf(site: string): string {
  const folder = join(site, 'vessel-a')
  if (!existsSync(folder)) return 'none'
  const texts = JSON.stringify(textsBelow(folder))
  return texts === JSON.stringify(oldWhole) ? 'old' : texts === JSON.stringify(newWhole) ? 'new' : 'broken'
}

interface Case {
  readonly title: string
  readonly before: Texts | undefined
  readonly base: Disk
  readonly known: readonly string[]
}

const cases: readonly Case[] = [
  {title: 'over a published vessel', before: oldTexts, base: nodeDisk, known: ['old', 'new']},
  {
    title: 'over a published vessel on a disk without links',
    before: oldTexts,
    base: noLinks,
    known: ['old', 'new'],
  },
  {title: 'for the first time', before: undefined, base: nodeDisk, known: ['none', 'new']},
]

describe.each(cases)('publishing $title', ({before, base, known}) => {
  const calls = callsOf(before, (site, disk) => publish(site, newTexts, disk), base)
  const stops = calls.flatMap((call, index) =>
    moments
      .filter((moment) => moment !== 'half' || call === 'write' || call === 'claim')
      .map((moment) => ({call, index, moment})),
  )

  test('is watched at every write, link and rename', () => {
    expect(calls).toContain('write')
    expect(calls).toContain('rename')
    expect(calls.includes('link')).toBe(before !== undefined)
    expect(stops.length).toBeGreaterThan(25)
  })

  test.each(stops)(
    'stopped $moment call $index ($call): whole, or whole after the next command',
    ({index, moment}) => {
      withFolder((site) => {
        if (before) publish(site, before, nodeDisk)
        expect(isStopped(() => publish(site, newTexts, stoppingDisk(base, index, moment)))).toBe(true)
        expect([...known, 'none']).toContain(stateOf(site))
        completeInterruptedSwaps(site, nodeDisk)
        expect(known).toContain(stateOf(site))
        expect(readdirSync(site).filter((name) => name !== 'vessel-a')).toEqual([])
      })
    },
  )

  test('stopped anywhere, and the completion stopped anywhere too: whole after the command after that', () => {
    const seen = new Set<string>()
    for (const {index, moment} of stops) {
      for (let second = 0; ; second += 1) {
        const goesOn = withFolder((site) => {
          if (before) publish(site, before, nodeDisk)
          isStopped(() => publish(site, newTexts, stoppingDisk(base, index, moment)))
          const stoppedAgain = isStopped(() =>
            completeInterruptedSwaps(site, stoppingDisk(base, second, 'after')),
          )
          completeInterruptedSwaps(site, nodeDisk)
          seen.add(stateOf(site))
          return stoppedAgain
        })
        if (!goesOn) break
      }
    }
    expect([...seen].sort()).toEqual([...known].sort())
  })

  test('stopped anywhere and run again: the new handbook stands', () => {
    for (const {index, moment} of stops) {
      withFolder((site) => {
        if (before) publish(site, before, nodeDisk)
        isStopped(() => publish(site, newTexts, stoppingDisk(base, index, moment)))
        publish(site, newTexts, nodeDisk)
        expect(stateOf(site)).toBe('new')
      })
    }
  })
})
