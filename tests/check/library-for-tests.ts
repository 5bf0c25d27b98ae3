import type {z} from 'zod'
import {checkShape} from '../../src/check/shapes/check-shape.ts'
import {designShape} from '../../src/check/shapes/design-shape.ts'
import {jobShape} from '../../src/check/shapes/job-shape.ts'
import {cautionShape, toolsShape} from '../../src/check/shapes/library-shapes.ts'
import {vesselShape} from '../../src/check/shapes/vessel-shape.ts'
import type {Design} from '../../src/handbook-model/design-content.ts'
import type {Caution, Job, Tool} from '../../src/handbook-model/office-content.ts'
import type {Vessel} from '../../src/handbook-model/vessel-content.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {printMessages} from '../../src/messages/print-messages.ts'
import {readYaml} from '../../src/read/read-yaml.ts'

const origin = 'origin: {status: as-built, source: drawing}'

/**
 * The product of a shape from text.
 *
 * @throws {Error}
 *   When the text does not fit; all messages are in the text.
 */
export function shaped<T>(path: string, text: string, shape: z.ZodType<T>): T {
  const files: ContentFiles = new Map()
  const node = readYaml(path, text, files)
  const product = node && checkShape(node, shape, files)
  if (product === undefined) throw new Error(printMessages(files, ''))
  return product
}

/** A caution of a hazard class; further lines replace its usual ones. */
export function caution(
  id: string,
  hazardClass: string,
  more: Readonly<Record<string, string>> = {},
): Caution {
  const fields: Readonly<Record<string, string>> = {
    id,
    'hazard-class': hazardClass,
    word: 'WARNING',
    'worst-harm': 'death-or-serious-injury',
    likelihood: 'could',
    title: `caution ${id}`,
    hazard: 'The load swings.',
    consequence: 'The load crushes people.',
    avoid: '[Stand clear of the load.]',
    protection: '[helmet]',
    'residual-risk': 'Hands guide the load.',
    source: 'drawing',
    ...more,
  }
  const text = Object.entries(fields).map(([key, value]) => `${key}: ${value}\n`)
  return shaped(`cautions/${id}.yaml`, text.join(''), cautionShape)
}

/** Cautions by id, each with its hazard class. */
export function cautions(classes: Readonly<Record<string, string>>): ReadonlyMap<string, Caution> {
  return new Map(Object.entries(classes).map(([id, hazardClass]) => [id, caution(id, hazardClass)]))
}

/** A job that holds procedures in order. */
export function job(id: string, procedures: readonly string[]): Job {
  const text = `id: ${id}
title: job ${id}
purpose: for tests
interval: {origin: {status: common-practice, source: common-practice}, events: [each docking], reason: it wears}
procedures: [${procedures.join(', ')}]
as-found: []
as-left: []
`
  const {when: _when, ...shape} = shaped(`jobs/${id}.yaml`, text, jobShape)
  return shape
}

/** tools.yaml with a gauge that says what it shows, a micrometer, and a spanner that shows nothing. */
export const toolsText = `${origin}
tools:
  - {id: gauge, title: gauge, size: to six bar, instrument: {graduation: 0.01 bar, uncertainty: 0.02 bar}}
  - {id: micrometer, title: micrometer, size: large, instrument: {graduation: 0.01 mm, uncertainty: 0.01 mm}}
  - {id: spanner, title: spanner, size: M12}
`

export function tools(): ReadonlyMap<string, Tool> {
  return new Map(shaped('tools.yaml', toolsText, toolsShape).tools.map((tool) => [tool.id, tool]))
}

