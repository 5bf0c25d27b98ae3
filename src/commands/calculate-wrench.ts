import {torqueWindow, torqueWindowNote} from '../calculations/bolted-joints/torque-window.ts'
import {wrenchCovers, wrenchCoversNote} from '../calculations/bolted-joints/wrench-covers.ts'
import {wrenchExtensionNote, wrenchExtensionSetting} from '../calculations/bolted-joints/wrench-extension.ts'
import {percent} from '../quantities/named-units.ts'
import {type CalculationRun, quantityLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import {choiceWord} from './choice-word.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'

/** Setting, range and extension of torque wrenches. */
export const wrenchCalculations: readonly ListedCalculation[] = [
  {
    note: torqueWindowNote,
    keys: ['torque'],
    optionalKeys: ['accuracy', 'graduation', 'torque-is'],
    run: runTorqueWindow,
  },
  {note: wrenchCoversNote, keys: ['torque', 'begin', 'most'], optionalKeys: [], run: runWrenchCovers},
  {
    note: wrenchExtensionNote,
    keys: ['torque', 'wrench', 'with-extension'],
    optionalKeys: [],
    run: runWrenchExtension,
  },
]

function runTorqueWindow(words: CalculationWords): CalculationRun {
  const accuracy = words.optional('accuracy', 'ratio') ?? percent(4)
  const graduation = words.optional('graduation', 'torque')
  const torqueIs = choiceWord(words, 'torque-is', ['target', 'maximum'])
  const window = torqueWindow({
    torque: words.quantity('torque', 'torque'),
    accuracy,
    ...(graduation ? {graduation} : {}),
    isMaximum: torqueIs === 'maximum',
  })
  return {
    results: [
      quantityLine('setting', window.setting, 'N·m', 2),
      quantityLine('least', window.least, 'N·m', 2),
      quantityLine('most', window.most, 'N·m', 2),
    ],
    taken: notGiven(words, [
      quantityLine('accuracy', accuracy, '%', 0),
      wordLine('graduation', 'none, so nothing is rounded'),
      wordLine('torque-is', torqueIs),
    ]),
    note: torqueWindowNote,
  }
}

function runWrenchCovers(words: CalculationWords): CalculationRun {
  const result = wrenchCovers({
    torque: words.quantity('torque', 'torque'),
    begin: words.quantity('begin', 'torque'),
    most: words.quantity('most', 'torque'),
  })
  return {
    results: [
      wordLine('covers', result.covers ? 'yes' : 'no'),
      wordLine('torque-lies', result.reason),
      quantityLine('least-used', result.leastUsed, 'N·m', 1),
      quantityLine('share-of-most', result.shareOfMost, '%', 0),
    ],
    taken: [],
    note: wrenchCoversNote,
  }
}

function runWrenchExtension(words: CalculationWords): CalculationRun {
  const setting = wrenchExtensionSetting({
    torque: words.quantity('torque', 'torque'),
    wrenchLength: words.quantity('wrench', 'length'),
    extendedLength: words.quantity('with-extension', 'length'),
  })
  return {results: [quantityLine('setting', setting, 'N·m', 2)], taken: [], note: wrenchExtensionNote}
}
