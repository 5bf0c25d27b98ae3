import {rmSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {compileProgram, type Program} from './program-for-tests.ts'

let program: Program

beforeAll(() => {
  program = compileProgram()
}, 60_000)

afterAll(() => rmSync(program.folder, {recursive: true, force: true}))

describe('the command line', () => {
  test('explains itself when asked, on the way of results', () => {
    const {status, out, err} = program.run(['--help'])
    expect({status, err}).toEqual({status: 0, err: ''})
    for (const word of [
      'check',
      'build',
      'calculate',
      '--content',
      '--out',
      '--vessel',
      '--as-of',
      '--json',
      'Exit status',
    ])
      expect(out).toContain(word)
    expect(program.run(['build', '--help'])).toMatchObject({status: 0, out})
  })

  test('explains itself as a fault of use when no command is given', () => {
    expect(program.run([])).toMatchObject({
      status: 2,
      out: '',
      err: expect.stringContaining('sheetanchor COMMAND'),
    })
  })

  test.each([
    [
      ['chek'],
      'Unexpected command `chek`, expected `check` or another of check, build, preview, sisters, approve, issue, calculate\n',
    ],
    [['check', '--vesel', 'vessel-a'], "Unknown option '--vesel'"],
    [['check', 'stray'], "Unexpected argument 'stray'"],
    [['build', '--vessel', 'vessel-z'], 'Unexpected vessel `vessel-z`, expected `vessel-a`'],
    [['calculate', 'tightening-torq'], 'expected `tightening-torque`'],
  ])('used as %j ends with 2 and says what was expected', (words, said) => {
    const {status, out, err} = program.run(words)
    expect({status, out}).toEqual({status: 2, out: ''})
    expect(err).toContain(said)
  })

  test('tells a fault of the machine from a fault of the content, with 3', () => {
    writeFileSync(join(program.folder, 'plain'), '')
    const {status, out, err} = program.run(['check', '--out', 'plain'])
    expect({status, out}).toEqual({status: 3, out: ''})
    expect(err).toMatch(/^Unexpected fault of the machine: ENOTDIR.*plain.*Nothing was replaced\n$/u)
  })

  test('checks the demonstration with 0, counts on one way and messages on the other', () => {
    const {status, out, err} = program.run(['check'])
    const [first, ...report] = out.split('\n')
    expect({status, first: first?.replace(/\d+ notes/u, 'N notes')}).toEqual({
      status: 0,
      first: 'Checked content: 0 errors, 0 warnings, N notes',
    })
    expect(report.map((line) => line.replace(/[\d.:].*/u, '').trim())).toEqual([
      '',
      'signal words for each',
      'failures of fitted parts',
      'exceptions from rules of language',
      'sources',
      'procedures not yet tried on board',
      'values on common practice',
      'sources from memory alone',
      'superseded sources',
      '',
    ])
    expect(err, 'no progress in a pipe').toMatch(/^content\/\S+:\d+:\d+ information Unexpected /u)
  })

  test('says the same to machines as one object, and nothing beside it', () => {
    const {status, out, err} = program.run(['check', '--json'])
    expect({status, err}).toEqual({status: 0, err: ''})
    const said: unknown = JSON.parse(out)
    expect(said).toMatchObject({passed: true})
    expect(said).toHaveProperty(['messages', 0], {
      file: expect.any(String),
      line: expect.any(Number),
      column: expect.any(Number),
      rule: 'no-uncomputable-value',
      severity: 'information',
      reason: expect.stringMatching(/^Unexpected /u),
      mend: expect.any(String),
    })
  })
})
