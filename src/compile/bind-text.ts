import {notKnownWords} from '../handbook-model/computed.ts'
import type {BoundInline, BoundText} from '../handbook-model/pages.ts'
import type {RichText} from '../handbook-model/procedure.ts'
import {found, type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {elementId, explanationPath, procedurePath, wordsPath} from './page-paths.ts'

/** Fills the holes of a text for one pump: values become figures, references become links. */
export function bindText(text: RichText, desk: PumpDesk): BoundText {
  return text.map((inline): BoundInline => {
    switch (inline.kind) {
      case 'text':
        return inline
      case 'strong':
      case 'emphasis':
        return {kind: inline.kind, children: bindText(inline.children, desk)}
      case 'value': {
        const value = pumpValue(desk, inline.value.id)
        const known = value.result.kind === 'known'
        return {
          kind: 'value',
          text: known ? printedValue(value) : notKnownWords,
          path: `${explanationPath(value, desk)}#${elementId('value', value.id)}`,
          known,
        }
      }
      case 'procedure': {
        const procedure = found(
          desk.content.procedures.get(inline.procedure.id),
          `procedure ${inline.procedure.id}`,
        )
        return {
          kind: 'link',
          text: inline.label === '' ? procedure.title : inline.label,
          path: procedurePath(procedure, desk),
        }
      }
      case 'term': {
        const term = found(desk.content.terms.get(inline.term.id), `term ${inline.term.id}`)
        return {
          kind: 'link',
          text: inline.label === '' ? term.term.en : inline.label,
          path: `${wordsPath}#${elementId('term', term.id)}`,
        }
      }
      case 'part': {
        const {id} = inline.part
        const balloon = found(desk.content.parts.get(id)?.balloon, `balloon of part ${id}`)
        return {kind: 'part', text: inline.label, balloon, part: id}
      }
      default:
        return neverReached(inline)
    }
  })
}

/** Value ids that a text shows. */
export function valuesInText(text: RichText): readonly string[] {
  return text.flatMap((inline) => {
    if (inline.kind === 'value') return [inline.value.id]
    return inline.kind === 'strong' || inline.kind === 'emphasis' ? valuesInText(inline.children) : []
  })
}

function neverReached(value: never): never {
  throw new Error(`Unexpected inline ${JSON.stringify(value)}`)
}
