import {type NoRows, publishedRows} from './published-rows.ts'

/**
 * Points of the straight-line problem "Norris": x and y.
 *
 * NIST Statistical Reference Datasets, linear regression; read, with the certified values below.
 */
export const norrisPoints: readonly (readonly [number, number])[] = [
  [0.2, 0.1],
  [337.4, 338.8],
  [118.2, 118.1],
  [884.6, 888],
  [10.1, 9.2],
  [226.5, 228.1],
  [666.3, 668.5],
  [996.3, 998.5],
  [448.6, 449.1],
  [777, 778.9],
  [558.2, 559.2],
  [0.4, 0.3],
  [0.6, 0.1],
  [775.5, 778.1],
  [666.9, 668.8],
  [338, 339.3],
  [447.5, 448.9],
  [11.6, 10.8],
  [556, 557.7],
  [228.1, 228.3],
  [995.8, 998],
  [887.6, 888.8],
  [120.2, 119.6],
  [0.3, 0.3],
  [0.3, 0.6],
  [556.8, 557.6],
  [339.1, 339.3],
  [887.2, 888],
  [999, 998.5],
  [779, 778.9],
  [11.1, 10.2],
  [118.3, 117.6],
  [229.2, 228.9],
  [669.1, 668.4],
  [448.9, 449.2],
  [0.5, 0.2],
]

/** Certified values of "Norris": fifteen digits. */
export const norrisCertified = {
  intercept: -0.262323073774029,
  slope: 1.00211681802045,
  interceptDeviation: 0.232818234301152,
  slopeDeviation: 0.429796848199937e-3,
  residualDeviation: 0.884796396144373,
  determination: 0.999993745883712,
  sumOfSquaredResiduals: 26.6173985294224,
} as const

/** Each certified value by its name. */
const certified = [
  ['intercept', norrisCertified.intercept],
  ['slope', norrisCertified.slope],
  ['interceptDeviation', norrisCertified.interceptDeviation],
  ['slopeDeviation', norrisCertified.slopeDeviation],
  ['residualDeviation', norrisCertified.residualDeviation],
  ['determination', norrisCertified.determination],
  ['sumOfSquaredResiduals', norrisCertified.sumOfSquaredResiduals],
] as const

export const published = {
  certified: publishedRows({
    calculation: 'wear-forecast',
    source: 'NIST Statistical Reference Datasets, linear regression, "Norris"',
    known: 'read',
    rows: certified,
  }),
}

export const noRows: NoRows = {
  norrisPoints: 'the points that the certified values belong to',
  norrisCertified: 'counted one by one',
}
