import type {CsvSource} from '../../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {expectedWord} from '../nearest-word.ts'

/** True when the header has each column once and no other; what is missing, strange or doubled is told. */
export function columnsFit(csv: CsvSource, columns: readonly string[], files: ContentFiles): boolean {
  const names = csv.header.map((cell) => cell.text)
  const missing = columns.filter((column) => !names.includes(column))
  const strange = csv.header.filter((cell) => !columns.includes(cell.text))
  for (const column of missing) {
    addMessage(
      files,
      csv.place,
      'no-missing-key',
      `Unexpected header without column \`${column}\`, expected the columns \`${columns.join(',')}\``,
      {note: `Add the column \`${column}\``},
    )
  }
  for (const cell of strange) {
    addMessage(
      files,
      cell.place,
      'no-unknown-key',
      `Unexpected column \`${cell.text}\`, ${expectedWord(cell.text, columns, 'a column')}`,
      {note: `The columns are ${columns.join(',')}`},
    )
  }
  const doubled = csv.header.filter((cell, index) => names.indexOf(cell.text) < index)
  for (const cell of doubled) {
    addMessage(
      files,
      cell.place,
      'no-duplicate-id',
      `Unexpected second column \`${cell.text}\`, expected each column once`,
      {note: 'Take one of the two out'},
    )
  }
  return missing.length === 0 && strange.length === 0 && doubled.length === 0
}
