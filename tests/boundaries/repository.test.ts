import {readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {filesIn, repository} from './source-files.ts'

/** The whole top level, apart from dot files. `node_modules` is made by the installation. */
const topLevel = [
  'DEVELOPERS.md',
  'README.md',
  'content',
  'package-lock.json',
  'package.json',
  'site',
  'src',
  'templates',
  'tests',
  'tsconfig.json',
]

function read(path: string): string {
  return readFileSync(join(repository, path), 'utf8')
}

const manifest: unknown = JSON.parse(read('package.json'))

function fieldOf(name: string): unknown {
  return typeof manifest === 'object' && manifest !== null
    ? Object.entries(manifest).find(([key]) => key === name)?.[1]
    : undefined
}

describe('the repository', () => {
  test('has exactly the top level that its guide names', () => {
    const names = readdirSync(repository).filter((name) => !name.startsWith('.') && name !== 'node_modules')
    expect(names.sort()).toEqual(topLevel)
  })

  test('names its licence, its program and the oldest Node that runs it', () => {
    expect(fieldOf('license')).toBe('MIT')
    expect(fieldOf('bin')).toEqual({sheetanchor: '.build/cli.js'})
    expect(fieldOf('engines')).toEqual({node: '>=20.19'})
  })

  test('asks for exact versions, each named in DEVELOPERS.md where the program needs it', () => {
    const developers = read('DEVELOPERS.md')
    const [needed, forTests] = [fieldOf('dependencies'), fieldOf('devDependencies')].map((one) =>
      Object.entries(one ?? {}),
    )
    for (const [name, version] of [...(needed ?? []), ...(forTests ?? [])])
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/u)
    const unnamed = (needed ?? []).filter(([name]) => !developers.includes(name))
    expect(unnamed.map(([name]) => name)).toEqual([])
  })

  test('locks its packages without the address they were loaded from', () => {
    expect(read('package-lock.json')).not.toMatch(/"resolved": "/u)
  })

  test('has a README with both commands, and a build server that runs the second alone', () => {
    const readme = read('README.md')
    expect(readme).toContain('npm ci && npm run demo')
    expect(readme).toContain('npm ci && npm test')
    const commands = read('.ci/run')
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith('#'))
    expect(commands).toEqual(['set -euo pipefail', 'npm ci && npm test'])
  })

  test('publishes into a folder that is kept empty', () => {
    expect(read('site/.gitignore')).toBe('*\n!.gitignore\n')
  })

  test('speaks of the project alone: no path of a machine, no number of a paper that a reader does not have', () => {
    const files = [
      ...['src', 'tests', 'templates', 'content', '.config'].flatMap((folder) =>
        filesIn(folder, '.ts', '.mjs', '.hbs', '.css', '.md', '.yaml', '.csv'),
      ),
      ...['README.md', 'DEVELOPERS.md'].map((path) => ({path, text: read(path)})),
    ].filter((file) => file.path !== 'tests/boundaries/repository.test.ts')
    const foreign =
      /(?<![\w.])\/(?:work|root|home)\/|(?<![\w.])\/tmp\/|\bdecisions? \d|\brequirements?\.md|\bstyle\.md\b|\bdesign\.md\b/iu
    const faults = files.flatMap(({path, text}) =>
      text
        .split('\n')
        .flatMap((line, index) =>
          foreign.test(line) ? [`${path}:${index + 1} ${line.trim().slice(0, 90)}`] : [],
        ),
    )
    expect(faults).toEqual([])
  })
})
