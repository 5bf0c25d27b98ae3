import {describe, expect, test} from 'vitest'
import {compilePages} from '../../src/compile/compile-pages.ts'
import {valuesFor} from './content-for-tests.ts'
import {content, handbook} from './handbook-for-tests.ts'
import {linksIn, textsIn} from './page-walker.ts'

const {vessel, pages, figures, records} = handbook()

describe('pages of a vessel', () => {
  test('are the start, six libraries, the work by interval, and for each pump its own, its procedures, its jobs, its values and its joints', () => {
    expect(pages.map((one) => one.head.path).sort()).toEqual(
      [
        ...[
          'index.html',
          'values.html',
          'cautions.html',
          'tools.html',
          'parts.html',
          'sources.html',
          'words.html',
          'work.html',
          'ship/card.html',
          'designs/design-a/keep.html',
          'designs/design-a/values.html',
          'designs/design-a/torques.html',
          'designs/design-a/preloads.html',
          'designs/design-a/passes.html',
          'designs/design-a/fasteners.html',
          'designs/design-a/o-rings.html',
          'designs/design-a/settings.html',
        ],
        ...['4p', '4s'].flatMap((id) => [
          `p/${id}/index.html`,
          `p/${id}/wear.html`,
          `p/${id}/test.html`,
          `p/${id}/job-service.html`,
          `p/${id}/symptoms.html`,
          `p/${id}/values.html`,
        ]),
      ].sort(),
    )
  })

  test('have each their own id, which begins with the vessel', () => {
    const ids = pages.map((one) => one.head.id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.filter((id) => !id.startsWith('vessel-a/'))).toEqual([])
  })

  test('print no undefined, NaN, null or object in any text', () => {
    const faults = pages.flatMap((one) =>
      textsIn(one).flatMap(({where, text}) =>
        /undefined|NaN|\bnull\b|\[object|Infinity/u.test(text) ? [`${one.head.path} ${where}: ${text}`] : [],
      ),
    )
    expect(faults).toEqual([])
  })

  test('hold nothing but text, numbers and yes or no', () => {
    const kinds = new Set(pages.flatMap((one) => textsIn(one).map(({kind}) => kind)))
    expect([...kinds].sort()).toEqual(['boolean', 'number', 'string'])
  })

  test('link only to pages that are there and to elements those pages have', () => {
    const targets = new Map(
      [...pages, ...records].map((one) => [
        one.head.path,
        new Set(textsIn(one).flatMap(({name, text}) => (name === 'id' ? [text] : []))),
      ]),
    )
    const dead = pages.flatMap((one) =>
      linksIn(one).flatMap(({path, fragment}) =>
        isThere(targets, path, fragment) ? [] : [`${one.head.path} -> ${path}#${fragment ?? ''}`],
      ),
    )
    expect(dead).toEqual([])
  })

  test('are the same data when compiled again', () => {
    expect(JSON.stringify(handbook())).toBe(JSON.stringify({vessel, pages, figures, records}))
  })

  test('refuse a vessel that the content lacks', () => {
    expect(() => compilePages(content, valuesFor(content), 'vessel-z')).toThrow(
      'Unexpected gap for vessel vessel-z',
    )
  })
})

/** Values and cautions are reached by their kind before their id; all else carries its element id itself. */
function isThere(
  targets: ReadonlyMap<string, ReadonlySet<string>>,
  path: string,
  fragment: string | undefined,
): boolean {
  const ids = targets.get(path)
  if (!ids || fragment === undefined) return ids !== undefined
  if (ids.has(fragment)) return true
  return [...ids].some((id) => [`value--${id.replaceAll('.', '--')}`, `caution--${id}`].includes(fragment))
}

describe('the head of a vessel', () => {
  test('names vessel, issuer and roles, and whether the data is for demonstration', () => {
    expect(vessel).toMatchObject({
      id: 'vessel-a',
      name: 'Example Vessel A',
      hullNumber: '0937241',
      issuer: 'Example Office (invented)',
      owner: 'technical office',
      approvedBy: 'superintendent',
      demonstration: true,
      language: 'en',
    })
  })
})
