import {boltGroup, boltGroupNote} from '../calculations/bolted-joints/bolt-group.ts'
import {
  boltLoadSources,
  printedProofLoad,
  printedTensileLoad,
} from '../calculations/bolted-joints/bolt-load-tables.ts'
import {boltStrength, boltStrengthNote} from '../calculations/bolted-joints/bolt-strength.ts'
import {coarseThread} from '../calculations/bolted-joints/coarse-threads.ts'
import {
  frictionFromTorqueTest,
  frictionFromTorqueTestNote,
} from '../calculations/bolted-joints/friction-from-torque-test.ts'
import {leastPreload, leastPreloadNote} from '../calculations/bolted-joints/least-preload.ts'
import {lubricantSwap, lubricantSwapNote} from '../calculations/bolted-joints/lubricant-swap.ts'
import {
  nutFactorFromFriction,
  nutFactorFromFrictionNote,
} from '../calculations/bolted-joints/nut-factor-from-friction.ts'
import {
  nutFactorPreload,
  nutFactorPreloadNote,
  nutFactorTorque,
  nutFactorTorqueNote,
} from '../calculations/bolted-joints/nut-factor-torque.ts'
import {yieldStressOf} from '../calculations/bolted-joints/property-classes.ts'
import {tighteningPasses, tighteningPassesNote} from '../calculations/bolted-joints/tightening-passes.ts'
import {yieldClampForce, yieldClampForceNote} from '../calculations/bolted-joints/yield-clamp-force.ts'
import {degrees, newtonMetres, percent} from '../quantities/named-units.ts'
import type {Quantity} from '../quantities/quantity.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import {bearingFaceOf} from './calculate-torque.ts'
import type {CalculationWords} from './calculate-words.ts'
import {wrenchCalculations} from './calculate-wrench.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

/** Strength, friction, preload, passes and load of bolts, and the wrench that tightens them. */
export const boltCalculations: readonly ListedCalculation[] = [
  ...wrenchCalculations,
  {
    note: boltGroupNote,
    keys: ['bolts', 'bolt-circle', 'pull', 'least-preload'],
    optionalKeys: ['moment', 'first-bolt-at'],
    run: runBoltGroup,
  },
  {note: boltStrengthNote, keys: ['size', 'class'], optionalKeys: [], run: runBoltStrength},
  {
    note: frictionFromTorqueTestNote,
    keys: ['size', 'force', 'torque'],
    optionalKeys: ['thread-torque', 'head', 'hole'],
    run: runFrictionFromTorqueTest,
  },
  {note: leastPreloadNote, keys: ['preload', 'tightening-factor'], optionalKeys: [], run: runLeastPreload},
  {
    note: lubricantSwapNote,
    keys: ['size', 'class', 'set-for', 'applied-to'],
    optionalKeys: ['utilisation', 'head', 'hole'],
    run: runLubricantSwap,
  },
  {
    note: nutFactorFromFrictionNote,
    keys: ['size', 'friction'],
    optionalKeys: ['head-friction', 'head', 'hole'],
    run: runNutFactorFromFriction,
  },
  {
    note: nutFactorPreloadNote,
    keys: ['nut-factor', 'diameter', 'torque'],
    optionalKeys: [],
    run: runNutFactorPreload,
  },
  {
    note: nutFactorTorqueNote,
    keys: ['nut-factor', 'diameter', 'preload'],
    optionalKeys: [],
    run: runNutFactorTorque,
  },
  {note: tighteningPassesNote, keys: ['torque'], optionalKeys: ['shares'], run: runTighteningPasses},
  {
    note: yieldClampForceNote,
    keys: ['size', 'class', 'friction'],
    optionalKeys: [],
    run: runYieldClampForce,
  },
]

