import type {KnownDatum, Origin, Reference} from '../../handbook-model/datum.ts'
import type {CsvSource, PlacedScalar} from '../../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import type {RuleId} from '../../messages/severities.ts'
import {parseQuantity} from '../../quantities/parse-quantity.ts'
import type {Quantity, QuantityKind} from '../../quantities/quantity.ts'
import {expectedWord} from '../nearest-word.ts'
import {faultOfId} from './placed-shape.ts'

/** A row whose cells are asked for by column; a cell that does not fit adds a message and spoils the row. */
export interface Cells {
  text(column: string): string
  id(column: string): string | undefined
  reference(column: string): Reference
  oneOf<const W extends string>(column: string, words: readonly W[]): W | undefined
  yesNo(column: string): boolean
  quantity<K extends QuantityKind>(column: string, kind: K): Quantity<K> | undefined
  datum<K extends QuantityKind>(column: string, kind: K): KnownDatum<K> | undefined
  readonly place: Place
}

/** A row as written, with what its table says of all rows. */
export interface RowSource {
  readonly csv: CsvSource
  readonly cells: readonly PlacedScalar[]
  readonly origin: Origin
  readonly units: Units
}

/** Columns in which nothing is a value: a range begins there, parts touch, a purge is dry, a hold starts. */
const mayBeZero = ['above-diameter', 'from', 'least-gap', 'volume', 'minute']

/** The cells of a row, asked for by column. */
export function cellsOf({csv, cells, origin, units}: RowSource, files: ContentFiles): Cells {
  const cell = (column: string): PlacedScalar => {
    const found = cells[csv.header.findIndex((one) => one.text === column)]
    return found ?? {kind: 'scalar', text: '', place: csv.place}
  }
  const oneOf = <const W extends string>(column: string, words: readonly W[]): W | undefined => {
    const {text, place} = cell(column)
    const found = words.find((word) => word === text)
    if (found === undefined)
      addMessage(
        files,
        place,
        'no-wrong-shape',
        `Unexpected \`${text}\`, ${expectedWord(text, words, 'a word')}`,
        {
          note: `Write one of ${words.join(', ')}`,
        },
      )
    return found
  }
  const datum = <K extends QuantityKind>(column: string, kind: K): KnownDatum<K> | undefined => {
    const {text, place} = cell(column)
    const unit = units.of(column, kind)
    if (unit === undefined) return undefined
    const parsed = parseQuantity(`${text} ${unit}`.trim(), [kind])
    if (!parsed.ok) {
      addMessage(files, place, 'no-bad-quantity', parsed.reason, {
        note: `Write the number of \`${column}\` in ${unit === '' ? 'digits' : unit}, without the unit`,
      })
      return undefined
    }
    const {quantity, figure, unit: symbol} = parsed.written
    if (quantity.si <= 0 && !mayBeZero.includes(column)) {
      addMessage(
        files,
        place,
        'no-impossible-value',
        `Unexpected ${column} of \`${text}\`, expected more than zero`,
        {note: 'Read the source of the table again'},
      )
      return undefined
    }
    return {kind: 'known', quantity, figure, unit: symbol, origin, place}
  }
  return {
    place: cells[0]?.place ?? csv.place,
    text: (column) => cell(column).text,
    id: (column) => {
      const {text, place} = cell(column)
      const fault = faultOfId(text)
      if (fault) addMessage(files, place, 'no-bad-id', fault, {note: 'Write it like `assembly-paste`'})
      return fault ? undefined : text
    },
    reference: (column) => ({id: cell(column).text, place: cell(column).place}),
    oneOf,
    yesNo: (column) => oneOf(column, ['yes', 'no']) === 'yes',
    datum,
    quantity: (column, kind) => datum(column, kind)?.quantity,
  }
}

/** Units by column as the head names them; a column of numbers without one is told once, not for each row. */
export interface Units {
  of<K extends QuantityKind>(column: string, kind: K): string | undefined
}

/** The units that the head of a table names. */
export function unitsOf(csv: CsvSource, files: ContentFiles): Units {
  const told = new Set<string>()
  const tell = (column: string, place: Place, ruleId: RuleId, reason: string): undefined => {
    if (!told.has(column))
      addMessage(files, place, ruleId, reason, {
        note: 'Name the unit of each column of numbers above the header',
      })
    told.add(column)
    return undefined
  }
  return {
    of: (column, kind) => {
      const unit = csv.head.get(`unit ${column}`)
      if (!unit) {
        const reason = `Unexpected table without a line \`# unit ${column}: …\`, expected the unit of the column`
        return tell(column, csv.place, 'no-missing-key', reason)
      }
      const symbol = unit.text === '1' ? '' : unit.text
      const parsed = parseQuantity(`1 ${symbol}`.trim(), [kind])
      return parsed.ok ? symbol : tell(column, unit.place, 'no-bad-quantity', parsed.reason)
    },
  }
}