/** A design with a joint, a ring, and one value in each list. */
export const designText = `id: design-a
title: design a
variant: a
description: a pump
intended-use: pumping
misuse: running dry
${origin}
ratings:
  - {id: highest-pressure, title: highest pressure, value: 280 bar(g)}
facts: {}
joints:
  - {id: hub-bolts, title: hub bolts, thread: M12, class: A4-80, head: hexagon, hole: medium, count: 8, length: 40 mm, utilisation: 70 %, lubrication: paste, locking: washers, pattern: crosswise}
rings:
  - {id: lower-ring, title: lower ring, running-diameter: 200 mm, material: bronze, new: 0.50 mm diametral, minimum-new: 0.40 mm diametral, renewal: 1.20 mm diametral}
cofferdam: {outer-pipe-bore: 150 mm, inner-pipe-outside: 140 mm, head-volume: 2 l, rating: 6 bar(g), lip-reverse-limit: 3 bar, allowed-leak: 10 ml/min, relief-valve-setting: 3 bar(g)}
masses:
  - {id: head, title: head, value: 186 kg}
settings:
  - {id: run-out, title: run-out, value: 0.05 mm}
limits:
  - {id: ring-renewal, title: ring clearance, side: not-above, value: lower-ring.renewal, outside: RENEW, action: Renew the ring.}
  - {id: ring-least, title: ring clearance, side: not-below, value: lower-ring.minimum-new, outside: STOP, action: Measure again.}
  - {id: run-out-most, title: run-out, side: not-above, value: setting.run-out, outside: STOP, action: Fit it again.}
  - {id: pressure-most, title: pressure, side: not-above, value: rating.highest-pressure, outside: STOP, action: Stop.}
  - {id: drop-most, title: drop, side: not-above, value: cofferdam.allowed-drop, outside: STOP, action: Find the leak.}
geometry:
  - {id: head-height, title: height of the head, value: 0.80 m}
`

export function design(): Design {
  return shaped('designs/design-a.yaml', designText, designShape)
}

/** Facts and isolation of the two pumps of a vessel, as YAML maps. */
export interface TwoPumps {
  readonly vesselFacts?: string
  readonly facts?: string
  readonly secondFacts?: string
  readonly isolation?: string
  readonly secondIsolation?: string
}

/** A vessel with the pumps `1p` and `1s` in one tank. */
export function vesselText({
  vesselFacts,
  facts,
  secondFacts,
  isolation,
  secondIsolation,
}: TwoPumps = {}): string {
  const pump = (id: string, ownFacts = '{}', ownIsolation = '{}'): string =>
    `  - {id: ${id}, tag: ${id.toUpperCase()}, tank: one, design: design-a, serial: "${id}-7", role: main, critical: yes, installed: 2012-03-04, stack-length: 12 m, components: {}, facts: ${ownFacts}, isolation: ${ownIsolation}}`
  return `id: vessel-a
name: Example vessel
hull-number: "0937241"
built: 2011-06-30
ship-type: tanker
deadweight: 17600 t
${origin}
locations: [cargo control room]
hydraulics: {system-pressure: 240 bar(g), return-pressure: 6 bar(g), purge-regulator-maximum: 4 bar(g), oil: grade 46}
supplies: {purge-gas-flow: 60 l/min, bottle-volume: 50 l, bottle-pressure: 150 bar(g), flush-flow: 40 l/min, drum-volume: 200 l, oil-bulk-modulus: 15000 bar, oil-expansion: 0.0007 1/K, ventilator-flow: 6000 m³/h}
facts: ${vesselFacts ?? '{}'}
cargoes: []
tanks:
  - {id: one, tag: "1", volume: 800 m³, height: 12 m, vacuum-valve: -0.035 bar(g), pressure-valve: 0.20 bar(g), plan: {from-frame: 60, to-frame: 70, from-side: -1, to-side: 1}}
positions:
${pump('1p', facts, isolation)}
${pump('1s', secondFacts, secondIsolation)}
tools-aboard: []
spares-aboard: []
`
}

export function vessel(pumps: TwoPumps = {}): Vessel {
  return shaped('vessels/vessel-a/vessel.yaml', vesselText(pumps), vesselShape)
}

/** One isolation point as YAML. */
export const isolationPoint =
  '[{id: "{tag}-hp", tag: "HP {tag}", medium: oil, kind: valve, normal: open, isolated: closed, where: deck, lock: hasp, proof: gauge, restored-with: opened}]'