function runBoltGroup(words: CalculationWords): CalculationRun {
  const moment = words.optional('moment', 'torque') ?? newtonMetres(0)
  const firstBoltAt = words.optional('first-bolt-at', 'angle') ?? degrees(0)
  const result = boltGroup({
    bolts: words.quantity('bolts', 'count').si,
    boltCircle: words.quantity('bolt-circle', 'length'),
    pull: words.quantity('pull', 'force'),
    moment,
    firstBoltAt,
    leastPreload: words.quantity('least-preload', 'force'),
  })
  return {
    results: [
      quantityLine('greatest-share', result.greatestShare, 'kN', 3),
      quantityLine('least-clamp', result.leastClamp, 'kN', 3),
      wordLine('joint', result.opens ? 'opens' : 'stays closed'),
      quantityLine('spacing', result.spacing, 'mm', 1),
      ...result.shares.map((share, index) => quantityLine(`bolt-${index + 1}`, share, 'kN', 3)),
    ],
    taken: notGiven(words, [
      quantityLine('moment', moment, 'N·m', 0),
      quantityLine('first-bolt-at', firstBoltAt, '°', 0),
    ]),
    note: boltGroupNote,
  }
}

function runBoltStrength(words: CalculationWords): CalculationRun {
  const size = words.text('size')
  const propertyClass = words.text('class')
  const strength = boltStrength({thread: coarseThread(size), propertyClass})
  const proof = printedProofLoad(size, propertyClass)
  const tensile = printedTensileLoad(size, propertyClass)
  return {
    results: [
      ...loadLines('proof-load', proof, strength.proofLoad),
      quantityLine('yield-force', strength.yieldForce, 'kN', 2),
      ...loadLines('tensile-load', tensile, strength.tensileLoad),
      quantityLine('nominal-stress-area', strength.nominalStressArea, 'mm²', 1),
    ],
    taken: [],
    note: {
      ...boltStrengthNote,
      sources: [...boltStrengthNote.sources, ...(proof || tensile ? boltLoadSources : [])],
    },
  }
}

/** The load that counts: the printed one where there is one, with the computed one beside it. */
function loadLines(
  name: string,
  printed: Quantity<'force'> | undefined,
  computed: Quantity<'force'> | undefined,
): readonly ResultLine[] {
  if (!computed) return []
  if (!printed) return [quantityLine(name, computed, 'kN', 2)]
  return [quantityLine(name, printed, 'kN', 2), quantityLine(`${name}-computed`, computed, 'kN', 2)]
}

function runFrictionFromTorqueTest(words: CalculationWords): CalculationRun {
  const size = words.text('size')
  const face = bearingFaceOf(words, size)
  const threadTorque = words.optional('thread-torque', 'torque')
  const result = frictionFromTorqueTest({
    thread: coarseThread(size),
    ...face,
    clampForce: words.quantity('force', 'force'),
    torque: words.quantity('torque', 'torque'),
    ...(threadTorque ? {threadTorque} : {}),
  })
  return {
    results: [
      quantityLine('total-friction', result.totalFriction, '1', 4),
      quantityLine('nut-factor', result.nutFactor, '1', 4),
      ...(result.threadFriction ? [quantityLine('thread-friction', result.threadFriction, '1', 4)] : []),
      ...(result.headFriction ? [quantityLine('head-friction', result.headFriction, '1', 4)] : []),
    ],
    taken: notGiven(words, faceLines(face)),
    note: frictionFromTorqueTestNote,
  }
}

function runLeastPreload(words: CalculationWords): CalculationRun {
  const least = leastPreload({
    preload: words.quantity('preload', 'force'),
    tighteningFactor: words.quantity('tightening-factor', 'ratio'),
  })
  return {results: [quantityLine('least-preload', least, 'kN', 2)], taken: [], note: leastPreloadNote}
}

