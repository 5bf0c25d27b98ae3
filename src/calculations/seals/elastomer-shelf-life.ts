import type {CalculationNote} from '../calculation-note.ts'

/** Until which days a part of elastomer may lie in store. */
export interface ShelfLife {
  /** Group of the standard by resistance to ageing: C lasts longest. */
  readonly group: 'A' | 'B' | 'C'
  readonly validTo: string
  /** The same after it was inspected at the end of the first period and found sound. */
  readonly validToAfterInspection: string
}

/** Where a day lies in the storage period. */
export type StorageState = 'first-period' | 'inspect-before-use' | 'not-for-use'

export const elastomerShelfLifeNote: CalculationNote = {
  name: 'shelf-life',
  words:
    'last day of the storage period of a part of elastomer from its cure date and the group of its material, and the last day after one inspection',
  formula: [
    'valid to = cure date + first period',
    'valid to after inspection = cure date + first period + extension',
    'group A (AU, BR, EU, IR, NR, SBR): 5 years, extension 2 years',
    'group B (BIIR, CIIR, CR, HNBR, IIR, NBR, XNBR): 7 years, extension 3 years',
    'group C (EPDM, EPM, FKM, FVMQ, VMQ): 10 years, extension 5 years',
  ],
  symbols: [
    {symbol: 'A', meaning: 'materials that age soonest'},
    {symbol: 'B', meaning: 'materials between A and C'},
    {symbol: 'C', meaning: 'materials that age last'},
    {symbol: 'AU', meaning: 'polyester urethane'},
    {symbol: 'BR', meaning: 'butadiene rubber'},
    {symbol: 'EU', meaning: 'polyether urethane'},
    {symbol: 'IR', meaning: 'synthetic isoprene rubber'},
    {symbol: 'NR', meaning: 'natural rubber'},
    {symbol: 'SBR', meaning: 'styrene-butadiene rubber'},
    {symbol: 'BIIR', meaning: 'bromobutyl rubber'},
    {symbol: 'CIIR', meaning: 'chlorobutyl rubber'},
    {symbol: 'CR', meaning: 'chloroprene rubber'},
    {symbol: 'HNBR', meaning: 'hydrogenated nitrile rubber'},
    {symbol: 'IIR', meaning: 'butyl rubber'},
    {symbol: 'NBR', meaning: 'nitrile rubber'},
    {symbol: 'XNBR', meaning: 'carboxylated nitrile rubber'},
    {symbol: 'EPDM', meaning: 'ethylene-propylene-diene rubber'},
    {symbol: 'EPM', meaning: 'ethylene-propylene rubber'},
    {symbol: 'FKM', meaning: 'fluorocarbon rubber'},
    {symbol: 'FVMQ', meaning: 'fluorosilicone rubber'},
    {symbol: 'VMQ', meaning: 'silicone rubber'},
  ],
  sources: [
    {
      title: 'ISO 2230, storage periods of rubber products; groups and years not compared with a copy',
      edition: '2002',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor:
    'parts not assembled, in closed bags, dark, at most 25 °C; not for PTFE and for materials outside the table; a shorter life stated by the delivery wins',
}

interface StoragePeriod {
  readonly materials: readonly string[]
  readonly first: number
  readonly extension: number
}

/** Storage periods in years by group. Source: ISO 2230, edition 2002; from memory. */
const periods: Readonly<Record<ShelfLife['group'], StoragePeriod>> = {
  A: {materials: ['AU', 'BR', 'EU', 'IR', 'NR', 'SBR'], first: 5, extension: 2},
  B: {materials: ['BIIR', 'CIIR', 'CR', 'HNBR', 'IIR', 'NBR', 'XNBR'], first: 7, extension: 3},
  C: {materials: ['EPDM', 'EPM', 'FKM', 'FVMQ', 'VMQ'], first: 10, extension: 5},
}

const groups = ['A', 'B', 'C'] as const

/** Materials that the library knows the storage period of, by the letters of ISO 1629. */
export const heldElastomers: readonly string[] = groups.flatMap((group) => periods[group].materials)

/**
 * Storage period of a part of elastomer.
 *
 * Source: ISO 2230, from memory; no published example was found.
 * Valid for: parts not assembled, closed bags, dark, at most 25 °C; materials of the table.
 *
 * @throws {RangeError}
 *   When the material is not in the table or the cure date is no day.
 */
export function elastomerShelfLife(material: string, cureDate: string): ShelfLife {
  const group = groups.find((one) => periods[one].materials.includes(material))
  if (!group)
    throw new RangeError(`Unexpected material \`${material}\`, expected one of ${heldElastomers.join(', ')}`)
  const {first, extension} = periods[group]
  return {
    group,
    validTo: yearsLater(cureDate, first),
    validToAfterInspection: yearsLater(cureDate, first + extension),
  }
}

/**
 * Where a day lies in the storage period; the last day of a period belongs to it.
 *
 * Source: ISO 2230, from memory.
 * Valid for: days from the cure date on.
 *
 * @throws {RangeError}
 *   When the day is no day or lies before the cure date.
 */
export function storageState(material: string, cureDate: string, day: string): StorageState {
  const life = elastomerShelfLife(material, cureDate)
  yearsLater(day, 0)
  if (day < cureDate)
    throw new RangeError(`Unexpected day ${day} before the cure date ${cureDate}, expected a later one`)
  if (day <= life.validTo) return 'first-period'
  return day <= life.validToAfterInspection ? 'inspect-before-use' : 'not-for-use'
}

/** The same day some years later; of 29 February the 28th where the year has no 29th. */
function yearsLater(date: string, years: number): string {
  const [, year = '', month = '', day = ''] = /^(\d{4})-(\d{2})-(\d{2})$/u.exec(date) ?? []
  if (!isRealDay(Number(year), Number(month), Number(day)))
    throw new RangeError(
      `Unexpected date \`${date}\`, expected a day like \`2031-02-14\`; of a month or quarter take its first day`,
    )
  const later = Number(year) + years
  const last = daysOfMonth(later, Number(month))
  return `${String(later).padStart(4, '0')}-${month}-${String(Math.min(Number(day), last)).padStart(2, '0')}`
}

function isRealDay(year: number, month: number, day: number): boolean {
  return year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysOfMonth(year, month)
}

function daysOfMonth(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28
  return [4, 6, 9, 11].includes(month) ? 30 : 31
}
