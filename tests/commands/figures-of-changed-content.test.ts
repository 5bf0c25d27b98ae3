import {describe, expect, test} from 'vitest'
import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import type {Page, Picture} from '../../src/handbook-model/pages.ts'
import {type ChangedContent, withChangedContent} from './changed-content.ts'

/** Pictures of pump 4S by what they show: of each procedure, of its page, of its head. */
async function picturesOf(content: ChangedContent): Promise<ReadonlyMap<string, Picture>> {
  const {content: checked, values, history} = await checkAndCompute(content.folder)
  if (!checked || !values) throw new Error('Unexpected content with errors, expected changes that check')
  const {pages} = stateVessel(checked, values, 'vessel-a', history).pages
  return new Map(pages.filter(({head}) => head.position?.id === '4s').flatMap(shownBy))
}

function shownBy(page: Page): readonly (readonly [string, Picture])[] {
  if (page.kind === 'position')
    return [
      ...(page.stack ? [['pipe stack', page.stack.picture] as const] : []),
      ...(page.head.position?.plan ? [['plan', page.head.position.plan] as const] : []),
    ]
  if (page.kind !== 'procedure') return []
  return page.sections.flatMap(({items}) =>
    items.flatMap((item) =>
      item.kind === 'step'
        ? item.parts.flatMap((part) =>
            part.kind === 'figure' ? [[part.figure.id, part.figure.picture] as const] : [],
          )
        : [],
    ),
  )
}

/** Changes of the content, each with the picture that shows it and what its words say afterwards. */
const changes: readonly {
  readonly what: string
  readonly file: string
  readonly from: RegExp
  readonly to: string
  readonly picture: string
  readonly words: string
}[] = [
  {
    what: 'eight bolts to twelve',
    file: 'designs/design-a.yaml',
    from: /(?<=id: hub-bolts\n(?: {4}.*\n){5} {4}count: )8/u,
    to: '12',
    picture: 'reassembly--tightening-order-hub-bolts',
    words: 'Bolt circle of 12 bolts, hub bolts',
  },
  {
    what: 'the direction of a lip',
    file: 'designs/design-a.yaml',
    from: /(?<=id: cofferdam-lip, title: second lip, faces: )cofferdam/u,
    to: 'cargo',
    picture: 'cargo-seal--seal-orientation-cargo-seal',
    words: '2 second lip: open edge looks at the cargo',
  },
  {
    what: 'a section of the stack',
    file: 'vessels/vessel-a/vessel.yaml',
    from: /(?<=id: 4s\n(?: {4}.*\n)*? {4}stack-sections: \[)2\.000 m, 2\.000 m/u,
    to: '1.500 m, 2.500 m',
    picture: 'pipe stack',
    words: '1.500 m',
  },
  {
    what: 'the name of a tank',
    file: 'vessels/vessel-a/vessel.yaml',
    from: /(?<=- \{id: 4s, tag: )4S/u,
    to: '14S',
    picture: 'plan',
    words: 'tank 14S is marked',
  },
]

describe('a change of the content', async () => {
  const {before, after} = await withChangedContent(async (content) => {
    const whole = await picturesOf(content)
    for (const {file, from, to} of changes) content.replace(file, from, to)
    return {before: whole, after: await picturesOf(content)}
  })

  test.each(changes)('$what: figure and text alternative are others', ({picture, words}) => {
    const [old, changed] = [before.get(picture), after.get(picture)]
    expect(old?.alternative).not.toContain(words)
    expect(changed?.alternative).toContain(words)
    expect(changed?.path).not.toBe(old?.path)
    expect(changed?.svg).not.toBe(old?.svg)
  })

  test('leaves the figures alone that it does not concern', () => {
    const moved = [...after].filter(([id, {path}]) => before.get(id)?.path !== path).map(([id]) => id)
    expect(moved.length).toBeGreaterThanOrEqual(changes.length)
    expect(moved.length).toBeLessThan(after.size / 2)
  })
})
