import type {Content} from '../handbook-model/content.ts'
import type {Office} from '../handbook-model/office-content.ts'

/** Everything of the content but its procedures; `office` is undefined when it could not be read. */
export type ContentData = Omit<Content, 'procedures' | 'office'> & {
  readonly office: Office | undefined
  /** Files whose definitions could not be used. */
  readonly faulty: ReadonlySet<string>
}
