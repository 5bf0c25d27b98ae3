import {wordsIn, wordsOfText} from '../check/language/words-of-text.ts'
import {isTried} from '../compile/is-tried.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {SignalWord, Source} from '../handbook-model/office-content.ts'
import type {Procedure, Step} from '../handbook-model/procedure.ts'
import {type ApprovalState, approvalStates} from '../issues/approval-state.ts'
import {
  type SourceUseRow,
  type SupersededRow,
  sourcesUsed,
  supersededPagesText,
  supersededSources,
} from './superseded-sources.ts'

/** What a reviewer asks of a content beyond its errors. */
export interface ContentReport {
  readonly procedures: number
  readonly steps: number
  /** Mean words of a step, and the longest. */
  readonly wordsPerStep: {readonly mean: number; readonly most: number; readonly longest: string}
  /** Cautions at steps and sections for each hundred steps. */
  readonly signalWordsPer100Steps: Readonly<Record<SignalWord, number>>
  readonly coverage: readonly CoverageRow[]
  readonly exceptions: readonly {readonly rule: string; readonly file: string; readonly reason: string}[]
  /** Procedures without a trial on board; with the designs aboard that lack one, where others have it. */
  readonly untried: readonly string[]
  /** Values that stand on common practice, on a source known from memory alone, on a superseded one. */
  readonly commonPractice: readonly string[]
  readonly memoryOnly: readonly SourceUseRow[]
  readonly superseded: readonly SupersededRow[]
  /** Sources by how they stand: signed by all three as they read now, signed as they read before, or not signed by all. */
  readonly approvals: Readonly<Record<ApprovalState['kind'], readonly string[]>>
}

/** A fitted part against one way in which it fails. */
export interface CoverageRow {
  readonly part: string
  readonly mode: string
  readonly procedures: readonly string[]
  readonly reason?: string
}

/** Counts and lists of a content that has passed the check. */
export function contentReport(
  content: Content,
  values: ComputedValues,
  hashes: ReadonlyMap<string, string>,
): ContentReport {
  const states = approvalStates(hashes, content.approvals)
  const standing = (kind: ApprovalState['kind']): readonly string[] =>
    states.filter((one) => one.kind === kind).map((one) => one.source)
  const procedures = [...content.procedures.values()]
  const steps = procedures.flatMap((procedure) => stepsOf(procedure).map((step) => ({procedure, step})))
  const lengths = steps.map(({procedure, step}) => ({
    words: wordsIn(wordsOfText(step.instruction)).length,
    at: `${procedure.id}#${step.id}`,
  }))
  const longest = lengths.reduce((most, one) => (one.words > most.words ? one : most), {words: 0, at: ''})
  const used = sourcesUsed(values)
  const rows = (wanted: (source: Source) => boolean): readonly SourceUseRow[] =>
    [...content.sources.values()].flatMap((source) => {
      const ids = used.get(source.id)
      return ids && wanted(source) ? [{source: source.id, values: [...ids].sort()}] : []
    })
  return {
    procedures: procedures.length,
    steps: steps.length,
    wordsPerStep: {
      mean: oneDecimal(lengths.reduce((sum, one) => sum + one.words, 0) / Math.max(1, lengths.length)),
      most: longest.words,
      longest: longest.at,
    },
    signalWordsPer100Steps: signalWords(procedures, content, steps.length),
    coverage: content.failures.map(({part, mode, procedures: against, reason}) => ({
      part: part.id,
      mode: mode.en,
      procedures: against.map(({id}) => id),
      ...(reason ? {reason: reason.en} : {}),
    })),
    exceptions: content.exceptions.map(({rule, file, reason}) => ({rule, file, reason})),
    approvals: {
      approved: standing('approved'),
      lapsed: standing('lapsed'),
      unapproved: standing('unapproved'),
    },
    untried: untriedProcedures(content),
    commonPractice: rows((source) => source.howKnown === 'common-practice').flatMap((row) => row.values),
    memoryOnly: rows((source) => source.howKnown === 'memory'),
    superseded: supersededSources(content, values, [...content.vessels.keys()]),
  }
}

/** The report for people, one line each; the lists are in `--json`. */
export function reportText(report: ContentReport): string {
  const {wordsPerStep, signalWordsPer100Steps: words} = report
  const withProcedure = report.coverage.filter((row) => row.procedures.length > 0).length
  const counted = (rows: readonly SourceUseRow[]): string =>
    rows.length === 0
      ? 'none'
      : rows.map(({source, values}) => `${source} (${values.length} values)`).join(', ')
  return [
    `${report.procedures} procedures, ${report.steps} steps, ${wordsPerStep.mean} words a step, longest ${wordsPerStep.most} (${wordsPerStep.longest})`,
    `signal words for each 100 steps: ${Object.entries(words)
      .map(([word, count]) => `${word} ${count}`)
      .join(', ')}`,
    `failures of fitted parts: ${report.coverage.length}, ${withProcedure} with a procedure, ${report.coverage.length - withProcedure} with a written reason`,
    `exceptions from rules of language: ${report.exceptions.length}`,
    `sources: ${report.approvals.approved.length} approved, ${report.approvals.lapsed.length} changed after their approval, ${report.approvals.unapproved.length} without all three signatures`,
    ...report.approvals.lapsed.map((source) => `    changed after its approval: ${source}`),
    `procedures not yet tried on board: ${report.untried.length} of ${report.procedures}${report.untried.length > 0 ? ` (${report.untried.join(', ')})` : ''}`,
    `values on common practice: ${report.commonPractice.length}`,
    `sources from memory alone: ${counted(report.memoryOnly)}`,
    `superseded sources: ${counted(report.superseded)}`,
    ...supersededPagesText(report.superseded),
    '',
  ].join('\n')
}

function untriedProcedures(content: Content): readonly string[] {
  const designs = [
    ...new Set(
      [...content.vessels.values()].flatMap(({positions}) => positions.map(({design}) => design.id)),
    ),
  ].sort()
  return [...content.procedures.values()].flatMap((procedure) => {
    const open = designs.filter((design) => !isTried(procedure, design, content))
    if (open.length === 0) return []
    return [open.length === designs.length ? procedure.id : `${procedure.id} (${open.join(', ')})`]
  })
}

function stepsOf(procedure: Procedure): readonly Step[] {
  return procedure.sections.flatMap((section) =>
    section.items.flatMap((item) => (item.kind === 'step' ? [item] : [])),
  )
}

function signalWords(
  procedures: readonly Procedure[],
  content: Content,
  steps: number,
): Readonly<Record<SignalWord, number>> {
  const uses = procedures.flatMap((procedure) =>
    procedure.sections.flatMap((section) => [
      ...section.cautions,
      ...section.items.flatMap((item) => (item.kind === 'step' ? item.cautions : [])),
    ]),
  )
  const share = (word: SignalWord): number =>
    oneDecimal(
      (100 * uses.filter(({caution}) => content.cautions.get(caution.id)?.word === word).length) /
        Math.max(1, steps),
    )
  return {
    DANGER: share('DANGER'),
    WARNING: share('WARNING'),
    CAUTION: share('CAUTION'),
    NOTICE: share('NOTICE'),
  }
}

function oneDecimal(value: number): number {
  return Math.round(value * 10) / 10
}
