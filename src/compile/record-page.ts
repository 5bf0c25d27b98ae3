import type {Content} from '../handbook-model/content.ts'
import {type RecordParts, recordsFolder} from '../handbook-model/publication.ts'
import type {VesselRecord} from '../handbook-model/record-files.ts'
import {wordsEn} from './words-en.ts'

const words = wordsEn.records

/** What stands above every record: its name, up to which day it goes, and which paper it was read from. */
export function recordParts(
  content: Content,
  vesselId: string,
  name: keyof typeof words.titles,
  {record, last}: {readonly record: VesselRecord | undefined; readonly last: string | undefined},
): RecordParts {
  const title = words.titles[name]
  const source = record && content.sources.get(record.source)
  return {
    head: {
      id: `${vesselId}/${name}`,
      shownAs: title,
      path: `${recordsFolder}/${name}.html`,
      title,
      language: 'en',
      madeFrom: [],
    },
    upTo: last === undefined ? words.noRecords : words.upTo(last),
    source: source ? words.source(source.title.en) : '',
  }
}
