import type {Reference} from '../../handbook-model/datum.ts'
import type {Design} from '../../handbook-model/design-content.ts'
import {drawnFigures} from '../../handbook-model/drawn-figures.ts'
import type {Procedure, RichText, Section, Step, StepPart} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {refersTo} from '../identity.ts'
import {type KnownIds, knownIds} from '../known-ids.ts'
import {designReferences, partReferences} from './design-references.ts'
import {figureReferences} from './figure-references.ts'
import {figuresOfDesign} from './figures-of-design.ts'
import {knownValueIds} from './known-value-ids.ts'

/** Everything that a procedure may refer to by id. */
export interface Referable {
  readonly cautions: KnownIds
  readonly procedures: KnownIds
  readonly tools: KnownIds
  readonly parts: KnownIds
  readonly terms: KnownIds
  readonly facts: KnownIds
  readonly designs: readonly Design[]
  /** True when a design could not be used: then every value, limit and joint counts as known. */
  readonly designUnread?: boolean
}

/**
 * Every id that a procedure refers to exists; values, limits and joints exist in some design.
 *
 * Accepted: `:value{ref=hub-bolts.torque}` with a joint `hub-bolts` in the design.
 * Rejected: `:value{ref=hub-bolt.torque}`.
 */
export function noUndefinedReference(procedure: Procedure, known: Referable, files: ContentFiles): void {
  const values = ofDesigns(known, (design) => [...knownValueIds(design)])
  const limits = ofDesigns(known, (design) => design.limits.map((one) => one.id))
  const joints = ofDesigns(known, (design) => design.joints.map((one) => one.id))
  const drawn = ofDesigns(known, figuresOfDesign)
  // A figure asks for many values at one place: the first one that leads nowhere is told.
  const told = new Set<string>()
  for (const {kind, reference} of designReferences(procedure)) {
    const at = `${reference.place.line}:${reference.place.column}`
    if (kind === 'value' && !told.has(at) && !refersTo(reference, values, 'value', files)) told.add(at)
    if (kind === 'limit') refersTo(reference, limits, 'limit of the design', files)
    if (kind === 'joint') refersTo(reference, joints, 'joint', files)
    if (kind === 'figure') drawnBySome(reference, drawn, files)
  }
  for (const {tool} of procedure.tools) refersTo(tool, known.tools, 'tool', files)
  for (const {part} of procedure.parts) refersTo(part, known.parts, 'part', files)
  for (const {reference} of partReferences(procedure)) refersTo(reference, known.parts, 'part', files)
  const readText = (text: RichText): void => {
    for (const inline of text) {
      if (inline.kind === 'procedure') toProcedure(inline.procedure, procedure, known, files)
      else if (inline.kind === 'term') refersTo(inline.term, known.terms, 'term', files)
      else if (inline.kind === 'strong' || inline.kind === 'emphasis') readText(inline.children)
    }
  }
  for (const text of [...procedure.purpose, ...procedure.before, ...procedure.after]) readText(text)
  for (const section of procedure.sections) {
    for (const text of section.intro) readText(text)
    for (const use of [
      ...section.cautions,
      ...section.items.flatMap((item) => (item.kind === 'step' ? item.cautions : [])),
    ]) {
      refersTo(use.caution, known.cautions, 'caution', files)
    }
    for (const item of section.items) if (item.kind === 'hold-point') item.text.forEach(readText)
    for (const step of stepsOf(section)) {
      readText(step.instruction)
      for (const part of step.parts) readPart(part, {known, readText, files, procedure})
    }
  }
}

/** A figure of a pump is drawn from values that some design has to state. */
function drawnBySome(reference: Reference, drawn: KnownIds, files: ContentFiles): void {
  if (drawn.has(reference.id)) return
  const values = Object.entries(drawnFigures).flatMap(([name, ids]) => (name === reference.id ? ids : []))
  addMessage(
    files,
    reference.place,
    'no-undefined-reference',
    `Unexpected figure \`${reference.id}\`, expected a design that states all that it is drawn from`,
    {note: `State ${values.map((id) => `\`${id}\``).join(', ')}`},
  )
}

function ofDesigns(known: Referable, idsOf: (design: Design) => readonly string[]): KnownIds {
  const ids = new Set(known.designs.flatMap(idsOf))
  return knownIds(ids, 'designs/', new Set(known.designUnread ? ['designs/'] : []))
}

interface PartDesk {
  readonly known: Referable
  readonly readText: (text: RichText) => void
  readonly files: ContentFiles
  readonly procedure: Procedure
}

function readPart(part: StepPart, desk: PartDesk): void {
  if (part.kind === 'note') desk.readText(part.text)
  else if (part.kind === 'identify') refersTo(part.fact, desk.known.facts, 'fact', desk.files)
  else if (part.kind === 'alternatives') for (const item of part.items) desk.readText(item.text)
  else if (part.kind === 'reading') refersTo(part.instrument, desk.known.tools, 'tool', desk.files)
  else if (part.kind === 'derived')
    for (const from of part.from)
      refersTo(from, readingIds(desk.procedure), 'reading of this procedure', desk.files)
  else if (part.kind === 'figure') figureReferences(part, desk.procedure, desk.files)
}

function toProcedure(
  reference: Reference,
  procedure: Procedure,
  known: Referable,
  files: ContentFiles,
): void {
  if (reference.id === procedure.id) {
    addMessage(
      files,
      reference.place,
      'no-reference-loop',
      `Unexpected reference of procedure \`${procedure.id}\` to itself, expected another procedure`,
      {note: 'Name the step in words, or refer to the procedure that is meant'},
    )
  } else refersTo(reference, known.procedures, 'procedure', files)
}

function readingIds(procedure: Procedure): ReadonlySet<string> {
  return new Set(
    procedure.sections.flatMap((section) =>
      stepsOf(section).flatMap((step) =>
        step.parts.flatMap((part) => (part.kind === 'reading' || part.kind === 'derived' ? [part.id] : [])),
      ),
    ),
  )
}

function stepsOf(section: Section): readonly Step[] {
  return section.items.flatMap((item) => (item.kind === 'step' ? [item] : []))
}
