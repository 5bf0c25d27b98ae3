import {describe, expect, test} from 'vitest'
import {desksOfVessel, type PumpDesk} from '../../src/compile/desk.ts'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import {serves} from '../../src/conditions/serves.ts'
import type {ProcedurePage} from '../../src/handbook-model/pages.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {demonstration} from '../content/demonstration.ts'
import {figuresOfPortable, portablePump, stepsOfPortable} from './portable-pump-table.ts'
import {
  figures,
  ownWords,
  type PumpRow,
  procedures,
  proceduresOf,
  pumps,
  stepsOf,
  valuesOf,
} from './which-pump-table.ts'

const {content, values} = await demonstration()

/** Pages of every procedure of a pump, by pump: of those that hang in tanks, and of the others. */
const pagesOf = new Map<string, readonly ProcedurePage[]>()
const portablePages = new Map<string, readonly ProcedurePage[]>()
for (const vessel of content.vessels.keys())
  for (const desk of desksOfVessel(content, values, vessel))
    (desk.position.tank ? pagesOf : portablePages).set(`${vessel}/${desk.position.id}`, pagesOfPump(desk))

function pagesOfPump(desk: PumpDesk): readonly ProcedurePage[] {
  return [...content.procedures.values()]
    .filter((procedure) => procedure.scope === 'position' && serves(procedure, desk.facts))
    .map((procedure) => procedurePage(procedure, desk))
}

function pages(pump: string): readonly ProcedurePage[] {
  return pagesOf.get(pump) ?? []
}

function procedureIds(pump: string): readonly string[] {
  return pages(pump).map(({head}) => head.id.slice(pump.length + 1))
}

/** Pages of procedures that every pump has. */
function sharedPages(pump: string): readonly ProcedurePage[] {
  return pages(pump).filter(({head}) =>
    [...pagesOf.keys()].every((other) => procedureIds(other).includes(head.id.slice(pump.length + 1))),
  )
}

function stepIds(pump: string): readonly string[] {
  return sharedPages(pump).flatMap(({sections}) =>
    sections.flatMap(({items}) => items.flatMap((item) => (item.kind === 'step' ? [item.id] : []))),
  )
}

function valueIds(pump: string): readonly string[] {
  return sharedPages(pump).flatMap(({valuesUsed}) => valuesUsed.map(({id}) => id))
}

/** Ids that some pumps have and others have not, pump by pump; cargoes go by the list of the vessel and are left out. */
function differing(idsOf: (pump: string) => readonly string[]): ReadonlyMap<string, readonly string[]> {
  const all = new Map([...pagesOf.keys()].map((pump) => [pump, new Set(idsOf(pump))]))
  const everywhere = (id: string): boolean => [...all.values()].every((ids) => ids.has(id))
  return new Map(
    [...all].map(([pump, ids]) => [
      pump,
      [...ids].filter((id) => !everywhere(id) && !id.startsWith('purge.least-')).sort(),
    ]),
  )
}

/** What the table gives a pump: both variants of what nobody knows, one of all else. */
function wanted(
  row: PumpRow,
  table: typeof stepsOf | typeof valuesOf | typeof proceduresOf,
): readonly string[] {
  const of = <K extends string>(lists: Readonly<Record<K, readonly string[]>>, has: K | 'open') =>
    has === 'open' ? Object.values<readonly string[]>(lists).flat() : lists[has]
  return [
    ...of(table.motor, row.motor),
    ...of(table.backstop, row.backstop),
    ...of(table.lips, row.lips),
    ...of(table.rings, row.rings),
    ...of(table.surface, row.surface),
  ].sort()
}

describe('the table of the fleet', () => {
  test('names every pump that hangs in a tank, each once', () => {
    expect(pumps.map(({pump}) => pump).sort()).toEqual([...pagesOf.keys()].sort())
    expect(pumps).toHaveLength(58)
    expect(pumps.filter(({motor}) => motor === 'older')).toHaveLength(5)
  })

  test('gives every pump these procedures', () => {
    for (const {pump} of pumps)
      expect(procedureIds(pump), pump).toEqual(expect.arrayContaining([...procedures]))
  })
})

describe('what differs from pump to pump is what the table says', () => {
  const steps = differing(stepIds)
  const shown = differing(valueIds)
  const own = differing(procedureIds)

  test.each(pumps)('$pump has its procedures', (row) => {
    expect(own.get(row.pump)).toEqual(wanted(row, proceduresOf))
  })

  test.each(pumps)('$pump has its steps', (row) => {
    expect(steps.get(row.pump)).toEqual(wanted(row, stepsOf))
  })

  test.each(pumps)('$pump has its values', (row) => {
    expect(shown.get(row.pump)).toEqual(wanted(row, valuesOf))
  })

  test('a step that stands for one of two answers says which, and no other step does', () => {
    for (const {pump, backstop, rings} of pumps) {
      const headed = pages(pump).flatMap(({sections}) =>
        sections.flatMap(({items}) => items.flatMap(({id, variant}) => (variant ? [id] : []))),
      )
      const open = [
        ...(backstop === 'open' ? Object.values(stepsOf.backstop).flat() : []),
        ...(rings === 'open' ? Object.values(stepsOf.rings).flat() : []),
      ]
      expect([...headed].sort(), pump).toEqual([...open].sort())
    }
  })
})

