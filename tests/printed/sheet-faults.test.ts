import {describe, expect, test} from 'vitest'
import type {PrintedSheet, PrintedWord} from './printed-sheets.ts'
import {sheetFindings} from './sheet-faults.ts'
import {readTaskPage} from './task-page.ts'

const state = 'DRAFT, NOT ISSUED'

function htmlOf(words: string, code: string): string {
  return `<!doctype html><title>page</title>
<dl class="who"><div><dt>Serial number</dt><dd>A-2007</dd></div></dl>
<table class="task"><thead class="running"><tr><td><b class="running-tag">4S</b> <span>Vessel</span> <span>Seals</span> <span>v/4s/seals</span> <span>${words}</span> <span>sheet ____ of ____</span></td></tr></thead>
<tbody class="unit"><tr><td><h2>Before you start</h2></td></tr></tbody>
<tbody class="unit"><tr><td><div class="step" id="seals--lift">
<p class="caution-word"><svg><title>sign</title></svg><span class="word">DANGER 1</span> <span class="caution-title">Suspended load</span></p>
<p class="recalls">Section cautions: WARNING 2</p>
<p class="number">7</p><p class="instruction">Lift the <a href="#x">cover</a>.</p></div></td></tr>
<tr><td><p class="step-again">step 7</p><p>not above 0.30 mm</p></td></tr></tbody></table>
<dl><div><dt>Check code</dt><dd class="code">${code}</dd></div></dl><footer class="foot"><p>Stricter rule wins.</p></footer>`
}

const page = readTaskPage(htmlOf(state, 'none'))
const foot = 'stopped at step time name Stricter rule wins.'
const before = ['Before you start']
const guarded = ['DANGER 1 Suspended load', 'Section cautions: WARNING 2', '7 Lift the cover.']
const rest = ['not above 0.30 mm']

/** A sheet whose lines stand 20 points under one another, the foot at 780. */
function sheetOf(...lines: readonly string[]): PrintedSheet {
  const words = lines.flatMap((line, row) =>
    line.split(' ').map((text): PrintedWord => {
      const top = line === foot ? 780 : 60 + 20 * row
      return {text, top, bottom: top + 10}
    }),
  )
  return {words}
}

function headOf(count: string, words = state): string {
  return `4S Vessel · serial A-2007 Seals v/4s/seals ${count} ${words}`
}

const tableHead = `4S Vessel Seals v/4s/seals ${state} sheet ____ of ____`
const [first, second] = [headOf('Sheet 1 of 2'), headOf('Sheet 2 of 2')]
const sound = [sheetOf(first, ...before, foot), sheetOf(second, ...guarded, ...rest, foot)]

function faultsOf(sheets: readonly PrintedSheet[], scripts = true): readonly string[] {
  return sheetFindings(page, sheets, scripts).faults
}

