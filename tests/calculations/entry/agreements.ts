import {airChanges} from '../../../src/calculations/entry/air-changes.ts'
import {dilution} from '../../../src/calculations/entry/dilution.ts'
import {entryLimit} from '../../../src/calculations/entry/entry-limit.ts'
import {gasBuildUp} from '../../../src/calculations/entry/gas-build-up.ts'
import {ventilationTime} from '../../../src/calculations/entry/ventilation-time.ts'
import {nothingInSupply} from '../../../src/calculations/gas/well-mixed.ts'
import {
  count,
  cubicMetres,
  cubicMetresPerHour,
  hours,
  minutes,
  percent,
  ratio,
} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {type HeldRows, heldTo, near} from '../../published-values/agreement.ts'
import {published as limits} from '../../published-values/entry-limit-rows.ts'
import {
  buildUpMinutes,
  remainingRows,
  published as ventilation,
} from '../../published-values/ventilation-rows.ts'

const partsPerMillion = (value: number) => quantityOf('concentration', value * 1e-6)

function fan(volume: number, flow: number) {
  return {volume: cubicMetres(volume), flow: cubicMetresPerHour(flow), mixing: ratio(1)}
}

/** Entry and ventilation against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(limits.shares, ({limit, share, content}) => {
    const found = entryLimit({limit: partsPerMillion(limit), share: ratio(share)})
    return [near('content in ppm', found.si * 1e6, content, 1e-9 * content)]
  }),
  heldTo(ventilation.buildUp, ({changesAnHour, contents}) =>
    contents.map((content, index) => {
      const after = buildUpMinutes[index] ?? Number.NaN
      // A thousandth of the source that the table takes, as the table knows no limit of a content.
      const found = gasBuildUp({
        ...fan(1, changesAnHour),
        source: cubicMetresPerHour(0.001),
        from: percent(0),
        supply: nothingInSupply,
        time: minutes(after),
      })
      return near(`content after ${after} min`, found.content.si * 1000, content, 0.00005)
    }),
  ),
  heldTo(ventilation.remaining, (remaining) => {
    const changes = remainingRows.indexOf(remaining) + 1
    const found = dilution({
      ...fan(1, changes),
      from: percent(100),
      supply: nothingInSupply,
      time: hours(1),
    })
    return [near('% left', found.content.si * 100, remaining, remaining < 0.1 ? 0.00005 : 0.0005)]
  }),
  heldTo(ventilation.fan, (row) => {
    const found = dilution({
      ...fan(60, 600),
      from: partsPerMillion(50),
      supply: nothingInSupply,
      time: minutes(15),
    })
    return [
      near('changes', found.changes.si, row.changes, 1e-9),
      near('ppm', found.content.si * 1e6, row.partsPerMillion, 0.0005),
    ]
  }),
  heldTo(ventilation.airChanges, ({from, to, supply, changes}) => {
    const found = airChanges({from: percent(from), to: percent(to), supply: percent(supply)})
    return [near('changes', found.si, changes, 0.0005)]
  }),
  heldTo(ventilation.twentyChanges, (hoursTaken) => [
    near('hours', ventilationTime(fan(600, 6000), count(20)).si / 3600, hoursTaken, 1e-9),
  ]),
]
