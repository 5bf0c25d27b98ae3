import {filesIn} from '../boundaries/source-files.ts'

/** Every template, style and sign by its path below templates/, as the program reads them. */
export const templates: ReadonlyMap<string, string> = new Map(
  filesIn('templates', '.hbs', '.css', '.svg').map(({path, text}) => [path.slice('templates/'.length), text]),
)

/** Text of one of them. */
export function templateText(path: string): string {
  const text = templates.get(path)
  if (text === undefined) throw new Error(`Unexpected gap at templates/${path}, expected a file`)
  return text
}
