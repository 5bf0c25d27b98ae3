import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import type {Outcome} from '../../src/commands/outcome.ts'
import {runPreview} from '../../src/commands/preview.ts'
import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import {templates} from '../render/templates-on-disk.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {issue, optionsOf, sign} from './issues-for-tests.ts'
import {otherStep, otherTorque, urgentText} from './urgent-for-tests.ts'

const friction = 'tables/friction.csv'
const procedure = 'procedures/ring-check.md'

interface Previewed {
  readonly passed: boolean
  readonly bases: readonly {readonly vessel: string; readonly pages: string; readonly values: string}[]
  readonly values: readonly {
    readonly value: string
    readonly vessel: string
    readonly positions: readonly string[]
    readonly before?: {readonly figure: string}
    readonly after?: {readonly figure: string}
    readonly pages: readonly string[]
  }[]
  readonly differences: readonly {
    readonly area: string
    readonly change: string
    readonly block: string
    readonly before: readonly string[]
    readonly after: readonly string[]
    readonly pages: readonly string[]
  }[]
  readonly pages: readonly {
    readonly page: string
    readonly change: string
    readonly lines: number
    readonly revision?: string
  }[]
}

function preview(content: ChangedContent, more: Parameters<typeof optionsOf>[1] = {}): Promise<Outcome> {
  return runPreview(optionsOf(content, {vessels: [], ...more}), async () => templates)
}

async function previewed(content: ChangedContent, against?: string): Promise<Previewed> {
  const outcome = await preview(content, {json: true, ...(against === undefined ? {} : {against})})
  return JSON.parse(outcome.out)
}

const pageOf = (content: ChangedContent): string =>
  readFileSync(join(content.folder, '.site', 'impact.html'), 'utf8')

