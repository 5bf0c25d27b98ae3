import type {CurvePoint} from '../calculations/pump/curve-head.ts'
import {flowFromUllage} from '../calculations/pump/flow-from-ullage.ts'
import {testRun, testRunBands, testRunNote} from '../calculations/pump/test-run.ts'
import {type Quantity, quantityOf} from '../quantities/quantity.ts'
import {type CalculationRun, quantityLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'

/** The test run as the command line knows it. */
export const testRunEntry = {
  note: testRunNote,
  keys: ['head', 'curve-speed', 'curve-flows', 'curve-heads'],
  optionalKeys: ['speed', 'shut-off', 'flow', 'start-volume', 'end-volume', 'duration'],
} as const

/**
 * Test run from the words of the command line.
 *
 * @throws {RangeError}
 *   When a word is missing, does not read or is out of range, or the flow is told in two ways.
 */
export function runTestRun(words: CalculationWords): CalculationRun {
  const speed = words.optional('speed', 'rotational-speed')
  const flow = flowOf(words)
  const result = testRun({
    head: words.quantity('head', 'length'),
    curveSpeed: words.quantity('curve-speed', 'rotational-speed'),
    curve: curveOf(words),
    ...(speed ? {speed} : {}),
    ...(flow ? {flow} : {}),
  })
  if (!result.canBeJudged)
    return {results: [wordLine('judgement', `CANNOT JUDGE: ${result.reason}`)], taken: [], note: testRunNote}
  return {
    results: [
      quantityLine('share', result.share, '%', 1),
      quantityLine('scaled-head', result.scaledHead, 'm', 2),
      quantityLine('scaled-flow', result.scaledFlow, 'm³/h', 1),
      quantityLine('curve-head', result.curveHead, 'm', 2),
    ],
    taken: [
      quantityLine('watch-below', testRunBands.watchBelow, '%', 0),
      quantityLine('act-below', testRunBands.actBelow, '%', 0),
    ],
    note: testRunNote,
  }
}

/** Flow as given, by ullage and time, or nothing at shut-off; undefined where it is not known. */
function flowOf(words: CalculationWords): Quantity<'volume-flow'> | undefined {
  const shutOff = words.optionalText('shut-off', 'no')
  if (shutOff !== 'yes' && shutOff !== 'no')
    throw new RangeError(`Unexpected shut-off \`${shutOff}\`, expected \`yes\` or \`no\``)
  const byUllage = ['start-volume', 'end-volume', 'duration'].some((key) => words.has(key))
  const told = [shutOff === 'yes', words.has('flow'), byUllage].filter(Boolean).length
  if (told > 1)
    throw new RangeError('Unexpected flow told in two ways, expected shut-off, a flow, or ullage and time')
  if (shutOff === 'yes') return quantityOf('volume-flow', 0)
  if (!byUllage) return words.optional('flow', 'volume-flow')
  return flowFromUllage({
    startVolume: words.quantity('start-volume', 'volume'),
    endVolume: words.quantity('end-volume', 'volume'),
    duration: words.quantity('duration', 'time'),
  })
}

function curveOf(words: CalculationWords): readonly CurvePoint[] {
  const [flows, heads] = [words.list('curve-flows', 'volume-flow'), words.list('curve-heads', 'length')]
  if (flows.length !== heads.length)
    throw new RangeError(
      `Unexpected ${flows.length} flows and ${heads.length} heads of the curve, expected as many of each`,
    )
  return flows.flatMap((flow, index) => {
    const head = heads[index]
    return head ? [{flow, head}] : []
  })
}
