import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {runSisters} from '../../src/commands/sisters.ts'
import type {SistersReport} from '../../src/commands/sisters-report.ts'
import {validatorFaults} from '../offline/page-faults.ts'
import {templates} from '../render/templates-on-disk.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {optionsOf} from './issues-for-tests.ts'

const ship = 'vessels/vessel-s/vessel.yaml'
const sister = 'vessels/vessel-t/vessel.yaml'
const pump = 'id: 1p\n'

/** A second ship with the same pump under other serial numbers, a longer stack and a larger tank. */
function addSister(content: ChangedContent): void {
  content.write(
    sister,
    content
      .read(ship)
      .replaceAll('vessel-s', 'vessel-t')
      .replace('"0123450"', '"0234560"')
      .replace('serial: S-1', 'serial: S-2')
      .replaceAll(/(?<=[{ ](?:head|motor|sleeve|stack): [A-Z]-)1/gu, '2')
      .replace('stack-length: 9.2 m', 'stack-length: 10.4 m')
      .replace('volume: 486 m³, height: 9.62 m', 'volume: 742 m³, height: 10.82 m')
      .replaceAll('tag: 1P', 'tag: 2S'),
  )
}

/** Line of words that stand in a file once. */
function lineOf(content: ChangedContent, path: string, words: string): string {
  const [before = '', ...rest] = content.read(path).split(words)
  expect(rest.length).toBe(1)
  return `${path}:${before.split('\n').length}`
}

async function compared(
  content: ChangedContent,
  vessels: readonly string[] = [],
): Promise<readonly SistersReport[]> {
  const outcome = await runSisters(optionsOf(content, {vessels, json: true}), async () => templates)
  const {designs}: {designs: readonly SistersReport[]} = JSON.parse(outcome.out)
  return designs
}

const withSister = <T>(run: (content: ChangedContent) => Promise<T>): Promise<T> =>
  withChangedContent(async (content) => {
    addSister(content)
    return run(content)
  }, smallContent)

describe('sister pumps on two ships', () => {
  test('differ in nothing where only serials, tags, tanks and stack lengths differ, which are told in one line', () =>
    withSister(async (content) => {
      const [group] = await compared(content)
      expect(group).toMatchObject({
        design: 'design-s',
        vessels: ['vessel-s', 'vessel-t'],
        pumps: 2,
        differences: [],
        stackLengths: [
          {text: '9.2 m', on: 'vessel-s: 1P'},
          {text: '10.4 m', on: 'vessel-t: 2S'},
        ],
      })
      expect(group?.compared).toBeGreaterThan(25)
    }))

  test.each([
    ['a value of the ship', 'supply.bottle-pressure', '150 bar(g)', '200 bar(g)'],
    ['a value of the tank', 'tank.vacuum-valve', '-0.035 bar(g)', '-0.040 bar(g)'],
    ['a fact as fitted', 'fact.backstop', 'fitted', 'none'],
    ['the number of spares', 'spare.hub-plates', 'quantity: 8', 'quantity: 6'],
    ['how a point is locked', 'isolation.pressure.lock', 'hasp and lock', 'lock plate'],
    ['whether it is critical', 'critical', 'critical: no', 'critical: yes'],
  ])('show %s with both figures, each with its file and line', (_what, item, old, fresh) =>
    withSister(async (content) => {
      content.replace(sister, old, fresh)
      const [group] = await compared(content)
      expect(group?.differences.map((one) => one.item)).toEqual([item])
      const [first, second] = group?.differences[0]?.sides ?? []
      const shown = (words: string): string =>
        words
          .replace(/^quantity: (\d)$/u, '$1 aboard')
          .replace('critical: ', '')
          .replace('-0', '−0')
      expect([first?.text, second?.text]).toEqual([shown(old), shown(fresh)])
      expect([first?.usual, second?.usual]).toEqual([false, false])
      expect(first?.at).toBe(lineOf(content, ship, item === 'critical' ? pump : old))
      expect(second?.at).toBe(lineOf(content, sister, item === 'critical' ? pump : fresh))
    }),
  )

  test('are the same where one quantity is written in two units', () =>
    withSister(async (content) => {
      content.replace(sister, 'bottle-volume: 50 l', 'bottle-volume: 0.05 m³')
      expect((await compared(content))[0]?.differences).toEqual([])
    }))

  test('show what only one ship has, and that a figure is not known', () =>
    withSister(async (content) => {
      content.replace(sister, /spares-aboard:\n.*\n/u, 'spares-aboard: []\n')
      content.replace(
        ship,
        'ventilator-flow: 6000 m³/h',
        'ventilator-flow: {value: not known, reason: no plate}',
      )
      const [group] = await compared(content)
      expect(group?.differences.map(({item, sides}) => [item, sides.map(({text}) => text)])).toEqual([
        ['supply.ventilator-flow', ['NOT KNOWN', '6000 m³/h']],
        ['spare.hub-plates', ['8 aboard', 'not listed']],
      ])
      expect(group?.differences[0]?.sides[0]?.reasons).toEqual([{reason: 'no plate', on: 'vessel-s: 1P'}])
    }))

  test('show a job that is for one of them alone', () =>
    withSister(async (content) => {
      content.replace('jobs/ring-service.yaml', 'purpose:', 'when: vessel = vessel-s\npurpose:')
      const [group] = await compared(content)
      expect(group?.differences.map(({item, sides}) => [item, sides.map(({text}) => text)[1]])).toEqual([
        ['interval.ring-service', 'not listed'],
      ])
    }))

  test('are explained by pump or ship, and unexplained where neither writes a reason', () =>
    withSister(async (content) => {
      const said = async (): Promise<unknown> =>
        (await compared(content)).map(({differences}) =>
          differences[0]?.sides.map(({reasons, unexplained}) => [reasons, unexplained]),
        )
      content.replace(sister, 'backstop: fitted', 'backstop: none')
      expect(await said()).toEqual([
        [
          [[], 'vessel-s: 1P'],
          [[], 'vessel-t: 2S'],
        ],
      ])
      content.write(
        sister,
        `${content.read(sister)}differences: [{item: fact.backstop, reason: exchanged at a docking}]\n`,
      )
      const explained = [{reason: 'exchanged at a docking', on: 'vessel-t: 2S'}]
      expect(await said()).toEqual([
        [
          [[], ''],
          [explained, ''],
        ],
      ])
      content.replace(
        sister,
        'facts: {backstop: none}',
        'facts: {backstop: none}\n    differences: [{item: fact.backstop, reason: motor of another size}]',
      )
      expect(await said()).toEqual([
        [
          [[], ''],
          [[{reason: 'motor of another size', on: 'vessel-t: 2S'}], ''],
        ],
      ])
    }))

  test('are those of the named ships alone', () =>
    withSister(async (content) => {
      content.replace(sister, 'backstop: fitted', 'backstop: none')
      expect((await compared(content, ['vessel-s']))[0]).toMatchObject({pumps: 1, differences: []})
      const wrong = await runSisters(optionsOf(content, {vessels: ['vessel-u']}), async () => templates)
      expect(wrong).toMatchObject({
        exitStatus: 2,
        err: 'Unexpected vessel `vessel-u`, expected `vessel-s` or `vessel-t`\n',
      })
    }))
})

test('what most pumps of the demonstration have is usual, and who differs is named with the lines', async () => {
  await withChangedContent(async (content) => {
    const outcome = await runSisters(optionsOf(content, {vessels: ['vessel-a']}), async () => templates)
    expect(outcome.exitStatus).toBe(0)
    const path = 'vessels/vessel-a/vessel.yaml'
    const coated = [...content.read(path).matchAll(/tank-surface: coated/gu)].map(
      ({index}) => content.read(path).slice(0, index).split('\n').length,
    )
    expect(coated.length).toBeGreaterThan(1)
    expect(outcome.out).toMatch(/\n {2}fact\.tank-surface\n {4}usual {3}bare-stainless \(18: vessel-a: /u)
    expect(outcome.out).toContain(
      `    differs coated (2: vessel-a: SLOP P, SLOP S)\n            ${path}:${coated.join(', ')}\n            because: The slop tanks are coated by their specification. (vessel-a: SLOP P, SLOP S)\n`,
    )
    expect(outcome.out).toMatch(
      /none \(2: vessel-a: 1P, 1S\)\n.*\n {12}because: The fixed washing machine .* \(vessel-a: 1P, 1S\)\n/u,
    )
    expect(outcome.out).toMatch(/yes \(4: .*\)\n.*\n {12}unexplained: vessel-a: 4P, 4S, SLOP P, SLOP S\n/u)
  })
})

test('one page names each side in words, with pumps, lines and reasons, and needs nothing else', () =>
  withSister(async (content) => {
    content.replace(sister, 'bottle-pressure: 150 bar(g)', 'bottle-pressure: 200 bar(g)')
    content.write(
      sister,
      `${content.read(sister)}differences: [{item: supply.bottle-pressure, reason: "bottles < of 2021"}]\n`,
    )
    await compared(content)
    const page = readFileSync(join(content.folder, '.site', 'sisters.html'), 'utf8')
    for (const words of [
      'supply.bottle-pressure<small>pressure of a full gas bottle</small>',
      '<td class="stated">150 bar(g)</td><td>1 pump<small>vessel-s: 1P</small>',
      '<td class="stated">200 bar(g)</td><td>1 pump<small>vessel-t: 2S</small>',
      '<p>bottles &lt; of 2021<small>vessel-t: 2S</small></p>',
      lineOf(content, ship, 'bottle-pressure'),
      '9.2 m (vessel-s: 1P); 10.4 m (vessel-t: 2S)',
    ])
      expect(page).toContain(words)
    expect(page).not.toMatch(/<script|src=|href=|unexplained<small/u)
    expect(await validatorFaults(page)).toEqual([])
    content.replace(sister, /differences: .*\n/u, 'differences: []\n')
    await compared(content)
    expect(readFileSync(join(content.folder, '.site', 'sisters.html'), 'utf8')).toContain(
      '<p class="lacks">unexplained<small>vessel-t: 2S</small></p>',
    )
  }))

test('content with an error is not compared', () =>
  withChangedContent(async (content) => {
    content.replace(ship, 'role: main', 'role: mian')
    const outcome = await runSisters(optionsOf(content), async () => templates)
    expect(outcome.exitStatus).toBe(1)
    expect(outcome.out).toMatch(/^Nothing to hold against each other: 1 errors/u)
  }, smallContent))
