import type {RenderedFile} from '../handbook-model/files.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'

const longestPath = 100
const heaviestPage = 150_000
const heaviestFile = 1_000_000

/** Checks names, sizes and kinds of a vessel's files before anything is written. */
export function checkFiles(vessel: string, rendered: readonly RenderedFile[], files: ContentFiles): void {
  const lower = new Map<string, string>()
  for (const {path, bytes} of rendered) {
    const place = {path: `vessels/${vessel}/vessel.yaml`, line: 1, column: 1}
    const names = path.split('/')
    const known = lower.get(path.toLowerCase())
    if (known !== undefined)
      addMessage(
        files,
        place,
        'no-name-clash',
        `Unexpected second file \`${path}\` beside \`${known}\`, expected names that differ by more than capitals`,
        {note: 'Rename the position, procedure or job'},
      )
    lower.set(path.toLowerCase(), path)
    if (
      names.some((name) => !/^[a-z0-9-]{1,40}(\.(html|css|js|svg|json|txt))?$/u.test(name)) ||
      names.length > 3
    ) {
      addMessage(
        files,
        place,
        'no-name-clash',
        `Unexpected file name \`${path}\`, expected small letters, digits and hyphens, at most 40, in at most two folders`,
        {note: 'Shorten the id it is made from'},
      )
    }
    if (path.length > longestPath)
      addMessage(
        files,
        place,
        'no-long-path',
        `Unexpected path \`${path}\` of ${path.length} characters, expected at most ${longestPath}`,
        {note: 'Shorten the id it is made from'},
      )
    const most = path.endsWith('.html') ? heaviestPage : heaviestFile
    if (bytes.length > most)
      addMessage(
        files,
        place,
        'no-heavy-page',
        `Unexpected size of ${bytes.length} bytes of \`${path}\`, expected at most ${most}`,
        {note: 'Split the procedure or the table'},
      )
  }
}
