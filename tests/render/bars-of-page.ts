import {type DefaultTreeAdapterTypes, parse} from 'parse5'

/** Every element of a page with a bar, by class and id. */
export function barsOf(html: string): readonly string[] {
  const found: string[] = []
  const walk = (node: DefaultTreeAdapterTypes.Node): void => {
    if ('attrs' in node && node.attrs.some(({name}) => name === 'data-bar')) {
      const of = (wanted: string): string => node.attrs.find(({name}) => name === wanted)?.value ?? ''
      found.push([of('class'), of('id')].filter((one) => one !== '').join(' ') || node.tagName)
    }
    if ('childNodes' in node) for (const child of node.childNodes) walk(child)
  }
  walk(parse(html))
  return found
}
