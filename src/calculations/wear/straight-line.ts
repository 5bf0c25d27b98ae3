import {studentTQuantile} from './student-t.ts'

/** A straight line through points by least squares, with what says how well it fits. Plain numbers in the units of the points. */
export interface StraightLine {
  readonly count: number
  readonly intercept: number
  readonly slope: number
  readonly meanX: number
  /** Sum of the squared distances of x from its mean. */
  readonly spreadX: number
  readonly sumOfSquaredResiduals: number
  readonly residualDeviation: number
  readonly interceptDeviation: number
  readonly slopeDeviation: number
  /** Share of the scatter of y that the line explains. */
  readonly determination: number
}

/**
 * Straight line by least squares.
 *
 * Sums are taken about the means, so that no digits are lost where x is far from zero.
 *
 * Source: textbooks of statistics, simple linear regression; from memory, compared with the certified values of NIST StRD "Norris".
 * Valid for: three points or more that do not all lie at one x.
 *
 * @throws {RangeError}
 *   When there are fewer than three points, the lists differ in length, or all points lie at one x.
 */
export function straightLine(xs: readonly number[], ys: readonly number[]): StraightLine {
  const count = xs.length
  if (ys.length !== count)
    throw new RangeError(`Unexpected ${ys.length} values for ${count} places, expected as many`)
  if (count < 3) throw new RangeError(`Unexpected ${count} points, expected at least 3`)
  const meanX = sum(xs) / count
  const meanY = sum(ys) / count
  const spreadX = sum(xs.map((x) => (x - meanX) ** 2))
  if (spreadX === 0) throw new RangeError('Unexpected points at one place, expected at least two places')
  const slope = sum(xs.map((x, index) => (x - meanX) * ((ys[index] ?? 0) - meanY))) / spreadX
  const residuals = xs.map((x, index) => (ys[index] ?? 0) - meanY - slope * (x - meanX))
  const sumOfSquaredResiduals = sum(residuals.map((one) => one ** 2))
  const spreadY = sum(ys.map((y) => (y - meanY) ** 2))
  const residualDeviation = Math.sqrt(sumOfSquaredResiduals / (count - 2))
  return {
    count,
    intercept: meanY - slope * meanX,
    slope,
    meanX,
    spreadX,
    sumOfSquaredResiduals,
    residualDeviation,
    interceptDeviation: residualDeviation * Math.sqrt(1 / count + meanX ** 2 / spreadX),
    slopeDeviation: residualDeviation / Math.sqrt(spreadX),
    determination: spreadY === 0 ? 1 : 1 - sumOfSquaredResiduals / spreadY,
  }
}

/**
 * Value of a line at a place.
 *
 * Source: definition of a line.
 * Valid for: every place.
 */
export function lineAt(line: Pick<StraightLine, 'intercept' | 'slope'>, x: number): number {
  return line.intercept + line.slope * x
}

/**
 * Half the width of the interval in which one more point at a place is expected.
 *
 * Source: textbooks of statistics, prediction interval of a new observation; formula read in a reprint.
 * Valid for: lines through three points or more, independent points with even scatter; confidences above 0 and below 1.
 *
 * @throws {RangeError}
 *   When the confidence is out of range or there are fewer than three points.
 */
export function predictionHalfWidth(
  line: Pick<StraightLine, 'count' | 'meanX' | 'spreadX' | 'residualDeviation'>,
  x: number,
  confidence: number,
): number {
  if (line.count < 3) throw new RangeError(`Unexpected ${line.count} points, expected at least 3`)
  return (
    studentTQuantile((1 + confidence) / 2, line.count - 2) *
    line.residualDeviation *
    Math.sqrt(1 + 1 / line.count + (x - line.meanX) ** 2 / line.spreadX)
  )
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0)
}
