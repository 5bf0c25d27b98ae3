import {describe, expect, test} from 'vitest'
import {boundFigure} from '../../src/compile/bound-figure.ts'
import {desksOfVessel, type PumpDesk} from '../../src/compile/desk.ts'
import {pictureFiles} from '../../src/compile/picture.ts'
import {arrangementOf} from '../../src/compile/portable-figure.ts'
import {positionPage} from '../../src/compile/position-page.ts'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import {valuesShown} from '../../src/compile/values-shown.ts'
import type {ComputedValue} from '../../src/handbook-model/computed.ts'
import type {Arrangement} from '../../src/handbook-model/pages.ts'
import {portableValueIds} from '../../src/handbook-model/portable-lengths.ts'
import type {Procedure} from '../../src/handbook-model/procedure.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {expectRoomForTexts} from '../figures/room-for-texts.ts'
import {textsOf} from '../figures/svg-for-tests.ts'
import {demonstration} from './demonstration.ts'

const {content, values} = await demonstration()
const desks = [...content.vessels.keys()].flatMap((vessel) => desksOfVessel(content, values, vessel))
const portable = desks.filter(({position}) => position.role === 'portable')

function rigging(): Procedure {
  const found = content.procedures.get('portable-rigging')
  if (!found) throw new Error('Unexpected content without the rigging of the portable pump, expected it')
  return found
}

function arrangement(desk: PumpDesk): Arrangement {
  const found = arrangementOf(desk)
  if (!found) throw new Error(`Unexpected ${desk.position.id} without an arrangement, expected one`)
  return found
}

/** The same pump with one of its values changed. */
function withValue(desk: PumpDesk, id: string, change: (value: ComputedValue) => ComputedValue): PumpDesk {
  const value = desk.values.get(id)
  if (!value) throw new Error(`Unexpected pump without ${id}, expected it`)
  return {...desk, values: new Map([...desk.values, [id, change(value)]])}
}

function longer(value: ComputedValue): ComputedValue {
  const {result} = value
  if (result.kind === 'not-known' || !result.quantity) return value
  const quantity = {...result.quantity, si: result.quantity.si * 1.02}
  return {
    ...value,
    result: {...result, quantity, printed: {...result.printed, figure: `${result.printed.figure}1`}},
  }
}

const unknown = (value: ComputedValue): ComputedValue => ({
  ...value,
  result: {kind: 'not-known', missing: [value.title]},
})

test('each portable pump has an arrangement, and no pump in a tank', () => {
  expect(portable.length).toBeGreaterThan(0)
  for (const desk of portable) expect(arrangementOf(desk)).toBeDefined()
  for (const desk of desks.filter((one) => !portable.includes(one)))
    expect(arrangementOf(desk), desk.position.id).toBeUndefined()
})

describe.each(portable.map((desk) => [`${desk.vessel.id} ${desk.position.id}`, desk] as const))(
  '%s',
  (_, desk) => {
    const {picture, numbers, lengths} = arrangement(desk)
    const drawn = textsOf(picture.svg).flatMap(({text}) => (/^P\d+$/u.test(text) ? [text] : []))

    test('the numbers of the drawing are those of the parts list, from the pump up', () => {
      const listed = content.units?.find(({id}) => id === 'portable-set')?.balloons ?? []
      expect(listed).toEqual(Array.from({length: 12}, (_one, index) => `P${index + 1}`))
      expect([...drawn].sort()).toEqual([...listed].sort())
      expect(numbers.map(({balloon}) => balloon)).toEqual(listed)
    })

    test('each number names every part that the list gives it', () => {
      const parts = [...content.parts.values()].filter(({balloon}) => balloon?.startsWith('P'))
      expect(parts.length).toBeGreaterThan(numbers.length)
      for (const {balloon, title} of parts)
        expect(numbers.find((one) => one.balloon === balloon)?.title).toContain(title.en)
      const told = numbers.map(({balloon, title}) => `${balloon} ${title}`).join('; ')
      expect(picture.alternative).toContain(told)
    })

    test('has room for its texts', () => {
      expectRoomForTexts(picture)
      expect(picture.size).toBe('wide')
      expect(picture.svg.length).toBeLessThan(30_000)
    })

    test('is one file for the page of the pump and for the step that sets the tripod up', () => {
      const page = positionPage(desk)
      const steps = procedurePage(rigging(), desk).sections.flatMap(({items}) =>
        items.flatMap((item) =>
          item.kind === 'step' &&
          item.parts.some(
            (part) => part.kind === 'figure' && part.figure.picture.path.includes('arrangement'),
          )
            ? [item]
            : [],
        ),
      )
      expect(steps.map(({id}) => id)).toEqual(['portable-rigging--set-tripod-up'])
      expect(page.arrangement?.picture.path).toMatch(/^figures\/portable-arrangement-[0-9a-f]{8}\.svg$/u)
      const files = pictureFiles([page, procedurePage(rigging(), desk)])
      expect(files.filter(({path}) => path.includes('portable-arrangement'))).toHaveLength(1)
    })

    test('tells every length that it is drawn from, on both pages', () => {
      const shown = valuesShown(rigging(), desk).map(({value}) => value)
      const position = technicalText(positionPage(desk), 'Vessel')
      const procedure = technicalText(procedurePage(rigging(), desk), 'Vessel')
      for (const id of portableValueIds) {
        expect(shown).toContain(id)
        const changed = withValue(desk, id, longer)
        expect(technicalText(positionPage(changed), 'Vessel'), id).not.toBe(position)
        expect(technicalText(procedurePage(rigging(), changed), 'Vessel'), id).not.toBe(procedure)
        expect(arrangement(changed).picture.path, id).not.toBe(picture.path)
      }
      expect(lengths).toContain('impeller ⌀ 232 mm; impeller outlet 22 mm')
    })

    test('is made from the design and the parts list', () => {
      const {madeFrom} = positionPage(desk).head
      expect(madeFrom).toContain('parts.yaml')
      expect(madeFrom).toContain(desk.design.place.path)
    })

    test.each(['geometry.motor-diameter', 'geometry.pump-diameter', 'setting.bend-radius'])(
      'is not drawn where %s is not known, and says so',
      (id) => {
        const gap = withValue(desk, id, unknown)
        const title = desk.values.get(id)?.title ?? ''
        const {picture: words, numbers: still} = arrangement(gap)
        expect(words.alternative).toContain(`Not drawn. NOT KNOWN: ${title}.`)
        expect(
          textsOf(words.svg)
            .map(({text}) => text)
            .join(' '),
        ).toContain('Not drawn. NOT KNOWN:')
        expectRoomForTexts(words)
        expect(still).toEqual(numbers)
        const {data} = boundFigure('a', 'portable-arrangement', 'Figure', gap, rigging())
        expect(data).toContain(`Not drawn. NOT KNOWN: ${title}.`)
      },
    )

    test('is not drawn where its lengths cannot stand together, and says so', () => {
      const misfit = withValue(desk, 'geometry.impeller-diameter', (value) =>
        Array.from({length: 20}).reduce<ComputedValue>((one) => longer(one), value),
      )
      expect(arrangement(misfit).picture.alternative).toContain(
        'Not drawn: the impeller does not fit into the outside of the pump.',
      )
    })
  },
)
