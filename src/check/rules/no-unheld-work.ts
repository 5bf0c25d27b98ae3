import {serves} from '../../conditions/serves.ts'
import type {Design} from '../../handbook-model/design-content.ts'
import type {HoldKind} from '../../handbook-model/hold-kinds.ts'
import type {Job} from '../../handbook-model/office-content.ts'
import type {HoldPoint, Procedure, Section, Step} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import type {Pump} from '../pump.ts'
import {type HoldDemand, holdsAfterFound, holdsBefore, holdsBehind} from './holds-of-work.ts'
import {placeKey, stepsOf} from './walk-of-items.ts'

interface Walked {
  readonly procedure: Procedure
  readonly section: Section
  readonly item: Step | HoldPoint
}

/** What is the same for all jobs of a content, and what has been told. */
interface Desk {
  readonly procedures: ReadonlyMap<string, Procedure>
  readonly designs: readonly Design[]
  readonly told: Set<string>
  readonly files: ContentFiles
}

/** What a walk stands for in its messages: a job, or a procedure that no job holds. */
interface Round {
  readonly name: string
  readonly place?: Place
}

/**
 * What a job does demands its hold point: nobody enters, opens, lifts or starts before two people have signed for it.
 *
 * Each list of procedures that a job has on some pump is walked in its order; a job that names an unknown one is not. A hold counts where it stands under no
 * other condition than the work.
 *
 * Accepted: `action=enter` behind `::hold-point{… kind=entry}`.
 * Rejected: the same without it.
 */
export function noUnheldWork(
  jobs: readonly Job[],
  procedures: ReadonlyMap<string, Procedure>,
  pumps: readonly Pump[],
  designs: readonly Design[],
  files: ContentFiles,
): void {
  const desk: Desk = {procedures, designs, told: new Set(), files}
  const inJobs = new Set<string>()
  for (const job of jobs) {
    const found = job.procedures.flatMap(({id}) => procedures.get(id) ?? [])
    for (const {id} of found) inJobs.add(id)
    if (found.length < job.procedures.length) continue
    for (const list of listsOf(job, found, pumps))
      walkJob(list, {name: `job \`${job.id}\``, place: job.place}, desk)
  }
  for (const procedure of procedures.values()) {
    if (!inJobs.has(procedure.id) && procedure.activity !== 'card')
      walkJob([procedure], {name: `procedure \`${procedure.id}\``}, desk)
    refuseOpenEnds(procedure, desk)
  }
}

/** The different lists of procedures that the pumps of a job have; all of them where no pump has it. */
function listsOf(
  job: Job,
  procedures: readonly Procedure[],
  pumps: readonly Pump[],
): Iterable<readonly Procedure[]> {
  const lists = new Map<string, readonly Procedure[]>()
  for (const {facts} of pumps) {
    if (!serves(job, facts)) continue
    const list = procedures.filter((procedure) => serves(procedure, facts))
    lists.set(list.map((one) => one.id).join(' '), list)
  }
  return lists.size === 0 ? [procedures] : lists.values()
}

function walkJob(list: readonly Procedure[], round: Round, desk: Desk): void {
  const items = list.flatMap(stepsOf)
  const passed: Walked[] = []
  for (const walked of items) {
    const {item, procedure} = walked
    if (item.kind === 'hold-point') passed.push(walked)
    else {
      for (const demand of holdsBefore) demandBefore(demand, walked, passed, round, desk)
      const isolated = passed.findLastIndex((one) => holdOf(one)?.holds === 'isolation')
      if (isolated >= 0 && procedure.activity !== 'isolation' && item.actions.includes('start-pump'))
        demandBefore(
          {kind: 'first-start', because: () => '`action=start-pump` behind an isolation'},
          walked,
          passed.slice(isolated),
          round,
          desk,
        )
    }
  }
  refuseOpenTally(items, round, desk)
}

function demandBefore(
  {kind, because}: HoldDemand,
  walked: Walked,
  passed: readonly Walked[],
  round: Round,
  desk: Desk,
): void {
  const {procedure, item} = walked
  if (item.kind !== 'step') return
  const reason = because({procedure, step: item, designs: desk.designs})
  if (reason === '' || passed.some((one) => covers(one, kind, walked)) || leadsTo(item, kind, desk)) return
  refuse(item, kind, reason, `before it in ${round.name}`, round.place, desk)
}

