import {portableValueIds} from '../handbook-model/portable-lengths.ts'
import type {Procedure, Step, StepPart} from '../handbook-model/procedure.ts'
import {valuesBehindStations} from '../handbook-model/station-places.ts'
import {valuesInText} from './bind-text.ts'
import type {PumpDesk} from './desk.ts'
import {valuesBehindLift, valuesBehindLowering} from './lifting-figures.ts'
import {onceOnEachPump} from './once-on-each-pump.ts'
import {valuesOfStack} from './pipe-stack-of-pump.ts'
import {type StandingSection, standingSections} from './standing-items.ts'
import {standing} from './variant.ts'

/** A value that a procedure shows on one pump, and where: at a step, at a hold point, or on the page as a whole. */
export interface ValueUse {
  readonly value: string
  readonly at?: {
    readonly kind: 'step' | 'hold-point' | 'section'
    readonly id: string
    readonly number: number
    readonly title: string
  }
}

/**
 * Every value that a procedure shows on one pump, in reading order, with repeats.
 *
 * Limits of readings and the order behind a figure count as shown. What belongs to another variant does not.
 */
export const valuesShown: (procedure: Procedure, desk: PumpDesk) => readonly ValueUse[] =
  onceOnEachPump(valuesOfProcedure)

function valuesOfProcedure(procedure: Procedure, desk: PumpDesk): readonly ValueUse[] {
  const onPage = [...procedure.purpose, ...procedure.before].flatMap(valuesInText)
  const behind = procedure.after.flatMap(valuesInText)
  return [
    ...onPage.map((value) => ({value})),
    ...standingSections(procedure, desk).flatMap((one) => valuesOfSection(one, desk)),
    ...behind.map((value) => ({value})),
  ]
}

function valuesOfSection({section, items}: StandingSection, desk: PumpDesk): readonly ValueUse[] {
  const at = {kind: 'section' as const, id: section.id, number: 0, title: section.title}
  return [
    ...section.intro.flatMap(valuesInText).map((value) => ({value, at})),
    ...items.flatMap((item): readonly ValueUse[] => {
      if (item.kind === 'step') {
        const {step, number} = item
        return valuesOfStep(step, desk).map((value) => ({
          value,
          at: {kind: 'step', id: step.id, number, title: ''},
        }))
      }
      const {hold} = item
      const values = hold.text.flatMap(valuesInText)
      return values.map((value) => ({
        value,
        at: {kind: 'hold-point', id: hold.id, number: 0, title: hold.title},
      }))
    }),
  ]
}

function valuesOfStep(step: Step, desk: PumpDesk): readonly string[] {
  return [...valuesInText(step.instruction), ...step.parts.flatMap((part) => valuesOfPart(part, desk))]
}

function valuesOfPart(part: StepPart, desk: PumpDesk): readonly string[] {
  if ('when' in part && !standing(part.when, desk).stands) return []
  switch (part.kind) {
    case 'value':
      return [part.value.id]
    case 'wait':
      return [part.least.id]
    case 'note':
      return valuesInText(part.text)
    case 'alternatives':
      return part.items.flatMap((item) => (standing(item.when, desk).stands ? valuesInText(item.text) : []))
    case 'reading':
    case 'derived':
      return part.limits.flatMap(
        ({id}) => desk.design.limits.find((limit) => limit.id === id)?.value.id ?? [],
      )
    case 'cargo-table':
      return [...desk.vessel.cargoes.map(({id}) => `purge.least-${id}`), 'cofferdam.upper-bound']
    case 'figure':
      return valuesBehindFigure(part.figure, desk)
    default:
      return []
  }
}

/** What a figure is drawn from, where these are values of their own. */
function valuesBehindFigure(figure: string, desk: PumpDesk): readonly string[] {
  if (figure === 'pipe-stack') return valuesOfStack
  const [name, id = ''] = figure.split(':')
  if (figure === 'lowering' || figure === 'raising') return valuesBehindLowering(figure, desk)
  if (name === 'lift') return valuesBehindLift(id, desk)
  if (name === 'tightening-order') return [`${id}.order`, `${id}.passes`]
  if (name === 'stations') return valuesBehindStations(figure)
  if (name === 'portable-arrangement') return portableValueIds
  return name === 'seal-orientation' ? [`${id}.lips`] : []
}
