import type {PlacedNode, PlacedScalar} from '../../handbook-model/sources.ts'
import type {Place} from '../../messages/place.ts'

/** Key under which a plain map keeps its own place and the places of its keys; no YAML key can collide with a symbol. */
export const placeKey: unique symbol = Symbol('place')

/** Key under which a plain list keeps its own place. */
const listPlaceKey: unique symbol = Symbol('place of a list')

/** Places of a map and of each of its keys. */
export interface PlaceOfMap {
  readonly map: Place
  readonly keys: ReadonlyMap<string, Place>
}

/** A scalar with the nearest `origin:` above it, so that a plain value knows how it is known. */
export interface PlainScalar extends PlacedScalar {
  readonly origin: PlainTree | undefined
}

/** A tree that a shape can walk: leaves, lists and maps. */
export type PlainTree = PlainScalar | readonly PlainTree[] | PlainMap
/** A map of the tree. */
export interface PlainMap {
  readonly [placeKey]: PlaceOfMap
  readonly [key: string]: PlainTree
}

/** What came of making a tree plain; a key written twice is reported by the caller. */
export interface PlainResult {
  readonly tree: PlainTree
  readonly doubled: readonly {readonly key: string; readonly place: Place; readonly first: Place}[]
}

/** Turns a placed tree into plain objects that a shape can walk, each leaf and map keeping its place. */
export function plainTree(node: PlacedNode): PlainResult {
  const doubled: {key: string; place: Place; first: Place}[] = []
  return {tree: plain(node, undefined, doubled), doubled}
}

function plain(
  node: PlacedNode,
  origin: PlainTree | undefined,
  doubled: {key: string; place: Place; first: Place}[],
): PlainTree {
  if (node.kind === 'scalar') return {...node, origin}
  if (node.kind === 'list') {
    const items = node.items.map((item) => plain(item, origin, doubled))
    return Object.assign(items, {[listPlaceKey]: node.place})
  }
  const own = node.entries.find((entry) => entry.key.text === 'origin')
  const below = own ? plain(own.value, undefined, doubled) : origin
  const keys = new Map<string, Place>()
  const entries: [string, PlainTree][] = []
  for (const {key, value} of node.entries) {
    const first = keys.get(key.text)
    if (first) doubled.push({key: key.text, place: key.place, first})
    else keys.set(key.text, key.place)
    entries.push([
      key.text,
      key.text === 'origin' ? (below ?? plain(value, undefined, doubled)) : plain(value, below, doubled),
    ])
  }
  return Object.assign(Object.fromEntries(entries), {[placeKey]: {map: node.place, keys}})
}

/** True for a leaf of the tree. */
export function isPlainScalar(value: unknown): value is PlainScalar {
  return (
    typeof value === 'object' &&
    value !== null &&
    'kind' in value &&
    value.kind === 'scalar' &&
    'place' in value
  )
}

/** True for a map of the tree. */
export function isPlainMap(value: unknown): value is PlainMap {
  return typeof value === 'object' && value !== null && placeKey in value
}

/** Where a leaf, list or map of the tree stands; undefined for anything else. */
export function placeOfPlain(value: unknown): Place | undefined {
  if (isPlainScalar(value)) return value.place
  if (isPlainMap(value)) return value[placeKey].map
  return isPlainList(value) ? value[listPlaceKey] : undefined
}

function isPlainList(value: unknown): value is readonly PlainTree[] & {readonly [listPlaceKey]: Place} {
  return Array.isArray(value) && listPlaceKey in value
}
