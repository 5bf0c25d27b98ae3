import {sealPressure, sealPressureNote} from '../calculations/gas/seal-pressure.ts'
import {lipSpeed, lipSpeedNote} from '../calculations/seals/lip-speed.ts'
import {oRingGlandNote, oRingSqueezeLimits} from '../calculations/seals/o-ring-squeeze.ts'
import {oRingStretch} from '../calculations/seals/o-ring-stretch.ts'
import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Datum} from '../handbook-model/datum.ts'
import type {Design, ORing, PumpCurve, Seal} from '../handbook-model/design-content.ts'
import type {Position, Tank, Vessel} from '../handbook-model/vessel-content.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {printedText, printQuantity} from '../quantities/print-quantity.ts'
import {quantityOf} from '../quantities/quantity.ts'
import {calculationSources} from './calculation-sources.ts'
import {computedValue} from './computed-value.ts'
import {sourceUse, textValue, tracedConstant, writtenText} from './value-builder.ts'

/** Values of the O-rings of a design, and the speed below each seal lip. */
export function sealValuesOfDesign(design: Design, files: ContentFiles): readonly ComputedValue[] {
  return [
    ...design.oRings.flatMap((ring) => oRingValues(ring, design, files)),
    ...design.seals.map((seal) => speedValue(seal, design.curve, design, files)),
  ]
}

/** Highest pressure over each seal on one pump: tank full of the densest cargo, cofferdam at atmosphere. */
export function sealValuesOfPosition(
  {
    vessel,
    position,
    tank,
    design,
    content,
  }: {
    readonly vessel: Vessel
    readonly position: Position
    readonly tank: Tank
    readonly design: Design
    readonly content: Content
  },
  files: ContentFiles,
): readonly ComputedValue[] {
  const cargoes = vessel.cargoes.flatMap(
    ({id}) => content.tables.cargoes.rows.find((row) => row.id === id) ?? [],
  )
  const unknown = cargoes.find(({density}) => density.kind === 'not-known')
  const [densest] = [...cargoes].sort((a, b) => siOf(b.density) - siOf(a.density))
  const cargo = unknown ?? densest
  if (!cargo) return []
  return design.seals.map((seal) =>
    computedValue(
      {
        id: `${seal.id}.pressure`,
        title: `highest pressure from the cargo over the ${seal.title.en}`,
        ofDesign: false,
        place: tank.place,
        where: position.tag,
        note: sealPressureNote,
        sources: calculationSources['seal-pressure'],
        inputs: {
          density: {symbol: 'ρ', title: `density of ${cargo.title}`, datum: cargo.density},
          level: {symbol: 'h', title: 'tank height at the sump', datum: tank.height},
          tankPressure: {
            symbol: 'p tank',
            title: 'setting of the pressure valve of the tank',
            datum: tank.pressureValveSetting,
          },
        },
        constants: [
          tracedConstant('p cofferdam', 'cofferdam open to the air', '0 bar(g)', 'least pressure'),
          tracedConstant('g', 'standard gravity', '9.80665 m/s²', 'definition'),
        ],
        compute: (known) => ({
          quantity: sealPressure({...known, cofferdamPressure: quantityOf('gauge-pressure', 0)}),
          unit: 'bar',
          decimals: 2,
          condition: `full tank of ${cargo.title}, the densest cargo of the list`,
        }),
      },
      files,
    ),
  )
}

function siOf(datum: Datum<'density'>): number {
  return datum.kind === 'known' ? datum.quantity.si : Number.POSITIVE_INFINITY
}

function speedValue(
  seal: Seal,
  curve: PumpCurve | undefined,
  design: Design,
  files: ContentFiles,
): ComputedValue {
  const unstated: Datum<'rotational-speed'> = {
    kind: 'not-known',
    reason: 'the design states no curve',
    place: seal.place,
  }
  return computedValue(
    {
      id: `${seal.id}.lip-speed`,
      title: `speed below the lips of the ${seal.title.en}`,
      ofDesign: true,
      place: seal.place,
      where: design.title.en,
      note: lipSpeedNote,
      sources: calculationSources['lip-speed'],
      inputs: {
        diameter: {symbol: 'd', title: 'running diameter', datum: seal.runningDiameter},
        speed: {symbol: 'n', title: 'speed of the curve', datum: curve?.speed ?? unstated},
      },
      compute: ({diameter, speed}) => ({
        quantity: lipSpeed(diameter, speed),
        unit: 'm/s',
        decimals: 1,
        condition: 'at the speed of the curve',
      }),
    },
    files,
  )
}

function oRingValues(ring: ORing, design: Design, files: ContentFiles): readonly ComputedValue[] {
  const facts = {ofDesign: true, place: ring.place, where: design.title.en, note: oRingGlandNote}
  const sources = calculationSources['o-ring-gland']
  const section = {symbol: 'CS', title: 'section of the ring', datum: ring.section}
  const size =
    ring.insideDiameter.kind === 'known' && ring.section.kind === 'known'
      ? `${ring.insideDiameter.figure} × ${writtenText(ring.section)}`
      : undefined
  return [
    size === undefined || ring.section.kind !== 'known'
      ? computedValue(
          {
            ...facts,
            id: `${ring.id}.size`,
            title: `size of the ${ring.title.en}`,
            sources: [],
            inputs: {section, inside: {symbol: 'ID', title: 'inside diameter', datum: ring.insideDiameter}},
            compute: (known) => ({quantity: known.section, unit: 'mm', decimals: 2}),
          },
          files,
        )
      : textValue(size, {
          id: `${ring.id}.size`,
          title: `inside diameter and section of the ${ring.title.en}`,
          ofDesign: true,
          place: ring.place,
          sources: [sourceUse(ring.section.origin)],
        }),
    computedValue(
      {
        ...facts,
        id: `${ring.id}.squeeze`,
        title: `squeeze of the ${ring.title.en}`,
        sources,
        formula: oRingGlandNote.formula.slice(0, 2),
        inputs: {
          section,
          depth: {symbol: 'h', title: 'depth of the groove', datum: ring.grooveDepth},
          ofSection: {symbol: 't', title: 'tolerance of the section', datum: ring.sectionTolerance},
          ofDepth: {symbol: 'u', title: 'tolerance of the depth', datum: ring.depthTolerance},
        },
        compute: (known) => {
          const {least, greatest} = oRingSqueezeLimits(known, {
            section: known.ofSection,
            depth: known.ofDepth,
          })
          const [low, high] = [least, greatest].map((one) => printQuantity(one.share, '%', 1))
          return {
            quantity: least.share,
            unit: '%',
            decimals: 1,
            text: `${low?.figure ?? ''} to ${high ? printedText(high) : ''}`,
          }
        },
      },
      files,
    ),
    computedValue(
      {
        ...facts,
        id: `${ring.id}.stretch`,
        title: `stretch of the ${ring.title.en}`,
        sources,
        formula: oRingGlandNote.formula.slice(2, 3),
        inputs: {
          section,
          insideDiameter: {symbol: 'ID', title: 'inside diameter of the ring', datum: ring.insideDiameter},
          grooveDiameter: {symbol: 'dg', title: 'diameter of the groove', datum: ring.grooveDiameter},
        },
        compute: (known) => ({quantity: oRingStretch(known).stretch, unit: '%', decimals: 1}),
      },
      files,
    ),
  ]
}
