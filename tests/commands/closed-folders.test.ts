import {chmodSync, existsSync, mkdirSync, readdirSync, rmSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {textsBelow} from '../publish/folders-for-tests.ts'
import type {Program} from './program-for-tests.ts'
import {openFolder, programOfAnotherUser} from './program-of-another-user.ts'

let program: Program

beforeAll(async () => {
  program = await programOfAnotherUser()
}, 120_000)

afterAll(() => rmSync(program.folder, {recursive: true, force: true}))

const remedy = '    mend: Give yourself the right to write into it, or name another folder with --out\n'

function refused(folder: string): {status: number; out: string; err: string} {
  const reason = `Unexpected folder \`${folder}\` that cannot be written, expected a folder to publish into`
  return {status: 3, out: '', err: `${reason}\n${remedy}`}
}

describe('a folder that the user may not write', () => {
  test('does not stop a build into an open one', () => {
    openFolder(join(program.folder, 'open'))
    const {status, err} = program.run(['build', '--out', 'open'])
    expect({status, err}).toEqual({status: 0, err: ''})
    expect(readdirSync(join(program.folder, 'open'))).toEqual(['vessel-s'])
  })

  test.each(['closed', 'closed/site', 'closed/deep/site'])(
    'is refused as `--out %s` with 3 before the content is read, and nothing is made in it',
    (out) => {
      const closed = join(program.folder, 'closed')
      mkdirSync(closed, {recursive: true})
      chmodSync(closed, 0o555)
      expect(program.run(['build', '--out', out])).toEqual(refused('closed'))
      expect(program.run(['build', '--out', out, '--content', 'nowhere'])).toEqual(refused('closed'))
      expect(readdirSync(closed)).toEqual([])
    },
  )

  test('is refused where it holds the last good handbook, which stays whole', () => {
    const site = openFolder(join(program.folder, 'published'))
    expect(program.run(['build', '--out', 'published']).status).toBe(0)
    const before = textsBelow(site)
    const handbook = join(site, 'vessel-s')
    chmodSync(handbook, 0o555)
    expect(program.run(['build', '--out', 'published'])).toEqual(refused('published/vessel-s'))
    expect(textsBelow(site)).toEqual(before)
    expect(readdirSync(site)).toEqual(['vessel-s'])
    chmodSync(handbook, 0o755)
  })

  test('does not stop a check, which writes nothing', () => {
    const {status, out} = program.run(['check', '--out', 'closed'])
    const [first] = out.split('\n')
    expect({status, first}).toEqual({status: 0, first: 'Checked content: 0 errors, 0 warnings, 0 notes'})
  })
})

describe('content that the user may not read', () => {
  test.each([
    [
      'a file',
      'terms.yaml',
      'content/terms.yaml:1:1 error Unexpected file that cannot be read (EACCES), expected a readable file no-unreadable-file\n    mend: Give yourself the right to read it\n',
    ],
    [
      'a folder',
      'jobs',
      'content/jobs:1:1 error Unexpected folder that cannot be read (EACCES), expected a readable folder no-unreadable-file\n    mend: Give yourself the right to read it\n',
    ],
    [
      'all of it',
      '',
      'content/.:1:1 error Unexpected content folder `content` that cannot be read (EACCES), expected a folder no-missing-content\n    mend: Name the folder that holds the content with --content\n',
    ],
  ])('%s is one message, with 1, and nothing is published', (_what, name, said) => {
    const path = join(program.folder, 'content', name)
    openFolder(join(program.folder, 'unread'))
    chmodSync(path, 0)
    try {
      const {status, out, err} = program.run(['build', '--out', 'unread'])
      expect({status, out, err}).toEqual({
        status: 1,
        out: 'Nothing published: 1 errors, 0 warnings, 0 notes\n',
        err: said,
      })
      expect(readdirSync(join(program.folder, 'unread'))).toEqual([])
    } finally {
      chmodSync(path, name === 'terms.yaml' ? 0o644 : 0o755)
      rmSync(join(program.folder, 'unread'), {recursive: true})
    }
  })
})

describe('a file on the way to the out folder', () => {
  test.each([
    ['plain', 'Unexpected file `plain`, expected a folder to publish into'],
    ['plain/site', 'Unexpected file `plain` above `plain/site`, expected a folder to publish into'],
  ])('is refused as `--out %s` with 3 before the content is read, and stays as it was', (out, reason) => {
    writeFileSync(join(program.folder, 'plain'), 'kept\n')
    expect(program.run(['build', '--out', out, '--content', 'nowhere'])).toEqual({
      status: 3,
      out: '',
      err: `${reason}\n    mend: Name another folder with --out\n`,
    })
    expect(existsSync(join(program.folder, 'plain', 'site'))).toBe(false)
  })
})