function runLubricantSwap(words: CalculationWords): CalculationRun {
  const size = words.text('size')
  const thread = coarseThread(size)
  const face = bearingFaceOf(words, size)
  const yieldStress = yieldStressOf(words.text('class'), thread.nominalDiameter)
  const utilisation = words.optional('utilisation', 'ratio') ?? percent(90)
  const setFor = words.quantity('set-for', 'ratio')
  const appliedTo = words.quantity('applied-to', 'ratio')
  const result = lubricantSwap({
    thread,
    ...face,
    yieldStress,
    utilisation,
    edition: '2003',
    setFor: {threadFriction: setFor, headFriction: setFor},
    appliedTo: {threadFriction: appliedTo, headFriction: appliedTo},
  })
  return {
    results: [
      wordLine('outcome', result.outcome),
      quantityLine('torque', result.torque, 'N·m', 1),
      quantityLine('preload', result.preload, 'kN', 2),
      quantityLine('allowed-preload', result.allowedPreload, 'kN', 2),
      quantityLine('share-of-allowed', result.shareOfAllowed, '%', 0),
      quantityLine('combined-stress', result.combinedUtilisation, '%', 0),
      quantityLine('yield-force', result.yieldForce, 'kN', 2),
    ],
    taken: [
      ...notGiven(words, [quantityLine('utilisation', utilisation, '%', 0), ...faceLines(face)]),
      quantityLine('yield-stress', yieldStress, 'N/mm²', 0),
    ],
    note: lubricantSwapNote,
  }
}

function runNutFactorFromFriction(words: CalculationWords): CalculationRun {
  const size = words.text('size')
  const face = bearingFaceOf(words, size)
  const threadFriction = words.quantity('friction', 'ratio')
  const headFriction = words.optional('head-friction', 'ratio') ?? threadFriction
  const result = nutFactorFromFriction({thread: coarseThread(size), ...face, threadFriction, headFriction})
  return {
    results: [
      quantityLine('nut-factor', result.nutFactor, '1', 4),
      quantityLine('bearing-friction-diameter', result.bearingFrictionDiameter, 'mm', 3),
    ],
    taken: notGiven(words, [quantityLine('head-friction', headFriction, '1', 3), ...faceLines(face)]),
    note: nutFactorFromFrictionNote,
  }
}

function runNutFactorPreload(words: CalculationWords): CalculationRun {
  const preload = nutFactorPreload({
    nutFactor: words.quantity('nut-factor', 'ratio'),
    diameter: words.quantity('diameter', 'length'),
    torque: words.quantity('torque', 'torque'),
  })
  return {results: [quantityLine('preload', preload, 'kN', 2)], taken: [], note: nutFactorPreloadNote}
}

function runNutFactorTorque(words: CalculationWords): CalculationRun {
  const torque = nutFactorTorque({
    nutFactor: words.quantity('nut-factor', 'ratio'),
    diameter: words.quantity('diameter', 'length'),
    preload: words.quantity('preload', 'force'),
  })
  return {results: [quantityLine('torque', torque, 'N·m', 2)], taken: [], note: nutFactorTorqueNote}
}

function runTighteningPasses(words: CalculationWords): CalculationRun {
  const shares = words.has('shares') ? words.list('shares', 'ratio') : [30, 60, 100].map(percent)
  const passes = tighteningPasses(words.quantity('torque', 'torque'), shares)
  return {
    results: passes.map((pass, index) => quantityLine(`pass-${index + 1}`, pass, 'N·m', 1)),
    taken: notGiven(words, [wordLine('shares', '30 %, 60 %, 100 %')]),
    note: tighteningPassesNote,
  }
}

function runYieldClampForce(words: CalculationWords): CalculationRun {
  const thread = coarseThread(words.text('size'))
  const yieldStress = yieldStressOf(words.text('class'), thread.nominalDiameter)
  const result = yieldClampForce({
    thread,
    yieldStress,
    threadFriction: words.quantity('friction', 'ratio'),
  })
  return {
    results: [
      quantityLine('clamp-force', result.clampForce, 'kN', 2),
      quantityLine('divisor', result.divisor, '1', 3),
    ],
    taken: [quantityLine('yield-stress', yieldStress, 'N/mm²', 0)],
    note: yieldClampForceNote,
  }
}

function faceLines(face: {
  readonly bearingDiameter: Quantity<'length'>
  readonly holeDiameter: Quantity<'length'>
}): readonly ResultLine[] {
  return [
    quantityLine('head', face.bearingDiameter, 'mm', 2),
    quantityLine('hole', face.holeDiameter, 'mm', 2),
  ]
}
