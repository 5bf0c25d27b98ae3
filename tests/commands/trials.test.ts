import {join} from 'node:path'
import {expect, test} from 'vitest'
import {contentReport, reportText} from '../../src/commands/content-report.ts'
import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import {textsBelow} from '../publish/folders-for-tests.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {issue, sign} from './issues-for-tests.ts'
import {renderedContent} from './rendered-content.ts'

const trial =
  'trials:\n  - {procedure: ring-check, vessel: vessel-s, position: 1p, date: 2031-01-05, role: second engineer, result: done as written}\n'
const words = 'not yet tried on board'
const procedurePage = 'p/1p/ring-check.html'

async function pagesOf(content: ChangedContent): Promise<ReadonlyMap<string, string>> {
  const {vessels} = await renderedContent(content.folder)
  return new Map(
    (vessels.get('vessel-s') ?? []).map(({path, bytes}) => [path, new TextDecoder().decode(bytes)]),
  )
}

async function untriedOf(content: ChangedContent): Promise<{untried: readonly string[]; said: string}> {
  const {content: checked, values, hashes} = await checkAndCompute(content.folder)
  if (!checked || !values) throw new Error('Unexpected errors in the content, expected none')
  const report = contentReport(checked, values, hashes)
  return {untried: report.untried, said: reportText(report)}
}

test('a draft of a procedure that nobody tried says so, in its title block and on each sheet; no other page does', () =>
  withChangedContent(async (content) => {
    const pages = await pagesOf(content)
    expect([...pages].filter(([, text]) => text.includes(words)).map(([path]) => path)).toEqual([
      procedurePage,
    ])
    const page = pages.get(procedurePage) ?? ''
    expect(/<thead class="running">.*?<\/thead>/su.exec(page)?.[0]).toContain(`DRAFT, NOT ISSUED, ${words}`)
    expect(page).toContain(`<dd class="draft">DRAFT, NOT ISSUED, ${words}</dd>`)
    expect(await untriedOf(content)).toMatchObject({
      untried: ['ring-check'],
      said: expect.stringContaining('procedures not yet tried on board: 1 of 1 (ring-check)\n'),
    })
  }, smallContent))

test('a trial takes the word away from the pages and from the report', () =>
  withChangedContent(async (content) => {
    content.write('trials.yaml', trial)
    const pages = await pagesOf(content)
    expect(pages.get(procedurePage)).toContain('DRAFT, NOT ISSUED')
    expect(pages.get(procedurePage)).not.toContain(words)
    expect(await untriedOf(content)).toMatchObject({
      untried: [],
      said: expect.stringContaining('procedures not yet tried on board: 0 of 1\n'),
    })
  }, smallContent))

test('a trial on another design does not count for this one', () =>
  withChangedContent(async (content) => {
    const design = content.read('designs/design-s.yaml')
    content.write('designs/design-t.yaml', design.replace('id: design-s', 'id: design-t'))
    const ship = content.read('vessels/vessel-s/vessel.yaml')
    content.write(
      'vessels/vessel-t/vessel.yaml',
      ship
        .replaceAll('vessel-s', 'vessel-t')
        .replace('design: design-s', 'design: design-t')
        .replace('serial: S-1', 'serial: S-2')
        .replaceAll(/(?<=[{ ](?:head|motor|sleeve|stack): [A-Z]-)1/gu, '2'),
    )
    content.write('trials.yaml', trial)
    expect((await untriedOf(content)).untried).toEqual(['ring-check (design-t)'])
  }, smallContent))

test('technical text, code and issued pages do not know of trials, which nobody has to sign', () =>
  withChangedContent(async (content) => {
    await sign(content, '2031-01-02')
    expect((await issue(content, '2031-01', '2031-01-10')).exitStatus).toBe(0)
    const site = (): Readonly<Record<string, string>> => textsBelow(join(content.folder, '.site', 'vessel-s'))
    expect(site()[procedurePage]).not.toContain(words)
    const stated = async (): Promise<ReturnType<typeof stateVessel>> => {
      const {content: checked, values, history} = await checkAndCompute(content.folder)
      if (!checked || !values) throw new Error('Unexpected errors in the content, expected none')
      return stateVessel(checked, values, 'vessel-s', history)
    }
    const before = await stated()
    const pages = await pagesOf(content)
    content.write('trials.yaml', trial)
    const after = await stated()
    expect(after.technicalTexts).toEqual(before.technicalTexts)
    expect(after.states).toEqual(before.states)
    expect(await pagesOf(content)).toEqual(pages)
    expect((await checkAndCompute(content.folder)).hashes.has('trials.yaml')).toBe(false)
  }, smallContent))
