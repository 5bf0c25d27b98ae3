import {cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {pagesBeside} from '../prove/pages-beside.ts'
import {calculationsOf, pocketCalculations} from '../prove/pocket-calculator.ts'
import {type Explanation, faultOf, faultOfExplanation, readHandbook} from '../prove/printed-numbers.ts'
import {publishedFolder} from './odd-folder.ts'

const handbook = readHandbook(publishedFolder)
const {numbers, explanations} = handbook

/** The first explanation for each set of formula lines of each quantity, with the page that it stands on. */
const oneOfEach = [
  ...new Map(
    [...explanations]
      .flatMap(([path, own]) => {
        const page = pagesBeside(path, explanations)
        return [...own.values()].map((explanation) => ({explanation, page}))
      })
      .filter(({explanation: {formula, printed}}) => formula.length > 0 && !printed.startsWith('NOT KNOWN'))
      .reverse()
      .map((one) => [`${nameOf(one.explanation)} ${one.explanation.formula.join()}`, one]),
  ).values(),
]

function nameOf({id}: Explanation): string {
  const [own] = Object.entries(pocketCalculations).find(([, lines]) => lines === calculationsOf(id)) ?? [id]
  return own
}

/** The figure with its first digit that counts, or its last one, one higher. */
function misprinted(printed: string, which: 'first' | 'last'): string {
  const digit = which === 'first' ? /[1-9]/u : /\d(?=\D*$)/u
  return printed.replace(digit, (one) => String((Number(one) + 1) % 10))
}

describe('the figures of the demonstration', () => {
  test('stand on procedure, pump, torque and value pages of every pump and on the wall sheet', () => {
    expect(numbers.length).toBeGreaterThan(8000)
    const kinds = new Set(
      numbers.map(({page}) => page.replace(/^p\/[^/]+\//u, 'p/').replace(/^designs\/[^/]+\//u, 'designs/')),
    )
    expect([...kinds]).toEqual(
      expect.arrayContaining([
        'values.html',
        'designs/torques.html',
        'designs/values.html',
        'designs/settings.html',
        'p/values.html',
        'p/index.html',
        'p/reassembly.html',
        'p/purging.html',
      ]),
    )
  })

  test('are each recomputed from their own explanation with a pocket calculator, or name how and where they are stated', () => {
    expect(numbers.flatMap((one) => faultOf(one, handbook) ?? [])).toEqual([])
  })

  test('leave no quantity of the pocket calculator unused', () => {
    expect(new Set(oneOfEach.map(({explanation}) => nameOf(explanation)))).toEqual(
      new Set(Object.keys(pocketCalculations)),
    )
  })
})

describe('a misprint is found', () => {
  test.each(oneOfEach.map((one) => [nameOf(one.explanation), one] as const))(
    'in the result of %s, in each line of its formula and in each intermediate result',
    (_name, {explanation, page}) => {
      expect(faultOfExplanation(explanation, page)).toBeUndefined()
      const spoiled = (change: Partial<Explanation>): string =>
        faultOfExplanation({...explanation, ...change}, page) ?? ''
      expect(spoiled({printed: misprinted(explanation.printed, 'last')})).toContain('by its own explanation')
      for (const line of explanation.formula)
        expect(
          spoiled({formula: explanation.formula.map((one) => (one === line ? `${one} ` : one))}),
        ).toContain('does not know')
      for (const [index, row] of explanation.rows.entries()) {
        if (!/^(?:intermediate result|computed: |explained at )/u.test(row.origin)) continue
        const other = {...row, printed: misprinted(row.printed, 'first')}
        expect(spoiled({rows: explanation.rows.with(index, other)}), row.symbol).not.toBe('')
      }
    },
  )

  test.each([
    ['an input that is missing', '*.torque', {rows: 'dw'}, 'gives no `dw`'],
    ['a rounding that is not said', '*.torque', {rounding: ''}, 'says nothing of its rounding'],
    ['a rounding to other decimals', '*.preload', {rounding: 'to 2 decimals of kN'}, 'prints 1 decimals'],
    ['a rounding to the other side', 'oil.most', {rounding: 'up to a whole l'}, 'by its own explanation'],
  ] as const)('in %s', (_what, name, {...change}, words) => {
    const one = oneOfEach.find(({explanation}) => nameOf(explanation) === name)
    if (!one) throw new Error(`Unexpected handbook without ${name}, expected one`)
    const {explanation, page} = one
    const rows =
      'rows' in change ? explanation.rows.filter(({symbol}) => symbol !== change.rows) : explanation.rows
    expect(faultOfExplanation({...explanation, ...change, rows}, page)).toContain(words)
  })

  test('in a stated figure without a source, or without how it is known', () => {
    const page = explanations.get('designs/design-a/values.html') ?? new Map<string, Explanation>()
    const stated = page.get('value--lower-ring--new')
    if (!stated) throw new Error('Unexpected page without the new clearance of the lower ring, expected it')
    expect(stated.origin).toBe('Sources: [1] as built, sheet 1')
    expect(faultOfExplanation({...stated, origin: ''}, page)).toBe('is stated and names no source')
    expect(faultOfExplanation({...stated, origin: 'Sources: [1] sheet 1'}, page)).toBe(
      'is stated and does not say how it is known',
    )
  })

  test('on the pages themselves: in the plate, in the result and in an input', () => {
    const plate = numbers.find(
      ({page, element}) => page === 'p/4s/reassembly.html' && element === 'value--hub-bolts--torque',
    )
    if (!plate) throw new Error('Unexpected sheet without the torque of the hub bolts, expected it')
    expect(plate).toMatchObject({printed: '61 N·m', path: 'designs/design-a/torques.html'})
    expect(faultOf({...plate, printed: '62 N·m'}, handbook)).toContain('is explained as 61 N·m')
    const folder = mkdtempSync(join(tmpdir(), 'numbers-'))
    try {
      const faultAfter = (from: string, to: string, printed = plate.printed): string | undefined => {
        for (const path of [plate.page, plate.path]) cpSync(join(publishedFolder, path), join(folder, path))
        const path = join(folder, plate.path)
        const [before = '', behind = ''] = readFileSync(path, 'utf8').split(`id="${plate.element}"`)
        const end = behind.indexOf('</section>')
        const own = behind.slice(0, end).replaceAll(from, to)
        if (own === behind.slice(0, end)) throw new Error(`Unexpected page without \`${from}\`, expected it`)
        writeFileSync(path, `${before}id="${plate.element}"${own}${behind.slice(end)}`)
        return faultOf({...plate, printed}, readHandbook(folder))
      }
      expect(faultAfter('61 <', '61 <!-- --><')).toBeUndefined()
      expect(faultAfter('61 <', '62 <', '62 N·m')).toContain('by its own explanation')
      expect(faultAfter('16.63', '16.64')).toContain('by its formula')
      expect(faultAfter('FM·[d2', 'FA·[d2')).toContain('does not know')
    } finally {
      rmSync(folder, {recursive: true, force: true})
    }
  })
})
