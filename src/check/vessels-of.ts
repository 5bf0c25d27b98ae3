import type {ContentSources} from '../handbook-model/sources.ts'
import type {IsolationPoint, Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {byId, nameFits, refersTo, refuseSecondId} from './identity.ts'
import {noBrokenStack} from './rules/no-broken-stack.ts'
import {noSecondSerial} from './rules/no-second-serial.ts'
import {noTanklessPump} from './rules/no-tankless-pump.ts'
import {checkShape} from './shapes/check-shape.ts'
import {faultOfId} from './shapes/placed-shape.ts'
import {vesselShape} from './shapes/vessel-shape.ts'
import {noUnusualVesselValue} from './usual-windows.ts'

/**
 * The vessels of the content, each with tanks, pumps and isolation points that are told apart.
 *
 * @param nothing
 *   True when there is no content at all, which has been told.
 */
export function vesselsOf(sources: ContentSources, files: ContentFiles, nothing: boolean): readonly Vessel[] {
  const paths = [...sources.yaml.keys()].filter((path) => /^vessels\/[^/]+\/vessel\.yaml$/u.test(path))
  if (paths.length === 0 && !nothing) {
    addMessage(
      files,
      {path: 'vessels', line: 1, column: 1},
      'no-missing-content',
      'Unexpected content without a vessel, expected `vessels/<id>/vessel.yaml`',
      {note: 'Write the file of at least one vessel'},
    )
  }
  const vessels = paths.flatMap((path) => {
    const node = sources.yaml.get(path)
    const vessel = node && checkShape(node, vesselShape, files)
    if (!vessel) return []
    nameFits(vessel, `vessels/${vessel.id}/vessel.yaml`, files)
    if (vessel.positions.length === 0) {
      addMessage(
        files,
        vessel.place,
        'no-empty-vessel',
        `Unexpected vessel \`${vessel.id}\` without a pump, expected at least one entry under \`positions\``,
        {note: 'List the pump positions of the vessel'},
      )
    }
    const tanks = byId(vessel.tanks, files)
    byId(vessel.positions, files)
    checkTags(vessel, files)
    for (const {tank} of vessel.positions) if (tank) refersTo(tank, tanks, 'tank of this vessel', files)
    for (const position of vessel.positions) noTanklessPump(position, files)
    for (const position of vessel.positions) noBrokenStack(position, files)
    checkIsolationIds(vessel, files)
    noUnusualVesselValue(vessel, files)
    return [vessel]
  })
  noSecondSerial(vessels, files)
  return vessels
}

function checkTags(vessel: Vessel, files: ContentFiles): void {
  for (const tagged of [vessel.tanks, vessel.positions]) {
    const first = new Map<string, Place>()
    for (const {tag, place} of tagged) {
      const cause = first.get(tag)
      if (cause)
        addMessage(
          files,
          place,
          'no-duplicate-id',
          `Unexpected second tag \`${tag}\`, expected each tag once`,
          {
            cause,
            note: 'Read the plates again: the tag is the largest thing on every sheet',
          },
        )
      else first.set(tag, place)
    }
  }
}

/** The points of one pump are told apart; a fault in the pattern of the vessel is told at its first pump alone. */
function checkIsolationIds(vessel: Vessel, files: ContentFiles): void {
  const told = new Set<string>()
  for (const position of vessel.positions) {
    const first = new Map<string, IsolationPoint>()
    for (const point of position.isolation.flatMap((role) => role.points)) {
      const earlier = first.get(point.id)
      first.set(point.id, earlier ?? point)
      const {path, line, column} = point.place
      if (told.has(`${path}:${line}:${column}`)) continue
      const fault = faultOfId(point.id)
      if (!fault && !earlier) continue
      told.add(`${path}:${line}:${column}`)
      if (fault)
        addMessage(files, position.place, 'no-bad-id', fault, {
          note: 'Shorten the id of the isolation point or the tag',
        })
      else if (earlier) refuseSecondId(point, earlier, files)
    }
  }
}
