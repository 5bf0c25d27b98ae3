import type {Facts} from '../conditions/decide-condition.ts'
import {factsOfPosition} from '../conditions/facts-of-position.ts'
import {
  type ComputedValue,
  type ComputedValues,
  notKnownWords,
  type PositionValues,
} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {PositionHead} from '../handbook-model/pages.ts'
import type {Position, Tank, Vessel} from '../handbook-model/vessel-content.ts'
import {printedText} from '../quantities/print-quantity.ts'
import {planPicture} from './plan-of-pump.ts'
import type {UrgentUse} from './urgent-use.ts'

/** One pump with everything that its pages are made from. */
export interface PumpDesk {
  readonly content: Content
  readonly vessel: Vessel
  readonly position: Position
  /** A portable pump hangs in none. */
  readonly tank?: Tank
  readonly design: Design
  readonly values: PositionValues
  readonly facts: Facts
  /** Urgent revisions that count for it; see `withUrgentUses`. */
  readonly urgent: readonly UrgentUse[]
  /** A copy for the office: explanations name file and line of each input. */
  readonly withPlaces: boolean
}

/** Gathers what belongs to one position; the check has proved that all of it exists. */
export function pumpDesk(
  content: Content,
  vessel: Vessel,
  position: Position,
  values: PositionValues,
  withPlaces = false,
): PumpDesk {
  const own = position.tank
  const tank =
    own &&
    found(
      vessel.tanks.find((one) => one.id === own.id),
      `tank ${own.id}`,
    )
  const design = found(content.designs.get(position.design.id), `design ${position.design.id}`)
  return {
    content,
    vessel,
    position,
    ...(tank ? {tank} : {}),
    design,
    values,
    facts: factsOfPosition(vessel, design, position, content.office.facts),
    urgent: [],
    withPlaces,
  }
}

/** The desks of a vessel in the order of its positions. */
export function desksOfVessel(
  content: Content,
  values: ComputedValues,
  vesselId: string,
  withPlaces = false,
): readonly PumpDesk[] {
  const vessel = found(content.vessels.get(vesselId), `vessel ${vesselId}`)
  const ofVessel = found(values.vessels.get(vesselId), `values of ${vesselId}`)
  return vessel.positions.map((position) =>
    pumpDesk(
      content,
      vessel,
      position,
      found(ofVessel.get(position.id), `values of ${position.id}`),
      withPlaces,
    ),
  )
}

/** A value of this pump by id. */
export function pumpValue(desk: PumpDesk, id: string): ComputedValue {
  return found(desk.values.get(id), `value ${id}`)
}

/** What the checks have proved to exist. */
export function found<T>(thing: T | undefined, what: string): T {
  if (thing === undefined) throw new Error(`Unexpected gap for ${what}, expected what the check has proved`)
  return thing
}

/** Identity of the pump as every page shows it. */
export function positionHead(desk: PumpDesk): PositionHead {
  const plan = planPicture(desk)
  return {
    id: desk.position.id,
    tag: desk.position.tag,
    tankTag: desk.tank?.tag ?? '',
    keptAt: desk.position.keptAt?.en ?? '',
    serial: desk.position.serial,
    design: desk.design.title.en,
    variant: desk.design.variant.en,
    stackLength: desk.tank ? printedValue(pumpValue(desk, 'cofferdam.stack-length')) : '',
    tankVolume: desk.tank ? printedValue(pumpValue(desk, 'tank.volume')) : '',
    critical: desk.position.critical,
    ...(plan ? {plan} : {}),
  }
}

/** A value as one text, the words for not known where nobody knows it. */
export function printedValue(value: ComputedValue): string {
  const {result} = value
  if (result.kind === 'not-known') return notKnownWords
  return printedText(result.printed)
}
