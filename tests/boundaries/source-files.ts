import {existsSync, readdirSync, readFileSync} from 'node:fs'
import {dirname, join, normalize, relative, sep} from 'node:path'
import {fileURLToPath} from 'node:url'

/** Folder of the repository. */
export const repository = fileURLToPath(new URL('../..', import.meta.url))

/** A file of the repository: its path from there, with forward slashes, and its text. */
export interface SourceFile {
  readonly path: string
  readonly text: string
}

/** Every file below a folder whose name ends in one of the endings, sorted by path. */
export function filesIn(folder: string, ...endings: readonly string[]): readonly SourceFile[] {
  const whole = join(repository, folder)
  if (!existsSync(whole)) return []
  return readdirSync(whole, {recursive: true, encoding: 'utf8'})
    .map((name) => join(folder, name).split(sep).join('/'))
    .filter((path) => endings.some((ending) => path.endsWith(ending)) && !path.includes('node_modules/'))
    .sort()
    .map((path) => ({path, text: readFileSync(join(repository, path), 'utf8')}))
}

/** Every TypeScript file of the program. */
export const sourceFiles = filesIn('src', '.ts')

/** Folder of src that a path belongs to: `check` of `src/check/rules/no-unit-mix.ts`; `cli.ts` stands for itself. */
export function areaOf(path: string): string {
  return path.split('/')[1] ?? ''
}

/** Import of one file by another, both by path from the repository. */
export interface FileImport {
  readonly from: string
  readonly to: string
}

/** Imports of the project's own files, static, of types, re-exported and dynamic. */
export function ownImports(file: SourceFile): readonly FileImport[] {
  return importedNames(file.text)
    .filter((name) => name.startsWith('.'))
    .map((name) => ({
      from: file.path,
      to: normalize(join(dirname(file.path), name))
        .split(sep)
        .join('/'),
    }))
}

/** Every name that a text imports from, in order. */
export function importedNames(text: string): readonly string[] {
  const pattern = /(?:\bfrom\s*|\bimport\s*\(?\s*)'([^'\n]+)'/gu
  return [...text.matchAll(pattern)].map((match) => match[1] ?? '')
}

/** Path of a file of the tests as the others see it. */
export function fromRepository(path: string): string {
  return relative(repository, path)
}
