import {publishedRows} from './published-rows.ts'

/**
 * Probability of at most 0, 1, 2 … events by mean.
 *
 * Cumulative Poisson tables of statistics textbooks, four digits; from memory and recomputed apart from this project.
 */
export const poissonTable: readonly (readonly [number, readonly number[]])[] = [
  [0.5, [0.6065, 0.9098, 0.9856, 0.9982, 0.9998]],
  [1, [0.3679, 0.7358, 0.9197, 0.981, 0.9963, 0.9994]],
  [1.6, [0.2019, 0.5249, 0.7834, 0.9212, 0.9763, 0.994]],
  [2, [0.1353, 0.406, 0.6767, 0.8571, 0.9473, 0.9834, 0.9955]],
  [3, [0.0498, 0.1991, 0.4232, 0.6472, 0.8153, 0.9161, 0.9665, 0.9881]],
  [5, [0.0067, 0.0404, 0.1247, 0.265, 0.4405, 0.616, 0.7622, 0.8666, 0.9319, 0.9682, 0.9863]],
]

export const published = {
  cumulative: publishedRows({
    calculation: 'spares-for-service',
    source: 'cumulative Poisson tables of statistics textbooks',
    known: 'memory',
    rows: poissonTable,
  }),
}
