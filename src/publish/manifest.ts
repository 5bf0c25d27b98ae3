import {createHash} from 'node:crypto'
import type {RenderedFile} from '../handbook-model/files.ts'
import {recordsFolder} from '../handbook-model/publication.ts'

export const manifestText = 'manifest.txt'
const manifestScript = 'manifest.js'

/** SHA-256 of bytes as hexadecimal digits. */
export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex')
}

/** Lines `hash  path` of every file, sorted by path: the form that an operating system's checksum command reads. */
export function manifestLines(files: readonly RenderedFile[]): string {
  return [...files]
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map((file) => `${sha256(file.bytes)}  ${file.path}\n`)
    .join('')
}

/** The same without the records, which go on between issues: what an issue is known again by. */
export function issuedLines(files: readonly RenderedFile[]): string {
  return manifestLines(files.filter(({path}) => !path.startsWith(`${recordsFolder}/`)))
}

/** The two manifest files, written last: one for a checksum command, one that a page can load. */
export function manifestFiles(files: readonly RenderedFile[]): readonly RenderedFile[] {
  const lines = manifestLines(files)
  const encoder = new TextEncoder()
  const script = `window.sheetanchor=window.sheetanchor||{};\nwindow.sheetanchor.manifest=${JSON.stringify({version: 1, lines})};\n`
  return [
    {path: manifestText, bytes: encoder.encode(lines)},
    {path: manifestScript, bytes: encoder.encode(script)},
  ]
}
