import type {Design} from '../handbook-model/design-content.ts'
import type {Position} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {ContentData} from './content-data.ts'
import {byId, refersTo} from './identity.ts'
import {type KnownIds, knownIds} from './known-ids.ts'

const rowOfMaterials = 'row of tables/materials.csv'

/**
 * Every material that a table, a design or a pump names has its row, and every pump states what its design leaves to it.
 *
 * A mistyped material would have no row in the table of suitability, and a pump of which nobody asked would look like one of
 * which nobody knows.
 */
export function checkMaterials(data: ContentData, cargoes: KnownIds, files: ContentFiles): void {
  const {tables, faulty} = data
  const materials = knownIds(
    new Set(tables.materials.rows.map((row) => row.id)),
    'tables/materials.csv',
    faulty,
  )
  for (const row of tables.suitability.rows) {
    refersTo(row.material, materials, rowOfMaterials, files)
    refersTo(row.cargo, cargoes, 'row of tables/cargoes.csv', files)
  }
  for (const design of data.designs.values()) {
    byId(design.wetted, files)
    for (const {material} of design.wetted) if (material) refersTo(material, materials, rowOfMaterials, files)
  }
  for (const vessel of data.vessels.values())
    for (const position of vessel.positions) {
      const design = data.designs.get(position.design.id)
      if (design) checkFitted(position, design, materials, files)
    }
}

function checkFitted(position: Position, design: Design, materials: KnownIds, files: ContentFiles): void {
  const asked = new Set(design.wetted.flatMap((one) => (one.material ? [] : [one.id])))
  for (const {parts, material} of position.materials) {
    refersTo(parts, asked, `group of open materials of \`${design.id}\``, files)
    if (material) refersTo(material, materials, rowOfMaterials, files)
  }
  const stated = new Set(position.materials.map((one) => one.parts.id))
  for (const id of asked) {
    if (stated.has(id)) continue
    addMessage(
      files,
      position.place,
      'no-missing-key',
      `Unexpected pump \`${position.id}\` without the material of \`${id}\`, expected it under \`materials:\``,
      {note: `Write \`${id}:\` and the material as fitted, or \`{value: not known, reason: …}\``},
    )
  }
}
