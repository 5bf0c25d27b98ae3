import {join} from 'node:path'
import {beforeAll, describe, expect, test} from 'vitest'
import {answerSheet, type CheckData} from '../../src/browser-contract/check-data.ts'
import {checkSymbol} from '../../src/browser-contract/check-symbol.ts'
import {runBuild} from '../../src/commands/build.ts'
import type {Ledger} from '../../src/issues/ledger.ts'
import {technicalHash} from '../../src/technical-text/technical-hash.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {declare, issue, ledgerOf, optionsOf, program, sign} from './issues-for-tests.ts'

const friction = 'tables/friction.csv'
const procedure = 'procedures/ring-check.md'
const torques = 'vessel-s/design-s/torques'
const page = 'vessel-s/1p/ring-check'

/** Check data of each issue as its folder held it, and its ledger. */
let data: readonly CheckData[]
let ledgers: readonly Ledger[]
/** Text of the newest file. */
let file: string

function dataIn(content: ChangedContent): CheckData {
  const text = content.read(join('.site', 'vessel-s', 'check-data.js'))
  return JSON.parse(/checkData=(.*);\n$/u.exec(text)?.[1] ?? '')
}

function codeIn(index: number, id: string): string {
  return ledgers[index]?.pages[id]?.code ?? 'none'
}

function newest(): CheckData {
  const last = data.at(-1)
  if (!last) throw new Error('Unexpected gap, expected check data')
  return last
}

beforeAll(async () => {
  await withChangedContent(async (content) => {
    const found: CheckData[] = []
    const make = async (number: string): Promise<void> => {
      await sign(content, `${number}-02`)
      const outcome = await issue(content, number, `${number}-10`)
      if (outcome.exitStatus !== 0) throw new Error(outcome.err)
      found.push(dataIn(content))
    }
    await make('2031-01')
    content.replace(friction, '0.10,0.10', '0.12,0.12')
    declare(content, friction, 'class: technical, reason: another paste')
    await make('2031-02')
    content.replace(procedure, 'lock it.', 'lock it up.')
    declare(content, procedure, 'class: editorial, reason: plainer, reviewed-by: safety-reviewer')
    await make('2031-03')
    content.replace(friction, '0.12,0.12', '0.14,0.14')
    declare(content, friction, 'class: technical, reason: a third paste')
    await make('2031-04')
    content.write(
      'procedures/ring-look.md',
      content.read(procedure).replace('id: ring-check', 'id: ring-look'),
    )
    content.remove(procedure)
    content.replace('jobs/ring-service.yaml', 'ring-check', 'ring-look')
    const changes = ['procedures/ring-look.md', 'jobs/ring-service.yaml'].map(
      (path) =>
        `  - {file: ${path}, hash: ${technicalHash(content.read(path))}, class: technical, reason: renamed}\n`,
    )
    content.write(
      'changes.yaml',
      `changes:\n${changes.join('')}withdrawn:\n  - {page: ring-check, reason: renamed, replaced-by: ring-look}\n`,
    )
    await make('2031-05')
    file = content.read(join('.site', 'vessel-s', 'check-data.js'))
    ledgers = ['2031-01', '2031-02', '2031-03', '2031-04', '2031-05'].map((one) => ledgerOf(content, one))
    data = found
    await runBuild(optionsOf(content), async () => program)
    expect(content.read(join('.site', 'vessel-s', 'check-data.js'))).toBe(file)
  }, smallContent)
}, 120_000)

describe('the check data of a folder', () => {
  test('names its last three issues, this one last', () => {
    expect(newest().issues).toEqual([
      {number: '2031-03', date: '2031-03-10'},
      {number: '2031-04', date: '2031-04-10'},
      {number: '2031-05', date: '2031-05-10'},
    ])
    expect(data[0]?.issues).toEqual([{number: '2031-01', date: '2031-01-10'}])
  })

  test('holds every page of the ledger, and no value beside a current revision', () => {
    expect(Object.keys(newest().pages).map((id) => `vessel-s/${id}`)).toEqual(
      Object.keys(ledgers[4]?.pages ?? {}),
    )
    for (const {revisions} of Object.values(newest().pages)) expect(revisions[0]?.values).toBeUndefined()
  })

  test('is small: a page that did not move takes less than a hundred letters', () => {
    const still = Object.entries(newest().pages).filter(([, {revisions}]) => revisions.length === 1)
    expect(still.length).toBeGreaterThan(8)
    for (const [id, own] of still)
      if (!own.withdrawn) expect(JSON.stringify({[id]: own}).length).toBeLessThan(100 + id.length)
  })
})

