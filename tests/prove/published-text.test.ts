import {existsSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {beforeAll, expect, test} from 'vitest'
import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import {desksOfVessel} from '../../src/compile/desk.ts'
import {serves} from '../../src/conditions/serves.ts'
import {
  deadLinks,
  doubledIds,
  fileFaults,
  linesNotShown,
  strayWords,
  validatorFaults,
} from '../offline/page-faults.ts'
import {linksAndIds, visibleText} from '../offline/visible-text.ts'
import {expectNone, named, work} from './work.ts'

/** Technical text by vessel and path; the paths that every vessel should have. */
const texts = new Map<string, string>()
const expected: string[] = []

beforeAll(async () => {
  const {content, values, history} = await checkAndCompute(work.content)
  if (!content || !values) throw new Error('Unexpected content with errors, expected it to check')
  const procedures = [...content.procedures.values()].filter((one) => one.scope === 'position')
  for (const vessel of content.vessels.keys()) {
    const stated = stateVessel(content, values, vessel, history)
    for (const {head} of stated.pages.pages) {
      texts.set(`${vessel}/${head.path}`, stated.technicalTexts.get(head.id) ?? '')
      expected.push(`${vessel}/${head.path}`)
    }
    for (const desk of desksOfVessel(content, values, vessel))
      for (const procedure of procedures)
        if (serves(procedure, desk.facts))
          expected.push(`${vessel}/p/${desk.position.id}/${procedure.id}.html`)
  }
})

/** Pages about an issue have no technical text, and records neither, which lie in a folder of their own. */
const ofIssue = /data-kind="(?:changed|effective|withdrawn)"/u

const known = new Map<string, readonly string[] | undefined>()

/** Ids of the elements of a published file; undefined where there is none. */
function idsOf(vessel: string, path: string): readonly string[] | undefined {
  const whole = join(work.site, vessel, path)
  if (!known.has(whole)) known.set(whole, readIds(whole))
  return known.get(whole)
}

function readIds(whole: string): readonly string[] | undefined {
  if (!existsSync(whole)) return undefined
  return whole.endsWith('.html') ? linksAndIds(readFileSync(whole, 'utf8')).ids : []
}

test('every page that the content asks for is published, every procedure on every pump', () => {
  expect(expected.length).toBeGreaterThan(0)
  expectNone(expected.filter((path) => !existsSync(join(work.site, path))))
})

test.for(named)('%s', async ([, {vessel, path}]) => {
  const html = readFileSync(join(work.site, vessel, path), 'utf8')
  const {links, ids} = linksAndIds(html)
  expectNone(deadLinks(path, links, (target) => idsOf(vessel, target)))
  expectNone(doubledIds(ids))
  expectNone(strayWords(visibleText(html)))
  expectNone(fileFaults(path, Buffer.byteLength(html)))
  expectNone(await validatorFaults(html))
  const text = texts.get(`${vessel}/${path}`)
  if (html.includes('data-kind=') && !ofIssue.test(html) && !path.startsWith('records/'))
    expect(text).toBeDefined()
  if (text !== undefined) expectNone(linesNotShown(text, html))
})
