import {fileURLToPath} from 'node:url'
import {checkContent} from '../../src/check/check-content.ts'
import {computeValues} from '../../src/compute/compute-values.ts'
import type {ComputedValues} from '../../src/handbook-model/computed.ts'
import type {Content} from '../../src/handbook-model/content.ts'
import type {Procedure, RichText, Step} from '../../src/handbook-model/procedure.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {readSources} from '../../src/read/read-sources.ts'

/** The demonstration content of the repository, read, checked and computed once for all test files of a worker. */
export interface Demonstration {
  readonly content: Content
  readonly values: ComputedValues
  readonly files: ContentFiles
}

/** Test files of one worker are loaded anew one after the other; what they share hangs on the worker itself. */
const worker: {readonly process?: unknown; demonstration?: Promise<Demonstration>} = globalThis

/**
 * `content/` of the repository; read by the first test file of a worker that asks for it. Nobody changes it.
 *
 * @throws {Error}
 *   When a message stops the build; the messages are in the text.
 */
export function demonstration(): Promise<Demonstration> {
  worker.demonstration ??= readDemonstration()
  return worker.demonstration
}

async function readDemonstration(): Promise<Demonstration> {
  const files: ContentFiles = new Map()
  const folder = fileURLToPath(new URL('../../content', import.meta.url))
  const content = checkContent(await readSources(folder, files), files)
  if (!content) throw new Error([...files.values()].flatMap((file) => file.messages.map(String)).join('\n'))
  return {content, values: computeValues(content, files), files}
}

/** The words of a rich text as one line; a value stands as one word. */
export function wordsOf(text: RichText): string {
  return text
    .map((inline) => {
      if (inline.kind === 'text') return inline.text
      if (inline.kind === 'value') return 'VALUE'
      return 'children' in inline ? wordsOf(inline.children) : inline.label
    })
    .join('')
}

/** All steps of a procedure in order. */
export function stepsOf(procedure: Procedure): readonly Step[] {
  return procedure.sections.flatMap((section) =>
    section.items.flatMap((item) => (item.kind === 'step' ? [item] : [])),
  )
}
