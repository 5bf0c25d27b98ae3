import {coarseThread} from '../calculations/bolted-joints/coarse-threads.ts'
import {loweringBolts, loweringBoltsNote} from '../calculations/lifting/lowering-bolts.ts'
import {
  type ScrewCollar,
  type ScrewTorque,
  screwTorque,
  screwTorqueNote,
} from '../calculations/lifting/screw-torque.ts'
import {weightOf} from '../calculations/lifting/weight.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {loadWord} from './load-word.ts'
import {notGiven} from './not-given.ts'

/** Bolts on which a unit is lowered. */
export const loweringBoltsCalculation: ListedCalculation = {
  note: loweringBoltsNote,
  keys: ['size', 'load', 'travel', 'friction'],
  optionalKeys: ['pitch', 'collar-diameter', 'collar-friction'],
  run: runLoweringBolts,
}

/** Any screw under load. */
export const screwTorqueCalculation: ListedCalculation = {
  note: screwTorqueNote,
  keys: ['load', 'pitch-diameter', 'lead', 'flank-angle', 'friction'],
  optionalKeys: ['collar-diameter', 'collar-friction'],
  run: runScrewTorque,
}

function runLoweringBolts(words: CalculationWords): CalculationRun {
  const thread = coarseThread(words.text('size'))
  const pitch = words.optional('pitch', 'length') ?? thread.pitch
  const result = loweringBolts({
    mass: loadWord(words, 'load'),
    thread: {...thread, pitch},
    travel: words.quantity('travel', 'length'),
    threadFriction: words.quantity('friction', 'ratio'),
    ...collarOf(words),
  })
  return {
    results: [
      quantityLine('load-of-each', result.load, 'kN', 3),
      quantityLine('turns', result.turns, '1', 1),
      ...torqueLines(result),
      quantityLine('tensile-stress', result.tensileStress, 'N/mm²', 1),
    ],
    taken: [...notGiven(words, [quantityLine('pitch', pitch, 'mm', 2)]), ...noCollar(words)],
    note: loweringBoltsNote,
  }
}

function runScrewTorque(words: CalculationWords): CalculationRun {
  const result = screwTorque({
    load: weightOf(loadWord(words, 'load')),
    pitchDiameter: words.quantity('pitch-diameter', 'length'),
    lead: words.quantity('lead', 'length'),
    flankAngle: words.quantity('flank-angle', 'angle'),
    threadFriction: words.quantity('friction', 'ratio'),
    ...collarOf(words),
  })
  return {results: torqueLines(result), taken: noCollar(words), note: screwTorqueNote}
}

function torqueLines(result: ScrewTorque): readonly ResultLine[] {
  return [
    quantityLine('raising-torque', result.raising, 'N·m', 2),
    quantityLine('lowering-torque', result.lowering, 'N·m', 2),
    quantityLine('efficiency', result.efficiency, '%', 1),
    wordLine('holds-by-itself', result.isSelfLocking ? 'yes' : 'no'),
  ]
}

function collarOf(words: CalculationWords): {readonly collar?: ScrewCollar} {
  const meanDiameter = words.optional('collar-diameter', 'length')
  const friction = words.optional('collar-friction', 'ratio')
  if (meanDiameter && !friction) words.text('collar-friction')
  if (friction && !meanDiameter) words.text('collar-diameter')
  return meanDiameter && friction ? {collar: {meanDiameter, friction}} : {}
}

function noCollar(words: CalculationWords): readonly ResultLine[] {
  return words.has('collar-diameter') ? [] : [wordLine('collar', 'none')]
}
