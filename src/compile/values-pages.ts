import type {ComputedValue, TracedInput} from '../handbook-model/computed.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {
  ExplainedInput,
  ExplainedValue,
  ExplanationsPage,
  PageLink,
  SourceLine,
  TorqueLine,
  ValuesPage,
} from '../handbook-model/pages.ts'
import {found, type PumpDesk, positionHead, printedValue, pumpValue} from './desk.ts'
import {filesOfPump, filesOfValue, unique} from './made-from.ts'
import {
  designPageOf,
  designPagePath,
  designPages,
  positionValuesPath,
  procedurePath,
  sourceLink,
  valueLink,
  valuesPath,
} from './page-paths.ts'
import {proceduresOf, proceduresShowing} from './used-in.ts'
import {valueLine} from './value-line.ts'
import {wordsEn} from './words-en.ts'

/** What differs from pump to pump, or belongs to ship and office, explained so that a pocket calculator gets each figure. */
export function positionValuesPage(desk: PumpDesk): ExplanationsPage {
  const values = [...desk.values.values()].filter((value) => !value.ofDesign)
  return {
    ...explanations(values, (value) => proceduresShowing(value.id, desk), desk),
    head: {
      id: `${desk.vessel.id}/${desk.position.id}/values`,
      shownAs: `${desk.position.tag} · values`,
      path: positionValuesPath(desk.position.id),
      title: wordsEn.titles.positionValues(desk.position.tag),
      language: 'en',
      position: positionHead(desk),
      madeFrom: filesOfExplanations(values, desk),
    },
  }
}

/**
 * What the pumps of a design share, explained once for all of them.
 *
 * Procedures are named without a link: their pages are those of the pump that the reader came from.
 */
export function designValuesPages(desk: PumpDesk): readonly ExplanationsPage[] {
  return designPages.map((page) => {
    const values = [...desk.values.values()].filter(
      (value) => value.ofDesign && designPageOf(value.id) === page,
    )
    return {
      ...explanations(values, () => [], desk),
      head: {
        id: `${desk.vessel.id}/${desk.design.id}/${page}`,
        shownAs: `${desk.design.title.en} · ${page}`,
        path: designPagePath(desk.design.id, page),
        title: wordsEn.designPages[page](desk.design.title.en),
        language: 'en',
        madeFrom: filesOfExplanations(values, desk),
      },
    }
  })
}

function explanations(
  values: readonly ComputedValue[],
  usedIn: (value: ComputedValue) => readonly PageLink[],
  desk: PumpDesk,
): Pick<ExplanationsPage, 'kind' | 'values' | 'sources'> {
  const numbers = sourceNumbers(values)
  return {
    kind: 'explanations',
    values: values.map((value) => ({...explainedValue(value, numbers, desk), usedIn: usedIn(value)})),
    sources: [...numbers].map(([id, number]) => sourceLine(id, number, desk)),
  }
}

function filesOfExplanations(values: readonly ComputedValue[], desk: PumpDesk): readonly string[] {
  return unique([
    ...filesOfPump(desk),
    ...proceduresOf([desk]).map((one) => one.place.path),
    ...values.flatMap((value) => filesOfValue(value, desk)),
  ])
}

/** Numbers the sources of a page in order of their first use. */
function sourceNumbers(values: readonly ComputedValue[]): ReadonlyMap<string, number> {
  const ids = values.flatMap(({calculation, sources}) => [
    ...[...(calculation?.inputs ?? []), ...(calculation?.steps ?? [])].flatMap(({source}) => source ?? []),
    ...sources.map(({source}) => source),
  ])
  return new Map(unique(ids).map((id, index) => [id, index + 1]))
}

function sourceLine(id: string, number: number, desk: PumpDesk): SourceLine {
  const source = found(desk.content.sources.get(id), `source ${id}`)
  return {
    number,
    link: sourceLink(id, source.title.en),
    status: `${source.edition}, ${wordsEn.sourceStatus[source.status]}, ${wordsEn.howKnown[source.howKnown]}`,
  }
}

