import type {Content} from '../handbook-model/content.ts'
import type {Datum} from '../handbook-model/datum.ts'
import type {Design, Joint} from '../handbook-model/design-content.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import type {QuantityKind} from '../quantities/quantity.ts'
import {writtenText} from './value-builder.ts'

/** A value of the content that no calculation accepts. */
interface Refusal {
  readonly place: Place
  readonly what: string
  readonly expected: string
}

/**
 * Tells every stated value that lies outside the range of the calculation it is meant for.
 *
 * A calculation refuses such a value by throwing, which is for mistakes of the program; the author reads a message.
 *
 * @returns
 *   Whether any value was refused, so that nothing can be computed.
 */
export function refuseOutOfRange(content: Content, files: ContentFiles): boolean {
  const refusals = [
    ...frictionRefusals(content),
    ...passRefusals(content),
    ...[...content.designs.values()].flatMap((design) => designRefusals(design, content)),
    ...[...content.vessels.values()].flatMap((vessel) => lipRefusals(vessel, content)),
  ]
  for (const {place, what, expected} of refusals) {
    addMessage(files, place, 'no-impossible-value', `Unexpected ${what}, expected ${expected}`, {
      note: 'Read the drawing or the record again',
    })
  }
  return refusals.length > 0
}

function frictionRefusals(content: Content): readonly Refusal[] {
  return content.tables.friction.rows.flatMap((row) =>
    [row.threadFriction, row.headFriction]
      .filter(({si}) => si < 0.02 || si > 0.6)
      .map(({si}) => ({
        place: row.place,
        what: `friction of \`${si}\` in row \`${row.id}\``,
        expected: '`0.02` to `0.60`',
      })),
  )
}

function passRefusals(content: Content): readonly Refusal[] {
  const shares = content.office.house.tighteningPasses
  if (shares.some(({kind}) => kind === 'not-known')) return []
  const known = shares.flatMap((share) => (share.kind === 'known' ? [share] : []))
  const fallen = known.find((share, index) => share.quantity.si <= (known[index - 1]?.quantity.si ?? 0))
  const last = known.at(-1)
  if (fallen) return [refusal(fallen, 'tightening pass', 'a larger share than that of the pass before')]
  if (!last) {
    return [
      {
        place: content.office.place,
        what: 'house rules without a tightening pass',
        expected: '`tightening-passes:` that end at `100 %`',
      },
    ]
  }
  return Math.abs(last.quantity.si - 1) > 1e-9 ? [refusal(last, 'last tightening pass', '`100 %`')] : []
}

function designRefusals(design: Design, content: Content): readonly Refusal[] {
  if (!design.cofferdam) return []
  const {allowedLeak, rating} = design.cofferdam
  return [
    ...design.joints.flatMap((joint) => jointRefusals(joint, content)),
    ...nothing(allowedLeak, 'allowed leak', 'a flow above nothing, or `not known` with a reason'),
    ...nothing(rating, 'rating of the cofferdam', 'a pressure above nothing'),
  ]
}

function jointRefusals(joint: Joint, content: Content): readonly Refusal[] {
  const {utilisation} = joint
  const {boltHeads, clearanceHoles} = content.tables
  const head = boltHeads.rows.find((row) => row.size === joint.thread.id && row.head === joint.head)
  const hole = clearanceHoles.rows.find((row) => row.size === joint.thread.id)
  const outside =
    utilisation.kind === 'known' && (utilisation.quantity.si <= 0 || utilisation.quantity.si > 1)
  return [
    ...(outside
      ? [refusal(utilisation, `utilisation in joint \`${joint.id}\``, 'above `0 %` and at most `100 %`')]
      : []),
    ...(joint.count > 48
      ? [
          {
            place: joint.place,
            what: `count of \`${joint.count}\` bolts in joint \`${joint.id}\``,
            expected: 'at most `48`, up to which the tightening order is proved',
          },
        ]
      : []),
    ...(head && hole && hole[joint.hole].si >= head.bearingDiameter.si
      ? [
          {
            place: hole.place,
            what: `${joint.hole} hole of \`${joint.thread.id}\` as large as the bearing face of its ${joint.head} head`,
            expected: 'a smaller hole',
          },
        ]
      : []),
  ]
}

/** A lip that holds less than the vacuum of the tank would be lifted by an empty cofferdam. */
function lipRefusals(vessel: Vessel, content: Content): readonly Refusal[] {
  return vessel.positions.flatMap((position) => {
    const lip = content.designs.get(position.design.id)?.cofferdam?.lipReverseLimit
    const tank = vessel.tanks.find((one) => one.id === position.tank?.id)?.vacuumValveSetting
    if (lip?.kind !== 'known' || tank?.kind !== 'known' || lip.quantity.si + tank.quantity.si > 0) return []
    return [
      refusal(lip, `seal lip limit at \`${position.tag}\``, 'more than the vacuum that its tank may have'),
    ]
  })
}

function nothing(datum: Datum<QuantityKind>, what: string, expected: string): readonly Refusal[] {
  return datum.kind === 'known' && datum.quantity.si <= 0 ? [refusal(datum, what, expected)] : []
}

function refusal(datum: Datum<QuantityKind>, what: string, expected: string): Refusal {
  const written = datum.kind === 'known' ? writtenText(datum) : 'not known'
  return {place: datum.place, what: `${what} of \`${written}\``, expected}
}
