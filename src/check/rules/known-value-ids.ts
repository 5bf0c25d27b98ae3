import {jointValueNames} from '../../handbook-model/computed.ts'
import type {Design} from '../../handbook-model/vessel-content.ts'

const ofRing = ['running-diameter', 'new', 'minimum-new', 'renewal']
const fixed = [
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
  ...['stabilise', 'isolation-proof', 'isolation-recheck', 'hold-least'].map((one) => `house.${one}`),
  ...['system-pressure', 'return-pressure', 'purge-regulator-maximum'].map((one) => `hydraulics.${one}`),
  ...['vacuum-valve', 'pressure-valve', 'volume', 'height'].map((one) => `tank.${one}`),
]

/** Every value id that a pump of this design has; a procedure may refer to these and no others. */
export function knownValueIds(design: Design): ReadonlySet<string> {
  return new Set([
    ...design.joints.flatMap((joint) => jointValueNames.map((one) => `${joint.id}.${one}`)),
    ...design.rings.flatMap((ring) => ofRing.map((one) => `${ring.id}.${one}`)),
    ...design.masses.map((one) => `mass.${one.id}`),
    ...design.settings.map((one) => `setting.${one.id}`),
    ...design.ratings.map((one) => `rating.${one.id}`),
    ...design.geometry.map((one) => `geometry.${one.id}`),
    ...fixed,
  ])
}
