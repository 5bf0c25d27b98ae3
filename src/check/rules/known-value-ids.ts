import {
  houseValueNames,
  jointValueNames,
  liftValueNames,
  loweringValueNames,
  oilValueNames,
  oRingValueNames,
  pumpValueNames,
  purgeValueNames,
  sealValueNames,
  strippingValueNames,
  supplyValueNames,
} from '../../handbook-model/computed.ts'
import {type Design, isHungDesign} from '../../handbook-model/design-content.ts'
import {onceForEach} from '../../handbook-model/once-for-each.ts'

const ofRing = ['running-diameter', 'new', 'minimum-new', 'renewal']
/** Of pumps that hang in tanks. */
const ofHungPumps = [
  ...[
    'volume',
    'test-pressure',
    'upper-bound',
    'hold-time',
    'smallest-leak',
    'allowed-leak',
    'allowed-drop',
    'pressure-per-kelvin',
  ].map((one) => `cofferdam.${one}`),
  ...[
    'relief-setting',
    'stack-length',
    'outer-pipe-bore',
    'inner-pipe-outside',
    'head-volume',
    'rating',
    'lip-reverse-limit',
  ].map((one) => `cofferdam.${one}`),
  ...purgeValueNames.map((one) => `purge.${one}`),
  ...['vacuum-valve', 'pressure-valve', 'volume', 'height', 'ventilation-time'].map((one) => `tank.${one}`),
]

const fixed = [
  ...houseValueNames.map((one) => `house.${one}`),
  ...supplyValueNames.map((one) => `supply.${one}`),
  ...['system-pressure', 'return-pressure', 'purge-regulator-maximum', 'oil'].map(
    (one) => `hydraulics.${one}`,
  ),
]

/** Every value id that a pump of this design has; a procedure may refer to these and no others. */
export const knownValueIds: (design: Design) => ReadonlySet<string> = onceForEach(
  (design: Design) =>
    new Set([
      ...design.joints.flatMap((joint) => jointValueNames.map((one) => `${joint.id}.${one}`)),
      ...design.rings.flatMap((ring) => ofRing.map((one) => `${ring.id}.${one}`)),
      ...design.lifts.flatMap((lift) => liftValueNames.map((one) => `${lift.id}.${one}`)),
      ...design.seals.flatMap((seal) =>
        sealValueNames
          .filter((one) => one !== 'pressure' || isHungDesign(design))
          .map((one) => `${seal.id}.${one}`),
      ),
      ...design.oRings.flatMap((ring) => oRingValueNames.map((one) => `${ring.id}.${one}`)),
      ...(design.lowering ? loweringValueNames.map((one) => `lowering.${one}`) : []),
      ...(design.oil ? oilValueNames.map((one) => `oil.${one}`) : []),
      ...(design.curve ? pumpValueNames.curve.map((one) => `curve.${one}`) : []),
      ...(design.motor ? pumpValueNames.motor.map((one) => `motor.${one}`) : []),
      ...(design.motor && design.curve ? pumpValueNames.both.map((one) => `motor.${one}`) : []),
      ...(design.stripping ? strippingValueNames.map((one) => `stripping.${one}`) : []),
      ...design.masses.map((one) => `mass.${one.id}`),
      ...design.settings.map((one) => `setting.${one.id}`),
      ...design.ratings.map((one) => `rating.${one.id}`),
      ...design.geometry.map((one) => `geometry.${one.id}`),
      ...(isHungDesign(design) ? ofHungPumps : []),
      ...fixed,
    ]),
)
