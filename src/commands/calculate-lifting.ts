import {eyeboltLimit, eyeboltLimitNote} from '../calculations/lifting/din-580-eyebolts.ts'
import {gearLimitNote, requiredGearLimit, usualReserve} from '../calculations/lifting/gear-limit.ts'
import {loadShare, loadShareNote} from '../calculations/lifting/load-share.ts'
import {
  type ShacklePull,
  shackleLimit,
  shackleLimitNote,
  shackleShare,
} from '../calculations/lifting/shackle-limit.ts'
import {slingAngle, slingAngleNote} from '../calculations/lifting/sling-angle.ts'
import type {SlingShare} from '../calculations/lifting/sling-legs.ts'
import {
  type SlingHitch,
  slingLimit,
  slingLimitNote,
  slingModeFactor,
} from '../calculations/lifting/sling-limit.ts'
import {slingTension, slingTensionNote} from '../calculations/lifting/sling-tension.ts'
import {printFigure} from '../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../quantities/quantity.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import {loweringBoltsCalculation, screwTorqueCalculation} from './calculate-screws.ts'
import type {CalculationWords} from './calculate-words.ts'
import {choiceWord} from './choice-word.ts'
import type {ListedCalculation} from './listed-calculation.ts'
import {loadWord} from './load-word.ts'
import {notGiven} from './not-given.ts'
import {notesTogether} from './notes-together.ts'

const shares: readonly [SlingShare, ...SlingShare[]] = ['two-legs', 'all-legs']
const hitches: readonly [SlingHitch, ...SlingHitch[]] = ['straight', 'choke', 'basket']

/** Slings, eyebolts, shackles, the marking of gear, shares of supports, screws under load. */
export const liftingCalculations: readonly ListedCalculation[] = [
  {note: eyeboltLimitNote, keys: ['size', 'angle-from-axis'], optionalKeys: [], run: runEyeboltLimit},
  {note: gearLimitNote, keys: ['carried'], optionalKeys: ['limit', 'reserve'], run: runGearLimit},
  {note: loadShareNote, keys: ['load', 'x'], optionalKeys: ['y', 'centre-x', 'centre-y'], run: runLoadShare},
  loweringBoltsCalculation,
  screwTorqueCalculation,
  {
    note: shackleLimitNote,
    keys: ['limit'],
    optionalKeys: ['side-angle', 'included-angle'],
    run: runShackleLimit,
  },
  {note: slingAngleNote, keys: ['length', 'height'], optionalKeys: [], run: runSlingAngle},
  {
    note: slingLimitNote,
    keys: ['one-leg', 'legs', 'angle-from-vertical'],
    optionalKeys: ['hitch', 'share'],
    run: runSlingLimit,
  },
  {
    note: slingTensionNote,
    keys: ['load', 'legs', 'angle-from-vertical'],
    optionalKeys: ['share', 'reserve'],
    run: runSlingTension,
  },
]

function runSlingTension(words: CalculationWords): CalculationRun {
  const share = choiceWord(words, 'share', shares)
  const reserve = words.optional('reserve', 'ratio') ?? usualReserve
  const result = slingTension({
    mass: loadWord(words, 'load'),
    legs: legsOf(words),
    angleFromVertical: words.quantity('angle-from-vertical', 'angle'),
    share,
  })
  return {
    results: [
      quantityLine('tension', result.tension, 'kN', 3),
      quantityLine('carried', result.carried, 'kg', 1),
      quantityLine('required-limit', requiredGearLimit(result.carried, reserve), 'kg', 1),
      quantityLine('tension-factor', result.tensionFactor, '1', 4),
      quantityLine('counted-legs', quantityOf('count', result.counted), '', 0),
    ],
    taken: notGiven(words, [wordLine('share', share), quantityLine('reserve', reserve, '1', 2)]),
    note: {
      ...notesTogether(slingTensionNote, gearLimitNote),
      sources: [...slingTensionNote.sources, ...gearLimitNote.sources],
    },
  }
}

function runSlingAngle(words: CalculationWords): CalculationRun {
  const result = slingAngle({
    length: words.quantity('length', 'length'),
    height: words.quantity('height', 'length'),
  })
  return {
    results: [
      quantityLine('angle-from-vertical', result.fromVertical, '°', 1),
      quantityLine('angle-from-horizontal', result.fromHorizontal, '°', 1),
      quantityLine('tension-factor', result.tensionFactor, '1', 4),
    ],
    taken: [],
    note: slingAngleNote,
  }
}

