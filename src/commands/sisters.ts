import {nearestWord} from '../check/nearest-word.ts'
import {pumpOf} from '../check/pump.ts'
import {type SisterPumps, type SisterSide, sisterDifferences} from '../check/sisters/sister-differences.ts'
import type {Content} from '../handbook-model/content.ts'
import {type CommandOptions, countWords, messagesData, messagesText, type Outcome} from './outcome.ts'
import {checkAndCompute} from './run-stages.ts'

/** Pumps of one design with what is stated otherwise of some of them, as plain strings. */
export interface SistersReport {
  readonly design: string
  readonly title: string
  readonly vessels: readonly string[]
  readonly pumps: number
  readonly compared: number
  /** Each length with its pumps; lengths differ by the tanks and are told here alone. */
  readonly stackLengths: readonly {readonly text: string; readonly on: string}[]
  readonly differences: readonly SistersRow[]
}

/** One thing that differs. */
export interface SistersRow {
  readonly item: string
  readonly sides: readonly {
    readonly text: string
    readonly usual: boolean
    readonly pumps: number
    /** Pumps in words, ship by ship: `vessel-a: 1P, 1S`. */
    readonly on: string
    /** Files with the lines in them: `vessels/vessel-a/vessel.yaml:117, 134`. */
    readonly at: string
    /** Written reasons, each with the pumps that it is for. */
    readonly reasons: readonly {readonly reason: string; readonly on: string}[]
    /** Pumps that differ from the usual without a written reason, in words; blank where there are none. */
    readonly unexplained: string
  }[]
}

/** What is stated otherwise of some pumps of a design, over the named ships. */
export function sistersReport(content: Content, vessels: readonly string[]): readonly SistersReport[] {
  const pumps = [...content.vessels.values()]
    .filter(({id}) => vessels.length === 0 || vessels.includes(id))
    .flatMap((vessel) =>
      vessel.positions.flatMap((position) => {
        const design = content.designs.get(position.design.id)
        return design ? [pumpOf(vessel, position, design, content.office.facts)] : []
      }),
    )
  return sisterDifferences(pumps, [...content.jobs.values()]).map((group) => ({
    design: group.design,
    title: content.designs.get(group.design)?.title.en ?? group.design,
    vessels: [...new Set(group.pumps.map(({vessel}) => vessel.id))],
    pumps: group.pumps.length,
    compared: group.items.length,
    stackLengths: stackLengths(group),
    differences: group.differences.map(({item, sides}) => ({
      item,
      sides: sides.map(({text, usual, holders}) => ({
        text,
        usual,
        pumps: holders.length,
        on: pumpsOn(holders),
        at: linesOf(holders),
        ...reasonsOf(item, {usual, holders}, sides),
      })),
    })),
  }))
}

/**
 * `sheetanchor sisters`: what is stated otherwise of some of the pumps of one design, on whatever ship they are.
 *
 * Only what is stated is held against each other; what follows from a stated difference is not told again.
 */
export async function runSisters(options: CommandOptions): Promise<Outcome> {
  options.progress('reading and checking')
  const {files, content} = await checkAndCompute(options.content, options.asOf)
  const unknown = content ? options.vessels.find((id) => !content.vessels.has(id)) : undefined
  if (content && unknown !== undefined) {
    const known = [...content.vessels.keys()]
    return {
      exitStatus: 2,
      out: '',
      err: `Unexpected vessel \`${unknown}\`, expected \`${nearestWord(unknown, known) ?? ''}\` or another of ${known.join(', ')}\n`,
    }
  }
  if (!content)
    return {
      exitStatus: 1,
      out: options.json
        ? `${JSON.stringify({passed: false, messages: messagesData(files)}, null, 2)}\n`
        : `Nothing to hold against each other: ${countWords(files)}\n`,
      err: messagesText(files, options),
    }
  const designs = sistersReport(content, options.vessels)
  return {
    exitStatus: 0,
    out: options.json
      ? `${JSON.stringify({passed: true, designs, messages: messagesData(files)}, null, 2)}\n`
      : designs.map(sistersText).join('\n'),
    err: messagesText(files, options),
  }
}

