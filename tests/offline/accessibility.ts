import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import type {Visit} from './browsers.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** What the accessibility rules of WCAG 2.2 A and AA find on a page that is open, each with the element. */
export async function accessibilityFaults(visit: Pick<Visit, 'evaluate'>): Promise<unknown> {
  await visit.evaluate(`${axe}; undefined`)
  return visit.evaluate(
    `axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations']}).then(({violations}) => violations.flatMap(({id, nodes}) => nodes.map(({html}) => id + ': ' + html.slice(0, 120))))`,
  )
}
