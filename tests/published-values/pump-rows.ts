import {type NoRows, publishedRows} from './published-rows.ts'

/** Head and power after 10 % more speed, as ratios. A page on affinity laws: the head was read, the power is computed. */
export const moreSpeedRow = {speed: 1.1, head: 1.21, power: 1.331} as const

/** 500 m³/h, 120 m, 181.6 kW from 1750 to 1500 rpm. Computed apart from this project. */
export const lessSpeedRow = {
  flow: 500,
  head: 120,
  power: 181.6,
  from: 1750,
  to: 1500,
  scaledFlow: 428.57,
  scaledHead: 88.163,
  scaledPower: 114.36,
} as const

/**
 * Constants of a pumping handbook, read, beside the exact figures, computed apart from this project.
 *
 * Water of 62.37 lb/ft³ where the handbook works in feet; the exact figure of the horsepower is for its 8.33 lb to the
 * US gallon, which is water of 62.31 lb/ft³.
 */
export const handbookConstants = {
  kilowatts: {printed: 367.12, exact: 367.098, tolerance: 6.1e-5},
  feetPerPsi: {printed: 2.31, exact: 2.309, tolerance: 1e-3},
  horsepower: {printed: 3960, exact: 3961.6, tolerance: 1e-3},
  waterPoundsPerCubicFoot: 62.37,
  waterPoundsPerGallon: 8.33,
} as const

/**
 * The handbook's "kg/cm² = metres × relative density/10.2", read: the constant is that of bar.
 * For kgf/cm² the constant is 10.000; both exact figures computed apart from this project.
 */
export const wrongHeadConstant = {printed: 10.2, ofBar: 10.197, ofKilogramForce: 10} as const

/** Pressure of 100 m of liquid, kg/m³ to bar. Computed apart from this project. */
export const hundredMetresRows = [
  {density: 680, pressure: 6.669},
  {density: 850, pressure: 8.336},
  {density: 1000, pressure: 9.807},
  {density: 1025, pressure: 10.052},
  {density: 1840, pressure: 18.044},
] as const

/** Shaft power at 500 m³/h, 120 m, 850 kg/m³, 75 %: exact and by the handbook's constant. Computed apart from this project. */
export const shaftPowerRow = {
  flow: 500,
  head: 120,
  density: 850,
  efficiency: 75,
  power: 185.24,
  byHandbook: 185.23,
} as const

/** Shaft powers of three pumps on water at 70 %. Computed apart from this project, printed without decimals. */
export const wholeKilowattRows = [
  {flow: 150, head: 110, power: 64},
  {flow: 300, head: 120, power: 140},
  {flow: 500, head: 125, power: 243},
] as const

export const published = {
  moreSpeed: publishedRows({
    calculation: 'affinity',
    source: 'a page on affinity laws with a worked example',
    known: 'read',
    rows: [moreSpeedRow],
  }),
  lessSpeed: publishedRows({
    calculation: 'affinity',
    source: 'computed apart from this project',
    known: 'computed',
    rows: [lessSpeedRow],
  }),
  kilowatts: publishedRows({
    calculation: 'pump-power',
    source: 'pumping handbook, m³/h times metres for one kilowatt',
    known: 'read',
    rows: [handbookConstants.kilowatts],
  }),
  horsepower: publishedRows({
    calculation: 'pump-power',
    source: 'pumping handbook, US gal/min times feet for one horsepower',
    known: 'read',
    rows: [handbookConstants.horsepower],
  }),
  feetPerPsi: publishedRows({
    calculation: 'head-from-pressure',
    source: 'pumping handbook, feet of water for one psi',
    known: 'read',
    rows: [handbookConstants.feetPerPsi],
  }),
  hundredMetres: publishedRows({
    calculation: 'pressure-from-head',
    source: 'hydrostatics, computed apart from this project',
    known: 'computed',
    rows: hundredMetresRows,
  }),
  psiOfFeet: publishedRows({
    calculation: 'pressure-from-head',
    source: 'pumping handbook, feet of water for one psi, read backwards',
    known: 'read',
    rows: [handbookConstants.feetPerPsi],
  }),
  shaftPower: publishedRows({
    calculation: 'pump-power',
    source: 'computed apart from this project',
    known: 'computed',
    rows: [shaftPowerRow],
  }),
  wholeKilowatts: publishedRows({
    calculation: 'pump-power',
    source: 'computed apart from this project',
    known: 'computed',
    rows: wholeKilowattRows,
  }),
}

export const noRows: NoRows = {
  handbookConstants: 'counted one by one',
  wrongHeadConstant: 'labelled wrong, and not to be reproduced',
}
