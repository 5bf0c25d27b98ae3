import type {PortableWords} from '../figures/portable/labels.ts'
import type {Misfit} from '../figures/portable/portable-geometry.ts'
import type {portableLengths} from '../handbook-model/portable-lengths.ts'

/** English words of the arrangement of a portable pump. */
export const portableWordsEn: PortableWords & {
  readonly lengths: (lengths: string) => string
  /** Short names of the lengths. */
  readonly short: Readonly<Record<(typeof portableLengths)[keyof typeof portableLengths], string>>
  readonly notKnown: (lengths: string) => string
  readonly misfit: Readonly<Record<Misfit, string>>
} = {
  view: 'Arrangement of the portable pump, seen from the side. A tripod stands over the hatch, hand winch on its left leg, hose saddle low between the two other legs. The pump hangs in the tank on the holding chain, which goes up through the split cover into the chain claw below the head; the wire of the winch hangs loose beside it. Cargo hose and oil hoses are strapped to the chain, go up over the saddle and down to the deck. To the right on deck stand the discharge piece with drain cock, gauge cock, valve and flap at the connection CARGO IN, then the control frame with the local control valve, two gauges and bleed cocks P and R, then the outlet post with HP OUT above RT OUT. Hoses and the depth of the tank are broken off. Below on the right the pump stands alone and larger: left half from outside, right half cut through the axis of the shaft, strainer below, impeller in its casing, leak chamber between lip seal and face seal, motor, head with couplings and lifting eye, discharge pipe and flange on the right.',
  order: 'Numbers of the parts list, from the pump up to the deck:',
  title: 'Pump in half section',
  names: {
    winch: 'hand winch',
    claw: 'chain claw',
    saddle: 'hose saddle',
    cover: 'split cover',
    strap: 'strap',
    bottom: 'tank bottom',
    cargoIn: 'CARGO IN',
    pressureOut: 'HP OUT',
    returnOut: 'RT OUT',
    pressureBleed: 'P',
    returnBleed: 'R',
    leakChamber: 'leak chamber',
    flange: 'discharge flange',
  },
  hatch: (least, most) => `hatch ${least} to ${most}`,
  depth: (most) => `${most} at most`,
  oilHoses: (length) => `each pair ${length}`,
  cargoHoses: (length) => `${length} in all`,
  lengths: (lengths) => `Drawn from: ${lengths}.`,
  short: {
    'geometry.strainer-diameter': 'strainer ⌀',
    'geometry.strainer-height': 'strainer high',
    'geometry.impeller-diameter': 'impeller ⌀',
    'geometry.impeller-outlet': 'impeller outlet',
    'geometry.eye-diameter': 'impeller eye ⌀',
    'geometry.casing-height': 'casing high',
    'geometry.leak-chamber-height': 'leak chamber high',
    'geometry.motor-diameter': 'motor ⌀',
    'geometry.motor-height': 'motor high',
    'geometry.shaft-diameter': 'shaft ⌀',
    'geometry.shaft-offset': 'shaft off the middle',
    'geometry.discharge-pipe-outside': 'discharge pipe ⌀',
    'geometry.discharge-flange-diameter': 'discharge flange ⌀',
    'geometry.hose-bore': 'bore of cargo hose',
    'geometry.hose-outside': 'cargo hose ⌀',
    'geometry.pressure-hose-bore': 'bore of pressure hose',
    'geometry.return-hose-bore': 'bore of return hose',
    'setting.bend-radius': 'bend of hoses',
    'geometry.foot-circle': 'circle of feet ⌀',
    'geometry.leg-diameter': 'leg ⌀',
  },
  notKnown: (lengths) => `Not drawn. NOT KNOWN: ${lengths}.`,
  misfit: {
    heights:
      'Not drawn: strainer, casing, leak chamber and motor leave no room for the head within the length of the pump.',
    casing: 'Not drawn: the impeller does not fit into the outside of the pump.',
    pipe: 'Not drawn: the discharge pipe does not fit beside the motor, or the bore of its hose not into it.',
  },
}
