import {cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {expect, test} from 'vitest'
import {faultOf, printedNumbers} from '../prove/printed-numbers.ts'

const folder = fileURLToPath(new URL('../../site/vessel-a', import.meta.url))
const numbers = printedNumbers(folder)

test('every figure on the procedure pages is recomputed from its own explanation with a pocket calculator', () => {
  expect(numbers.length).toBeGreaterThan(5000)
  expect(new Set(numbers.map(({element}) => element.slice(element.lastIndexOf('--')))).size).toBeGreaterThan(
    60,
  )
  expect(numbers.flatMap((one) => faultOf(folder, one) ?? [])).toEqual([])
})

test('a figure that its explanation does not give is found, on the page, in the result and in an input', () => {
  const torque = numbers.find(({element}) => element === 'value--hub-bolts--torque')
  if (!torque) throw new Error('Unexpected pages without the torque of the hub bolts, expected it')
  expect(torque.printed).toBe('61 N·m')
  expect(faultOf(folder, {...torque, printed: '62 N·m'})).toContain('is explained as 61 N·m')
  const copy = mkdtempSync(join(tmpdir(), 'numbers-'))
  try {
    const spoiled = (from: string, to: string): string | undefined => {
      cpSync(join(folder, 'designs'), join(copy, from, 'designs'), {recursive: true})
      const path = join(copy, from, torque.path)
      const [before = '', part = ''] = readFileSync(path, 'utf8').split('id="value--hub-bolts--torque"')
      const [own = '', ...rest] = part.split('<section')
      if (!own.includes(from)) throw new Error(`Unexpected explanation without \`${from}\`, expected it`)
      const changed = [own.replaceAll(from, to), ...rest].join('<section')
      writeFileSync(path, `${before}id="value--hub-bolts--torque"${changed}`)
      return faultOf(join(copy, from), {...torque, printed: torque.printed.replace(from, to)})
    }
    expect(spoiled('61', '62')).toMatch(/is 61\.2\d* by its own explanation/u)
    expect(spoiled('16.63', '19.63')).toContain('by its own explanation')
  } finally {
    rmSync(copy, {recursive: true, force: true})
  }
})
