import {parseProcedure} from '../../src/check/procedures/parse-procedure.ts'
import type {Procedure} from '../../src/handbook-model/procedure.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {printMessages, sortedMessages} from '../../src/messages/print-messages.ts'
import {sourcesFromTexts} from '../../src/read/read-sources.ts'

/** What a sample procedure differs in from the usual one. */
export interface SampleProcedure {
  readonly id?: string
  /** Fields of the front matter in place of the usual ones; blank takes the field out. */
  readonly front?: Readonly<Record<string, string>>
  readonly title?: string
  readonly purpose?: string
  readonly before?: string
  readonly after?: string
}

/** The hold point that every procedure on a pump begins with. */
export const nameplate =
  '::hold-point{#nameplate title="Nameplate" signed-by="second engineer" second-by="pumpman"}'

/** Text of a procedure whose sections are given: whole, and without a fault of its own. */
export function procedureText(sections: string, sample: SampleProcedure = {}): string {
  const front: Readonly<Record<string, string>> = {
    id: sample.id ?? 'sample',
    activity: 'inspection',
    maintenance: 'all',
    scope: 'position',
    'performed-by': 'second engineer',
    'supervised-by': 'chief engineer',
    competence: 'crew',
    people: '2',
    hours: '1.5',
    'clear-height': 'none',
    weather: 'none',
    permits: '[]',
    tools: '[]',
    parts: '[]',
    records: '[]',
    ...sample.front,
  }
  const fields = Object.entries(front).flatMap(([key, value]) => (value === '' ? [] : [`${key}: ${value}`]))
  return [
    ['---', ...fields, '---'].join('\n'),
    sample.title ?? '# Sample',
    sample.purpose ?? 'This procedure serves tests.',
    sample.before ?? '## State before\n\n- The pump stands still.',
    sample.after ?? '## State after\n\n- The pump is ready.',
    sections,
  ]
    .map((block) => `${block}\n`)
    .join('\n')
}

/** Text of a procedure with one section, `work`, that begins with the nameplate. */
export function workText(section: string, sample: SampleProcedure = {}): string {
  return procedureText(`## Work\n\n::section{#work}\n\n${nameplate}\n\n${section}`, sample)
}

/** What came of parsing a text: the procedure, where its front matter served, and every message. */
export function parsed(
  text: string,
  path = 'procedures/sample.md',
): {readonly procedure: Procedure | undefined; readonly files: ContentFiles} {
  const files: ContentFiles = new Map()
  const source = sourcesFromTexts(new Map([[path, text]]), files).markdown.get(path)
  return {procedure: source && parseProcedure(path, source, files), files}
}

/**
 * The procedure of a text that has no fault.
 *
 * @throws {Error}
 *   When a message was added; all messages are in the text.
 */
export function soundProcedure(text: string, path = 'procedures/sample.md'): Procedure {
  const {procedure, files} = parsed(text, path)
  if (!procedure || sortedMessages(files).length > 0) throw new Error(printMessages(files, ''))
  return procedure
}

/** The procedures of several texts by id. */
export function soundProcedures(...texts: readonly string[]): ReadonlyMap<string, Procedure> {
  return new Map(
    texts.map((text) => {
      const id = /^id: (.+)$/mu.exec(text)?.[1] ?? ''
      return [id, soundProcedure(text, `procedures/${id}.md`)]
    }),
  )
}
