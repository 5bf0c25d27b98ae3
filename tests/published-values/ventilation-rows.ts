import {type NoRows, publishedRows} from './published-rows.ts'

/** Minutes of the columns of `buildUpRows`. */
export const buildUpMinutes = [10, 20, 40, 80, 160, 320, 640, 1280, 2560] as const

/**
 * Build-up of gas in a ventilated room, c = (1 − e^(−n·t))/n for a source and a volume of one, by air changes an hour.
 *
 * Read in an excerpt of a published build-up table, four decimals.
 */
export const buildUpRows = [
  {changesAnHour: 0.5, contents: [0.1599, 0.307, 0.5669, 0.9732, 1.4728, 1.861, 1.9903, 2, 2]},
  {changesAnHour: 1, contents: [0.1535, 0.2835, 0.4866, 0.7364, 0.9305, 0.9952, 1, 1, 1]},
  {changesAnHour: 2, contents: [0.1417, 0.2433, 0.3682, 0.4653, 0.4976, 0.5, 0.5, 0.5, 0.5]},
  {changesAnHour: 4, contents: [0.1216, 0.1841, 0.2326, 0.2488, 0.25, 0.25, 0.25, 0.25, 0.25]},
  {changesAnHour: 8, contents: [0.0921, 0.1163, 0.1244, 0.125, 0.125, 0.125, 0.125, 0.125, 0.125]},
] as const

/** What remains after 1 to 7 air changes, in %; computed apart from this project as e^(−N). */
export const remainingRows = [36.788, 13.534, 4.979, 1.832, 0.674, 0.248, 0.0912] as const

/** 50 ppm in 60 m³ with 600 m³/h for 15 min; computed apart from this project. */
export const fanRow = {changes: 2.5, partsPerMillion: 4.104} as const

/** Air changes by contents in %; computed apart from this project. */
export const airChangeRows = [
  {what: 'oxygen from 16 to 20.8 % with air of 20.9 %', from: 16, to: 20.8, supply: 20.9, changes: 3.892},
  {what: 'flammable gas from 100 to 1 % of its lower limit', from: 100, to: 1, supply: 0, changes: 4.605},
] as const

/** 600 m³, 20 air changes, 6000 m³/h, in hours; computed apart from this project. The 20 changes are common practice. */
export const twentyChanges = 2.0

export const published = {
  buildUp: publishedRows({
    calculation: 'gas-build-up',
    source: 'published table of gas build-up by air changes',
    known: 'read',
    rows: buildUpRows,
  }),
  remaining: publishedRows({
    calculation: 'dilution',
    source: 'computed apart from this project as e^(−N)',
    known: 'computed',
    rows: remainingRows,
  }),
  fan: publishedRows({
    calculation: 'dilution',
    source: 'computed apart from this project',
    known: 'computed',
    rows: [fanRow],
  }),
  airChanges: publishedRows({
    calculation: 'air-changes',
    source: 'computed apart from this project',
    known: 'computed',
    rows: airChangeRows,
  }),
  twentyChanges: publishedRows({
    calculation: 'ventilation-time',
    source: 'computed apart from this project; the 20 changes are common practice',
    known: 'computed',
    rows: [twentyChanges],
  }),
}

export const noRows: NoRows = {buildUpMinutes: 'heads of the columns'}
