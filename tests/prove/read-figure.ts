/** Units as pages print them, in the base units of the SI. A gauge pressure counts from the atmosphere, and a formula that needs the absolute one adds it. */
const units: Readonly<Record<string, number>> = {
  '': 1,
  '%': 0.01,
  m: 1,
  mm: 0.001,
  'mm diametral': 0.001,
  'mm radial': 0.001,
  'm³': 1,
  l: 0.001,
  kg: 1,
  'kg/m³': 1,
  N: 1,
  kN: 1000,
  N·m: 1,
  'N/mm²': 1e6,
  'mm²': 1e-6,
  'bar(g)': 1e5,
  'bar(a)': 1e5,
  bar: 1e5,
  mbar: 100,
  K: 1,
  '1/K': 1,
  s: 1,
  min: 60,
  h: 3600,
  'l/min': 1 / 60_000,
  'ml/min': 1e-6 / 60,
  'm³/h': 1 / 3600,
  'cm³/rev': 1e-6,
  rpm: 1 / 60,
  'm/s': 1,
  'm/s²': 1,
  kW: 1000,
  '°': Math.PI / 180,
}

/** A figure as a page prints it, in base units. */
export interface ReadFigure {
  readonly value: number
  /** One unit of the last printed digit. */
  readonly step: number
  readonly decimals: number
}

/**
 * Reads a figure with its unit; `293.15 K (20 °C)` counts as its first part.
 *
 * @throws {Error}
 *   When it is no number, or its unit is not in the table above.
 */
export function readFigure(printed: string): ReadFigure {
  const [, sign = '', digits = '', unit = ''] =
    /^([−-]?)(\d[\d.]*)\s*([^\s(]*(?:\([ga]\))?(?: (?:diametral|radial))?)/u.exec(printed) ?? []
  const scale = units[unit]
  if (digits === '' || scale === undefined)
    throw new Error(`Unexpected figure \`${printed}\`, expected one that a pocket calculator takes`)
  const decimals = digits.split('.')[1]?.length ?? 0
  return {
    value: (sign === '' ? 1 : -1) * Number(digits) * scale,
    step: 10 ** -decimals * scale,
    decimals,
  }
}
