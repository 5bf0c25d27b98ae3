import {
  elastomerShelfLife,
  elastomerShelfLifeNote,
  type StorageState,
  storageState,
} from '../calculations/seals/elastomer-shelf-life.ts'
import {lipSpeed, lipSpeedNote} from '../calculations/seals/lip-speed.ts'
import {oRingSectionTolerance} from '../calculations/seals/o-ring-sections.ts'
import {
  type ORingGland,
  type ORingTolerances,
  oRingDepth,
  oRingDepthNote,
  oRingGlandNote,
  oRingSqueeze,
  oRingSqueezeLimits,
} from '../calculations/seals/o-ring-squeeze.ts'
import {greatestStretch, oRingFill, oRingStretch} from '../calculations/seals/o-ring-stretch.ts'
import {type LipMaterial, sealSeat, sealSeatNote} from '../calculations/seals/seal-seat.ts'
import {quantityOf} from '../quantities/quantity.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import {choiceWord} from './choice-word.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {notGiven} from './not-given.ts'
import {notesTogether} from './notes-together.ts'

const lips: readonly [LipMaterial, ...LipMaterial[]] = ['elastomer', 'ptfe']

/** What a state of storage is called on the command line. */
const stateWords: Readonly<Record<StorageState, string>> = {
  'first-period': 'in the first storage period',
  'inspect-before-use': 'inspect before use',
  'not-for-use': 'not for use',
}

/** O-rings and their glands, lips and their seats, storage of elastomer. */
export const sealCalculations: readonly ListedCalculation[] = [
  {note: lipSpeedNote, keys: ['diameter', 'speed'], optionalKeys: [], run: runLipSpeed},
  {note: oRingDepthNote, keys: ['section', 'squeeze'], optionalKeys: [], run: runORingDepth},
  {
    note: oRingGlandNote,
    keys: ['section', 'depth'],
    optionalKeys: [
      'section-tolerance',
      'depth-tolerance',
      'inside-diameter',
      'groove-diameter',
      'groove-width',
    ],
    run: runORingGland,
  },
  {note: sealSeatNote, keys: ['lip', 'diameter', 'speed'], optionalKeys: [], run: runSealSeat},
  {note: elastomerShelfLifeNote, keys: ['material', 'cured'], optionalKeys: ['on'], run: runShelfLife},
]

function runORingGland(words: CalculationWords): CalculationRun {
  const gland = {section: words.quantity('section', 'length'), depth: words.quantity('depth', 'length')}
  const section = words.optional('section-tolerance', 'length') ?? oRingSectionTolerance(gland.section)
  const depth = words.optional('depth-tolerance', 'length') ?? quantityOf('length', 0)
  const squeeze = oRingSqueeze(gland)
  return {
    results: [
      quantityLine('squeeze', squeeze.share, '%', 1),
      quantityLine('squeeze-length', squeeze.length, 'mm', 3),
      ...(section ? limitLines(gland, {section, depth}) : []),
      ...grooveLines(words, gland),
    ],
    taken: section
      ? notGiven(words, [
          quantityLine('section-tolerance', section, 'mm', 3),
          quantityLine('depth-tolerance', depth, 'mm', 3),
        ])
      : [wordLine('section-tolerance', 'not known: no limits of squeeze')],
    note: oRingGlandNote,
  }
}

function limitLines(gland: ORingGland, tolerances: ORingTolerances): readonly ResultLine[] {
  const {least, greatest} = oRingSqueezeLimits(gland, tolerances)
  return [
    quantityLine('least-squeeze', least.share, '%', 1),
    quantityLine('greatest-squeeze', greatest.share, '%', 1),
    quantityLine('least-squeeze-length', least.length, 'mm', 3),
    quantityLine('greatest-squeeze-length', greatest.length, 'mm', 3),
  ]
}

/** Stretch where both diameters are given, and fill where the width is given too. */
function grooveLines(words: CalculationWords, {section, depth}: ORingGland): readonly ResultLine[] {
  const insideDiameter = words.optional('inside-diameter', 'length')
  const grooveDiameter = words.optional('groove-diameter', 'length')
  const width = words.optional('groove-width', 'length')
  if (!insideDiameter && !grooveDiameter && !width) return []
  if (!insideDiameter || !grooveDiameter) {
    words.text('inside-diameter')
    words.text('groove-diameter')
    return []
  }
  const ring = {section, insideDiameter, grooveDiameter}
  const result = oRingStretch(ring)
  const isStretchedTooFar = result.stretch.si > greatestStretch.si * (1 + 1e-9)
  return [
    quantityLine('stretch', result.stretch, '%', 2),
    wordLine('stretch-judged', isStretchedTooFar ? 'above 5 %' : 'at most 5 %'),
    quantityLine('reduced-section', result.reducedSection, 'mm', 3),
    ...(width ? [quantityLine('fill', oRingFill({...ring, depth, width}), '%', 1)] : []),
  ]
}

function runORingDepth(words: CalculationWords): CalculationRun {
  const depth = oRingDepth(words.quantity('section', 'length'), words.quantity('squeeze', 'ratio'))
  return {results: [quantityLine('depth', depth, 'mm', 3)], taken: [], note: oRingDepthNote}
}

function runLipSpeed(words: CalculationWords): CalculationRun {
  const speed = lipSpeed(words.quantity('diameter', 'length'), words.quantity('speed', 'rotational-speed'))
  return {results: [quantityLine('lip-speed', speed, 'm/s', 2)], taken: [], note: lipSpeedNote}
}

function runSealSeat(words: CalculationWords): CalculationRun {
  words.text('lip')
  const lip = choiceWord(words, 'lip', lips)
  const speed = lipSpeed(words.quantity('diameter', 'length'), words.quantity('speed', 'rotational-speed'))
  const seat = sealSeat(lip, speed)
  return {
    results: [
      quantityLine('lip-speed', speed, 'm/s', 2),
      quantityLine('least-roughness', seat.leastRoughness, 'µm', 1),
      quantityLine('greatest-roughness', seat.greatestRoughness, 'µm', 1),
      quantityLine('least-hardness', seat.leastHardness, 'HRC', 0),
      quantityLine('greatest-run-out', seat.greatestRunOut, 'mm', 2),
      quantityLine('greatest-groove', seat.greatestGroove, 'mm', 2),
    ],
    taken: [],
    note: notesTogether(sealSeatNote, lipSpeedNote),
  }
}

function runShelfLife(words: CalculationWords): CalculationRun {
  const [material, cured] = [words.text('material'), words.text('cured')]
  const life = elastomerShelfLife(material, cured)
  return {
    results: [
      wordLine('valid-to', life.validTo),
      wordLine('valid-to-after-inspection', life.validToAfterInspection),
      wordLine('group', life.group),
      ...(words.has('on')
        ? [wordLine('state', stateWords[storageState(material, cured, words.text('on'))])]
        : []),
    ],
    taken: [],
    note: elastomerShelfLifeNote,
  }
}
