import {readFileSync} from 'node:fs'
import {expect, test} from 'vitest'
import {knownValueIds} from '../../../src/check/rules/known-value-ids.ts'
import {design} from '../library-for-tests.ts'

const ids = knownValueIds(design())

test.each(['torque', 'preload', 'passes', 'order', 'count', 'fastener', 'wrench', 'lubrication', 'locking'])(
  'a joint has a value `%s`',
  (name) => {
    expect(ids.has(`hub-bolts.${name}`)).toBe(true)
  },
)

test.each([
  'lower-ring.running-diameter',
  'lower-ring.new',
  'lower-ring.minimum-new',
  'lower-ring.renewal',
  'mass.head',
  'setting.run-out',
  'rating.highest-pressure',
  'geometry.head-height',
  'house.isolation-proof',
  'hydraulics.return-pressure',
  'tank.vacuum-valve',
  'cofferdam.allowed-drop',
])('`%s` is known', (id) => {
  expect(ids.has(id)).toBe(true)
})

test.each([
  'lower-ring.torque',
  'hub-bolts.renewal',
  'mass.motor',
  'setting.head',
  'torque',
  'hub-bolts',
  '',
])('`%s` is not known', (id) => {
  expect(ids.has(id)).toBe(false)
})

test('every value id that the guide for developers names is known', () => {
  const guide = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8')
  const table = /\*\*Value ids\*\*[\s\S]*?\n\n(\|[\s\S]*?)\n\n/u.exec(guide)?.[1] ?? ''
  const named = table.split('\n').flatMap((row) => {
    const words = [...(row.split('|')[1] ?? '').matchAll(/`([^`]+)`/gu)].map((match) => match[1] ?? '')
    const group = (words[0] ?? '').split('.')[0] ?? ''
    return words.map((word) => (word.startsWith('.') ? `${group}${word}` : word))
  })
  const examples: Readonly<Record<string, string>> = {
    '<joint>': 'hub-bolts',
    '<ring>': 'lower-ring',
    'mass.<id>': 'mass.head',
    'setting.<id>': 'setting.run-out',
    'rating.<id>': 'rating.highest-pressure',
    'geometry.<id>': 'geometry.head-height',
  }
  const filled = named.map((id) =>
    Object.entries(examples).reduce((text, [from, to]) => text.replace(from, to), id),
  )
  expect(filled.length).toBeGreaterThan(40)
  expect(filled.filter((id) => !ids.has(id))).toEqual([])
})
