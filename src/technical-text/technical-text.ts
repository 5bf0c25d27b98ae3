import type {Page, PageHead} from '../handbook-model/pages.ts'
import {bodyLines} from './body-lines.ts'
import {plainText} from './plain-text.ts'
import type {TechnicalLine} from './technical-line.ts'
import {urgentLines} from './urgent-lines.ts'

/**
 * The text that a page's hash, revision and check code stand on.
 *
 * UTF-8, NFC, LF, one line `block TAB kind TAB text` in page order. It holds
 * identity, values with unit and condition, limits, cautions, steps, holds,
 * isolation points and the data behind figures; no revision, date,
 * explanation, source list, history, stock or hours. Every line is found in
 * the page's visible text, in this order: a template that drops or reorders
 * one fails its test.
 *
 * Order: the position's tag, the vessel, then serial, design, variant, tank,
 * stack length and class of the equipment, then the title, then urgent revisions, then the fields of the page model as `bodyLines` lists them.
 * A value is its figure with its unit, then each further figure, then its condition.
 */
export function technicalText(page: Page, vesselName: string): string {
  return textOfLines(technicalLines(page, vesselName))
}

/** The text that lines make. */
export function textOfLines(lines: readonly TechnicalLine[]): string {
  return lines
    .map((line) => `${line.block}\t${line.kind}\t${line.text}\n`)
    .join('')
    .normalize('NFC')
}

/** The lines of that text, one for each, with the place on the page that each stands in. */
export function technicalLines(page: Page, vesselName: string): readonly TechnicalLine[] {
  return [
    ...identityLines(page.head, vesselName),
    ...(page.head.urgent ?? []).flatMap(urgentLines),
    ...bodyLines(page),
  ]
    .map((line) => ({...line, text: plainText(line.text)}))
    .filter((line) => line.text !== '')
}

function identityLines(head: PageHead, vesselName: string): readonly TechnicalLine[] {
  const {position} = head
  return [
    ...(position ? [{block: 'identity', kind: 'position', text: position.tag}] : []),
    {block: 'identity', kind: 'vessel', text: vesselName},
    ...(position
      ? [
          {block: 'identity', kind: 'serial', text: position.serial},
          {block: 'identity', kind: 'design', text: position.design},
          {block: 'identity', kind: 'variant', text: position.variant},
          {block: 'identity', kind: 'tank', text: position.tankTag},
          {block: 'identity', kind: 'kept-at', text: position.keptAt},
          {block: 'identity', kind: 'tank-volume', text: position.tankVolume},
          {block: 'identity', kind: 'stack-length', text: position.stackLength},
          {block: 'identity', kind: 'equipment', text: position.critical ? 'critical' : ''},
        ]
      : []),
    {block: 'identity', kind: 'title', text: head.title},
  ]
}
