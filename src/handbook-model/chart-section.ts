/** What is charted; the page runtime draws it by the same function. */
export type ChartKind = 'wear' | 'purge' | 'hold'

/** A chart with what it tells in sentences, its readings as a table, and the form beside it. */
export interface ChartSection {
  readonly id: string
  readonly kind: ChartKind
  readonly title: string
  /** Absent where nothing is on record: the page says so, and draws what is tried. */
  readonly figure?: {readonly svg: string}
  readonly statements: readonly string[]
  /** What the chart is drawn from, as JSON that may stand in a page. */
  readonly json: string
  readonly columns: readonly string[]
  readonly rows: readonly {readonly head: string; readonly cells: readonly string[]}[]
  readonly form: readonly FieldRow[]
}

/** Fields of a form side by side. */
export interface FieldRow {
  /** What they are for; blank where the labels say it. */
  readonly legend: string
  readonly fields: readonly TryField[]
}

export interface TryField {
  readonly name: string
  readonly label: string
  readonly type: 'text' | 'date'
  /** Filled in beforehand. */
  readonly value: string
  /** Words to choose from, in place of typing. */
  readonly options: readonly {readonly value: string; readonly label: string}[]
  readonly id: string
}
