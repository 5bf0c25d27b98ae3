import {describe, expect, test} from 'vitest'
import {demonstration, stepsOf, wordsOf} from './demonstration.ts'

const {content} = await demonstration()
const procedures = [...content.procedures.values()]

/** Source: ambiguous words of the marine communication phrases A.918(22); from memory. */
const ambiguous = /\b(?:may|might|should|could|can|cannot|would)\b/iu
const contracted = /\b(?:\w+n['’]t|it['’]s|\w+['’](?:re|ll|ve))\b/iu
/** House list, common practice: words that hide what is to be done. */
const hollow =
  /\b(?:ensure|make sure|as required|if necessary|as needed|properly|careful|carefully|appropriate|adequate)\b/iu

function sentencesOf(text: string): readonly string[] {
  return text.split(/(?<=[.!?])\s+/u)
}

function longerThan(most: number, texts: readonly string[]): readonly string[] {
  return texts.flatMap(sentencesOf).filter((sentence) => sentence.split(/\s+/u).length > most)
}

function offending(texts: readonly string[]): readonly string[] {
  return texts.filter((text) => ambiguous.test(text) || contracted.test(text) || hollow.test(text))
}

describe.each(procedures.map((procedure) => ({id: procedure.id, procedure})))(
  'the language of $id',
  ({procedure}) => {
    const instructions = stepsOf(procedure).map((step) => wordsOf(step.instruction))
    const descriptions = [
      ...procedure.sections.flatMap((section) => section.intro.map(wordsOf)),
      ...stepsOf(procedure).flatMap((step) =>
        step.parts.flatMap((part) => {
          if (part.kind === 'note') return [wordsOf(part.text)]
          return part.kind === 'alternatives' ? part.items.map((item) => wordsOf(item.text)) : []
        }),
      ),
    ]

    test('keeps a step sentence to twenty words and any other sentence to twenty-five', () => {
      expect(longerThan(20, instructions)).toEqual([])
      expect(longerThan(25, descriptions)).toEqual([])
    })

    test('uses no ambiguous verb, no contraction and no hollow word', () => {
      expect(offending([...instructions, ...descriptions])).toEqual([])
    })
  },
)

describe('the language of the cautions', () => {
  const texts = [...content.cautions.values()].flatMap((caution) => [
    caution.title.en,
    caution.hazard.en,
    caution.consequence.en,
    ...caution.avoid.map((line) => line.en),
    caution.residualRisk.en,
  ])

  test('keeps a sentence to twenty words', () => {
    expect(longerThan(20, texts)).toEqual([])
  })

  test('uses no ambiguous verb, no contraction and no hollow word', () => {
    expect(offending(texts)).toEqual([])
  })
})

describe('one word per thing', () => {
  const spoken = procedures.flatMap((procedure) => [
    procedure.title,
    ...procedure.purpose.map(wordsOf),
    ...procedure.before.map(wordsOf),
    ...procedure.after.map(wordsOf),
    ...stepsOf(procedure).map((step) => wordsOf(step.instruction)),
  ])

  test.each([...content.terms.values()].map((term) => ({id: term.id, term})))(
    'no other word stands for $id',
    ({term}) => {
      const found = term.notUsed.filter((word) =>
        spoken.some((text) => new RegExp(`\\b${word}\\b`, 'iu').test(text)),
      )
      expect(found).toEqual([])
    },
  )
})
