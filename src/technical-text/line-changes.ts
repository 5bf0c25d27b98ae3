import type {LineChange} from './compare-texts.ts'

/** What became of a line. */
export function doneTo({before, after}: LineChange): 'added' | 'changed' | 'removed' {
  if (before === undefined) return 'added'
  return after === undefined ? 'removed' : 'changed'
}

/** A step or caution that has another number because something before it came or went is itself as it was. */
export function isRenumbering({kind, before, after}: LineChange): boolean {
  if (!['number', 'word', 'recall'].includes(kind) || before === undefined || after === undefined)
    return false
  const unnumbered = (text: string): string => text.replace(/\d+$/u, '')
  return unnumbered(before) === unnumbered(after)
}

/** The figures in the words of a line, in order; words that hold the same ones moved no figure. */
export function figuresIn(text = ''): string {
  return (text.match(/\d+(?:[.,]\d+)*/gu) ?? []).join(' ')
}
