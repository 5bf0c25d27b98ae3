import {fileURLToPath} from 'node:url'
import {expect, test} from 'vitest'
import {newestDay} from '../../src/check/newest-day.ts'
import {noPastCalibration} from '../../src/compute/no-past-calibration.ts'
import {isMeasuring, lastCalibration, numbersOf} from '../../src/handbook-model/calibration-content.ts'
import type {ContentFiles} from '../../src/messages/add-message.ts'
import {printMessages} from '../../src/messages/print-messages.ts'
import {readSources} from '../../src/read/read-sources.ts'
import {demonstration} from './demonstration.ts'

const {content, values} = await demonstration()
const vessels = [...content.vessels.values()]

test('no measuring tool of the demonstration is past its last day on the newest day of the content', async () => {
  const read: ContentFiles = new Map()
  const day = newestDay(await readSources(fileURLToPath(new URL('../../content', import.meta.url)), read))
  const files: ContentFiles = new Map(
    [...content.calibrations.keys()].flatMap((vessel) => {
      const path = `vessels/${vessel}/calibrations.csv`
      const file = read.get(path)
      return file ? [[path, file] as const] : []
    }),
  )
  noPastCalibration(content, values, day, files)
  expect(files.size).toBe(vessels.length)
  expect(printMessages(files, 'content')).toBe('')
})

test.each(vessels)(
  'every torque wrench of $id has a day of calibration, and not every other tool',
  (vessel) => {
    const record = content.calibrations.get(vessel.id)
    const measuring = vessel.toolsAboard.flatMap((aboard) => {
      const tool = content.tools.get(aboard.tool.id)
      if (!tool || !isMeasuring(tool)) return []
      return numbersOf(aboard).map((number) => ({tool, last: lastCalibration(record, tool.id, number)}))
    })
    const unknown = measuring.filter(({last}) => !last).map(({tool}) => tool)
    expect(unknown.filter(({torqueRange}) => torqueRange)).toEqual([])
    expect(unknown.map(({id}) => id)).toContain('system-level-glass')
  },
)
