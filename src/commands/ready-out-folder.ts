import {type Disk, nodeDisk} from '../publish/disk.ts'
import {faultOfOutFolder} from '../publish/out-folder.ts'
import {completeInterruptedSwaps} from '../publish/publish-vessel.ts'
import type {Outcome} from './outcome.ts'

/** The answer to an out folder that cannot be written to; else undefined, once what an earlier stop left there is completed. */
export function refusedOutFolder(out: string, disk: Disk = nodeDisk): Outcome | undefined {
  const fault = faultOfOutFolder(out, disk)
  if (fault) return {exitStatus: 3, out: '', err: `${fault.reason}\n    mend: ${fault.mend}\n`}
  completeInterruptedSwaps(out, disk)
  return undefined
}