function sistersText({
  title,
  vessels,
  pumps,
  compared,
  stackLengths: lengths,
  differences,
}: SistersReport): string {
  const head = `${title}: ${pumps} ${pumps === 1 ? 'pump' : 'pumps'} on ${vessels.join(', ')}`
  if (pumps === 1) return `${head}, nothing to hold it against\n`
  return [
    head,
    ...(lengths.length > 1
      ? [`  stack lengths: ${lengths.map(({text, on}) => `${text} (${on})`).join('; ')}`]
      : []),
    `  ${differences.length} of ${compared} things differ`,
    ...differences.flatMap(({item, sides}) => [
      `  ${item}`,
      ...sides.flatMap(({text, usual, on, at, pumps: count, reasons, unexplained}) => [
        `    ${usual ? 'usual  ' : 'differs'} ${text} (${count}: ${on})`,
        `            ${at}`,
        ...reasons.map((one) => `            because: ${one.reason} (${one.on})`),
        ...(unexplained === '' ? [] : [`            unexplained: ${unexplained}`]),
      ]),
    ]),
    '',
  ].join('\n')
}

function stackLengths({pumps}: SisterPumps): SistersReport['stackLengths'] {
  const lengths = new Map<string, {si: number; holders: {pump: SisterPumps['pumps'][number]}[]}>()
  for (const pump of pumps) {
    const {stackLength} = pump.position
    if (!stackLength) continue
    const known = stackLength.kind === 'known'
    const text = known ? `${stackLength.figure} ${stackLength.unit}` : 'NOT KNOWN'
    const one = lengths.get(text) ?? {si: known ? stackLength.quantity.si : Number.MAX_VALUE, holders: []}
    one.holders.push({pump})
    lengths.set(text, one)
  }
  return [...lengths]
    .sort(([, a], [, b]) => a.si - b.si)
    .map(([text, {holders}]) => ({text, on: pumpsOn(holders)}))
}

function pumpsOn(holders: readonly {readonly pump: SisterPumps['pumps'][number]}[]): string {
  const ships = new Map<string, string[]>()
  for (const {pump} of holders)
    ships.set(pump.vessel.id, [...(ships.get(pump.vessel.id) ?? []), pump.position.tag])
  return [...ships].map(([ship, tags]) => `${ship}: ${tags.join(', ')}`).join('; ')
}

/** Reasons of one side; where none is usual, a side whose every pump has a reason explains the others. */
function reasonsOf(
  item: string,
  {usual, holders}: Pick<SisterSide, 'usual' | 'holders'>,
  sides: readonly SisterSide[],
): Pick<SistersRow['sides'][number], 'reasons' | 'unexplained'> {
  const by = new Map<string, Holder[]>()
  for (const holder of holders) {
    const reason = reasonOf(item, holder)
    if (reason !== undefined) by.set(reason, [...(by.get(reason) ?? []), holder])
  }
  const told = sides.some(
    (other) => other.holders !== holders && other.holders.every((one) => reasonOf(item, one) !== undefined),
  )
  const settled = usual || (told && !sides.some((other) => other.usual))
  return {
    reasons: [...by].map(([reason, own]) => ({reason, on: pumpsOn(own)})),
    unexplained: settled ? '' : pumpsOn(holders.filter((one) => reasonOf(item, one) === undefined)),
  }
}

type Holder = SisterSide['holders'][number]

/** What pump or ship writes about the difference, the pump first. */
function reasonOf(item: string, {pump}: Holder): string | undefined {
  const written = [...(pump.position.differences ?? []), ...(pump.vessel.differences ?? [])]
  return written.find((one) => one.item.id === item)?.reason.en
}

/** Lines file by file, each once. */
function linesOf(holders: SisterSide['holders']): string {
  const files = new Map<string, Set<number>>()
  for (const {place} of holders) files.set(place.path, (files.get(place.path) ?? new Set()).add(place.line))
  return [...files]
    .map(([path, lines]) => `${path}:${[...lines].sort((a, b) => a - b).join(', ')}`)
    .join('; ')
}
