import {jointValueNames} from '../handbook-model/computed.ts'
import type {PageLink} from '../handbook-model/pages.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import {recordsFolder} from '../handbook-model/publication.ts'

/** The start page; this and all paths here lie below the vessel folder. */
export const startPath = 'index.html'
/** Torques and clearances of the designs aboard. */
export const valuesPath = 'values.html'
/** Every caution once. */
export const cautionsPath = 'cautions.html'
/** Every tool once. */
export const toolsPath = 'tools.html'
/** Every spare part and consumable once. */
export const partsPath = 'parts.html'
/** What values and cautions stand on. */
export const sourcesPath = 'sources.html'
/** Jobs by how often they are done. */
export const workPath = 'work.html'
/** Parts and their failures. */
export const failuresPath = 'failures.html'
/** One word for each thing. */
export const wordsPath = 'words.html'

/** Page of a pump. */
export function positionPath(position: string): string {
  return `p/${position}/index.html`
}

/** Records of a pump; position ids and the names of other records do not clash. */
export function pumpRecordPath(position: string): string {
  return `${recordsFolder}/pump-${position}.html`
}

/** What of a pump the address of a procedure page needs. */
interface PumpOfAddress {
  readonly vessel: {readonly id: string}
  readonly design: {readonly id: string}
  readonly position: {readonly id: string}
}

/** Page of a procedure: on its pump, or one for all pumps of the design or of the ship. */
export function procedurePath(procedure: Pick<Procedure, 'id' | 'scope'>, desk: PumpOfAddress): string {
  const folders = {
    position: `p/${desk.position.id}`,
    design: `designs/${desk.design.id}`,
    vessel: 'ship',
  }
  return `${folders[procedure.scope]}/${procedure.id}.html`
}

/** Id of a procedure page, in words: vessel, then pump or design or `ship`, then the procedure. */
export function procedurePageId(procedure: Pick<Procedure, 'id' | 'scope'>, desk: PumpOfAddress): string {
  const middle = {position: desk.position.id, design: desk.design.id, vessel: 'ship'}
  return `${desk.vessel.id}/${middle[procedure.scope]}/${procedure.id}`
}

/** Page of a job on a pump. */
export function jobPath(position: string, job: string): string {
  return `p/${position}/job-${job}.html`
}

/** Page of the symptoms of a pump. */
export function symptomsPath(position: string): string {
  return `p/${position}/symptoms.html`
}

/** The pages that explain what the pumps of a design share; seven, so that none grows heavy. */
export const designPages = [
  'values',
  'settings',
  'torques',
  'preloads',
  'passes',
  'fasteners',
  'o-rings',
] as const

export type DesignPage = (typeof designPages)[number]

const passesNames = ['passes', 'order']
const oRingNames = ['size', 'squeeze', 'stretch']

/** Which page of its design explains a value: torque, preload, passes and order of a joint, its fastener, an O-ring, a setting, or what else the design states. */
export function designPageOf(id: string): DesignPage {
  const [group, name = ''] = id.split('.')
  if (group === 'setting') return 'settings'
  if (name === 'torque') return 'torques'
  if (name === 'preload') return 'preloads'
  if (passesNames.includes(name)) return 'passes'
  if (oRingNames.includes(name)) return 'o-rings'
  return jointValueNames.some((one) => one === name) ? 'fasteners' : 'values'
}

/** Page that explains the values of a pump. */
export function positionValuesPath(position: string): string {
  return `p/${position}/values.html`
}

/** Page that explains values of a design. */
export function designPagePath(design: string, page: DesignPage): string {
  return `designs/${design}/${page}.html`
}

/** Page that explains a value: one for all pumps of the design where they share it. */
export function explanationPath(value: ValueOfAddress, desk: PumpOfAddress): string {
  return value.ofDesign
    ? designPagePath(desk.design.id, designPageOf(value.id))
    : positionValuesPath(desk.position.id)
}

/** What of a value its address needs. */
interface ValueOfAddress {
  readonly id: string
  readonly ofDesign: boolean
}

/** Element id of an item, prefixed by its kind or procedure so that pages can be merged. */
export function elementId(prefix: string, id: string): string {
  return `${prefix}--${id.replaceAll('.', '--')}`
}

/** Link to the entry of a caution. */
export function cautionLink(id: string, text: string): PageLink {
  return {text, path: cautionsPath, fragment: elementId('caution', id)}
}

/** Link to the explanation of a value. */
export function valueLink(value: ValueOfAddress, text: string, desk: PumpOfAddress): PageLink {
  return {text, path: explanationPath(value, desk), fragment: elementId('value', value.id)}
}

/** Link to the entry of a source. */
export function sourceLink(id: string, text: string): PageLink {
  return {text, path: sourcesPath, fragment: elementId('source', id)}
}

/** Link to the entry of a tool. */
export function toolLink(id: string, text: string): PageLink {
  return {text, path: toolsPath, fragment: elementId('tool', id)}
}

/** Link to the entry of a part. */
export function partLink(id: string, text: string): PageLink {
  return {text, path: partsPath, fragment: elementId('part', id)}
}