/** A second ship with the same pump under another name. */
function addSister(content: ChangedContent): void {
  const ship = content.read('vessels/vessel-s/vessel.yaml')
  content.write(
    'vessels/vessel-t/vessel.yaml',
    ship
      .replaceAll('vessel-s', 'vessel-t')
      .replace('serial: S-1', 'serial: S-2')
      .replaceAll(/(?<=[{ ](?:head|motor|sleeve|stack): [A-Z]-)1/gu, '2'),
  )
}

/** Texts of all pages, straight from the stages. */
async function textsOf(folder: string): Promise<ReadonlyMap<string, string>> {
  const {content, values, history} = await checkAndCompute(folder)
  if (!content || !values) throw new Error('Unexpected errors in the content, expected none')
  return new Map(
    [...content.vessels.keys()].flatMap((id) => [
      ...stateVessel(content, values, id, history).technicalTexts,
    ]),
  )
}

describe('a friction value changed from 0.12 to 0.14', () => {
  const both = (run: (content: ChangedContent, old: ChangedContent) => Promise<void>): Promise<void> =>
    withChangedContent(async (old) => {
      addSister(old)
      old.replace(friction, '0.10,0.10', '0.12,0.12')
      await withChangedContent(async (content) => {
        content.replace(friction, '0.12,0.12', '0.14,0.14')
        await run(content, old)
      }, old.folder)
    }, smallContent)

  test('lists every page, on both vessels, whose text moves, and nothing else', () =>
    both(async (content, old) => {
      const {pages, values} = await previewed(content, old.folder)
      const [before, after] = [await textsOf(old.folder), await textsOf(content.folder)]
      const moved = [...after].filter(([page, text]) => before.get(page) !== text).map(([page]) => page)
      expect(moved.length).toBeGreaterThan(3)
      expect(pages.map(({page}) => page)).toEqual(moved.sort())
      expect(pages.every(({change}) => change === 'changed')).toBe(true)
      expect([...new Set(values.map(({vessel}) => vessel))]).toEqual(['vessel-s', 'vessel-t'])
    }))

  test('lists every value that moves, old and new, with the pumps and the pages that show it', () =>
    both(async (content, old) => {
      const {values, differences} = await previewed(content, old.folder)
      const figures = async (folder: string): Promise<ReadonlyMap<string, string>> => {
        const {values: computed} = await checkAndCompute(folder)
        return new Map(
          [...(computed?.vessels ?? [])].flatMap(([vessel, positions]) =>
            [...positions].flatMap(([position, own]) =>
              [...own.values()].map(({id, result}): [string, string] => [
                `${vessel} ${position} ${id}`,
                result.kind === 'known'
                  ? [`${result.printed.figure} ${result.printed.unit}`.trim(), ...(result.more ?? [])].join(
                      ' · ',
                    )
                  : 'NOT KNOWN',
              ]),
            ),
          ),
        )
      }
      const [was, is] = [await figures(old.folder), await figures(content.folder)]
      const wanted = [...is].flatMap(([key, figure]) =>
        was.get(key) === figure ? [] : [`${key}: ${was.get(key)} → ${figure}`],
      )
      const told = values.flatMap(({vessel, positions, value, before, after}) =>
        positions.map((position) => `${vessel} ${position} ${value}: ${before?.figure} → ${after?.figure}`),
      )
      expect(wanted.length).toBeGreaterThan(5)
      expect([...told].sort()).toEqual(wanted.sort())
      expect(values.find(({value}) => value.endsWith('.torque'))?.pages).toContain(
        'vessel-s/design-s/torques',
      )
      expect(differences).toEqual([])
    }))

  test('leaves no line untold: each stands in a value or in a difference', () =>
    both(async (content, old) => {
      const {values, differences, pages} = await previewed(content, old.folder)
      const told = new Set([...values, ...differences].flatMap((one) => one.pages))
      expect([...told].sort()).toEqual(pages.map(({page}) => page))
    }))

  test('is told in words and on a page that needs no other file and no script', () =>
    both(async (content, old) => {
      const {out, exitStatus} = await preview(content, {against: old.folder})
      expect(exitStatus).toBe(0)
      expect(out).toContain('vessel-s: against the earlier content\n')
      expect(out).toMatch(/\n {2}\S+\.torque: \d+ N·m → \d+ N·m, /u)
      const page = pageOf(content)
      expect(page).not.toMatch(/<script|<link|\ssrc=|url\(|https?:/u)
      for (const palette of ['pc', 'day', 'dusk', 'night']) expect(page).toContain(`id="palette-${palette}"`)
      expect(page).not.toContain('data-palette')
      const boxes = page.match(/<input type="checkbox">/gu) ?? []
      const {values} = await previewed(content, old.folder)
      expect(boxes.length).toBe(values.length)
      expect(page).toContain(`of ${values.length} differences`)
      for (const {value, after} of values) {
        expect(page).toContain(`<b>${value}</b>`)
        expect(page.replace(/<\/?(?:ins|del)>/gu, '')).toContain(after?.figure)
      }
    }))
})

describe('against the newest issue', () => {
  const issued = (run: (content: ChangedContent) => Promise<void>): Promise<void> =>
    withChangedContent(async (content) => {
      await sign(content, '2031-01-02')
      const {exitStatus, err} = await issue(content, '2031-01', '2031-01-10')
      if (exitStatus !== 0) throw new Error(err)
      await run(content)
    }, smallContent)

  test('an untouched content moves nothing and says so', () =>
    issued(async (content) => {
      const {values, differences, pages, bases} = await previewed(content)
      expect({values, differences, pages}).toEqual({values: [], differences: [], pages: []})
      expect(bases).toMatchObject([{vessel: 'vessel-s', pages: 'issue', values: 'issue'}])
      expect(pageOf(content)).toContain('Nothing moves')
    }))

  test('values are taken from the texts of the issue', () =>
    issued(async (content) => {
      content.replace(friction, '0.10,0.10', '0.14,0.14')
      const {values, differences, pages} = await previewed(content)
      expect(values.map(({value}) => value.replace(/^.*\./u, '')).sort()).toEqual(
        ['passes', 'preload', 'torque'].sort(),
      )
      for (const {before, after} of values) expect(before?.figure).not.toBe(after?.figure)
      expect(differences).toEqual([])
      expect(pages.every(({revision}) => revision === '1')).toBe(true)
    }))

  test('a step that came is one difference, and those behind it are renumbered', () =>
    issued(async (content) => {
      content.replace(
        procedure,
        /^1\. :step\{/mu,
        (mark) => `1. :step{#look-first} Look at the ring.\n\n${mark}`,
      )
      const {differences, pages} = await previewed(content)
      expect(pages.map(({page}) => page)).toEqual(['vessel-s/1p/ring-check'])
      expect(differences.map(({area, change, block}) => ({area, change, block}))).toEqual([
        {area: 'steps', change: 'added', block: 'ring-check--look-first'},
        {area: 'numbers', change: 'renumbered', block: 'numbers'},
      ])
      expect(differences[0]?.after).toContain('Look at the ring.')
    }))

  test('a touched caution is listed once with every page that carries it', () =>
    issued(async (content) => {
      content.replace('cautions/sharp-edges.yaml', /^consequence: .*$/mu, 'consequence: Cuts of hands.')
      const {differences} = await previewed(content)
      expect(differences).toHaveLength(1)
      expect(differences[0]).toMatchObject({area: 'cautions', change: 'changed', after: ['Cuts of hands.']})
      expect(differences[0]?.pages).toContain('vessel-s/cautions')
    }))

  test('pages that came or went have a box each', () =>
    issued(async (content) => {
      content.write(
        'procedures/ring-look.md',
        content.read(procedure).replace('id: ring-check', 'id: ring-look'),
      )
      content.remove(procedure)
      content.replace('jobs/ring-service.yaml', 'ring-check', 'ring-look')
      const {pages} = await previewed(content)
      expect(
        pages.filter(({change}) => change !== 'changed').map(({page, change}) => `${page} ${change}`),
      ).toEqual(['vessel-s/1p/ring-check removed', 'vessel-s/1p/ring-look added'])
      expect(pageOf(content)).toContain('Pages that came or went')
    }))

  test('a text of the issue that is lost is told, and nothing is previewed', () =>
    issued(async (content) => {
      const {pages} = JSON.parse(content.read('issues/vessel-s/2031-01.json'))
      content.remove(`issues/vessel-s/texts/${pages['vessel-s/1p/ring-check'].hash}.txt`)
      const {exitStatus, err, out} = await preview(content)
      expect(exitStatus).toBe(1)
      expect(out).toContain('Nothing to preview')
      expect(err).toContain('without the text of page `vessel-s/1p/ring-check` in revision 1')
    }))
})

test('an urgent revision is shown like any change: its figures, its step, and itself once for all its pages', () =>
  withChangedContent(async (content) => {
    await sign(content, '2031-01-02')
    await issue(content, '2031-01', '2031-01-10')
    content.write('urgent/t-07.yaml', urgentText({...otherTorque, ...otherStep}))
    const {values, differences, pages} = await previewed(content)
    expect(values.map(({value, after}) => `${value} ${after?.figure}`)).toEqual([
      'hub-bolts.passes 24 · 48 N·m',
      'hub-bolts.torque 48 N·m',
    ])
    const areas = differences.map(({area, change, block}) => `${area} ${change} ${block}`)
    expect(areas).toEqual(
      expect.arrayContaining(['steps changed ring-check--tighten-hub-bolts', 'cautions added urgent-t-07']),
    )
    expect(differences.every(({area}) => area === 'steps' || area === 'cautions')).toBe(true)
    const above = differences.find(({block, pages: own}) => block === 'urgent-t-07' && own.length > 1)
    expect(above?.after).toEqual(
      expect.arrayContaining(['valid to 2031-05-31', 'Stand clear of the wrench.']),
    )
    expect(pages.map(({page}) => page)).toContain('vessel-s/1p/ring-check')
    expect(pageOf(content)).toContain('Hub bolts of a bad batch')
  }, smallContent))

test('a vessel that was never issued, with no earlier content, is said to be new as a whole', () =>
  withChangedContent(async (content) => {
    const {out} = await preview(content)
    expect(out).toMatch(
      /^vessel-s: never issued and no earlier content named; all \d+ pages would be new\n0 values on 0 pumps moved\n0 pages moved\n/u,
    )
  }, smallContent))

test('a vessel that is not there is refused with the nearest one', () =>
  withChangedContent(async (content) => {
    const {exitStatus, err} = await preview(content, {vessels: ['vessel-z']})
    expect(exitStatus).toBe(2)
    expect(err).toBe('Unexpected vessel `vessel-z`, expected `vessel-s`\n')
  }, smallContent))
