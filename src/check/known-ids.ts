import type {ContentFiles} from '../messages/add-message.ts'

/** What a reference may lead to. */
export interface KnownIds {
  has(id: string): boolean
  keys(): Iterable<string>
}

/** Files whose definitions could not be used, because a message on them stops the build. */
export function faultyFiles(files: ContentFiles): ReadonlySet<string> {
  return new Set(
    [...files].flatMap(([path, file]) =>
      file.messages.some((message) => message.fatal === true) ? [path] : [],
    ),
  )
}

/**
 * The ids that files define; where one of the files could not be used, every id counts as known.
 *
 * One mistake is one message: a design that does not fit its shape is not also
 * told at each line that refers to it.
 *
 * @param path
 *   A file, or a folder that ends in `/`.
 */
export function knownIds(ids: KnownIds, path: string, faulty: ReadonlySet<string>): KnownIds {
  return isWhole(path, faulty) ? ids : {has: () => true, keys: () => ids.keys()}
}

/** True when every file at the path, or below the folder, could be used. */
export function isWhole(path: string, faulty: ReadonlySet<string>): boolean {
  const folder = path.slice(0, path.indexOf('/') + 1)
  return ![...faulty].some(
    (one) =>
      one === path || one === '.' || `${one}/` === folder || (path.endsWith('/') && one.startsWith(path)),
  )
}