function explainedValue(
  value: ComputedValue,
  numbers: ReadonlyMap<string, number>,
  desk: PumpDesk,
): Omit<ExplainedValue, 'usedIn'> {
  const {calculation, result} = value
  const input = ({symbol, title, printed, origin, source, place}: TracedInput): ExplainedInput => ({
    symbol,
    title,
    printed,
    ...originOf(origin, desk),
    source: source === undefined ? 0 : found(numbers.get(source), `number of source ${source}`),
    writtenAt: desk.withPlaces && place ? `${place.path}:${place.line}` : '',
  })
  return {
    line: valueLine(value, desk),
    words: calculation?.words ?? '',
    formula: calculation?.formula ?? [],
    symbols: calculation?.symbols ?? [],
    inputs: (calculation?.inputs ?? []).map(input),
    steps: (calculation?.steps ?? []).map(input),
    missing: result.kind === 'not-known' ? result.missing : [],
    rounding: value.rounding,
    sources: value.sources.map(({source, where}) => ({
      number: found(numbers.get(source), `number of source ${source}`),
      where: where ?? '',
    })),
    namedIn: value.ofDesign
      ? unique(proceduresShowing(value.id, desk).map((link) => link.path)).map((path) =>
          titleOfPage(path, desk),
        )
      : [],
  }
}

/** What is the result of another value leads to its explanation: that may stand on another page. */
function originOf(origin: string, desk: PumpDesk): Pick<ExplainedInput, 'origin' | 'way'> {
  const [, word = '', id = ''] = /^(computed:|explained at) (\S+)$/u.exec(origin) ?? []
  const other = desk.values.get(id)
  return other ? {origin: word, way: valueLink(other, id, desk)} : {origin}
}

function titleOfPage(path: string, desk: PumpDesk): string {
  return found(
    proceduresOf([desk]).find((one) => procedurePath(one, desk) === path),
    `procedure at ${path}`,
  ).title
}

/** Wall sheet of a vessel: torques and clearances of each design aboard. */
export function valuesPage(desks: readonly PumpDesk[]): ValuesPage {
  const vessel = found(desks[0], 'a pump').vessel
  const designs = desks.filter(
    (desk, index) => desks.findIndex((one) => one.design.id === desk.design.id) === index,
  )
  return {
    kind: 'values',
    head: {
      id: `${vessel.id}/values`,
      shownAs: 'values',
      path: valuesPath,
      title: wordsEn.titles.values,
      language: 'en',
      madeFrom: unique(
        designs.flatMap((desk) => [
          ...filesOfPump(desk),
          ...valuesOfDesign(desk).flatMap((value) => filesOfValue(value, desk)),
        ]),
      ),
    },
    designs: designs.map((desk) => ({
      id: desk.design.id,
      title: desk.design.title.en,
      torques: desk.design.joints.map((joint) => torqueLine(joint, desk)),
      clearances: desk.design.rings.map((ring) => {
        const figure = (name: string): PageLink => figureLink(pumpValue(desk, `${ring.id}.${name}`), desk)
        return {
          id: ring.id,
          ring: ring.title.en,
          runningDiameter: figure('running-diameter'),
          newClearance: figure('new'),
          minimumNew: figure('minimum-new'),
          renewal: figure('renewal'),
          because: becauseOf(pumpValue(desk, `${ring.id}.renewal`)),
        }
      }),
      others: valuesOfDesign(desk)
        .filter(isStated)
        .map((value) => valueLine(value, desk)),
    })),
  }
}

/** Which rule governs, or what is missing. */
function becauseOf(value: ComputedValue): string {
  return value.result.kind === 'known' ? (value.condition ?? '') : wordsEn.missing(value.result.missing)
}

function valuesOfDesign(desk: PumpDesk): readonly ComputedValue[] {
  return [...desk.values.values()].filter((value) => value.ofDesign)
}

function isStated(value: ComputedValue): boolean {
  return /^(mass|setting|rating|cofferdam)\./u.test(value.id)
}

/** A figure that leads to its explanation. */
function figureLink(value: ComputedValue, desk: PumpDesk): PageLink {
  return valueLink(value, printedValue(value), desk)
}

function torqueLine(joint: Design['joints'][number], desk: PumpDesk): TorqueLine {
  const value = (name: string): ComputedValue => pumpValue(desk, `${joint.id}.${name}`)
  const text = (name: string): string => printedValue(value(name))
  const figure = (name: string): PageLink => figureLink(value(name), desk)
  return {
    id: joint.id,
    joint: joint.title.en,
    fastener: text('fastener'),
    count: text('count'),
    torque: figure('torque'),
    lubrication: text('lubrication'),
    passes: figure('passes'),
    order: figure('order'),
    wrench: text('wrench'),
    locking: text('locking'),
  }
}
