import type {PageLink} from '../../src/handbook-model/pages.ts'

/** A leaf of a page model: the name of its field, the way to it, the kind of its content and the content as text. */
export interface PageText {
  readonly name: string
  readonly where: string
  readonly kind: string
  readonly text: string
}

/** Every leaf of a page model, in order. */
export function textsIn(model: unknown, name = '', where = ''): readonly PageText[] {
  if (Array.isArray(model))
    return model.flatMap((one: unknown, index) => textsIn(one, name, `${where}[${index}]`))
  if (typeof model === 'object' && model !== null)
    return Object.entries(model).flatMap(([key, value]) => textsIn(value, key, `${where}.${key}`))
  return [{name, where, kind: typeof model, text: String(model)}]
}

/** Every link of a page model: fields `path` with their fragment, written beside it or behind a `#`. */
export function linksIn(model: unknown): readonly Omit<PageLink, 'text'>[] {
  if (Array.isArray(model)) return model.flatMap((one: unknown) => linksIn(one))
  if (typeof model !== 'object' || model === null) return []
  const below = Object.values(model).flatMap((one: unknown) => linksIn(one))
  // A picture is no link: its file is held by the test of the published files.
  if (!('path' in model) || typeof model.path !== 'string' || 'svg' in model) return below
  const [path = '', behind] = model.path.split('#')
  const fragment = 'fragment' in model && typeof model.fragment === 'string' ? model.fragment : behind
  return [{path, ...(fragment === undefined ? {} : {fragment})}, ...below]
}
