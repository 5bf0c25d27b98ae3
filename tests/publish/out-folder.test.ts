import {mkdirSync, readdirSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {type Disk, nodeDisk} from '../../src/publish/disk.ts'
import {faultOfOutFolder} from '../../src/publish/out-folder.ts'
import {withFolder} from './folders-for-tests.ts'

const right = 'Give yourself the right to write into it, or name another folder with --out'

/** The real disk with one folder that nobody may write. */
function closedAt(folder: string): Disk {
  return {...nodeDisk, mayWrite: (path) => path !== folder && nodeDisk.mayWrite(path)}
}

describe('a folder to publish into', () => {
  test.each(['', 'site', 'site/deep/er', 'site/'])(
    'may be `%s`, there or not, and nothing is made',
    (name) => {
      withFolder((folder) => {
        expect(faultOfOutFolder(join(folder, name), nodeDisk)).toBeUndefined()
        expect(readdirSync(folder)).toEqual([])
      })
    },
  )

  test.each(['plain', 'plain/', 'plain/site', 'plain/site/deep'])(
    'may not be `%s`, a file or below one',
    (name) => {
      withFolder((folder) => {
        writeFileSync(join(folder, 'plain'), '')
        const file = join(folder, 'plain')
        const wanted = join(folder, name).replace(/\/$/u, '')
        expect(faultOfOutFolder(`${folder}/${name}`, nodeDisk)).toEqual({
          reason: `Unexpected file \`${file}\`${wanted === file ? '' : ` above \`${wanted}\``}, expected a folder to publish into`,
          mend: 'Name another folder with --out',
        })
      })
    },
  )

  test.each(['', 'site', 'site/deep'])(
    'may not be `%s` where the nearest folder that is there is closed',
    (name) => {
      withFolder((folder) => {
        expect(faultOfOutFolder(join(folder, name), closedAt(folder))).toEqual({
          reason: `Unexpected folder \`${folder}\` that cannot be written, expected a folder to publish into`,
          mend: right,
        })
      })
    },
  )

  test('may not hold a handbook that is closed, for its old files could not be taken away', () => {
    withFolder((folder) => {
      const handbook = join(folder, 'vessel-a')
      mkdirSync(handbook)
      expect(faultOfOutFolder(folder, closedAt(handbook)), 'a folder of somebody else').toBeUndefined()
      writeFileSync(join(handbook, 'manifest.txt'), '')
      expect(faultOfOutFolder(folder, closedAt(handbook))).toEqual({
        reason: `Unexpected folder \`${handbook}\` that cannot be written, expected a folder to publish into`,
        mend: right,
      })
    })
  })
})
