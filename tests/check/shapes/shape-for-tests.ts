import type {z} from 'zod'
import {checkShape} from '../../../src/check/shapes/check-shape.ts'
import type {ContentFiles} from '../../../src/messages/add-message.ts'
import {readYaml} from '../../../src/read/read-yaml.ts'
import {messagesOf} from '../../read/messages-of.ts'

/** Holds YAML text of a file `a.yaml` against a shape: the product and whole message lines. */
export function shaped<T>(
  yaml: string,
  shape: z.ZodType<T>,
): {readonly product: T | undefined; readonly messages: readonly string[]} {
  const files: ContentFiles = new Map()
  const node = readYaml('a.yaml', yaml, files)
  const product = node && checkShape(node, shape, files)
  return {product, messages: messagesOf(files)}
}
