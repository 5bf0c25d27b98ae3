import type {Element, ElementContent} from 'hast'
import rehypeStringify from 'rehype-stringify'
import {unified} from 'unified'
import type {BoundText} from '../handbook-model/pages.ts'

const stringifier = unified().use(rehypeStringify).freeze()

/** A bound text as HTML, escaped by the library; values and links lead to their pages below `base`. */
export function richText(text: BoundText, base: string): string {
  return stringifier.stringify({type: 'root', children: text.map((inline) => elementOf(inline, base))})
}

function elementOf(inline: BoundText[number], base: string): ElementContent {
  switch (inline.kind) {
    case 'text':
      return {type: 'text', value: inline.text}
    case 'strong':
      return element(
        'strong',
        {},
        inline.children.map((one) => elementOf(one, base)),
      )
    case 'emphasis':
      return element(
        'em',
        {},
        inline.children.map((one) => elementOf(one, base)),
      )
    case 'value':
      return element(
        'a',
        {
          className: inline.known ? ['figure-inline'] : ['figure-inline', 'not-known'],
          href: `${base}${inline.path}`,
        },
        [{type: 'text', value: inline.text}],
      )
    case 'link':
      return element('a', {href: `${base}${inline.path}`}, [{type: 'text', value: inline.text}])
    default:
      return neverReached(inline)
  }
}

function element(tagName: string, properties: Element['properties'], children: ElementContent[]): Element {
  return {type: 'element', tagName, properties, children}
}

function neverReached(value: never): never {
  throw new Error(`Unexpected inline ${JSON.stringify(value)}`)
}
