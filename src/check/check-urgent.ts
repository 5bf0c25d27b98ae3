import {decideCondition} from '../conditions/decide-condition.ts'
import type {Reference} from '../handbook-model/datum.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import type {UrgentRevision} from '../handbook-model/urgent-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {ContentData} from './content-data.ts'
import {refersTo} from './identity.ts'
import {isWhole, type KnownIds, knownIds} from './known-ids.ts'
import {typedNumbers} from './procedures/typed-number.ts'
import {type Pump, pumpsOf} from './pump.ts'
import {knownValueIds} from './rules/known-value-ids.ts'
import {noIdleUrgent} from './rules/no-idle-urgent.ts'
import {noIncompleteCaution} from './rules/no-incomplete-caution.ts'
import {type FactValues, noUndeclaredFactIn} from './rules/no-unknown-fact.ts'
import {plainUrgent} from './rules/plain-language.ts'

/** Procedures of the content, and whether all of them could be read. */
interface KnownProcedures {
  readonly procedures: ReadonlyMap<string, Procedure>
  readonly ids: KnownIds
}

/** Holds urgent revisions against the content: days, references, conditions, wording, and that each counts somewhere. */
export function checkUrgent(
  data: ContentData,
  known: KnownProcedures,
  facts: FactValues,
  files: ContentFiles,
): void {
  const pumps = pumpsOf(data)
  const isReadable = ['office.yaml', 'designs/', 'vessels/', 'procedures/'].every((path) =>
    isWhole(path, data.faulty),
  )
  for (const revision of data.urgent) {
    noIncompleteCaution({...revision, id: revision.number, avoid: revision.do}, files)
    plainUrgent(revision, data.terms.values(), files)
    refuseNumbers(revision, files)
    refuseTurnedDays(revision, files)
    refuseStanding(revision, data.urgent, files)
    const isSound = checkReferences(revision, data, known, files)
    if (!isReadable || !isSound) continue
    if (revision.when) noUndeclaredFactIn([revision.when], facts, files)
    const counted = pumpsOfRevision(revision, pumps)
    noIdleUrgent(revision, counted, known.procedures, files)
    refuseUnknownReplacement(revision, counted, files)
  }
  refuseRivals(data.urgent, pumps, files)
  for (const {urgent} of data.ended) {
    const standing = data.urgent.find((one) => one.number === urgent.id)
    if (standing) refuseEnd(urgent, standing, files)
  }
}

function refuseEnd(ended: Reference, {number, place}: UrgentRevision, files: ContentFiles): void {
  addMessage(
    files,
    ended.place,
    'no-untimely-urgent',
    `Unexpected end of urgent revision \`${number}\` whose file is still there, expected it to be taken out`,
    {note: 'Take the file out, or the line', cause: place},
  )
}

/** The pumps that a revision counts for; one whose facts leave its condition open is among them. */
function pumpsOfRevision(revision: UrgentRevision, pumps: readonly Pump[]): readonly Pump[] {
  const {vessels, positions, when} = revision
  return pumps.filter(
    ({vessel, position, facts}) =>
      vessels.some(({id}) => id === vessel.id) &&
      (positions.length === 0 || positions.some(({id}) => id === position.id)) &&
      (!when || decideCondition(when.condition, facts) !== 'false'),
  )
}

/** Everything that a revision names is there; each value on every pump that it counts for. */
function checkReferences(
  {vessels, positions, procedures, steps, values}: UrgentRevision,
  data: ContentData,
  known: KnownProcedures,
  files: ContentFiles,
): boolean {
  const aboard = vessels.flatMap(({id}) => data.vessels.get(id) ?? [])
  const ofVessels = aboard.flatMap((vessel) => vessel.positions.map((one) => one.id))
  const designs = [...data.designs.values()]
  const valueIds = knownIds(
    new Set(designs.flatMap((design) => [...knownValueIds(design)])),
    'designs/',
    data.faulty,
  )
  const vesselIds = knownIds(data.vessels, 'vessels/', data.faulty)
  const positionIds = knownIds(new Set(ofVessels), 'vessels/', data.faulty)
  const isAboard = vessels.map((one) => refersTo(one, vesselIds, 'vessel', files)).every(Boolean)
  const told = [
    isAboard,
    ...(isAboard ? positions.map((one) => refersTo(one, positionIds, 'position', files)) : []),
    ...procedures.map((one) => refersTo(one, known.ids, 'procedure', files)),
    ...values.map(({value}) => refersTo(value, valueIds, 'value', files)),
    ...steps.map(({procedure, step}) => {
      if (!refersTo(procedure, known.ids, 'procedure', files)) return false
      const own = known.procedures.get(procedure.id)
      return !own || refersTo(step, stepIds(own), 'step of this procedure', files)
    }),
  ]
  return told.every(Boolean)
}

