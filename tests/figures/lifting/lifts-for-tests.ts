import {boundFigure} from '../../../src/compile/bound-figure.ts'
import {desksOfVessel, type PumpDesk} from '../../../src/compile/desk.ts'
import type {BoundFigure} from '../../../src/handbook-model/pages.ts'
import type {Procedure} from '../../../src/handbook-model/procedure.ts'
import {place} from '../../compile/data-for-tests.ts'
import {procedure, section, step} from '../../compile/procedures-for-tests.ts'
import {demonstration} from '../../content/demonstration.ts'

export const {content, values, files} = await demonstration()
const desks = [...content.vessels.keys()].flatMap((vessel) => desksOfVessel(content, values, vessel))
/** One pump of each design of each vessel, and of each design: lifts are the same on all pumps of a design. */
export const ofVessels = onceBy(desks, ({vessel, design}) => `${vessel.id} ${design.id}`)
export const firsts = onceBy(desks, ({design}) => design.id)

function onceBy(all: readonly PumpDesk[], by: (desk: PumpDesk) => string): readonly PumpDesk[] {
  return [...new Map(all.toReversed().map((one) => [by(one), one])).values()]
}

export function found<T>(thing: T | undefined, what: string): T {
  if (thing === undefined) throw new Error(`Unexpected gap for ${what}, expected one of the demonstration`)
  return thing
}

export function deskOf(design: string): PumpDesk {
  return found(
    firsts.find((one) => one.design.id === design),
    design,
  )
}

/** All that stands below a drawing. */
export function printedOf({data, values: below}: BoundFigure): string {
  return [data, ...below.map(({title, figure, unit}) => `${title} ${figure} ${unit}`)].join('; ')
}

export function figureOf(name: string, desk: PumpDesk): BoundFigure {
  return boundFigure('a', name, 'Figure', desk, onePage(name))
}

/** A procedure that shows one figure and nothing else. */
export function onePage(name: string): Procedure {
  const figure = {kind: 'figure' as const, figure: name, caption: 'Load', place}
  return procedure('lift', [section('one', [step('a', {parts: [figure]})])])
}
