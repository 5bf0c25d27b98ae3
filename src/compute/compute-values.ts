import type {ComputedValue, ComputedValues, PositionValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import {type Design, type HungDesign, isHungDesign} from '../handbook-model/design-content.ts'
import {
  type HungPosition,
  isHung,
  type Position,
  type Tank,
  type Vessel,
} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {cofferdamValues} from './cofferdam-values.ts'
import {jointValues} from './joint-values.ts'
import {liftingValues} from './lifting-values.ts'
import {noContradictingSource} from './no-contradicting-source.ts'
import {noWrenchAboard} from './no-wrench-aboard.ts'
import {oilValues} from './oil-values.ts'
import {pumpValues} from './pump-values.ts'
import {purgeValues} from './purge-values.ts'
import {refuseOutOfRange} from './refuse-out-of-range.ts'
import {replaceValues} from './replace-values.ts'
import {sealValuesOfDesign, sealValuesOfPosition} from './seal-values.ts'
import {designStatedValues, hungStatedValues, positionStatedValues} from './stated-values.ts'
import {strippingValues} from './stripping-values.ts'
import {ventilationValues} from './ventilation-values.ts'
import {wearRingValues} from './wear-ring-values.ts'

/**
 * Computes every value of every pump position, with formula, inputs and sources.
 *
 * Values of a design are computed once and shared by its pumps. What is not
 * known stays not known, and so does everything that needs it.
 */
export function computeValues(content: Content, files: ContentFiles): ComputedValues {
  if (refuseOutOfRange(content, files)) return {vessels: new Map()}
  const ofDesigns = new Map(
    [...content.designs].map(([id, design]) => [id, designValues(design, content, files)]),
  )
  const stated = new Map(
    [...content.vessels].map(([id, vessel]) => [
      id,
      new Map(
        vessel.positions.map((position) => [
          position.id,
          valuesOf(vessel, position, ofDesigns.get(position.design.id) ?? [], content, files),
        ]),
      ),
    ]),
  )
  const vessels = replaceValues(stated, content, files)
  reportUnknown(vessels, files)
  noWrenchAboard(content, vessels, files)
  noContradictingSource(content, vessels, files)
  reportSources(vessels, content, files)
  return {vessels}
}

function designValues(design: Design, content: Content, files: ContentFiles): readonly ComputedValue[] {
  return [
    ...design.joints.flatMap((joint) => jointValues(joint, design, content, files)),
    ...design.rings.flatMap((ring) => wearRingValues(ring, content)),
    ...liftingValues(design, content, files),
    ...sealValuesOfDesign(design, files),
    ...pumpValues(design, content, files),
    ...designStatedValues(design),
  ]
}

function valuesOf(
  vessel: Vessel,
  position: Position,
  ofDesign: readonly ComputedValue[],
  content: Content,
  files: ContentFiles,
): PositionValues {
  const design = content.designs.get(position.design.id)
  if (!design)
    throw new Error(`Unexpected design \`${position.design.id}\`, expected one that the check has proved`)
  const all = [
    ...ofDesign,
    ...positionStatedValues(vessel, position, content),
    ...(isHung(position) && isHungDesign(design)
      ? hungValues({vessel, position, design, content}, files)
      : []),
  ]
  return new Map(all.map((value) => [value.id, value]))
}

/** Values of a pump that hangs in a tank. */
function hungValues(
  {
    vessel,
    position,
    design,
    content,
  }: {
    readonly vessel: Vessel
    readonly position: HungPosition
    readonly design: HungDesign
    readonly content: Content
  },
  files: ContentFiles,
): readonly ComputedValue[] {
  const tank = tankOf(vessel, position)
  const cofferdam = cofferdamValues(vessel, position, tank, design, content)
  const ofCofferdam = (name: string): ComputedValue => {
    const value = cofferdam.find((one) => one.id === `cofferdam.${name}`)
    if (!value) throw new Error(`Unexpected gap for value \`cofferdam.${name}\`, expected one of each`)
    return value
  }
  return [
    ...hungStatedValues(position, tank),
    ...cofferdam,
    ...purgeValues(
      {content, vessel, position, volume: ofCofferdam('volume'), upperBound: ofCofferdam('upper-bound')},
      files,
    ),
    ...sealValuesOfPosition({vessel, position, tank, design, content}, files),
    ...(design.oil ? oilValues({content, vessel, position, oil: design.oil}, files) : []),
    ...ventilationValues({vessel, position, tank, content}, files),
    ...(design.stripping ? strippingValues({vessel, position, tank, riser: design.stripping}, files) : []),
  ]
}

function tankOf(vessel: Vessel, position: HungPosition): Tank {
  const tank = vessel.tanks.find((one) => one.id === position.tank.id)
  if (!tank)
    throw new Error(`Unexpected tank \`${position.tank.id}\`, expected one that the check has proved`)
  return tank
}

/** One note for each gap of a pump, with all the values that wait for it. */
function reportUnknown(vessels: ComputedValues['vessels'], files: ContentFiles): void {
  for (const [vessel, positions] of vessels) {
    for (const [position, values] of positions) {
      const waiting = new Map<string, {readonly value: ComputedValue; readonly ids: string[]}>()
      for (const value of values.values()) {
        if (value.result.kind === 'known' || value.calculation === undefined) continue
        const missing = value.result.missing.join(' and ')
        const known = waiting.get(missing)
        if (known) known.ids.push(value.id)
        else waiting.set(missing, {value, ids: [value.id]})
      }
      for (const [missing, {value, ids}] of waiting) {
        addMessage(
          files,
          value.place,
          'no-uncomputable-value',
          `Unexpected gap, expected ${missing} to compute ${ids.map((id) => `\`${id}\``).join(', ')} of \`${vessel}/${position}\``,
          {note: 'The page prints NOT KNOWN until it is measured and reported'},
        )
      }
    }
  }
}

function reportSources(vessels: ComputedValues['vessels'], content: Content, files: ContentFiles): void {
  const used = new Map<string, Set<ComputedValue>>()
  for (const positions of vessels.values()) {
    for (const values of positions.values()) {
      for (const value of values.values()) {
        for (const {source} of value.sources) used.set(source, (used.get(source) ?? new Set()).add(value))
      }
    }
  }
  for (const [id, values] of used) {
    const source = content.sources.get(id)
    const [first] = values
    if (!source && first) {
      addMessage(
        files,
        first.place,
        'no-undefined-reference',
        `Unexpected source \`${id}\` of value \`${first.id}\` that sources.yaml does not hold, expected an entry of that id`,
        {note: 'Add the source with its edition and status to sources.yaml'},
      )
    } else if (source?.status === 'superseded') {
      addMessage(
        files,
        source.place,
        'no-superseded-source',
        `Unexpected superseded source \`${id}\` under ${values.size} values, expected a current one`,
        {
          note: `Move the values to ${source.supersededBy ? `\`${source.supersededBy.id}\`` : 'the current edition'}, or accept it in writing`,
        },
      )
    }
  }
}
