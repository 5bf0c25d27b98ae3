import {existsSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {areaOf, type FileImport, importedNames, ownImports, repository, sourceFiles} from './source-files.ts'

/** What each folder of src may import from src; the table of DEVELOPERS.md. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  quantities: [],
  messages: [],
  'browser-contract': [],
  calculations: ['quantities'],
  figures: ['quantities', 'calculations'],
  'handbook-model': ['quantities', 'messages'],
  read: ['quantities', 'messages', 'handbook-model'],
  conditions: ['handbook-model'],
  check: ['quantities', 'messages', 'handbook-model', 'conditions'],
  compute: ['quantities', 'messages', 'handbook-model', 'conditions', 'calculations'],
  'technical-text': ['quantities', 'handbook-model', 'browser-contract'],
  compile: ['quantities', 'messages', 'handbook-model', 'conditions', 'technical-text', 'figures'],
  render: ['quantities', 'messages', 'handbook-model', 'browser-contract', 'figures'],
  publish: ['messages', 'handbook-model', 'browser-contract', 'technical-text'],
  issues: ['quantities', 'messages', 'handbook-model', 'calculations', 'browser-contract', 'technical-text'],
  browser: ['browser-contract', 'quantities', 'calculations', 'figures'],
}

/** Folders that may touch the disk. */
const touchTheDisk = ['read', 'publish', 'issues', 'commands']

const areas = [...new Set(sourceFiles.map((file) => areaOf(file.path)))].sort()
const imports = sourceFiles.flatMap(ownImports)

/** The rule: a folder imports itself and what the table allows; commands and `cli.ts` everything but the browser. */
function isAllowed({from, to}: FileImport): boolean {
  const [source, target] = [areaOf(from), areaOf(to)]
  if (source === target) return true
  if (source === 'commands' || source === 'cli.ts') return target !== 'browser' && target !== 'cli.ts'
  return (mayImport[source] ?? []).includes(target)
}

describe('the import rule', () => {
  test('knows every folder of src and no other', () => {
    expect(areas).toEqual([...Object.keys(mayImport), 'cli.ts', 'commands'].sort())
  })

  test('is kept by every import', () => {
    expect(imports.length).toBeGreaterThan(200)
    const broken = imports.filter((one) => !isAllowed(one)).map(({from, to}) => `${from} imports ${to}`)
    expect(broken).toEqual([])
  })

  test.each([
    ['src/compile/a.ts', 'src/check/b.ts', false],
    ['src/calculations/gas/a.ts', 'src/handbook-model/b.ts', false],
    ['src/browser/a.ts', 'src/commands/b.ts', false],
    ['src/commands/a.ts', 'src/browser/b.ts', false],
    ['src/render/a.ts', 'src/figures/b.ts', true],
    ['src/cli.ts', 'src/commands/b.ts', true],
    ['src/render/a.ts', 'src/cli.ts', false],
  ])('%s importing %s: %s', (from, to, allowed) => {
    expect(isAllowed({from, to})).toBe(allowed)
  })

  test('finds imports of types, re-exports and imports at run time too', () => {
    const text =
      "import type {A} from './a.ts'\nimport {\n  b,\n} from './b.ts'\nexport {c} from './c.ts'\nawait import('./d.ts')\nimport './e.ts'\n"
    expect(importedNames(text)).toEqual(['./a.ts', './b.ts', './c.ts', './d.ts', './e.ts'])
  })
})

describe('every import', () => {
  test('names a file that exists, with its ending', () => {
    const dead = imports.filter(({to}) => !to.endsWith('.ts') || !existsSync(join(repository, to)))
    expect(dead.map(({from, to}) => `${from} imports ${to}`)).toEqual([])
  })

  test('leads round no circle', () => {
    expect(circlesOf(imports)).toEqual([])
    expect(
      circlesOf([
        {from: 'a', to: 'b'},
        {from: 'b', to: 'c'},
        {from: 'c', to: 'a'},
      ]),
    ).toEqual(['a → b → c → a'])
  })

  test('of the disk, a process or the network stands in a folder that may have it', () => {
    const machine = /^(?:node:)?(?:fs|fs\/promises|child_process|net|http|https|worker_threads)$/u
    const broken = sourceFiles.flatMap((file) =>
      importedNames(file.text)
        .filter((name) => machine.test(name) && !touchTheDisk.includes(areaOf(file.path)))
        .map((name) => `${file.path} imports ${name}`),
    )
    expect(broken).toEqual([])
  })
})

/** One circle for each file from which imports lead back to itself. */
function circlesOf(all: readonly FileImport[]): readonly string[] {
  const targets = new Map<string, string[]>()
  for (const {from, to} of all) targets.set(from, [...(targets.get(from) ?? []), to])
  const done = new Set<string>()
  const circles: string[] = []
  const walk = (file: string, trail: readonly string[]): void => {
    const start = trail.indexOf(file)
    if (start !== -1) circles.push([...trail.slice(start), file].join(' → '))
    if (start !== -1 || done.has(file)) return
    for (const next of targets.get(file) ?? []) walk(next, [...trail, file])
    done.add(file)
  }
  for (const file of targets.keys()) walk(file, [])
  return circles
}
