import {boltCalls} from './example-calls-bolts.ts'
import {gasCalls} from './example-calls-gas.ts'
import {liftingCalls} from './example-calls-lifting.ts'
import {oilCalls} from './example-calls-oil.ts'
import {pumpCalls} from './example-calls-pump.ts'
import {sealAndBearingCalls} from './example-calls-seals.ts'
import {wearCalls} from './example-calls-wear.ts'

/**
 * Words of one call of each calculation that succeeds, by the name of the calculation.
 *
 * Each family of calculations gives its own list from a file `example-calls-<family>.ts`.
 */
export const exampleCalls: ReadonlyMap<string, readonly string[]> = new Map<string, readonly string[]>([
  ['annulus-volume', ['outer=150mm', 'inner=100mm', 'length=1m']],
  ['clearance', ['bores=200.5mm', 'hubs=200mm']],
  [
    'pressure-hold',
    ['start=3 bar(g)', 'end=2.95 bar(g)', 'start-temperature=20 °C', 'end-temperature=18 °C'],
  ],
  ['purge-upper-bound', ['rating=6 bar(g)', 'lip=4 bar', 'tank=-0.035 bar(g)', 'regulator=5 bar(g)']],
  ['thread-geometry', ['size=M12']],
  ['tightening-order', ['bolts=5']],
  ['tightening-torque', ['size=M16', 'class=8.8', 'friction=0.14']],
  [
    'tightness-hold-time',
    [
      'volume=28 l',
      'test-pressure=3 bar(g)',
      'gauge-step=0.02 bar',
      'temperature-uncertainty=0.5 K',
      'allowed-leak=10 ml/min',
    ],
  ],
  ...boltCalls,
  ...wearCalls,
  ...gasCalls,
  ...liftingCalls,
  ...oilCalls,
  ...pumpCalls,
  ...sealAndBearingCalls,
])
