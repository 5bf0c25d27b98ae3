import type {Directives} from 'mdast-util-directive'

/** An attribute as it stands in the file. */
export interface WrittenAttribute {
  /** `#id` and `.class` are written short for `id` and `class`. */
  readonly name: string
  /** The value as written; blank for a name alone. */
  readonly raw: string
  /** Where the value begins in the file, or the name where there is no value. */
  readonly offset: number
}

const oneAttribute =
  /\s*(?:(?<mark>[#.])(?<short>[^\s#.}"'<=>`]+)|(?<name>[A-Za-z_:][\w.:-]*)(?:\s*=\s*(?:"(?<double>[^"]*)"|'(?<single>[^']*)'|(?<bare>[^\s"'<=>`{}]+)))?)/uy

/**
 * The attributes of a directive in the order in which they are written.
 *
 * The tree keeps only the last of two equal names and forgets where each stands.
 */
export function writtenAttributes(node: Directives, source: string): readonly WrittenAttribute[] {
  const start = node.position?.start.offset
  const end = node.position?.end.offset
  if (start === undefined || end === undefined) return []
  const label = node.type === 'containerDirective' ? undefined : node.children.at(-1)?.position?.end.offset
  const brace = source.indexOf('{', label ?? start)
  const found: WrittenAttribute[] = []
  oneAttribute.lastIndex = brace + 1
  while (brace !== -1 && oneAttribute.lastIndex < end) {
    const match = oneAttribute.exec(source)
    if (!match) break
    const {mark, short, name, double, single, bare} = match.groups ?? {}
    const after = match.index + match[0].length
    const raw = short ?? double ?? single ?? bare
    const quote = double === undefined && single === undefined ? 0 : 1
    found.push({
      name: mark === '#' ? 'id' : mark === '.' ? 'class' : (name ?? ''),
      raw: raw ?? '',
      offset: after - quote - (raw ?? name ?? '').length,
    })
  }
  return found
}
