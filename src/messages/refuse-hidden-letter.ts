import {addMessage, type ContentFiles} from './add-message.ts'
import type {Place} from './place.ts'

/**
 * Control characters, marks that turn the order of letters, halves of letters, blanks of no width, line ends that no
 * editor shows, and the letter that stands for one that was lost.
 */
const hidden = /(?![\t\n\r])\p{Cc}|\p{Bidi_Control}|\p{Cs}|\p{Zl}|\p{Zp}|[\u200B\u2060\uFEFF\uFFFD]/u

/** Where the first letter stands that does not print, counted from 0; undefined in a text without one. */
export function placeOfHiddenLetter(text: string): number | undefined {
  return hidden.exec(text)?.index
}

/** A letter that nobody sees makes two texts differ that read alike, or turns `34` into `43`: it is a message. */
export function refuseHiddenLetter(text: string, place: Place, files: ContentFiles): void {
  const code = hidden.exec(text)?.[0].codePointAt(0)?.toString(16).toUpperCase().padStart(4, '0')
  if (code === undefined) return
  addMessage(
    files,
    place,
    'no-foreign-encoding',
    `Unexpected letter U+${code} that does not print, expected letters that the reader sees`,
    {note: 'Take the letter out, or write the word again'},
  )
}
