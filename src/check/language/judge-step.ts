import {approvedVerbs} from './approved-verbs.ts'
import type {LanguageFault} from './judge-words.ts'
import {sentencesOf, wordsIn} from './words-of-text.ts'

/** More words than this are not held in mind with both hands in the pump. Source: usual limit of controlled languages, from memory. */
const mostWordsInStep = 20
/** More verbs than this in one sentence are more than one instruction. */
const mostVerbs = 2

/**
 * What is wrong with the instruction of a step.
 *
 * It has one sentence of at most twenty words and one instruction, begins with a verb of the list, and says a condition first.
 *
 * @param isMeasured
 *   Whether the step carries a reading, value, choice or second signature, so that "make sure" has something to hold on to.
 */
export function judgeStep(text: string, isMeasured: boolean): readonly LanguageFault[] {
  const words = wordsIn(text)
  const sentences = sentencesOf(text)
  const [first = ''] = sentences
  return [
    ...(words.length > mostWordsInStep
      ? [
          fault(
            'no-long-step',
            text,
            `Unexpected step of ${words.length} words, expected at most ${mostWordsInStep}`,
            'Split it, or move what is information into a note',
          ),
        ]
      : []),
    ...(sentences.length > 1
      ? [
          fault(
            'no-second-instruction',
            sentences[1] ?? '',
            `Unexpected second sentence \`${sentences[1]}\` in a step, expected one instruction`,
            'Make it a step of its own, or a note below the step',
          ),
        ]
      : secondInstruction(first)),
    ...verbFirst(first),
    ...lateCondition(first),
    ...assurance(text, isMeasured),
  ]
}

function secondInstruction(sentence: string): readonly LanguageFault[] {
  const joined = /\b(?:and then|then)\b|;/iu.exec(sentence)
  const verbs = commandsIn(commandOf(sentence))
  const words = joined?.[0] ?? (verbs.length > mostVerbs ? verbs.join(', ') : undefined)
  if (words === undefined) return []
  return [
    fault(
      'no-second-instruction',
      words,
      `Unexpected second instruction at \`${words}\`, expected one instruction in a step`,
      'Make each instruction a step of its own',
    ),
  ]
}

/** Verbs that stand where a command stands: at the start, and behind a comma or `and`. */
function commandsIn(command: string): readonly string[] {
  const words = wordsIn(command).map((word) => word.toLowerCase())
  const pieces = command
    .split(/,\s+|\s+and\s+/iu)
    .map((piece) => wordsIn(piece).map((word) => word.toLowerCase()))
  const starts = pieces.flatMap(([verb, next]) =>
    verb !== undefined && approvedVerbs.has(verb) && isObject(next) ? [verb] : [],
  )
  const [head] = words
  return head !== undefined && approvedVerbs.has(head) && starts[0] !== head ? [head, ...starts] : starts
}

/** A verb of the list may be a noun too: as a command something follows that it is done to. */
function isObject(word: string | undefined): boolean {
  return (
    word !== undefined &&
    /^(?:the|a|an|each|all|both|every|it|them|its|this|that|these|no|not|one|two|three|four|value|off|out|in|on|up|down|back)$/u.test(
      word,
    )
  )
}

const conditionWords = /^(?:if|when|where|while|before|after|until|as soon as)\b/iu

/** The command behind a leading condition: "When the pump stands, close the valve." */
function commandOf(sentence: string): string {
  if (!conditionWords.test(sentence)) return sentence
  const comma = sentence.indexOf(',')
  return comma === -1 ? '' : sentence.slice(comma + 1).trim()
}

function verbFirst(sentence: string): readonly LanguageFault[] {
  const command = commandOf(sentence).replace(/^(?:do not|don['’]t|never)\s+/iu, '')
  const [verb = ''] = wordsIn(command)
  if (approvedVerbs.has(verb.toLowerCase())) return []
  if (/^(?:make|ensure)$/iu.test(verb)) return []
  return [
    fault(
      'no-verbless-step',
      verb === '' ? sentence : verb,
      verb === ''
        ? `Unexpected step \`${sentence}\` without a command, expected a verb of the list behind the condition and a comma`
        : `Unexpected \`${verb}\` at the start of a step, expected a verb of the list`,
      `Begin with what is done, such as ${[...approvedVerbs].slice(0, 8).join(', ')}; the list is in src/check/language/approved-verbs.ts`,
    ),
  ]
}

function lateCondition(sentence: string): readonly LanguageFault[] {
  const late = /(?<!^)\b(?:if|when)\b(?! (?:required|needed|necessary|possible))/iu.exec(
    conditionWords.test(sentence) ? commandOf(sentence) : sentence,
  )
  if (!late) return []
  return [
    fault(
      'no-late-condition',
      late[0],
      `Unexpected condition \`${late[0]} …\` behind the command, expected it before the verb`,
      'Write the condition first, a comma, and what is done',
    ),
  ]
}

function assurance(text: string, isMeasured: boolean): readonly LanguageFault[] {
  const found = /\b(?:make sure|ensure|check that|verify|confirm that|see that)\b/iu.exec(text)
  if (!found || isMeasured) return []
  return [
    fault(
      'no-vague-word',
      found[0],
      `Unexpected \`${found[0]}\` in a step without a measure, expected a reading, value, choice or second signature below it`,
      'Say what is done, or add the reading by which it is known',
    ),
  ]
}

function fault(ruleId: LanguageFault['ruleId'], words: string, reason: string, note: string): LanguageFault {
  return {ruleId, words, reason, note}
}