function stepIds({sections}: Procedure): ReadonlySet<string> {
  return new Set(
    sections.flatMap(({items}) => items.flatMap((item) => (item.kind === 'step' ? [item.id] : []))),
  )
}

/** What prints in place of a step, and what is done now, names its figures under `values`. */
function refuseNumbers({steps, do: lines, place, number}: UrgentRevision, files: ContentFiles): void {
  const texts = [
    ...lines.map((line) => ({text: line.en, at: place})),
    ...steps.map((one) => ({text: one.instead.en, at: one.place})),
  ]
  for (const {text, at} of texts)
    for (const found of typedNumbers(text))
      addMessage(
        files,
        at,
        'no-typed-number',
        `Unexpected number \`${found}\` typed into urgent revision \`${number}\`, expected it under \`values:\``,
        {note: 'State the figure in place of its value, with its source; spell small counts as words'},
      )
}

function refuseTurnedDays({number, validFrom, validTo}: UrgentRevision, files: ContentFiles): void {
  if (validFrom.id <= validTo.id) return
  addMessage(
    files,
    validTo.place,
    'no-untimely-urgent',
    `Unexpected last day \`${validTo.id}\` of urgent revision \`${number}\` before its first one, expected \`${validFrom.id}\` or later`,
    {note: 'Write the last day on which it counts', cause: validFrom.place},
  )
}

/** What is superseded has no file of its own any more. */
function refuseStanding(
  {number, supersedes}: UrgentRevision,
  all: readonly UrgentRevision[],
  files: ContentFiles,
): void {
  for (const superseded of supersedes) {
    const standing = all.find((one) => one.number === superseded.id)
    if (!standing) continue
    addMessage(
      files,
      superseded.place,
      'no-untimely-urgent',
      `Unexpected \`${superseded.id}\` as superseded by \`${number}\` while it still counts, expected an earlier one that is taken out`,
      {note: 'Take out the file of the superseded one', cause: standing.place},
    )
  }
}

/** A figure or a step is not replaced on a pump of which nobody knows whether it is concerned. */
function refuseUnknownReplacement(
  {number, when, values, steps}: UrgentRevision,
  counted: readonly Pump[],
  files: ContentFiles,
): void {
  const open = counted.find(({facts}) => when && decideCondition(when.condition, facts) === 'unknown')
  if (!open || !when || values.length + steps.length === 0) return
  addMessage(
    files,
    when.condition.place,
    'no-unknown-fact',
    `Unexpected condition of urgent revision \`${number}\` that is not known for position \`${open.position.id}\` of \`${open.vessel.id}\`, expected facts that are known where a value or a step is replaced`,
    {note: 'State the fact as fitted, or warn without replacing anything', cause: open.position.place},
  )
}

/** No two of them replace one value or one step of one pump. */
function refuseRivals(all: readonly UrgentRevision[], pumps: readonly Pump[], files: ContentFiles): void {
  for (const [index, later] of all.entries()) {
    const ofLater = new Set(pumpsOfRevision(later, pumps))
    for (const earlier of all.slice(0, index)) {
      if (!pumpsOfRevision(earlier, pumps).some((pump) => ofLater.has(pump))) continue
      const before = new Map(replacedBy(earlier).map((one) => [one.key, one.place]))
      for (const {key, what, place} of replacedBy(later)) {
        const cause = before.get(key)
        if (!cause) continue
        addMessage(
          files,
          place,
          'no-duplicate-id',
          `Unexpected second replacement of ${what} in \`${later.number}\`, expected one on each pump`,
          {note: `Let \`${later.number}\` supersede \`${earlier.number}\` and say all of it`, cause},
        )
      }
    }
  }
}

function replacedBy({values, steps}: UrgentRevision): readonly {
  readonly key: string
  readonly what: string
  readonly place: UrgentRevision['place']
}[] {
  return [
    ...values.map(({value}) => ({key: value.id, what: `value \`${value.id}\``, place: value.place})),
    ...steps.map(({procedure, step}) => ({
      key: `${procedure.id} ${step.id}`,
      what: `step \`${step.id}\` of \`${procedure.id}\``,
      place: step.place,
    })),
  ]
}
