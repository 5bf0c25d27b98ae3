import {expect, test} from 'vitest'
import {storageKey} from '../../src/browser-contract/page-contract.ts'

test('a remembered thing is kept under the project, the vessel and what it is, since one PC may hold many handbooks', () => {
  expect(storageKey('vessel-a', 'palette')).toBe('sheetanchor|vessel-a|palette')
  expect(storageKey('vessel-a', 'draft', '4s', 'service', '1')).toBe(
    'sheetanchor|vessel-a|draft|4s|service|1',
  )
  expect(storageKey('vessel-b', 'palette')).not.toBe(storageKey('vessel-a', 'palette'))
})
