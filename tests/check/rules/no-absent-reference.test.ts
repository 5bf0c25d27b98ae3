import {describe, expect, test} from 'vitest'
import {pumpOf} from '../../../src/check/pump.ts'
import {noAbsentReference} from '../../../src/check/rules/no-absent-reference.ts'
import {designShape} from '../../../src/check/shapes/design-shape.ts'
import {portableValueIds} from '../../../src/handbook-model/portable-lengths.ts'
import {design, designText, shaped, vessel} from '../library-for-tests.ts'
import {placeIn, toldBy} from '../messages-for-tests.ts'
import {nameplate, procedureText, soundProcedure, workText} from '../procedure-for-tests.ts'

/** A second design with another joint and another limit, on which the pump `1s` is built. */
const other = shaped(
  'designs/design-b.yaml',
  designText
    .replace('id: design-a', 'id: design-b')
    .replace('id: hub-bolts', 'id: inducer-bolts')
    .replace('id: run-out-most', 'id: inducer-most'),
  designShape,
)

function told(text: string, designs = [design(), other]): readonly string[] {
  const ship = vessel()
  const pumps = designs.flatMap((built, index) => {
    const position = ship.positions[index % 2]
    return position ? [pumpOf(ship, position, built, [])] : []
  })
  return toldBy((files) => noAbsentReference(soundProcedure(text), pumps, files))
}

const plate = (when = ''): string =>
  workText(`1. :step{#look} Look.\n\n   ::value{ref=hub-bolts.torque${when && ` when="${when}"`}}`)
const refusal = (text: string, at: string, id: string, kind: string): string =>
  `${placeIn(text, at)} Unexpected \`${id}\` on position \`1s\` of \`vessel-a\`, whose design \`design-b\` has none, expected ${kind} that every pump of this procedure has no-undefined-reference see designs/design-b.yaml:1:1`

describe('a value of one design', () => {
  test('is accepted where every pump is of that design', () => {
    expect(told(plate(), [design(), design()])).toEqual([])
  })

  test('is refused for the pump of another design, once for all pumps of it', () => {
    expect(told(plate())).toEqual([refusal(plate(), '::value', 'hub-bolts.torque', 'the id of a value')])
    expect(told(plate(), [design(), other, design(), other])).toHaveLength(1)
  })

  test.each([
    'design = design-a',
    'design ≠ design-b',
    'not design in (design-b)',
    'design = design-a and known x',
  ])('is accepted under `%s`', (when) => {
    expect(told(plate(when))).toEqual([])
  })

  test.each([
    'design ≠ design-a',
    'design = design-b',
    'backstop = fitted',
    'design in (design-a, design-b)',
  ])('is refused under `%s`, which leaves the other design in or open', (when) => {
    expect(told(plate(when))).toHaveLength(1)
  })

  test.each<[string, string]>([
    [
      'section',
      procedureText(
        `## Work\n\n::section{#work when="design = design-a"}\n\nHolds :value{ref=hub-bolts.count}.\n\n${nameplate}\n\n1. :step{#look} Loosen :value{ref=hub-bolts.count}.`,
      ),
    ],
    [
      'step',
      workText(
        '1. :step{#look when="design = design-a"} Loosen :value{ref=hub-bolts.count}.\n\n   There are :value{ref=hub-bolts.count}.\n\n   ::wait{#w least=hub-bolts.torque missed="Begin again."}',
      ),
    ],
    [
      'hold point',
      workText(
        '::hold-point{#seen title=Seen signed-by=a second-by=b when="design = design-a"}\n\nAll :value{ref=hub-bolts.count}.',
      ),
    ],
    [
      'reading',
      workText(
        '1. :step{#look} Look.\n\n   ::reading{#r title=gap quantity=length unit=mm stations=a instrument=gauge phase=during limits=run-out-most when="design = design-a"}',
      ),
    ],
    [
      'figure',
      workText(
        '1. :step{#look} Look.\n\n   ::figure{name="tightening-order:hub-bolts" caption=Order when="design = design-a"}',
      ),
    ],
    [
      'choice',
      workText(
        '1. :step{#look} Look.\n\n   :::one-of{#a}\n   - :choice{#b when="design = design-a"} All :value{ref=hub-bolts.count}.\n   - :choice{#c} None.\n   :::',
      ),
    ],
  ])(
    'is accepted in a %s that leaves the other design out, and refused without the condition',
    (_what, text) => {
      expect(told(text)).toEqual([])
      expect(told(text.replace(/ ?when="design = design-a"/u, '')).length).toBeGreaterThan(0)
    },
  )
})

test.each<[string, string, string, string, string]>([
  [
    'a limit',
    '::reading{#r title=gap quantity=length unit=mm stations=a instrument=gauge phase=during limits=run-out-most}',
    '::reading',
    'run-out-most',
    'the id of a limit of the design',
  ],
  [
    'a joint of a figure',
    '::figure{name="tightening-order:hub-bolts" caption=Order}',
    '::figure',
    'hub-bolts',
    'the id of a joint',
  ],
])('%s of one design is refused for the pump of another', (_what, line, at, id, kind) => {
  const text = workText(`1. :step{#look} Look.\n\n   ${line}`)
  expect(told(text)).toEqual([refusal(text, at, id, kind)])
})

test('a figure that asks for many values is refused once for a design that has none of them', () => {
  const geometry = portableValueIds
    .filter((id) => id.startsWith('geometry.'))
    .map((id) => `  - {id: ${id.slice('geometry.'.length)}, title: length, value: 10 mm}`)
  const hung = shaped(
    'designs/design-a.yaml',
    designText.replace(/^geometry:\n/mu, `geometry:\n${geometry.join('\n')}\n`),
    designShape,
  )
  const text = workText('1. :step{#look} Look.\n\n   ::figure{name="portable-arrangement" caption=Rig}')
  expect(told(text, [hung, other])).toEqual([
    refusal(text, '::figure', 'geometry.pump-length', 'the id of a value'),
  ])
  expect(told(text, [hung, hung])).toEqual([])
})

const withStack = shaped(
  'designs/design-a.yaml',
  designText
    .replace(
      'rings:',
      '  - {id: stack-joint-bolts, title: bolts of a joint, thread: M12, class: A4-70, head: hexagon, hole: medium, count: 8, length: 40 mm, utilisation: 70 %, lubrication: paste, locking: washers, pattern: crosswise}\nrings:',
    )
    .replace(
      'masses:',
      'oil: {pressure-pipe-bore: 40 mm, pressure-pipe-outside: 50 mm, return-pipe-bore: 130 mm, motor-casing: 3 l, control-valve: 1 l}\nmasses:',
    )
    .replace('geometry:', 'geometry:\n  - {id: stack-diameter, title: outside of the stack, value: 160 mm}'),
  designShape,
)

test('the figure of the pipe stack is refused for the pump of a design without one, once', () => {
  const text = workText('1. :step{#look} Look.\n\n   ::figure{name=pipe-stack caption=Stack}')
  expect(told(text, [withStack, withStack])).toEqual([])
  expect(told(text, [withStack, other])).toEqual([refusal(text, '::figure', 'pipe-stack', 'a figure')])
})

test('what no pump has is told elsewhere, once', () => {
  expect(told(workText('1. :step{#look} Loosen :value{ref=none.count}.'))).toEqual([])
})
