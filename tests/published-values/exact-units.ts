import type {QuantityKind} from '../../src/quantities/quantity.ts'
import {publishedRows} from './published-rows.ts'

/** Exact conversion factors from the definitions of NIST SP 811 appendix B, computed apart from this project by GNU units 2.22. */
export const exactUnits: readonly {
  readonly kind: QuantityKind
  readonly symbol: string
  readonly si: number
}[] = [
  {kind: 'gauge-pressure', symbol: 'psi(g)', si: 6894.75729316836},
  {kind: 'pressure-difference', symbol: 'psi', si: 6894.75729316836},
  {kind: 'pressure-difference', symbol: 'bar', si: 1e5},
  {kind: 'torque', symbol: 'lbf·ft', si: 1.3558179483314},
  {kind: 'mass', symbol: 'lb', si: 0.45359237},
  {kind: 'length', symbol: 'in', si: 0.0254},
  {kind: 'gas-leak-rate', symbol: 'mbar·l/s', si: 0.1},
  {kind: 'volume', symbol: 'l', si: 1e-3},
  {kind: 'time', symbol: 'h', si: 3600},
  {kind: 'stress', symbol: 'N/mm²', si: 1e6},
]

export const published = {
  exact: publishedRows({
    calculation: 'convert',
    source: 'definitions of NIST SP 811 appendix B, computed apart from this project by GNU units 2.22',
    known: 'computed',
    rows: exactUnits,
  }),
}
