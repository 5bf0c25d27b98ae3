import type {KnownDatum} from '../handbook-model/datum.ts'
import type {Design, Joint} from '../handbook-model/design-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {printedText, printQuantity} from '../quantities/print-quantity.ts'
import type {Quantity} from '../quantities/quantity.ts'

/** What rounding of the calculation may add to a share of the yield stress. */
const rounding = 1e-6

/**
 * Refuses a joint whose bolts bear more than its utilisation allows.
 *
 * @param utilisation
 *   Share of the yield stress that the design allows.
 * @param combined
 *   Tension and torsion together over the yield stress.
 */
export function refuseOverstressedBolt(
  joint: Joint,
  design: Design,
  utilisation: KnownDatum<'ratio'>,
  combined: Quantity<'ratio'>,
  files: ContentFiles,
): void {
  if (combined.si <= utilisation.quantity.si + rounding) return
  addMessage(
    files,
    utilisation.place,
    'no-overstressed-bolt',
    `Unexpected combined stress of \`${printedText(printQuantity(combined, '%', 2))}\` of the yield stress in joint \`${joint.id}\` of \`${design.id}\`, expected at most \`${utilisation.figure} ${utilisation.unit}\``,
    {note: 'Lower the utilisation or change the fastener'},
  )
}
