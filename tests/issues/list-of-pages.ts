import {linksAndIds} from '../offline/visible-text.ts'

/** Pages of a folder that its list of effective pages does not name, and pages of the list that the folder lacks. */
export function foreignPages(site: Readonly<Record<string, string>>): {
  readonly strange: readonly string[]
  readonly missing: readonly string[]
} {
  const lists = Object.entries(site).filter(([path]) => /^effective(?:-\d+)?\.html$/u.test(path))
  const rows = lists.flatMap(([, text]) => /<tbody>[\s\S]*<\/tbody>/u.exec(text)?.[0] ?? [])
  const listed = new Set(rows.flatMap((text) => linksAndIds(text).links))
  const pages = Object.keys(site).filter((path) => path.endsWith('.html'))
  return {
    strange: pages.filter((path) => !listed.has(path)),
    missing: [...listed].filter((path) => !pages.includes(path)),
  }
}
