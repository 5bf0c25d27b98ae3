import type {Sentence} from 'nlcst'
import {toString as textOf} from 'nlcst-to-string'
import {ParseEnglish} from 'parse-english'
import type {RichText} from '../../handbook-model/procedure.ts'

/** The words of a text as a reader meets them; a value stands as one word. */
export function wordsOfText(text: RichText): string {
  return text
    .map((inline): string => {
      switch (inline.kind) {
        case 'text':
          return inline.text
        case 'strong':
        case 'emphasis':
          return wordsOfText(inline.children)
        case 'value':
          return 'VALUE'
        case 'procedure':
        case 'term':
          return inline.label === '' ? 'TITLE' : inline.label
        default:
          return neverReached(inline)
      }
    })
    .join('')
    .replace(/\s+/gu, ' ')
    .trim()
}

const english = new ParseEnglish()

/** Sentences of a text. */
export function sentencesOf(text: string): readonly string[] {
  return sentenceNodes(text).map((sentence) => textOf(sentence).trim())
}

/** Words of a sentence; what is joined by a hyphen or holds an apostrophe is one word. */
export function wordsIn(text: string): readonly string[] {
  return sentenceNodes(text).flatMap((sentence) =>
    sentence.children.flatMap((node) => (node.type === 'WordNode' ? [textOf(node)] : [])),
  )
}

function sentenceNodes(text: string): readonly Sentence[] {
  return english
    .parse(text)
    .children.flatMap((paragraph) => (paragraph.type === 'ParagraphNode' ? paragraph.children : []))
    .flatMap((node) => (node.type === 'SentenceNode' ? [node] : []))
}

function neverReached(value: never): never {
  throw new Error(`Unexpected inline ${JSON.stringify(value)}`)
}
