import {designPages} from '../compile/page-paths.ts'
import type {Content} from '../handbook-model/content.ts'
import {newestLedger} from '../issues/history.ts'
import type {Ledger} from '../issues/ledger.ts'
import {textsOfLedger} from '../issues/ledger-texts.ts'
import {type PrintedValue, valuesOfTexts} from '../technical-text/value-moves.ts'
import {printedValues, technicalTextsOf} from './compare-contents.ts'
import type {CheckedContent} from './run-stages.ts'

/** What the pages and values of a vessel are held against. */
export interface PreviewBase {
  readonly vessel: string
  readonly name: string
  /** The newest issue; none where the vessel was never issued. */
  readonly issue?: string
  readonly date?: string
  /** Where pages and values were taken from; `none` where there is nothing to hold them against. */
  readonly pages: 'issue' | 'content' | 'none'
  readonly values: 'issue' | 'content' | 'none'
  /** Pages of the vessel as the content reads now. */
  readonly pageCount: number
}

/** Texts and values of some vessels before and after an edit. */
export interface PreviewSides {
  readonly bases: readonly PreviewBase[]
  readonly texts: {readonly before: ReadonlyMap<string, string>; readonly after: ReadonlyMap<string, string>}
  readonly values: {readonly before: readonly PrintedValue[]; readonly after: readonly PrintedValue[]}
}

/**
 * Pages are held against the newest issue, values against an earlier content where one is named and else against the
 * issue too. A vessel without an issue is held against the earlier content alone.
 */
export function previewSides(
  checked: CheckedContent,
  content: Content,
  earlier: CheckedContent | undefined,
  vessels: readonly string[],
): PreviewSides {
  const now = technicalTextsOf(checked)
  const old = earlier ? technicalTextsOf(earlier) : new Map<string, string>()
  const nowValues = printedValues(checked.values)
  const oldValues = printedValues(earlier?.values)
  const sides = vessels.map((vessel) => {
    const ledger = newestLedger(checked.history, vessel)
    const issued = ledger ? textsOfLedger(ledger, checked.history.texts, checked.files) : undefined
    const own = ofVessel(now, vessel)
    const before = issued ?? (earlier ? ofVessel(old, vessel) : own)
    const explained = (texts: ReadonlyMap<string, string>): readonly PrintedValue[] =>
      valuesOfTexts(texts, isExplanation, (_vessel, middle) => pumpsOf(content, vessel, middle))
    const values = earlier
      ? {
          before: oldValues.filter((one) => one.vessel === vessel),
          after: nowValues.filter((one) => one.vessel === vessel),
        }
      : {before: explained(before), after: explained(own)}
    return {
      base: baseOf(content, vessel, ledger, earlier !== undefined, own.size),
      before,
      after: own,
      values,
    }
  })
  return {
    bases: sides.map(({base}) => base),
    texts: {
      before: new Map(sides.flatMap(({before}) => [...before])),
      after: new Map(sides.flatMap(({after}) => [...after])),
    },
    values: {
      before: sides.flatMap(({values}) => values.before),
      after: sides.flatMap(({values}) => values.after),
    },
  }
}

/** Pages that explain values: one of each pump, some of each design. */
function isExplanation(page: string): boolean {
  const [, , name = '', ...more] = page.split('/')
  return more.length === 0 && designPages.some((one) => one === name)
}

function pumpsOf(content: Content, vessel: string, middle: string): readonly string[] {
  const positions = content.vessels.get(vessel)?.positions ?? []
  return positions.filter(({id, design}) => id === middle || design.id === middle).map(({id}) => id)
}

function ofVessel(texts: ReadonlyMap<string, string>, vessel: string): ReadonlyMap<string, string> {
  return new Map([...texts].filter(([page]) => page.startsWith(`${vessel}/`)))
}

function baseOf(
  content: Content,
  vessel: string,
  ledger: Ledger | undefined,
  hasEarlier: boolean,
  pageCount: number,
): PreviewBase {
  const without = hasEarlier ? 'content' : 'none'
  return {
    vessel,
    name: content.vessels.get(vessel)?.name.en ?? vessel,
    ...(ledger ? {issue: ledger.issue, date: ledger.date} : {}),
    pages: ledger ? 'issue' : without,
    values: ledger && !hasEarlier ? 'issue' : without,
    pageCount,
  }
}
