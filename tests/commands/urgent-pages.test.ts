import {describe, expect, test} from 'vitest'
import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import type {Page} from '../../src/handbook-model/pages.ts'
import {deadLinks} from '../offline/page-faults.ts'
import {linksAndIds, visibleText} from '../offline/visible-text.ts'
import {type ChangedContent, errorsAfter, smallContent, withChangedContent} from './changed-content.ts'
import {renderedContent} from './rendered-content.ts'
import {otherStep, otherTorque, urgentText} from './urgent-for-tests.ts'

const vessel = 'vessels/vessel-s/vessel.yaml'
const procedure = 'procedures/ring-check.md'

/** A second pump of the same design, without a backstop, and a procedure of the whole ship. */
function addPump(content: ChangedContent, backstop = 'none'): void {
  content.replace(
    vessel,
    /^ {2}- \{id: 1p, tag: 1P.*$/mu,
    (line) =>
      `${line}\n${line.replace('id: 1p, tag: 1P', 'id: 1s, tag: 1S').replace('from-side: -1, to-side: 1', 'from-side: 0, to-side: 1')}`,
  )
  content.replace(vessel, /^ {2}- id: 1p\n[\s\S]*?facts: .*\n/mu, (pump) =>
    [
      pump,
      pump
        .replace('id: 1p', 'id: 1s')
        .replace('tag: 1P', 'tag: 1S')
        .replace('tank: 1p', 'tank: 1s')
        .replace('serial: S-1', 'serial: S-2')
        .replaceAll(/: ([HMCT])-1/gu, ': $1-2')
        .replace('backstop: fitted', `backstop: ${backstop}`),
    ].join(''),
  )
}

/** Pages of the small vessel by path, as models and as words. */
async function pagesOf(content: ChangedContent): Promise<{
  readonly models: ReadonlyMap<string, Page>
  readonly words: (path: string) => string
  readonly texts: ReadonlyMap<string, string>
}> {
  const {content: checked, values, history, files} = await checkAndCompute(content.folder)
  if (!checked || !values)
    throw new Error(
      [...files.values()]
        .flatMap((file) => file.messages)
        .map((one) => one.reason)
        .join('; '),
    )
  const {pages} = stateVessel(checked, values, 'vessel-s', history)
  const {vessels} = await renderedContent(content.folder)
  const texts = new Map(
    (vessels.get('vessel-s') ?? []).map(({path, bytes}) => [path, new TextDecoder().decode(bytes)]),
  )
  return {
    models: new Map(pages.pages.map((page) => [page.head.path, page])),
    words: (path) => visibleText(texts.get(path) ?? ''),
    texts,
  }
}

function carrying(models: ReadonlyMap<string, Page>): readonly string[] {
  return [...models].flatMap(([path, {head}]) => (head.urgent ? [path] : []))
}

describe('an urgent revision of some pumps of a design', () => {
  const of = (run: (pages: Awaited<ReturnType<typeof pagesOf>>) => void): Promise<void> =>
    withChangedContent(async (content) => {
      addPump(content)
      content.write('urgent/t-07.yaml', urgentText({when: 'backstop = fitted', ...otherTorque, ...otherStep}))
      run(await pagesOf(content))
    }, smallContent)

  test('stands on the pages of pumps whose facts concern them, and on shared pages of its figures', () =>
    of(({models}) =>
      expect(carrying(models)).toEqual([
        'designs/design-s/torques.html',
        'designs/design-s/passes.html',
        'p/1p/index.html',
        'p/1p/ring-check.html',
        'p/1p/job-ring-service.html',
        'p/1p/values.html',
        'values.html',
      ]),
    ))

  test('names its pumps on the shared pages, whose figures stay those of the others', () =>
    of(({models, words}) => {
      for (const path of ['designs/design-s/torques.html', 'values.html']) {
        expect(models.get(path)?.head.urgent?.[0]?.pumps, path).toBe('On this page it counts for pump 1P')
        expect(words(path), path).toContain('61 N·m')
      }
      expect(models.get('p/1p/index.html')?.head.urgent?.[0]?.pumps).toBe('')
    }))

  test('replaces figures and steps on its own pumps alone, each explained where it belongs', () =>
    of(({words, texts}) => {
      expect(words('p/1p/ring-check.html')).toContain('48 N·m')
      expect(words('p/1p/ring-check.html')).not.toContain('61 N·m')
      expect(words('p/1s/ring-check.html')).toContain('61 N·m')
      expect(words('p/1s/ring-check.html')).not.toMatch(/48 N·m|T-07|short wrench/u)
      expect(words('p/1p/values.html')).toMatch(
        /tightening torque of the hub bolts 48 N·m .*House rules of the office/u,
      )
      const read = new Map([...texts].map(([path, text]) => [path, linksAndIds(text)]))
      const dead = [...read]
        .filter(([path]) => path.endsWith('.html'))
        .flatMap(([path, {links}]) => deadLinks(path, links, (target) => read.get(target)?.ids))
      expect(dead).toEqual([])
    }))

  test('names the files behind its pages, so that nobody issues them unsigned', () =>
    of(({models}) => {
      for (const path of [...carrying(models), 'index.html'])
        expect(models.get(path)?.head.madeFrom, path).toContain('urgent/t-07.yaml')
      expect(models.get('p/1s/ring-check.html')?.head.madeFrom).not.toContain('urgent/t-07.yaml')
    }))
})

test('one that names positions stands on no other pump', () =>
  withChangedContent(async (content) => {
    addPump(content)
    content.write('urgent/t-07.yaml', urgentText({positions: '[1s]'}))
    expect(carrying((await pagesOf(content)).models)).toEqual([
      'p/1s/index.html',
      'p/1s/ring-check.html',
      'p/1s/job-ring-service.html',
    ])
  }, smallContent))

test('one of a figure alone stands above every page that shows the figure', () =>
  withChangedContent(async (content) => {
    content.write(
      'procedures/ring-look.md',
      content
        .read(procedure)
        .replace('id: ring-check', 'id: ring-look')
        .replace('   ::value{ref=hub-bolts.torque}\n\n', '')
        .replace(/ {3}::figure\{.*\}\n\n/u, ''),
    )
    content.replace('jobs/ring-service.yaml', '[ring-check]', '[ring-check, ring-look]')
    content.write('urgent/t-07.yaml', urgentText({procedures: '[]', ...otherTorque}))
    const paths = carrying((await pagesOf(content)).models)
    expect(paths).toContain('p/1p/ring-check.html')
    expect(paths).not.toContain('p/1p/ring-look.html')
    content.write('urgent/t-07.yaml', urgentText({procedures: '[]'}))
    expect(carrying((await pagesOf(content)).models)).toEqual(
      expect.arrayContaining(['p/1p/ring-check.html', 'p/1p/ring-look.html']),
    )
  }, smallContent))

test('where nobody knows whether a pump is concerned, the notice stands under its condition with a tick', () =>
  withChangedContent(async (content) => {
    content.replace(
      vessel,
      'facts: {backstop: fitted}',
      'facts: {backstop: {value: not known, reason: no record}}',
    )
    content.replace(procedure, ' when="backstop = fitted"', '')
    content.write('urgent/t-07.yaml', urgentText({when: 'backstop = fitted'}))
    const {models, texts} = await pagesOf(content)
    const condition = 'only if backstop of the shaft is fitted (turns one way only)'
    expect(models.get('p/1p/ring-check.html')?.head.urgent?.[0]?.variant).toBe(condition)
    expect(texts.get('p/1p/ring-check.html')).toContain(
      `<p class="variant"><span class="tick"></span> ${condition}</p>`,
    )
  }, smallContent))

test('one of a procedure of the whole ship replaces a step only where all pumps are concerned', () =>
  withChangedContent(async (content) => {
    addPump(content)
    content.write(
      'procedures/tell-crew.md',
      content
        .read(procedure)
        .replace('id: ring-check', 'id: tell-crew')
        .replace('scope: position', 'scope: vessel')
        .replace(/tools:\n[\s\S]*?records/u, 'tools: []\nparts: []\nrecords')
        .replace(
          /## Isolate the pump[\s\S]*/u,
          '## Tell\n\n::section{#tell}\n\n1. :step{#tell-bridge} Tell the bridge.\n',
        ),
    )
    const said = async (positions: string): Promise<string> => {
      content.write(
        'urgent/t-07.yaml',
        urgentText({
          procedures: '[]',
          positions,
          steps: '[{procedure: tell-crew, step: tell-bridge, instead: Tell the master.}]',
        }),
      )
      return (await pagesOf(content)).words('ship/tell-crew.html')
    }
    const some = await said('[1p]')
    expect(some).toContain('On this page it counts for pump 1P')
    expect(some).toContain('Tell the bridge.')
    const all = await said('[]')
    expect(all).not.toContain('On this page it counts for')
    expect(all).not.toContain('Tell the bridge.')
    expect(all).toMatch(
      /In place of this step, by urgent revision T-07, valid to 2031-05-31 Tell the master\./u,
    )
  }, smallContent))

test('several stand above a page, the gravest word first', () =>
  withChangedContent(async (content) => {
    content.write(
      'urgent/t-07.yaml',
      urgentText({word: 'NOTICE', 'worst-harm': 'damage', likelihood: 'could'}),
    )
    content.write('urgent/t-08.yaml', urgentText({number: 'T-08'}))
    const {models} = await pagesOf(content)
    const page = models.get('p/1p/ring-check.html')
    expect(page?.head.urgent?.map(({number}) => number)).toEqual(['T-08', 'T-07'])
  }, smallContent))

describe('a file of an urgent revision', () => {
  test.each([
    ['number', 'number: T-7', '1:9 error Unexpected number `T-7`, expected one like `T-07` no-bad-id'],
    [
      'valid-to',
      'valid-to: 2031-02-30',
      'error Unexpected date `2031-02-30`, expected a day like `2031-02-14` no-bad-date',
    ],
    [
      'word',
      'word: ALARM',
      'error Unexpected `ALARM`, expected one of `DANGER`, `WARNING`, `CAUTION`, `NOTICE` no-wrong-shape',
    ],
    [
      'valid-from',
      'valid-form: 2031-02-01',
      'error Unexpected key `valid-form`, expected a key such as `valid-from` no-unknown-key',
    ],
    ['when', 'when: backstop == fitted', 'no-bad-condition'],
  ])('whose `%s` is wrong is told at its place', async (key, line, said) => {
    const {errors} = await errorsAfter((content) => {
      const text = urgentText({when: 'backstop = fitted'})
      content.write('urgent/t-07.yaml', text.replace(new RegExp(`^${key}: .*$`, 'mu'), line))
    }, smallContent)
    expect(errors.join('\n')).toContain(said)
  })

  test('without its last day is refused', async () => {
    const {errors} = await errorsAfter(
      (content) => content.write('urgent/t-07.yaml', urgentText().replace(/^valid-to: .*\n/mu, '')),
      smallContent,
    )
    expect(errors.join('\n')).toContain('Unexpected map without `valid-to`, expected `valid-to:`')
  })

  test('under another name than its number is refused', async () => {
    const {errors} = await errorsAfter(
      (content) => content.write('urgent/bolts.yaml', urgentText()),
      smallContent,
    )
    expect(errors).toEqual([
      expect.stringContaining(
        'Unexpected id `t-07` in this file, expected the file to be `urgent/t-07.yaml`',
      ),
    ])
  })
})
