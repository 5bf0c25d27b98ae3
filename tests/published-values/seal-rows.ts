import {publishedRows} from './published-rows.ts'

/** Years of the first period and of the extension by group; ISO 2230, edition 2002, from memory, no copy was read. */
export const storagePeriods = [
  {group: 'A', first: 5, extension: 2, materials: ['AU', 'BR', 'EU', 'IR', 'NR', 'SBR']},
  {group: 'B', first: 7, extension: 3, materials: ['BIIR', 'CIIR', 'CR', 'HNBR', 'IIR', 'NBR', 'XNBR']},
  {group: 'C', first: 10, extension: 5, materials: ['EPDM', 'EPM', 'FKM', 'FVMQ', 'VMQ']},
] as const

/** Roughness in µm below a lip, DIN 3760 and ISO 6194-1; from memory. */
export const roughnessRows = [
  {lip: 'elastomer', least: 0.2, greatest: 0.8},
  {lip: 'ptfe', least: 0.1, greatest: 0.4},
] as const

/** Least hardness in HRC by speed at the lip in m/s, DIN 3760; from memory. */
export const hardnessRows = [
  {speed: 4, hardness: 45},
  {speed: 4.01, hardness: 55},
] as const

/** Speed in m/s at a lip of 60 mm at 2400 rpm; geometry, computed apart from this project. */
export const lipSpeedRow = {diameter: 60, speed: 2400, metresPerSecond: 7.5} as const

/** Stretch and loss of section in % of a ring of 24.99 × 3.53 mm on 25.7 mm; computed apart from this project. */
export const stretchRow = {inside: 24.99, section: 3.53, groove: 25.7, stretch: 2.841, loss: 1.22} as const

/** Fill in % of the same ring in a groove of 25.4 mm, 2.87 mm deep and 4.75 mm wide; computed apart from this project. */
export const fillRow = {groove: 25.4, depth: 2.87, width: 4.75, fill: 72.42} as const

export const published = {
  storage: publishedRows({
    calculation: 'shelf-life',
    source: 'ISO 2230, edition 2002, storage periods',
    known: 'memory',
    rows: storagePeriods,
  }),
  roughness: publishedRows({
    calculation: 'seal-seat',
    source: 'DIN 3760 and ISO 6194-1, roughness of the shaft',
    known: 'memory',
    rows: roughnessRows,
  }),
  hardness: publishedRows({
    calculation: 'seal-seat',
    source: 'DIN 3760, hardness of the shaft',
    known: 'memory',
    rows: hardnessRows,
  }),
  lipSpeed: publishedRows({
    calculation: 'lip-speed',
    source: 'geometry, computed apart from this project',
    known: 'computed',
    rows: [lipSpeedRow],
  }),
  stretch: publishedRows({
    calculation: 'o-ring-gland',
    source: 'constant volume of the ring, computed apart from this project',
    known: 'computed',
    rows: [stretchRow],
  }),
  fill: publishedRows({
    calculation: 'o-ring-gland',
    source: 'ring over groove, computed apart from this project',
    known: 'computed',
    rows: [fillRow],
  }),
}
