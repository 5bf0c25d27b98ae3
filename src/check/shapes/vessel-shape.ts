import type {z} from 'zod'
import {positionRoles, type Vessel} from '../../handbook-model/vessel-content.ts'
import {components, factValues, fittedMaterials} from './dynamic-maps.ts'
import {isolationOf, isolationShape} from './isolation-shape.ts'
import {
  date,
  fields,
  identifier,
  leaf,
  list,
  localised,
  oneOf,
  plainNumber,
  quantity,
  reference,
  refuse,
  text,
  wholeNumber,
  yesNo,
} from './placed-shape.ts'
import {stackSections} from './stack-sections.ts'

const tank = fields({
  id: identifier,
  tag: text,
  volume: quantity('volume'),
  height: quantity('length'),
  'vacuum-valve': quantity('gauge-pressure'),
  'pressure-valve': quantity('gauge-pressure'),
  'recorded-residue': quantity('volume').optional(),
  plan: fields({
    'from-frame': plainNumber(0, 400),
    'to-frame': plainNumber(0, 400),
    'from-side': plainNumber(-1, 1),
    'to-side': plainNumber(-1, 1),
  }),
}).transform(({vacuumValve, pressureValve, ...rest}) => ({
  ...rest,
  vacuumValveSetting: vacuumValve,
  pressureValveSetting: pressureValve,
}))

const differences = list(fields({item: reference, reason: localised}))

const position = fields({
  id: identifier,
  tag: text,
  tank: reference.optional(),
  'kept-at': localised.optional(),
  design: reference,
  serial: text,
  role: oneOf(positionRoles),
  critical: yesNo,
  installed: date,
  'stack-length': quantity('length').optional(),
  'stack-sections': stackSections.optional(),
  'stack-supports': list(quantity('length')).optional(),
  components,
  facts: factValues,
  materials: fittedMaterials.optional(),
  isolation: isolationShape.optional(),
  differences: differences.optional(),
})

const hydraulics = fields({
  'system-pressure': quantity('gauge-pressure'),
  'return-pressure': quantity('gauge-pressure'),
  'purge-regulator-maximum': quantity('gauge-pressure'),
  oil: localised,
})

const supplies = fields({
  'purge-gas-flow': quantity('volume-flow'),
  'bottle-volume': quantity('volume'),
  'bottle-pressure': quantity('gauge-pressure'),
  'flush-flow': quantity('volume-flow'),
  'drum-volume': quantity('volume'),
  'oil-bulk-modulus': quantity('pressure-difference'),
  'oil-expansion': quantity('thermal-expansion'),
  'ventilator-flow': quantity('volume-flow'),
})

const toolAboard = fields({tool: reference, number: text, location: localised})
const spareAboard = fields({
  part: reference,
  quantity: wholeNumber(0, 9999),
  least: wholeNumber(0, 9999).optional(),
  cured: date.optional(),
  location: localised,
})

const hullNumber = leaf.transform((scalar, context) => {
  const fault = faultOfHullNumber(scalar.text)
  return fault
    ? refuse(context, fault, {
        ruleId: 'no-wrong-shape',
        place: scalar.place,
        note: 'The last digit is the last digit of 7a + 6b + 5c + 4d + 3e + 2f',
      })
    : scalar.text
})

/** A hull number of seven digits whose last one is the check digit of the first six. */
function faultOfHullNumber(number: string): string | undefined {
  if (!/^\d{7}$/u.test(number)) return `Unexpected hull number \`${number}\`, expected seven digits`
  const digits = [...number].map(Number)
  const sum = digits.slice(0, 6).reduce((total, digit, index) => total + digit * (7 - index), 0)
  return sum % 10 === digits[6]
    ? undefined
    : `Unexpected last digit of hull number \`${number}\`, expected \`${sum % 10}\``
}

/** vessels/<id>/vessel.yaml; the isolation pattern is filled in for every position. */
export const vesselShape: z.ZodType<Vessel> = fields({
  id: identifier,
  name: localised,
  'hull-number': hullNumber,
  built: date,
  'ship-type': localised,
  deadweight: quantity('mass'),
  locations: list(localised),
  hydraulics,
  supplies,
  facts: factValues,
  cargoes: list(reference),
  tanks: list(tank),
  positions: list(position),
  'isolation-pattern': isolationShape.optional(),
  'tools-aboard': list(toolAboard),
  'spares-aboard': list(spareAboard),
  differences: differences.optional(),
}).transform(({isolationPattern, positions, ...rest}) => ({
  ...rest,
  positions: positions.map(({isolation, stackSections: sections, materials, ...one}) => ({
    ...one,
    materials: materials ?? [],
    stackSections: sections ?? [],
    isolation: isolationOf(one.tag, one.role === 'portable' ? [] : (isolationPattern ?? []), isolation ?? []),
  })),
}))
