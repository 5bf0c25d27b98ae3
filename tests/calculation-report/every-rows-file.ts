import * as bearingGrowth from '../published-values/bearing-growth-rows.ts'
import * as conversions from '../published-values/conversion-rows.ts'
import * as entryLimits from '../published-values/entry-limit-rows.ts'
import * as exactUnits from '../published-values/exact-units.ts'
import * as eyebolts from '../published-values/eyebolt-and-shackle-tables.ts'
import * as fastening from '../published-values/fastening-rows.ts'
import * as gapLeakage from '../published-values/gap-leakage-rows.ts'
import * as gasLeaks from '../published-values/gas-leak-rows.ts'
import * as boltLoads from '../published-values/iso-898-1-loads.ts'
import * as threads from '../published-values/iso-metric-threads.ts'
import * as leastClearances from '../published-values/least-clearances.ts'
import * as loadShares from '../published-values/load-share-rows.ts'
import * as motors from '../published-values/motor-rows.ts'
import * as norris from '../published-values/nist-norris.ts'
import * as nitrogen from '../published-values/nitrogen-rows.ts'
import * as nutFactors from '../published-values/nut-factor-rows.ts'
import * as oRings from '../published-values/o-ring-tables.ts'
import * as oil from '../published-values/oil-rows.ts'
import * as poisson from '../published-values/poisson-rows.ts'
import * as screws from '../published-values/power-screw-rows.ts'
import * as pressureHolds from '../published-values/pressure-hold-rows.ts'
import type {NoRows, PublishedRows} from '../published-values/published-rows.ts'
import * as pumps from '../published-values/pump-rows.ts'
import * as purges from '../published-values/purge-rows.ts'
import * as rounding from '../published-values/rounding-rows.ts'
import * as runOut from '../published-values/run-out-rows.ts'
import * as seals from '../published-values/seal-rows.ts'
import * as slings from '../published-values/sling-tables.ts'
import * as stripping from '../published-values/stripping-tiers.ts'
import * as orders from '../published-values/tightening-orders.ts'
import * as torques from '../published-values/vdi-2230-tables.ts'
import * as ventilation from '../published-values/ventilation-rows.ts'
import * as wear from '../published-values/wear-rows.ts'

/** A file of published rows: everything that it exports, rows under `published`, the rest told apart in `noRows`. */
export interface RowsFile {
  readonly published: Readonly<Record<string, PublishedRows>>
  readonly noRows?: NoRows
}

/** Every file of tests/published-values that holds rows, by its name. */
export const rowsFiles: Readonly<Record<string, RowsFile>> = {
  'bearing-growth-rows.ts': bearingGrowth,
  'conversion-rows.ts': conversions,
  'entry-limit-rows.ts': entryLimits,
  'exact-units.ts': exactUnits,
  'eyebolt-and-shackle-tables.ts': eyebolts,
  'fastening-rows.ts': fastening,
  'gap-leakage-rows.ts': gapLeakage,
  'gas-leak-rows.ts': gasLeaks,
  'iso-898-1-loads.ts': boltLoads,
  'iso-metric-threads.ts': threads,
  'least-clearances.ts': leastClearances,
  'load-share-rows.ts': loadShares,
  'motor-rows.ts': motors,
  'nist-norris.ts': norris,
  'nitrogen-rows.ts': nitrogen,
  'nut-factor-rows.ts': nutFactors,
  'o-ring-tables.ts': oRings,
  'oil-rows.ts': oil,
  'poisson-rows.ts': poisson,
  'power-screw-rows.ts': screws,
  'pressure-hold-rows.ts': pressureHolds,
  'pump-rows.ts': pumps,
  'purge-rows.ts': purges,
  'rounding-rows.ts': rounding,
  'run-out-rows.ts': runOut,
  'seal-rows.ts': seals,
  'sling-tables.ts': slings,
  'stripping-tiers.ts': stripping,
  'tightening-orders.ts': orders,
  'vdi-2230-tables.ts': torques,
  'ventilation-rows.ts': ventilation,
  'wear-rows.ts': wear,
}

/** Files of the same folder that hold the means and no rows. */
export const otherFiles: readonly string[] = ['agreement.ts', 'published-rows.ts', 'test-held-rows.ts']
