import {jointValueNames} from '../handbook-model/computed.ts'
import type {PageLink} from '../handbook-model/pages.ts'

/** Paths of the pages below the vessel folder, and the element ids that links lead to. */
export const startPath = 'index.html'
export const valuesPath = 'values.html'
export const cautionsPath = 'cautions.html'
export const toolsPath = 'tools.html'
export const partsPath = 'parts.html'
export const sourcesPath = 'sources.html'
export const wordsPath = 'words.html'

export function positionPath(position: string): string {
  return `p/${position}/index.html`
}

export function procedurePath(position: string, procedure: string): string {
  return `p/${position}/${procedure}.html`
}

export function jobPath(position: string, job: string): string {
  return `p/${position}/job-${job}.html`
}

export function positionValuesPath(position: string): string {
  return `p/${position}/values.html`
}

/** Page that explains the values of the bolted joints. */
export function torquesPath(position: string): string {
  return `p/${position}/torques.html`
}

/** True for a value of a bolted joint; these have a page of their own, so that no page grows heavy. */
export function isJointValue(id: string): boolean {
  return jointValueNames.some((name) => id.endsWith(`.${name}`))
}

/** Page that explains a value. */
export function explanationPath(position: string, id: string): string {
  return isJointValue(id) ? torquesPath(position) : positionValuesPath(position)
}

/** Element id of an item, prefixed by its kind or procedure so that pages can be merged. */
export function elementId(prefix: string, id: string): string {
  return `${prefix}--${id.replaceAll('.', '--')}`
}

export function cautionLink(id: string, text: string): PageLink {
  return {text, path: cautionsPath, fragment: elementId('caution', id)}
}

export function valueLink(position: string, id: string, text: string): PageLink {
  return {text, path: explanationPath(position, id), fragment: elementId('value', id)}
}

export function sourceLink(id: string, text: string): PageLink {
  return {text, path: sourcesPath, fragment: elementId('source', id)}
}

export function toolLink(id: string, text: string): PageLink {
  return {text, path: toolsPath, fragment: elementId('tool', id)}
}

export function partLink(id: string, text: string): PageLink {
  return {text, path: partsPath, fragment: elementId('part', id)}
}
