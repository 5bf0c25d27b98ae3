import type {UrgentNotice} from '../handbook-model/pages.ts'
import type {TechnicalLine} from './technical-line.ts'

/** An urgent revision above a page: number, days, whom it concerns, why, word and harm, what is done and what is replaced. */
export function urgentLines(notice: UrgentNotice): readonly TechnicalLine[] {
  const line = (kind: string, text: string): TechnicalLine => ({block: notice.block, kind, text})
  return [
    line('urgent', notice.number),
    line('title', notice.title),
    line('valid-from', notice.from),
    line('valid-to', notice.to),
    line('variant', notice.variant),
    line('pumps', notice.pumps),
    line('word', notice.word),
    line('hazard', notice.hazard),
    line('consequence', notice.consequence),
    ...notice.actions.map((text) => line('do', text)),
    ...notice.instead.flatMap(({what, text}) => [line('replaced', what), line('instead', text)]),
    line('reason', notice.reason),
    line('supersedes', notice.supersedes),
    line('cancelled-by', notice.cancelledBy),
  ]
}