describe('sheets held against their page', () => {
  test('pass when laid out by the script and when broken by the browser', () => {
    expect(sheetFindings(page, sound, true)).toEqual({faults: [], tall: [], goOn: []})
    const broken = [
      sheetOf('4S Vessel A-2007', tableHead, ...before),
      sheetOf(tableHead, ...guarded, ...rest),
    ]
    expect(sheetFindings(page, broken, false)).toEqual({faults: [], tall: [], goOn: []})
  })

  test('show a step parted from its cautions', () => {
    const sheets = [
      sheetOf(first, ...before, guarded[0] ?? '', foot),
      sheetOf(second, ...guarded.slice(1), ...rest, ...Array(20).fill('and so on'), foot),
    ]
    expect(faultsOf(sheets)).toContain('seals--lift: parted, on sheets 1 and 2')
  })

  test('show a step whose further part goes over although there is room', () => {
    const sheets = [
      sheetOf(first, ...before, ...Array(20).fill('and so on'), ...guarded, foot),
      sheetOf(second, ...rest, foot),
    ]
    expect(sheetFindings(page, sheets, true)).toEqual({
      faults: ['seals--lift: goes over to a further sheet, although it fits one'],
      tall: [],
      goOn: ['v/4s/seals seals--lift'],
    })
  })

  test('name what outgrows a sheet instead', () => {
    const [caution = '', ...others] = guarded
    const sheets = [
      sheetOf(headOf('Sheet 1 of 3'), ...before, foot),
      sheetOf(headOf('Sheet 2 of 3'), caution, ...Array(30).fill('and so on'), others[0] ?? '', foot),
      sheetOf(headOf('Sheet 3 of 3'), ...others.slice(1), ...rest, foot),
    ]
    expect(sheetFindings(page, sheets, true)).toEqual({
      faults: [],
      tall: ['v/4s/seals seals--lift'],
      goOn: ['v/4s/seals seals--lift'],
    })
  })

  test('show a caution under its instruction', () => {
    const [caution = '', recall = '', instruction = ''] = guarded
    const placed = sheetOf(second, instruction, caution, recall, ...rest, foot)
    const ordered = {
      words: [second, caution, recall, instruction, ...rest, foot].flatMap((line) =>
        line
          .split(' ')
          .map((text) => placed.words.find((one) => one.text === text) ?? {text, top: 0, bottom: 0}),
      ),
    }
    expect(faultsOf([sheetOf(first, ...before, foot), ordered])).toEqual([
      'seals--lift: not above its instruction: DANGER 1 Suspended load',
      'seals--lift: not above its instruction: Section cautions: WARNING 2',
    ])
  })

  test('show a text that was lost, and one that runs under the foot', () => {
    expect(faultsOf([sheetOf(first, ...before, foot), sheetOf(second, ...guarded, foot)])).toEqual([
      'not above 0.30 mm: not on paper after what stands before it: not above 0.30 mm',
    ])
    const long = [...Array(36).fill('and so on'), ...guarded, ...rest]
    expect(faultsOf([sheetOf(first, ...before, foot), sheetOf(second, ...long, foot)])).toEqual([
      'seals--lift: cut off at the foot of its sheet: DANGER 1 Suspended load',
      'seals--lift: cut off at the foot of its sheet: Section cautions: WARNING 2',
      'seals--lift: cut off at the foot of its sheet: 7',
      'seals--lift: cut off at the foot of its sheet: Lift the cover .',
      'not above 0.30 mm: cut off at the foot of its sheet: not above 0.30 mm',
    ])
  })

  test.each([
    ['a sheet without its head', 'Seals', 'begins with'],
    ['a wrong count', headOf('Sheet 2 of 3'), 'begins with'],
    ['another pump', second.replace('4S', '4P'), 'begins with'],
    ['another page', second.replace('v/4s/seals', 'v/4s/rings'), 'begins with'],
    ['no state', second.replace(state, ''), 'begins with'],
  ])('show %s', (_what, head, words) => {
    const faults = faultsOf([sheetOf(first, ...before, foot), sheetOf(head, ...guarded, ...rest, foot)])
    expect(faults).toEqual([expect.stringContaining(`sheet 2 ${words}`)])
  })

  test('show a sheet of the table without its repeated head', () => {
    expect(faultsOf([sheetOf(tableHead, ...before), sheetOf(...guarded, ...rest)], false)).toEqual([
      expect.stringContaining('sheet 2 is without its head'),
    ])
  })

  test('of an issued page must carry its check code', () => {
    const issued = readTaskPage(htmlOf('revision 3, 2031-02-14', 'K7Q2-M4'))
    expect(issued.code).toBe('K7Q2-M4')
    expect(sheetFindings(issued, sound, true).faults).toContain(
      'the head says `revision 3, 2031-02-14`, expected `K7Q2-M4` in it',
    )
  })

  test('are demanded', () => {
    expect(faultsOf([])).toContain('no sheet was printed')
  })
})
