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

const sentenceEnds = new Intl.Segmenter('en', {granularity: 'sentence'})
const wordEnds = new Intl.Segmenter('en', {granularity: 'word'})

/** Sentences of a text. */
export function sentencesOf(text: string): readonly string[] {
  return [...sentenceEnds.segment(text)].map(({segment}) => segment.trim()).filter((one) => one !== '')
}

/** Words of a sentence; what is joined by a hyphen or holds an apostrophe is one word. */
export function wordsIn(sentence: string): readonly string[] {
  const joined = sentence.replace(/(?<=\p{L})[-‐](?=\p{L})/gu, '_')
  return [...wordEnds.segment(joined)]
    .filter(({isWordLike}) => isWordLike === true)
    .map(({segment}) => segment.replaceAll('_', '-'))
}

function neverReached(value: never): never {
  throw new Error(`Unexpected inline ${JSON.stringify(value)}`)
}