describe('no pump shows a figure of the other design', () => {
  test.each(figures)('%s is %s on the newer and %s on the older', (id, newer, older) => {
    const seen = {newer: new Set<string>(), older: new Set<string>()}
    for (const {pump, motor} of pumps)
      for (const {valuesUsed} of pages(pump))
        for (const line of valuesUsed)
          if (line.id === id) seen[motor].add(`${line.figure} ${line.unit}`.trim())
    expect([...seen.newer]).toEqual([newer])
    expect([...seen.older]).toEqual([older])
  })

  test('no page of a pump names a thing of the other design', () => {
    const found: string[] = []
    for (const {pump, motor} of pumps)
      for (const page of pages(pump)) {
        const text = technicalText(page, pump)
        for (const word of ownWords[motor === 'newer' ? 'older' : 'newer'])
          if (text.includes(word)) found.push(`${page.head.id}: ${word}`)
      }
    expect(found).toEqual([])
  })

  test('and each of these words stands on some page of its own design', () => {
    for (const motor of ['newer', 'older'] as const) {
      const texts = pumps
        .filter((row) => row.motor === motor)
        .slice(0, 1)
        .flatMap(({pump}) => pages(pump).map((page) => technicalText(page, pump)))
      for (const word of ownWords[motor])
        expect(
          texts.some((text) => text.includes(word)),
          word,
        ).toBe(true)
    }
  })

  test('no list of tools or parts names the twin of the other size', () => {
    const twins = new Set(
      [...content.tools.keys(), ...content.parts.keys()].filter((id) => id.endsWith('-b')),
    )
    expect(twins.size).toBeGreaterThan(40)
    const found: string[] = []
    for (const {pump, motor} of pumps)
      for (const page of pages(pump))
        for (const {id} of [...page.tools, ...page.parts])
          if (motor === 'newer' ? twins.has(id) : twins.has(`${id}-b`)) found.push(`${page.head.id}: ${id}`)
    expect(found).toEqual([])
  })
})

describe('the portable pump', () => {
  const own = portablePages.get(portablePump) ?? []
  const idOf = ({head}: ProcedurePage): string => head.id.slice(portablePump.length + 1)
  const stepsIn = (page: ProcedurePage): readonly string[] =>
    page.sections.flatMap(({items}) =>
      items.flatMap(({kind, id}) => (kind === 'step' ? [id.slice(idOf(page).length + 2)] : [])),
    )

  test('is the only pump of the fleet that hangs in no tank', () => {
    expect([...portablePages.keys()]).toEqual([portablePump])
    expect([...pagesOf.keys()].filter((pump) => pump.startsWith('vessel-c/'))).toHaveLength(24)
  })

  test('has its procedures, each with its steps in order, and no others', () => {
    expect(Object.fromEntries(own.map((page) => [idOf(page), stepsIn(page).join(' ')]))).toEqual(
      stepsOfPortable,
    )
  })

  test('shows its values and no others, each with its figure', () => {
    const lines = own.flatMap(({valuesUsed}) => valuesUsed)
    expect(Object.fromEntries(lines.map(({id, figure, unit}) => [id, `${figure} ${unit}`.trim()]))).toEqual(
      figuresOfPortable,
    )
  })

  test('has no procedure of a pump in a tank, and no pump in a tank has one of its', () => {
    const portable = new Set(Object.keys(stepsOfPortable))
    expect(portable.size).toBe(5)
    const found = [...pagesOf.keys()].flatMap((pump) =>
      procedureIds(pump).filter((id) => portable.has(id) || own.some((page) => idOf(page) === id)),
    )
    expect(found).toEqual([])
  })

  test('is named on no page of a pump in a tank, and names no thing of their designs', () => {
    const tanks = [...pagesOf].flatMap(([pump, list]) => list.map((page) => technicalText(page, pump)))
    expect(
      tanks.filter((text) => /HP OUT|RT OUT|CARGO IN(?! OIL)|control frame|holding chain/u.test(text)),
    ).toEqual([])
    const texts = own.map((page) => technicalText(page, portablePump)).join('\n')
    expect(texts).toContain('CARGO IN')
    for (const word of [...ownWords.newer, ...ownWords.older, 'top plate of', 'G1 ', 'valve box'])
      expect(texts).not.toContain(word)
    // P1 is a tag of an isolation point there, and a number of the parts list here: the figure of its gear alone says it.
    const sayIt = texts.split('\n').filter((line) => line.includes('P1 '))
    expect(sayIt.map((line) => line.replace(/;.*/u, ''))).toEqual([
      'portable-rigging--set-tripod-up\tfigure\tP1 strainer of the portable pump',
    ])
  })
})
