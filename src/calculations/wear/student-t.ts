/**
 * Quantile of Student's t distribution with a whole number of degrees of freedom.
 *
 * With whole degrees of freedom the distribution is a finite sum of powers of
 * a cosine, so no series has to be cut off; the quantile is found by halving
 * the angle whose tangent it is.
 *
 * Source: finite sums of the handbooks of mathematical functions (Abramowitz and Stegun 26.7); from memory, compared with
 * printed tables and an independent library.
 * Valid for: probabilities above 0 and below 1, 1 to 10 000 degrees of freedom.
 *
 * @throws {RangeError}
 *   When the probability or the degrees of freedom are out of range.
 */
export function studentTQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability > 0 && probability < 1))
    throw new RangeError(`Unexpected probability ${probability}, expected one above 0 and below 1`)
  if (!Number.isInteger(degreesOfFreedom) || degreesOfFreedom < 1 || degreesOfFreedom > 10_000)
    throw new RangeError(
      `Unexpected ${degreesOfFreedom} degrees of freedom, expected a whole number from 1 to 10000`,
    )
  const within = Math.abs(2 * probability - 1)
  let low = 0
  let high = Math.PI / 2
  for (let turn = 0; turn < 60; turn += 1) {
    const middle = (low + high) / 2
    if (shareWithin(middle, degreesOfFreedom) < within) low = middle
    else high = middle
  }
  return Math.sign(probability - 0.5) * Math.sqrt(degreesOfFreedom) * Math.tan((low + high) / 2)
}

/** Probability of a t between −√ν·tan θ and +√ν·tan θ. */
function shareWithin(angle: number, degreesOfFreedom: number): number {
  const cosine = Math.cos(angle)
  const isOdd = degreesOfFreedom % 2 === 1
  let term = isOdd ? cosine : 1
  let sum = degreesOfFreedom === 1 ? 0 : term
  for (let power = isOdd ? 3 : 2; power <= degreesOfFreedom - 2; power += 2) {
    term *= ((power - 1) / power) * cosine ** 2
    sum += term
  }
  const product = Math.sin(angle) * sum
  return isOdd ? (2 / Math.PI) * (angle + product) : product
}
