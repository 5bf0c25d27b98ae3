import type {z} from 'zod'
import type {Design, Joint, NamedValue} from '../../handbook-model/design-content.ts'
import type {QuantityKind} from '../../quantities/quantity.ts'
import {units} from '../../quantities/units.ts'
import {factValues} from './dynamic-maps.ts'
import {
  fields,
  identifier,
  list,
  localised,
  oneOf,
  quantity,
  reference,
  refuse,
  wholeNumber,
} from './placed-shape.ts'

const anyKind: readonly QuantityKind[] = [...new Set(units.map((unit) => unit.kind))]

function named<K extends QuantityKind>(...kinds: readonly K[]) {
  const shape: z.ZodType<NamedValue<K>> = fields({
    id: identifier,
    title: localised,
    value: quantity(...kinds),
    condition: localised.optional(),
  })
  return shape
}

const joint: z.ZodType<Joint> = fields({
  id: identifier,
  title: localised,
  thread: reference,
  class: reference,
  head: oneOf(['hexagon', 'socket']),
  hole: oneOf(['fine', 'medium', 'coarse']),
  count: wholeNumber(1, 64),
  length: quantity('length'),
  utilisation: quantity('ratio'),
  lubrication: reference.optional(),
  locking: localised,
  pattern: oneOf(['crosswise', 'single']),
  held: oneOf(['impeller-lock']).optional(),
}).transform(({class: propertyClass, ...rest}): Joint => ({...rest, propertyClass}))

const ring = fields({
  id: identifier,
  title: localised,
  'running-diameter': quantity('length'),
  material: localised,
  new: quantity('radial-clearance', 'diametral-clearance'),
  'minimum-new': quantity('radial-clearance', 'diametral-clearance'),
  renewal: quantity('radial-clearance', 'diametral-clearance'),
  'below-table': localised.optional(),
}).transform(({new: newClearance, ...rest}) => ({...rest, newClearance}))

const cofferdam = fields({
  'outer-pipe-bore': quantity('length'),
  'inner-pipe-outside': quantity('length'),
  'head-volume': quantity('volume'),
  rating: quantity('gauge-pressure'),
  'lip-reverse-limit': quantity('pressure-difference'),
  'allowed-leak': quantity('volume-flow'),
  'relief-valve-setting': quantity('gauge-pressure'),
})

const oil = fields({
  'pressure-pipe-bore': quantity('length'),
  'pressure-pipe-outside': quantity('length'),
  'return-pipe-bore': quantity('length'),
  'motor-casing': quantity('volume'),
  'control-valve': quantity('volume'),
})

const motor = fields({
  displacement: quantity('displacement'),
  'volumetric-efficiency': quantity('ratio'),
  'mechanical-efficiency': quantity('ratio'),
})

const curve = fields({
  speed: quantity('rotational-speed'),
  'shut-off-head': quantity('length'),
  flow: quantity('volume-flow'),
  head: quantity('length'),
  efficiency: quantity('ratio'),
})

const stripping = fields({
  'foot-below-stack': quantity('length'),
  'top-above-deck': quantity('length'),
  'back-pressure': quantity('gauge-pressure'),
})

const lift = fields({
  id: identifier,
  title: localised,
  mass: reference,
  legs: wholeNumber(1, 4),
  angle: quantity('angle'),
})

const lowering = fields({
  mass: reference,
  thread: reference,
  lubrication: reference,
  'washer-outside': quantity('length'),
  'washer-inside': quantity('length'),
  travel: quantity('length'),
})

const seal = fields({
  id: identifier,
  title: localised,
  part: reference,
  'running-diameter': quantity('length'),
  'seat-depth': quantity('length'),
  between: oneOf(['cargo-cofferdam', 'cofferdam-oil']),
  lips: list(fields({id: identifier, title: localised, faces: oneOf(['cargo', 'cofferdam', 'oil'])})),
}).transform((one, context) => {
  const sides: readonly string[] = one.between.split('-')
  const stray = one.lips.find(({faces}) => !sides.includes(faces))
  return stray
    ? refuse(
        context,
        `Unexpected lip \`${stray.id}\` that faces \`${stray.faces}\` in a seal between ${sides.join(' and ')}, expected ${sides.map((side) => `\`${side}\``).join(' or ')}`,
        {
          ruleId: 'no-wrong-shape',
          place: stray.place,
          note: 'Turn the lip, or state which spaces the seal parts',
        },
      )
    : one
})

const oRing = fields({
  id: identifier,
  title: localised,
  part: reference,
  section: quantity('length'),
  'section-tolerance': quantity('length'),
  'inside-diameter': quantity('length'),
  'groove-diameter': quantity('length'),
  'groove-depth': quantity('length'),
  'depth-tolerance': quantity('length'),
})

const wettedParts = fields({id: identifier, title: localised, material: reference.optional()})

const limit = fields({
  id: identifier,
  title: localised,
  side: oneOf(['not-above', 'not-below']),
  value: reference,
  outside: oneOf(['RENEW', 'STOP']),
  action: localised,
  held: oneOf(['setting-length']).optional(),
})

/** designs/<id>.yaml. */
export const designShape: z.ZodType<Design> = fields({
  id: identifier,
  title: localised,
  variant: localised,
  description: localised,
  'intended-use': localised,
  misuse: localised,
  'kept-for': localised.optional(),
  ratings: list(named(...anyKind)),
  facts: factValues,
  joints: list(joint),
  rings: list(ring),
  cofferdam: cofferdam.optional(),
  oil: oil.optional(),
  motor: motor.optional(),
  curve: curve.optional(),
  stripping: stripping.optional(),
  lifts: list(lift).optional(),
  lowering: lowering.optional(),
  seals: list(seal).optional(),
  'o-rings': list(oRing).optional(),
  wetted: list(wettedParts).optional(),
  masses: list(named('mass')),
  settings: list(named(...anyKind)),
  limits: list(limit),
  geometry: list(named('length')),
  'also-stated': list(
    fields({value: reference, says: quantity(...anyKind), reason: localised.optional()}),
  ).optional(),
}).transform(({lifts, seals, oRings, wetted, ...rest}) => ({
  ...rest,
  lifts: lifts ?? [],
  seals: seals ?? [],
  oRings: oRings ?? [],
  wetted: wetted ?? [],
}))
