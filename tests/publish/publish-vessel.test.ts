import {spawnSync} from 'node:child_process'
import {createHash} from 'node:crypto'
import {existsSync, mkdirSync, readdirSync, readFileSync, renameSync, statSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {type Disk, nodeDisk} from '../../src/publish/disk.ts'
import {manifestLines} from '../../src/publish/manifest.ts'
import {completeInterruptedSwaps, publishVessel} from '../../src/publish/publish-vessel.ts'
import {handbook, textsBelow, withFolder} from './folders-for-tests.ts'
import {countingDisk} from './stopping-disk.ts'

const first = {'index.html': 'start', 'p/4s/rings.html': 'rings', 'assets/site.css': 'style'}
const second = {'index.html': 'start again', 'p/4s/rings.html': 'rings', 'p/5s/rings.html': 'more rings'}

function publish(siteFolder: string, texts: Readonly<Record<string, string>>, disk: Disk = nodeDisk): void {
  publishVessel({vesselId: 'vessel-a', files: handbook(texts), siteFolder, disk})
}

describe('a published vessel folder', () => {
  test('holds the files, both manifests and nothing else', () => {
    withFolder((site) => {
      publish(site, first)
      const {'manifest.txt': lines, 'manifest.js': script, ...rest} = textsBelow(join(site, 'vessel-a'))
      expect(rest).toEqual(first)
      expect(lines).toBe(manifestLines(handbook(first)))
      expect(script).toContain(JSON.stringify(lines))
      expect(readdirSync(site)).toEqual(['vessel-a'])
    })
  })

  test('loses files that the new handbook no longer has', () => {
    withFolder((site) => {
      publish(site, first)
      publish(site, second)
      const {'manifest.txt': _lines, 'manifest.js': _script, ...rest} = textsBelow(join(site, 'vessel-a'))
      expect(rest).toEqual(second)
    })
  })

  test('does not depend on the order in which files are handed over', () => {
    withFolder((site) => {
      const files = handbook(first)
      publishVessel({vesselId: 'one', files, siteFolder: site, disk: nodeDisk})
      publishVessel({vesselId: 'two', files: [...files].reverse(), siteFolder: site, disk: nodeDisk})
      expect(textsBelow(join(site, 'one'))).toEqual(textsBelow(join(site, 'two')))
    })
  })

  test('leaves other vessels and other files of the site alone', () => {
    withFolder((site) => {
      publishVessel({vesselId: 'vessel-b', files: handbook(second), siteFolder: site, disk: nodeDisk})
      writeFileSync(join(site, '.gitignore'), '*\n')
      const before = textsBelow(join(site, 'vessel-b'))
      publish(site, first)
      expect(textsBelow(join(site, 'vessel-b'))).toEqual(before)
      expect(readFileSync(join(site, '.gitignore'), 'utf8')).toBe('*\n')
    })
  })
})

describe('the manifest', () => {
  test('has one line for each file in the form of a checksum command, sorted by path', () => {
    const hash = (text: string): string => createHash('sha256').update(text).digest('hex')
    expect(manifestLines(handbook(first))).toBe(
      `${hash('style')}  assets/site.css\n${hash('start')}  index.html\n${hash('rings')}  p/4s/rings.html\n`,
    )
  })

  test('gives the published hash of a known text', () => {
    // Source: FIPS 180-2 appendix B.1, the digest of `abc`; from memory.
    expect(manifestLines(handbook({a: 'abc'}))).toBe(
      'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  a\n',
    )
  })

  test('is written after every other file', () => {
    withFolder((site) => {
      const written: string[] = []
      publish(site, first, {
        ...nodeDisk,
        write: (path, bytes) => {
          written.push(path)
          nodeDisk.write(path, bytes)
        },
      })
      const names = written.map((path) => path.slice(site.length))
      expect(names.slice(-3)).toEqual([
        '/.new-vessel-a/manifest.txt',
        '/.new-vessel-a/manifest.js',
        '/.swap-vessel-a',
      ])
    })
  })
})

describe('an unchanged file', () => {
  test('keeps its bytes on the disk under the new folder', () => {
    withFolder((site) => {
      publish(site, first)
      const before = statSync(join(site, 'vessel-a/p/4s/rings.html')).ino
      const changed = statSync(join(site, 'vessel-a/index.html')).ino
      publish(site, second)
      expect(statSync(join(site, 'vessel-a/p/4s/rings.html')).ino).toBe(before)
      expect(statSync(join(site, 'vessel-a/index.html')).ino).not.toBe(changed)
    })
  })

  test('is written anew where the disk makes no second names', () => {
    withFolder((site) => {
      publish(site, first)
      publish(site, second, {...nodeDisk, link: () => false})
      expect(readFileSync(join(site, 'vessel-a/p/4s/rings.html'), 'utf8')).toBe('rings')
    })
  })

  test('is written anew where someone has edited the published one', () => {
    withFolder((site) => {
      publish(site, first)
      writeFileSync(join(site, 'vessel-a/p/4s/rings.html'), 'scribbled')
      publish(site, second)
      expect(readFileSync(join(site, 'vessel-a/p/4s/rings.html'), 'utf8')).toBe('rings')
    })
  })

  test('is written anew where the published one is gone', () => {
    withFolder((site) => {
      publish(site, first)
      nodeDisk.remove(join(site, 'vessel-a/p/4s/rings.html'))
      publish(site, second)
      expect(readFileSync(join(site, 'vessel-a/p/4s/rings.html'), 'utf8')).toBe('rings')
    })
  })

  test('costs one link and no write', () => {
    withFolder((site) => {
      publish(site, first)
      const disk = countingDisk(nodeDisk)
      publish(site, first, disk)
      expect(disk.calls.filter((call) => call === 'link')).toHaveLength(3)
      expect(disk.calls.filter((call) => call === 'write')).toHaveLength(3)
    })
  })
})

describe('a disk that refuses', () => {
  const refuse = (): never => {
    throw Object.assign(new Error('EACCES: permission denied'), {code: 'EACCES'})
  }

  test.each(['makeFolder', 'write', 'rename'] as const)(
    'to %s: the error of the machine comes through and the last good folder stands',
    (call) => {
      withFolder((site) => {
        publish(site, first)
        const before = textsBelow(join(site, 'vessel-a'))
        expect(() => publish(site, second, {...nodeDisk, [call]: refuse})).toThrow('EACCES')
        expect(textsBelow(join(site, 'vessel-a'))).toEqual(before)
      })
    },
  )

  test('because the site folder lies below a file: the error names the path', () => {
    withFolder((folder) => {
      writeFileSync(join(folder, 'plain'), '')
      expect(() => publish(join(folder, 'plain', 'site'), first)).toThrow(/ENOTDIR.*plain/u)
    })
  })
})

describe('completing interrupted swaps', () => {
  test('does nothing where there is no site folder', () => {
    withFolder((folder) => {
      completeInterruptedSwaps(join(folder, 'site'), nodeDisk)
      expect(existsSync(join(folder, 'site'))).toBe(false)
    })
  })

  test('clears a folder that was never finished and keeps the good one', () => {
    withFolder((site) => {
      publish(site, first)
      writeFileSync(join(site, '.busy-vessel-a'), `${pidOfEndedProgram()}\n`)
      mkdirSync(join(site, '.new-vessel-a'))
      writeFileSync(join(site, '.new-vessel-a', 'index.html'), 'half')
      completeInterruptedSwaps(site, nodeDisk)
      expect(readdirSync(site)).toEqual(['vessel-a'])
      expect(readFileSync(join(site, 'vessel-a/index.html'), 'utf8')).toBe('start')
    })
  })

  test('completes the swaps of several vessels at once', () => {
    withFolder((site) => {
      for (const vessel of ['one', 'two']) {
        mkdirSync(join(site, `.new-${vessel}`))
        writeFileSync(join(site, `.new-${vessel}`, 'index.html'), vessel)
        writeFileSync(join(site, `.swap-${vessel}`), vessel)
      }
      completeInterruptedSwaps(site, nodeDisk)
      expect(textsBelow(site)).toEqual({'one/index.html': 'one', 'two/index.html': 'two'})
    })
  })

  test('brings the good folder back where neither it nor a new one stands', () => {
    withFolder((site) => {
      publish(site, first)
      const before = textsBelow(join(site, 'vessel-a'))
      renameSync(join(site, 'vessel-a'), join(site, '.old-vessel-a'))
      writeFileSync(join(site, '.busy-vessel-a'), '')
      completeInterruptedSwaps(site, nodeDisk)
      expect(readdirSync(site)).toEqual(['vessel-a'])
      expect(textsBelow(join(site, 'vessel-a'))).toEqual(before)
    })
  })

  test('touches no folder that is not its own, whatever it is called', () => {
    withFolder((site) => {
      for (const name of ['.old-photos', '.new-ideas']) {
        mkdirSync(join(site, name))
        writeFileSync(join(site, name, 'a.txt'), name)
      }
      completeInterruptedSwaps(site, nodeDisk)
      publish(site, first)
      expect(readFileSync(join(site, '.old-photos/a.txt'), 'utf8')).toBe('.old-photos')
      expect(readFileSync(join(site, '.new-ideas/a.txt'), 'utf8')).toBe('.new-ideas')
    })
  })
})

describe('two programs at one vessel', () => {
  test('the one that comes second touches nothing of the first and says so', () => {
    withFolder((site) => {
      publish(site, first)
      writeFileSync(join(site, '.busy-vessel-a'), `${process.ppid}\n`)
      mkdirSync(join(site, '.new-vessel-a'))
      writeFileSync(join(site, '.new-vessel-a', 'index.html'), 'half')
      const before = textsBelow(site)
      completeInterruptedSwaps(site, nodeDisk)
      expect(textsBelow(site)).toEqual(before)
      expect(() => publish(site, second)).toThrow(
        `another build is writing the handbook of \`vessel-a\`: wait for it, or remove \`${join(site, '.busy-vessel-a')}\` when none runs`,
      )
      expect(textsBelow(site)).toEqual(before)
    })
  })

  test('a build of another vessel goes on beside it', () => {
    withFolder((site) => {
      writeFileSync(join(site, '.busy-vessel-b'), `${process.ppid}\n`)
      publish(site, first)
      expect(readdirSync(site)).toEqual(['.busy-vessel-b', 'vessel-a'])
    })
  })

  test("a program that has ended stands in nobody's way", () => {
    withFolder((site) => {
      for (const holder of [`${pidOfEndedProgram()}\n`, '', 'x', `${process.pid}\n`, '0\n', '-1\n']) {
        writeFileSync(join(site, '.busy-vessel-a'), holder)
        publish(site, first)
        expect(readdirSync(site)).toEqual(['vessel-a'])
      }
    })
  })
})

function pidOfEndedProgram(): number {
  return spawnSync(process.execPath, ['--version']).pid
}
