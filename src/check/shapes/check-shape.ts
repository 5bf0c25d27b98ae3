import type {z} from 'zod'
import type {PlacedNode} from '../../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {factsOfIssue} from './placed-shape.ts'
import {plainTree} from './plain-tree.ts'

/**
 * Holds a tree against a shape; every misfit becomes a message at its own place.
 *
 * @returns
 *   The typed product, or `undefined` when a message was added.
 */
export function checkShape<T>(node: PlacedNode, shape: z.ZodType<T>, files: ContentFiles): T | undefined {
  const {tree, doubled} = plainTree(node)
  for (const {key, place, first} of doubled) {
    addMessage(files, place, 'no-duplicate-id', `Unexpected second key \`${key}\`, expected each key once`, {
      cause: first,
      note: 'Remove one of the two',
    })
  }
  if (node.kind === 'map' && node.entries.length === 0) {
    addMessage(files, node.place, 'no-missing-key', 'Unexpected map without a key, expected its fields', {
      note: 'Write the fields of this kind of file, or take the file out',
    })
    return undefined
  }
  const parsed = shape.safeParse(tree)
  if (parsed.success) return doubled.length === 0 ? parsed.data : undefined
  for (const issue of parsed.error.issues) {
    const facts = factsOfIssue(issue)
    if (facts) {
      addMessage(
        files,
        facts.place,
        facts.ruleId,
        issue.message,
        facts.note === undefined ? {} : {note: facts.note},
      )
    } else {
      const what = node.kind === 'scalar' ? `text \`${node.text}\`` : node.kind
      addMessage(files, node.place, 'no-wrong-shape', `Unexpected ${what}, expected a map`, {
        note: 'Write the fields of this kind of file, each as `key: value`',
      })
    }
  }
  return undefined
}
