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
        case 'part':
          return inline.label
        default:
          return neverReached(inline)
      }
    })
    .join('')
    .replace(/\s+/gu, ' ')
    .trim()
}

const english = new ParseEnglish()

interface ReadSentence {
  readonly text: string
  readonly words: readonly string[]
}

/** Texts repeat from procedure to procedure and from rule to rule: each is read once. */
const known = new Map<string, readonly ReadSentence[]>()

/** Sentences of a text. */
export function sentencesOf(text: string): readonly string[] {
  return readSentences(text).map((sentence) => sentence.text)
}

/** Words of a sentence; what is joined by a hyphen or holds an apostrophe is one word. */
export function wordsIn(text: string): readonly string[] {
  return readSentences(text).flatMap((sentence) => sentence.words)
}

function readSentences(text: string): readonly ReadSentence[] {
  const before = known.get(text)
  if (before) return before
  const sentences = sentenceNodes(text).map((sentence) => ({
    text: textOf(sentence).trim(),
    words: sentence.children.flatMap((node) => (node.type === 'WordNode' ? [textOf(node)] : [])),
  }))
  known.set(text, sentences)
  return sentences
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
