import {describe, expect, test} from 'vitest'
import {codeWithoutWords} from './code-without-words.ts'
import {areaOf, filesIn, type SourceFile, sourceFiles} from './source-files.ts'

const testFiles = filesIn('tests', '.ts')

/** What the house does without, as a pattern on code whose comments and strings are blanked out. */
const refused = [
  {what: 'a cast', pattern: /(?<!\bimport\s+\*\s*)(?<!\[\w+ in [^\n]*)\bas\s+(?!const\b)/u},
  {what: 'any', pattern: /[:<|&]\s*any\b(?!\s*[:?])|,\s*any\s*>/u},
  {what: 'a non-null assertion', pattern: /[\w)\]]!(?=[.[\s;,)\]}]|$)(?!=)/mu},
  {what: 'an enum', pattern: /\benum\s+[A-Z]/u},
  {what: 'a class', pattern: /\bclass\s+(?!\w+\s+extends\s+Error\b)[A-Z]/u},
  {what: 'a default export', pattern: /\bexport\s+default\b/u},
  {what: 'a namespace', pattern: /\bnamespace\s+[A-Z]/u},
] as const

function faultsOf({path, text}: SourceFile): readonly string[] {
  const code = codeWithoutWords(text).replace(/\b(?:import|export)\b(?:\s+type)?\s*\{[^}]*\}/gu, (names) =>
    names.replace(/[^\n]/gu, ' '),
  )
  return refused.flatMap(({what, pattern}) => {
    const match = pattern.exec(code)
    return match ? [`${path}:${code.slice(0, match.index).split('\n').length} has ${what}`] : []
  })
}

describe('code of the program and of its tests', () => {
  test('does without casts, any, assertions, enums, classes and default exports', () => {
    expect(sourceFiles.length).toBeGreaterThan(80)
    expect([...sourceFiles, ...testFiles].flatMap(faultsOf)).toEqual([])
  })

  test.each([
    ['const a = b as string', 'a cast'],
    ['const a = <T,>(b: any) => b', 'any'],
    ['const a: Map<string, any> = b', 'any'],
    ['const a = b!.c', 'a non-null assertion'],
    ['const a = b()!', 'a non-null assertion'],
    ['enum Colour {red}', 'an enum'],
    ['class Pump {}', 'a class'],
    ['export default 1', 'a default export'],
    [`const a = \`$\{b as string}\``, 'a cast'],
  ])('a scan of `%s` finds %s', (text, what) => {
    expect(faultsOf({path: 'a.ts', text})).toEqual([`a.ts:1 has ${what}`])
  })

  test.each([
    'const a = [1] as const',
    "import {a as b} from './a.ts'",
    "const a = 'as found' // as left, any class!",
    'const a = !b && c !== d',
    'const a = /as found!/u.test(b)',
    `const a = \`as $\{b} found\``,
    'class Stopped extends Error {}',
    'const any = 1; use(any)',
    'type Short<T> = {[K in keyof T as Name<K>]: T[K]}',
  ])('a scan of `%s` finds nothing', (text) => {
    expect(faultsOf({path: 'a.ts', text})).toEqual([])
  })
})

describe('a file of src', () => {
  test('has a name in small letters and hyphens, and none that could hold anything', () => {
    const vague = /(^|\/)(index|utils?|helpers?|common|misc|shared|core|types?|managers?|lib)(\.ts|\/)/u
    for (const {path} of sourceFiles) {
      expect(path).toMatch(/^src(\/[a-z0-9-]+)+\.ts$/u)
      expect(path).not.toMatch(vague)
    }
  })

  /** Longer, with the reason. */
  const longer = new Map([
    [
      'src/check/shapes/placed-shape.ts',
      'one layer over the shape library: values, texts and maps report in one wording',
    ],
    ['src/compute/cofferdam-values.ts', 'the values of one test feed each other from top to bottom'],
    ['src/compute/joint-values.ts', 'torque, its explanation and its table rows belong together'],
    ['src/handbook-model/pages.ts', 'the models of all pages are read side by side'],
    ['src/messages/rule-reasons.ts', 'one table of all rules, side by side with the guide'],
  ])

  test('has at most 300 lines, or a reason written down here', () => {
    const long = [...sourceFiles, ...testFiles].filter((file) => file.text.split('\n').length > 301)
    expect(long.map((file) => file.path).sort()).toEqual([...longer.keys()])
  })

  test('explains each export in a comment of its own', () => {
    const bare = sourceFiles.flatMap(({path, text}) => {
      const lines = text.split('\n')
      return lines.flatMap((line, index) =>
        /^export (?:async )?(?:function|interface)\b/u.test(line) && !/\*\/\s*$/u.test(lines[index - 1] ?? '')
          ? [`${path}:${index + 1}`]
          : [],
      )
    })
    expect(bare.filter((one) => !one.startsWith('src/handbook-model/'))).toEqual([])
  })

  test('leaves nothing to be done later and tells no history', () => {
    const later = /\b(?:TODO|FIXME|XXX|HACK)\b|\bused to be\b|\bno longer needed\b/u
    expect(sourceFiles.filter((file) => later.test(file.text)).map((file) => file.path)).toEqual([])
  })

  test('reads no clock and no chance, so that the same content gives the same bytes', () => {
    const unsteady =
      /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\brandomUUID\b|\btoLocale[A-Z]|\blocaleCompare\b|\bIntl\./u
    const stages = sourceFiles.filter(
      (file) => areaOf(file.path) !== 'browser' && areaOf(file.path) !== 'cli.ts',
    )
    expect(
      stages.filter((file) => unsteady.test(codeWithoutWords(file.text))).map((file) => file.path),
    ).toEqual([])
  })
})

describe('catching', () => {
  /** Where a library or the machine says by throwing what is then told to the author, or what has a second way. */
  const reasons = new Map([
    ['src/cli.ts', 'ends the program with its exit status'],
    ['src/commands/calculate.ts', 'a refused input of a calculation is a use gone wrong'],
    ['src/compute/computed-value.ts', 'a calculation refuses what the author stated'],
    ['src/issues/ledger.ts', 'a ledger that does not parse'],
    ['src/publish/disk.ts', 'a disk without second names'],
    ['src/read/read-csv.ts', 'a table that does not parse'],
    ['src/read/read-sources.ts', 'a file that cannot be read or decoded'],
  ])

  test('happens only where a reason is written down here', () => {
    const catching = sourceFiles.filter(
      (file) => areaOf(file.path) !== 'browser' && /\bcatch\b/u.test(codeWithoutWords(file.text)),
    )
    expect(catching.map((file) => file.path)).toEqual([...reasons.keys()])
  })
})
