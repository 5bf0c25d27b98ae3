import {laterDay} from '../handbook-model/comparison-date.ts'
import {readingsOf} from '../handbook-model/hours-content.ts'
import type {PumpRecordPage} from '../handbook-model/publication.ts'
import type {VesselRecord} from '../handbook-model/record-files.ts'
import {type PumpDesk, positionHead} from './desk.ts'
import {holdReadings, holdSections} from './hold-record.ts'
import {hoursLine} from './hours-page.ts'
import {pumpRecordPath} from './page-paths.ts'
import {purgeResults, purgeSections} from './purge-record.ts'
import {recordWordsEn} from './record-words-en.ts'
import {wearReadings, wearSections} from './wear-record.ts'
import {wordsEn} from './words-en.ts'

/** Records of one pump. A record page, so that a new reading moves no page with a revision. */
export function pumpRecordPage(desk: PumpDesk): PumpRecordPage {
  const {content, position, vessel} = desk
  const hours = content.hours.get(vessel.id)
  const counted = position.components.flatMap(({kind, serial}) => readingsOf(hours, kind, serial))
  const days = [...counted, ...wearReadings(desk), ...purgeResults(desk), ...holdReadings(desk)]
    .map(({day}) => day)
    .reduce(laterDay, undefined)
  return {
    kind: 'pump-record',
    head: {
      id: `${vessel.id}/${position.id}/records`,
      shownAs: recordWordsEn.title(position.tag),
      path: pumpRecordPath(position.id),
      title: recordWordsEn.title(position.tag),
      language: 'en',
      position: positionHead(desk),
      madeFrom: [],
    },
    upTo: days === undefined ? wordsEn.records.noRecords : wordsEn.records.upTo(days),
    source: sourcesOf(
      [hours, content.wear.get(vessel.id), content.purges.get(vessel.id), content.tightness.get(vessel.id)],
      desk,
    ),
    charts: [...wearSections(desk), ...purgeSections(desk), ...holdSections(desk)],
    fitted: position.components.map((component) => hoursLine(component, position.id, vessel, hours)),
  }
}

/** Titles of the papers that the records were read from. */
function sourcesOf(records: readonly (VesselRecord | undefined)[], {content}: PumpDesk): string {
  const titles = records.flatMap((record) => (record && content.sources.get(record.source)?.title.en) ?? [])
  return titles.length > 0 ? wordsEn.records.source([...new Set(titles)].join('; ')) : ''
}
