import {coarseThread} from '../calculations/bolted-joints/coarse-threads.ts'
import {threadGeometry, threadGeometryNote} from '../calculations/bolted-joints/thread-geometry.ts'
import {tighteningOrder, tighteningOrderNote} from '../calculations/bolted-joints/tightening-order.ts'
import {tighteningTorqueNote} from '../calculations/bolted-joints/tightening-torque.ts'
import {runningClearance, runningClearanceNote} from '../calculations/clearances/running-clearance.ts'
import {boltCalculations} from './calculate-bolts.ts'
import {gasCalculations} from './calculate-gas.ts'
import {heatingCalculations} from './calculate-heating.ts'
import {hydraulicCalculations} from './calculate-hydraulics.ts'
import {liftingCalculations} from './calculate-lifting.ts'
import {oilCalculations} from './calculate-oil.ts'
import {planningCalculations} from './calculate-planning.ts'
import {pumpCalculations} from './calculate-pump.ts'
import {purgeCalculations} from './calculate-purge.ts'
import {type CalculationRun, quantityLine} from './calculate-result.ts'
import {runOutCalculations} from './calculate-run-out.ts'
import {sealCalculations} from './calculate-seals.ts'
import {runTighteningTorque} from './calculate-torque.ts'
import {unitCalculations} from './calculate-units.ts'
import {ventilationCalculations} from './calculate-ventilation.ts'
import {verdictCalculations} from './calculate-verdict.ts'
import {wearCalculations} from './calculate-wear.ts'
import type {CalculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'

const singleCalculations: readonly ListedCalculation[] = [
  {
    note: runningClearanceNote,
    keys: ['bores', 'hubs'],
    optionalKeys: [],
    run: runRunningClearance,
  },
  {
    note: threadGeometryNote,
    keys: ['size'],
    optionalKeys: ['pitch'],
    run: runThreadGeometry,
  },
  {
    note: tighteningOrderNote,
    keys: ['bolts'],
    optionalKeys: [],
    run: runTighteningOrder,
  },
  {
    note: tighteningTorqueNote,
    keys: ['size', 'class', 'friction'],
    optionalKeys: ['head-friction', 'utilisation', 'edition', 'head', 'hole'],
    run: runTighteningTorque,
  },
]

/** All calculations, sorted by name. */
export const listedCalculations: readonly ListedCalculation[] = [
  ...singleCalculations,
  ...boltCalculations,
  ...planningCalculations,
  ...verdictCalculations,
  ...wearCalculations,
  ...gasCalculations,
  ...purgeCalculations,
  ...ventilationCalculations,
  ...heatingCalculations,
  ...liftingCalculations,
  ...oilCalculations,
  ...hydraulicCalculations,
  ...pumpCalculations,
  ...unitCalculations,
  ...runOutCalculations,
  ...sealCalculations,
].sort((a, b) => (a.note.name < b.note.name ? -1 : 1))

function runRunningClearance(words: CalculationWords): CalculationRun {
  const result = runningClearance({
    bores: words.list('bores', 'length'),
    hubs: words.list('hubs', 'length'),
  })
  return {
    results: [
      quantityLine('clearance', result.mean, 'mm diametral', 3),
      quantityLine('smallest', result.smallest, 'mm diametral', 3),
      quantityLine('largest', result.largest, 'mm diametral', 3),
      quantityLine('bore-ovality', result.boreOvality, 'mm', 3),
      quantityLine('hub-ovality', result.hubOvality, 'mm', 3),
    ],
    taken: [],
    note: runningClearanceNote,
  }
}

function runThreadGeometry(words: CalculationWords): CalculationRun {
  const thread = coarseThread(words.text('size'))
  const pitch = words.optional('pitch', 'length') ?? thread.pitch
  const geometry = threadGeometry({...thread, pitch})
  return {
    results: [
      quantityLine('pitch-diameter', geometry.pitchDiameter, 'mm', 3),
      quantityLine('minor-diameter', geometry.minorDiameter, 'mm', 3),
      quantityLine('core-diameter', geometry.coreDiameter, 'mm', 3),
      quantityLine('stress-area', geometry.stressArea, 'mm²', 2),
      quantityLine('core-area', geometry.coreArea, 'mm²', 2),
    ],
    taken: words.has('pitch') ? [] : [quantityLine('pitch', pitch, 'mm', 2)],
    note: threadGeometryNote,
  }
}

function runTighteningOrder(words: CalculationWords): CalculationRun {
  const bolts = words.text('bolts')
  if (!/^\d+$/u.test(bolts))
    throw new RangeError(`Unexpected count \`${bolts}\`, expected a whole number from 1 to 48`)
  const order = tighteningOrder(Number(bolts))
  return {
    results: [{name: 'order', value: order, figure: order.join(' '), unit: ''}],
    taken: [],
    note: tighteningOrderNote,
  }
}
