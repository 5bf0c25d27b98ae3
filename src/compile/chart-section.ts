import type {TryField} from '../handbook-model/chart-section.ts'
import type {Reference} from '../handbook-model/datum.ts'
import {valueIn} from '../quantities/print-quantity.ts'
import type {QuantityKind} from '../quantities/quantity.ts'
import type {PumpDesk} from './desk.ts'
import {recordWordsEn} from './record-words-en.ts'

/** Data of a chart as JSON that can stand inside of a script element. */
export function chartJson(data: unknown): string {
  return JSON.stringify(data).replaceAll('<', '\\u003c')
}

/** Uncertainties of the tools of one reading, added up; undefined where one is not known or no tool was written. */
export function uncertaintyOf(
  instruments: readonly Reference[],
  kind: QuantityKind,
  unit: string,
  {content}: PumpDesk,
): number | undefined {
  const known = instruments.flatMap(({id}) => {
    const uncertainty = content.tools.get(id)?.instrument?.uncertainty
    return uncertainty?.kind === 'known' && uncertainty.quantity.kind === kind
      ? [valueIn(uncertainty.quantity, unit)]
      : []
  })
  if (instruments.length === 0 || known.length < instruments.length) return undefined
  return Number(known.reduce((sum, one) => sum + one, 0).toFixed(6))
}

/** What a reading was taken with, in words. */
export function instrumentTitles(instruments: readonly Reference[], {content}: PumpDesk): string {
  if (instruments.length === 0) return recordWordsEn.notWritten
  return instruments.map(({id}) => content.tools.get(id)?.title.en ?? id).join(', ')
}

/** One field of a form; typed where there is nothing to choose from. */
export function field(
  section: string,
  name: string,
  label: string,
  more: {
    readonly type?: TryField['type']
    readonly value?: string
    readonly options?: readonly (readonly [string, string])[]
  } = {},
): TryField {
  const {type = 'text', value = '', options = []} = more
  return {
    name,
    label,
    type,
    value,
    options: options.map(([key, words]) => ({value: key, label: words})),
    id: `${section}-${name}`,
  }
}
