import {readFileSync} from 'node:fs'
import {expect, test} from 'vitest'
import {knownValueIds} from '../../../src/check/rules/known-value-ids.ts'
import type {Design} from '../../../src/handbook-model/design-content.ts'
import {demonstration} from '../../content/demonstration.ts'
import {design} from '../library-for-tests.ts'

const ids = knownValueIds(design())

async function demonstratedDesign(): Promise<Design> {
  const found = (await demonstration()).content.designs.get('design-a')
  if (!found) throw new Error('Unexpected demonstration without `design-a`, expected it')
  return found
}

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

test('every value id that the guide for developers names is known', async () => {
  const demonstrated = await demonstratedDesign()
  const guide = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8')
  const table = /\*\*Value ids\*\*[\s\S]*?\n\n(\|[\s\S]*?)\n\n/u.exec(guide)?.[1] ?? ''
  const named = table.split('\n').flatMap((row) => {
    const words = [...(row.split('|')[1] ?? '').matchAll(/`([^`]+)`/gu)].map((match) => match[1] ?? '')
    return words.map((word, index) => {
      const before = words.slice(0, index).findLast((one) => !one.startsWith('.')) ?? ''
      return word.startsWith('.') ? `${before.split('.')[0]}${word}` : word
    })
  })
  const examples: Readonly<Record<string, string>> = {
    '<joint>': 'hub-bolts',
    '<ring>': 'lower-ring',
    '<lift>': 'unit-lift',
    '<seal>': 'cargo-seal',
    '<o-ring>': 'sleeve-ring',
    'mass.<id>': 'mass.impeller',
    'setting.<id>': 'setting.hub-run-out',
    'rating.<id>': 'rating.head',
    'geometry.<id>': `geometry.${demonstrated.geometry[0]?.id}`,
  }
  const filled = named.map((id) =>
    Object.entries(examples).reduce((text, [from, to]) => text.replace(from, to), id),
  )
  const known = knownValueIds(demonstrated)
  expect(filled.length).toBeGreaterThan(100)
  expect(filled.filter((id) => !known.has(id))).toEqual([])
})
