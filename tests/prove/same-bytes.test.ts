import {mkdirSync, rmSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, expect, test} from 'vitest'
import {oddName} from '../offline/odd-folder.ts'
import {copyFolder, hashesBelow, newFolder, runProgram} from './program.ts'
import {work} from './work.ts'

const first = hashesBelow(work.site)
const folder = newFolder('same-bytes')
const elsewhere = join(folder, oddName)
mkdirSync(elsewhere)
copyFolder(work.program, join(elsewhere, 'tool'))
copyFolder(work.content, join(elsewhere, 'inhalt'))
afterAll(() => rmSync(folder, {recursive: true, force: true}))

test.for([
  {
    title:
      'at the other end of the time zones, in German, with rights for the owner alone, from the root folder',
    folder: '/',
    umask: '077',
    variables: {TZ: 'Pacific/Kiritimati', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8'},
    content: join(elsewhere, 'inhalt'),
    out: join(elsewhere, 'aus'),
  },
  {
    title: 'in Turkish, with rights for everybody, by ways from a folder with an odd name',
    folder: elsewhere,
    umask: '000',
    variables: {TZ: 'America/St_Johns', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8'},
    content: 'inhalt',
    out: 'out',
  },
  {
    title: 'a second time over what stands there',
    folder: elsewhere,
    umask: '022',
    variables: {TZ: 'UTC', LANG: 'C', LC_ALL: 'C'},
    content: join('.', 'inhalt'),
    out: 'out',
  },
])('a build gives the same bytes $title', ({content, out, ...around}, {task}) => {
  const run = runProgram(join(elsewhere, 'tool'), ['build', '--content', content, '--out', out], around)
  expect(run.status, run.err).toBe(0)
  const again = hashesBelow(join(elsewhere, out.split('/').at(-1) ?? ''))
  expect(first.size).toBeGreaterThan(0)
  expect([...again.keys()]).toEqual([...first.keys()])
  expect([...again].filter(([path, hash]) => first.get(path) !== hash)).toEqual([])
  task.meta.files = again.size
})
