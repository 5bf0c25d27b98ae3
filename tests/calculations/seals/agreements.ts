import {elastomerShelfLife} from '../../../src/calculations/seals/elastomer-shelf-life.ts'
import {lipSpeed} from '../../../src/calculations/seals/lip-speed.ts'
import {oRingSections, oRingSectionTolerance} from '../../../src/calculations/seals/o-ring-sections.ts'
import {oRingDepth, oRingSqueezeLimits} from '../../../src/calculations/seals/o-ring-squeeze.ts'
import {oRingFill, oRingStretch} from '../../../src/calculations/seals/o-ring-stretch.ts'
import {sealSeat} from '../../../src/calculations/seals/seal-seat.ts'
import {
  inches,
  metresPerSecond,
  millimetres,
  percent,
  revolutionsPerMinute,
} from '../../../src/quantities/named-units.ts'
import {type HeldRows, heldTo, near, same} from '../../published-values/agreement.ts'
import {published as rings} from '../../published-values/o-ring-tables.ts'
import {published as seals, stretchRow} from '../../published-values/seal-rows.ts'

/** Seals against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(rings.glands, (row) => {
    const [least, greatest] = row.depth
    const found = oRingSqueezeLimits(
      {section: inches(row.section), depth: inches((least + greatest) / 2)},
      {section: inches(row.tolerance), depth: inches((greatest - least) / 2)},
    )
    return [
      near('least squeeze in in', found.least.length.si / 0.0254, row.squeeze[0], 5e-4),
      near('greatest squeeze in in', found.greatest.length.si / 0.0254, row.squeeze[1], 5e-4),
      near('least %', found.least.share.si * 100, row.percent[0], 0.5),
      near('greatest %', found.greatest.share.si * 100, row.percent[1], 0.5),
      near(
        'tolerance of the series in in',
        (oRingSectionTolerance(inches(row.section))?.si ?? Number.NaN) / 0.0254,
        row.tolerance,
        1e-12,
      ),
    ]
  }),
  heldTo(rings.sections, (row) => {
    const held = oRingSections.map((one) => Math.round(one.section.si * 1e5) / 100)
    return [
      same('held', String(held.includes(row.millimetres)), 'true'),
      near('mm', inches(row.inches).si * 1000, row.millimetres, 0.0051),
    ]
  }),
  heldTo(rings.depth, ({section, squeezePercent, printed, computed}) => {
    const depth = oRingDepth(millimetres(section), percent(squeezePercent)).si * 1000
    return [near('printed depth in mm', depth, printed, 0.005), near('computed apart', depth, computed, 5e-5)]
  }),
  heldTo(seals.storage, ({group, first, extension, materials}) =>
    materials.map((material) => {
      const found = elastomerShelfLife(material, '2024-06-15')
      return same(
        material,
        [found.group, found.validTo, found.validToAfterInspection].join(' '),
        [group, `${2024 + first}-06-15`, `${2024 + first + extension}-06-15`].join(' '),
      )
    }),
  ),
  heldTo(seals.roughness, ({lip, least, greatest}) => {
    const seat = sealSeat(lip, metresPerSecond(1))
    return [
      near('least in µm', seat.leastRoughness.si * 1e6, least, 1e-9),
      near('greatest in µm', seat.greatestRoughness.si * 1e6, greatest, 1e-9),
    ]
  }),
  heldTo(seals.hardness, ({speed, hardness}) => [
    near('HRC', sealSeat('elastomer', metresPerSecond(speed)).leastHardness.si, hardness, 1e-9),
  ]),
  heldTo(seals.lipSpeed, (row) => [
    near(
      'm/s',
      lipSpeed(millimetres(row.diameter), revolutionsPerMinute(row.speed)).si,
      row.metresPerSecond,
      0.05,
    ),
  ]),
  heldTo(seals.stretch, (row) => {
    const found = oRingStretch({
      section: millimetres(row.section),
      insideDiameter: millimetres(row.inside),
      grooveDiameter: millimetres(row.groove),
    })
    return [
      near('stretch in %', found.stretch.si * 100, row.stretch, 5e-4),
      near('loss of section in %', found.sectionLoss.si * 100, row.loss, 5e-3),
    ]
  }),
  heldTo(seals.fill, (row) => {
    const found = oRingFill({
      section: millimetres(stretchRow.section),
      insideDiameter: millimetres(stretchRow.inside),
      grooveDiameter: millimetres(row.groove),
      depth: millimetres(row.depth),
      width: millimetres(row.width),
    })
    return [near('fill in %', found.si * 100, row.fill, 5e-3)]
  }),
]
