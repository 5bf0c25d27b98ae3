import type {Figure} from '../figures/figure.ts'
import {type DiagramPoint, type DiagramRole, isolationDiagram} from '../figures/isolation-diagram.ts'
import type {DiagramSpace} from '../figures/isolation-machine.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import type {IsolationPoint, IsolationRole, IsolationRoleName} from '../handbook-model/vessel-content.ts'
import type {PumpDesk} from './desk.ts'
import {isolationWordsEn} from './figure-words-en.ts'
import {isolationLines} from './isolation-lines.ts'
import {pointState, restoredState, securedBy} from './point-state.ts'
import {standingSections} from './standing-items.ts'
import {wordsEn} from './words-en.ts'

/** What the points of a role cut off, and whether they stand one behind the other in one pipe; a role of no line is not drawn. */
const drawn: Partial<Record<IsolationRoleName, {readonly space: DiagramSpace; readonly onePipe: boolean}>> = {
  pressure: {space: 'oil side', onePipe: true},
  return: {space: 'oil side', onePipe: true},
  pilot: {space: 'oil side', onePipe: true},
  discharge: {space: 'cargo side', onePipe: false},
  stripping: {space: 'cargo side', onePipe: true},
  'purge-supply': {space: 'cofferdam', onePipe: true},
  'purge-outlet': {space: 'cofferdam', onePipe: true},
  heating: {space: 'tank', onePipe: false},
  'tank-cleaning': {space: 'tank', onePipe: false},
  'cofferdam-relief': {space: 'cofferdam', onePipe: false},
  'cofferdam-vent': {space: 'cofferdam', onePipe: true},
}

/**
 * The isolation list of this pump as a diagram, isolated or restored.
 *
 * What the procedure neither isolates nor restores stands as in normal use and says that it stays.
 */
export function isolationFigure(
  phase: 'isolated' | 'restored',
  procedure: Procedure,
  desk: PumpDesk,
): Figure {
  const moved = movedRoles(procedure, desk)
  const {position} = desk
  const numbers = new Map(isolationLines(position).map(({id, number}) => [id, Number(number)]))
  const roles = position.isolation.flatMap((role): readonly DiagramRole[] => {
    const place = drawn[role.role]
    if (!place) return []
    const points = role.points.map((point) => ({
      number: numbers.get(point.id) ?? 0,
      tag: point.tag,
      kind: point.kind,
      kindWords: wordsEn.pointKinds[point.kind],
      ...(moved.has(role.role) ? stateIn(phase, point) : staying(point)),
    }))
    return [{title: wordsEn.roles[role.role], ...place, points, noneBecause: reasonOf(role)}]
  })
  return isolationDiagram({
    pump: position.tag,
    phase: wordsEn.phases[phase],
    roles,
    words: isolationWordsEn,
  })
}

type State = Pick<DiagramPoint, 'state' | 'words' | 'stays' | 'secured'>

function stateIn(phase: 'isolated' | 'restored', point: IsolationPoint): State {
  if (phase === 'restored') return {state: restoredState(point), words: restoredWords(point), stays: false}
  const secured = securedBy(point.lock.en)
  return {
    state: pointState(point.kind, point.isolated.en),
    words: point.isolated.en,
    stays: false,
    ...(secured ? {secured} : {}),
  }
}

function staying(point: IsolationPoint): State {
  return {state: pointState(point.kind, point.normal.en), words: point.normal.en, stays: true}
}

/** What a point is restored with, without its tag where the words begin with it. */
function restoredWords({tag, restoredWith}: IsolationPoint): string {
  const words = restoredWith.en
  return words.startsWith(`${tag} `) ? words.slice(tag.length + 1) : words
}

function reasonOf(role: IsolationRole): string {
  return role.noneBecause?.en ?? ''
}

function movedRoles(procedure: Procedure, desk: PumpDesk): ReadonlySet<IsolationRoleName> {
  const steps = standingSections(procedure, desk).flatMap(({items}) =>
    items.flatMap((item) => (item.kind === 'step' ? [item.step] : [])),
  )
  return new Set(
    steps.flatMap(({parts}) =>
      parts.flatMap((part) => (part.kind === 'isolate' || part.kind === 'restore' ? [part.role] : [])),
    ),
  )
}
