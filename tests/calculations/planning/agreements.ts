import {poissonAtMost, sparesForService} from '../../../src/calculations/planning/spares-for-service.ts'
import {strippingCeiling} from '../../../src/calculations/planning/stripping-ceiling.ts'
import {count, ratio} from '../../../src/quantities/named-units.ts'
import {type Agreement, type HeldRows, heldTo, near, same} from '../../published-values/agreement.ts'
import {published as poisson} from '../../published-values/poisson-rows.ts'
import {published as stripping} from '../../published-values/stripping-tiers.ts'

/** The smallest stock that serves a little less than the printed probability, where levels are that high. */
function stockFor(mean: number, probability: number, stock: number): readonly Agreement[] {
  if (probability <= 0.501 || probability >= 0.9999) return []
  const found = sparesForService({expectedUse: count(mean), serviceLevel: ratio(probability - 0.0001)})
  return [near(`stock for ${probability}`, found.stock.si, stock, 1e-9)]
}

/** Planning against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(poisson.cumulative, ([mean, row]) =>
    row.flatMap((probability, stock) => [
      near(`at most ${stock}`, poissonAtMost(stock, mean), probability, 0.0000501),
      ...stockFor(mean, probability, stock),
    ]),
  ),
  heldTo(stripping.tiers, ([built, paragraph, strict, lenient, tolerance]) =>
    (
      [
        ['X', strict],
        ['Y', strict],
        ['Z', lenient],
      ] as const
    ).flatMap(([category, litres]) => {
      const found = strippingCeiling({built, category})
      return [
        near(`l of ${category}`, found.ceiling.si * 1000, litres, 1e-9),
        near(`tolerance of ${category}`, found.testTolerance.si * 1000, tolerance, 1e-9),
        same('paragraph', found.paragraph, paragraph),
      ]
    }),
  ),
]
