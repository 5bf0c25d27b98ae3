import {type NoRows, publishedRows} from './published-rows.ts'

/** Temperatures in °C of the columns; the growth counts from 20 °C. */
export const growthTemperatures = [75, 100, 125, 150] as const

/** Table of bore growth in mm by bore in mm; read in a reprint, half a unit of its last digit is 5e-5 mm. */
export const growthRows: readonly {
  readonly bore: number
  readonly growth: readonly [number, number, number, number]
}[] = [
  {bore: 25, growth: [0.015, 0.0218, 0.0286, 0.0355]},
  {bore: 100, growth: [0.06, 0.0873, 0.1145, 0.1418]},
  {bore: 200, growth: [0.12, 0.1745, 0.2291, 0.2836]},
]

/** Expansion that the table implies, 0.0006/55 per kelvin; computed apart from this project. */
export const impliedExpansion: number = 0.0006 / 55

export const published = {
  growth: publishedRows({
    calculation: 'bearing-growth',
    source: 'table of bore growth by temperature',
    known: 'reprint',
    rows: growthRows,
  }),
  heating: publishedRows({
    calculation: 'bearing-heating',
    source: 'table of bore growth by temperature, read backwards',
    known: 'reprint',
    rows: growthRows,
  }),
}

export const noRows: NoRows = {
  growthTemperatures: 'heads of the columns',
  impliedExpansion: 'follows from the table',
}
