import {type NoRows, publishedRows} from './published-rows.ts'

/** Torque, speed, flow and power of hydraulic motors, as inputs and figures were found. */

/** 125 cm³/rev at 150 bar and 0.0015 m³/s. A lecture on hydraulic motors, inputs and figures read. */
export const lectureMotorRow = {
  displacement: 125,
  pressureDrop: 150,
  flow: 0.0015 * 60_000,
  speed: 720,
  torque: 298.4,
  power: 22.5,
} as const

/** The same motor with more digits, computed apart from this project. */
export const lectureMotorComputed = {torque: 298.416, power: 22.5} as const

/** 80 cm³/rev, 1750 rpm, 7 bar. An exercise whose inputs were read; figures computed apart from this project. */
export const slowPressureRow = {
  displacement: 80,
  speed: 1750,
  pressureDrop: 7,
  flow: 140,
  power: 1.633,
} as const

/** 300 cm³/rev, 200 rpm, 200 bar, 90 % and 95 %. An exercise whose inputs were read; figures computed apart from this project. */
export const efficiencyRow = {
  displacement: 300,
  speed: 200,
  pressureDrop: 200,
  volumetricEfficiency: 90,
  mechanicalEfficiency: 95,
  idealFlow: 60,
  flow: 66.67,
  idealTorque: 954.9,
  torque: 907.2,
  idealPower: 20,
  shaftPower: 19,
} as const

/**
 * 475 cm³/rev, 140 bar, 48 l/min, 90 % in all of which 94 % mechanical, a drum of 0.7 m.
 * An exercise whose inputs were read; figures computed apart from this project.
 */
export const drumRow = {
  displacement: 475,
  pressureDrop: 140,
  flow: 48,
  overallEfficiency: 0.9,
  mechanicalEfficiency: 94,
  drumDiameter: 0.7,
  torque: 994.9,
  power: 10.08,
  ropeSpeed: 3.546,
} as const

/**
 * Motors in US units. A textbook's companion pages, read. The torque there is 160 lb·in by 0.16 in place of 1/(2π);
 * the exact figure is computed.
 */
export const textbookMotorRows = {
  torque: {
    pressureDrop: '2000 psi',
    displacement: '0.5 in³/rev',
    printed: 160,
    exact: 159.15,
    roundedFactor: 0.16,
  },
  speeds: [
    {flow: '7.5 US gal/min', displacement: '2 in³/rev', speed: 866.25, tolerance: 5e-4},
    {flow: '28.39 l/min', displacement: '0.03281 l/rev', speed: 865.285, tolerance: 5e-4},
  ],
  flow: {displacement: '0.55 in³/rev', speed: 3400, flow: 8.095, computed: 8.0952},
} as const

/**
 * A solution that was read and is wrong: it multiplies the flow by the volumetric efficiency as for a pump.
 * The right figures are computed apart from this project.
 */
export const wrongMotorRow = {
  displacement: 10,
  speed: 150,
  pressureDrop: 200,
  overallEfficiency: 0.4,
  volumetricEfficiency: 60,
  printedFlow: 0.9,
  printedShaftPower: 120,
  idealFlow: 1.5,
  flow: 2.5,
  fluidPower: 833.3,
  shaftPower: 333.3,
} as const

/** Torque of 160 cm³/rev at 220 bar without losses, and its flow at 2400 rpm. Computed apart from this project. */
export const pumpMotorRow = {
  displacement: 160,
  pressureDrop: 220,
  torque: 560,
  speed: 2400,
  flow: 384,
} as const

export const published = {
  lecture: publishedRows({
    calculation: 'motor',
    source: 'lecture on hydraulic motors with worked examples',
    known: 'read',
    rows: [lectureMotorRow],
  }),
  lectureComputed: publishedRows({
    calculation: 'motor',
    source: 'the example of the lecture, computed apart from this project to more digits',
    known: 'computed',
    rows: [lectureMotorComputed],
  }),
  slowPressure: publishedRows({
    calculation: 'motor',
    source: 'exercise whose inputs were read, computed apart from this project',
    known: 'computed',
    rows: [slowPressureRow],
  }),
  efficiency: publishedRows({
    calculation: 'motor',
    source: 'exercise whose inputs were read, computed apart from this project',
    known: 'computed',
    rows: [efficiencyRow],
  }),
  drum: publishedRows({
    calculation: 'motor',
    source: 'exercise whose inputs were read, computed apart from this project',
    known: 'computed',
    rows: [drumRow],
  }),
  textbookTorque: publishedRows({
    calculation: 'motor',
    source: 'companion pages of a textbook on fluid power, torque',
    known: 'read',
    rows: [textbookMotorRows.torque],
  }),
  textbookSpeeds: publishedRows({
    calculation: 'motor',
    source: 'companion pages of a textbook on fluid power, speeds',
    known: 'read',
    rows: textbookMotorRows.speeds,
  }),
  textbookFlow: publishedRows({
    calculation: 'motor',
    source: 'companion pages of a textbook on fluid power, flow',
    known: 'read',
    rows: [textbookMotorRows.flow],
  }),
  pumpMotor: publishedRows({
    calculation: 'motor',
    source: 'computed apart from this project',
    known: 'computed',
    rows: [pumpMotorRow],
  }),
}

export const noRows: NoRows = {
  textbookMotorRows: 'counted in three parts',
  wrongMotorRow: 'printed wrong, and not to be reproduced',
}
