/** Records of a vessel that go on between issues: nobody signs them, and no page with a revision shows them. */
export const recordNames = ['hours', 'calibrations', 'wear', 'purges', 'tightness'] as const

export type RecordName = (typeof recordNames)[number]

const recordFile = new RegExp(`^vessels/([^/]+)/(${recordNames.join('|')})\\.csv$`, 'u')

/** Vessel and name of a record by the path of its file; undefined for every other file. */
export function recordAt(path: string): {readonly vessel: string; readonly name: string} | undefined {
  const [, vessel, name] = recordFile.exec(path) ?? []
  return vessel === undefined || name === undefined ? undefined : {vessel, name}
}

/** What every record says of itself. */
export interface VesselRecord {
  readonly vessel: string
  /** Source id of the lines. */
  readonly source: string
}
