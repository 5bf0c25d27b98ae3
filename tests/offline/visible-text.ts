import {type DefaultTreeAdapterTypes, parse} from 'parse5'

type Node = DefaultTreeAdapterTypes.ChildNode | DefaultTreeAdapterTypes.Document

const unseen = new Set(['script', 'style', 'head', 'template'])

/** Words of a page as a reader meets them: scripts and head left out, white space folded. */
export function visibleText(html: string): string {
  return words(parse(html)).replace(/\s+/gu, ' ').trim()
}

/** Title of a page, white space folded as a browser does. */
export function titleOf(html: string): string {
  const title = (node: Node): string =>
    node.nodeName === 'title' ? words(node) : 'childNodes' in node ? node.childNodes.map(title).join('') : ''
  const head = parse(html).childNodes.flatMap((one) => ('childNodes' in one ? one.childNodes : []))
  return head
    .filter((one) => one.nodeName === 'head')
    .map(title)
    .join('')
    .replace(/\s+/gu, ' ')
    .trim()
}

function words(node: Node): string {
  if (node.nodeName === '#text' && 'value' in node) return node.value
  if (unseen.has(node.nodeName)) return ''
  if (!('childNodes' in node)) return ''
  const inner = node.childNodes.map(words).join('')
  return inlineNames.has(node.nodeName) ? inner : ` ${inner} `
}

/** Elements that do not break the line: their words stand against their neighbours'. */
const inlineNames = new Set(['a', 'b', 'em', 'strong', 'span', 'tspan', 'i', 'small'])

/** Every address that a page links to or loads, with the element ids it holds. */
export function linksAndIds(html: string): {
  readonly links: readonly string[]
  readonly ids: readonly string[]
} {
  const links: string[] = []
  const ids: string[] = []
  const walk = (node: Node): void => {
    if ('attrs' in node) {
      for (const {name, value} of node.attrs) {
        if (name === 'id') ids.push(value)
        if ((name === 'href' || name === 'src') && node.nodeName !== 'use') links.push(value)
      }
    }
    if ('childNodes' in node) for (const child of node.childNodes) walk(child)
  }
  walk(parse(html))
  return {links, ids}
}
