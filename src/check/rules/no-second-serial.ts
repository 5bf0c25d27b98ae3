import type {Vessel} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'

/** A nameplate as it was read: where it is fitted, and where that is written. */
interface Nameplate {
  readonly fitted: string
  readonly place: Place
}

/**
 * No two pumps of the fleet, and no two heads, motors, sleeves or stacks, carry one serial number.
 *
 * What is read on a nameplate tells one pump from another; the history of a component would land on two.
 *
 * Accepted: motor `M-1` in one pump and `M-2` in the next; pump `7` with motor `7`.
 * Rejected: motor `M-1` in two pumps, of one vessel or of two.
 */
export function noSecondSerial(vessels: Iterable<Vessel>, files: ContentFiles): void {
  const known = new Map<string, Nameplate>()
  for (const vessel of vessels)
    for (const position of vessel.positions) {
      const fitted = `\`${position.tag}\` of \`${vessel.id}\``
      const plates = [{kind: 'pump', serial: position.serial, place: position.place}, ...position.components]
      for (const {kind, serial, place} of plates) {
        const first = known.get(`${kind} ${serial}`)
        if (first)
          addMessage(
            files,
            place,
            'no-second-serial',
            `Unexpected ${kind} \`${serial}\` at ${fitted}, expected another serial than that of the ${kind} at ${first.fitted}`,
            {cause: first.place, note: 'Read both nameplates again'},
          )
        else known.set(`${kind} ${serial}`, {fitted, place})
      }
    }
}
