import type {Element, ElementContent} from 'hast'
import rehypeStringify from 'rehype-stringify'
import {unified} from 'unified'
import type {BoundText} from '../handbook-model/pages.ts'

type BoundPartName = Extract<BoundText[number], {kind: 'part'}>

const stringifier = unified().use(rehypeStringify).freeze()

/** A bound text as HTML, escaped by the library; values and links lead to their pages below `base`, parts carry their balloon. */
export function richText(text: BoundText, base: string): string {
  return stringifier.stringify({type: 'root', children: elementsOf(text, base)})
}

function elementsOf(text: BoundText, base: string): ElementContent[] {
  return text.flatMap((inline) => (inline.kind === 'part' ? partElements(inline) : [elementOf(inline, base)]))
}

function elementOf(inline: Exclude<BoundText[number], BoundPartName>, base: string): ElementContent {
  switch (inline.kind) {
    case 'text':
      return {type: 'text', value: inline.text}
    case 'strong':
      return element('strong', {}, elementsOf(inline.children, base))
    case 'emphasis':
      return element('em', {}, elementsOf(inline.children, base))
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

/** Words for a part with its balloon, which never leaves the last of them; its brackets are read out and copied, not seen. */
function partElements({text, balloon}: BoundPartName): ElementContent[] {
  const bracket = (value: string): ElementContent => element('i', {}, [{type: 'text', value}])
  const number: ElementContent = {type: 'text', value: balloon}
  const last = text.lastIndexOf(' ') + 1
  return [
    {type: 'text', value: text.slice(0, last)},
    element('span', {className: ['part']}, [
      {type: 'text', value: `${text.slice(last)} `},
      element('b', {}, [bracket('('), number, bracket(')')]),
    ]),
  ]
}

function element(tagName: string, properties: Element['properties'], children: ElementContent[]): Element {
  return {type: 'element', tagName, properties, children}
}

function neverReached(value: never): never {
  throw new Error(`Unexpected inline ${JSON.stringify(value)}`)
}