function runSlingLimit(words: CalculationWords): CalculationRun {
  const share = choiceWord(words, 'share', shares)
  const hitch = choiceWord(words, 'hitch', hitches)
  const input = {
    oneLeg: words.quantity('one-leg', 'mass'),
    legs: legsOf(words),
    angleFromVertical: words.quantity('angle-from-vertical', 'angle'),
    share,
    hitch,
  }
  return {
    results: [
      quantityLine('limit', slingLimit(input), 'kg', 1),
      quantityLine('mode-factor', slingModeFactor(input), '1', 1),
    ],
    taken: notGiven(words, [wordLine('hitch', hitch), wordLine('share', share)]),
    note: slingLimitNote,
  }
}

function runEyeboltLimit(words: CalculationWords): CalculationRun {
  const limit = eyeboltLimit(words.text('size'), words.quantity('angle-from-axis', 'angle'))
  return {results: [quantityLine('limit', limit, 'kg', 0)], taken: [], note: eyeboltLimitNote}
}

function runShackleLimit(words: CalculationWords): CalculationRun {
  const pull = pullOf(words)
  return {
    results: [
      quantityLine('limit', shackleLimit(words.quantity('limit', 'mass'), pull), 'kg', 1),
      quantityLine('share', shackleShare(pull), '%', 0),
    ],
    taken: [],
    note: shackleLimitNote,
  }
}

function pullOf(words: CalculationWords): ShacklePull {
  const sideAngle = words.optional('side-angle', 'angle')
  const includedAngle = words.optional('included-angle', 'angle')
  if (sideAngle && !includedAngle) return {kind: 'one-leg', sideAngle}
  if (includedAngle && !sideAngle) return {kind: 'two-legs', includedAngle}
  throw new RangeError(
    `Unexpected call with ${sideAngle ? 'both angles' : 'no angle'}, expected \`side-angle=\` or \`included-angle=\``,
  )
}

function runGearLimit(words: CalculationWords): CalculationRun {
  const reserve = words.optional('reserve', 'ratio') ?? usualReserve
  const required = requiredGearLimit(loadWord(words, 'carried'), reserve)
  const limit = words.optional('limit', 'mass')
  const judged = (marked: Quantity<'mass'>): ResultLine =>
    wordLine('judged', marked.si >= required.si * (1 - 1e-9) ? 'strong enough' : 'too weak')
  return {
    results: [quantityLine('required-limit', required, 'kg', 1), ...(limit ? [judged(limit)] : [])],
    taken: notGiven(words, [quantityLine('reserve', reserve, '1', 2)]),
    note: gearLimitNote,
  }
}

function runLoadShare(words: CalculationWords): CalculationRun {
  const nothing = quantityOf('length-difference', 0)
  const across = words.list('x', 'length-difference')
  const along = words.has('y') ? words.list('y', 'length-difference') : across.map(() => nothing)
  if (along.length !== across.length)
    throw new RangeError(`Unexpected ${along.length} places in \`y\`, expected ${across.length} as in \`x\``)
  const centre = {
    x: words.optional('centre-x', 'length-difference') ?? nothing,
    y: words.optional('centre-y', 'length-difference') ?? nothing,
  }
  const supports = across.map((x, index) => ({x, y: along[index] ?? nothing}))
  const loads = loadShare({mass: loadWord(words, 'load'), supports, centreOfMass: centre})
  const whole = loads.reduce((sum, one) => sum + one.si, 0)
  return {
    results: [
      rowLine(
        'loads',
        loads.map((one) => one.si / 1000),
        'kN',
        3,
      ),
      rowLine(
        'shares',
        loads.map((one) => (100 * one.si) / whole),
        '%',
        1,
      ),
    ],
    taken: notGiven(words, [
      rowLine(
        'y',
        along.map((one) => one.si),
        'm',
        3,
      ),
      quantityLine('centre-x', centre.x, 'm', 3),
      quantityLine('centre-y', centre.y, 'm', 3),
    ]),
    note: loadShareNote,
  }
}

function rowLine(name: string, values: readonly number[], unit: string, decimals: number): ResultLine {
  return {name, value: values, figure: values.map((one) => printFigure(one, decimals)).join(' '), unit}
}

function legsOf(words: CalculationWords): number {
  const legs = words.text('legs')
  if (!/^\d+$/u.test(legs)) throw new RangeError(`Unexpected count \`${legs}\`, expected 1, 2, 3 or 4`)
  return Number(legs)
}
