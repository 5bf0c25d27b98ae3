import {stopsTheBuild} from '../../../src/messages/add-message.ts'
import {printMessages} from '../../../src/messages/print-messages.ts'
import type {RuleId} from '../../../src/messages/severities.ts'
import {type ChangedContent, smallContent, withChangedContent} from '../../commands/changed-content.ts'
import {renderedContent} from '../../commands/rendered-content.ts'
import {placeIn} from '../messages-for-tests.ts'

/** A change of the small content. */
export type Change = (content: ChangedContent) => void

/** A place of a message: a file, and words that stand in it once after the change; without words its first line. */
export type PlaceOfCase = readonly [path: string, words?: string]

/** Two texts that differ in little: the rule says nothing about one and one message about the other. */
export interface RuleCase {
  readonly rule: RuleId
  readonly what: string
  readonly accepted: Change
  readonly rejected: Change
  readonly at: PlaceOfCase
  readonly reason: string
  readonly mend: string
  readonly see?: PlaceOfCase
}

/** What the program says about a changed content. */
export interface Told {
  readonly stops: boolean
  readonly said: string
  /** The places asked for, as messages print them. */
  readonly places: readonly string[]
}

/** Reads, checks, computes, compiles and renders the changed small content, and writes nothing. */
export async function toldAfter(change: Change, places: readonly PlaceOfCase[] = []): Promise<Told> {
  return withChangedContent(async (content) => {
    change(content)
    const {files} = await renderedContent(content.folder)
    const placeOf = ([path, words]: PlaceOfCase): string =>
      `content/${words === undefined ? `${path}:1:1` : placeIn(content.read(path), words, path)}`
    return {
      stops: stopsTheBuild(files),
      said: printMessages(files, 'content'),
      places: places.map(placeOf),
    }
  }, smallContent)
}

/** A change that puts new words in the place of old ones. */
export function replaced(path: string, old: string | RegExp, words: string): Change {
  return (content) => content.replace(path, old, words)
}

/** Several changes one after another. */
export function all(...changes: readonly Change[]): Change {
  return (content) => {
    for (const change of changes) change(content)
  }
}

/** The content as it is. */
export const unchanged: Change = () => undefined
