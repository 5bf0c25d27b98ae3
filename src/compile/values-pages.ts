import type {ComputedValue, TracedInput} from '../handbook-model/computed.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {
  ExplainedInput,
  ExplainedValue,
  PositionValuesPage,
  SourceLine,
  TorqueLine,
  ValuesPage,
} from '../handbook-model/pages.ts'
import {found, type PumpDesk, positionHead, printedValue, pumpValue} from './desk.ts'
import {filesOfPump, filesOfValue, unique} from './made-from.ts'
import {isJointValue, positionValuesPath, sourceLink, torquesPath, valuesPath} from './page-paths.ts'
import {proceduresOf, proceduresShowing} from './used-in.ts'
import {valueLine} from './value-line.ts'
import {wordsEn} from './words-en.ts'

/** All values of one pump, each explained so that a pocket calculator gets the printed figure. */
export function positionValuesPage(desk: PumpDesk): PositionValuesPage {
  return explanationPage(
    desk,
    'values',
    wordsEn.titles.positionValues(desk.position.tag),
    positionValuesPath(desk.position.id),
    (id) => !isJointValue(id),
  )
}

/** The bolted joints of one pump, each figure explained. */
export function torquesPage(desk: PumpDesk): PositionValuesPage {
  return explanationPage(
    desk,
    'torques',
    wordsEn.titles.joints(desk.position.tag),
    torquesPath(desk.position.id),
    isJointValue,
  )
}

function explanationPage(
  desk: PumpDesk,
  name: string,
  title: string,
  path: string,
  holds: (id: string) => boolean,
): PositionValuesPage {
  const values = [...desk.values.values()].filter((value) => holds(value.id))
  const numbers = sourceNumbers(values)
  return {
    kind: 'position-values',
    head: {
      id: `${desk.vessel.id}/${desk.position.id}/${name}`,
      shownAs: `${desk.position.tag} · ${name}`,
      path,
      title,
      language: 'en',
      position: positionHead(desk),
      madeFrom: unique([
        ...filesOfPump(desk),
        ...proceduresOf([desk]).map((one) => one.place.path),
        ...values.flatMap((value) => filesOfValue(value, desk)),
      ]),
    },
    values: values.map((value) => explainedValue(value, numbers, desk)),
    sources: [...numbers].map(([id, number]) => sourceLine(id, number, desk)),
  }
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
): ExplainedValue {
  const {calculation, result} = value
  const input = ({symbol, title, printed, origin, source}: TracedInput): ExplainedInput => ({
    symbol,
    title,
    printed,
    origin,
    source: source === undefined ? 0 : found(numbers.get(source), `number of source ${source}`),
  })
  return {
    line: valueLine(value, desk),
    words: calculation?.words ?? '',
    formula: calculation?.formula ?? [],
    inputs: (calculation?.inputs ?? []).map(input),
    steps: (calculation?.steps ?? []).map(input),
    missing: result.kind === 'not-known' ? result.missing : [],
    rounding: value.rounding,
    sources: value.sources.map(({source, where}) => ({
      number: found(numbers.get(source), `number of source ${source}`),
      where: where ?? '',
    })),
    usedIn: proceduresShowing(value.id, desk),
  }
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
        const text = (name: string): string => printedValue(pumpValue(desk, `${ring.id}.${name}`))
        return {
          id: ring.id,
          ring: ring.title.en,
          runningDiameter: text('running-diameter'),
          newClearance: text('new'),
          minimumNew: text('minimum-new'),
          renewal: text('renewal'),
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

function torqueLine(joint: Design['joints'][number], desk: PumpDesk): TorqueLine {
  const text = (name: string): string => printedValue(pumpValue(desk, `${joint.id}.${name}`))
  return {
    id: joint.id,
    joint: joint.title.en,
    fastener: text('fastener'),
    count: text('count'),
    torque: text('torque'),
    lubrication: text('lubrication'),
    passes: text('passes'),
    order: text('order'),
    wrench: text('wrench'),
    locking: text('locking'),
  }
}
