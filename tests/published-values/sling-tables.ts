import {publishedRows} from './published-rows.ts'

/**
 * Tension factor 1/sin α of a leg by its angle α from the horizontal, in degrees.
 *
 * Trade tables of tension factors for slings; read in a reprint. The digits are
 * those printed. Two entries are cut off and not rounded (40°, 35°).
 */
export const tensionFactorRows: readonly {readonly fromHorizontal: number; readonly factor: string}[] = [
  {fromHorizontal: 90, factor: '1'},
  {fromHorizontal: 85, factor: '1.004'},
  {fromHorizontal: 80, factor: '1.015'},
  {fromHorizontal: 75, factor: '1.035'},
  {fromHorizontal: 70, factor: '1.064'},
  {fromHorizontal: 65, factor: '1.104'},
  {fromHorizontal: 60, factor: '1.155'},
  {fromHorizontal: 55, factor: '1.221'},
  {fromHorizontal: 50, factor: '1.305'},
  {fromHorizontal: 45, factor: '1.414'},
  {fromHorizontal: 40, factor: '1.555'},
  {fromHorizontal: 35, factor: '1.742'},
  {fromHorizontal: 30, factor: '2'},
]

/** Share of its straight load that a leg at α from the horizontal lifts, sin α; the same trade tables, read in a reprint. */
export const liftedShareRows: readonly {readonly fromHorizontal: number; readonly share: string}[] = [
  {fromHorizontal: 85, share: '0.996'},
  {fromHorizontal: 80, share: '0.985'},
  {fromHorizontal: 75, share: '0.966'},
  {fromHorizontal: 70, share: '0.940'},
  {fromHorizontal: 65, share: '0.906'},
  {fromHorizontal: 60, share: '0.866'},
  {fromHorizontal: 55, share: '0.819'},
  {fromHorizontal: 50, share: '0.766'},
  {fromHorizontal: 45, share: '0.707'},
  {fromHorizontal: 40, share: '0.643'},
  {fromHorizontal: 35, share: '0.574'},
  {fromHorizontal: 30, share: '0.500'},
]

/**
 * Mode factors of slings with straight legs, with the count and angle that they are computed from.
 *
 * EN 818-4, mode factors; read in a reprint with examples.
 */
export const modeFactorRows: readonly {
  readonly legs: number
  readonly counted: number
  readonly fromVertical: number
  readonly factor: number
}[] = [
  {legs: 2, counted: 2, fromVertical: 45, factor: 1.4},
  {legs: 2, counted: 2, fromVertical: 60, factor: 1},
  {legs: 3, counted: 3, fromVertical: 45, factor: 2.1},
  {legs: 3, counted: 3, fromVertical: 60, factor: 1.5},
  {legs: 4, counted: 3, fromVertical: 45, factor: 2.1},
  {legs: 4, counted: 3, fromVertical: 60, factor: 1.5},
]

/** Working load limits printed in tonnes: a chain sling (EN 818-4) and a webbing sling of 2 t (EN 1492-1); read in reprints. */
export const slingLimitRows: readonly {
  readonly oneLeg: number
  readonly legs: number
  readonly fromVertical: number
  readonly hitch: 'straight' | 'choke' | 'basket'
  readonly limit: number
}[] = [
  {oneLeg: 4.5, legs: 2, fromVertical: 45, hitch: 'straight', limit: 6.3},
  {oneLeg: 2, legs: 1, fromVertical: 0, hitch: 'choke', limit: 1.6},
  {oneLeg: 2, legs: 1, fromVertical: 0, hitch: 'basket', limit: 4},
  {oneLeg: 2, legs: 2, fromVertical: 45, hitch: 'straight', limit: 2.8},
  {oneLeg: 2, legs: 2, fromVertical: 60, hitch: 'straight', limit: 2},
  {oneLeg: 2, legs: 4, fromVertical: 45, hitch: 'straight', limit: 4.2},
  {oneLeg: 2, legs: 4, fromVertical: 60, hitch: 'straight', limit: 3},
]

/** A leg of 10 ft with the hook 5 ft up; ASME B30.9 practice, read in a reprint. Lengths in inches. */
export const twoLengthsRow = {length: 120, height: 60, factor: 2, fromHorizontal: 30} as const

/** Share of the weight in each of two legs at 30° from the vertical; computed apart from this project. */
export const twoLegsRow = {fromVertical: 30, share: 0.577} as const

export const published = {
  tensionFactors: publishedRows({
    calculation: 'sling-angle',
    source: 'trade tables of tension factors for slings',
    known: 'reprint',
    rows: tensionFactorRows,
  }),
  liftedShares: publishedRows({
    calculation: 'sling-angle',
    source: 'trade tables of slings, share of the straight load',
    known: 'reprint',
    rows: liftedShareRows,
  }),
  twoLengths: publishedRows({
    calculation: 'sling-angle',
    source: 'ASME B30.9 practice, length over height',
    known: 'reprint',
    rows: [twoLengthsRow],
  }),
  tensions: publishedRows({
    calculation: 'sling-tension',
    source: 'trade tables of tension factors for slings, a leg of two',
    known: 'reprint',
    rows: tensionFactorRows,
  }),
  twoLegs: publishedRows({
    calculation: 'sling-tension',
    source: 'statics, computed apart from this project',
    known: 'computed',
    rows: [twoLegsRow],
  }),
  modeFactors: publishedRows({
    calculation: 'sling-limit',
    source: 'EN 818-4, mode factors',
    known: 'reprint',
    rows: modeFactorRows,
  }),
  limits: publishedRows({
    calculation: 'sling-limit',
    source: 'EN 818-4 and EN 1492-1, working load limits',
    known: 'reprint',
    rows: slingLimitRows,
  }),
}