describe('a sheet', () => {
  const base = {number: '2031-05', date: '2031-05-10'}

  test('of the current revision is current in the issue of this folder, as it was typed', () => {
    const code = codeIn(4, torques)
    const answer = {kind: 'current', code, page: torques, revision: '3', base}
    expect(answerSheet(newest(), code)).toEqual(answer)
    expect(answerSheet(newest(), code.toLowerCase().replaceAll('-', ' '))).toEqual(answer)
  })

  test('of the revision before is superseded, and the values that differ are told, old and new', () => {
    const answer = answerSheet(newest(), codeIn(2, torques))
    expect(answer).toMatchObject({
      kind: 'superseded',
      page: torques,
      revision: '2',
      current: '3',
      base,
      others: 0,
    })
    expect(answer.kind === 'superseded' ? answer.values : []).toContainEqual({
      value: 'hub-bolts.torque',
      sheet: '70 N·m',
      now: '78 N·m',
    })
  })

  test('names the pump in the tag on its plate', () => {
    const position = 'vessel-s/1p/values'
    expect(answerSheet(newest(), codeIn(4, position))).toMatchObject({kind: 'current', tag: '1P'})
  })

  test('with changed wording alone keeps its code and is current under its letter', () => {
    const [, , third] = data
    if (!third) throw new Error('Unexpected gap, expected three issues')
    expect(codeIn(1, page)).toBe(codeIn(2, page))
    expect(answerSheet(third, codeIn(1, page))).toMatchObject({kind: 'current', revision: '2a'})
  })

  test('of a page that is gone is withdrawn, with why and what stands in its place', () => {
    expect(answerSheet(newest(), codeIn(3, page))).toMatchObject({
      kind: 'withdrawn',
      page,
      tag: '1P',
      date: '2031-05-10',
      reason: 'renamed',
      replacedBy: 'vessel-s/1p/ring-look',
      base,
    })
  })

  test('of four issues ago is not in the last three issues of this folder', () => {
    expect(codeIn(0, torques)).not.toBe(codeIn(1, torques))
    expect(answerSheet(newest(), codeIn(0, torques))).toEqual({
      kind: 'not-found',
      code: codeIn(0, torques),
      base,
      issues: 3,
    })
  })

  test('of a newer issue than the folder is not found in it either', () => {
    const [first] = data
    if (!first) throw new Error('Unexpected gap, expected an issue')
    expect(answerSheet(first, codeIn(4, torques)).kind).toBe('not-found')
  })

  test.each(['', '7K2M', '7K2M-9QTR-44', '7K2M-9QTU-4'])(
    'with `%s` for its code is not well formed',
    (typed) => {
      expect(answerSheet(newest(), typed)).toEqual({kind: 'not-well-formed'})
    },
  )

  test('with one wrong letter is not well formed', () => {
    const code = codeIn(4, torques)
    const wrong = `${code.startsWith('2') ? '3' : '2'}${code.slice(1)}`
    expect(answerSheet(newest(), wrong)).toEqual({kind: 'not-well-formed'})
  })

  test('cannot be judged by a folder that was never issued', () => {
    const empty: CheckData = {version: 1, vessel: 'vessel-s', issues: [], tags: {}, pages: {}}
    const code = `2222-2222-${checkSymbol('22222222')}`
    expect(answerSheet(empty, code)).toEqual({kind: 'no-issue', code})
  })
})

test('a lost text of an earlier issue stops the build and is named', () =>
  withChangedContent(async (content) => {
    await sign(content, '2031-01-02')
    await issue(content, '2031-01', '2031-01-10')
    content.replace(friction, '0.10,0.10', '0.12,0.12')
    declare(content, friction, 'class: technical, reason: another paste')
    await sign(content, '2031-02-02')
    await issue(content, '2031-02', '2031-02-10')
    const hash = ledgerOf(content, '2031-01').pages[torques]?.hash ?? ''
    content.remove(`issues/vessel-s/texts/${hash}.txt`)
    const {exitStatus, err} = await runBuild(optionsOf(content), async () => program)
    expect(exitStatus).toBe(1)
    expect(err).toContain(`issues/vessel-s/texts/${hash}.txt`)
    expect(err).toContain('no-lost-text')
  }, smallContent))