/** True where the words of a step send the reader to a procedure that has the hold point, for whoever comes. */
function leadsTo(step: Step, kind: HoldKind, {procedures}: Desk): boolean {
  const notes = step.parts.flatMap((part) => (part.kind === 'note' ? part.text : []))
  return [...step.instruction, ...notes].some((inline) => {
    const procedure = inline.kind === 'procedure' ? procedures.get(inline.procedure.id) : undefined
    return procedure !== undefined && stepsOf(procedure).some((one) => holdOf(one)?.holds === kind)
  })
}

/** Where locks went on, everything is counted after the last one came off. */
function refuseOpenTally(items: readonly Walked[], round: Round, desk: Desk): void {
  if (!items.some((one) => holdOf(one)?.holds === 'isolation')) return
  const last = items.findLastIndex(
    ({item}) => item.kind === 'step' && item.parts.some((part) => part.kind === 'restore'),
  )
  const walked = items[last]
  if (walked?.item.kind !== 'step') return
  if (items.slice(last).some((one) => covers(one, 'tally', walked))) return
  refuse(walked.item, 'tally', '`::restore`', `behind it in ${round.name}`, round.place, desk)
}

/** Hold points behind the work of one procedure, and the one between its readings as found and what ends them. */
function refuseOpenEnds(procedure: Procedure, desk: Desk): void {
  const items = stepsOf(procedure)
  for (const {kind, because, once} of holdsBehind) {
    const demanding = items.flatMap((walked, index) => {
      if (walked.item.kind !== 'step') return []
      const reason = because({procedure, step: walked.item, designs: desk.designs})
      return reason === '' ? [] : [{walked, step: walked.item, reason, behind: items.slice(index)}]
    })
    for (const {walked, step, reason, behind} of once ? demanding.slice(0, 1) : demanding) {
      if (behind.some((one) => covers(one, kind, walked))) continue
      refuse(step, kind, reason, 'behind it in the procedure', undefined, desk)
    }
  }
  const lastFound = items.findLastIndex(({item}) => reads(item, 'as-found'))
  const firstLeft = items.findIndex(({item}, index) => index > lastFound && reads(item, 'as-left'))
  if (lastFound < 0 || firstLeft < 0) return
  const between = items.slice(lastFound + 1, firstLeft)
  const at = between.findIndex(
    ({item}) => item.kind === 'step' && holdsAfterFound.because({procedure, step: item, designs: []}) !== '',
  )
  const walked = between[at]
  if (walked?.item.kind !== 'step') return
  if (between.slice(0, at).some((one) => covers(one, 'as-found', walked))) return
  const reason = holdsAfterFound.because({procedure, step: walked.item, designs: []})
  refuse(walked.item, 'as-found', reason, 'between it and the readings as found', undefined, desk)
}

function reads(item: Step | HoldPoint, phase: 'as-found' | 'as-left'): boolean {
  return item.kind === 'step' && item.parts.some((part) => part.kind === 'reading' && part.phase === phase)
}

function holdOf({item}: Walked): HoldPoint | undefined {
  return item.kind === 'hold-point' ? item : undefined
}

/** True for a hold point of the kind that stands wherever the work stands. */
function covers(held: Walked, kind: HoldKind, work: Walked): boolean {
  if (holdOf(held)?.holds !== kind) return false
  const above = conditionsOf(work)
  return conditionsOf(held).every((condition) => above.includes(condition))
}

function conditionsOf({section, item}: Walked): readonly string[] {
  return [section, item].flatMap(({when}) => (when ? [when.text] : []))
}

function refuse(
  step: Step,
  kind: HoldKind,
  reason: string,
  where: string,
  cause: Place | undefined,
  {told, files}: Desk,
): void {
  const key = `${kind} ${placeKey(step.place)}`
  if (told.has(key)) return
  told.add(key)
  addMessage(
    files,
    step.place,
    'no-unheld-work',
    `Unexpected step \`${step.id}\` with ${reason}, expected a hold point with \`kind=${kind}\` ${where}`,
    {
      note: `Add \`::hold-point{#id title=… kind=${kind} signed-by=… second-by=…}\``,
      ...(cause ? {cause} : {}),
    },
  )
}
